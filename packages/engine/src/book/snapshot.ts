import type { GraphValue } from "../graph/graph.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import type { Calculation } from "./calculation.ts"
import type { Holding } from "./holding.ts"
import { isList, LIST_COLUMN, type Outline } from "./outline.ts"
import type { Moved } from "./views.ts"

/** One for an entry, a list for a column or a list input. */
export type SnapshotValue = GraphValue | readonly GraphValue[]
/** All values at one moment. */
export type Snapshot = ReadonlyMap<string, SnapshotValue>

/** Nothing for a table, whose values are its columns'. */
export function valueNow(name: string, items: Outline, calculation: Calculation): SnapshotValue | undefined {
  const item = items.get(name)
  if (item === undefined || item.kind === "table") return undefined
  return item.kind === "column" || isList(item.entry) ? calculation.column(name) : calculation.scalar(name)
}

export function takeSnapshot(items: Outline, calculation: Calculation): Snapshot {
  const values = new Map<string, SnapshotValue>()
  for (const name of items.keys()) {
    const value = valueNow(name, items, calculation)
    if (value !== undefined) values.set(name, value)
  }
  return values
}

/** The snapshot after one in which some nodes may have moved since, by their ids. */
export function nextSnapshot(
  before: Snapshot,
  named: Iterable<string>,
  items: Outline,
  calculation: Calculation,
): Snapshot {
  const values = new Map(before)
  for (const id of named) {
    const name = items.has(id) ? id : listOf(id)
    const value = valueNow(name, items, calculation)
    if (value !== undefined) values.set(name, value)
  }
  return values
}

/** The list input behind the node of its values. */
function listOf(id: string): string {
  return id.endsWith(`.${LIST_COLUMN}`) ? id.slice(0, -LIST_COLUMN.length - 1) : id
}

/** Doubles that differ by less than this share differ by rounding alone. */
const NOISE = 1e-12

export function sameValue(a: GraphValue | undefined, b: GraphValue | undefined): boolean {
  if (typeof a === "number" && typeof b === "number")
    return a === b || Math.abs(a - b) <= NOISE * Math.max(Math.abs(a), Math.abs(b))
  if (typeof a === "object" && typeof b === "object") return true
  return a === b
}

/** What reads differently after a change, in the order of the work. */
export function movedBetween(
  before: Snapshot,
  after: Snapshot,
  measureOf: (name: string) => MeasureId,
  holding: Holding,
  system: UnitSystem,
): readonly Moved[] {
  const moved: Moved[] = []
  const note = (
    name: string,
    row: number | undefined,
    was: GraphValue | undefined,
    is: GraphValue | undefined,
  ): void => {
    if (sameValue(was, is)) return
    const old = was === undefined ? null : holding.reading(was, measureOf(name), system)
    const now = is === undefined ? null : holding.reading(is, measureOf(name), system)
    if (old?.text === now?.text) return
    moved.push({ name, ...(row === undefined ? {} : { row }), old, new: now })
  }
  for (const [name, is] of after) {
    const was = before.get(name)
    if (is === was) continue
    if (!Array.isArray(is) && !Array.isArray(was)) {
      note(name, undefined, was as GraphValue | undefined, is as GraphValue)
      continue
    }
    const [old, now] = [asRows(was), asRows(is)]
    for (let row = 0; row < Math.max(old.length, now.length); row++) note(name, row + 1, old[row], now[row])
  }
  return moved
}

function asRows(values: GraphValue | readonly GraphValue[] | undefined): readonly GraphValue[] {
  return Array.isArray(values) ? values : []
}
