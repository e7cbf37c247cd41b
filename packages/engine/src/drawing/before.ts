import type { Moved, Reading } from "../book/views.ts"
import type { DrawingSource } from "./values.ts"

/** The workbook as a drawing would have read it before the last change: the old values put back over the new. */
export function beforeChange(source: DrawingSource, moved: readonly Moved[]): DrawingSource {
  const old = new Map<string, Moved[]>()
  for (const one of moved) old.set(one.name, [...(old.get(one.name) ?? []), one])
  return {
    has: (name) => source.has(name),
    // Rows that were not there yet have no values, and are left out for that.
    table: (name) => ({
      rowCount: Math.max(source.table(name).rowCount, ...rowsMoved(moved, name)),
    }),
    entry(name) {
      const view = source.entry(name)
      const changes = old.get(name)
      if (changes === undefined) return view
      if (view.readings === undefined) {
        const was = changes[0]?.old
        return was === null || was === undefined ? {} : { reading: was }
      }
      const readings: (Reading | null)[] = [...view.readings]
      for (const change of changes) if (change.row !== undefined) readings[change.row - 1] = change.old
      return { readings }
    },
  }
}

function rowsMoved(moved: readonly Moved[], table: string): readonly number[] {
  return moved.flatMap(({ name, row }) => (name.startsWith(`${table}.`) ? (row ?? []) : []))
}
