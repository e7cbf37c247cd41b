import type { Proof, Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { type BoardsPlan, type CutBoard, paidFor, planBoards, sorted } from "./boards.ts"
import { lengthInWords } from "./length-in-words.ts"
import { sawAdvice } from "./saw-advice.ts"
import {
  costIn,
  type TimberMember,
  type TimberProblem,
  timberPieces,
  timberProblem,
} from "./timber-problem.ts"

/** What is bought of one size: hundredths where it has a price, or nanometres end to end; and a bound of that. */
export interface SizeBought extends Pick<BoardsPlan, "bought" | "bound"> {
  readonly size: string
}

/** A plan of all boards that are cut, and how good it is. */
export interface TimberPlan extends Pick<BoardsPlan, "boards" | "misfits"> {
  /** Each size that is cut, once: sizes never share a board. */
  readonly sizes: readonly SizeBought[]
  readonly method: string
}

/** The plan made at once. */
export function planTimber(problem: TimberProblem): TimberPlan {
  const { demands, rule, owned } = problem
  const { fitting, misfits } = sorted(demands, rule)
  const plans = [...new Set(fitting.map(({ size }) => size))].map((size) => {
    const ofSize = fitting.filter((demand) => demand.size === size)
    return { size, ...planBoards(ofSize, rule, owned, costIn(problem)) }
  })
  return {
    boards: plans.flatMap(({ boards }) => boards),
    sizes: plans,
    misfits,
    method: "best-fit decreasing, tried with each length sold and filling board by board",
  }
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

function reportOf(problem: TimberProblem, { sizes, misfits, method }: TimberPlan): SolverReport {
  const advice = sawAdvice(problem)
  return {
    method: `${method}; ${sizes.every(isBest) ? "no plan for these pieces buys less" : "not proven best"}`,
    ...reachedBy(problem, sizes),
    unmet: misfits.map(
      ({ part, size, length, stock }) =>
        `A ${part} of ${lengthInWords(length)} does not come out of the longest ${size} to be had, ${lengthInWords(Math.max(...stock))}, with saw cuts and trimmed ends: add a length sold of at least ${lengthInWords(length + 2 * problem.rule.endTrim)}, or change what makes the piece so long.`,
    ),
    ...(advice.length === 0 ? {} : { advice }),
  }
}

function isBest({ bought, bound }: SizeBought): boolean {
  return bought === bound
}

/** What was made least: money of all sizes that have a price, or length where none has. */
function reachedBy(
  problem: TimberProblem,
  sizes: readonly SizeBought[],
): Pick<SolverReport, "objective" | "bound"> {
  const withPrice = new Set(problem.prices.map(({ size }) => size))
  const settled = [...new Set(problem.settled.map(({ size }) => size))].map((size) => {
    const boards = problem.settled.filter((one) => one.size === size)
    const bought = paidFor(boards.map(uncut), costIn(problem))
    return { size, bought, bound: bought }
  })
  const all = [...settled, ...sizes]
  const priced = all.filter(({ size }) => withPrice.has(size))
  const rest = all.filter(({ size }) => !withPrice.has(size))
  const weighed = priced.length > 0 ? priced : rest
  const value = weighed.reduce((sum, { bought }) => sum + bought, 0)
  const bound = weighed.reduce((sum, one) => sum + one.bound, 0)
  if (priced.length === 0)
    return { objective: { says: "timber bought, end to end", measure: "length", value }, bound }
  const unpriced = [...new Set(rest.map(({ size }) => size))].join(", ")
  return {
    objective: {
      says: `timber bought, by your prices${unpriced === "" ? "" : `; no price for ${unpriced}`}`,
      measure: "money",
      value,
    },
    // A bound in money says nothing of what has no price: where that may be better, how good the plan is stays open.
    ...(rest.every(isBest) ? { bound } : {}),
  }
}

function uncut({ size, stock }: { readonly size: string; readonly stock: number }): CutBoard {
  return { size, stock, pieces: [], left: stock }
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
    const stock = Math.round(Number(stocks?.[row]))
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
    const { settled, demands } = timberPieces(members, given)
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
