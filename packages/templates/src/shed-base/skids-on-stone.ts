import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { blocks } from "../parts/blocks.ts"
import { skidJoints, skidLayout } from "../parts/skids.ts"
import { SKIDS, type SupportedLines } from "../parts/supported-lines.ts"
import { supportLayoutUnder } from "../parts/supports.ts"
import { ARITHMETIC, COMMON_PRACTICE } from "../sources.ts"

/** Skids lie on the stone all along; a slab stands only where two pieces of one meet. */
export const ON_STONE: SupportedLines = {
  ...SKIDS,
  stack: "slab",
  block: "slab",
  remedies: [
    { input: "skid_spacing_max", toward: "less", step: "6 in" },
    { input: "skid_size", toward: "more" },
  ],
}

export const skids: Section = adapt(skidLayout, {
  whys: {
    skid_size:
      "The heavy timbers that carry the frame. They lie on the stone, full length, and run the long way.",
    skid_length:
      "Each line runs the whole length of the base, in one piece or in several that meet over a slab let into the stone.",
  },
})

/** How high the base lies, and the places along a skid where a joint may be. */
export const places: Section = {
  ...adapt(supportLayoutUnder(ON_STONE), {
    without: ["supports", "ground_at_supports"],
    labels: {
      underside_clearance: "Stone above the ground at the high corner",
      underside_level: "Level of the skids' underside",
      support_spacing_max: "Widest spacing of the places",
      support_end_offset: "First place in from the end",
      supports_per_skid: "Places along one skid",
      support_spacing: "Spacing of the places, centre to centre",
      support_count: "Places in all",
      support_stations: "Places along one skid",
    },
    whys: {
      underside_clearance:
        "How far the top of the pad, and so the lowest timber, stands above the grass at the high corner. Water must run away from it, not onto it.",
      underside_level: "The one level line of the whole job: the top of the stone is here.",
      support_spacing_max:
        "Places along a skid where two pieces of it may meet over a slab. If the base stood on footings, they would stand here.",
      support_end_offset: "From the skid's end to the middle of the first and the last place.",
      support_count: "As many footings, if the base stood on footings instead of stone.",
      support_stations:
        "Marks on the string of any one skid; a joint may lie over all but the first and the last.",
    },
    defaults: { underside_clearance: "1 in", support_spacing_max: "4 ft" },
  }),
  title: "Height, and places along the skids",
  says: "How high the base lies, and where two pieces of a skid may meet.",
}

/** Slabs under the joints of the skids, and the joints themselves. */
export const joints: Section = {
  ...skidJoints,
  entries: [
    ...adapt(blocks, {
      without: blocks.entries
        .map(({ name }) => name)
        .filter((name) => !["block_length", "block_width", "block_height"].includes(name)),
      labels: {
        block_length: "Length of a slab under a joint",
        block_width: "Width of a slab",
        block_height: "Thickness of a slab",
      },
      whys: {
        block_length: "Along the skid. Where two pieces of skid meet, each gets half of it.",
        block_height: "The slab is let into the stone, its top level with the pad's.",
      },
      defaults: { block_height: "2 in" },
    }).entries,
    ...adapt(skidJoints, {
      labels: { joint_bearing_check: "Do both ends rest far enough on a slab?" },
      whys: {
        joint_bearing: "Two ends share the length of one slab, half each.",
        joint_bearing_check: "A joint on loose stone alone opens as the stone settles.",
        skid_joints:
          "Where two pieces of one line meet, always over a slab; neighbouring lines meet over different ones.",
      },
    }).entries,
    {
      kind: "formula",
      name: "block_count",
      label: "Slabs",
      why: "One under every joint; none where every skid is one piece.",
      sources: [ARITHMETIC, COMMON_PRACTICE],
      measure: "count",
      formula: "COUNT(skid_joints.line)",
    },
  ],
}
