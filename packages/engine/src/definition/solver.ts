import type { MeasureId } from "../units/measure.ts"

export type SolverValue = number | string | boolean

/**
 * What a solver may read, by name. Numbers are in the held units whatever the graph's scales: whole
 * nanometres for lengths, kilograms, seconds, kelvins, hundredths of the currency, and products of these.
 */
export interface SolverGiven {
  number(name: string): number
  text(name: string): string
  yes(name: string): boolean
  /** A list input or a column, one value a row. */
  column(name: string): readonly SolverValue[]
}

/** What a solver says of its own answer. */
export interface SolverReport {
  /** The method in a few words: "dynamic programming over the supports". */
  readonly method: string
  /** What was made least or most, and what it came to, in held units. */
  readonly objective?: { readonly says: string; readonly measure: MeasureId; readonly value: number }
  /** No answer can be better than this, in held units. Equal to the objective: proven best. */
  readonly bound?: number
  /** What could not be satisfied: each a sentence that says which limit stops it and what would free it. */
  readonly unmet: readonly string[]
  /** What could be done better by choosing otherwise: each a sentence. Nothing is wrong where there is one. */
  readonly advice?: readonly string[]
}

/** A slower search for a better answer than the one that a solver gives at once. */
export interface Proof {
  /** The id of the prover, for whoever runs it. */
  readonly by: string
  /** What is to be solved, in data that JSON holds: where it is the same, so is the answer. */
  readonly problem: (given: SolverGiven) => unknown
}

/** The rows a solver found, in held units, and its report. */
export interface Solution {
  readonly rows: readonly Readonly<Record<string, SolverValue>>[]
  readonly report: SolverReport
}
