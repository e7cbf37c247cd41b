import type { Solution, SolverGiven } from "@pegbook/engine"
import {
  type BoughtThing,
  heldOf,
  inUnit,
  namesOf,
  sameItem,
  TIMBER_READS,
  timberBought,
  typedLength,
  type UserRow,
} from "./bought-things.ts"
import { lengthInWords } from "./length-in-words.ts"

/** The names that a buying list of these things is worked from. */
export function buyListReads(things: readonly BoughtThing[]): readonly string[] {
  const names = things.flatMap(({ quantity, packs }) => [
    ...namesOf(quantity),
    ...(packs === undefined ? [] : [packs.count]),
  ])
  const prices = ["prices.item", "prices.length", "prices.unit", "prices.price"]
  return [...new Set([...TIMBER_READS, ...names, ...prices])]
}

/** How much is bought of a thing in the unit that it is priced by; `bought` times the price is what it costs. */
interface Priced {
  readonly quantity: number
  readonly unit: string
  readonly bought: number
  readonly price_unit: string
  readonly price: number
}

/**
 * Everything to buy with the user's prices, one thing a row: item, length, quantity, unit, packs, bought, price_unit,
 * price. The length is that of timber, nothing for other things. A thing without a price is listed all the same, with a price of nothing, and named in the report; what stops
 * a price from being used is `unmet`.
 */
export function solveBuyList(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const { rows: prices, unmet } = readPrices(given)
    const without: string[] = []
    const faults = [...unmet]
    const priced = (
      label: string,
      found: readonly UserRow[],
      read: (row: UserRow) => Priced | undefined,
      plain: { readonly quantity: number; readonly unit: string },
    ): Priced => {
      const [row, other] = found
      if (other !== undefined)
        faults.push(`There are two prices for ${label}: the first is used. Remove one.`)
      const fits = row === undefined ? undefined : read(row)
      if (fits !== undefined) return fits
      if (row !== undefined) {
        faults.push(
          `The price of ${label} is by "${row.unit}", which this list does not count it by. Give it by ${plain.unit}.`,
        )
      }
      without.push(label)
      return { ...plain, bought: 0, price_unit: "no price", price: 0 }
    }

    const timber = timberBought(given).map(({ size, length, count }) => {
      const ofSize = prices.filter(({ item }) => sameItem(item, size))
      const exact = ofSize.filter(
        (row) => row.length !== undefined && Math.abs(row.length - length) <= HALF_MM,
      )
      const found = exact.length > 0 ? exact : ofSize.filter((row) => row.length === undefined)
      const plain = { quantity: count, unit: "each" }
      const label = `${size}, ${lengthInWords(length)}`
      const read = (row: UserRow): Priced | undefined => {
        const pieces = inUnit(count, row.unit, "count")
        const run = inUnit(count * length, row.unit, "length")
        const bought = pieces ?? run
        if (bought === undefined) return undefined
        return { ...plain, bought, price_unit: row.unit, price: row.value }
      }
      return { item: size, length, packs: 0, ...priced(label, found, read, plain) }
    })

    const others = things.flatMap((thing) => {
      const held = heldOf(given, thing.quantity)
      if (held <= 0) return []
      const packs = thing.packs === undefined ? 0 : given.number(thing.packs.count)
      const plain = { quantity: inUnit(held, thing.unit, thing.measure) ?? held, unit: thing.unit }
      const read = (row: UserRow): Priced | undefined => {
        if (thing.packs !== undefined && isPack(row.unit, thing.packs.unit))
          return { ...plain, bought: packs, price_unit: row.unit, price: row.value }
        const quantity = inUnit(held, row.unit, thing.measure)
        if (quantity === undefined) return undefined
        return { quantity, unit: row.unit, bought: quantity, price_unit: row.unit, price: row.value }
      }
      const found = prices.filter(({ item }) => sameItem(item, thing.item))
      return [{ item: thing.item, length: 0, packs, ...priced(thing.item, found, read, plain) }]
    })
    return { rows: [...timber, ...others], report: { method: methodOf(without), unmet: faults } }
  }
}

/** Lengths are sold to the nearest fraction of an inch; two names of one length are never further apart. */
const HALF_MM = 500_000

function isPack(unit: string, pack: string): boolean {
  return [pack, `${pack}es`, "pack", "packet", "carton"].some((name) => sameItem(name, unit))
}

function methodOf(without: readonly string[]): string {
  const method = "what is bought, looked up by name and length in your prices"
  return without.length === 0 ? method : `${method}; no price for ${without.join("; ")}`
}

function readPrices(given: SolverGiven): {
  readonly rows: readonly UserRow[]
  readonly unmet: readonly string[]
} {
  const texts = (column: string): readonly string[] => given.column(column).map((text) => String(text).trim())
  const [lengths, units] = [texts("prices.length"), texts("prices.unit")]
  const values = given.column("prices.price").map(Number)
  const unmet: string[] = []
  const rows = texts("prices.item").flatMap((item, at): readonly UserRow[] => {
    const [typed = "", unit = "", value = 0] = [lengths[at], units[at], values[at]]
    if (typed === "") return [{ item, unit, value }]
    const length = typedLength(typed)
    if (length !== undefined) return [{ item, unit, value, length }]
    unmet.push(
      `Line ${at + 1} of the prices has the length "${typed}", which cannot be read. Write it with its unit, as "12 ft".`,
    )
    return []
  })
  return { rows, unmet }
}
