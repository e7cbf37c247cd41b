import { describe, expect, test } from "vitest"
import { bookOf, figure, formula, input, reads, value } from "../helpers/small-book.ts"

//   width   length   height
//       \   /            (not touched)
//       area
//        |
//      sheets
const PLATE = [
  input("width", "length", "4 m", { least: "1 m", most: "30 m" }),
  input("length", "length", "3 m"),
  input("height", "length", "2 m"),
  figure("sheet_area", "area", "1.5 m2"),
  formula("area", "area", "width * length"),
  formula("sheets", "count", "ROUNDUP(area / sheet_area; 0)"),
]

describe("an edit", () => {
  test("moves what leans on it, old and new, and nothing else", () => {
    const book = bookOf(PLATE)
    const { accepted, moved } = book.edit("width", "5 m")
    expect(accepted).toBe(true)
    expect(moved.map(({ name, old, new: now }) => [name, old?.value, now?.value])).toEqual([
      ["width", 4, 5],
      ["area", 12, 15],
      ["sheets", 8, 10],
    ])
    expect(book.moved()).toEqual(moved)
  })

  test("that changes nothing moves nothing", () => {
    const book = bookOf(PLATE)
    expect(book.edit("width", "4000").moved).toEqual([])
  })

  test("takes either unit system, with fractions", () => {
    const book = bookOf(PLATE)
    book.edit("width", `10' 6 1/2"`)
    expect(value(book, "width")).toBe(3.2131)
    book.edit("width", "3200")
    expect(value(book, "width")).toBe(3.2)
  })

  test("keeps the unit that a bare number had when it was typed", () => {
    const book = bookOf(PLATE)
    book.edit("width", "3200")
    book.showIn("us")
    expect(value(book, "width")).toBe(3.2)
    expect(book.entry("width").typed).toBe("3200 mm")
  })

  test("what an input accepts is said in the units shown, again and again", () => {
    const book = bookOf(PLATE)
    const metric = book.entry("width").accepts
    expect(metric).toMatch(/1.000 mm.*30.000 mm/)
    book.showIn("us")
    expect(book.entry("width").accepts).toMatch(/3' 3 3\/8".*98' 5 1\/8"/)
    expect(book.entry("length").accepts).not.toBe(book.entry("width").accepts)
    book.showIn("metric")
    expect(book.entry("width").accepts).toBe(metric)
  })

  test.each([
    ["width", "about four", "input_unreadable"],
    ["width", "4 kg", "input_wrong_unit"],
    ["width", "4 furlongs", "input_unknown_unit"],
    ["width", "", "input_empty"],
    ["width", "0.5 m", "input_below"],
    ["width", "31 m", "input_above"],
    ["widht", "4 m", "no_such_entry"],
  ])("of %s to %j is refused and the last good value stays", (name, typed, code) => {
    const book = bookOf(PLATE)
    const before = book.document()
    const result = book.edit(name, typed)
    expect(result.accepted).toBe(false)
    expect(result.problems.map((problem) => problem.code)).toEqual([code])
    expect(book.document()).toEqual(before)
    expect(value(book, "sheets")).toBe(8)
  })

  test("of several is all or none", () => {
    const book = bookOf(PLATE)
    expect(book.editAll({ width: "6 m", length: "nonsense" }).accepted).toBe(false)
    expect(value(book, "area")).toBe(12)
    expect(book.editAll({ width: "6 m", length: "5 m" }).accepted).toBe(true)
    expect(value(book, "area")).toBe(30)
  })

  test("may override a figure, which then says so and can be put back", () => {
    const book = bookOf(PLATE)
    expect(book.entry("sheet_area").changed).toBe(false)
    book.edit("sheet_area", "3 m2")
    expect(book.entry("sheet_area").changed).toBe(true)
    expect(value(book, "sheets")).toBe(4)
    book.restore("sheet_area")
    expect(book.entry("sheet_area").changed).toBe(false)
    expect(value(book, "sheets")).toBe(8)
  })

  test("tells each listener once", () => {
    const book = bookOf(PLATE)
    let told = 0
    const stop = book.subscribe(() => told++)
    book.edit("width", "5 m")
    stop()
    book.edit("width", "6 m")
    expect(told).toBe(1)
  })
})

describe("a choice and a list", () => {
  test("a choice takes only what it offers, whatever its case and spaces", () => {
    const book = bookOf([input("finish", "text", "Oiled", { choices: ["Oiled", "Bare", "No.2"] })])
    expect(book.edit("finish", "no. 2").accepted).toBe(true)
    expect(value(book, "finish")).toBe("No.2")
    expect(book.edit("finish", "bare").accepted).toBe(true)
    expect(value(book, "finish")).toBe("Bare")
    expect(book.edit("finish", "gilt").problems.map((problem) => problem.code)).toEqual([
      "input_not_a_choice",
    ])
  })

  test("a list is a column for formulas and a line of text for people", () => {
    const book = bookOf([
      input("stock", "length", "8 ft, 12 ft", { list: true }),
      formula("longest", "length", "MAX(stock)"),
      formula("offers", "count", "COUNT(stock)"),
    ])
    book.edit("stock", "8 ft; 10 ft; 16 ft")
    expect(value(book, "longest")).toBe(4.8768)
    expect(value(book, "offers")).toBe(3)
    book.showIn("us")
    expect(reads(book, "stock")).toBe(`8' 0", 10' 0", 16' 0"`)
    expect(book.edit("stock", "8 ft, long").accepted).toBe(false)
  })

  test("an input left blank makes what leans on it wait for it", () => {
    const book = bookOf([
      input("limit", "length", null),
      formula("half", "length", "limit / 2"),
      formula("quarter", "length", "half / 2"),
      formula("other", "count", "3"),
    ])
    expect(book.entry("quarter").problems).toMatchObject([{ code: "needs_entry", inputs: ["limit"] }])
    expect(value(book, "other")).toBe(3)
    book.edit("limit", "4 m")
    expect(value(book, "quarter")).toBe(1)
    book.edit("limit", "")
    expect(book.entry("half").state).toBe("needs_entry")
  })
})

test("an input that may stay blank is not waited for", () => {
  const book = bookOf([
    input("part", "length", null, { blank: "all of it" }),
    input("whole", "length", "4 m"),
    formula("covered", "length", "IFERROR(part; whole)"),
  ])
  expect(book.entry("part")).toMatchObject({ state: "ok", blank: "all of it", problems: [] })
  expect(value(book, "covered")).toBe(4)
  book.edit("part", "3 m")
  expect(value(book, "covered")).toBe(3)
  book.edit("part", "")
  expect(value(book, "covered")).toBe(4)
})
