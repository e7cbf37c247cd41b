/** One term of a row: a variable by its place, and what it counts for. */
export type Term = readonly [variable: number, factor: number]

export interface Row {
  readonly least: number
  readonly most: number
  readonly terms: readonly Term[]
}

export interface Variable {
  readonly cost: number
  /** `Infinity`: no limit. The least is always 0. */
  readonly most: number
  readonly whole: boolean
}

/** A program in whole numbers: minimise the sum of cost times value, with every row between its two ends. */
export class Program {
  readonly variables: Variable[] = []
  readonly rows: Row[] = []

  /** Adds a variable and gives its place. */
  variable(cost: number, most = Number.POSITIVE_INFINITY, whole = true): number {
    return this.variables.push({ cost, most, whole }) - 1
  }

  row(least: number, most: number, terms: readonly Term[]): void {
    const sums = new Map<number, number>()
    for (const [variable, factor] of terms) sums.set(variable, (sums.get(variable) ?? 0) + factor)
    this.rows.push({ least, most, terms: [...sums].filter(([, factor]) => factor !== 0) })
  }

  atLeast(least: number, terms: readonly Term[]): void {
    this.row(least, Number.POSITIVE_INFINITY, terms)
  }

  atMost(most: number, terms: readonly Term[]): void {
    this.row(Number.NEGATIVE_INFINITY, most, terms)
  }

  /** The same program with another thing to minimise, and rows of its own that can be added. */
  minimising(cost: (variable: number) => number): Program {
    const other = new Program()
    other.variables.push(...this.variables.map((one, index) => ({ ...one, cost: cost(index) })))
    other.rows.push(...this.rows)
    return other
  }
}

/** What a solver made of a program. A bound below which no value can lie is given with `optimal` and `limit`. */
export type Solved =
  | { readonly status: "optimal"; readonly values: readonly number[]; readonly bound: number }
  | { readonly status: "limit"; readonly values?: readonly number[]; readonly bound?: number }
  | { readonly status: "infeasible" }

export interface Solver {
  readonly name: string
  /** Solves in about this many seconds at most. Rejects when the solver cannot be loaded or breaks down. */
  solve(program: Program, seconds: number): Promise<Solved>
  /** Row duals of the program with its whole numbers let loose, and its value. */
  relaxed(
    program: Program,
    seconds: number,
  ): Promise<{ readonly value: number; readonly duals: readonly number[] } | undefined>
}

/** The least whole number not below a bound that a solver gave, its arithmetic trusted to 1 in ten million. */
export function wholeBound(bound: number): number {
  return Math.ceil(bound - 1e-6 - Math.abs(bound) * 1e-7) + 0
}

/** Seconds left of the time that one case may take. */
export interface Clock {
  left(): number
}

export function clock(seconds: number): Clock {
  const end = Date.now() + seconds * 1000
  return { left: () => Math.max((end - Date.now()) / 1000, 0) }
}
