import type { GraphError, GraphValue } from "../graph/graph.ts"

/** Why a value is missing, among doubles. */
export type Fault = Exclude<GraphValue, number | string | boolean>

/** What a function or an operator is given in doubles: one value, or a whole column. */
export type DoubleOperand = GraphValue | readonly GraphValue[]

/** Works a result out in doubles. `row` counts from 1, and is 0 where there is no row. */
export type InDoubles = (operands: readonly DoubleOperand[], row: number) => GraphValue

/** One object an error, so that none is made while values are worked out. */
export const FAULTS: Readonly<Record<GraphError, Fault>> = {
  division_by_zero: { error: "division_by_zero" },
  not_a_number: { error: "not_a_number" },
  not_found: { error: "not_found" },
  text_for_number: { error: "text_for_number" },
  no_value: { error: "no_value" },
}

export function isDoubles(operand: DoubleOperand | undefined): operand is readonly GraphValue[] {
  return Array.isArray(operand)
}

export function isFault(operand: DoubleOperand | undefined): operand is Fault {
  return typeof operand === "object" && !Array.isArray(operand)
}

/** A worked-out number, without the sign of a zero; or `not_a_number`. An error stays what it is. */
export function sound(value: number | Fault): number | Fault {
  if (typeof value !== "number") return value
  return Number.isFinite(value) ? value + 0 : FAULTS.not_a_number
}

/** What comes of operands of which one is no number: the first error, or that one was none. */
export function faultAmong(operands: readonly (DoubleOperand | undefined)[]): Fault {
  const first = operands.find((operand) => typeof operand !== "number")
  return isFault(first) ? first : FAULTS.text_for_number
}

/** Wraps a calculation on one number. */
export function onDouble(work: (value: number) => number | Fault): InDoubles {
  return (operands) => {
    const [value] = operands
    return typeof value === "number" ? sound(work(value)) : faultAmong(operands)
  }
}

/** Wraps a calculation on two numbers; the second is `otherwise` where it was left out. */
export function onTwoDoubles(
  work: (first: number, second: number) => number | Fault,
  otherwise?: number,
): InDoubles {
  return (operands) => {
    const [first, second = otherwise] = operands
    return typeof first === "number" && typeof second === "number"
      ? sound(work(first, second))
      : faultAmong(operands)
  }
}

/** Joins texts and numbers, numbers as a machine writes them. */
export function joinDoubles(operands: readonly DoubleOperand[]): string | Fault {
  let joined = ""
  for (const operand of operands) {
    if (isFault(operand)) return operand
    if (typeof operand !== "number" && typeof operand !== "string") return FAULTS.text_for_number
    joined += operand
  }
  return joined
}

/** Compares letters, not capitals or accents. */
const LETTERS = new Intl.Collator("en", { sensitivity: "base" })
const PLAIN_TEXT = /^[ -~]*$/

/** What two equal texts share; nothing for a text with letters that only a collator can compare. */
export function textKey(text: string): string | undefined {
  return PLAIN_TEXT.test(text) ? text.toLowerCase() : undefined
}

/** Whether two values are the same; texts without regard to capitals. Values of two kinds never are. */
export function sameDouble(a: GraphValue, b: GraphValue): boolean {
  if (a === b) return true
  if (typeof a !== "string" || typeof b !== "string") return false
  const [left, right] = [textKey(a), textKey(b)]
  return left === undefined || right === undefined ? LETTERS.compare(a, b) === 0 : left === right
}

/** Whether nothing that leans on a value could tell it from another. */
export function isUnmoved(a: DoubleOperand, b: DoubleOperand): boolean {
  if (a === b) return true
  if (isDoubles(a)) {
    if (!isDoubles(b) || a.length !== b.length) return false
    for (let row = 0; row < a.length; row++)
      if (a[row] !== b[row] && !isUnmoved(a[row] as GraphValue, b[row] as GraphValue)) return false
    return true
  }
  return isFault(a) && isFault(b) && a.error === b.error
}
