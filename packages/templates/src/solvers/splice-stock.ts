import type { SolverGiven, SolverReport } from "@pegbook/engine"
import { boardPrices } from "./board-prices.ts"
import type { SplicePlan, Stock } from "./splice.ts"

/** The lengths sold of one size, each with what a board of it costs. */
export interface PricedStock {
  readonly stocks: readonly Stock[]
  /** What the costs are: hundredths of the currency where the size has a price, or the length itself. */
  readonly measure: "money" | "length"
}

/**
 * What boards to splice from cost, by the user's prices. `sold`: in nanometres; `trimmed`: what both ends of a board lose
 * before a piece is cut from it.
 */
export function pricedStock(
  given: SolverGiven,
  size: string,
  sold: readonly number[],
  trimmed: number,
): PricedStock {
  const prices = boardPrices(
    given,
    sold.map((length) => ({ size, length })),
  )
  const known = new Map(prices.map(({ stock, price }) => [stock, price]))
  return {
    stocks: sold.map((length) => ({ length: length - trimmed, cost: known.get(length) ?? length })),
    measure: known.size > 0 ? "money" : "length",
  }
}

/** What was made least, and that no plan by the rules comes to less. `says`: in length, and in money. */
export function spliceReport(
  { lines, cost, unmet }: SplicePlan,
  measure: PricedStock["measure"],
  method: string,
  says: Readonly<Record<PricedStock["measure"], string>>,
): SolverReport {
  if (lines.length === 0) return { method, unmet }
  return { method, objective: { says: says[measure], measure, value: cost }, bound: cost, unmet }
}
