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
  {
    item: "net bolt",
    quantity: { column: "net_order.bolts", where: "net_order.of", is: "all nets" },
    measure: "count",
    unit: "each",
  },
  {
    item: "square washer",
    quantity: { column: "net_order.washers", where: "net_order.of", is: "all nets" },
    measure: "count",
    unit: "each",
  },
  {
    item: "net",
    quantity: { column: "net_order.area", where: "net_order.of", is: "all nets" },
    measure: "area",
    unit: "ft2",
  },
  {
    item: "net rope",
    quantity: { column: "net_order.rope", where: "net_order.of", is: "all nets" },
    measure: "length",
    unit: "ft",
  },
  {
    item: "guy rope",
    quantity: { column: "net_order.guy_rope", where: "net_order.of", is: "all nets" },
    measure: "length",
    unit: "ft",
  },
  {
    item: "net tie",
    quantity: { column: "net_order.ties", where: "net_order.of", is: "all nets" },
    measure: "count",
    unit: "each",
  },
  { item: "net peg", quantity: "net_guy_count", measure: "count", unit: "each" },
  ...PRESERVATIVE_AND_TAPE,
  { item: "tie", quantity: "tie_count", measure: "count", unit: "each" },
]
