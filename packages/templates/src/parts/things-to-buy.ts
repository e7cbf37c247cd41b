import type { BoughtThing } from "../solvers/bought-things.ts"

/** Screws into the surface and into the frame, by the boxes that they are sold in. */
export const SCREWS_TO_BUY: readonly BoughtThing[] = [
  {
    item: "screws",
    quantity: "screws_to_buy",
    measure: "count",
    unit: "each",
    packs: { count: "screw_boxes", size: "screws_per_box", unit: "box" },
  },
  {
    item: "frame screws",
    quantity: "frame_screws_to_buy",
    measure: "count",
    unit: "each",
    packs: { count: "frame_screw_boxes", size: "frame_screws_per_box", unit: "box" },
  },
]

/** What keeps rot out of cut ends and off the tops. */
export const PRESERVATIVE_AND_TAPE: readonly BoughtThing[] = [
  { item: "preservative tin", quantity: "preservative_tins", measure: "count", unit: "each" },
  { item: "tape roll", quantity: "joist_tape_rolls", measure: "count", unit: "each" },
]
