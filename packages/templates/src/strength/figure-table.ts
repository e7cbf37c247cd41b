import type { Column, MeasureId, Source, TableEntry } from "@pegbook/engine"

/** One published row: a text with its unit for each column. */
export type Cells = Readonly<Record<string, string>>

interface Described {
  readonly label: string
  readonly measure: MeasureId
  readonly why: string
}

/** The column that says of every row whether it was seen, or recalled. */
export const isRead: Described = {
  label: "Seen or recalled",
  measure: "text",
  why: "Rows from memory were not seen in print when they were written down: confirm them before you lean on them.",
}

/**
 * A table of published figures, written row by row.
 * Throws when a row lacks a column: a table that is wrong is found when it is loaded.
 */
export function figureTable(given: {
  readonly name: string
  readonly label: string
  readonly why: string
  readonly sources: readonly Source[]
  readonly columns: Readonly<Record<string, Described>>
  readonly rows: readonly Cells[]
}): TableEntry {
  const { name, label, why, sources, rows } = given
  const columns = Object.entries(given.columns).map(
    ([column, described]): Column => ({
      name: column,
      ...described,
      sources,
      values: rows.map((row, index) => {
        const cell = row[column]
        if (cell === undefined) throw new RangeError(`${name}: row ${index + 1} has no ${column}`)
        return cell
      }),
    }),
  )
  return { kind: "table", name, label, why, sources, rows: { kind: "figures" }, columns }
}
