import { describe, expect, test } from "vitest"
import { type Book, type OwnEntry, openBook, readDocument } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, define, figure, formula, input, table, value } from "../helpers/small-book.ts"

const ENTRIES = [
  input("width", "length", "4 m"),
  input("length", "length", "3 m"),
  figure("price", "money", "2"),
  formula("area", "area", "width * length"),
  table("holes", { kind: "formula", formula: "ROUNDUP(width / length; 0)" }, [
    ["place", "length", "ROW() * length"],
  ]),
  check("area_check", "area", "area", "area"),
]

const own = (name: string, text: string): OwnEntry => ({ kind: "formula", name, label: name, formula: text })
const GAP: OwnEntry = { kind: "input", name: "gap", label: "Gap", measure: "length", default: "50" }

function reopened(book: Book, options: Parameters<typeof openBook>[1] = {}): ReturnType<typeof openBook> {
  const { document, problems } = readDocument(JSON.parse(JSON.stringify(book.document())))
  if (document === undefined) throw new Error(JSON.stringify(problems))
  return openBook(define(...ENTRIES), { ...options, document })
}

describe.each(EVERY_GRAPH)("with the %s graph", (_, graph) => {
  const full = (): Book => {
    const book = bookOf(ENTRIES, { graph })
    const result = book.addEntries([
      own("cost", "boards * price"),
      own("boards", "ROUNDUP(area / (gap * width); 0)"),
      GAP,
      { kind: "column", table: "holes", name: "past", label: "Past the place", formula: "place + gap" },
      {
        kind: "check",
        name: "cost_check",
        label: "Cost",
        demand: "cost",
        limit: "most_cost",
        sense: "at_most",
        advice: ["A gap of {gap} is too small."],
      },
      {
        kind: "figure",
        name: "most_cost",
        label: "Most",
        measure: "money",
        value: "100",
        sources: [{ kind: "user", title: "A letter" }],
      },
    ])
    expect(result.problems).toEqual([])
    return book
  }

  test("own entries of every kind are worked out together with the template's", () => {
    const book = full()
    expect(value(book, "gap")).toBe(0.05)
    expect(value(book, "boards")).toBe(60)
    expect(value(book, "cost")).toBe(120)
    expect(value(book, "holes.past")).toEqual([3.05, 6.05])
    expect(book.entry("cost_check").check).toMatchObject({
      verdict: "fails",
      advice: ["A gap of 50 mm is too small."],
    })
    expect(book.entry("gap")).toMatchObject({ own: true, section: "own", typed: "50 mm", changed: false })
    expect(book.entry("width").own).toBeUndefined()
    book.edit("gap", "100")
    expect(value(book, "cost")).toBe(60)
    book.edit("cost", "99")
    expect(book.entry("cost_check").check?.demand?.value).toBe(99)
    expect(book.leanedOnBy("gap")).toEqual(["holes.past", "boards"])
  })

  test("they are saved, and come back with what was typed in them", () => {
    const book = full()
    book.edit("gap", "100")
    const again = reopened(book, { graph })
    expect(again.problems).toEqual([])
    expect(value(again.book, "cost")).toBe(60)
    expect(value(again.book, "holes.past")).toEqual([3.1, 6.1])
    expect(again.book.document()).toEqual(book.document())
  })

  test("a name is changed everywhere in own formulas, and nowhere else", () => {
    const book = full()
    book.edit("gap", "100")
    const before = [value(book, "cost"), value(book, "holes.past")]
    expect(book.renameEntry("gap", "joint_width").problems).toEqual([])
    expect([value(book, "cost"), value(book, "holes.past")]).toEqual(before)
    expect(book.has("gap")).toBe(false)
    expect(book.entry("boards").formula).toBe("ROUNDUP(area / (joint_width * width); 0)")
    expect(book.entry("cost_check").check?.advice).toEqual([])
    book.edit("joint_width", "20")
    expect(book.entry("cost_check").check?.advice).toEqual(["A gap of 20 mm is too small."])
    book.addEntry(own("longest", "MAX(holes.past)"))
    book.addEntry({ kind: "column", table: "holes", name: "twice", label: "Twice", formula: "past * 2" })
    book.renameEntry("holes.past", "holes.beyond")
    expect(book.entry("longest").formula).toBe("MAX(holes.beyond)")
    expect(book.entry("holes.twice").formula).toBe("beyond * 2")
    expect(value(book, "longest")).toBe(6.02)
    book.addEntry(own("over", "cost_check.demand - cost_check.limit"))
    book.renameEntry("cost_check", "budget_check")
    expect(book.entry("over").formula).toBe("budget_check.demand - budget_check.limit")
  })

  test("removing is refused while own formulas lean on it; told to go on, they say what is missing", () => {
    const book = full()
    expect(book.removeEntry("gap").problems).toEqual([
      { code: "leaned_on", at: {}, name: "gap", by: ["boards", "holes.past"] },
    ])
    expect(book.removeEntry("gap", { evenIfUsed: true }).accepted).toBe(true)
    expect(book.entry("boards").problems).toMatchObject([{ code: "unknown_name", name: "gap" }])
    expect(book.entry("cost").problems).toMatchObject([{ code: "leans_on_problem", on: ["boards"] }])
    expect(value(book, "area")).toBe(12)
    expect(book.addEntry(GAP).accepted).toBe(true)
    expect(value(book, "cost")).toBe(120)
  })

  test("another draft takes the place of one; a text that it cannot take goes", () => {
    const book = full()
    book.edit("gap", "100")
    expect(book.changeEntry("gap", own("gap", "length / 100")).problems).toEqual([])
    expect(value(book, "boards")).toBe(30)
    expect(book.entry("gap").overrides).toMatchObject([{ typed: "100 mm" }])
    book.restore("gap")
    expect(value(book, "boards")).toBe(100)
    // A gap that is a mass would make its users wrong.
    const wrong = { ...GAP, measure: "mass" as const, default: "2 kg" }
    expect(book.changeEntry("gap", wrong).accepted).toBe(false)
    expect(value(book, "boards")).toBe(100)
    book.addEntry({ ...GAP, name: "load" })
    book.edit("load", "3 m")
    expect(book.changeEntry("load", { ...wrong, name: "load" }).accepted).toBe(true)
    expect(book.entry("load")).toMatchObject({ typed: "2 kg", changed: false })
  })

  test("ten thousand entries are added at once, and one is edited", () => {
    const book = bookOf(ENTRIES, { graph })
    const many = Array.from({ length: 10_000 }, (_, row) =>
      own(`row_${row}`, row === 0 ? "width" : row % 100 === 0 ? "row_0 * 2" : `row_${row - 1} + row_0`),
    )
    expect(book.addEntries(many).problems).toEqual([])
    expect(value(book, "row_99")).toBe(400)
    book.edit("width", "5 m")
    expect(value(book, "row_9999")).toBe(505)
  })
})

describe("a draft is refused whole, with what is wrong, when", () => {
  const fault = (book: Book, ...drafts: OwnEntry[]) => {
    const before = book.document()
    const result = book.addEntries(drafts)
    expect(result.accepted).toBe(false)
    expect(book.document()).toEqual(before)
    return result.problems.map(({ code }) => code)
  }
  test.each<[string, OwnEntry, string]>([
    ["its name is no name", own("Gate Width", "1"), "bad_name"],
    ["its name is a door to the prototype", own("constructor", "1"), "bad_name"],
    ["its name is __proto__", own("__proto__", "1"), "bad_name"],
    ["its name is the template's", own("area", "1"), "name_taken"],
    ["it has no label", { ...own("x", "1"), label: " " }, "bad_entry"],
    ["its formula is empty", own("x", " "), "formula_empty"],
    ["its formula cannot be read", own("x", "width +"), "unexpected"],
    ["it uses a name that is not there", own("x", "widht * 2"), "unknown_name"],
    ["it adds a length to an area", own("x", "width + area"), "dimension_mismatch"],
    ["it gives what nothing measures", own("x", "area * area"), "no_measure"],
    [
      "it says it is what it is not",
      { ...own("x", "area"), measure: "length" } as OwnEntry,
      "result_mismatch",
    ],
    ["it leans on itself", own("x", "x + width"), "cycle"],
    ["it gives a column", own("x", "holes.place"), "column_where_one_value"],
    ["its value cannot be read", { ...GAP, default: "wide" } as OwnEntry, "input_unreadable"],
    ["its limit cannot be read", { ...GAP, least: "wide" } as OwnEntry, "input_unreadable"],
    ["its value is past its limit", { ...GAP, most: "40 mm" } as OwnEntry, "input_above"],
    ["a length has choices", { ...GAP, choices: ["50"] } as OwnEntry, "bad_entry"],
    [
      "a figure has no source",
      { kind: "figure", name: "x", label: "X", measure: "length", value: "1 m" },
      "bad_entry",
    ],
    [
      "its table is not there",
      { kind: "column", table: "posts", name: "x", label: "X", formula: "1" },
      "no_such_entry",
    ],
    [
      "a column would hide an entry from its table's formulas",
      { kind: "column", table: "holes", name: "length", label: "X", formula: "1" },
      "name_taken",
    ],
    ["it is of no kind", { kind: "thing", name: "x" } as unknown as OwnEntry, "bad_entry"],
  ])("%s", (_, draft, code) => {
    expect(fault(bookOf(ENTRIES), own("sound", "width"), draft)).toContain(code)
  })

  test("two of a batch make a ring, or have one name", () => {
    const book = bookOf(ENTRIES)
    expect(fault(book, own("a", "b + 1"), own("b", "a + 1"))).toEqual(["cycle"])
    const measured = (name: string, text: string) => ({ ...own(name, text), measure: "ratio" }) as OwnEntry
    expect(fault(book, measured("a", "b + 1"), measured("b", "a + 1"))).toContain("cycle")
    expect(fault(book, own("a", "1"), own("a", "2"))).toEqual(["name_taken"])
  })

  test("what is changed, renamed or removed is not the user's, or the new name will not do", () => {
    const book = bookOf(ENTRIES)
    book.addEntries([GAP, own("twice", "gap * 2")])
    expect(book.changeEntry("area", own("area", "1")).problems).toMatchObject([{ code: "not_own" }])
    expect(book.renameEntry("area", "surface").problems).toMatchObject([{ code: "not_own" }])
    expect(book.removeEntry("area").problems).toMatchObject([{ code: "not_own" }])
    expect(book.renameEntry("gap", "area").problems).toMatchObject([{ code: "name_taken" }])
    expect(book.renameEntry("gap", "twice").problems).toMatchObject([{ code: "name_taken" }])
    expect(book.renameEntry("gap", "The gap").problems).toMatchObject([{ code: "bad_name" }])
  })
})

test.each([
  ["width + length", "length"],
  ["width * length", "area"],
  ["width / length", "ratio"],
  ["ROUNDUP(width / length; 0)", "count"],
  ["ROUND(width / length; 2)", "ratio"],
  ["counted + 1", "count"],
  ["counted * 1.5", "ratio"],
  ["MAX(waste; 2 * waste)", "ratio"],
  ["SUM(waste; waste)", "share"],
  ["stone * 2", "bulk_volume"],
  ["area * width", "volume"],
  ["area * price", undefined],
  ["price * 3", "money"],
  ["price / area", "money_per_area"],
  ["width > length", "yes_no"],
  ['"a" & "b"', "text"],
  ["0", "ratio"],
  ["strength", "stress"],
  ["strength * area", "force"],
])("what %s measures is %s", (text, measureId) => {
  const book = bookOf([
    ...ENTRIES,
    input("counted", "count", "3"),
    input("waste", "share", "10 %"),
    input("stone", "bulk_volume", "1 m3"),
    input("strength", "stress", "5 MPa"),
  ])
  const { accepted } = book.addEntry(own("made", text))
  expect(accepted ? book.entry("made").measure : undefined).toBe(measureId)
})

test("the section of own entries comes last, under the words given, and only when there are some", () => {
  const words = { title: "Mine", says: "What you added." }
  const { book } = openBook(define(...ENTRIES), { own: words })
  expect(book.sections.map(({ id }) => id)).toEqual(["all"])
  book.addEntry(GAP)
  expect(book.sections.at(-1)).toMatchObject({ id: "own", ...words })
  expect(book.definition).toEqual(define(...ENTRIES))
  expect(book.namesStartingWith("ga")).toEqual(["gap"])
  expect(book.namesStartingWith("holes.")).toEqual(["holes.place"])
  expect(book.search("Gap")).toEqual(["gap"])
})

test("an own entry that the template no longer leaves room for is reported, kept, and left out", () => {
  const book = bookOf(ENTRIES)
  book.addEntries([GAP, own("twice", "gap * 2")])
  const { document } = readDocument(JSON.parse(JSON.stringify(book.document())))
  if (document === undefined) throw new Error("it cannot be read")
  const later = define(...ENTRIES, formula("gap", "length", "width / 10"))
  const { book: again, problems } = openBook(later, { document })
  expect(problems).toEqual([{ code: "name_taken", at: {}, name: "gap" }])
  expect(value(again, "twice")).toBe(0.8)
  expect(again.document().own).toEqual(document.own)
})
