import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { parseCsv } from "../../src/exchange/parse-csv.ts"
import { withoutGuard, writeCsv } from "../../src/exchange/write-csv.ts"

const cells = (text: string, separator: "," | ";" | "\t" = ",") =>
  parseCsv(text, separator).records.map((record) => record.cells)

// The examples are those of RFC 4180, section 2 (from memory).
describe("RFC 4180", () => {
  test.each<[rule: string, text: string, read: string[][]]>([
    [
      "1: a record a line",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "2: no line end after the last",
      "aaa,bbb\r\nzzz,yyy",
      [
        ["aaa", "bbb"],
        ["zzz", "yyy"],
      ],
    ],
    ["4: spaces belong to the cell", "a, b\r\n", [["a", " b"]]],
    ["5: cells in quotation marks", '"aaa","bbb"\r\n', [["aaa", "bbb"]]],
    [
      "6: line ends and commas in them",
      '"aaa","b\r\nbb, x"\r\nzzz,yyy',
      [
        ["aaa", "b\r\nbb, x"],
        ["zzz", "yyy"],
      ],
    ],
    ["7: a quotation mark written twice", '"a""aa","bb"\r\n', [['a"aa', "bb"]]],
  ])("%s", (_, text, read) => {
    expect(cells(text)).toEqual(read)
  })

  test("what is written ends each record with CRLF and puts quotation marks where they are needed", () => {
    expect(
      writeCsv([
        ["a", 1.5, true],
        ['6" pipe', null, "x,y"],
      ]),
    ).toBe('a,1.5,true\r\n"6"" pipe",,"x,y"\r\n')
  })

  test("whatever is written reads back the same", () => {
    const text = fc.string({ unit: fc.constantFrom(..."ab ,;\t\r\n\"'=+-@1.é") })
    const row = fc.array(text, { minLength: 2, maxLength: 4 })
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        const kept = rows.filter((one) => one.some((cell) => cell.trim() !== ""))
        expect(cells(writeCsv(kept)).map((one) => one.map(withoutGuard))).toEqual(kept)
      }),
    )
  })
})

test("a quotation mark within a cell is a character like any other", () => {
  expect(cells('10\' 6",8"\n')).toEqual([["10' 6\"", '8"']])
})

test("lines are counted through cells of several lines, blank lines, a byte-order mark and any line end", () => {
  const text = '\uFEFFa,b\n\n"one\ntwo",2\r3,4\r\n\n5,6'
  expect(parseCsv(text, ",").records.map(({ line }) => line)).toEqual([1, 3, 5, 7])
})

test("a quotation mark that is never closed is found at its line, and what stood before it is kept", () => {
  expect(parseCsv('a,b\n1,2\n3,"4\n5,6', ",")).toEqual({
    records: [
      { line: 1, cells: ["a", "b"] },
      { line: 2, cells: ["1", "2"] },
    ],
    openQuote: 3,
  })
})

test("never throws and always ends, whatever the text", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'a",;\t\r\n') }), (text) => {
      for (const separator of [",", ";", "\t"] as const) {
        expect(parseCsv(text, separator).records.every((record) => record.cells.length > 0)).toBe(true)
      }
    }),
  )
})

// How a cell becomes a formula in a spreadsheet: OWASP, "CSV Injection" (from memory).
describe("no cell is a formula to whoever opens the file", () => {
  test.each(["=1+2", "+1 ft", "-3 in", "@SUM(1)", "\t=1", "\r=1", "=cmd|' /C calc'!A0", "'=1"])(
    "%j",
    (text) => {
      const [[cell = ""] = []] = cells(writeCsv([[text, "x"]]))
      expect(cell).toBe(`'${text}`)
      expect(withoutGuard(cell)).toBe(text)
    },
  )

  test.each([
    ["-3", "-3"],
    [-3, "-3"],
    [1e-9, "1e-9"],
    ["+4.5e-7", "+4.5e-7"],
    ["a=b", "a=b"],
  ])("%j is left as it is", (given, written) => {
    expect(writeCsv([[given]])).toBe(`${written}\r\n`)
  })
})
