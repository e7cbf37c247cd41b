import type { Column, FigureEntry, InputEntry, TableEntry } from "../definition/entry.ts"
import type { Problem } from "../problems/problem.ts"
import type { Quantity } from "../quantity/quantity.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { printQuantity } from "../units/print-value.ts"
import { readValue, splitList, withUsualUnit } from "../units/read-value.ts"
import { isList, typedColumns } from "./outline.ts"

export type Value = Quantity | string | boolean

/** What was typed, read and found good. `text` carries its unit, so that it means the same in either system. */
export interface ReadTyped {
  /** One value; several for a list; none for an entry left blank. */
  readonly values: readonly Value[]
  readonly text: string
}

type Outcome<T> = { readonly read: T } | { readonly problem: Problem }

const LONGEST_LIST = 200

/** The text that an entry starts with. */
export function originalText(entry: InputEntry | FigureEntry): string {
  return entry.kind === "figure" ? entry.value : (entry.default ?? "")
}

/** The last text read for each entry: whenever a workbook is opened or rebuilt, most texts are the same again. */
const LAST = new WeakMap<
  InputEntry | FigureEntry,
  { readonly typed: string; readonly system: UnitSystem; readonly outcome: Outcome<ReadTyped> }
>()

/** Reads what a person typed for an input, or over a figure. */
export function readTyped(
  entry: InputEntry | FigureEntry,
  typed: string,
  system: UnitSystem,
): Outcome<ReadTyped> {
  const last = LAST.get(entry)
  if (last?.typed === typed && last.system === system) return last.outcome
  const outcome = readAnew(entry, typed, system)
  LAST.set(entry, { typed, system, outcome })
  return outcome
}

function readAnew(entry: InputEntry | FigureEntry, typed: string, system: UnitSystem): Outcome<ReadTyped> {
  const at = { entry: entry.name }
  const example = measure(entry.measure).example[system]
  if (typed.trim() === "") {
    if (entry.kind === "input" && entry.default === null) return { read: { values: [], text: "" } }
    return { problem: { code: "input_empty", at, example } }
  }
  if (!isList(entry)) {
    const one = readOne(entry, typed, system)
    return "problem" in one ? one : { read: { values: [one.read.value], text: one.read.text } }
  }
  const parts = splitList(typed)
  if (parts.length > LONGEST_LIST) {
    return { problem: { code: "input_too_long", at, length: parts.length, most: LONGEST_LIST } }
  }
  const values: Value[] = []
  const texts: string[] = []
  for (const part of parts) {
    const one = readOne(entry, part, system)
    if ("problem" in one) return one
    values.push(one.read.value)
    texts.push(one.read.text)
  }
  if (values.length === 0) return { problem: { code: "input_empty", at, example } }
  return { read: { values, text: texts.join(", ") } }
}

/** "No. 2" is meant where "No.2" is offered. */
const folded = (text: string): string => text.toLowerCase().replaceAll(/\s/g, "")

function readOne(
  entry: InputEntry | FigureEntry,
  typed: string,
  system: UnitSystem,
): Outcome<{ readonly value: Value; readonly text: string }> {
  const at = { entry: entry.name }
  const outcome = readValue(typed, entry.measure, system)
  if ("problem" in outcome) return { problem: { ...outcome.problem, at } }
  const { value } = outcome
  if (entry.kind === "input" && typeof value === "string" && entry.choices !== undefined) {
    const choice = entry.choices.find((candidate) => folded(candidate) === folded(value))
    if (choice === undefined)
      return { problem: { code: "input_not_a_choice", at, given: typed, choices: entry.choices } }
    return { read: { value: choice, text: choice } }
  }
  if (typeof value === "object") {
    if (entry.measure === "count" && !value.si.isInteger())
      return { problem: { code: "input_not_whole", at, given: typed } }
    if (entry.kind === "input") {
      const { least, most } = limits(entry, system)
      if (least !== undefined && value.si.lt(least.si)) {
        return {
          problem: {
            code: "input_below",
            at,
            given: typed,
            least: printQuantity(least, entry.measure, system),
          },
        }
      }
      if (most !== undefined && value.si.gt(most.si)) {
        return {
          problem: {
            code: "input_above",
            at,
            given: typed,
            most: printQuantity(most, entry.measure, system),
          },
        }
      }
    }
  }
  return { read: { value, text: withUsualUnit(typed.trim(), entry.measure, system) } }
}

/** The least and the greatest value accepted, where there are any. */
export function limits(
  entry: InputEntry,
  system: UnitSystem,
): { readonly least?: Quantity; readonly most?: Quantity } {
  const { least, most } = entry
  return {
    ...(least === undefined ? {} : { least: knownQuantity(least, entry.measure, entry.name, system) }),
    ...(most === undefined ? {} : { most: knownQuantity(most, entry.measure, entry.name, system) }),
  }
}

/** Reads a text of the template's own; that it cannot be read is the author's mistake. */
export function knownValue(text: string, id: MeasureId, name: string, system: UnitSystem): Value {
  const outcome = readValue(text, id, system)
  if ("problem" in outcome) throw new Error(`${name}: "${text}" is not ${measure(id).says}`)
  return outcome.value
}

function knownQuantity(text: string, id: MeasureId, name: string, system: UnitSystem): Quantity {
  const value = knownValue(text, id, name, system)
  if (typeof value !== "object") throw new Error(`${name}: "${text}" is not ${measure(id).says}`)
  return value
}

export type TypedRow = Readonly<Record<string, string>>

/** Rows of an entered table, read: per column its values, and the texts with their units. */
export interface ReadRows {
  readonly values: ReadonlyMap<string, readonly Value[]>
  readonly texts: readonly TypedRow[]
}

export function readRows(
  table: TableEntry,
  rows: readonly TypedRow[],
  system: UnitSystem,
): Outcome<ReadRows> {
  const columns = typedColumns(table)
  const at = { entry: table.name }
  if (table.rows.kind === "input" && rows.length > table.rows.most) {
    return { problem: { code: "table_too_long", at, given: rows.length, most: table.rows.most } }
  }
  const values = new Map<string, Value[]>(columns.map((column) => [column.name, []]))
  const texts: TypedRow[] = []
  for (const [index, row] of rows.entries()) {
    const stray = Object.keys(row).find((key) => !columns.some((column) => column.name === key))
    if (stray !== undefined) {
      const names = columns.map((column) => column.name)
      return {
        problem: {
          code: "no_such_column",
          at: { ...at, row: index + 1 },
          table: table.name,
          column: stray,
          columns: names,
        },
      }
    }
    const cells: [string, string][] = []
    for (const column of columns) {
      const cell = readCell(column, table, row[column.name] ?? "", index + 1, system)
      if ("problem" in cell) return cell
      values.get(column.name)?.push(cell.read.value)
      cells.push([column.name, cell.read.text])
    }
    texts.push(Object.fromEntries(cells))
  }
  return { read: { values, texts } }
}

function readCell(
  column: Column,
  table: TableEntry,
  typed: string,
  row: number,
  system: UnitSystem,
): Outcome<{ readonly value: Value; readonly text: string }> {
  const at = { entry: `${table.name}.${column.name}`, row }
  if (typed.trim() === "" && column.measure !== "text") {
    return { problem: { code: "input_empty", at, example: measure(column.measure).example[system] } }
  }
  const outcome = readValue(typed, column.measure, system)
  if ("problem" in outcome) return { problem: { ...outcome.problem, at } }
  return { read: { value: outcome.value, text: withUsualUnit(typed.trim(), column.measure, system) } }
}
