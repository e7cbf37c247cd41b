import type { Entry } from "@pegbook/engine"
import { ARITHMETIC, STATES_OF_SOIL, STONE_DENSITY, STONE_LOOSE, STONE_TEXTBOOK, USER } from "../sources.ts"

/**
 * From stone tamped in place to what is ordered, for beds, strips and pads alike: loosened, cover added, rounded up once.
 *
 * Needs: stone_in_place, platform_area, barrow_volume, rounding_tolerance.
 */
export const stoneOrder: readonly Entry[] = [
  {
    kind: "input",
    name: "stone_loose_factor",
    label: "Loose stone for one of tamped",
    why: "Stone arrives loose and shrinks under the tamper. A rule for road base is a quarter more; a textbook's weights of sand and gravel give a little above that.",
    sources: [STONE_LOOSE, STONE_TEXTBOOK, USER],
    measure: "ratio",
    default: "1.25",
    least: "1",
    most: "2",
  },
  {
    kind: "input",
    name: "cover_stone_depth",
    label: "Loose stone spread under the frame",
    why: "A thin layer over the whole ground keeps weeds and splashing mud down; 0 for none. It is not tamped, so it is ordered as it lies.",
    sources: [USER],
    measure: "length",
    default: "0 in",
    least: "0 in",
    most: "12 in",
  },
  {
    kind: "formula",
    name: "stone_loose",
    label: "Stone, loose",
    why: "What is tamped in place and the cover, as it comes off the lorry.",
    sources: [STATES_OF_SOIL, STONE_LOOSE],
    measure: "bulk_volume",
    formula: "stone_in_place * stone_loose_factor + platform_area * cover_stone_depth",
  },
  {
    kind: "input",
    name: "stone_order_step",
    label: "Stone is sold in steps of",
    why: "Yards sell by the half or the whole; bags are smaller steps.",
    sources: [USER],
    measure: "bulk_volume",
    default: "0.5 yd3",
    least: "0.01 yd3",
    most: "20 yd3",
  },
  {
    kind: "formula",
    name: "stone_order",
    label: "Stone to order",
    why: "Rounded up once, to the step it is sold in. Keep what is left over for levelling again in spring.",
    sources: [ARITHMETIC],
    measure: "bulk_volume",
    formula: "CEILING(stone_loose - rounding_tolerance * stone_order_step; stone_order_step)",
  },
  {
    kind: "input",
    name: "stone_density",
    label: "Density of tamped stone",
    why: "Dense graded crushed stone. Your quarry's ticket says what yours weighs.",
    sources: [STONE_DENSITY, USER],
    measure: "density",
    default: "2150 kg/m3",
    least: "1000 kg/m3",
    most: "3000 kg/m3",
  },
  {
    kind: "formula",
    name: "stone_mass",
    label: "Weight of the stone in place",
    why: "Heavy enough to bog a lorry or break a small trailer: think how it gets to the site.",
    sources: [STONE_DENSITY],
    measure: "mass",
    formula: "stone_in_place * stone_density",
  },
  {
    kind: "formula",
    name: "stone_barrows",
    label: "Barrow loads of stone",
    why: "All of it goes to the holes by barrow.",
    sources: [ARITHMETIC],
    measure: "count",
    formula: "ROUNDUP(stone_loose / barrow_volume - rounding_tolerance; 0)",
  },
]
