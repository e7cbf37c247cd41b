import { bestPattern } from "./patterns.ts"
import type { Stock } from "./problem.ts"
import { type Clock, Program, type Solver, type Term, wholeBound } from "./program.ts"
import { type Demand, mostUsed, roomOf, type SawRule, shareBought } from "./stock-cutting.ts"

/**
 * What holds of the boards used, however they are cut: each counted with its worth, they come to the least. The pieces
 * are given values such that no board of a stock holds more than its worth.
 */
export interface CountRule {
  readonly worths: ReadonlyMap<Stock, number>
  readonly least: number
}

/** Values are taken in so many steps of the greatest: whole numbers, which add up exactly. */
const STEPS = 1_000_000

/** By the room that the pieces take, and by the values given, such as the duals of the relaxed program. */
export function countRules(
  stocks: readonly Stock[],
  demands: readonly Demand[],
  rule: SawRule,
  values: readonly number[],
): readonly CountRule[] {
  const sizes = demands.map(({ length }) => length + rule.kerf)
  const byRoom: CountRule = {
    worths: new Map(stocks.map((stock) => [stock, Math.max(0, roomOf(stock, rule))])),
    least: sum(demands, sizes),
  }
  const greatest = Math.max(0, ...values)
  if (greatest === 0) return [byRoom]
  const whole = values.map((value) => Math.floor((Math.max(0, value) / greatest) * STEPS))
  const items = demands.map(({ length, quantity }) => ({ size: length + rule.kerf, most: quantity }))
  const best = stocks.map((stock) => ({ stock, ...bestPattern(items, roomOf(stock, rule), whole) }))
  if (!best.every(({ isBest }) => isBest)) return [byRoom]
  return [
    byRoom,
    { worths: new Map(best.map(({ stock, value }) => [stock, value])), least: sum(demands, whole) },
  ]
}

function sum(demands: readonly Demand[], each: readonly number[]): number {
  return demands.reduce((total, { quantity }, index) => total + quantity * (each[index] ?? 0), 0)
}

/** The rules as rows over the variables that count the boards used. */
export function addCountRules(
  program: Program,
  rules: readonly CountRule[],
  used: ReadonlyMap<Stock, number>,
): void {
  for (const { worths, least } of rules)
    program.atLeast(
      least,
      [...used].map(([stock, variable]): Term => [variable, worths.get(stock) ?? 0]),
    )
}

/** No plan costs less: the cheapest whole numbers of boards that keep the rules, cut or not. 0 where time ends. */
export async function countBound(
  stocks: readonly Stock[],
  rules: readonly CountRule[],
  solver: Solver,
  clock: Clock,
): Promise<number> {
  const program = new Program()
  const used = new Map<Stock, number>()
  for (const stock of stocks) {
    const most = mostUsed(stock)
    if (most === 0) continue
    const boards = program.variable(stock.cullPermille === 0 ? stock.price : 0, most)
    used.set(stock, boards)
    if (stock.cullPermille > 0)
      program.atLeast(0, shareBought(stock, program.variable(stock.price), [[boards, -1]]))
  }
  addCountRules(program, rules, used)
  const solved = await solver.solve(program, Math.min(clock.left(), SECONDS))
  return solved.status === "infeasible" ? 0 : Math.max(0, wholeBound(solved.bound ?? 0))
}

const SECONDS = 5
