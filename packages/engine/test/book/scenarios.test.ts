import { describe, expect, test } from "vitest"
import { migrate } from "../../src/book/migrations.ts"
import { openBook, readDocument } from "../../src/index.ts"
import { bookOf, check, define, formula, input, table, value } from "../helpers/small-book.ts"

const ENTRIES = [
  input("width", "length", "4 m"),
  input("length", "length", "3 m"),
  input("most", "area", "13 m2"),
  formula("area", "area", "width * length"),
  table("rows", { kind: "formula", formula: "ROUNDUP(width / length; 0)" }, [["n", "count", "ROW()"]]),
  check("area_check", "area", "area", "most", { near: "0.9", advice: ["Make it {width} or less."] }),
]

describe("scenario copies", () => {
  test("a copy is changed apart from what it was copied from", () => {
    const book = bookOf(ENTRIES)
    const first = book.scenario.id
    const copy = book.saveCopy("Wider")
    book.edit("width", "5 m")
    expect(value(book, "area")).toBe(15)
    book.switchTo(first)
    expect(value(book, "area")).toBe(12)
    expect(book.moved().map(({ name }) => name)).toContain("area")
    book.switchTo(copy.id)
    expect(value(book, "area")).toBe(15)
  })

  test("can be renamed, removed, and brought back as it was", () => {
    const book = bookOf(ENTRIES)
    const copy = book.saveCopy("Wider")
    book.edit("width", "5 m")
    book.rename(copy.id, "  Much wider ")
    expect(book.scenario.title).toBe("Much wider")
    const { history: _before, ...before } = book.document()
    const bringBack = book.remove(copy.id)
    expect(book.scenarios()).toHaveLength(1)
    expect(value(book, "area")).toBe(12)
    bringBack()
    bringBack()
    const { history: _after, ...after } = book.document()
    expect(after).toEqual(before)
    expect(value(book, "area")).toBe(15)
  })

  test("the last one stays", () => {
    const book = bookOf(ENTRIES)
    expect(() => book.remove(book.scenario.id)).toThrow()
  })

  test("compare shows only what differs, with the difference", () => {
    const book = bookOf(ENTRIES)
    const first = book.scenario.id
    const copy = book.saveCopy("Wider")
    book.edit("width", "7 m")
    const comparison = book.compare(first, copy.id)
    expect(comparison.inputs).toMatchObject([
      { name: "width", left: { value: 4 }, right: { value: 7 }, by: "+3,000 mm" },
    ])
    expect(comparison.results.map(({ name }) => name)).toEqual(["area"])
    expect(comparison.tables).toEqual([{ name: "rows", left: 2, right: 3 }])
    expect(comparison.checks).toMatchObject([
      { name: "area_check", left: { verdict: "near" }, right: { verdict: "fails" } },
    ])
    expect(comparison.same).toBe(2)
    expect(value(book, "area")).toBe(21)
  })
})

describe("a saved workbook", () => {
  test("opens as it was", () => {
    const book = bookOf(ENTRIES)
    book.edit("width", `12' 3 1/2"`)
    book.saveCopy("Second")
    book.edit("length", "2")
    const saved = JSON.parse(JSON.stringify(book.document()))
    const { document, problems } = readDocument(saved)
    expect(problems).toEqual([])
    const again = document === undefined ? undefined : openBook(define(...ENTRIES), { document }).book
    expect(again?.document()).toEqual(book.document())
    expect(again && value(again, "area")).toBe(value(book, "area"))
  })

  test("keeps what this version does not know", () => {
    const json = {
      ...bookOf(ENTRIES).document(),
      photos: ["later"],
    }
    const [scenario] = json.scenarios
    const saved = {
      ...json,
      scenarios: [{ ...scenario, notes: "keep", typed: { width: "5 m", unheard_of: "7" } }],
    }
    const { document } = readDocument(saved)
    const opened = document === undefined ? undefined : openBook(define(...ENTRIES), { document }).book
    expect(opened?.document()).toEqual(saved)
  })

  test("with a value that can no longer be read opens on the template's own, and says so", () => {
    const json = bookOf(ENTRIES).document()
    const [scenario] = json.scenarios
    const { document } = readDocument({ ...json, scenarios: [{ ...scenario, typed: { width: "wide" } }] })
    const opened = document === undefined ? undefined : openBook(define(...ENTRIES), { document })
    expect(opened?.problems).toMatchObject([{ code: "input_unreadable", at: { entry: "width" } }])
    expect(opened && value(opened.book, "width")).toBe(4)
  })

  test.each([
    ["nothing", null, "file_unreadable"],
    ["a list", [], "file_unreadable"],
    ["another format", { format: "other", version: 1 }, "file_unreadable"],
    ["no version", { format: "pegbook-workbook" }, "file_unreadable"],
    ["a later version", { format: "pegbook-workbook", version: 99 }, "file_from_future"],
    [
      "no scenarios",
      {
        format: "pegbook-workbook",
        version: 1,
        template: "x",
        unitSystem: "us",
        current: "a",
        scenarios: [],
      },
      "file_unreadable",
    ],
  ])("that holds %s is refused with a reason", (_, json, code) => {
    expect(readDocument(json).problems.map((problem) => problem.code)).toEqual([code])
  })

  test("cannot reach the prototype of anything", () => {
    const typed = '"typed":{"__proto__":"polluted","constructor":"x","width":"5 m"}'
    const text = JSON.stringify(bookOf(ENTRIES).document()).replace('"typed":{}', typed)
    expect(text).toContain(typed)
    expect(readDocument(JSON.parse(text)).problems).toMatchObject([{ code: "file_unreadable" }])
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
    expect(Object.getPrototypeOf({})).toBe(Object.prototype)
  })

  test("of an older version is brought up one step at a time", () => {
    const steps = [
      (json: Readonly<Record<string, unknown>>) => ({ ...json, title: json.name }),
      (json: Readonly<Record<string, unknown>>) => ({ ...json, title: `${String(json.title)}!` }),
    ]
    const old = { format: "f", version: 1, name: "Shed", extra: 1 }
    expect(migrate(old, "f", 3, steps)).toEqual({
      json: { format: "f", version: 3, name: "Shed", title: "Shed!", extra: 1 },
    })
    expect(migrate({ ...old, version: 3 }, "f", 3, steps)).toEqual({ json: { ...old, version: 3 } })
  })
})

describe("a check", () => {
  const verdictAt = (width: string | undefined, most: string) => {
    const book = bookOf(
      ENTRIES.map((entry) =>
        entry.name === "most" && entry.kind === "input" ? { ...entry, default: null } : entry,
      ),
    )
    if (width !== undefined) book.edit("width", width)
    book.edit("most", most)
    return book.entry("area_check").check
  }
  test.each([
    ["3 m", "13 m2", "passes"],
    ["4 m", "13 m2", "near"],
    ["4 m", "12 m2", "near"],
    ["5 m", "13 m2", "fails"],
    ["5 m", "", "needs_entry"],
  ])("width %s within %s: %s", (width, most, verdict) => {
    expect(verdictAt(width, most)?.verdict).toBe(verdict)
  })

  test("says what could be changed only when it does not pass, with the number in it", () => {
    expect(verdictAt("3 m", "13 m2")?.advice).toEqual([])
    expect(verdictAt("5 m", "13 m2")?.advice).toEqual(["Make it 5,000 mm or less."])
  })

  test("shows both sides of its comparison", () => {
    const book = bookOf(ENTRIES)
    expect(book.entry("area_check")).toMatchObject({ formula: "area ≤ most", check: { ratio: 12 / 13 } })
    expect(book.leansOn("area_check")).toEqual(["area", "most"])
  })
})
