import { addCountRules, type CountRule, countBound, countRules } from "./board-counts.ts"
import { bestPattern, maximalPatterns, type Pattern } from "./patterns.ts"
import type { Stock } from "./problem.ts"
import { type Clock, Program, type Solver, wholeBound } from "./program.ts"
import {
  addCutting,
  type Board,
  boardsOf,
  type Demand,
  mostUsed,
  priceOf,
  roomOf,
  type SawRule,
  type StockPatterns,
} from "./stock-cutting.ts"

export interface Generated {
  readonly patterns: StockPatterns[]
  /** No plan costs less. */
  readonly bound: number
  /** The best plan met on the way, the known one to begin with. */
  readonly best: Board[] | undefined
  readonly rules: readonly CountRule[]
  /** Whether every pattern that a plan better than the known one could have is among them. */
  readonly complete: boolean
}

const ROUNDS = 400
const EPSILON = 1e-7
const MOST_PATTERNS = 40_000
/** Patterns that a plan is looked for among, where there are too many to prove it with. */
const MOST_TRIED = 2_000
const LEAST_SHARE = 1 / 64

/**
 * Patterns for lists with too many of them to name each: those that the relaxed program asks for, round by round, until
 * none is worth adding; then all whose reduced cost is under the gap to the known plan, which are all that a better
 * plan could hold.
 */
export async function generatedPatterns(
  { stocks, ...rule }: SawRule & { readonly stocks: readonly Stock[] },
  demands: readonly Demand[],
  known: Board[] | undefined,
  solver: Solver,
  clock: Clock,
): Promise<Generated> {
  const buyable = stocks.filter((stock) => mostUsed(stock) > 0)
  const sets = new Map<Stock, Map<string, Pattern>>(buyable.map((stock) => [stock, new Map()]))
  const add = (stock: Stock, pattern: Pattern): void => {
    sets.get(stock)?.set(pattern.join(), pattern)
  }
  const items = demands.map(({ length, quantity }) => ({ size: length + rule.kerf, most: quantity }))
  for (const stock of buyable) {
    const room = roomOf(stock, rule)
    items.forEach(({ size, most }, index) => {
      const fits = Math.min(most, Math.floor(room / size))
      if (fits > 0)
        add(
          stock,
          items.map((_, place) => (place === index ? fits : 0)),
        )
    })
  }
  for (const { stock, pieces } of known ?? [])
    add(
      stock,
      demands.map(({ length }) => pieces.filter((piece) => piece === length).length),
    )
  const listed = (): StockPatterns[] =>
    [...sets].map(([stock, set]) => ({ stock, patterns: [...set.values()] }))
  const dear = 10 * Math.max(1, ...stocks.map(({ price }) => price))

  for (let round = 0; round < ROUNDS && clock.left() > 0; round += 1) {
    const program = new Program()
    const cutting = addCutting(program, listed(), demands, (index) => ({
      least: demands[index]?.quantity ?? 0,
      // What no board covers costs more than any board: the duals then ask for the boards that cover it.
      terms: [[program.variable(dear, Number.POSITIVE_INFINITY, false), 1]],
    }))
    const relaxed = await solver.relaxed(program, clock.left())
    if (relaxed === undefined) break
    const stockOrder = [...cutting.stockRows.keys()]
    const values = cutting.demandRows.map((row) => Math.max(0, relaxed.duals[row] ?? 0))
    // The row of a stock charges each pattern the price of a board, less what scarcity adds.
    const charge = new Map([...cutting.stockRows].map(([stock, row]) => [stock, relaxed.duals[row] ?? 0]))
    let grew = false
    let isBest = true
    for (const stock of stockOrder) {
      const wanted = bestPattern(items, roomOf(stock, rule), values)
      isBest &&= wanted.isBest
      if (wanted.value <= (charge.get(stock) ?? 0) + EPSILON * dear) continue
      add(stock, wanted.pattern)
      grew = true
    }
    if (grew) continue
    const rules = countRules(buyable, demands, rule, values)
    const bound = Math.max(
      isBest ? wholeBound(relaxed.value) : 0,
      await countBound(buyable, rules, solver, clock),
    )
    const within = (most: number, limit: number): StockPatterns[] | undefined => {
      const all: StockPatterns[] = []
      let left = limit
      for (const stock of stockOrder) {
        const least = (charge.get(stock) ?? 0) - most - 1e-3
        const patterns = maximalPatterns(items, roomOf(stock, rule), left, { values, least })
        if (patterns === undefined) return undefined
        left -= patterns.length
        all.push({ stock, patterns })
      }
      return all
    }
    const tried = (known: Board[] | undefined): Promise<Board[] | undefined> =>
      better(rule, listed(), demands, rules, known, solver, clock)
    let best = await tried(known)
    // Where those of the whole gap are too many, those nearest to being asked for give a better plan, and so a smaller gap.
    for (let share = 1; ; share /= 2) {
      if (best === undefined || priceOf(best) <= bound)
        return { patterns: listed(), bound, rules, best, complete: false }
      const most = priceOf(best) - 1 - relaxed.value
      const all = isBest ? within(most, MOST_PATTERNS) : undefined
      if (all !== undefined) return { patterns: all, bound, rules, best, complete: true }
      const some = within(most * share, MOST_TRIED)
      for (const { stock, patterns } of some ?? []) for (const pattern of patterns) add(stock, pattern)
      if (share < LEAST_SHARE || clock.left() === 0)
        return { patterns: listed(), bound, rules, best, complete: false }
      if (some !== undefined) best = await tried(best)
    }
  }
  return { patterns: listed(), bound: 0, rules: [], best: known, complete: false }
}

/** The better of the known plan and the best that the patterns so far give within a share of the time left. */
async function better(
  rule: SawRule,
  patterns: readonly StockPatterns[],
  demands: readonly Demand[],
  rules: readonly CountRule[],
  known: Board[] | undefined,
  solver: Solver,
  clock: Clock,
): Promise<Board[] | undefined> {
  const program = new Program()
  const { uses, used } = addCutting(program, patterns, demands, (index) => ({
    least: demands[index]?.quantity ?? 0,
    terms: [],
  }))
  addCountRules(program, rules, used)
  const solved = await solver.solve(program, clock.left() / 4)
  if (solved.status === "infeasible" || solved.values === undefined) return known
  const boards = boardsOf(uses, solved.values, demands, rule)
  return known === undefined || priceOf(boards) < priceOf(known) ? boards : known
}
