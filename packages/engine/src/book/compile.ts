import type { Definition } from "../definition/definition.ts"
import type { TableEntry } from "../definition/entry.ts"
import { checkExploration, checkThrift } from "../definition/exploration.ts"
import { checkDrawing } from "../drawing/names.ts"
import { nearNames } from "../formula/near-names.ts"
import type { ValueType } from "../formula/value-type.ts"
import { findRings } from "../graph/cycles.ts"
import type { Problem } from "../problems/problem.ts"
import { PLAIN } from "../quantity/dimension.ts"
import { checkFormulas, type Outline, outline } from "./outline.ts"
import { invert, type Reach, reachOf } from "./reach.ts"
import { type FormulaNode, readKept, shapeOf, typeOf, type WantedFormula } from "./read-formula.ts"
import { checkStage } from "./stage-names.ts"

/** The node that counts a table's rows, or stands for its solver. */
export const rowsNode = (table: string): string => `${table}#rows`

/** Looking for a name that may have been meant takes long among many: enough for a person to read. */
const MOST_NEAR = 50

export interface Compiled {
  readonly outline: Outline
  readonly formulas: ReadonlyMap<string, FormulaNode>
  /** Direct dependencies by node id; only nodes that lean on something are keys. */
  readonly dependsOn: ReadonlyMap<string, readonly string[]>
  /** Problems found before anything is calculated, by node id. A node that has any is never evaluated. */
  readonly problems: ReadonlyMap<string, readonly Problem[]>
  /** What follows what, and the tables whose rows follow from other nodes. */
  readonly reach: Reach
}

/** The public name behind a node id. */
export function ownerOf(id: string, items: Outline): string {
  if (items.has(id)) return id
  const cut = id.search(/[.#]/)
  return cut < 0 ? id : id.slice(0, cut)
}

/** The ids of the nodes whose values are shown under a public name; none where there is no such name. */
export function nodesOf(name: string, items: Outline): readonly string[] {
  const item = items.get(name)
  if (item === undefined) return []
  if (item.kind === "table") return [rowsNode(name), ...item.columns]
  if (item.kind === "column" || item.entry.kind !== "check") return [name]
  return [name, ...[...checkFormulas(item.entry).keys()].map((part) => `${name}.${part}`)]
}

/** A definition is never altered, and workbooks of one template share what was read of it. */
const COMPILED = new WeakMap<Definition, Compiled>()

/**
 * Reads every formula of a definition: names, dimensions, cycles. What is wrong stays at its entry and at those that
 * lean on it; the rest can be calculated.
 */
export function compile(definition: Definition): Compiled {
  const known = COMPILED.get(definition)
  if (known !== undefined) return known
  const compiled = compileAnew(definition)
  COMPILED.set(definition, compiled)
  return compiled
}

function compileAnew(definition: Definition): Compiled {
  const items = outline(definition)
  for (const drawing of definition.drawings ?? []) {
    checkDrawing(definition.id, drawing, (name) => items.has(name))
  }
  for (const exploration of definition.explorations ?? []) {
    checkExploration(definition.id, exploration, (name) => items.has(name))
  }
  if (definition.thrift !== undefined)
    checkThrift(definition.id, definition.thrift, (name) => items.has(name))
  for (const stage of definition.stages ?? []) checkStage(definition.id, stage, (name) => items.has(name))
  const problems = new Map<string, Problem[]>()
  const report = (id: string, problem: Problem): void => {
    const list = problems.get(id)
    if (list === undefined) problems.set(id, [problem])
    else list.push(problem)
  }

  const all = [...items.keys()]
  let looked = 0
  const near = (name: string): readonly string[] => (looked++ < MOST_NEAR ? nearNames(name, all) : [])

  const formulas = new Map<string, FormulaNode>()
  const dependsOn = new Map<string, string[]>()
  for (const wanted of formulasOf(items)) {
    const { node, problems: found } = readKept(wanted, items, near)
    for (const problem of found) report(node.id, problem)
    formulas.set(node.id, node)
    const needs = node.names.flatMap((name) => nodesBehind(name, node.table, items))
    if (node.table !== undefined) needs.push(rowsNode(node.table))
    dependsOn.set(node.id, needs)
  }
  for (const [name, item] of items) {
    if (item.kind !== "table") continue
    const { rows } = item.entry
    if (rows.kind === "solved") {
      for (const needed of rows.from) {
        if (shapeOf(needed, undefined, items) === undefined) {
          report(rowsNode(name), {
            code: "unknown_name",
            at: { entry: name },
            name: needed,
            near: near(needed),
          })
        }
      }
      dependsOn.set(
        rowsNode(name),
        rows.from.flatMap((needed) => nodesBehind(needed, undefined, items)),
      )
      for (const column of item.entry.columns) {
        if (column.formula === undefined) dependsOn.set(`${name}.${column.name}`, [rowsNode(name)])
      }
    }
  }

  for (const ring of findRings(dependsOn)) {
    const owners = ring.map((id) => ownerOf(id, items))
    const names = owners.filter((owner, index) => index === 0 || owner !== owners[index - 1])
    for (const id of ring) report(id, { code: "cycle", at: { entry: ownerOf(id, items) }, ring: names })
  }
  blockDependants(dependsOn, problems, (id) => ownerOf(id, items))

  const countedBy = (id: string): TableEntry | undefined => {
    const item = id.endsWith("#rows") ? items.get(ownerOf(id, items)) : undefined
    return item?.kind === "table" ? item.entry : undefined
  }
  return { outline: items, formulas, dependsOn, problems, reach: reachOf(dependsOn, countedBy) }
}

function* formulasOf(items: Outline): Generator<WantedFormula> {
  const plain: ValueType = { kind: "number", dimension: PLAIN }
  for (const [name, item] of items) {
    if (item.kind === "column") {
      const { formula } = item.entry
      if (formula !== undefined) {
        yield {
          of: item.entry,
          id: name,
          owner: name,
          text: formula,
          wants: typeOf(item.entry.measure),
          table: item.table.name,
        }
      }
    } else if (item.kind === "table") {
      const { rows } = item.entry
      if (rows.kind === "formula")
        yield { of: item.entry, id: rowsNode(name), owner: name, text: rows.formula, wants: plain }
    } else if (item.entry.kind === "formula") {
      yield {
        of: item.entry,
        id: name,
        owner: name,
        text: item.entry.formula,
        wants: typeOf(item.entry.measure),
      }
    } else if (item.entry.kind === "check") {
      const ofDemand = typeOf(item.entry.measure)
      const wants: Readonly<Record<string, ValueType>> = {
        demand: ofDemand,
        limit: ofDemand,
        near: plain,
        covered: { kind: "yes_no" },
      }
      for (const [part, text] of checkFormulas(item.entry)) {
        yield { of: item.entry, id: `${name}.${part}`, owner: name, text, wants: wants[part] ?? plain }
      }
      const [over, under] = item.entry.sense === "at_most" ? ["demand", "limit"] : ["limit", "demand"]
      yield {
        of: item.entry,
        id: name,
        owner: name,
        text: `${name}.${over} / ${name}.${under}`,
        wants: plain,
      }
    }
  }
}

/** The nodes that a written name leans on. */
function nodesBehind(name: string, table: string | undefined, items: Outline): readonly string[] {
  if (table !== undefined && items.get(`${table}.${name}`)?.kind === "column") return [`${table}.${name}`]
  const item = items.get(name)
  // A whole column leans on how many rows it has as well.
  if (item?.kind === "column") {
    const { kind } = item.table.rows
    return kind === "formula" || kind === "solved" ? [name, rowsNode(item.table.name)] : [name]
  }
  return [name]
}

/** Marks everything that leans on a node with a problem, however far away. */
function blockDependants(
  dependsOn: ReadonlyMap<string, readonly string[]>,
  problems: Map<string, Problem[]>,
  owner: (id: string) => string,
): void {
  const dependants = invert(dependsOn)
  const queue = [...problems.keys()]
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    for (const dependant of dependants.get(next) ?? []) {
      if (problems.has(dependant)) continue
      const bad = (dependsOn.get(dependant) ?? []).filter((need) => problems.has(need)).map(owner)
      problems.set(dependant, [
        { code: "leans_on_problem", at: { entry: owner(dependant) }, on: [...new Set(bad)] },
      ])
      queue.push(dependant)
    }
  }
}
