import type { EntryView, Reading } from "../book/views.ts"
import type { TableEntry } from "../definition/entry.ts"
import { languageInForce } from "../language/in-force.ts"
import type { UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { columnName, type ExportedBook, entriesOf, sourcesInOneLine } from "./exported-book.ts"
import type { TextColumn } from "./read-table.ts"
import { sheetText } from "./sheet-text.ts"
import { type CsvCell, writeCsv } from "./write-csv.ts"

/**
 * One table as CSV: a heading for each column, `name (unit)`, then its rows. Numbers are in SI units, money in the
 * currency's major unit; a value that is missing is an empty cell. `readTable` takes it back.
 */
export function tableCsv(book: ExportedBook, table: string): string {
  const { columns, rowCount } = book.table(table)
  const rows = Array.from({ length: rowCount }, (_, row) =>
    columns.map(({ readings }) => readings?.[row]?.value ?? null),
  )
  return writeCsv([
    columns.map(({ name, measure: id }) => heading(columnName(name), measure(id).si)),
    ...rows,
  ])
}

/**
 * All entries as CSV, one a row; a table's value is its number of rows, and its columns follow it. Headings are in the
 * language in force, and those of the OpenDocument file. Values are in SI units with a decimal point in every language.
 */
export function entriesCsv(book: ExportedBook): string {
  const rows = entriesOf(book).flatMap((view) =>
    view.shape === "table" ? [view, ...book.table(view.name).columns] : [view],
  )
  const [name, label, kind, , , inSi, siUnit, asRead, formula, why, from] = sheetText().entryHeads
  const { kinds } = languageInForce().entries
  return writeCsv([
    [name, label, kind, inSi, siUnit, asRead, formula, why, from],
    ...rows.map((view) => [
      view.name,
      view.label,
      kinds[view.kind],
      ...valueCells(view),
      view.formula ?? "",
      view.why,
      sourcesInOneLine(view.sources),
    ]),
  ])
}

function valueCells(view: EntryView): readonly [value: CsvCell, unit: CsvCell, text: CsvCell] {
  if (view.shape === "column") return [null, measure(view.measure).si, ""]
  if (view.shape === "list") {
    const readings = (view.readings ?? []).filter((reading): reading is Reading => reading !== null)
    return [readings.map(({ value }) => value).join("; "), measure(view.measure).si, view.reading?.text ?? ""]
  }
  return [
    view.reading?.value ?? null,
    view.reading?.unit ?? measure(view.measure).si,
    view.reading?.text ?? "",
  ]
}

/** A CSV with the headings of an entered table and nothing under them, for somebody to fill in. */
export function exportTemplate(columns: readonly TextColumn[], system: UnitSystem): string {
  return writeCsv([columns.map(({ name, measure: id }) => heading(name, measure(id).usual[system]))])
}

/** The columns of an entered table that are typed, as `readTable` and `exportTemplate` take them. */
export function typedColumnsOf(table: TableEntry): readonly TextColumn[] {
  return table.rows.kind === "input" ? table.columns.filter(({ formula }) => formula === undefined) : []
}

function heading(name: string, unit: string): string {
  return unit === "" || unit === "1" ? name : `${name} (${unit})`
}
