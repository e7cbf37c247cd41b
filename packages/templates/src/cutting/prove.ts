import type { Solution } from "@pegbook/engine"
import type { ChoiceProblem } from "../solvers/supplier-choice.ts"
import type { TimberProblem } from "../solvers/timber-problem.ts"
import { proveBuying } from "./buying-proof.ts"
import { highsSolver } from "./highs-solver.ts"
import { type Clock, clock, type Solver } from "./program.ts"
import { proveTimber } from "./timber-proof.ts"

export interface ProveOptions {
  /** The HiGHS solver when absent. */
  readonly solver?: Solver
  /** Seconds that it may take, about: the best plan found and its bound are the answer then. 30 when absent. */
  readonly deadline?: number
}

type Prover = (given: unknown, solver: Solver, clock: Clock) => Promise<Solution>

/** By the id that a solved table names. */
const PROVERS: Readonly<Record<string, Prover>> = {
  timber: (given, solver, clock) => proveTimber(given as TimberProblem, solver, clock),
  buying: (given, solver, clock) => proveBuying(given as ChoiceProblem, solver, clock),
}

const USUAL_SECONDS = 30

/** Loaded once, however much is asked. */
let usual: Solver | undefined

/**
 * The better solution of a solved table, from what its workbook asks (`book.unproven()`). Rejects for a prover that is not
 * there, when the solver cannot be loaded or breaks down, and where its plan does not hold against the checker.
 */
export async function prove(
  id: string,
  given: unknown,
  { solver, deadline = USUAL_SECONDS }: ProveOptions = {},
): Promise<Solution> {
  const prover = PROVERS[id]
  if (prover === undefined) throw new RangeError(`there is no prover ${id}`)
  usual ??= highsSolver()
  return prover(given, solver ?? usual, clock(deadline))
}
