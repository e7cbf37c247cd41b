import type { Ast } from "../formula/ast.ts"
import { type DoubleOperand, FAULTS, isDoubles, isUnmoved } from "../formula/double.ts"
import { type Plan, planOf } from "../formula/plan.ts"
import type { Graph, GraphBuilder, GraphChange, GraphValue, NodeContent } from "./graph.ts"

interface Table {
  readonly id: string
  rows: number
  readonly columns: Column[]
}

/** A scalar, or a column, whose id is `table.column`. */
interface Node {
  readonly id: string
  /** For a column. */
  readonly table?: Table
  /** Absent for constants. */
  plan?: Plan
  /** What the plan's names stand for, in their order. */
  needs: readonly Node[]
  readonly users: Set<Node>
  value: DoubleOperand
  /** Whether something that it leans on, however far away, was changed since it was last looked after. */
  stale: boolean
  /** Has to be worked out whether or not a need moved: new, or another formula, or another number of rows. */
  due: boolean
  /** The change with which its value last moved, and the one at which it was last worked out. */
  movedAt: number
  workedAt: number
}

type Column = Node & { readonly table: Table }

/**
 * The fast graph: doubles, and nothing is worked out before it is asked for, nor again unless something that it leans on
 * directly has moved. A column that comes out as it was keeps its array.
 *
 * @throws RangeError for ids that do not exist, rows that do not match, and rings: misuse, not bad input
 */
export const buildDoubleGraph: GraphBuilder = (scalars, tables): Graph => new DoubleGraph(scalars, tables)

class DoubleGraph implements Graph {
  readonly #scalars = new Map<string, Node>()
  readonly #columns = new Map<string, Column>()
  readonly #tables = new Map<string, Table>()
  /** Every node that is stale. */
  readonly #stale = new Set<Node>()
  #change = 0

  constructor(...[scalars, tables]: Parameters<GraphBuilder>) {
    for (const { id } of scalars) this.#scalars.set(id, newNode(id))
    for (const { id, rows, columns } of tables) {
      const table: Table = { id, rows, columns: [] }
      this.#tables.set(id, table)
      for (const { name } of columns) {
        const column: Column = { ...newNode(`${id}.${name}`), table }
        table.columns.push(column)
        this.#columns.set(column.id, column)
      }
    }
    // A name may be used before it is defined: all nodes are there before one is given what it holds.
    for (const { id, content } of scalars) this.#put(this.#scalar(id), content)
    for (const { id, columns } of tables) {
      for (const { name, content } of columns) {
        const column = this.#column(id, name)
        if ("formula" in content) this.#putFormula(column, content.formula)
        else column.value = content.values.map(toDouble)
      }
      checkRows(this.#table(id))
    }
    for (const node of [...this.#scalars.values(), ...this.#columns.values()])
      if (node.plan !== undefined) this.#stale.add(node)
  }

  apply({ scalars, tables }: GraphChange): ReadonlySet<string> {
    this.#change++
    const moved: Node[] = []
    for (const [id, content] of scalars ?? []) {
      const node = this.#scalar(id)
      this.#put(node, content)
      moved.push(node)
    }
    for (const [id, { rows, values }] of tables ?? []) {
      const table = this.#table(id)
      const resized = table.rows !== rows
      table.rows = rows
      for (const [name, column] of Object.entries(values)) {
        const node = this.#column(id, name)
        if (node.plan !== undefined) throw new RangeError(`${node.id} is a formula`)
        if (this.#hold(node, column.map(toDouble))) moved.push(node)
      }
      checkRows(table)
      if (!resized) continue
      for (const column of table.columns) {
        column.due = column.plan !== undefined
        moved.push(column)
      }
    }
    this.#spread(moved)
    return new Set([...moved, ...this.#stale].map(({ id }) => id))
  }

  scalar(id: string): GraphValue {
    const value = this.#settled(this.#scalar(id))
    return isDoubles(value) ? FAULTS.text_for_number : value
  }

  column(table: string, name: string): readonly GraphValue[] {
    this.#table(table)
    const value = this.#settled(this.#column(table, name))
    return isDoubles(value) ? value : []
  }

  #scalar(id: string): Node {
    const node = this.#scalars.get(id)
    if (node === undefined) throw new RangeError(`the graph has no scalar ${id}`)
    return node
  }

  #table(id: string): Table {
    const table = this.#tables.get(id)
    if (table === undefined) throw new RangeError(`the graph has no table ${id}`)
    return table
  }

  #column(table: string, name: string): Column {
    const node = this.#columns.get(`${table}.${name}`)
    if (node === undefined) throw new RangeError(`the graph has no column ${table}.${name}`)
    return node
  }

  /** What a name in a formula of this node stands for: `@dig` in the table `supports` is `supports.dig`. */
  #named(name: string, { id, table }: Node): Node {
    const node = name.startsWith("@")
      ? this.#columns.get(`${table?.id}.${name.slice(1)}`)
      : (this.#scalars.get(name) ?? this.#columns.get(name))
    if (node === undefined) throw new RangeError(`the graph has no ${name}, on which ${id} leans`)
    return node
  }

  #put(node: Node, content: NodeContent): void {
    if ("formula" in content) {
      this.#putFormula(node, content.formula)
      return
    }
    this.#leanOn(node, [])
    delete node.plan
    node.due = false
    node.stale = false
    this.#stale.delete(node)
    this.#hold(node, toDouble(content.value))
  }

  #putFormula(node: Node, formula: Ast): void {
    const plan = planOf(formula)
    node.plan = plan
    node.due = true
    node.stale = true
    this.#leanOn(
      node,
      plan.names.map((name) => this.#named(name, node)),
    )
  }

  #leanOn(node: Node, needs: readonly Node[]): void {
    for (const need of node.needs) need.users.delete(node)
    node.needs = needs
    for (const need of needs) need.users.add(node)
  }

  /** Gives a node a value; whether that is another one. */
  #hold(node: Node, value: DoubleOperand): boolean {
    if (isUnmoved(node.value, value)) return false
    node.value = value
    node.movedAt = this.#change
    return true
  }

  /** Makes stale what leans on these, near and far, and those of them that are to be worked out. */
  #spread(moved: readonly Node[]): void {
    const open = [...moved]
    for (const node of moved) {
      if (!node.due) continue
      node.stale = true
      this.#stale.add(node)
    }
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      for (const user of node.users) {
        if (user.stale) continue
        user.stale = true
        this.#stale.add(user)
        open.push(user)
      }
    }
  }

  /** The value of a node, worked out after all that it leans on; with a stack of its own, for chains may be long. */
  #settled(wanted: Node): DoubleOperand {
    if (!wanted.stale) return wanted.value
    const open = [wanted]
    const entered = new Set<Node>()
    for (let node = open.at(-1); node !== undefined; node = open.at(-1)) {
      const waitsFor = node.stale && !entered.has(node) ? node.needs.filter((need) => need.stale) : []
      if (waitsFor.length === 0) {
        if (node.stale) this.#lookAfter(node)
        open.pop()
        continue
      }
      entered.add(node)
      open.push(...waitsFor)
    }
    return wanted.value
  }

  /** Works a node out if one of its needs has moved since. */
  #lookAfter(node: Node): void {
    const { plan, needs, workedAt } = node
    if (needs.some((need) => need.stale)) throw new RangeError(`${node.id} leans on itself`)
    if (plan !== undefined && (node.due || needs.some((need) => need.movedAt > workedAt))) {
      const values = needs.map((need) => need.value)
      this.#hold(node, plan.work(values, node.table?.rows))
      node.workedAt = this.#change
      node.due = false
    }
    node.stale = false
    this.#stale.delete(node)
  }
}

function newNode(id: string): Node {
  return {
    id,
    needs: [],
    users: new Set(),
    value: FAULTS.no_value,
    stale: false,
    due: false,
    movedAt: 0,
    workedAt: -1,
  }
}

function checkRows({ rows, columns }: Table): void {
  for (const { id, plan, value } of columns) {
    if (plan === undefined && isDoubles(value) && value.length !== rows)
      throw new RangeError(`${id} has ${value.length} values for ${rows} rows`)
  }
}

function toDouble(value: GraphValue): GraphValue {
  if (typeof value === "object") return FAULTS[value.error]
  return typeof value !== "number" || Number.isFinite(value) ? value : FAULTS.not_a_number
}
