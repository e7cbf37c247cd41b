import { describe, expect, test } from "vitest"
import { readTable, type TextColumn } from "../../src/exchange/read-table.ts"
import { inWords } from "../../src/problems/in-words.en.ts"

const PRICES: readonly TextColumn[] = [
  { name: "item", label: "What", measure: "text" },
  { name: "length", label: "Length", measure: "text" },
  { name: "unit", label: "By", measure: "text" },
  { name: "price", label: "Price today", measure: "money" },
]
const LEVELS: readonly TextColumn[] = [
  { name: "x", label: "Along", measure: "length" },
  { name: "level", label: "Level", measure: "length" },
]

const prices = (text: string) => readTable(text, { columns: PRICES, system: "us" })
const levels = (text: string) => readTable(text, { columns: LEVELS, system: "us" })
const codes = (read: { readonly problems: readonly { readonly code: string }[] }) =>
  read.problems.map(({ code }) => code)

describe("separators, marks and line ends", () => {
  const row = { item: "Plate, wide", length: "", unit: "each", price: "12.50" }

  test.each([
    ["commas", 'item,length,unit,price\n"Plate, wide",,each,12.50\n', ","],
    ["semicolons", "item;length;unit;price\r\nPlate, wide;;each;12.50", ";"],
    ["tabs", "\uFEFFitem\tlength\tunit\tprice\rPlate, wide\t\teach\t12.50\r", "\t"],
    ["decimal commas", "item;length;unit;price\nPlate, wide;;each;12,50", ";"],
    ["labels, in another order", 'price today,BY,What\n12.50,each,"Plate, wide"', ","],
  ])("%s", (_, text, separator) => {
    const read = prices(text)
    expect(read.problems).toEqual([])
    expect(read.bad).toEqual([])
    expect(read.good).toEqual([{ line: 2, row }])
    expect(read.separator).toBe(separator)
  })

  test("thousands of either kind; a comma alone before three digits is read as it is typed on the screen", () => {
    const read = (text: string) => prices(`item;price\n${text}`).good.map(({ row }) => row.price)
    expect(read("a;1.250,50")).toEqual(["1250.50"])
    expect(read("a;1,250.50")).toEqual(["1,250.50"])
    expect(read("a;1,250")).toEqual(["1,250"])
    expect(read("a;1,250\nb;0,5")).toEqual(["1.250", "0.5"])
  })

  test("the decimal mark can be told", () => {
    const read = readTable("item;price\na;1,250", { columns: PRICES, system: "us", decimalMark: "comma" })
    expect(read.good[0]?.row.price).toBe("1.250")
  })
})

test("a heading's unit is that of the bare numbers under it, and of no others", () => {
  const read = levels("x (m),level [cm]\n1.5,-3\n2 ft,4")
  expect(read.good.map(({ row }) => row)).toEqual([
    { x: "1.5 m", level: "-3 cm" },
    { x: "2 ft", level: "4 cm" },
  ])
})

describe("bad rows are named by line, column and value, with what is accepted", () => {
  const read = prices(
    'item,length,unit,price\nPlate,,each,12.50\nBeam,8 ft,each,cheap\nBolt,,each,\nNut,,"a\nb",1,2\n\nRod,,each,3 ft',
  )

  test("the good ones are kept", () => {
    expect(read.good.map(({ line }) => line)).toEqual([2])
    expect(read.bad.map(({ line }) => line)).toEqual([3, 4, 5, 8])
  })

  test.each([
    [3, "price, line 3", "cheap", /12|\d/],
    [4, "price, line 4", "nothing was entered", /Enter a value/],
    [5, "line 5", "5 cells", /4 headings|quotation marks/],
    [8, "price, line 8", "3 ft", /Accepted here/],
  ])("line %i", (line, where, what, accepted) => {
    const [problem] = read.bad.find((row) => row.line === line)?.problems ?? []
    const { says, next } = inWords(problem ?? { code: "formula_empty", at: {} }, "us")
    expect(says.toLowerCase()).toContain(where)
    expect(says).toContain(what)
    expect(`${says} ${next}`).toMatch(accepted)
  })
})

test("rows that say the same as an earlier one are told apart, and columns that nobody knows", () => {
  const read = prices("item,price,colour\nPlate,1,red\nBeam,2,red\nPlate,1,blue\n")
  expect(read.good.map(({ line }) => line)).toEqual([2, 3])
  expect(read.duplicates).toEqual([{ line: 4, first: 2 }])
  expect(read.unknownColumns).toEqual(["colour"])
})

test("formulas are kept as the text that they are, and flagged", () => {
  const read = prices('item,price\n"=HYPERLINK(""x"")",1\nBeam,=1+2\n\'=guarded,3\n')
  expect(read.good.map(({ row }) => row.item)).toEqual(['=HYPERLINK("x")', "=guarded"])
  expect(read.bad.map(({ line, cells }) => [line, cells[1]])).toEqual([[3, "=1+2"]])
  expect(read.formulas).toEqual([
    { line: 2, column: "item" },
    { line: 3, column: "price" },
  ])
})

test.each([
  ["", ["csv_empty"]],
  ["\n\n", ["csv_empty"]],
  ["Plate,1\nBeam,2", ["csv_no_column"]],
  ["item,unit\nPlate,each", ["csv_no_column"]],
  ["item,price,price\nPlate,1,2", ["csv_column_twice"]],
  ["item|price\nPlate|1", ["csv_no_column"]],
])("%j as a whole cannot be used", (text, expected) => {
  const read = prices(text)
  expect(codes(read)).toEqual(expected)
  expect(read.good).toEqual([])
})

test("a mark that is not closed does not lose the rows before it", () => {
  const read = prices('item,price\nPlate,1\n"Beam,2\nBolt,3')
  expect(codes(read)).toEqual(["csv_open_quote"])
  expect(read.good.map(({ row }) => row.item)).toEqual(["Plate"])
})

test("ten thousand rows", () => {
  const lines = Array.from({ length: 10_000 }, (_, row) => `Thing ${row},,each,${row}.25`)
  const begun = performance.now()
  const read = prices(`item,length,unit,price\n${lines.join("\n")}`)
  console.log(`10,000 rows read in ${Math.round(performance.now() - begun)} ms`)
  expect(read.good).toHaveLength(10_000)
  expect(read.good.at(-1)).toEqual({
    line: 10_001,
    row: { item: "Thing 9999", length: "", unit: "each", price: "9999.25" },
  })
})
