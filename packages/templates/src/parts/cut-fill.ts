import type { Column, Section } from "@pegbook/engine"
import {
  ARITHMETIC,
  BALANCE_LEVEL,
  COMMON_PRACTICE,
  GEOMETRY,
  GRID_METHOD,
  STATES_OF_SOIL,
  SWELL_FIELD_MANUAL,
  TRIANGLES,
  USER,
} from "../sources.ts"
import { groundAt, groundFormula } from "./survey-between.ts"

/**
 * A grid of points over the platform and a margin round it, each with the ground there and the area that it stands for.
 * `more` are columns that other parts work at every point.
 *
 * Needs: the site, platform_length, platform_width, and what the further columns need.
 */
export function groundGrid(more: readonly Column[]): Section {
  return {
    id: "grid",
    title: "The ground as a grid",
    says: "The ground under the platform and a margin round it, point by point: volumes on a slope come from it.",
    entries: [
      {
        kind: "input",
        name: "stone_margin",
        label: "Ground works beyond the frame, each side",
        why: "Stone that ended at the frame would crumble away from under its edge; and somebody has to work there.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "6 in",
        least: "0 in",
        most: "6 ft",
      },
      {
        kind: "formula",
        name: "pad_length",
        label: "Length of the ground works",
        why: "The platform and the margin at both ends.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "platform_length + 2 * stone_margin",
      },
      {
        kind: "formula",
        name: "pad_width",
        label: "Width of the ground works",
        why: "The platform and the margin on both sides.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "platform_width + 2 * stone_margin",
      },
      {
        kind: "formula",
        name: "pad_area",
        label: "Area of the ground works",
        why: "Turf comes off all of it.",
        sources: [GEOMETRY],
        measure: "area",
        formula: "pad_length * pad_width",
      },
      {
        kind: "figure",
        name: "grid_cells_length",
        label: "Cells of the grid along the length",
        why: "More cells follow the ground more closely. On even ground one would do.",
        sources: [GRID_METHOD],
        measure: "count",
        value: "12",
      },
      {
        kind: "figure",
        name: "grid_cells_width",
        label: "Cells of the grid across the width",
        why: "As along the length.",
        sources: [GRID_METHOD],
        measure: "count",
        value: "12",
      },
      groundAt("grid", "the grid"),
      {
        kind: "table",
        name: "grid",
        label: "Points of the grid",
        why: "Row by row across the width, each from the first end on.",
        sources: [GRID_METHOD],
        rows: { kind: "formula", formula: "(grid_cells_length + 1) * (grid_cells_width + 1)" },
        columns: [
          {
            name: "step_length",
            label: "Steps along",
            why: "0 at the first end.",
            sources: [ARITHMETIC],
            measure: "count",
            formula: "MOD(ROW() - 1; grid_cells_length + 1)",
          },
          {
            name: "step_width",
            label: "Steps across",
            why: "0 on the first side.",
            sources: [ARITHMETIC],
            measure: "count",
            formula: "INT((ROW() - 1) / (grid_cells_length + 1))",
          },
          {
            name: "x",
            label: "Along the length",
            why: "From the frame's first end; negative: out in the margin.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "step_length * pad_length / grid_cells_length - stone_margin",
          },
          {
            name: "y",
            label: "Across the width",
            why: "From the frame's first side; negative: out in the margin.",
            sources: [GEOMETRY],
            measure: "length",
            formula: "step_width * pad_width / grid_cells_width - stone_margin",
          },
          {
            name: "cells",
            label: "Cells that meet here",
            why: "One at a corner of the works, two at an edge, four inside: a depth counts as often.",
            sources: [GRID_METHOD],
            measure: "count",
            formula:
              "IF(OR(step_length = 0; step_length = grid_cells_length); 1; 2) * IF(OR(step_width = 0; step_width = grid_cells_width); 1; 2)",
          },
          {
            name: "area",
            label: "Area it stands for",
            why: "A quarter of each cell that meets here.",
            sources: [GRID_METHOD],
            measure: "area",
            formula: "cells / 4 * pad_area / (grid_cells_length * grid_cells_width)",
          },
          {
            name: "ground",
            label: "Ground",
            why: "Level of the ground there, up positive.",
            sources: [GEOMETRY, TRIANGLES],
            measure: "length",
            formula: groundFormula("grid"),
          },
          ...more,
        ],
      },
      {
        kind: "formula",
        name: "ground_grid_low",
        label: "Lowest ground of the works",
        why: "Margin included; a hollow in the middle counts.",
        sources: [ARITHMETIC],
        measure: "length",
        formula: "MIN(grid.ground)",
      },
      {
        kind: "formula",
        name: "ground_mean",
        label: "Mean level of the ground",
        why: "Each point weighed by the area that it stands for.",
        sources: [GRID_METHOD],
        measure: "length",
        formula: "SUMPRODUCT(grid.ground; grid.area) / pad_area",
      },
    ],
  }
}

/** What cut and fill works at every point of the grid. */
export const cutFillColumns: readonly Column[] = [
  {
    name: "cut",
    label: "Cut",
    why: "How far the ground stands above the formation.",
    sources: [GEOMETRY],
    measure: "length",
    formula: "MAX(0; ground - formation_level)",
  },
  {
    name: "fill",
    label: "Fill",
    why: "How far it lies below.",
    sources: [GEOMETRY],
    measure: "length",
    formula: "MAX(0; formation_level - ground)",
  },
]

/**
 * Soil cut from the high side and put on the low side, for a level formation.
 *
 * Needs: groundGrid with cutFillColumns, ground_high, spoil_loose_factor.
 */
export const cutFill: Section = {
  id: "cut-fill",
  title: "Levelling the soil itself",
  says: "What it would take to cut the soil level instead of making up the slope with stone, by the grid method.",
  entries: [
    {
      kind: "input",
      name: "formation_depth",
      label: "Level soil, below the high corner's ground",
      why: "How far down the soil is cut at the high corner, counted from the grass. Negative: it is raised there.",
      sources: [USER],
      cautions: [
        "Loose fill sinks for years. Nothing that carries a load stands on soil filled in by hand, unless it was tamped in thin layers and somebody qualified says so.",
      ],
      measure: "length",
      default: null,
      blank: "where cut and fill are equal",
      least: "-10 ft",
      most: "10 ft",
    },
    {
      kind: "formula",
      name: "formation_level",
      label: "Level of the soil then",
      why: "As entered, or the mean level of the ground.",
      sources: [BALANCE_LEVEL],
      measure: "length",
      formula: "IFERROR(ground_high - formation_depth; ground_mean)",
    },
    {
      kind: "formula",
      name: "balance_depth",
      label: "Cut and fill are equal at",
      why: "Below the high corner's ground: the mean level. What is cut above it fills exactly what lies below it, as long as soil neither swells nor shrinks.",
      sources: [BALANCE_LEVEL],
      measure: "length",
      formula: "ground_high - ground_mean",
    },
    {
      kind: "formula",
      name: "cut_volume",
      label: "Soil cut, in the ground",
      why: "The depths of cut, each times the area of its point.",
      sources: [GRID_METHOD, STATES_OF_SOIL],
      measure: "volume",
      formula: "SUMPRODUCT(grid.cut; grid.area)",
    },
    {
      kind: "formula",
      name: "fill_volume",
      label: "Fill, tamped",
      why: "The depths of fill, each times the area of its point. Cut and fill are kept apart.",
      sources: [GRID_METHOD, STATES_OF_SOIL],
      measure: "volume",
      formula: "SUMPRODUCT(grid.fill; grid.area)",
    },
    {
      kind: "figure",
      name: "soil_tamped_factor",
      label: "Soil tamps down to",
      why: "Well tamped earth takes less room than it did in the ground: a tenth less. It is a factor, not a loss.",
      sources: [SWELL_FIELD_MANUAL],
      measure: "ratio",
      value: "0.9",
    },
    {
      kind: "formula",
      name: "fill_from_ground",
      label: "Soil that the fill takes, in the ground",
      why: "More than the fill itself, because it is tamped.",
      sources: [STATES_OF_SOIL, SWELL_FIELD_MANUAL],
      measure: "volume",
      formula: "fill_volume / soil_tamped_factor",
    },
    {
      kind: "formula",
      name: "cut_left_over",
      label: "Soil left over, loose",
      why: "What has to be carted away; negative: what has to be brought.",
      sources: [STATES_OF_SOIL],
      measure: "bulk_volume",
      formula: "(cut_volume - fill_from_ground) * spoil_loose_factor",
    },
  ],
}
