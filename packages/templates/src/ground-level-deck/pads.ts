import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { blocks } from "../parts/blocks.ts"
import { stoneBeds } from "../parts/stone-beds.ts"
import { BEAMS_ON_PADS } from "../parts/supported-lines.ts"
import { supportLayoutUnder } from "../parts/supports.ts"

/** One pad at each support: where the ground is low, the stone under it is built up. */
export const pads: Section = {
  ...adapt(blocks, {
    defaults: { block_height: "2 in", block_courses_limit: "1" },
    without: ["blocks_missed_by_flat"],
    labels: {
      block_length: "Length of a pad",
      block_width: "Width of a pad",
      block_height: "Thickness of a pad",
      blocks_per_course: "Pads side by side at one support",
      block_course_width: "Width of all of them",
      block_face: "Face on the stone",
      block_courses_limit: "Most pads on top of one another",
      block_count: "Pads",
      block_courses_max: "Pads on top of one another",
      stack_slenderness_most: "Height of loose pads, times their width",
      stack_height_limit: "Tallest support that stands safely",
      stack_height_check: "Are the supports squat enough?",
      block_mass: "Weight of one pad",
      blocks_mass: "Weight of all the pads",
    },
    whys: {
      block_length: "Along the beam. Where two planks meet end to end, each gets half of it.",
      block_width: "Across the beam.",
      block_height: "Solid paving slabs or cast pads. A thin one cracks over a soft spot.",
      blocks_per_course: "Two narrow pads side by side make a broader foot.",
      block_course_width: "Across the beam, all the pads of one support together.",
      block_courses_limit:
        "One: the stone takes up the fall of the ground. More: pads are stacked before stone is built up.",
      block_count: "The pads of every support, added up.",
      block_courses_max: "At the low side.",
      stack_slenderness_most: "Pads that only lie on one another are kept this squat.",
    },
  }),
  title: "Pads",
  says: "How many pads, how large their face is, and what they weigh.",
}

/** The beds under the pads, and the loose stone spread under the frame. */
export const padBeds: Section = {
  ...adapt(stoneBeds, {
    labels: {
      stone_bed_margin_least: "Least stone beyond the pad",
      stone_bed_check: "Is the bed bigger than the pad?",
    },
    whys: {
      stone_bed_length:
        "Along the beam. A little longer than the pad, so that the edge of the stone does not crumble away under it.",
      stone_bed_width: "Across the beam, a little wider than the pad.",
      stone_bed_margin_least: "So that the pad stands on stone that is held, not on its edge.",
      stone_bed_check: "A pad at the edge of its bed tips.",
      stone_edge_height_max:
        "The pads' undersides are all at one level, so on the low side the stone stands proud of the ground. An edging this high has to hold it there.",
    },
  }),
  says: "Crushed stone under every pad: how much in place, and how much to order loose.",
}

/** Pads on a grid under the beams. */
export const padLayout: Section = adapt(supportLayoutUnder(BEAMS_ON_PADS), {
  defaults: { underside_clearance: "2 in", support_spacing_max: "4 ft", support_end_offset: "10 in" },
  labels: { "support_stations.bearing": "Pad under the beam", "supports.courses": "Pads here" },
  whys: {
    supports: "Every pad has its own ground and its own hole. Take this table outside with you.",
    "supports.courses": "One, unless you allow more to be stacked. The stone below takes up the fall.",
    "supports.stack_height": "From the top of the stone to the underside of the beam.",
  },
})
