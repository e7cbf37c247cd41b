import type { DrawingSource } from "../drawing/values.ts"
import type { GraphValue } from "../graph/graph.ts"
import type { Outline } from "./outline.ts"
import type { Snapshot } from "./snapshot.ts"
import type { Reading } from "./views.ts"

/** A workbook as a drawing would have read it when these were its values. */
export function asBefore(
  values: Snapshot,
  items: Outline,
  tell: (value: GraphValue, name: string) => Reading | null,
): DrawingSource {
  return {
    has: (name) => items.has(name),
    table(name) {
      const item = items.get(name)
      const columns = item?.kind === "table" ? item.entry.columns : []
      const lengths = columns.map((column) => {
        const value = values.get(`${name}.${column.name}`)
        return Array.isArray(value) ? value.length : 0
      })
      return { rowCount: Math.max(0, ...lengths) }
    },
    entry(name) {
      const value = values.get(name)
      if (value === undefined) return {}
      if (Array.isArray(value)) return { readings: value.map((one) => tell(one, name)) }
      const reading = tell(value as GraphValue, name)
      return reading === null ? {} : { reading }
    },
  }
}
