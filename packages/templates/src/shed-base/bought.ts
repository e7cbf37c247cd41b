import { GUARD_THINGS } from "../parts/guard-posts.ts"
import { PRESERVATIVE_AND_TAPE, SCREWS_TO_BUY } from "../parts/things-to-buy.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's prices and weights call it. */
export const SHED_THINGS: readonly BoughtThing[] = [
  ...SCREWS_TO_BUY,
  { item: "stone", quantity: "stone_order", measure: "bulk_volume", unit: "yd3" },
  { item: "fabric", quantity: "fabric_area", measure: "area", unit: "ft2" },
  { item: "edging", quantity: "edging_length", measure: "length", unit: "ft" },
  {
    item: "sheet",
    quantity: "sheet_count",
    measure: "count",
    unit: "each",
    mass: { role: "sheet" },
  },
  { item: "mesh roll", quantity: "mesh_rolls", measure: "count", unit: "each" },
  ...PRESERVATIVE_AND_TAPE,
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
  ...GUARD_THINGS,
]
