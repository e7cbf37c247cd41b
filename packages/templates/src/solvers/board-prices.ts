import type { SolverGiven } from "@pegbook/engine"
import { keyOf } from "./bought-things.ts"
import { PRICE_READS, type PriceRow, readPrices } from "./price-offers.ts"
import { holdingFor, timberUnits } from "./timber-offers.ts"

/** What a board of one size and length costs, by the user's own prices. */
export interface BoardPrice {
  readonly size: string
  /** The length sold, in nanometres. */
  readonly stock: number
  /** In whole hundredths of the currency. */
  readonly price: number
}

const ONLY = "buying_rules.buy_from"

/** The names that boards are priced by: nothing that leans on what is bought. */
export const BOARD_PRICE_READS: readonly string[] = [...PRICE_READS, ONLY]

/**
 * A price for each of these boards whose size has one, each size and length once: the cheapest offer for that length, by
 * the piece or by length, that holds from the first; where no offer has the length, its length at the cheapest price per
 * length of its size's other offers. A size has a price for all its lengths or for none.
 *
 * How many are bought is not known yet: a pack counts by its share, and breaks, delivery and tax are left out. Where the
 * user buys from one supplier alone, only that one's prices count.
 */
export function boardPrices(
  given: SolverGiven,
  boards: readonly { readonly size: string; readonly length: number }[],
): readonly BoardPrice[] {
  const fromFirst = readPrices(given).rows.filter(({ from }) => from <= 1)
  const only = keyOf(String(given.column(ONLY)[0] ?? ""))
  const theirs = fromFirst.filter(({ supplier }) => keyOf(supplier) === only)
  const rows = only === "" || theirs.length === 0 ? fromFirst : theirs
  const priced = new Map<string, BoardPrice>()
  for (const { size, length } of boards) {
    const ofSize = rows.filter(({ item }) => keyOf(item) === keyOf(size))
    const price = cheapest(holdingFor(ofSize, length), length) ?? atOthersRate(ofSize, length)
    if (price !== undefined)
      priced.set(`${size} ${length}`, { size, stock: length, price: Math.round(price) })
  }
  return [...priced.values()]
}

function cheapest(rows: readonly PriceRow[], length: number): number | undefined {
  const prices = rows.flatMap(({ unit, value, pack = 1 }) => {
    const units = timberUnits(unit, 1, length)
    return units === undefined ? [] : [(value * units.amount) / pack]
  })
  return prices.length === 0 ? undefined : Math.min(...prices)
}

function atOthersRate(rows: readonly PriceRow[], length: number): number | undefined {
  const rates = rows.flatMap((row) => {
    const price = row.length === undefined ? undefined : cheapest([row], row.length)
    return price === undefined || row.length === undefined ? [] : [price / row.length]
  })
  return rates.length === 0 ? undefined : Math.min(...rates) * length
}
