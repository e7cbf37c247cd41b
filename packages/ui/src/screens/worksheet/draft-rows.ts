import type { TypedRow } from "../../bridge/sheet.ts"

/**
 * Where a row that was begun still wants values; nothing when all rows are whole. Blank rows do not count, nor do cells
 * of the columns that may stay blank.
 */
export function firstUnfinished(
  rows: readonly TypedRow[],
  columns: readonly string[],
  mayStayBlank: readonly string[],
): { readonly row: number; readonly missing: readonly string[] } | undefined {
  for (const [index, row] of rows.entries()) {
    const blank = columns.filter((column) => (row[column] ?? "").trim() === "")
    const missing = blank.filter((column) => !mayStayBlank.includes(column))
    if (missing.length > 0 && blank.length < columns.length) return { row: index + 1, missing }
  }
  return undefined
}

/** The rows that have something in them, and for each its place among all. */
export function rowsToCommit(
  rows: readonly TypedRow[],
  columns: readonly string[],
): { readonly rows: readonly TypedRow[]; readonly places: readonly number[] } {
  const places = [...rows.keys()].filter((place) =>
    columns.some((column) => (rows[place]?.[column] ?? "").trim() !== ""),
  )
  return { rows: places.map((place) => rows[place] ?? {}), places }
}
