/** One record of a CSV text, and the line of the text on which it begins, from 1. */
export interface CsvRecord {
  readonly line: number
  readonly cells: readonly string[]
}

export interface ParsedCsv {
  /** Without the blank lines. */
  readonly records: readonly CsvRecord[]
  /** The line of a quotation mark that is never closed. What follows it is in no record. */
  readonly openQuote?: number
}

export const SEPARATORS = [",", ";", "\t"] as const
export type Separator = (typeof SEPARATORS)[number]

/**
 * Reads CSV by RFC 4180, and what is met in practice: any line end, a byte-order mark, a quotation mark in the middle of
 * a cell (`6' 2"`), which is then a character like any other. Never throws.
 */
export function parseCsv(text: string, separator: Separator): ParsedCsv {
  const records: CsvRecord[] = []
  const end = text.length
  let at = text.startsWith("\uFEFF") ? 1 : 0
  let line = 1
  while (at < end) {
    const begun = line
    const cells: string[] = []
    for (let more = true; more; ) {
      let cell = ""
      if (text[at] === '"') {
        const quoted = readQuoted(text, at + 1)
        if (quoted === undefined) return { records, openQuote: line }
        cell = quoted.cell
        line += lineEndsIn(cell)
        at = quoted.next
      }
      const from = at
      while (at < end && text[at] !== separator && text[at] !== "\n" && text[at] !== "\r") at++
      cells.push(cell + text.slice(from, at))
      more = text[at] === separator
      if (more) at++
    }
    if (text[at] === "\r" && text[at + 1] === "\n") at++
    at++
    line++
    if (cells.some((cell) => cell.trim() !== "")) records.push({ line: begun, cells })
  }
  return { records }
}

function readQuoted(
  text: string,
  from: number,
): { readonly cell: string; readonly next: number } | undefined {
  let close = text.indexOf('"', from)
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2)
  if (close < 0) return undefined
  return { cell: text.slice(from, close).replaceAll('""', '"'), next: close + 1 }
}

function lineEndsIn(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0
}
