import { afterEach, describe, expect, test } from "vitest"
import { entriesCsv, exportTemplate, tableCsv, typedColumnsOf } from "../../src/exchange/book-csv.ts"
import { parseCsv } from "../../src/exchange/parse-csv.ts"
import { readTable } from "../../src/exchange/read-table.ts"
import { ENGLISH_TEXTS } from "../../src/language/english.ts"
import { useLanguage } from "../../src/language/in-force.ts"
import type { LanguageId } from "../../src/language/language.ts"
import { loadLanguage } from "../../src/language/load-language.ts"
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
  expect(heads).toEqual([
    "Name",
    "What it is",
    "Kind",
    "In SI units",
    "SI unit",
    "As read",
    "Formula",
    "Why",
    "Where from",
  ])
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

describe("in French", () => {
  const speak = async (id: LanguageId) => useLanguage(await loadLanguage(id), ENGLISH_TEXTS)
  afterEach(() => speak("en"))

  // RFC 4180, section 2, rule 3 (from memory): the header line names the fields, and has as many as the records have.
  test("the header line has French names, one for each field, and numbers stay as a program reads them", async () => {
    await speak("fr")
    const [heads = [], ...rows] = parseCsv(entriesCsv(book), ",").records.map(({ cells }) => cells)
    expect(heads).toEqual([
      "Nom",
      "Ce que c’est",
      "Sorte",
      "En unités SI",
      "Unité SI",
      "Tel que lu",
      "Formule",
      "Pourquoi",
      "Source",
    ])
    expect(rows.map(({ length }) => length)).toEqual(rows.map(() => heads.length))
    const half = rows.find(([name]) => name === "half")
    expect(half?.slice(2, 5)).toEqual(["formule", "2", "m"])
    expect(rows.find(([name]) => name === "fits")?.slice(2, 4)).toEqual(["vérification", "0.5"])
  })

  test.each<readonly [written: LanguageId, read: LanguageId]>([
    ["fr", "en"],
    ["en", "fr"],
    ["fr", "fr"],
  ])(
    "a table that was written out in %s is brought in again in %s, and says the same",
    async (written, read) => {
      await speak(written)
      const text = tableCsv(bookOf([levels]), "levels")
      await speak(read)
      const { good, bad } = readTable(text, {
        columns: levels.kind === "table" ? typedColumnsOf(levels) : [],
        system: "metric",
      })
      expect(bad).toEqual([])
      const other = bookOf([levels])
      other.editTable("levels", [])
      const rows = good.map(({ row }) => row)
      expect(other.editTable("levels", rows).accepted).toBe(true)
      expect(other.table("levels").rowCount).toBe(2)
      expect(tableCsv(other, "levels")).toBe(
        "x (m),level (m),note,double (m)\r\n0,-0.0762,'=high,-0.1524\r\n2.5,0.1,,0.2\r\n",
      )
    },
  )
})
