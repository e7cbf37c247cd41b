import type { Ast } from "../formula/ast.ts"
import { type Cell, errorCell, isColumn, isError, type Operand } from "../formula/cell.ts"
import { evaluateFormula } from "../formula/evaluate.ts"
import { namesIn } from "../formula/names.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Graph, GraphBuilder, GraphChange, GraphValue } from "./graph.ts"

/** A scalar, or a column, whose id is `table.column`. */
interface Node {
  readonly id: string
  /** The table's id, for a column. */
  readonly table?: string
  content: Content
}

type Content =
  | { readonly constant: Operand }
  | { readonly formula: Ast; readonly dependsOn: readonly string[] }

/**
 * The slow, obvious graph: every value a decimal of 40 digits, worked out when it is first asked for and
 * forgotten when anything that it leans on is changed. It is there to be right, so that the fast one can be held against it.
 *
 * @throws RangeError for ids that do not exist, rows that do not match, and rings: misuse, not bad input
 */
export const buildDecimalGraph: GraphBuilder = (scalars, tables): Graph => {
  const nodes = new Map<string, Node>()
  const rows = new Map<string, number>()
  const values = new Map<string, Operand>()

  for (const { id, content } of scalars) nodes.set(id, { id, content: scalarContent(content) })
  for (const table of tables) {
    rows.set(table.id, table.rows)
    for (const { name, content } of table.columns) {
      const id = `${table.id}.${name}`
      nodes.set(id, {
        id,
        table: table.id,
        content:
          "formula" in content
            ? formulaContent(content.formula, table.id)
            : { constant: content.values.map(toCell) },
      })
    }
  }

  const nodeOf = (id: string): Node => {
    const node = nodes.get(id)
    if (node === undefined) throw new RangeError(`the graph has no ${id}`)
    return node
  }
  const rowsOf = (table: string): number => {
    const count = rows.get(table)
    if (count === undefined) throw new RangeError(`the graph has no table ${table}`)
    return count
  }

  const checkRows = (): void => {
    for (const { id, table, content } of nodes.values()) {
      if (table === undefined || "formula" in content || !isColumn(content.constant)) continue
      if (content.constant.length !== rowsOf(table)) {
        throw new RangeError(`${id} has ${content.constant.length} values for ${rowsOf(table)} rows`)
      }
    }
  }

  /** Works one node out; all that it leans on has its values. */
  const work = ({ table, content }: Node): Operand => {
    if ("constant" in content) return content.constant
    const inRow = (row: number): Cell =>
      evaluateFormula(
        content.formula,
        (name) => {
          const value = values.get(idOf(name, table)) ?? errorCell("no_value")
          return name.startsWith("@") && isColumn(value) ? (value[row - 1] ?? errorCell("no_value")) : value
        },
        row,
      )
    return table === undefined
      ? inRow(0)
      : Array.from({ length: rowsOf(table) }, (_, index) => inRow(index + 1))
  }

  /** Works out a node after all that it leans on, with a stack of its own: chains may be long. */
  const settle = (wanted: string): Operand => {
    const open = [wanted]
    const entered = new Set<string>()
    for (let id = open.at(-1); id !== undefined; id = open.at(-1)) {
      const node = nodeOf(id)
      const missing =
        values.has(id) || "constant" in node.content
          ? []
          : node.content.dependsOn.filter((name) => !values.has(name))
      if (missing.length > 0) {
        if (entered.has(id)) throw new RangeError(`${id} leans on itself`)
        entered.add(id)
        open.push(...missing)
      } else {
        if (!values.has(id)) values.set(id, work(node))
        open.pop()
      }
    }
    return values.get(wanted) ?? errorCell("no_value")
  }

  /** What leans on each node directly; made anew after a formula has come or gone. */
  let users: ReadonlyMap<string, readonly string[]> | undefined
  /** Forgets the values of these nodes and of all that lean on them, and names them all. */
  const forget = (changed: readonly string[]): ReadonlySet<string> => {
    users ??= usersOf(nodes.values())
    const forgotten = new Set(changed)
    for (const id of forgotten) {
      values.delete(id)
      for (const user of users.get(id) ?? []) forgotten.add(user)
    }
    return forgotten
  }

  checkRows()
  return {
    apply(change: GraphChange): ReadonlySet<string> {
      const changed: string[] = []
      for (const [id, content] of change.scalars ?? []) {
        const node = nodeOf(id)
        if ("formula" in node.content || "formula" in content) users = undefined
        node.content = scalarContent(content)
        changed.push(id)
      }
      for (const [table, next] of change.tables ?? []) {
        const before = rowsOf(table)
        rows.set(table, next.rows)
        for (const node of nodes.values())
          if (
            node.table === table &&
            (before !== next.rows || Object.hasOwn(next.values, node.id.slice(table.length + 1)))
          )
            changed.push(node.id)
        for (const [name, column] of Object.entries(next.values)) {
          const node = nodeOf(`${table}.${name}`)
          if ("formula" in node.content) throw new RangeError(`${node.id} is a formula`)
          node.content = { constant: column.map(toCell) }
        }
      }
      checkRows()
      return forget(changed)
    },
    scalar(id: string): GraphValue {
      const value = settle(id)
      if (isColumn(value)) throw new RangeError(`${id} is a column`)
      return toGraphValue(value)
    },
    column(table: string, name: string): readonly GraphValue[] {
      const value = settle(`${table}.${name}`)
      if (!isColumn(value)) throw new RangeError(`${table}.${name} is one value`)
      return value.map(toGraphValue)
    },
  }
}

function usersOf(nodes: Iterable<Node>): ReadonlyMap<string, readonly string[]> {
  const users = new Map<string, string[]>()
  for (const { id, content } of nodes) {
    for (const need of "formula" in content ? content.dependsOn : []) {
      const known = users.get(need)
      if (known === undefined) users.set(need, [id])
      else known.push(id)
    }
  }
  return users
}

function scalarContent(content: { readonly value: GraphValue } | { readonly formula: Ast }): Content {
  return "formula" in content ? formulaContent(content.formula) : { constant: toCell(content.value) }
}

function formulaContent(formula: Ast, table?: string): Content {
  return { formula, dependsOn: [...new Set(namesIn(formula).map(({ name }) => idOf(name, table)))] }
}

/** `@dig` in a formula of the table `supports` is a value of `supports.dig`. */
function idOf(name: string, table: string | undefined): string {
  return name.startsWith("@") ? `${table ?? ""}.${name.slice(1)}` : name
}

export function toCell(value: GraphValue): Cell {
  if (typeof value !== "number") return value
  return Number.isFinite(value) ? new Decimal(value) : errorCell("not_a_number")
}

export function toGraphValue(cell: Cell): GraphValue {
  return cell instanceof Decimal ? cell.toNumber() : isError(cell) ? { error: cell.error } : cell
}
