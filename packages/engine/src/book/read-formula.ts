import type { Ast } from "../formula/ast.ts"
import { checkTypes } from "../formula/check-types.ts"
import { namesIn, renameIn } from "../formula/names.ts"
import { parseFormula } from "../formula/parse.ts"
import type { Shape, ValueType } from "../formula/value-type.ts"
import type { Problem } from "../problems/problem.ts"
import { PLAIN, sameDimension } from "../quantity/dimension.ts"
import type { MeasureId } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { isList, LIST_COLUMN, type Outline } from "./outline.ts"

/**
 * One formula of the graph. Ids: an entry's name; `table.column`; `check.demand` and the like;
 * `table#rows` for a number of rows.
 */
export interface FormulaNode {
  readonly id: string
  /** The public name a problem is shown at. */
  readonly owner: string
  /** As written. */
  readonly text: string
  /** For a row's formula, its table. */
  readonly table?: string
  readonly ast?: Ast
  /** With node ids for names, as a graph wants it. */
  readonly resolved?: Ast
  /** Names as written, in the order of the formula, each once. */
  readonly names: readonly string[]
}

export interface WantedFormula {
  /** What it is written in. */
  readonly of: object
  readonly id: string
  readonly owner: string
  readonly text: string
  readonly wants: ValueType
  readonly table?: string
}

export function typeOf(id: MeasureId): ValueType {
  if (id === "text" || id === "yes_no") return { kind: id }
  return { kind: "number", dimension: measure(id).dimension ?? PLAIN }
}

interface ReadFormula {
  readonly node: FormulaNode
  readonly problems: readonly Problem[]
}

/** A formula that was read, and what its names stood for then. */
interface KeptFormula extends ReadFormula {
  readonly text: string
  readonly meant: ReadonlyMap<string, Meaning>
}

/** What a name in a formula may stand for: a column of the formula's own table, another entry, a part of a check. */
type Meaning = readonly (object | undefined)[]

/** An entry is never altered: where one among thousands of others changes, the formulas of those others stay read. */
const KEPT = new WeakMap<object, Map<string, KeptFormula>>()

/** Reads a formula, or takes it as it was read if its names still stand for the same entries. */
export function readKept(
  wanted: WantedFormula,
  items: Outline,
  near: (name: string) => readonly string[],
): ReadFormula {
  const ofEntry = KEPT.get(wanted.of) ?? new Map<string, KeptFormula>()
  KEPT.set(wanted.of, ofEntry)
  const kept = ofEntry.get(wanted.id)
  const { text, table } = wanted
  if (
    kept?.text === text &&
    [...kept.meant].every(([name, was]) => sameMeaning(was, meaningOf(name, table, items)))
  )
    return kept
  const read = readFormula(wanted, items, near)
  const names = read.node.ast === undefined ? [] : namesIn(read.node.ast).map((use) => use.name)
  const meant = new Map(names.map((name) => [name, meaningOf(name, table, items)]))
  // What a name that is not there may have meant depends on all others.
  if (read.problems.every(({ code }) => code !== "unknown_name"))
    ofEntry.set(wanted.id, { ...read, text, meant })
  return read
}

function meaningOf(name: string, table: string | undefined, items: Outline): Meaning {
  const own = table === undefined ? undefined : items.get(`${table}.${name}`)?.entry
  const dot = name.indexOf(".")
  return [own, items.get(name)?.entry, dot < 0 ? undefined : items.get(name.slice(0, dot))?.entry]
}

function sameMeaning(one: Meaning, other: Meaning): boolean {
  return one.every((entry, at) => entry === other[at])
}

function readFormula(
  wanted: WantedFormula,
  items: Outline,
  near: (name: string) => readonly string[],
): ReadFormula {
  const { id, owner, text, table } = wanted
  const problems: Problem[] = []
  const base = { id, owner, text, ...(table === undefined ? {} : { table }) }
  const located = (problem: Problem): Problem => ({ ...problem, at: { ...problem.at, entry: owner } })
  const parsed = parseFormula(text)
  problems.push(...parsed.problems.map(located))
  const { ast } = parsed
  if (ast === undefined) return { node: { ...base, names: [] }, problems }

  const spans = namesIn(ast)
  const names = [...new Set(spans.map((use) => use.name))]
  let unknown = false
  for (const { name, span } of spans) {
    if (shapeOf(name, table, items) !== undefined) continue
    unknown = true
    problems.push({ code: "unknown_name", at: { entry: owner, span }, name, near: near(name) })
  }
  if (!unknown) {
    const judged = checkTypes(ast, (name) => shapeOf(name, table, items), table !== undefined)
    problems.push(...judged.problems.map(located))
    if (judged.shape !== undefined && judged.problems.length === 0) {
      const { type, column } = judged.shape
      if (column) problems.push({ code: "column_where_one_value", at: { entry: owner }, name: text })
      else if (!fits(type, wanted.wants))
        problems.push({ code: "result_mismatch", at: { entry: owner }, given: type, wanted: wanted.wants })
    }
  }
  const resolved = renameIn(ast, (name) => graphName(name, table, items))
  const known = names.filter((name) => shapeOf(name, table, items) !== undefined)
  return { node: { ...base, ast, resolved, names: known }, problems }
}

function fits(given: ValueType, wanted: ValueType): boolean {
  if (given.kind === "zero") return wanted.kind === "number"
  if (given.kind !== wanted.kind) return false
  if (given.kind !== "number" || wanted.kind !== "number") return true
  return sameDimension(given.dimension, wanted.dimension)
}

/** What a name written in a formula of `table` (or of no table) stands for. */
export function shapeOf(name: string, table: string | undefined, items: Outline): Shape | undefined {
  const ownColumn = table === undefined ? undefined : items.get(`${table}.${name}`)
  if (ownColumn?.kind === "column") return { type: typeOf(ownColumn.entry.measure), column: false }
  const item = items.get(name)
  if (item?.kind === "column") return { type: typeOf(item.entry.measure), column: true }
  if (item?.kind === "value") {
    if (item.entry.kind === "check") return { type: { kind: "number", dimension: PLAIN }, column: false }
    return { type: typeOf(item.entry.measure), column: isList(item.entry) }
  }
  const part = checkPart(name, items)
  return part === undefined ? undefined : { type: part, column: false }
}

function checkPart(name: string, items: Outline): ValueType | undefined {
  const dot = name.indexOf(".")
  const item = dot < 0 ? undefined : items.get(name.slice(0, dot))
  if (item?.kind !== "value" || item.entry.kind !== "check") return undefined
  const part = name.slice(dot + 1)
  return part === "demand" || part === "limit" ? typeOf(item.entry.measure) : undefined
}

function graphName(name: string, table: string | undefined, items: Outline): string {
  if (table !== undefined && items.get(`${table}.${name}`)?.kind === "column") return `@${name}`
  const item = items.get(name)
  return item?.kind === "value" && isList(item.entry) ? `${name}.${LIST_COLUMN}` : name
}
