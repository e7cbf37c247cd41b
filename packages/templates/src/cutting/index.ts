// Every public name of the cutting plans. A door of their own: whoever needs none does not load them.

export type { Answer, Change, Obstacle, Plan } from "./answer.ts"
export { type Checked, checkPlan } from "./checker.ts"
export { type HighsOptions, highsSolver } from "./highs-solver.ts"
export type { BoardList, Buying, Case, SheetLayout, SplicedLines, Stock } from "./problem.ts"
export type { Program, Solved, Solver } from "./program.ts"
export { type ProveOptions, prove } from "./prove.ts"
export { type CaseProblem, readCase } from "./read-cases.ts"
export { heuristicAnswer, type SolveOptions, solveCase } from "./solve-case.ts"
