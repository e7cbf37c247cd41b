import type { GraphError } from "../graph/graph.ts"
import { Decimal } from "../quantity/decimal.ts"

/** Why a value is missing. Errors are values here: they pass from formula to formula. */
export interface ErrorCell {
  readonly error: GraphError
}

/** One value while it is worked out in decimals. */
export type Cell = Decimal | string | boolean | ErrorCell

/** What a function or an operator is given: one value, or a whole column. */
export type Operand = Cell | readonly Cell[]

/** Beyond this a number is not one any more, in doubles or here: both graphs must agree. */
const GREATEST = new Decimal(Number.MAX_VALUE)

export function isColumn(operand: Operand): operand is readonly Cell[] {
  return Array.isArray(operand)
}

export function isError(operand: Operand | undefined): operand is ErrorCell {
  return typeof operand === "object" && !isColumn(operand) && !(operand instanceof Decimal)
}

export function errorCell(error: GraphError): ErrorCell {
  return { error }
}

/** A worked-out number, or `not_a_number` when it is none or too great for a double. */
export function numberCell(value: Decimal): Cell {
  if (!value.isFinite() || value.abs().greaterThan(GREATEST)) return errorCell("not_a_number")
  return value.isZero() ? new Decimal(0) : value
}

/** Wraps a calculation on numbers: anything else among the arguments is `text_for_number`. */
export function onNumbers(
  work: (...numbers: Decimal[]) => Decimal | ErrorCell,
): (operands: readonly Operand[]) => Cell {
  return (operands) => {
    const numbers: Decimal[] = []
    for (const operand of operands) {
      if (isError(operand)) return operand
      if (!(operand instanceof Decimal)) return errorCell("text_for_number")
      numbers.push(operand)
    }
    const result = work(...numbers)
    return isError(result) ? result : numberCell(result)
  }
}

/** Wraps a rule on single values: errors pass through, the first one first. */
export function onCells(work: (first: Cell, second: Cell) => Cell): (operands: readonly Operand[]) => Cell {
  return ([first = errorCell("no_value"), second = errorCell("no_value")]) => {
    if (isError(first)) return first
    if (isError(second)) return second
    return isColumn(first) || isColumn(second) ? errorCell("text_for_number") : work(first, second)
  }
}

/** Compares letters, not capitals or accents. */
const LETTERS = new Intl.Collator("en", { sensitivity: "base" })

/** Whether two values are the same; texts without regard to capitals. Values of two kinds never are. */
export function sameCell(a: Cell, b: Cell): boolean {
  if (a instanceof Decimal) return b instanceof Decimal && a.equals(b)
  if (typeof a === "string") return typeof b === "string" && LETTERS.compare(a, b) === 0
  return a === b
}

/** Joins texts and numbers, numbers as a machine writes them. */
export function joinCells(operands: readonly Operand[]): Cell {
  let joined = ""
  for (const operand of operands) {
    if (isError(operand)) return operand
    if (operand instanceof Decimal) joined += String(operand.toNumber())
    else if (typeof operand === "string") joined += operand
    else return errorCell("text_for_number")
  }
  return joined
}
