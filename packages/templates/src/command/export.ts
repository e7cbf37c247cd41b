import {
  type Book,
  entriesCsv,
  exportTemplate,
  nearNames,
  tableCsv,
  typedColumnsOf,
  writeOpenDocument,
} from "@pegbook/engine"
import type { Given } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import { phrases } from "./phrases.ts"
import { checkWritable, writeFile } from "./write-file.ts"

const WAYS = "--entries, --table <name>, --headings <table> or --to <file.ods>"

/** Before anything is searched for: one thing is to be written, and to a file that can be. */
export function checkExport(given: Given): void {
  const asked = [given.entries, given.tables.length > 0, given.headings !== undefined, given.to !== undefined]
  if (asked.filter(Boolean).length !== 1 || given.tables.length > 1) {
    throw new BadInput(`export writes one thing at a time. Give one of ${WAYS}.`)
  }
  if (given.to === undefined) return
  if (!given.to.endsWith(".ods")) {
    throw new BadInput(
      `--to: ${quoted(given.to)} does not end with .ods. Write for example --to workbook.ods.`,
    )
  }
  checkWritable("--to", given.to)
}

/** A workbook or a part of it in an open format: CSV on standard output, or an OpenDocument file. `--table` names a table to write. */
export function exportBook(book: Book, given: Given): readonly string[] {
  if (given.to !== undefined) return [writeTo(given.to, book)]
  if (given.entries) return csvLines(entriesCsv(book))
  if (given.headings !== undefined) return csvLines(headings(given.headings, book))
  const name = given.tables[0] ?? ""
  if (!tablesOf(book).includes(name)) throw noSuchTable(name, tablesOf(book))
  return csvLines(tableCsv(book, name))
}

/** Each line but its `\n`, which comes with printing; the last is written whole. */
function csvLines(csv: string): readonly string[] {
  return csv.replace(/\n$/, "").split("\n")
}

function headings(name: string, book: Book): string {
  const entered = tableEntries(book).filter((table) => typedColumnsOf(table).length > 0)
  const table = entered.find((one) => one.name === name)
  if (table === undefined)
    throw noSuchTable(
      name,
      entered.map((one) => one.name),
    )
  return exportTemplate(typedColumnsOf(table), book.unitSystem)
}

function tableEntries(book: Book) {
  return book.sections.flatMap(({ entries }) => entries.filter((entry) => entry.kind === "table"))
}

function tablesOf(book: Book): string[] {
  return tableEntries(book).map(({ name }) => name)
}

function noSuchTable(name: string, tables: readonly string[]): BadInput {
  const meant = nearNames(name, tables)
  const next =
    meant.length > 0 ? `Did you mean ${meant.join(" or ")}?` : `The tables are ${tables.join(", ")}.`
  return new BadInput(`there is no such table as ${quoted(name)} here. ${next}`)
}

function writeTo(path: string, book: Book): string {
  writeFile("--to", path, writeOpenDocument(book))
  return phrases().wroteSheets(path, book.definition.title, tablesOf(book).length)
}
