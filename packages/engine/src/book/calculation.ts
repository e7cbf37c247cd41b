import type { TableEntry } from "../definition/entry.ts"
import type { Solution, SolverReport, SolverValue } from "../definition/solver.ts"
import type { Ast } from "../formula/ast.ts"
import { isUnmoved } from "../formula/double.ts"
import { evaluateFormula } from "../formula/evaluate.ts"
import { toCell, toGraphValue } from "../graph/decimal-graph.ts"
import type {
  ColumnNode,
  Graph,
  GraphBuilder,
  GraphChange,
  GraphValue,
  NodeContent,
  ScalarNode,
  TableNode,
} from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import type { MeasureId } from "../units/measure.ts"
import { type Compiled, rowsNode } from "./compile.ts"
import type { Holding } from "./holding.ts"
import { isList, isTyped, LIST_COLUMN, typedColumns } from "./outline.ts"
import type { Settled, Unproven } from "./settled.ts"
import { problemOf, runSolver, solverGiven } from "./solver-call.ts"
import type { Value } from "./typed.ts"

/** More rows than any platform has, few enough that a slip of the finger cannot hang the page. */
export const MOST_ROWS = 20_000

/** What a person chose, read. */
export interface Given {
  /** Per input or figure its values; per formula the value typed over it, or none where it is worked out. */
  readonly typed: ReadonlyMap<string, readonly Value[]>
  /** Per entered table, or table of figures, the values of its columns. */
  readonly tables: ReadonlyMap<string, ReadonlyMap<string, readonly Value[]>>
}

/** What was made of a solved table. */
interface SolvedTable {
  /** The values that it was solved from, name by name. */
  readonly from: readonly (GraphValue | readonly GraphValue[])[]
  readonly report: SolverReport
  /** What a prover may solve better, as JSON, and whether one has. */
  readonly proof?: { readonly by: string; readonly problem: string; readonly settled: boolean }
}

interface TableRows {
  readonly rows: number
  readonly values: Readonly<Record<string, readonly GraphValue[]>>
}

const NO_VALUE: GraphValue = { error: "no_value" }
/** The formula of a column that cannot be calculated: an error in each row, however many there are. */
const NOTHING: Ast = { type: "call", function: "NA", args: [], span: { start: 0, end: 0 } }

/**
 * A definition's graph with values in it. Nothing is worked out before it is read: a change only notes which tables' rows may
 * follow from it, and what is read waits for those that it leans on, settled in the order of their dependencies, so that
 * one pass is enough.
 */
export class Calculation {
  readonly #compiled: Compiled
  readonly #holding: Holding
  readonly #graph: Graph
  readonly #rows = new Map<string, number>()
  readonly #settledSolutions: Settled
  readonly #solved = new Map<string, SolvedTable>()
  readonly #tableProblems = new Map<string, Problem>()
  /** The tables that are still to be settled, by their bits. */
  #waiting: bigint
  /** Nodes that may differ since they were last asked for. */
  #named = new Set<string>()
  /** Read from the graph when first asked for, dropped when a change names them. */
  readonly #scalars = new Map<string, GraphValue>()
  readonly #columns = new Map<string, readonly GraphValue[]>()

  constructor(compiled: Compiled, holding: Holding, build: GraphBuilder, given: Given, settled: Settled) {
    this.#settledSolutions = settled
    this.#compiled = compiled
    this.#holding = holding
    this.#graph = build(this.#scalarNodes(given), this.#tableNodes(given))
    this.#waiting = compiled.reach.allTables
  }

  /** Puts other values in; only what is named changes. Returns the nodes that may differ by it, rather too many than too few. */
  put(given: Given): ReadonlySet<string> {
    const scalars = new Map<string, NodeContent>()
    const tables = new Map<string, { rows: number; values: Record<string, readonly GraphValue[]> }>()
    const changed = [...given.typed.keys()]
    for (const [name, values] of given.typed) {
      const item = this.#compiled.outline.get(name)
      if (item?.kind !== "value" || item.entry.kind === "check") continue
      const held = values.map((value) => this.#holding.toGraph(value, item.entry.measure))
      if (item.entry.kind === "formula") scalars.set(name, this.#formulaContent(name, held[0]))
      else if (isList(item.entry)) {
        tables.set(name, { rows: held.length, values: { [LIST_COLUMN]: held } })
        this.#rows.set(name, held.length)
      } else scalars.set(name, { value: held[0] ?? NO_VALUE })
    }
    for (const [name, columns] of given.tables) {
      const item = this.#compiled.outline.get(name)
      if (item?.kind !== "table") continue
      const values: Record<string, readonly GraphValue[]> = {}
      let rows = 0
      for (const column of typedColumns(item.entry)) {
        const read = columns.get(column.name)
        if (read === undefined) continue
        values[column.name] = read.map((value) => this.#holding.toGraph(value, column.measure))
        rows = read.length
        changed.push(`${name}.${column.name}`)
      }
      changed.push(rowsNode(name))
      tables.set(name, { rows, values })
      this.#rows.set(name, rows)
    }
    this.#apply({ scalars, tables })
    return this.#moves(changed)
  }

  scalar(id: string): GraphValue {
    let value = this.#scalars.get(id)
    if (value === undefined) {
      this.#ready(id)
      value = this.#graph.scalar(id)
      this.#scalars.set(id, value)
    }
    return value
  }

  /** By its full name, `table.column`; or a list input's name. One value a row; the same array until a value moves. */
  column(name: string): readonly GraphValue[] {
    const id = name.includes(".") ? name : `${name}.${LIST_COLUMN}`
    let values = this.#columns.get(id)
    if (values === undefined) {
      this.#ready(id)
      const dot = id.indexOf(".")
      values = this.#graph.column(id.slice(0, dot), id.slice(dot + 1))
      this.#columns.set(id, values)
    }
    return values
  }

  /** What a formula that something was typed over would come to. */
  workedOut(name: string): GraphValue {
    const resolved = this.#blocked(name) ? undefined : this.#compiled.formulas.get(name)?.resolved
    if (resolved === undefined) return NO_VALUE
    return toGraphValue(
      evaluateFormula(
        resolved,
        (used) => {
          if (!this.#isColumn(used)) return toCell(this.scalar(used))
          return this.column(used).map(toCell)
        },
        0,
      ),
    )
  }

  /** The nodes whose values may differ since this was last asked: scalars by id, columns as `table.column`. */
  takeNamed(): ReadonlySet<string> {
    const named = this.#named
    this.#named = new Set()
    return named
  }

  /** Settles whatever waits. */
  settle(): void {
    this.#settle(this.#waiting)
  }

  rows(table: string): number {
    this.#ready(rowsNode(table))
    return this.#rows.get(table) ?? 0
  }

  report(table: string): SolverReport | undefined {
    this.#ready(rowsNode(table))
    return this.#solved.get(table)?.report
  }

  /** The tables that a prover may solve better, in the order of the work. */
  unproven(): readonly Unproven[] {
    return [...this.#compiled.outline.values()].flatMap((item) => {
      if (item.kind !== "table" || item.entry.rows.kind !== "solved") return []
      const table = item.entry.name
      this.#ready(rowsNode(table))
      const proof = this.#solved.get(table)?.proof
      if (proof === undefined || proof.settled) return []
      return [{ table, prover: proof.by, given: JSON.parse(proof.problem) as unknown }]
    })
  }

  /** Whether a table is solved from this problem, and nothing better is in place. */
  waitsFor(table: string, problem: string): boolean {
    this.#ready(rowsNode(table))
    const proof = this.#solved.get(table)?.proof
    return proof !== undefined && !proof.settled && proof.problem === problem
  }

  /** Takes up what has been settled since for a table. Returns the nodes that may differ by it. */
  takeUp(table: string): ReadonlySet<string> {
    this.#solved.delete(table)
    return this.#moves([rowsNode(table)])
  }

  /** What is wrong with a table's rows. */
  tableProblem(table: string): Problem | undefined {
    this.#ready(rowsNode(table))
    return this.#tableProblems.get(table)
  }

  /** Whether a name of a resolved formula is a column's: not an entry's, and not a part of a check. */
  #isColumn(id: string): boolean {
    if (!id.includes(".")) return false
    const node = this.#compiled.formulas.get(id)
    return node === undefined || node.table !== undefined
  }

  /** The value typed over a formula, or the formula. */
  #formulaContent(id: string, typed: GraphValue | undefined): NodeContent {
    const resolved = this.#blocked(id) ? undefined : this.#compiled.formulas.get(id)?.resolved
    if (resolved === undefined) return { value: NO_VALUE }
    return typed === undefined ? { formula: resolved } : { value: typed }
  }

  #blocked(id: string): boolean {
    return this.#compiled.problems.has(id)
  }

  #scalarNodes(given: Given): readonly ScalarNode[] {
    const nodes: ScalarNode[] = []
    for (const [name, item] of this.#compiled.outline) {
      if (item.kind !== "value" || !isTyped(item.entry) || isList(item.entry)) continue
      const value = given.typed.get(name)?.[0]
      const content = value === undefined ? NO_VALUE : this.#holding.toGraph(value, item.entry.measure)
      nodes.push({ id: name, content: { value: content } })
    }
    for (const [id, node] of this.#compiled.formulas) {
      if (node.table !== undefined) continue
      const item = this.#compiled.outline.get(id)
      const over = item?.kind === "value" ? given.typed.get(id)?.[0] : undefined
      const typed =
        over === undefined || item?.kind !== "value"
          ? undefined
          : this.#holding.toGraph(over, item.entry.measure)
      nodes.push({ id, content: this.#formulaContent(id, typed) })
    }
    return nodes
  }

  #tableNodes(given: Given): readonly TableNode[] {
    const nodes: TableNode[] = []
    for (const [name, item] of this.#compiled.outline) {
      if (item.kind === "value" && isList(item.entry)) {
        const { measure } = item.entry
        const values = (given.typed.get(name) ?? []).map((value) => this.#holding.toGraph(value, measure))
        nodes.push({ id: name, rows: values.length, columns: [{ name: LIST_COLUMN, content: { values } }] })
        this.#rows.set(name, values.length)
      }
      if (item.kind === "table") nodes.push(this.#tableNode(item.entry, given))
    }
    return nodes
  }

  #tableNode(table: TableEntry, given: Given): TableNode {
    let rows = 0
    const columns = table.columns.map((column): ColumnNode => {
      const id = `${table.name}.${column.name}`
      if (column.formula !== undefined) {
        const resolved = this.#blocked(id) ? undefined : this.#compiled.formulas.get(id)?.resolved
        return { name: column.name, content: { formula: resolved ?? NOTHING } }
      }
      const read = given.tables.get(table.name)?.get(column.name) ?? []
      rows = Math.max(rows, read.length)
      return {
        name: column.name,
        content: { values: read.map((value) => this.#holding.toGraph(value, column.measure)) },
      }
    })
    this.#rows.set(table.name, rows)
    return { id: table.name, rows, columns }
  }

  #apply(change: GraphChange): void {
    for (const id of this.#graph.apply(change)) {
      this.#scalars.delete(id)
      this.#columns.delete(id)
      this.#named.add(id)
    }
  }

  /** Notes what these nodes may move: values to be read anew, and tables to be settled. */
  #moves(ids: readonly string[]): ReadonlySet<string> {
    const { reach } = this.#compiled
    const reached = reach.from(ids)
    for (const id of reached) {
      this.#scalars.delete(id)
      this.#columns.delete(id)
      this.#named.add(id)
      this.#waiting |= reach.bitOf(id)
    }
    return reached
  }

  /** Settles what a node leans on, so that it can be read. */
  #ready(id: string): void {
    const due = this.#waiting & this.#compiled.reach.tablesBehind(id)
    if (due !== 0n) this.#settle(due)
  }

  #settle(due: bigint): void {
    for (const level of this.#compiled.reach.levelsOf(due)) {
      const tables = new Map<string, TableRows>()
      for (const table of level) {
        this.#waiting &= ~this.#compiled.reach.bitOf(rowsNode(table.name))
        if (this.#blocked(rowsNode(table.name))) continue
        const next = this.#settled(table)
        if (next === undefined) continue
        tables.set(table.name, next)
        this.#rows.set(table.name, next.rows)
      }
      if (tables.size > 0) this.#apply({ tables })
    }
  }

  /** The rows that a table should have now; nothing where it has them. */
  #settled(table: TableEntry): TableRows | undefined {
    if (table.rows.kind === "formula") return this.#counted(table)
    return table.rows.kind === "solved" ? this.#solve(table, table.rows) : undefined
  }

  #counted(table: TableEntry): TableRows | undefined {
    const at = { entry: table.name }
    const wanted = this.scalar(rowsNode(table.name))
    let rows = 0
    this.#tableProblems.delete(table.name)
    if (typeof wanted === "number") {
      if (!Number.isInteger(wanted) || wanted < 0) {
        this.#tableProblems.set(table.name, { code: "bad_row_count", at, wanted })
      } else if (wanted > MOST_ROWS) {
        this.#tableProblems.set(table.name, { code: "too_many_rows", at, wanted, most: MOST_ROWS })
      } else rows = wanted
    }
    return rows === this.#rows.get(table.name) ? undefined : { rows, values: {} }
  }

  #solve(
    table: TableEntry,
    { from, solve, proof }: Extract<TableEntry["rows"], { readonly kind: "solved" }>,
  ): TableRows | undefined {
    const values = from.map((name) => this.#valuesOf(name))
    const before = this.#solved.get(table.name)?.from
    if (before?.every((value, at) => isUnmoved(value, values[at] ?? NO_VALUE))) return undefined
    const inputs = new Map(from.map((name) => [name, this.#heldValues(name)]))
    const known = [...inputs.values()].every((held) => held !== undefined)
    const given = known ? solverGiven(inputs as ReadonlyMap<string, readonly SolverValue[]>) : undefined
    const problem = given === undefined || proof === undefined ? undefined : problemOf(proof, given)
    const better = problem === undefined ? undefined : this.#settledSolutions.of(table.name, problem)
    const solution: Solution =
      better ??
      (given === undefined ? { rows: [], report: { method: "", unmet: [] } } : runSolver(solve, given))
    this.#solved.set(table.name, {
      from: values,
      report: solution.report,
      ...(proof === undefined || problem === undefined
        ? {}
        : { proof: { by: proof.by, problem, settled: better !== undefined } }),
    })
    this.#tableProblems.delete(table.name)
    if (solution.report.unmet.length > 0) {
      const at = { entry: table.name }
      this.#tableProblems.set(table.name, { code: "unmet", at, says: solution.report.unmet })
    }
    const solved: Record<string, readonly GraphValue[]> = {}
    for (const column of table.columns) {
      if (column.formula !== undefined) continue
      solved[column.name] = solution.rows.map((row) => this.#fromSolver(row[column.name], column.measure))
    }
    return { rows: solution.rows.length, values: solved }
  }

  #fromSolver(value: SolverValue | undefined, measure: MeasureId): GraphValue {
    if (value === undefined) return NO_VALUE
    return typeof value === "number" ? this.#holding.fromHeld(value, measure) : value
  }

  #valuesOf(name: string): GraphValue | readonly GraphValue[] {
    const item = this.#compiled.outline.get(name)
    if (item === undefined || item.kind === "table") return NO_VALUE
    return item.kind === "value" && !isList(item.entry) ? this.scalar(name) : this.column(name)
  }

  /** A name's values for a solver, or nothing where one of them is missing or wrong. */
  #heldValues(name: string): readonly SolverValue[] | undefined {
    const item = this.#compiled.outline.get(name)
    if (item === undefined || item.kind === "table") return undefined
    const { measure } = item.entry
    const single = item.kind === "value" && !isList(item.entry)
    const held: SolverValue[] = []
    for (const value of single ? [this.scalar(name)] : this.column(name)) {
      if (typeof value === "object") return undefined
      held.push(typeof value === "number" ? this.#holding.toHeld(value, measure) : value)
    }
    return held
  }
}
