import type { GraphError, GraphValue } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import type { Calculation } from "./calculation.ts"
import { type Compiled, ownerOf, rowsNode } from "./compile.ts"
import { isList, isTyped } from "./outline.ts"

/** Finds where a missing value comes from, so that each problem is told once, at the entry that has it. */
export class Faults {
  readonly #compiled: Compiled
  readonly #calculation: Calculation

  constructor(compiled: Compiled, calculation: Calculation) {
    this.#compiled = compiled
    this.#calculation = calculation
  }

  /** The problems of one node: those found in reading it, or what its value lacks. */
  at(id: string): readonly Problem[] {
    const found = this.#compiled.problems.get(id)
    if (found !== undefined) return found
    const owner = ownerOf(id, this.#compiled.outline)
    const fault = this.#firstFault(id)
    if (fault === undefined || this.#mayStayBlank(id)) return []
    const place = { entry: owner, ...(fault.row === undefined ? {} : { row: fault.row }) }
    const blank = this.blankInputs(id)
    if (blank.length > 0) return [{ code: "needs_entry", at: place, inputs: blank }]
    const on = this.#faultyNeeds(id).map((need) => ownerOf(need, this.#compiled.outline))
    if (on.length > 0) return [{ code: "leans_on_problem", at: place, on: [...new Set(on)] }]
    return [{ code: fault.error === "no_value" ? "not_found" : fault.error, at: place }]
  }

  /** What is wrong with a table's rows as such. */
  ofTable(table: string): readonly Problem[] {
    const problem = this.#calculation.tableProblem(table)
    return [
      ...(this.#compiled.problems.get(rowsNode(table)) ?? []),
      ...(problem === undefined ? [] : [problem]),
    ]
  }

  /** The inputs left blank that a node waits for, however far away. */
  blankInputs(id: string): readonly string[] {
    const blank = new Set<string>()
    const seen = new Set<string>([id])
    const queue = [id]
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      if (this.#firstFault(next) === undefined) continue
      const item = this.#compiled.outline.get(next)
      if (item?.kind === "value" && isTyped(item.entry)) blank.add(next)
      for (const need of this.#compiled.dependsOn.get(next) ?? []) {
        if (seen.has(need)) continue
        seen.add(need)
        queue.push(need)
      }
    }
    return [...blank]
  }

  #mayStayBlank(id: string): boolean {
    const item = this.#compiled.outline.get(id)
    return item?.kind === "value" && item.entry.kind === "input" && item.entry.blank !== undefined
  }

  #faultyNeeds(id: string): readonly string[] {
    return (this.#compiled.dependsOn.get(id) ?? []).filter(
      (need) => need !== id && (this.#compiled.problems.has(need) || this.#firstFault(need) !== undefined),
    )
  }

  #firstFault(id: string): { readonly error: GraphError; readonly row?: number } | undefined {
    const item = this.#compiled.outline.get(id)
    if (item?.kind === "column") {
      const values = this.#calculation.column(id)
      const row = values.findIndex(isFault)
      const value = values[row]
      return typeof value === "object" ? { error: value.error, row: row + 1 } : undefined
    }
    if (id.endsWith("#rows")) {
      const table = ownerOf(id, this.#compiled.outline)
      return this.#calculation.tableProblem(table) === undefined ? undefined : { error: "no_value" }
    }
    // A list always has its values: an empty one is refused when it is typed.
    if (item?.kind === "value" && isList(item.entry)) return undefined
    const value = this.#calculation.scalar(id)
    return typeof value === "object" ? { error: value.error } : undefined
  }
}

export function isFault(value: GraphValue | undefined): boolean {
  return value === undefined || typeof value === "object"
}
