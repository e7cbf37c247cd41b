import type { Stock } from "./problem.ts"
import {
  type Board,
  byLength,
  type Demand,
  mostUsed,
  priceOf,
  roomOf,
  type SawRule,
} from "./stock-cutting.ts"

/** In which order new boards are tried for a piece: the least of this first. */
const PREFERENCES: readonly ((stock: Stock, room: number) => number)[] = [
  ({ price }, room) => price / room,
  ({ price }) => price,
  ({ length }) => -length,
  ({ length }) => length,
]

/**
 * A plan at once: best-fit decreasing, once for each way to choose a new board, and the cheapest of them. `undefined`
 * where a piece is left over, which does not prove that there is no plan.
 */
export function bestFit(
  stocks: readonly Stock[],
  pieces: readonly Demand[],
  rule: SawRule,
): Board[] | undefined {
  const plans = PREFERENCES.map((preference) => fill(stocks, byLength(pieces), rule, preference)).filter(
    (plan) => plan !== undefined,
  )
  return plans.reduce<Board[] | undefined>(
    (best, plan) => (best === undefined || priceOf(plan) < priceOf(best) ? plan : best),
    undefined,
  )
}

function fill(
  stocks: readonly Stock[],
  demands: readonly Demand[],
  rule: SawRule,
  preference: (stock: Stock, room: number) => number,
): Board[] | undefined {
  const order = stocks
    .map((stock) => ({ stock, room: roomOf(stock, rule), left: mostUsed(stock) }))
    .sort((a, b) => preference(a.stock, a.room) - preference(b.stock, b.room))
  const boards: { stock: Stock; room: number; pieces: number[] }[] = []
  for (const { length, quantity } of demands) {
    const size = length + rule.kerf
    for (let piece = 0; piece < quantity; piece += 1) {
      let tightest: (typeof boards)[number] | undefined
      for (const board of boards) {
        if (board.room >= size && (tightest === undefined || board.room < tightest.room)) tightest = board
      }
      if (tightest === undefined) {
        const bought = order.find(({ room, left }) => left > 0 && room >= size)
        if (bought === undefined) return undefined
        bought.left -= 1
        tightest = { stock: bought.stock, room: bought.room, pieces: [] }
        boards.push(tightest)
      }
      tightest.room -= size
      tightest.pieces.push(length)
    }
  }
  return boards
}

/** No plan costs less: every board holds no more than its room, at the least price for room. Exact in whole numbers. */
export function materialBound(stocks: readonly Stock[], pieces: readonly Demand[], rule: SawRule): number {
  const wanted = pieces.reduce(
    (sum, { length, quantity }) => sum + BigInt(length + rule.kerf) * BigInt(quantity),
    0n,
  )
  const bounds = stocks
    .filter((stock) => roomOf(stock, rule) > 0)
    .map((stock) => {
      const room = BigInt(roomOf(stock, rule))
      return Number((wanted * BigInt(stock.price) + room - 1n) / room)
    })
  return Math.min(...(bounds.length === 0 ? [0] : bounds))
}
