import { type EntryView, keptAs, shownAs } from "@pegbook/engine"

/** A row of a table: its texts by the column's bare name; what has no value yet is undefined. */
export type TableRow = Readonly<Record<string, string | undefined>>

/** The rows of a table as they are kept in words: what columns of texts hold is the same in every language. */
export function keptRowsOf(columns: readonly EntryView[], rowCount: number): readonly TableRow[] {
  return Array.from({ length: rowCount }, (_, row) =>
    Object.fromEntries(columns.map((column) => [bareName(column), keptText(column, row)])),
  )
}

function keptText({ readings, measure }: EntryView, row: number): string | undefined {
  const reading = readings?.[row]
  if (reading === undefined || reading === null) return undefined
  return typeof reading.value === "string" ? reading.value : keptAs(reading.text, measure)
}

/** What a kept row says in one of its columns, as it is read. */
export function saysIn(columns: readonly EntryView[], row: TableRow, name: string): string {
  const column = columns.find((one) => bareName(one) === name)
  return column === undefined ? "" : shownAs(row[name] ?? "", column.measure)
}

function bareName({ name }: EntryView): string {
  return name.slice(name.indexOf(".") + 1)
}

/** The rows of a table as texts, from its columns' views. */
export function rowsOf(columns: readonly EntryView[], rowCount: number): readonly TableRow[] {
  return Array.from({ length: rowCount }, (_, row) =>
    Object.fromEntries(columns.map((column) => [bareName(column), column.readings?.[row]?.text])),
  )
}
