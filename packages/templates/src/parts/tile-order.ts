import type { Entry } from "@pegbook/engine"
import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

/** Tiles to buy: spare ones, and how many of each colour. */
export const tileOrder: readonly Entry[] = [
  {
    kind: "input",
    name: "spare_tiles",
    label: "Spare tiles",
    measure: "share",
    default: "5 %",
    least: "0 %",
    most: "100 %",
    why: "For tiles that break, now and in some years, when the colour may no longer be made.",
    sources: [USER, practice("a few tiles in a hundred")],
  },
  {
    kind: "input",
    name: "tile_pattern",
    label: "Pattern",
    measure: "text",
    default: "one colour",
    choices: ["one colour", "chequered in two colours", "border in a second colour"],
    why: "Every colour is bought with a spare of its own: a red tile does not mend a blue floor.",
    sources: [USER],
  },
  {
    kind: "formula",
    name: "tile_border_count",
    label: "Tiles in the outermost ring",
    measure: "count",
    formula: "tile_count - MAX(0; tile_columns - 2) * MAX(0; tile_row_count - 2)",
    why: "All of them, less what lies inside the ring.",
    sources: [GEOMETRY],
  },
  {
    kind: "formula",
    name: "tile_second_count",
    label: "Tiles of the second colour",
    measure: "count",
    formula:
      'IF(tile_pattern = "chequered in two colours"; ROUNDDOWN(tile_count / 2; 0); IF(tile_pattern = "border in a second colour"; tile_border_count; 0))',
    why: "Every other tile, or the ring round the edge.",
    sources: [GEOMETRY],
  },
  {
    kind: "table",
    name: "tile_colours",
    label: "Tiles by colour",
    rows: { kind: "figures" },
    why: "What to order of each colour, the spare rounded up for each.",
    sources: [GEOMETRY],
    columns: [
      {
        name: "colour",
        label: "Colour",
        measure: "text",
        values: ["first colour", "second colour"],
        why: "Name them as you like; a chequered floor begins with the first in its corner.",
        sources: [USER],
      },
      {
        name: "in_floor",
        label: "In the floor",
        measure: "count",
        formula: 'IF(colour = "first colour"; tile_count - tile_second_count; tile_second_count)',
        why: "Cut tiles count as whole ones.",
        sources: [GEOMETRY],
      },
      {
        name: "spare",
        label: "Spare",
        measure: "count",
        formula: "MAX(0; ROUNDUP(in_floor * (1 + spare_tiles) - rounding_tolerance; 0) - in_floor)",
        why: "The share above, of this colour, rounded up.",
        sources: [USER],
      },
      {
        name: "to_buy",
        label: "To buy",
        measure: "count",
        formula: "in_floor + spare",
        why: "In the floor and spare.",
        sources: [GEOMETRY],
      },
    ],
  },
  {
    kind: "formula",
    name: "tiles_to_buy",
    label: "Tiles to buy",
    measure: "count",
    formula: "SUM(tile_colours.to_buy)",
    why: "All colours, each with its own spare, rounded up once a colour.",
    sources: [GEOMETRY],
  },
]
