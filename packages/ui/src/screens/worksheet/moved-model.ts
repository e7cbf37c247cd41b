import type { Moved } from "@pegbook/engine"
import { spoken } from "../../text/spoken.ts"

/** One line of what the last change moved: an entry, or a column with all its cells that moved. */
export interface MovedLine {
  readonly name: string
  readonly label: string
  readonly cells: readonly { readonly row?: number; readonly old: string; readonly now: string }[]
}

/** Gathers cells by column, in the order of the work. */
export function movedLines(moved: readonly Moved[], label: (name: string) => string): readonly MovedLine[] {
  const lines = new Map<string, { readonly label: string; readonly cells: MovedLine["cells"][number][] }>()
  for (const one of moved) {
    let line = lines.get(one.name)
    if (line === undefined) {
      line = { label: label(one.name), cells: [] }
      lines.set(one.name, line)
    }
    const texts = { old: one.old?.text ?? spoken.row.blank, now: one.new?.text ?? spoken.row.blank }
    line.cells.push(one.row === undefined ? texts : { row: one.row, ...texts })
  }
  return [...lines].map(([name, { label, cells }]) => ({ name, label, cells }))
}
