import type { Change } from "@pegbook/engine"
import type { Sheet, TypedRow } from "../../bridge/sheet.ts"
import { spoken } from "../../text/spoken.ts"
import { shownText } from "./shown-text.ts"

type Named = Pick<Sheet, "has" | "entry" | "originalRows">

/** The most cells or rows of one change that are told one by one. */
const TOLD = 3

/** What became of an entered table: its cells that were typed, the rows that came or went; of more, how many there are. */
export function rowsWords(change: Change & { readonly of: "rows" }, label: string, named: Named): string {
  if (change.to === null) return spoken.changes.rowsBack(label)
  const from: readonly TypedRow[] = change.from ?? named.originalRows(change.name)
  const { start, to, name } = change
  if (from.length === to.length) {
    const cells = to.flatMap((row, at) => cellsOf(row, from[at] ?? {}, start + at + 1))
    if (cells.length > 0 && cells.length <= TOLD)
      return cells.map(({ says, was, is }) => spoken.changes.typed(says, was, is)).join("; ")
    return spoken.changes.rows(label, to.length)
  }
  const added = without(to, from)
  const removed = without(from, to)
  if (added.length + removed.length > TOLD) return spoken.changes.rows(label, to.length)
  return [
    ...added.map((row) => spoken.changes.rowAdded(label, textsOf(row))),
    ...removed.map((row) => spoken.changes.rowRemoved(label, textsOf(row))),
  ].join("; ")

  function cellsOf(row: TypedRow, before: TypedRow, number: number) {
    const columns = [...new Set([...Object.keys(before), ...Object.keys(row)])]
    return columns
      .filter((column) => (row[column] ?? "") !== (before[column] ?? ""))
      .map((column) => ({
        says: spoken.changes.cell(label, number, columnLabel(column)),
        was: shownText(before[column] ?? "", `${name}.${column}`, named),
        is: shownText(row[column] ?? "", `${name}.${column}`, named),
      }))
  }

  function textsOf(row: TypedRow): string {
    const texts = Object.entries(row).filter(([, text]) => text !== "")
    return texts.map(([column, text]) => shownText(text, `${name}.${column}`, named)).join(", ")
  }

  function columnLabel(column: string): string {
    return named.has(`${name}.${column}`) ? named.entry(`${name}.${column}`).label : column
  }
}

/** The rows of one side that the other does not have, each as often as it is there more. */
function without(rows: readonly TypedRow[], others: readonly TypedRow[]): readonly TypedRow[] {
  const left = others.map((row) => JSON.stringify(row))
  return rows.filter((row) => {
    const place = left.indexOf(JSON.stringify(row))
    if (place >= 0) left.splice(place, 1)
    return place < 0
  })
}
