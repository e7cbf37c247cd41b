/** A cell: numbers stay numbers, `null` is empty. */
export type CsvCell = string | number | boolean | null

const LINE_END = "\r\n"

/** Text that a spreadsheet would take for a formula: it begins so, and is no number. */
const RISKY = /^'*[=+\-@\t\r]/
const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i

/**
 * Rows as CSV text by RFC 4180: commas, CRLF after every row, quotation marks where a cell needs them.
 *
 * A text that a spreadsheet would run as a formula (it begins with `=`, `+`, `-`, `@`, a tab or a carriage return, and is
 * not a number) gets an apostrophe before it; {@link withoutGuard} takes it off again.
 */
export function writeCsv(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => row.map(written).join(",") + LINE_END).join("")
}

/** The text that was guarded. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && RISKY.test(cell.slice(1)) ? cell.slice(1) : cell
}

/** Whether a cell of a file that was read would be a formula to a spreadsheet. */
export function looksLikeFormula(cell: string): boolean {
  return /^\s*([=@]|[+-]\s*[^\d.\s]|[+-].*[|!(])/.test(cell)
}

function written(cell: CsvCell): string {
  if (cell === null) return ""
  if (typeof cell !== "string") return String(cell)
  const guarded = RISKY.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}
