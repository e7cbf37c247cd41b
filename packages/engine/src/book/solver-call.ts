import type { Proof, Solution, SolverGiven, SolverValue } from "../definition/solver.ts"

/** What a solver may ask for, by the names in its list. @throws RangeError at any other */
export function solverGiven(inputs: ReadonlyMap<string, readonly SolverValue[]>): SolverGiven {
  const column = (name: string): readonly SolverValue[] => {
    const values = inputs.get(name)
    if (values === undefined) throw new RangeError(`a solver asked for ${name}, which is not in its list`)
    return values
  }
  return {
    column,
    number: (name) => Number(column(name)[0]),
    text: (name) => String(column(name)[0]),
    yes: (name) => column(name)[0] === true,
  }
}

/** Where it cannot be put together there is nothing to prove: the solver says why. */
export function problemOf(proof: Proof, given: SolverGiven): string | undefined {
  try {
    return JSON.stringify(proof.problem(given))
  } catch {
    return undefined
  }
}

/** A solver that fails must not take the workbook with it: what stopped it is shown at its entry. */
export function runSolver(solve: (given: SolverGiven) => Solution, given: SolverGiven): Solution {
  try {
    return solve(given)
  } catch (reason) {
    const says = reason instanceof Error ? reason.message : String(reason)
    return { rows: [], report: { method: "", unmet: [`It could not be worked out: ${says}.`] } }
  }
}
