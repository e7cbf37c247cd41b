import type { SolverGiven } from "@pegbook/engine"
import { keyOf } from "./bought-things.ts"
import { type PriceRow, plainNumber, type Read } from "./price-offers.ts"

/** The columns that the user's own lines of the buying list are read from. */
export const OWN_READS = [
  "own_things.item",
  "own_things.quantity",
  "own_things.unit",
  "own_things.price",
] as const

/** A line that the user adds to the buying list. */
export interface OwnThing {
  readonly item: string
  readonly need: number
  /** As typed; "each" where nothing was. */
  readonly unit: string
  /** What was typed beside it; none where that is empty. */
  readonly price?: PriceRow
}

/**
 * The lines that the user adds to what the design needs. One without a name or an amount is not on the list; one that the
 * workbook counts itself, that is there twice, or whose price cannot be read is named, with what to do.
 */
export function readOwnThings(given: SolverGiven, counted: ReadonlySet<string>): Read<OwnThing> {
  const texts = (name: string) => given.column(name).map((text) => String(text).trim())
  const [units, prices] = [texts("own_things.unit"), texts("own_things.price")]
  const amounts = given.column("own_things.quantity").map(Number)
  const unmet: string[] = []
  const known = new Set<string>()
  const rows = texts("own_things.item").flatMap((item, at): readonly OwnThing[] => {
    const need = amounts[at] ?? 0
    if (item === "" || !(need > 0)) return []
    if (counted.has(keyOf(item))) {
      unmet.push(`${item} is counted by this workbook already: call your own line something else.`)
      return []
    }
    if (known.has(keyOf(item))) {
      unmet.push(
        `${item} is twice among your own things: the first is used. Write how many you need in one line.`,
      )
      return []
    }
    known.add(keyOf(item))
    const unit = units[at] || "each"
    const typed = prices[at] ?? ""
    const price = typed === "" ? undefined : plainNumber(typed)
    if (typed !== "" && price === undefined)
      unmet.push(
        `The price "${typed}" of ${item} cannot be read and is left out. Write an amount, as "12.50", or leave it empty.`,
      )
    const value = price === undefined ? undefined : Math.round(price * 100)
    return [
      {
        item,
        need,
        unit,
        ...(value === undefined ? {} : { price: { item, unit, value, supplier: "", from: 0, lead: 0 } }),
      },
    ]
  })
  return { rows, unmet }
}
