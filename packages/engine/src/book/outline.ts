import type { Definition } from "../definition/definition.ts"
import type {
  CheckEntry,
  Column,
  Entry,
  EntryKind,
  FigureEntry,
  InputEntry,
  TableEntry,
} from "../definition/entry.ts"

/** An entry that holds one value or one list, and a column: whatever has a name a reader can open. */
export type Item =
  | { readonly kind: "value"; readonly section: string; readonly entry: Exclude<Entry, TableEntry> }
  | {
      readonly kind: "table"
      readonly section: string
      readonly entry: TableEntry
      /** The names of its columns, as `table.column`. */
      readonly columns: readonly string[]
    }
  | {
      readonly kind: "column"
      readonly section: string
      readonly entry: Column
      readonly table: TableEntry
    }

/** The one column of a list input. */
export const LIST_COLUMN = "value"

/** A definition by name, in the order of the work; a table's columns follow it as `table.column`. */
export type Outline = ReadonlyMap<string, Item>

const LEGAL_NAME = /^[a-z][a-z0-9]*(_[a-z0-9]+)*$/

export function isLegalName(name: string): boolean {
  return LEGAL_NAME.test(name)
}

/** A definition is never altered. */
const OUTLINES = new WeakMap<Definition, Outline>()

/** Throws on a name that is twice there or not legal: those are the template author's mistakes. */
export function outline(definition: Definition): Outline {
  const items = OUTLINES.get(definition) ?? outlineAnew(definition)
  OUTLINES.set(definition, items)
  return items
}

function outlineAnew(definition: Definition): Outline {
  const items = new Map<string, Item>()
  const put = (name: string, item: Item): void => {
    if (items.has(name)) throw new Error(`${definition.id}: two entries are called ${name}`)
    items.set(name, item)
  }
  for (const { id: section, entries } of definition.sections) {
    for (const entry of entries) {
      if (!isLegalName(entry.name)) throw new Error(`${definition.id}: "${entry.name}" is not a legal name`)
      if (entry.kind !== "table") {
        put(entry.name, { kind: "value", section, entry })
        continue
      }
      const columns = entry.columns.map((column) => `${entry.name}.${column.name}`)
      put(entry.name, { kind: "table", section, entry, columns })
      entry.columns.forEach((column, place) => {
        if (!isLegalName(column.name))
          throw new Error(`${definition.id}: "${column.name}" is not a legal name`)
        put(columns[place] ?? "", { kind: "column", section, entry: column, table: entry })
      })
    }
  }
  return items
}

/** Inputs and figures: the values that a person may type over. */
export function isTyped(entry: Entry): entry is InputEntry | FigureEntry {
  return entry.kind === "input" || entry.kind === "figure"
}

/** What kind of number it shows; a table's is the kind of its rows. */
export function kindOf(item: Item): EntryKind {
  if (item.kind === "value") return item.entry.kind
  if (item.kind === "column" && item.entry.formula !== undefined) return "column"
  const { rows } = item.kind === "column" ? item.table : item.entry
  switch (rows.kind) {
    case "formula":
      return "column"
    case "figures":
      return "figure"
    case "input":
      return "input"
    case "solved":
      return "solved"
  }
}

export function isList(entry: Entry): entry is InputEntry & { readonly list: true } {
  return entry.kind === "input" && entry.list === true
}

/** The columns whose values are typed, by a person (an entered table) or by the template (a table of figures). */
export function typedColumns(table: TableEntry): readonly Column[] {
  const { kind } = table.rows
  return kind === "input" || kind === "figures"
    ? table.columns.filter((column) => column.formula === undefined)
    : []
}

/** The formulas of a check, by the suffix of their node: `area_limit_check.demand`. */
export function checkFormulas(check: CheckEntry): ReadonlyMap<string, string> {
  const formulas = new Map([
    ["demand", check.demand],
    ["limit", check.limit],
  ])
  if (check.near !== undefined) formulas.set("near", check.near)
  if (check.covered !== undefined) formulas.set("covered", check.covered)
  return formulas
}
