import { ofAllNets } from "../parts/of-all.ts"
import { PRESERVATIVE_AND_TAPE, SCREWS_TO_BUY } from "../parts/things-to-buy.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"

/** What is bought besides timber, by the names that the user's weights call it. */
export const GAME_THINGS: readonly BoughtThing[] = [
  ...SCREWS_TO_BUY,
  {
    item: "block",
    quantity: "block_count",
    measure: "count",
    unit: "each",
    mass: { one: "block_mass", all: "blocks_mass" },
  },
  { item: "stone", quantity: "stone_order", measure: "bulk_volume", unit: "yd3" },
  {
    item: "sheet",
    quantity: "sheet_count",
    measure: "count",
    unit: "each",
    mass: { role: "sheet" },
  },
  {
    item: "tile",
    quantity: "tiles_to_buy",
    measure: "count",
    unit: "each",
    mass: { role: "tile" },
  },
  { item: "net post", quantity: "net_post_count", measure: "count", unit: "each" },
  { item: "80 lb bag of concrete", quantity: ofAllNets("bags"), measure: "count", unit: "each" },
  {
    item: "net bolt",
    quantity: ofAllNets("bolts"),
    measure: "count",
    unit: "each",
  },
  {
    item: "square washer",
    quantity: ofAllNets("washers"),
    measure: "count",
    unit: "each",
  },
  {
    item: "net",
    quantity: ofAllNets("area"),
    measure: "area",
    unit: "ft2",
  },
  {
    item: "net rope",
    quantity: ofAllNets("rope"),
    measure: "length",
    unit: "ft",
  },
  {
    item: "guy rope",
    quantity: ofAllNets("guy_rope"),
    measure: "length",
    unit: "ft",
  },
  {
    item: "net tie",
    quantity: ofAllNets("ties"),
    measure: "count",
    unit: "each",
  },
  { item: "net peg", quantity: "net_guy_count", measure: "count", unit: "each" },
  ...PRESERVATIVE_AND_TAPE,
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
]
