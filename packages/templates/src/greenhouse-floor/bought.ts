import { GUARD_THINGS } from "../parts/guard-posts.ts"
import { PRESERVATIVE_AND_TAPE, SCREWS_TO_BUY } from "../parts/things-to-buy.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's prices and weights call it. */
export const FLOOR_THINGS: readonly BoughtThing[] = [
  ...SCREWS_TO_BUY,
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
  {
    item: "slab",
    quantity: "block_count",
    measure: "count",
    unit: "each",
    mass: { one: "block_mass", all: "blocks_mass" },
  },
  { item: "stone", quantity: "stone_order", measure: "bulk_volume", unit: "m3" },
  { item: "fabric", quantity: "fabric_length", measure: "length", unit: "m" },
  { item: "mesh roll", quantity: "mesh_rolls", measure: "count", unit: "each" },
  ...PRESERVATIVE_AND_TAPE,
  ...GUARD_THINGS,
]
