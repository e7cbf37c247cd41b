import type { Answer } from "./answer.ts"
import { boardListAtOnce, solveBoardList } from "./board-list.ts"
import { buyingAtOnce, solveBuying } from "./buying.ts"
import { checkPlan } from "./checker.ts"
import { highsSolver } from "./highs-solver.ts"
import type { Case } from "./problem.ts"
import { type Clock, clock, type Solver } from "./program.ts"
import { sheetLayoutAtOnce, solveSheetLayout } from "./sheet-layout.ts"
import { solveSplicedLines, splicedLinesAtOnce } from "./spliced-lines.ts"

export interface SolveOptions {
  /** The HiGHS solver when absent. */
  readonly solver?: Solver
  /** Seconds that the case may take, about: the best plan found and its gap are the answer then. 30 when absent. */
  readonly deadline?: number
  /** Is told of plans on the way, each no worse than the one before. */
  readonly better?: (answer: Answer) => void
}

const USUAL_SECONDS = 30

let usual: Solver | undefined

/** An answer at once: a plan that keeps every rule and a simple bound, not proven best unless the two meet. */
export function heuristicAnswer(one: Case): Answer {
  return checked(one, atOnce(one))
}

function atOnce(one: Case): Answer {
  switch (one.kind) {
    case "cut":
      return boardListAtOnce(one)
    case "splice":
      return splicedLinesAtOnce(one)
    case "sheet":
      return sheetLayoutAtOnce(one)
    case "buy":
      return buyingAtOnce(one)
  }
}

/** The best plan and the proof of it, or how far from best it may be. Never rejects for a solver that fails: the answer at once is given, and says so. */
export async function solveCase(
  one: Case,
  { solver, deadline = USUAL_SECONDS, better = () => {} }: SolveOptions = {},
): Promise<Answer> {
  if (solver === undefined) usual ??= highsSolver()
  const chosen = solver ?? usual ?? highsSolver()
  try {
    return checked(one, await solved(one, chosen, clock(deadline), (answer) => better(checked(one, answer))))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    const answer = heuristicAnswer(one)
    const notice = `The exact solver could not be used (${reason.slice(0, 120)}): this is the plan made at once, with the simple bound.`
    return answer.status === "proven" || answer.status === "impossible"
      ? answer
      : { ...answer, notices: [notice, ...answer.notices] }
  }
}

function solved(one: Case, solver: Solver, clock: Clock, better: (answer: Answer) => void): Promise<Answer> {
  switch (one.kind) {
    case "cut":
      return solveBoardList(one, solver, clock, better)
    case "splice":
      return solveSplicedLines(one, solver, clock)
    case "sheet":
      return solveSheetLayout(one, solver, clock)
    case "buy":
      return solveBuying(one, solver, clock)
  }
}

/** No plan is shown that breaks a rule or costs other than it says. */
function checked(one: Case, answer: Answer): Answer {
  if (answer.plan === null) return answer
  const { objective, broken } = checkPlan(one, answer.plan)
  const wrong =
    objective === answer.objective ? broken : [...broken, `it costs ${objective}, not ${answer.objective}`]
  if (wrong.length > 0) throw new Error(`a plan for ${one.id} breaks a rule: ${wrong[0]}`)
  return answer
}
