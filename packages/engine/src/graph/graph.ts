import type { Ast } from "../formula/ast.ts"

/** Why a cell of the graph has no value. */
export type GraphError = "division_by_zero" | "not_a_number" | "not_found" | "text_for_number" | "no_value"

/** A value in the graph. Numbers are in the graph's base units. */
export type GraphValue = number | string | boolean | { readonly error: GraphError }

/** A node holds a constant or a formula. A formula's names must all be nodes, and make no cycle. */
export type NodeContent = { readonly value: GraphValue } | { readonly formula: Ast }

export interface ScalarNode {
  readonly id: string
  readonly content: NodeContent
}

/** One column: constants (one a row) or a formula worked once for each row. Its id is `table.column`. */
export interface ColumnNode {
  readonly name: string
  readonly content: { readonly values: readonly GraphValue[] } | { readonly formula: Ast }
}

export interface TableNode {
  readonly id: string
  readonly rows: number
  readonly columns: readonly ColumnNode[]
}

/** New content for scalars and tables. Tables keep their columns; only rows and constants change. */
export interface GraphChange {
  readonly scalars?: ReadonlyMap<string, NodeContent>
  readonly tables?: ReadonlyMap<
    string,
    { readonly rows: number; readonly values: Readonly<Record<string, readonly GraphValue[]>> }
  >
}

/**
 * The one door to whatever evaluates. Everything that a person could get wrong (unknown names, cycles,
 * dimensions) is found before; what reaches a graph is sound, and only values can still be errors.
 *
 * Two graphs implement this and agree: HyperFormula, fast, in doubles, and a slow, obvious one in decimals.
 */
export interface Graph {
  /**
   * Applies a change, recalculates what depends on it, and names every node whose value may now differ (scalars by id,
   * columns as `table.column`); it may name too many, never too few.
   */
  apply(change: GraphChange): ReadonlySet<string>
  scalar(id: string): GraphValue
  /** One value a row. */
  column(table: string, name: string): readonly GraphValue[]
}

export type GraphBuilder = (scalars: readonly ScalarNode[], tables: readonly TableNode[]) => Graph
