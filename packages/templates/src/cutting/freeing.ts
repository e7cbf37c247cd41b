import type { Change } from "./answer.ts"

/** A limit that may stop a plan: other values for it, the nearest to the given one first, and what each would mean. */
export interface Loosening<Value extends number | boolean> {
  readonly field: string
  readonly from: number | boolean | null
  readonly values: readonly Value[]
  readonly frees: (value: Value) => boolean
  readonly says: (value: Value) => string
}

/** The smallest change of one limit that alone makes a plan possible; none where no value of it does. */
export function smallestChange<Value extends number | boolean>(limit: Loosening<Value>): Change[] {
  const to = limit.values.find((value) => limit.frees(value))
  return to === undefined ? [] : [{ field: limit.field, from: limit.from, to, says: limit.says(to) }]
}

/** Different numbers, rising. */
export function rising(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b)
}

/** From one less than a number down to 1. */
export function countDown(from: number): number[] {
  return Array.from({ length: Math.max(from - 1, 0) }, (_, index) => from - 1 - index)
}
