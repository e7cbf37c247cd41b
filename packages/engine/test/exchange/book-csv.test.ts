import { expect, test } from "vitest"
import { entriesCsv, exportTemplate, tableCsv, typedColumnsOf } from "../../src/exchange/book-csv.ts"
import { parseCsv } from "../../src/exchange/parse-csv.ts"
import { readTable } from "../../src/exchange/read-table.ts"
import { bookOf, check, formula, input, table } from "../helpers/small-book.ts"

const levels = table(
  "levels",
  {
    kind: "input",
    most: 100,
    default: [
      { x: "0 m", level: "-3 in", note: "=high" },
      { x: "2.5 m", level: "0.1 m", note: "" },
    ],
  },
  [
    ["x", "length"],
    ["level", "length"],
    ["note", "text"],
    ["double", "length", "2 * level"],
  ],
)
const book = bookOf([
  input("width", "length", "4 m"),
  input("stock", "length", "2 m, 3 m", { list: true }),
  input("spare", "length", null),
  formula("half", "length", "width / 2"),
  check("fits", "length", "half", "width"),
  levels,
])

test("a table in SI units, with the unit in each heading", () => {
  expect(tableCsv(book, "levels")).toBe(
    "x (m),level (m),note,double (m)\r\n0,-0.0762,'=high,-0.1524\r\n2.5,0.1,,0.2\r\n",
  )
})

test("a table that was written out can be brought in again, and then says the same", () => {
  const entry = levels.kind === "table" ? levels : undefined
  const columns = entry === undefined ? [] : typedColumnsOf(entry)
  const read = readTable(tableCsv(book, "levels"), { columns, system: "us" })
  expect(read.bad).toEqual([])
  expect(read.unknownColumns).toEqual(["double (m)"])
  const other = bookOf([levels])
  expect(
    other.editTable(
      "levels",
      read.good.map(({ row }) => row),
    ).accepted,
  ).toBe(true)
  expect(tableCsv(other, "levels")).toBe(tableCsv(book, "levels"))
  expect(exportTemplate(columns, "us")).toBe("x (in),level (in),note\r\n")
})

test("all entries, with what a reader asks of each", () => {
  const [heads, ...rows] = parseCsv(entriesCsv(book), ",").records.map(({ cells }) => cells)
  expect(heads).toEqual(["name", "label", "kind", "value", "unit", "as read", "formula", "why", "source"])
  const row = (name: string) => rows.find((cells) => cells[0] === name)?.slice(2, 7)
  expect(row("width")).toEqual(["input", "4", "m", "4,000 mm", ""])
  expect(row("half")).toEqual(["formula", "2", "m", "2,000 mm", "width / 2"])
  expect(row("stock")?.slice(0, 3)).toEqual(["input", "2; 3", "m"])
  expect(row("spare")?.slice(0, 3)).toEqual(["input", "", "m"])
  expect(row("fits")?.slice(0, 2)).toEqual(["check", "0.5"])
  expect(row("levels")?.slice(0, 2)).toEqual(["input", "2"])
  expect(row("levels.double")?.[4]).toBe("2 * level")
  expect(rows.every((cells) => cells.length === 9 && cells[7] !== "" && cells[8] !== "")).toBe(true)
})
