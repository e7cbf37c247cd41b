import fc from "fast-check"
import type { GraphChange, GraphValue } from "../../src/graph/graph.ts"
import { f, type Scalar, type Table } from "./small-graph.ts"

/** A small graph of numbers, and what is edited in it, one edit after the other. */
export interface RandomGraph {
  readonly scalars: Readonly<Record<string, Scalar>>
  /** The values of the table `t`: columns `x` (constants) and `y` (a formula over `x` and a scalar). */
  readonly rows: readonly number[]
  readonly edits: readonly Edit[]
}

export type Edit = { readonly scalar: string; readonly value: number } | { readonly rows: readonly number[] }

const INPUTS = ["in_0", "in_1", "in_2", "in_3"]

/** Eighths, which doubles and decimals both hold exactly, and so do a few sums and small multiples of them. */
const eighths = fc.integer({ min: -800, max: 800 }).map((eighth) => eighth / 8)

/*
 * Two sorts of formula. Exact ones stay within eighths and their halves, so rounding and comparing them must
 * come out the same in doubles and in decimals. Free ones divide and take roots; nothing that jumps, and no
 * divisor, leans on them, for there a last digit may decide.
 */
const EXACT = [
  "A + B",
  "A - B",
  "A * 3",
  "-A",
  "A / 2",
  "A * 50%",
  "MIN(A; B)",
  "MAX(A; B; 0)",
  "IF(A < B; A; B + 1)",
  "IF(AND(A >= 0; B <> A); B; A)",
  "ABS(A)",
  "ROUND(A; 0)",
  "ROUNDUP(A; 0)",
  "ROUNDDOWN(A; 0)",
  "TRUNC(A)",
  "INT(A)",
  "CEILING(A; 4)",
  "FLOOR(A; 4)",
  "MOD(A; 8)",
  "SUM(t.x) + A",
  "MAX(t.x) - B",
  'COUNTIF(t.x; ">0") + A',
  "IFERROR(INDEX(t.x; 2); A)",
]
const FREE = [
  "A / B",
  "P + Q",
  "P - Q",
  "P * Q",
  "P * A",
  "MIN(P; Q)",
  "MAX(P; A)",
  "IF(A > B; P; Q)",
  "SQRT(ABS(P))",
  "AVERAGE(P; Q; A)",
  "IFERROR(P; Q)",
  "SUM(t.y) * P",
  "SUMPRODUCT(t.x; t.y) - Q",
  "(P + Q) / 7",
]

const exactNames = [...INPUTS, ...Array.from({ length: 5 }, (_, i) => `exact_${i}`)]
const freeNames = Array.from({ length: 6 }, (_, i) => `free_${i}`)

export const randomGraphs: fc.Arbitrary<RandomGraph> = fc.record({
  scalars: fc
    .record({
      inputs: fc.tuple(...INPUTS.map(() => eighths)),
      exact: fc.tuple(...exactNames.slice(INPUTS.length).map(() => choice(EXACT))),
      free: fc.tuple(...freeNames.map(() => choice(FREE))),
    })
    .map(({ inputs, exact, free }) => {
      const scalars: Record<string, Scalar> = {}
      for (const [index, value] of inputs.entries()) scalars[INPUTS[index] ?? ""] = value
      for (const [index, chosen] of exact.entries()) {
        const before = exactNames.slice(0, INPUTS.length + index)
        scalars[exactNames[INPUTS.length + index] ?? ""] = f(filledIn(chosen, before, before))
      }
      for (const [index, chosen] of free.entries()) {
        const before = [...exactNames, ...freeNames.slice(0, index)]
        scalars[freeNames[index] ?? ""] = f(filledIn(chosen, exactNames, before))
      }
      return scalars
    }),
  rows: fc.array(eighths, { maxLength: 5 }),
  edits: fc.array(
    fc.oneof(
      fc.record({ scalar: fc.constantFrom(...INPUTS), value: eighths }),
      fc.record({ rows: fc.array(eighths, { maxLength: 6 }) }),
    ),
    { minLength: 1, maxLength: 6 },
  ),
})

/** Which formula, and which of the names before it stand for A, B, P and Q. */
interface Choice {
  readonly formula: string
  readonly picks: readonly number[]
}

function choice(formulas: readonly string[]): fc.Arbitrary<Choice> {
  return fc.record({
    formula: fc.constantFrom(...formulas),
    picks: fc.array(fc.nat({ max: 1_000 }), { minLength: 4, maxLength: 4 }),
  })
}

function filledIn({ formula, picks }: Choice, exact: readonly string[], free: readonly string[]): string {
  const pick = (from: readonly string[], index: number) => from[(picks[index] ?? 0) % from.length] ?? ""
  const names: Readonly<Record<string, string>> = {
    A: pick(exact, 0),
    B: pick(exact, 1),
    P: pick(free, 2),
    Q: pick(free, 3),
  }
  return formula.replace(/\b[ABPQ]\b/g, (letter) => names[letter] ?? letter)
}

export function tablesOf(rows: readonly number[]): Readonly<Record<string, Table>> {
  return { t: { columns: { x: rows, y: f("x * in_0 + ROW()") } } }
}

export function changeOf(edit: Edit): GraphChange {
  return "rows" in edit
    ? { tables: new Map([["t", { rows: edit.rows.length, values: { x: edit.rows } }]]) }
    : { scalars: new Map([[edit.scalar, { value: edit.value }]]) }
}

/** Whether two answers agree to 1e-9, or to as much as doubles can after cancelling numbers up to `greatest`. */
export function agrees(a: GraphValue, b: GraphValue, greatest: number): boolean {
  if (typeof a === "number" && typeof b === "number") {
    return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) + 1e-13 * greatest
  }
  return JSON.stringify(a) === JSON.stringify(b)
}
