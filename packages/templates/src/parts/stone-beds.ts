import type { InputEntry, Section } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, STATES_OF_SOIL, TAMPING_PRACTICE, USER } from "../sources.ts"
import { stoneOrder } from "./stone-order.ts"

/** How thick tamped stone has to be, in words that suit a bed, a strip and a pad alike. */
export const stoneBedThickness: InputEntry = {
  kind: "input",
  name: "stone_bed_thickness",
  label: "Least thickness of the stone, tamped",
  why: "Stone drains, spreads the load and can be levelled to a hair. Tamp it in layers of 3 to 4 in.",
  sources: [TAMPING_PRACTICE, USER],
  cautions: ["Use crushed stone that locks together. Round pea gravel rolls, however hard it is tamped."],
  measure: "length",
  default: "4 in",
  least: "1 in",
  most: "3 ft",
}

/** The beds of tamped stone under the blocks, and the stone to order for them. */
export const stoneBeds: Section = {
  id: "stone-beds",
  title: "Stone beds",
  says: "Crushed stone under every stack: how much in place, and how much to order loose.",
  entries: [
    {
      kind: "input",
      name: "stone_bed_length",
      label: "Length of a bed",
      why: "Along the skid. A little longer than the block, so that the edge of the stone does not crumble away under it.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "20 in",
      least: "4 in",
      most: "8 ft",
    },
    {
      kind: "input",
      name: "stone_bed_width",
      label: "Width of a bed",
      why: "Across the skid, a little wider than the block.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "20 in",
      least: "4 in",
      most: "8 ft",
    },
    stoneBedThickness,
    {
      kind: "figure",
      name: "stone_bed_margin_least",
      label: "Least stone beyond the block",
      why: "So that the block stands on stone that is held, not on its edge.",
      sources: [COMMON_PRACTICE],
      measure: "length",
      value: "1 in",
    },
    {
      kind: "check",
      name: "stone_bed_check",
      label: "Is the bed bigger than the block?",
      why: "A block at the edge of its bed tips. On the narrower side, each way.",
      sources: [COMMON_PRACTICE],
      measure: "length",
      demand: "MIN(stone_bed_length - block_length; stone_bed_width - block_course_width) / 2",
      limit: "stone_bed_margin_least",
      sense: "at_least",
      advice: ["Make the bed at least {stone_bed_margin_least} bigger than the block on every side."],
    },
    {
      kind: "formula",
      name: "stone_edge_height_max",
      label: "Stone standing above the ground",
      why: "0 where every stack's foot is in the ground. Stone that stands proud must be held by an edging this high.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "MAX(supports.stone_above_ground)",
    },
    {
      kind: "formula",
      name: "stone_in_place",
      label: "Stone in place, tamped",
      why: "All beds together, each with its own thickness.",
      sources: [GEOMETRY, STATES_OF_SOIL],
      measure: "volume",
      formula: "SUM(supports.stone_volume)",
    },
    ...stoneOrder,
    {
      kind: "formula",
      name: "stone_missed_by_flat",
      label: "Stone that a flat list would miss",
      why: "Where the ground is low the bed gets thicker than planned.",
      sources: [ARITHMETIC],
      measure: "volume",
      formula: "SUM(supports.stone_extra) * stone_bed_length * stone_bed_width",
    },
  ],
}
