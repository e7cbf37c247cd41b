import { describe, expect, test } from "vitest"
import { type Book, openBook, readDocument } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, define, formula, input, table, value } from "../helpers/small-book.ts"

const ENTRIES = [
  input("width", "length", "4 m"),
  input("length", "length", "3 m"),
  table("holes", { kind: "input", most: 50, default: [{ deep: "1 m" }] }, [
    ["deep", "length"],
    ["twice", "length", "deep * 2"],
  ]),
  table("prices", { kind: "figures" }, [["price", "money", undefined, ["2", "3"]]]),
  formula("area", "area", "width * length"),
  formula("dug", "length", "SUM(holes.twice)"),
  formula("total", "money", "SUM(prices.price)"),
  check("area_check", "area", "area", "area"),
]
const NAMES = ["width", "length", "area", "dug", "total", "holes.deep"]

/** Everything but the history. */
function content(book: Book): unknown {
  const { history: _, ...rest } = book.document()
  return [rest, NAMES.map((name) => value(book, name)), book.scenarios(), book.unitSystem]
}

const DEEDS: readonly (readonly [string, (book: Book) => unknown])[] = [
  ["an edit", (book) => book.edit("width", "5 m")],
  ["several edits", (book) => book.editAll({ width: "6 m", length: "2 m" })],
  ["a cell", (book) => book.edit("prices.price.2", "9")],
  ["a formula typed over", (book) => book.edit("area", "1 m2")],
  ["rows", (book) => book.editTable("holes", [{ deep: "2 m" }, { deep: "3 m" }])],
  ["other rows", (book) => book.editTable("holes", [{ deep: "2 m" }, { deep: "4 m" }, { deep: "5 m" }])],
  ["rows put back", (book) => book.restore("holes")],
  ["a formula put back", (book) => book.restore("area")],
  ["a copy", (book) => book.saveCopy("Second")],
  ["an edit of the copy", (book) => book.edit("width", "7 m")],
  ["a title", (book) => book.rename(book.scenario.id, "Other")],
  ["units", (book) => book.showIn("us")],
  ["a switch", (book) => book.switchTo("copy-1")],
  ["a seal", (book) => book.seal("Bought")],
  ["a change tried", (book) => book.tryChange("Tried", { length: "1 m" })],
  ["a removal", (book) => book.remove(book.scenario.id)],
  ["a switch from the sealed one", (book) => book.switchTo("copy-2")],
  [
    "an own input",
    (book) => book.addEntry({ kind: "input", name: "gap", label: "Gap", measure: "length", default: "2 m" }),
  ],
  ["an edit of it", (book) => book.edit("gap", "3 m")],
  [
    "own formulas",
    (book) =>
      book.addEntries([
        { kind: "formula", name: "twice_gap", label: "Twice", formula: "gap * 2" },
        { kind: "column", table: "holes", name: "past", label: "Past", formula: "deep + gap" },
      ]),
  ],
  ["another name", (book) => book.renameEntry("gap", "slot")],
  [
    "another formula",
    (book) =>
      book.changeEntry("twice_gap", {
        kind: "formula",
        name: "twice_gap",
        label: "T",
        formula: "slot * 3",
      }),
  ],
  ["a step of the work ticked", (book) => book.note("mark", { done: true })],
  ["a note on it", (book) => book.note("mark", { note: "The string sags." })],
  ["all put back to the template", (book) => book.startAgain()],
  ["an own entry removed", (book) => book.removeEntry("slot", { evenIfUsed: true })],
]

function reopened(book: Book, graph?: (typeof EVERY_GRAPH)[number][1]): Book {
  const { document, problems } = readDocument(JSON.parse(JSON.stringify(book.document())))
  if (document === undefined) throw new Error(JSON.stringify(problems))
  return openBook(define(...ENTRIES), { document, ...(graph === undefined ? {} : { graph }) }).book
}

describe.each(EVERY_GRAPH)("with the %s graph", (_, graph) => {
  test("everything is undone and done again, one step at a time, across reloads", () => {
    let book = bookOf(ENTRIES, { graph })
    const states = [content(book)]
    for (const [what, act] of DEEDS) {
      act(book)
      expect(content(book), what).not.toEqual(states.at(-1))
      states.push(content(book))
    }
    expect(book.history()).toHaveLength(DEEDS.length)
    for (let step = DEEDS.length - 1; step >= 0; step--) {
      if (step % 4 === 0) book = reopened(book, graph)
      expect(book.undo()).toBe(true)
      expect(content(book), `undo of ${DEEDS[step]?.[0]}`).toEqual(states[step])
    }
    expect(book.undo()).toBe(false)
    for (let step = 1; step <= DEEDS.length; step++) {
      if (step % 4 === 0) book = reopened(book, graph)
      expect(book.redo()).toBe(true)
      expect(content(book), `redo of ${DEEDS[step - 1]?.[0]}`).toEqual(states[step])
    }
    expect(book.redo()).toBe(false)
  })

  test("what is undone moves back what the edit moved, and tells", () => {
    const book = bookOf(ENTRIES, { graph })
    book.edit("width", "5 m")
    let told = 0
    book.subscribe(() => told++)
    book.undo()
    expect(told).toBe(1)
    expect(book.moved().map(({ name, new: now }) => [name, now?.value])).toEqual([
      ["width", 4],
      ["area", 12],
    ])
  })
})

test("steps say when and what, in order, and which are undone", () => {
  let clock = 1_000
  const book = bookOf(ENTRIES, { now: () => clock++ })
  book.edit("width", "5 m")
  book.edit("width", "five")
  book.edit("length", "2 m")
  book.undo()
  expect(book.history()).toEqual([
    {
      number: 1,
      at: 1_000,
      undone: false,
      changes: [{ of: "typed", scenario: "copy-1", name: "width", from: null, to: "5 m" }],
    },
    {
      number: 2,
      at: 1_001,
      undone: true,
      changes: [{ of: "typed", scenario: "copy-1", name: "length", from: null, to: "2 m" }],
    },
  ])
  book.edit("length", "1 m")
  expect(book.history().map(({ number, undone }) => [number, undone])).toEqual([
    [1, false],
    [3, false],
  ])
  expect(book.redo()).toBe(false)
})

test("an edit that changes nothing is no step", () => {
  const book = bookOf(ENTRIES)
  book.edit("width", "5 m")
  book.edit("width", "5 m")
  book.rename(book.scenario.id, book.scenario.title)
  expect(book.history()).toHaveLength(1)
})

test("a copy as it was after a step, done or undone", () => {
  const book = bookOf(ENTRIES)
  for (const width of [5, 6, 7, 8]) book.edit("width", `${width} m`)
  book.undo()
  const steps = book.history().map(({ number }) => number)
  for (const [place, width] of [5, 6, 7, 8].entries()) {
    const again = reopened(book)
    const before = again.scenario.title
    const copy = again.copyAt(steps[place] ?? 0)
    expect(value(again, "width")).toBe(width)
    expect(again.scenario).toEqual(copy)
    expect(copy.title).toBe(before)
    expect(again.scenarios()).toHaveLength(2)
  }
  expect(() => book.copyAt(99)).toThrow(RangeError)
})

test("of many steps the last 500 are kept, and of long ones fewer", () => {
  const book = bookOf(ENTRIES)
  for (let step = 1; step <= 520; step++) book.edit("width", `${step} m`)
  expect(book.history()).toHaveLength(500)
  expect(book.history()[0]?.changes).toMatchObject([{ from: "20 m", to: "21 m" }])
  while (book.undo());
  expect(value(book, "width")).toBe(20)
  const long = bookOf([
    ...ENTRIES,
    table("notes", { kind: "input", most: 5_000, default: [] }, [["note", "text"]]),
  ])
  for (const letter of "abcdef")
    long.editTable(
      "notes",
      Array.from({ length: 2_000 }, () => ({ note: letter.repeat(300) })),
    )
  expect(JSON.stringify(long.document().history).length).toBeLessThan(3_000_000)
  expect(long.undo()).toBe(true)
  expect(value(long, "notes.note")).toContain("e".repeat(300))
})

test("of a long table only the rows that differ are noted", () => {
  const rows = Array.from({ length: 50 }, (_, row) => ({ deep: `${row + 1} m` }))
  const book = bookOf(ENTRIES)
  book.editTable("holes", rows)
  book.editTable("holes", rows.with(30, { deep: "9 m" }))
  expect(book.history()[1]?.changes).toEqual([
    {
      of: "rows",
      scenario: "copy-1",
      name: "holes",
      start: 30,
      from: [{ deep: "31 m" }],
      to: [{ deep: "9 m" }],
    },
  ])
})

describe("a sealed scenario", () => {
  test("is kept beside the one that is open, refuses edits, and can be compared and copied", () => {
    const book = bookOf(ENTRIES)
    book.edit("width", "5 m")
    const open = book.scenario.id
    const sealed = book.seal("As bought")
    expect(sealed).toMatchObject({ title: "As bought", sealed: true })
    expect(book.scenario.id).toBe(open)
    book.edit("width", "6 m")
    expect(book.compare(sealed.id, open).inputs).toMatchObject([
      { name: "width", left: { value: 5 }, right: { value: 6 } },
    ])
    book.switchTo(sealed.id)
    expect(value(book, "width")).toBe(5)
    const before = book.document()
    const refusals = [
      book.edit("width", "7 m"),
      book.editTable("holes", [{ deep: "4 m" }]),
      book.restore("width"),
    ]
    for (const { accepted, problems } of refusals) {
      expect(accepted).toBe(false)
      expect(problems).toEqual([{ code: "scenario_sealed", at: {}, title: "As bought" }])
    }
    expect(book.document()).toEqual(before)
    const again = reopened(book)
    expect(again.scenario.sealed).toBe(true)
    expect(again.saveCopy("Mine").sealed).toBeUndefined()
    expect(again.edit("width", "7 m").accepted).toBe(true)
  })
})

describe("a document of version 1", () => {
  const old = {
    format: "pegbook-workbook",
    version: 1,
    template: "small",
    unitSystem: "metric",
    current: "b",
    scenarios: [
      { id: "a", title: "First", typed: {}, tables: {}, colour: "red" },
      { id: "b", title: "Second", typed: { width: "9 m" }, tables: { holes: [{ deep: "2 m" }] } },
    ],
    later: { kept: true },
  }

  test("is brought to this version with what it does not know kept, and a history from here on", () => {
    const { document } = readDocument(old)
    if (document === undefined) throw new Error("it cannot be read")
    const { book, problems } = openBook(define(...ENTRIES), { document })
    expect(problems).toEqual([])
    expect([value(book, "width"), value(book, "dug")]).toEqual([9, 4])
    expect(book.history()).toEqual([])
    book.edit("width", "8 m")
    book.undo()
    expect(book.document()).toMatchObject({ ...old, version: 3 })
  })
})

test("after starting again the steps before it still say how things stood", () => {
  const book = bookOf(ENTRIES)
  book.edit("width", "5 m")
  book.edit("length", "2 m")
  expect(book.startAgain().accepted).toBe(true)
  expect([value(book, "width"), value(book, "length")]).toEqual([4, 3])
  const [first] = book.history()
  book.copyAt(first?.number ?? 0)
  expect([value(book, "width"), value(book, "length")]).toEqual([5, 3])
  book.undo()
  book.undo()
  expect([value(book, "width"), value(book, "length")]).toEqual([5, 2])
})

test("a history that does not fit its workbook is followed as far as it goes", () => {
  const saved = bookOf(ENTRIES).document()
  const step = (number: number, ...changes: unknown[]) => ({ number, at: 0, changes })
  const past = [
    step(1, { of: "current", from: "nowhere", to: "copy-1" }),
    step(2, { of: "typed", scenario: "nowhere", name: "width", from: "1 m", to: null }),
    step(3, { of: "scenario", place: 0, from: null, to: saved.scenarios[0] }),
    step(4, { of: "rows", scenario: "copy-1", name: "holes", start: 40, from: [{ deep: "x" }], to: [] }),
    step(5, { of: "typed", scenario: "copy-1", name: "width", from: "much", to: "4 m" }),
    step(6, {
      of: "own",
      place: 7,
      from: null,
      to: { kind: "formula", name: "own", label: "Own", measure: "ratio", formula: "1" },
    }),
  ]
  const { document } = readDocument({ ...saved, history: { past, future: [] } })
  if (document === undefined) throw new Error("it cannot be read")
  const { book } = openBook(define(...ENTRIES), { document })
  while (book.undo()) expect(book.scenarios().length).toBeGreaterThan(0)
  while (book.redo()) expect(book.has("width")).toBe(true)
  expect(value(book, "length")).toBe(3)
})
