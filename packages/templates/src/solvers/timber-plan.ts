import type { Proof, Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { type BoardsPlan, type CutBoard, planBoards } from "./boards.ts"
import { lengthInWords } from "./length-in-words.ts"
import { sawAdvice } from "./saw-advice.ts"
import { type TimberMember, type TimberProblem, timberProblem } from "./timber-problem.ts"

/** A plan of all boards that are cut, and how good it is. */
export interface TimberPlan extends BoardsPlan {
  readonly method: string
}

/** The plan made at once. */
export function planTimber({ demands, rule, owned }: TimberProblem): TimberPlan {
  const plan = planBoards(demands, rule, owned)
  return { ...plan, method: "best-fit decreasing, tried with each length sold and filling board by board" }
}

/** What to cut from each board, one piece a row, and the report: board, size, stock, own, part, mark, length, left. */
export function timberSolution(problem: TimberProblem, plan: TimberPlan): Solution {
  const waiting = new Map<string, string[]>()
  for (const { size, part, length, marks } of problem.demands)
    waiting.set(`${size} ${part} ${length}`, [...marks])
  const settled = problem.settled.map(({ size, stock, part, mark, length }) => ({
    board: { size, stock, pieces: [{ part, length }], left: stock - length },
    marks: [mark],
  }))
  const cut = plan.boards.map((board) => ({
    board,
    marks: board.pieces.map(
      ({ part, length }) => waiting.get(`${board.size} ${part} ${length}`)?.shift() ?? "",
    ),
  }))
  const rows = [...settled, ...cut].flatMap(({ board, marks }, index) => rowsOf(board, marks, index + 1))
  return { rows, report: reportOf(problem, plan) }
}

/** What holds for the board is said once, so that its columns add up: its own length at the first piece, what is left at the last. */
function rowsOf({ size, stock, owned, pieces, left }: CutBoard, marks: readonly string[], board: number) {
  return pieces.map(({ part, length }, at) => ({
    board,
    size,
    stock,
    own: owned && at === 0 ? stock : 0,
    part,
    mark: marks[at] ?? "",
    length,
    left: at === pieces.length - 1 ? left : 0,
  }))
}

function reportOf(problem: TimberProblem, { bought, bound, misfits, method }: TimberPlan): SolverReport {
  const before = problem.settled.reduce((sum, { stock }) => sum + stock, 0)
  const proof = bought === bound ? "no plan for these pieces buys less" : "not proven best"
  const advice = sawAdvice(problem)
  return {
    method: `${method}; ${proof}`,
    objective: { says: "timber bought, end to end", measure: "length", value: before + bought },
    bound: before + bound,
    unmet: misfits.map(
      ({ part, size, length, stock }) =>
        `A ${part} of ${lengthInWords(length)} does not come out of the longest ${size} to be had, ${lengthInWords(Math.max(...stock))}, with saw cuts and trimmed ends: add a length sold of at least ${lengthInWords(length + 2 * problem.rule.endTrim)}, or change what makes the piece so long.`,
    ),
    ...(advice.length === 0 ? {} : { advice }),
  }
}

/** What to cut from each board. */
export function solveCutPlan(members: readonly TimberMember[]): (given: SolverGiven) => Solution {
  return (given) => {
    const problem = timberProblem(members, given)
    return timberSolution(problem, planTimber(problem))
  }
}

/** What `prove` of the cutting plans is asked for a better one. */
export function cutPlanProof(members: readonly TimberMember[]): Proof {
  return { by: "timber", problem: (given) => timberProblem(members, given) }
}

export const STOCK_READS = ["cut_plan.board", "cut_plan.size", "cut_plan.stock", "cut_plan.own"] as const

/** What to buy, one size and length a row: size, length, count. Sizes in the order of the members, shortest first. */
export function solveStockToBuy(given: SolverGiven): Solution {
  const [boards, sizes, stocks, own] = STOCK_READS.map((name) => given.column(name))
  const wanted = new Map<string, Map<number, number>>()
  boards?.forEach((board, row) => {
    if (board === boards[row - 1] || Number(own?.[row]) > 0) return
    const size = String(sizes?.[row])
    const stock = Number(stocks?.[row])
    const counts = wanted.get(size) ?? new Map<number, number>()
    wanted.set(size, counts.set(stock, (counts.get(stock) ?? 0) + 1))
  })
  const rows = [...wanted].flatMap(([size, counts]) =>
    [...counts].sort(([a], [b]) => a - b).map(([length, count]) => ({ size, length, count })),
  )
  return { rows, report: { method: "boards of the cutting plan that you do not have yet", unmet: [] } }
}

/** What pieces are wanted, one part, size and length a row: part, size, length, count. */
export function solvePieces(members: readonly TimberMember[]): (given: SolverGiven) => Solution {
  return (given) => {
    const { settled, demands } = timberProblem(members, given)
    const rows: { part: string; size: string; length: number; count: number }[] = []
    for (const piece of [...settled.map((one) => ({ ...one, count: 1 })), ...demands]) {
      const { part, size, length, count } = piece
      if (count === 0 || length <= 0) continue
      const alike = rows.find((row) => row.part === part && row.size === size && row.length === length)
      if (alike === undefined) rows.push({ part, size, length, count })
      else alike.count += count
    }
    return { rows, report: { method: "pieces of one part, size and length counted together", unmet: [] } }
  }
}
