import type { Solution } from "@pegbook/engine"
import {
  type BoardsPlan,
  beats,
  type CutBoard,
  commonMeasure,
  type OwnedBoards,
  type PieceDemand,
  paidFor,
} from "../solvers/boards.ts"
import { planTimber, type SizeBought, timberSolution } from "../solvers/timber-plan.ts"
import { costIn, type TimberProblem } from "../solvers/timber-problem.ts"
import { solveBoardList } from "./board-list.ts"
import { checkPlan } from "./checker.ts"
import { type Kind, solveOpenedBoards } from "./opened-boards.ts"
import type { BoardList, Stock } from "./problem.ts"
import type { Clock, Solver } from "./program.ts"
import { checkTimber } from "./timber-check.ts"

/** Boards of one size, what they cost, and less than which no plan costs. */
type SizePlan = SizeBought & Pick<BoardsPlan, "boards">

/**
 * The cheapest timber for a workbook's pieces, or the least of a size that has no price, and the proof of it or how far from it the plan may be. Sizes never share a
 * board, so each is solved by itself. The plan made at once stays where it is as good. Rejects when the solver breaks
 * down, and where a plan does not hold against the checker.
 */
export async function proveTimber(problem: TimberProblem, solver: Solver, clock: Clock): Promise<Solution> {
  const atOnce = planTimber(problem)
  const fitting = problem.demands.filter(
    (demand) => demand.count > 0 && demand.length > 0 && !atOnce.misfits.some((one) => alike(one, demand)),
  )
  const plans: SizePlan[] = []
  for (const size of new Set(fitting.map((demand) => demand.size))) {
    const demands = fitting.filter((demand) => demand.size === size)
    const boards = atOnce.boards.filter((board) => board.size === size)
    plans.push(await proveSize(problem, demands, boards, solver, clock))
  }
  const boards = plans.flatMap((plan) => plan.boards)
  checkTimber(problem, fitting, boards, plans)
  return timberSolution(problem, {
    boards,
    sizes: plans,
    misfits: atOnce.misfits,
    method: `whole-number program over ways to cut a board (${solver.name}), checked in whole numbers`,
  })
}

function alike(one: PieceDemand, other: PieceDemand): boolean {
  return one.part === other.part && one.size === other.size && one.length === other.length
}

async function proveSize(
  problem: TimberProblem,
  demands: readonly PieceDemand[],
  atOnce: readonly CutBoard[],
  solver: Solver,
  clock: Clock,
): Promise<SizePlan> {
  const size = demands[0]?.size ?? ""
  const cost = costIn(problem)
  const sold = [...new Set(demands.flatMap(({ stock }) => stock))].sort((a, b) => a - b)
  // Prices in steps of the greatest amount that measures all: small whole numbers, which the solver proves best.
  const step = sold.map((length) => cost(size, length)).reduce(commonMeasure) || 1
  const stocks = [
    ...stocksOwned(problem.owned.filter((boards) => boards.size === size)),
    ...sold.map((length): Stock => stockOf(`sold ${length}`, length, cost(size, length) / step, null)),
  ]
  const { boards, bound } = await cheapest(demands, stocks, { size, ...problem.rule }, solver, clock)
  const better = boards !== undefined && beats(boards, atOnce, cost) ? boards : atOnce
  const bought = paidFor(better, cost)
  return { size, boards: better, bought, bound: Math.min(bought, Math.max(bound * step, 0)) }
}

interface SizeRule {
  readonly size: string
  readonly kerf: number
  readonly endTrim: number
}

async function cheapest(
  demands: readonly PieceDemand[],
  stocks: readonly Stock[],
  rule: SizeRule,
  solver: Solver,
  clock: Clock,
): Promise<{ readonly boards?: readonly CutBoard[]; readonly bound: number }> {
  const kinds = kindsOf(demands, stocks)
  const parts = new Map<string, string[]>()
  for (const { part, length, stock, count } of demands) {
    const key = kindKey(length, stock)
    parts.set(key, [...(parts.get(key) ?? []), ...Array.from({ length: count }, () => part)])
  }
  const cut = (
    stock: Stock,
    pieces: readonly { readonly length: number; readonly key: string }[],
  ): CutBoard => {
    const taken = pieces.reduce((sum, { length }) => sum + length + rule.kerf, 0)
    return {
      size: rule.size,
      stock: stock.length,
      ...(stock.available === null ? {} : { owned: true }),
      pieces: pieces.map(({ length, key }) => ({ part: parts.get(key)?.shift() ?? "", length })),
      left: Math.max(0, stock.length - 2 * rule.endTrim - taken),
    }
  }
  const restricted = new Set(kinds.map(({ key }) => key.slice(key.indexOf(":")))).size > 1
  if (restricted) {
    const opened = await solveOpenedBoards(kinds, stocks, rule, solver, clock)
    if (opened !== undefined) {
      const boards = opened.boards?.map((board) =>
        cut(
          board.stock,
          board.kinds.flatMap((kind) => kinds[kind] ?? []),
        ),
      )
      return { bound: opened.bound, ...(boards === undefined ? {} : { boards }) }
    }
  }
  const one: BoardList = {
    id: rule.size,
    kind: "cut",
    unit: "nm",
    kerf: rule.kerf,
    endTrim: rule.endTrim,
    stocks: [...stocks],
    pieces: kinds.map(({ length, quantity }) => ({ length, quantity })),
  }
  const { plan, bound } = await solveBoardList(one, solver, clock)
  // With every length allowed for every piece no plan is dearer: only the bound holds then.
  if (plan?.kind !== "cut" || restricted) return { bound: bound ?? 0 }
  const { broken } = checkPlan(one, plan)
  if (broken[0] !== undefined) throw new Error(`a plan for ${rule.size} breaks a rule: ${broken[0]}`)
  const boards = plan.boards.flatMap(({ stock: id, count, pieces }) => {
    const stock = stocks.find((other) => other.id === id)
    const keyed = pieces.map((length) => ({
      length,
      key: kinds.find((kind) => kind.length === length)?.key ?? "",
    }))
    return stock === undefined ? [] : Array.from({ length: count }, () => cut(stock, keyed))
  })
  return { boards, bound: bound ?? 0 }
}

/** Longest first, as the boards are cut. */
function kindsOf(
  demands: readonly PieceDemand[],
  stocks: readonly Stock[],
): readonly (Kind & { readonly key: string })[] {
  const kinds = new Map<string, Kind & { readonly key: string }>()
  for (const { length, stock, count } of demands) {
    const key = kindKey(length, stock)
    const opens = new Set(
      stocks.filter((one) => one.available !== null || stock.includes(one.length)).map(({ id }) => id),
    )
    kinds.set(key, { key, length, opens, quantity: (kinds.get(key)?.quantity ?? 0) + count })
  }
  return [...kinds.values()].sort((a, b) => b.length - a.length)
}

function kindKey(length: number, stock: readonly number[]): string {
  return `${length}:${[...new Set(stock)].sort((a, b) => a - b).join()}`
}

/** What is there already costs nothing. */
function stocksOwned(owned: readonly OwnedBoards[]): Stock[] {
  const counts = new Map<number, number>()
  for (const { length, count } of owned) counts.set(length, (counts.get(length) ?? 0) + count)
  return [...counts].map(([length, count]) => stockOf(`own ${length}`, length, 0, count))
}

function stockOf(id: string, length: number, price: number, available: number | null): Stock {
  return { id, length, price, available, cullPermille: 0 }
}
