import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's prices and weights call it. */
export const SHED_THINGS: readonly BoughtThing[] = [
  {
    item: "screws",
    quantity: "screws_to_buy",
    measure: "count",
    unit: "each",
    packs: { count: "screw_boxes", unit: "box" },
  },
  {
    item: "frame screws",
    quantity: "frame_screws_to_buy",
    measure: "count",
    unit: "each",
    packs: { count: "frame_screw_boxes", unit: "box" },
  },
  { item: "stone", quantity: "stone_order", measure: "bulk_volume", unit: "yd3" },
  { item: "fabric", quantity: "fabric_area", measure: "area", unit: "ft2" },
  { item: "edging", quantity: "edging_length", measure: "length", unit: "ft" },
  { item: "sheet", quantity: "sheet_count", measure: "count", unit: "each" },
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
]
