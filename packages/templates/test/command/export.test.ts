import { readFileSync } from "node:fs"
import { expect, test } from "vitest"
import { calcJson, file, pegbook, refuses } from "./run.ts"

const PLAIN = "shed-base"
const DEMO = "game-table-platform"

test("a table as CSV: what calc says, in SI units under headings with their unit", () => {
  const { status, out } = pegbook("export", DEMO, "--table", "supports")
  expect(status).toBe(0)
  const [heads = "", first = "", ...rest] = out.split("\r\n")
  const place = heads.split(",").indexOf("x (m)")
  const rows = calcJson(DEMO).tables.supports ?? []
  expect(Number(first.split(",")[place])).toBe(rows[0]?.x?.value)
  // The last line ends as the others do.
  expect(rest.at(-1)).toBe("")
  expect(rest).toHaveLength(rows.length)
})

test("all entries as CSV follow what is set", () => {
  const { out } = pegbook("export", PLAIN, "--entries", "--set", "platform_length=4 m")
  expect(out.split("\r\n").find((line) => line.startsWith("platform_length,"))).toContain(",4,m,")
})

test("headings to fill in, filled in and brought in: the cost follows", () => {
  const { out } = pegbook("export", PLAIN, "--headings", "prices")
  expect(out).toBe("item,length,unit,price,supplier,pack,from,date,lead\r\n")
  const priced = (text: string) =>
    calcJson(PLAIN, "--table", file(`${out}${text}`, "prices.csv")).quantities.materials_cost?.value as number
  const dear = priced("2x6,,each,25,,,,,\r\n")
  expect(dear).toBeGreaterThan(0)
  expect(priced("2x6,,each,12.50,,,,,\r\n")).toBeCloseTo(dear / 2, 9)
})

test("what a CSV cannot be used for is said with its line", () => {
  const prices = file("item,price\n2x6,12\n2x4,cheap\n", "prices.csv")
  refuses(["calc", PLAIN, "--table", prices], "price, line 3", "cheap")
  refuses(["calc", PLAIN, "--table", file("item,price\n", "price.csv")], '"price"', "prices.csv")
  refuses(["calc", PLAIN, "--table", file("", "prices.csv")], "nothing in it")
})

test("OpenDocument is written to a file", () => {
  const path = file("", "workbook.ods")
  const { status, out } = pegbook("export", PLAIN, "--to", path)
  expect(status).toBe(0)
  expect(out).toContain(path)
  expect(readFileSync(path).subarray(0, 2).toString()).toBe("PK")
})

test.each([
  [["export", PLAIN], "--entries"],
  [["export", PLAIN, "--entries", "--table", "supports"], "one thing at a time"],
  [["export", DEMO, "--table", "suports"], "supports"],
  [["export", PLAIN, "--headings", "supports"], "prices"],
  [["export", PLAIN, "--to", "saved.json"], ".ods"],
  [["export", PLAIN, "--to", "/nowhere/at/all.ods"], "cannot be written"],
  [["calc", PLAIN, "--entries"], "--entries"],
])("%j is refused", (args, part) => {
  refuses(args, part)
})

test("the schema is one of JSON, and the saved workbook's", () => {
  const { status, out } = pegbook("schema")
  expect(status).toBe(0)
  const schema = JSON.parse(out) as { $schema: string; required: string[]; properties: object }
  expect(schema.$schema).toMatch(/json-schema\.org\/draft\/2020-12/)
  expect(schema.required).toEqual(expect.arrayContaining(["format", "version", "template", "scenarios"]))
  expect(schema.properties).toMatchObject({ format: { const: "pegbook-workbook" } })
})
