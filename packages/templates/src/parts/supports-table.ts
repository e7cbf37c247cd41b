import type { TableEntry } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, STATICS, STRESS_SPREAD } from "../sources.ts"
import type { SupportedLines } from "./supported-lines.ts"
import { groundFormula } from "./survey-between.ts"

/**
 * One row a support: where it stands, how it is built up, and what it carries.
 *
 * Needs: support_count, support_stations, the lines, the site, blocks, stone beds, loads.
 */
export function supportsTableUnder(lines: SupportedLines): TableEntry {
  const { noun, nouns, stack, block, table, supportsPerLine } = lines
  return {
    kind: "table",
    name: "supports",
    label: "Supports, one by one",
    why: `Every ${stack} has its own ground, its own number of ${block}s and its own hole. Take this table outside with you.`,
    sources: [GEOMETRY],
    cautions: [
      "Before you dig, have buried cables and pipes marked; the service asks for some days' notice. Dig by hand near a marked line.",
      `The level of the ground is read at the middle of each ${stack}, from a plane or between the levels that you took. Measure it again at each peg before you cut or dig.`,
    ],
    rows: { kind: "formula", formula: "support_count" },
    columns: [
      {
        name: "line",
        label: "Line",
        why: `The line of ${nouns} that the support stands under.`,
        sources: [ARITHMETIC],
        measure: "count",
        formula: `INT((ROW() - 1) / ${supportsPerLine}) + 1`,
      },
      {
        name: "number",
        label: "Support in the line",
        why: "Counted along the line from the first end.",
        sources: [ARITHMETIC],
        measure: "count",
        formula: `ROW() - (line - 1) * ${supportsPerLine}`,
      },
      {
        name: "x",
        label: "Along the length",
        why: `From the frame's first end to the middle of the ${stack}.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "INDEX(support_stations.x; number)",
      },
      {
        name: "y",
        label: "Across the width",
        why: `From the frame's first long edge to the middle of the ${stack}.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: `INDEX(${table}.y; line)`,
      },
      {
        name: "ground",
        label: "Ground",
        why: `Level of the ground at the middle of the ${stack}, up positive.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: groundFormula("supports"),
      },
      {
        name: "gap",
        label: "Ground to underside",
        why: `What the ${block}s must bridge here.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "underside_level - ground",
      },
      {
        name: "courses",
        label: `Blocks in the ${stack}`,
        why: `Enough ${block}s that the ${stack}'s foot stands at or below the ground, never above it; always one at least.`,
        sources: [GEOMETRY, COMMON_PRACTICE],
        measure: "count",
        formula: "MAX(1; MIN(block_courses_limit; ROUNDUP(gap / block_height - rounding_tolerance; 0)))",
      },
      {
        name: "stack_height",
        label: `Height of the ${stack}`,
        why: `From the top of the stone to the underside of the ${noun}.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "courses * block_height",
      },
      {
        name: "stone_top",
        label: "Top of the stone",
        why: `Level to which the stone is tamped: check it with a straight board and a level before the ${block} goes on.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "underside_level - stack_height",
      },
      {
        name: "stone_bottom",
        label: "Bottom of the hole",
        why: "Deep enough for the full bed of stone, and deep enough to be out of the turf.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "MIN(stone_top - stone_bed_thickness; ground - dig_min)",
      },
      {
        name: "dig",
        label: "Dig",
        why: "How deep to dig here, from the grass down.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "ground - stone_bottom",
      },
      {
        name: "stone_extra",
        label: "Stone beyond the planned bed",
        why: "Where the hole must go deeper than the bed is thick, stone fills the rest.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "MAX(0; stone_top - stone_bed_thickness - (ground - dig_min))",
      },
      {
        name: "stone",
        label: "Stone, tamped",
        why: "How thick the bed of stone is here when tamped.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "stone_bed_thickness + stone_extra",
      },
      {
        name: "stone_above_ground",
        label: "Stone standing above the ground",
        why: `Stone that stands proud must be held in by an edging, or it walks away from under the ${block}.`,
        sources: [GEOMETRY],
        measure: "length",
        formula: "MAX(0; stone_top - ground)",
      },
      {
        name: "dig_volume",
        label: "Soil dug",
        why: "Measured in the ground, before it loosens.",
        sources: [GEOMETRY],
        measure: "volume",
        formula: "dig * stone_bed_length * stone_bed_width",
      },
      {
        name: "stone_volume",
        label: "Stone in place",
        why: "Measured tamped; you order it loose, which is more.",
        sources: [GEOMETRY],
        measure: "volume",
        formula: "stone * stone_bed_length * stone_bed_width",
      },
      {
        name: "load_area",
        label: "Area carried",
        why: `The part of the platform that rests on this ${stack}: half way to each neighbour, and out to the edge of the frame.`,
        sources: [STATICS],
        measure: "area",
        formula: `INDEX(support_stations.carries; number) * INDEX(${table}.carries; line)`,
      },
      {
        name: "load",
        label: "Load",
        why: "People and platform on that area, as heavy as the loads that you entered.",
        sources: [STATICS],
        measure: "force",
        formula: "(live_load + dead_load) * load_area",
      },
      {
        name: "pressure",
        label: `Pressure under the ${block}`,
        why: `The load over the face of the ${block}, before the stone spreads it.`,
        sources: [STATICS],
        measure: "pressure",
        formula: "load / block_face",
      },
      {
        name: "spread_pressure",
        label: "Pressure under the stone",
        why: `The stone spreads the load before it reaches the soil. A second opinion; the check goes by the ${block}'s face.`,
        sources: [STRESS_SPREAD],
        measure: "pressure",
        formula:
          "load / (MIN(stone_bed_length; block_length + 2 * stone_spread * stone) * MIN(stone_bed_width; block_course_width + 2 * stone_spread * stone))",
      },
    ],
  }
}
