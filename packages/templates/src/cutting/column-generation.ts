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
  /** Whether every pattern that a plan better than the known one could have is among them. */
  readonly complete: boolean
}

const ROUNDS = 400
const EPSILON = 1e-7
const MOST_PATTERNS = 40_000

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
    const stockOrder = [...cutting.boughts.keys()]
    const values = demands.map((_, index) => Math.max(0, relaxed.duals[stockOrder.length + index] ?? 0))
    // The row of a stock charges each pattern the price of a board, less what scarcity adds.
    const charge = new Map(
      stockOrder.map((stock, index) => {
        const row = program.rows[index]
        const factor = row?.terms.find(([variable]) => variable !== cutting.boughts.get(stock))?.[1] ?? 0
        return [stock, -(relaxed.duals[index] ?? 0) * factor]
      }),
    )
    let grew = false
    for (const stock of stockOrder) {
      const wanted = bestPattern(items, roomOf(stock, rule), values)
      if (wanted.value <= (charge.get(stock) ?? 0) + EPSILON * dear) continue
      add(stock, wanted.pattern)
      grew = true
    }
    if (grew) continue
    const bound = wholeBound(relaxed.value)
    const best = await better(rule, listed(), demands, known, solver, clock)
    const most = best === undefined ? undefined : priceOf(best) - 1 - relaxed.value
    if (most === undefined || most < 0)
      return { patterns: listed(), bound, best, complete: most !== undefined }
    const all: StockPatterns[] = []
    let left = MOST_PATTERNS
    for (const stock of stockOrder) {
      const least = (charge.get(stock) ?? 0) - most - 1e-3
      const patterns = maximalPatterns(items, roomOf(stock, rule), left, { values, least })
      if (patterns === undefined) return { patterns: listed(), bound, best, complete: false }
      left -= patterns.length
      all.push({ stock, patterns })
    }
    return { patterns: all, bound, best, complete: true }
  }
  return { patterns: listed(), bound: 0, best: known, complete: false }
}

/** The better of the known plan and the best that the patterns so far give within a share of the time left. */
async function better(
  rule: SawRule,
  patterns: readonly StockPatterns[],
  demands: readonly Demand[],
  known: Board[] | undefined,
  solver: Solver,
  clock: Clock,
): Promise<Board[] | undefined> {
  const program = new Program()
  const { uses } = addCutting(program, patterns, demands, (index) => ({
    least: demands[index]?.quantity ?? 0,
    terms: [],
  }))
  const solved = await solver.solve(program, clock.left() / 4)
  if (solved.status === "infeasible" || solved.values === undefined) return known
  const boards = boardsOf(uses, solved.values, demands, rule)
  return known === undefined || priceOf(boards) < priceOf(known) ? boards : known
}
