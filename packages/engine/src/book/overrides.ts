import type { Column, FigureEntry, InputEntry, TableEntry } from "../definition/entry.ts"
import type { Place } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import { isTyped, type Outline } from "./outline.ts"
import { readTyped } from "./typed.ts"

/** A cell of a table of figures. Rows of such a table are only ever added at the end, so its number is a safe key. */
export interface FigureCell {
  readonly table: TableEntry
  readonly column: Column
  /** From 1. */
  readonly row: number
  /** What the template has there. */
  readonly original: string
}

const CELL_NAME = /^([a-z0-9_]+\.[a-z0-9_]+)\.([1-9]\d{0,5})$/

/** The cell behind a name such as `prices.price.3`. */
export function figureCell(name: string, items: Outline): FigureCell | undefined {
  const [, id = "", digits = ""] = CELL_NAME.exec(name) ?? []
  const item = items.get(id)
  if (item?.kind !== "column" || item.table.rows.kind !== "figures") return undefined
  const row = Number(digits)
  const original = item.entry.values?.[row - 1]
  return original === undefined ? undefined : { table: item.table, column: item.entry, row, original }
}

/** The name under which a cell's override is kept. */
export function cellName(table: string, column: string, row: number): string {
  return `${table}.${column}.${row}`
}

/** What a text typed under a name is read against, and where its problems are shown. */
export interface TypedOver {
  readonly entry: InputEntry | FigureEntry
  readonly at: Place
}

/**
 * What may be typed over: inputs and figures, and as if they were figures, formulas and the cells of a table of
 * figures. Nothing for checks, tables, and columns.
 */
export function typedOver(name: string, items: Outline): TypedOver | undefined {
  const item = items.get(name)
  if (item?.kind === "value") {
    const { entry } = item
    if (isTyped(entry)) return { entry, at: { entry: name } }
    if (entry.kind !== "formula") return undefined
    return { entry: { ...entry, kind: "figure", value: "" }, at: { entry: name } }
  }
  const cell = figureCell(name, items)
  if (cell === undefined) return undefined
  const { table, column, row, original } = cell
  return {
    entry: { ...column, kind: "figure", value: original },
    at: { entry: `${table.name}.${column.name}`, row },
  }
}

/** Reads a text typed over an input, a figure, a formula or a cell. */
export function readOver(
  { entry, at }: TypedOver,
  typed: string,
  system: UnitSystem,
): ReturnType<typeof readTyped> {
  const outcome: ReturnType<typeof readTyped> = readTyped(entry, typed, system)
  return "problem" in outcome ? { problem: { ...outcome.problem, at } } : outcome
}

/** Whether a name that something was typed under stands for `name` itself or for a cell of that table or column. */
export function isUnder(typedName: string, name: string, items: Outline): boolean {
  return (
    typedName === name || (typedName.startsWith(`${name}.`) && figureCell(typedName, items) !== undefined)
  )
}
