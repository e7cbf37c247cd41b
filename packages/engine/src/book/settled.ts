import type { Solution } from "../definition/solver.ts"

/** A table whose rows were solved at once, and may be solved better. */
export interface Unproven {
  readonly table: string
  /** The id of the prover. */
  readonly prover: string
  /** What it is asked, in data that JSON holds. */
  readonly given: unknown
}

/** Enough to go back and forth between a few designs; the oldest are forgotten. */
const MOST_KEPT = 60

/** Better solutions that came later, by what they are of: for as long as the workbook is open, and never saved. */
export class Settled {
  readonly #solutions = new Map<string, Solution>()

  put(table: string, problem: string, solution: Solution): void {
    const key = keyOf(table, problem)
    this.#solutions.delete(key)
    this.#solutions.set(key, solution)
    const [oldest] = this.#solutions.keys()
    if (this.#solutions.size > MOST_KEPT && oldest !== undefined) this.#solutions.delete(oldest)
  }

  of(table: string, problem: string): Solution | undefined {
    return this.#solutions.get(keyOf(table, problem))
  }
}

function keyOf(table: string, problem: string): string {
  return `${table} ${problem}`
}
