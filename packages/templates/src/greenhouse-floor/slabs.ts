import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { BEARERS_ON_SLABS } from "../parts/bearers.ts"
import { blocks } from "../parts/blocks.ts"
import { stoneBeds } from "../parts/stone-beds.ts"
import { supportLayoutUnder } from "../parts/supports.ts"

/** Where the slabs lie under the bearers. */
export const slabLayout: Section = adapt(supportLayoutUnder(BEARERS_ON_SLABS), {
  labels: { "support_stations.bearing": "Slab under the bearer", "supports.courses": "Slabs here" },
  whys: {
    supports: "Every slab has its own ground and its own hole. Take this table outside with you.",
    "supports.courses": "One, unless you allow more to be stacked. The stone below takes up the fall.",
    "supports.stack_height": "From the top of the stone to the underside of the bearer.",
  },
  defaults: { underside_clearance: "50 mm", support_spacing_max: "1.2 m", support_end_offset: "225 mm" },
})

/** One slab at each support. */
export const slabs: Section = {
  ...adapt(blocks, {
    labels: {
      block_length: "Length of a slab",
      block_width: "Width of a slab",
      block_height: "Thickness of a slab",
      blocks_per_course: "Slabs side by side at one support",
      block_course_width: "Width of all of them",
      block_face: "Face on the stone",
      block_courses_limit: "Most slabs on top of one another",
      block_count: "Slabs",
      block_courses_max: "Slabs on top of one another",
      stack_slenderness_most: "Height of loose slabs, times their width",
      stack_height_limit: "Tallest support that stands safely",
      stack_height_check: "Are the supports squat enough?",
      block_mass: "Weight of one slab",
      blocks_mass: "Weight of all the slabs",
    },
    whys: {
      block_length: "Along the bearer. Where two pieces of bearer meet, each gets half of it.",
      block_width: "Across the bearer.",
      block_height: "Solid paving slabs. A thin one cracks over a soft spot.",
      blocks_per_course: "Two narrow slabs side by side make a broader foot.",
      block_course_width: "Across the bearer, all the slabs of one support together.",
      block_courses_limit:
        "One: the stone takes up the fall of the ground. More: slabs are stacked before stone is built up.",
      block_count: "The slabs of every support, added up.",
      block_courses_max: "At the low side.",
      stack_slenderness_most: "Slabs that only lie on one another are kept this squat.",
    },
    defaults: {
      block_length: "450 mm",
      block_width: "450 mm",
      block_height: "50 mm",
      block_courses_limit: "1",
    },
    without: ["blocks_missed_by_flat"],
  }),
  title: "Slabs",
  says: "How many slabs, how large their face is, and what they weigh.",
}

/** The beds under the slabs, and the drainage stone spread under the whole floor. */
export const slabBeds: Section = {
  ...adapt(stoneBeds, {
    labels: {
      stone_bed_margin_least: "Least stone beyond the slab",
      stone_bed_check: "Is the bed bigger than the slab?",
      cover_stone_depth: "Loose drainage stone under the floor",
    },
    whys: {
      stone_bed_length:
        "Along the bearer. A little longer than the slab, so that the edge of the stone does not crumble away under it.",
      stone_bed_width: "Across the bearer, a little wider than the slab.",
      stone_bed_margin_least: "So that the slab stands on stone that is held, not on its edge.",
      stone_bed_check: "A slab at the edge of its bed tips.",
      stone_edge_height_max:
        "The slabs' undersides are all at one level, so on the low side the stone stands proud of the ground. An edging this high has to hold it there.",
      cover_stone_depth:
        "Plants are watered here: what runs through the boards has to sink away below, not stand in mud.",
    },
    defaults: {
      stone_bed_length: "550 mm",
      stone_bed_width: "550 mm",
      stone_bed_thickness: "100 mm",
      cover_stone_depth: "40 mm",
      stone_order_step: "0.5 m3",
    },
  }),
  says: "Crushed stone under every slab, and a loose layer under the floor: how much in place, and how much to order.",
}
