import type { Ast } from "../../src/formula/ast.ts"
import { renameIn } from "../../src/formula/names.ts"
import type {
  ColumnNode,
  Graph,
  GraphBuilder,
  GraphValue,
  NodeContent,
  ScalarNode,
  TableNode,
} from "../../src/graph/graph.ts"
import { read } from "../formula/small-language.ts"

/** A formula in a small graph; anything else there is a constant. */
export interface Formula {
  readonly formula: string
}

export type Scalar = GraphValue | Formula

/** Columns by name: constants, one a row, or a formula. `rows` where no column says how many. */
export interface Table {
  readonly rows?: number
  readonly columns: Readonly<Record<string, readonly GraphValue[] | Formula>>
}

export function f(formula: string): Formula {
  return { formula }
}

export function nodesOf(scalars: Readonly<Record<string, Scalar>>): readonly ScalarNode[] {
  return Object.entries(scalars).map(([id, scalar]) => ({ id, content: contentOf(scalar) }))
}

export function contentOf(scalar: Scalar): NodeContent {
  return isFormula(scalar) ? { formula: read(scalar.formula) } : { value: scalar }
}

/** Builds a graph in one breath; within a table, a bare name of one of its columns is this row's value. */
export function graphOf(
  build: GraphBuilder,
  scalars: Readonly<Record<string, Scalar>>,
  tables: Readonly<Record<string, Table>> = {},
): Graph {
  return build(
    nodesOf(scalars),
    Object.entries(tables).map(([id, table]) => tableOf(id, table)),
  )
}

function tableOf(id: string, { rows, columns }: Table): TableNode {
  const counted = Object.values(columns).find((column) => !isFormula(column))
  const count = rows ?? (counted === undefined || isFormula(counted) ? 0 : counted.length)
  return {
    id,
    rows: count,
    columns: Object.entries(columns).map(
      ([name, column]): ColumnNode => ({
        name,
        content: isFormula(column) ? { formula: inRow(column.formula, columns) } : { values: column },
      }),
    ),
  }
}

function inRow(formula: string, columns: Readonly<Record<string, unknown>>): Ast {
  return renameIn(read(formula), (name) => (Object.hasOwn(columns, name) ? `@${name}` : name))
}

function isFormula(content: unknown): content is Formula {
  return typeof content === "object" && content !== null && "formula" in content
}
