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
import { type Kind, longestRest, type OpenedBoard, solveOpenedBoards } from "./opened-boards.ts"
import type { BoardList, Stock } from "./problem.ts"
import type { Clock, Solver } from "./program.ts"
import { checkTimber } from "./timber-check.ts"

/** Boards of one size, what they cost, and less than which no plan costs. */
type SizePlan = SizeBought & Pick<BoardsPlan, "boards">

/**
 * The cheapest timber for a workbook's pieces, or the least of a size that has no price, and the proof of it or how far
 * from it the plan may be; of several the one with the fewest boards, then the one that leaves the longest single rest.
 * Sizes never share a board, so each is solved by itself. The plan made at once stays where it is as good. Rejects when
 * the solver breaks down, and where a plan does not hold against the checker.
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
  const rule = { size, ...problem.rule }
  const kinds = kindsOf(demands, stocks)
  const { boards, bound } = await cheapest(kinds, stocks, rule, solver, clock)
  const better = (opened: readonly OpenedBoard[] | undefined, than: readonly CutBoard[]) => {
    const cut = opened === undefined ? than : cutBoards(opened, kinds, demands, rule)
    return beats(cut, than, cost) ? cut : than
  }
  const found = better(boards, atOnce)
  const most = { cost: paidFor(found, cost) / step, boards: found.length }
  const best = better(await longestRest(kinds, stocks, most, rule, solver, clock), found)
  const bought = paidFor(best, cost)
  return { size, boards: best, bought, bound: Math.min(bought, Math.max(bound * step, 0)) }
}

interface SizeRule {
  readonly size: string
  readonly kerf: number
  readonly endTrim: number
}

type KeyedKind = Kind & { readonly key: string }

/** The boards with the parts that their pieces are for. */
function cutBoards(
  boards: readonly OpenedBoard[],
  kinds: readonly KeyedKind[],
  demands: readonly PieceDemand[],
  rule: SizeRule,
): readonly CutBoard[] {
  const parts = new Map<string, string[]>()
  for (const { part, length, stock, count } of demands) {
    const key = kindKey(length, stock)
    parts.set(key, [...(parts.get(key) ?? []), ...Array.from({ length: count }, () => part)])
  }
  return boards.map(({ stock, kinds: places }): CutBoard => {
    const pieces = places.flatMap((place) => kinds[place] ?? [])
    const taken = pieces.reduce((sum, { length }) => sum + length + rule.kerf, 0)
    return {
      size: rule.size,
      stock: stock.length,
      ...(stock.available === null ? {} : { owned: true }),
      pieces: pieces.map(({ length, key }) => ({ part: parts.get(key)?.shift() ?? "", length })),
      left: Math.max(0, stock.length - 2 * rule.endTrim - taken),
    }
  })
}

async function cheapest(
  kinds: readonly KeyedKind[],
  stocks: readonly Stock[],
  rule: SizeRule,
  solver: Solver,
  clock: Clock,
): Promise<{ readonly boards?: readonly OpenedBoard[]; readonly bound: number }> {
  const restricted = new Set(kinds.map(({ key }) => key.slice(key.indexOf(":")))).size > 1
  if (restricted) {
    const opened = await solveOpenedBoards(kinds, stocks, rule, solver, clock)
    if (opened !== undefined) return opened
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
    const places = pieces.map((length) => kinds.findIndex((kind) => kind.length === length))
    return stock === undefined ? [] : Array.from({ length: count }, () => ({ stock, kinds: places }))
  })
  return { boards, bound: bound ?? 0 }
}

/** Longest first, as the boards are cut. */
function kindsOf(demands: readonly PieceDemand[], stocks: readonly Stock[]): readonly KeyedKind[] {
  const kinds = new Map<string, KeyedKind>()
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
