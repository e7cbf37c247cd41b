import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's prices and weights call it. */
export const FLOOR_THINGS: readonly BoughtThing[] = [
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
  { item: "preservative tin", quantity: "preservative_tins", measure: "count", unit: "each" },
]
