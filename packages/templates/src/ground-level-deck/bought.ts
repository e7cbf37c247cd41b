import { GUARD_THINGS } from "../parts/guard-posts.ts"
import { PRESERVATIVE_AND_TAPE, SCREWS_TO_BUY } from "../parts/things-to-buy.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's prices and weights call it. */
export const DECK_THINGS: readonly BoughtThing[] = [
  ...SCREWS_TO_BUY,
  {
    item: "block",
    quantity: "block_count",
    measure: "count",
    unit: "each",
    mass: { one: "block_mass", all: "blocks_mass" },
  },
  { item: "stone", quantity: "stone_order", measure: "bulk_volume", unit: "yd3" },
  { item: "fabric", quantity: "fabric_area", measure: "area", unit: "ft2" },
  ...PRESERVATIVE_AND_TAPE,
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
  ...GUARD_THINGS,
]
