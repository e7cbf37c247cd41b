import type { TableEntry } from "../definition/entry.ts"
import type { Problem } from "../problems/problem.ts"
import type { Given } from "./calculation.ts"
import { isTyped, type Outline, typedColumns } from "./outline.ts"
import { cellName, figureCell, readOver, typedOver } from "./overrides.ts"
import type { Choices } from "./scenario.ts"
import { knownValue, originalText, readRows, type TypedRow, type Value } from "./typed.ts"

/**
 * Every input, figure, overridden formula and table of a scenario, read; what it does not have is as the template
 * starts. Saved texts carry their units, so it does not matter which system is shown.
 */
export function readScenario(
  items: Outline,
  scenario: Choices,
): { readonly given: Given; readonly problems: readonly Problem[] } {
  const reader = new ScenarioReader(items, scenario)
  const cells = overriddenColumns(scenario.typed.keys(), items)
  for (const [name, item] of items) {
    if (item.kind === "value" && (isTyped(item.entry) || scenario.typed.has(name))) reader.readName(name)
    if (item.kind !== "table") continue
    if (item.entry.rows.kind === "input") reader.readTable(item.entry, item.entry.rows.default)
    if (item.entry.rows.kind !== "figures") continue
    for (const { name: column } of typedColumns(item.entry))
      reader.readColumn(item.entry, column, cells.get(item.entry)?.has(column) ?? false)
  }
  return reader
}

/** What must be put in to get from one scenario to another: only what was typed otherwise. */
export function readDifference(items: Outline, from: Choices, to: Choices): Given {
  const reader = new ScenarioReader(items, to)
  const names = new Set([...from.typed.keys(), ...to.typed.keys()])
  const differ = [...names].filter((name) => from.typed.get(name) !== to.typed.get(name))
  for (const name of differ) if (items.get(name)?.kind === "value") reader.readName(name)
  for (const [table, columns] of overriddenColumns(differ, items))
    for (const column of columns) reader.readColumn(table, column, true)
  for (const name of new Set([...from.tables.keys(), ...to.tables.keys()])) {
    const item = items.get(name)
    if (item?.kind !== "table" || item.entry.rows.kind !== "input") continue
    if (from.tables.get(name) !== to.tables.get(name)) reader.readTable(item.entry, item.entry.rows.default)
  }
  return reader.given
}

class ScenarioReader {
  readonly #items: Outline
  readonly #scenario: Choices
  readonly #typed = new Map<string, readonly Value[]>()
  readonly #tables = new Map<string, Map<string, readonly Value[]>>()
  readonly problems: Problem[] = []
  readonly given: Given = { typed: this.#typed, tables: this.#tables }

  constructor(items: Outline, scenario: Choices) {
    this.#items = items
    this.#scenario = scenario
  }

  /** An input, a figure or a formula; a formula that nothing was typed over has no values. */
  readName(name: string): void {
    const over = typedOver(name, this.#items)
    if (over === undefined) return
    const item = this.#items.get(name)
    const text = this.#scenario.typed.get(name)
    if (text !== undefined) {
      const outcome = readOver(over, text, "us")
      if (!("problem" in outcome)) {
        this.#typed.set(name, outcome.read.values)
        return
      }
      this.problems.push(outcome.problem)
    }
    if (item?.kind !== "value" || !isTyped(item.entry)) {
      this.#typed.set(name, [])
      return
    }
    const original = readOver(over, originalText(item.entry), "us")
    if ("problem" in original)
      throw new Error(`${name}: the template's own "${originalText(item.entry)}" cannot be read`)
    this.#typed.set(name, original.read.values)
  }

  /** A column of a table of figures, with what was typed over its cells. */
  readColumn(table: TableEntry, name: string, overridden: boolean): void {
    const column = table.columns.find((candidate) => candidate.name === name)
    if (column === undefined) return
    const values = (column.values ?? []).map((text, index) => {
      const cell = cellName(table.name, name, index + 1)
      const typed = overridden ? this.#scenario.typed.get(cell) : undefined
      const over = typed === undefined ? undefined : typedOver(cell, this.#items)
      if (over !== undefined && typed !== undefined) {
        const outcome = readOver(over, typed, "us")
        const [value] = "problem" in outcome ? [] : outcome.read.values
        if (value !== undefined) return value
        if ("problem" in outcome) this.problems.push(outcome.problem)
      }
      return knownValue(text, column.measure, `${table.name}.${name}`, "us")
    })
    const columns = this.#tables.get(table.name) ?? new Map<string, readonly Value[]>()
    this.#tables.set(table.name, columns.set(name, values))
  }

  /** The rows of an entered table. */
  readTable(table: TableEntry, original: readonly TypedRow[]): void {
    let outcome = readRows(table, this.#scenario.tables.get(table.name) ?? original, "us")
    if ("problem" in outcome) {
      this.problems.push(outcome.problem)
      outcome = readRows(table, original, "us")
      if ("problem" in outcome) throw new Error(`${table.name}: the template's own rows cannot be read`)
    }
    this.#tables.set(table.name, new Map(outcome.read.values))
  }
}

/** The columns of tables of figures that have cells among these names. */
function overriddenColumns(
  names: Iterable<string>,
  items: Outline,
): ReadonlyMap<TableEntry, ReadonlySet<string>> {
  const columns = new Map<TableEntry, Set<string>>()
  for (const name of names) {
    const cell = figureCell(name, items)
    if (cell === undefined) continue
    const known = columns.get(cell.table)
    if (known === undefined) columns.set(cell.table, new Set([cell.column.name]))
    else known.add(cell.column.name)
  }
  return columns
}
