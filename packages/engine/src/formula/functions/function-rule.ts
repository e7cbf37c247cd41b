import type { Application } from "../application.ts"
import type { Cell, Operand } from "../cell.ts"
import type { InDoubles } from "../double.ts"
import type { ValueType } from "../value-type.ts"

/** As many arguments as anybody could want. */
export const MANY = 255

/** A function, as data: adding one is adding one of these to its family's file. */
export interface FunctionRule {
  readonly name: string
  /** Fewest and most arguments. */
  readonly least: number
  readonly most: number
  /** Judges the arguments' types and gives the result's; undefined when it was refused or cannot be known. */
  readonly typeOf: (application: Application) => ValueType | undefined
  /**
   * Works the result out in decimals. Arguments that are errors do not reach it, the first one is the result,
   * unless `takesErrors`. Optional arguments that were left out are absent. `row` counts from 1, and is 0
   * where there is no row.
   */
  readonly evaluate: (operands: readonly Operand[], row: number) => Cell
  /** The same in doubles. */
  readonly inDoubles: InDoubles
  readonly takesErrors?: true
  /** One sentence on what it gives. */
  readonly says: string
  /** A formula over {@link EXAMPLE_TABLE} and what it gives. Tests run it on both graphs, in the second row. */
  readonly example: { readonly formula: string; readonly gives: number | string | boolean }
}

/** The table that the examples read: one value a row. */
export const EXAMPLE_TABLE = {
  id: "parts",
  rows: 3,
  columns: {
    item: ["bar", "plate", "bar"],
    size: [2, 4, 8],
    count: [10, 20, 5],
  },
} as const
