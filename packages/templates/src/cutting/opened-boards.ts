import { maximalPatterns, type Pattern } from "./patterns.ts"
import type { Stock } from "./problem.ts"
import { type Clock, Program, type Solver, type Term, wholeBound } from "./program.ts"
import { mostUsed, roomOf, type SawRule } from "./stock-cutting.ts"

/** Pieces of one length that may be bought as the same stocks. */
export interface Kind {
  readonly length: number
  readonly quantity: number
  /** The ids of the stocks that a board may be bought of for such a piece. */
  readonly opens: ReadonlySet<string>
}

/** One board: its stock and, longest first, the places of its pieces' kinds. */
export interface OpenedBoard {
  readonly stock: Stock
  readonly kinds: readonly number[]
}

/** A way to cut a stock, the kind that it is bought for where not every kind will do, and how many are cut so. */
interface Use {
  readonly stock: Stock
  readonly pattern: Pattern
  readonly opener?: number
  readonly variable: number
}

const MOST_PATTERNS = 4_000
const MOST_USES = 12_000
const SECONDS_FOR_FEWEST = 5

/**
 * The cheapest boards where not every piece may be bought as every stock: a board is bought for one of its pieces, and the
 * others come along. Each such board holds a piece of its own that it was bought for, so there are no more of them than
 * such pieces; with that, what is cut too often can be left out again. `undefined` where there are too many ways to cut.
 * Rejects when the solver breaks down.
 */
export async function solveOpenedBoards(
  kinds: readonly Kind[],
  stocks: readonly Stock[],
  rule: SawRule,
  solver: Solver,
  clock: Clock,
): Promise<{ readonly boards?: readonly OpenedBoard[]; readonly bound: number } | undefined> {
  const program = new Program()
  const uses = usesOf(program, kinds, stocks, rule)
  if (uses === undefined) return undefined
  addRules(program, uses, kinds, stocks, () => [])
  const solved = await solver.solve(program, clock.left())
  if (solved.status === "infeasible") throw new Error("pieces that each fit a board were found not to")
  const bound = Math.max(0, wholeBound(solved.bound ?? 0))
  if (solved.values === undefined) return { bound }
  const priceOf = (values: readonly number[]): number =>
    uses.reduce((sum, { stock, variable }) => sum + stock.price * Math.round(values[variable] ?? 0), 0)
  const fewest = program.minimising(() => 1)
  fewest.atMost(
    priceOf(solved.values),
    uses.map(({ stock, variable }): Term => [variable, stock.price]),
  )
  const fewer = await solver.solve(fewest, Math.min(clock.left(), SECONDS_FOR_FEWEST))
  const values = (fewer.status === "infeasible" ? undefined : fewer.values) ?? solved.values
  return { boards: boardsOf(uses, values, kinds, rule), bound }
}

const SECONDS_FOR_LONGEST = 3
/** Lengths are weighed in shares of the longest room: fine enough to tell a hair, small enough for the solver's doubles. */
const WEIGHED = 50_000

/**
 * Of the plans that cost no more than this and have no more boards, one that leaves the longest single rest: one board is
 * cut freely, with any pieces, and the others cover what is left. `undefined` where there are too many ways to cut, and
 * where none was found in time. Rejects when the solver breaks down.
 */
export async function longestRest(
  kinds: readonly Kind[],
  stocks: readonly Stock[],
  most: { readonly cost: number; readonly boards: number },
  rule: SawRule,
  solver: Solver,
  clock: Clock,
): Promise<readonly OpenedBoard[] | undefined> {
  const program = new Program()
  const uses = usesOf(program, kinds, stocks, rule)
  if (uses === undefined || clock.left() === 0) return undefined
  const taken = kinds.map(({ quantity }) => program.variable(0, quantity))
  const isOf = new Map(stocks.map((stock) => [stock, program.variable(stock.price, 1)]))
  const rest = program.variable(0, Number.POSITIVE_INFINITY, false)
  addRules(program, uses, kinds, stocks, (one) => {
    const variable = typeof one === "number" ? taken[one] : isOf.get(one)
    return variable === undefined ? [] : [[variable, 1]]
  })
  program.row(
    1,
    1,
    [...isOf.values()].map((variable): Term => [variable, 1]),
  )
  program.atLeast(
    1,
    taken.map((variable): Term => [variable, 1]),
  )
  for (const [stock, variable] of isOf)
    program.atLeast(0, [
      ...kinds.flatMap(({ opens }, kind): Term[] => (opens.has(stock.id) ? [[taken[kind] ?? 0, 1]] : [])),
      [variable, -1],
    ])
  const share = WEIGHED / Math.max(...stocks.map((stock) => roomOf(stock, rule)))
  program.atLeast(0, [
    ...[...isOf].map(([stock, variable]): Term => [variable, roomOf(stock, rule) * share]),
    ...kinds.map(({ length }, kind): Term => [taken[kind] ?? 0, -(length + rule.kerf) * share]),
    [rest, -1],
  ])
  const counted = [...uses.map(({ variable }) => variable), ...isOf.values()]
  program.atMost(
    most.boards,
    counted.map((variable): Term => [variable, 1]),
  )
  program.atMost(
    most.cost,
    counted.map((variable): Term => [variable, program.variables[variable]?.cost ?? 0]),
  )
  const longest = program.minimising((variable) => (variable === rest ? -1 : 0))
  const solved = await solver.solve(longest, Math.min(clock.left(), SECONDS_FOR_LONGEST))
  const values = solved.status === "infeasible" ? undefined : solved.values
  if (values === undefined) return undefined
  const count = (variable: number | undefined): number => Math.round(values[variable ?? -1] ?? 0)
  const stock = stocks.find((one) => count(isOf.get(one)) === 1)
  const free = kinds.flatMap(({ length }, kind) =>
    Array.from({ length: count(taken[kind]) }, () => ({ kind, takes: length + rule.kerf })),
  )
  // In whole numbers: what the solver's doubles call full may be over by a hair.
  if (stock === undefined || free.reduce((room, { takes }) => room - takes, roomOf(stock, rule)) < 0)
    return undefined
  const others = kinds.map((kind, at) => ({ ...kind, quantity: kind.quantity - count(taken[at]) }))
  return [{ stock, kinds: free.map(({ kind }) => kind) }, ...boardsOf(uses, values, others, rule)]
}

/**
 * All pieces are cut, no more boards are bought for a kind than it has pieces, and no more of a stock used than there are.
 * `besides` gives what is cut of a kind, by its place, or used of a stock, apart from the uses.
 */
function addRules(
  program: Program,
  uses: readonly Use[],
  kinds: readonly Kind[],
  stocks: readonly Stock[],
  besides: (one: number | Stock) => readonly Term[],
): void {
  kinds.forEach(({ quantity }, kind) => {
    program.atLeast(quantity, [
      ...uses.map(({ pattern, variable }): Term => [variable, pattern[kind] ?? 0]),
      ...besides(kind),
    ])
    const opened = uses.filter(({ opener }) => opener === kind)
    if (opened.length > 0)
      program.atMost(quantity, [...opened.map(({ variable }): Term => [variable, 1]), ...besides(kind)])
  })
  for (const stock of stocks) {
    const most = mostUsed(stock)
    const ofStock = uses.filter((use) => use.stock === stock)
    if (Number.isFinite(most) && ofStock.length > 0)
      program.atMost(most, [...ofStock.map(({ variable }): Term => [variable, 1]), ...besides(stock)])
  }
}

function usesOf(
  program: Program,
  kinds: readonly Kind[],
  stocks: readonly Stock[],
  rule: SawRule,
): Use[] | undefined {
  const items = kinds.map(({ length, quantity }) => ({ size: length + rule.kerf, most: quantity }))
  const opensAll = (stock: Stock): boolean => kinds.every(({ opens }) => opens.has(stock.id))
  const uses: Use[] = []
  let left = MOST_PATTERNS
  for (const stock of stocks) {
    if (mostUsed(stock) === 0) continue
    const patterns = maximalPatterns(items, roomOf(stock, rule), left)
    if (patterns === undefined) return undefined
    left -= patterns.length
    const free = opensAll(stock)
    for (const pattern of patterns) {
      const takes = pattern.reduce((sum, count, kind) => sum + count * (items[kind]?.size ?? 0), 0)
      const openers = free
        ? [undefined]
        : kinds.flatMap(({ opens }, kind) => ((pattern[kind] ?? 0) > 0 && opens.has(stock.id) ? [kind] : []))
      for (const opener of openers) {
        const cheaper = stocks.some(
          (other) =>
            other.price < stock.price &&
            other.available === null &&
            roomOf(other, rule) >= takes &&
            (opensAll(other) || (opener !== undefined && kinds[opener]?.opens.has(other.id) === true)),
        )
        if (cheaper) continue
        const variable = program.variable(stock.price)
        uses.push({ stock, pattern, variable, ...(opener === undefined ? {} : { opener }) })
      }
    }
    if (uses.length > MOST_USES) return undefined
  }
  return uses
}

/** Cut exactly as needed: what was cut too often is left whole where most is left, but never what a board is bought for. */
function boardsOf(
  uses: readonly Use[],
  values: readonly number[],
  kinds: readonly Kind[],
  rule: SawRule,
): OpenedBoard[] {
  const boards = uses.flatMap(({ stock, pattern, opener, variable }) =>
    Array.from({ length: Math.round(values[variable] ?? 0) }, () => ({
      stock,
      opener,
      counts: [...pattern],
    })),
  )
  const leftOn = ({ stock, counts }: (typeof boards)[number]): number =>
    counts.reduce(
      (left, count, kind) => left - count * ((kinds[kind]?.length ?? 0) + rule.kerf),
      roomOf(stock, rule),
    )
  kinds.forEach(({ quantity }, kind) => {
    const spare = (board: (typeof boards)[number]): number =>
      (board.counts[kind] ?? 0) - (board.opener === kind ? 1 : 0)
    let over = boards.reduce((sum, { counts }) => sum + (counts[kind] ?? 0), 0) - quantity
    while (over > 0) {
      const holding = boards.filter((board) => spare(board) > 0)
      if (holding.length === 0) return
      const loosest = holding.reduce((best, one) => (leftOn(one) > leftOn(best) ? one : best))
      const taken = Math.min(over, spare(loosest))
      loosest.counts[kind] = (loosest.counts[kind] ?? 0) - taken
      over -= taken
    }
  })
  return boards
    .map(({ stock, counts }) => ({
      stock,
      kinds: counts.flatMap((count, kind) => Array.from({ length: count }, () => kind)),
    }))
    .filter((board) => board.kinds.length > 0)
}
