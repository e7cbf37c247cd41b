import type { EntryView } from "@pegbook/engine"

/** A row of a table: its texts by the column's bare name; what has no value yet is undefined. */
export type TableRow = Readonly<Record<string, string | undefined>>

/** The rows of a table as texts, from its columns' views. */
export function rowsOf(columns: readonly EntryView[], rowCount: number): readonly TableRow[] {
  return Array.from({ length: rowCount }, (_, row) =>
    Object.fromEntries(
      columns.map(({ name, readings }) => [name.slice(name.indexOf(".") + 1), readings?.[row]?.text]),
    ),
  )
}
