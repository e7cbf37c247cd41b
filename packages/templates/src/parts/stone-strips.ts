import type { Section } from "@pegbook/engine"
import {
  ARITHMETIC,
  COMMON_PRACTICE,
  GEOMETRY,
  GRID_METHOD,
  LOCATE_SERVICES,
  STATES_OF_SOIL,
  USER,
} from "../sources.ts"
import { spoil } from "./dig.ts"
import { stoneBedThickness } from "./stone-beds.ts"
import { stoneOrder } from "./stone-order.ts"
import { groundAt, groundFormula } from "./survey-between.ts"

/** Lines of timber that lie on strips of stone, by the names of their entries and in the reader's words. */
export interface StripLines {
  /** Several of them: "skids", "sleepers". */
  readonly nouns: string
  /** A table, one row a line, with the column `y`: the line's middle across the width. */
  readonly table: string
  readonly count: string
}

/**
 * Strips of tamped stone along lines of timber, level on top, on a slope.
 *
 * Needs: the lines, the site, platform_length, platform_area, stone_margin, strip_depth, underside_level,
 * rounding_tolerance.
 */
export function stoneStripsUnder({ nouns, table, count }: StripLines): Section {
  return {
    id: "stone-strips",
    title: "Strips of stone",
    says: `A strip of tamped stone under each line of ${nouns}, level on top: less digging than a pad.`,
    entries: [
      {
        kind: "input",
        name: "stone_bed_width",
        label: "Width of a strip",
        why: "A few inches wider than the timber on either side, so that the stone's edge does not crumble away under it.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "16 in",
        least: "4 in",
        most: "8 ft",
      },
      stoneBedThickness,
      {
        kind: "formula",
        name: "stone_bed_length",
        label: "Length of a strip",
        why: "The platform's length and the margin at both ends.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "platform_length + 2 * stone_margin",
      },
      {
        kind: "figure",
        name: "strip_steps",
        label: "Steps along a strip",
        why: "Depths are taken at the ends of so many even steps, and averaged from step to step.",
        sources: [GRID_METHOD],
        measure: "count",
        value: "12",
      },
      groundAt("strip_stations", "the strips"),
      {
        kind: "table",
        name: "strip_stations",
        label: "Stations along the strips",
        why: "How deep to dig along each strip, from the first end on.",
        sources: [GEOMETRY],
        rows: { kind: "formula", formula: `${count} * (strip_steps + 1)` },
        columns: [
          {
            name: "line",
            label: "Strip",
            why: "Counted across the width.",
            sources: [ARITHMETIC],
            measure: "count",
            formula: "INT((ROW() - 1) / (strip_steps + 1)) + 1",
          },
          {
            name: "step",
            label: "Steps along",
            why: "0 at the first end.",
            sources: [ARITHMETIC],
            measure: "count",
            formula: "MOD(ROW() - 1; strip_steps + 1)",
          },
          {
            name: "x",
            label: "Along the length",
            why: "From the frame's first end; negative: out in the margin.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "step * stone_bed_length / strip_steps - stone_margin",
          },
          {
            name: "y",
            label: "Across the width",
            why: "The middle of the strip.",
            sources: [GEOMETRY],
            measure: "length",
            formula: `INDEX(${table}.y; line)`,
          },
          {
            name: "run",
            label: "Length it stands for",
            why: "Half a step on either side; half as much at the ends.",
            sources: [GRID_METHOD],
            measure: "length",
            formula: "stone_bed_length / strip_steps * IF(OR(step = 0; step = strip_steps); 1 / 2; 1)",
          },
          {
            name: "ground",
            label: "Ground",
            why: "Level of the ground there, up positive.",
            sources: [GEOMETRY],
            measure: "length",
            formula: groundFormula("strip_stations"),
          },
          {
            name: "bottom",
            label: "Bottom of the trench",
            why: "Deep enough for the least thickness of stone, and out of the topsoil.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "MIN(underside_level - stone_bed_thickness; ground - strip_depth)",
          },
          {
            name: "dig",
            label: "Dig",
            why: "From the grass down.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "ground - bottom",
          },
          {
            name: "stone",
            label: "Stone, tamped",
            why: `From there up to the underside of the ${nouns}.`,
            sources: [GEOMETRY],
            measure: "length",
            formula: "underside_level - bottom",
          },
        ],
      },
      {
        kind: "formula",
        name: "greatest_dig",
        label: "Deepest dig",
        why: "Tell this depth to the service that marks buried cables and pipes.",
        sources: [ARITHMETIC, LOCATE_SERVICES],
        measure: "length",
        formula: "MAX(strip_stations.dig)",
      },
      {
        kind: "formula",
        name: "least_dig",
        label: "Shallowest dig",
        why: "Even here turf and topsoil come off.",
        sources: [ARITHMETIC],
        measure: "length",
        formula: "MIN(strip_stations.dig)",
      },
      {
        kind: "formula",
        name: "dug_volume",
        label: "Soil dug, in the ground",
        why: "The trenches together.",
        sources: [GEOMETRY, STATES_OF_SOIL],
        measure: "volume",
        formula: "SUMPRODUCT(strip_stations.dig; strip_stations.run) * stone_bed_width",
      },
      ...spoil,
      {
        kind: "formula",
        name: "stone_in_place",
        label: "Stone in place, tamped",
        why: "The strips together, each with its own depths.",
        sources: [GEOMETRY, STATES_OF_SOIL],
        measure: "volume",
        formula: "SUMPRODUCT(strip_stations.stone; strip_stations.run) * stone_bed_width",
      },
      ...stoneOrder,
      {
        kind: "formula",
        name: "stone_edge_height_max",
        label: "Stone standing above the ground",
        why: "At the lowest place of a strip. Stone that stands proud must be held by an edging this high.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "MAX(0; underside_level - MIN(strip_stations.ground))",
      },
      {
        kind: "formula",
        name: "edging_length",
        label: "Edging round all strips",
        why: "Both long sides and both ends of each.",
        sources: [GEOMETRY],
        measure: "length",
        formula: `${count} * 2 * (stone_bed_length + stone_bed_width)`,
      },
    ],
  }
}
