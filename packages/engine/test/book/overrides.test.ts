import { describe, expect, test } from "vitest"
import { openBook, readDocument } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, define, figure, formula, input, table, value } from "../helpers/small-book.ts"

//  prices (figures)     width, length
//     |                     |
//   total <- pieces <----- area ---- area_check
const ENTRIES = [
  input("width", "length", "4 m"),
  input("length", "length", "3 m"),
  figure("most", "area", "13 m2"),
  table("prices", { kind: "figures" }, [
    ["piece", "text", undefined, ["short", "long", "odd"]],
    ["price", "money", undefined, ["2", "3", "5"]],
    ["double", "money", "price * 2"],
  ]),
  formula("area", "area", "width * length"),
  formula("side", "length", "SQRT(area)"),
  formula("total", "money", "SUM(prices.price)"),
  formula("doubled", "money", "SUM(prices.double)"),
  formula("share", "ratio", "area_check.demand / area_check.limit"),
  check("area_check", "area", "area", "most"),
  table("rows", { kind: "formula", formula: "pieces" }, [["n", "count", "ROW()"]]),
  formula("pieces", "count", "ROUNDUP(width / length; 0)"),
  formula("counted", "count", "SUM(rows.n)"),
  formula("broken", "length", "width +"),
]

describe.each(EVERY_GRAPH)("with the %s graph", (_, graph) => {
  const open = () => bookOf(ENTRIES, { graph })

  test("a cell of a table of figures is typed over, followed, shown and put back", () => {
    const book = open()
    const { accepted, moved } = book.edit("prices.price.2", "7")
    expect(accepted).toBe(true)
    expect(moved.map(({ name, row }) => [name, row])).toEqual([
      ["prices.price", 2],
      ["prices.double", 2],
      ["total", undefined],
      ["doubled", undefined],
    ])
    expect(value(book, "total")).toBe(14)
    expect(value(book, "doubled")).toBe(28)
    const view = book.entry("prices.price")
    expect(view).toMatchObject({ changed: true, overrides: [{ row: 2, typed: "7", original: { value: 3 } }] })
    expect(book.entry("prices").changed).toBe(true)
    expect(book.document().scenarios[0]?.typed).toEqual({ "prices.price.2": "7" })
    expect(book.restore("prices.price.2").accepted).toBe(true)
    expect(value(book, "prices.price")).toEqual([2, 3, 5])
    expect(book.entry("prices.price").overrides).toBeUndefined()
    expect(book.document().scenarios[0]?.typed).toEqual({})
  })

  test("a column and a table of figures are put back whole, and nothing else with them", () => {
    const book = open()
    const typed = { "prices.price.3": "9", "prices.price.1": "1", "prices.piece.1": "tiny", width: "5 m" }
    expect(book.editAll(typed).accepted).toBe(true)
    expect(value(book, "prices.piece")).toEqual(["tiny", "long", "odd"])
    expect(book.entry("prices.price").overrides?.map(({ row }) => row)).toEqual([1, 3])
    book.restore("prices.price")
    expect(value(book, "prices.price")).toEqual([2, 3, 5])
    expect(value(book, "prices.piece")).toEqual(["tiny", "long", "odd"])
    book.restore("prices")
    expect(value(book, "prices.piece")).toEqual(["short", "long", "odd"])
    expect(value(book, "width")).toBe(5)
  })

  test("a formula is typed over; its own value stays readable and follows; a click puts it back", () => {
    const book = open()
    expect(book.edit("area", "25 m2").accepted).toBe(true)
    expect(value(book, "side")).toBe(5)
    expect(book.entry("area_check").check?.verdict).toBe("fails")
    expect(book.entry("area")).toMatchObject({
      changed: true,
      typed: "25 m2",
      formula: "width * length",
      overrides: [{ typed: "25 m2", original: { value: 12 } }],
    })
    book.edit("width", "5 m")
    expect(value(book, "area")).toBe(25)
    expect(book.entry("area").overrides).toMatchObject([{ original: { value: 15 } }])
    book.restore("area")
    expect(value(book, "area")).toBe(15)
    expect(book.entry("area")).toMatchObject({ changed: false })
    expect(book.entry("area").overrides).toBeUndefined()
  })

  test("the original of a formula over columns and over parts of a check can be read", () => {
    const book = open()
    book.editAll({ total: "100", share: "0.5", "prices.price.1": "4" })
    expect(book.entry("total").overrides).toMatchObject([{ original: { value: 12 } }])
    expect(book.entry("share").overrides?.[0]?.original?.value).toBeCloseTo(12 / 13, 12)
    expect(value(book, "share")).toBe(0.5)
  })

  test("a table follows when the formula that counts its rows is typed over", () => {
    const book = open()
    book.edit("pieces", "5")
    expect(value(book, "counted")).toBe(15)
    book.restore("pieces")
    expect(value(book, "counted")).toBe(3)
  })

  test("overrides are saved, come back, and belong to their scenario", () => {
    const book = open()
    const first = book.scenario.id
    const copy = book.saveCopy("Mine")
    book.editAll({ area: "20 m2", "prices.price.2": "8" })
    const saved = JSON.parse(JSON.stringify(book.document()))
    const { document } = readDocument(saved)
    if (document === undefined) throw new Error("it cannot be read back")
    const { book: again, problems } = openBook(define(...ENTRIES), { document, graph })
    expect(problems).toEqual([])
    expect([value(again, "area"), value(again, "total")]).toEqual([20, 15])
    again.switchTo(first)
    expect([value(again, "area"), value(again, "total")]).toEqual([12, 10])
    again.switchTo(copy.id)
    expect([value(again, "area"), value(again, "total")]).toEqual([20, 15])
    expect(again.compare(first, copy.id).results.map(({ name }) => name)).toEqual([
      "area",
      "side",
      "total",
      "doubled",
      "share",
    ])
  })

  test("a saved override that cannot be read is reported, and the original stands", () => {
    const saved = bookOf(ENTRIES).document()
    const [scenario] = saved.scenarios
    if (scenario === undefined) throw new Error("there is no scenario")
    const typed = { area: "far", "prices.price.2": "far", "prices.price.99": "9" }
    const document = { ...saved, scenarios: [{ ...scenario, typed }] }
    const { book, problems } = openBook(define(...ENTRIES), { document, graph })
    expect(problems.map(({ code, at }) => [code, at.entry, at.row])).toEqual([
      ["input_unreadable", "prices.price", 2],
      ["input_unreadable", "area", undefined],
    ])
    expect([value(book, "area"), value(book, "total")]).toEqual([12, 10])
    expect(book.document().scenarios[0]?.typed).toEqual(typed)
  })
})

test.each([
  ["prices.price.0", "1", "no_such_entry"],
  ["prices.price.4", "1", "no_such_entry"],
  ["prices.price.01", "1", "no_such_entry"],
  ["prices.price.2", "dear", "input_unreadable"],
  ["prices.price.2", "", "input_empty"],
  ["prices.double.2", "1", "no_such_entry"],
  ["prices.double", "1", "not_an_input"],
  ["rows.n.1", "1", "no_such_entry"],
  ["rows", "1", "not_an_input"],
  ["area", "12 kg", "input_wrong_unit"],
  ["area_check", "12 m2", "not_an_input"],
  ["area_check.demand", "12 m2", "no_such_entry"],
  ["broken", "1 m", "unexpected"],
])("typing over %s with %j is refused", (name, typed, code) => {
  const book = bookOf(ENTRIES)
  const before = book.document()
  expect(book.edit(name, typed)).toMatchObject({ accepted: false, problems: [{ code }] })
  expect(book.document()).toEqual(before)
})

test("only what may be typed over can be put back", () => {
  const book = bookOf(ENTRIES)
  expect(book.restore("area_check").problems).toMatchObject([{ code: "not_an_input" }])
  expect(book.restore("rows").problems).toMatchObject([{ code: "not_an_input" }])
  expect(book.restore("nothing").problems).toMatchObject([{ code: "no_such_entry" }])
})
