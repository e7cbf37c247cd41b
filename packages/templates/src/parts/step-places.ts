import type { Section, TableEntry } from "@pegbook/engine"
import { column } from "../columns.ts"
import { GEOMETRY } from "../sources.ts"
import { treadDepth } from "./steps.ts"

/** Where steps stand of which a workbook counts only the risers. Needs climbs, tread_depth. */
export const stepPlaces: TableEntry = {
  kind: "table",
  name: "step_places",
  label: "Where the steps stand",
  why: "So that the ground beside the platform is kept free for them, and so that they can be drawn.",
  sources: [GEOMETRY],
  rows: { kind: "formula", formula: "COUNT(climbs.rise)" },
  columns: [
    column("end", "Side", "text", "INDEX(climbs.end; ROW())", "Each side has its own steps.", GEOMETRY),
    column("at_end", "At a short side", "yes_no", "ROW() <= 2", "The first two are the ends.", GEOMETRY),
    column(
      "treads",
      "Treads",
      "count",
      "INDEX(climbs.treads; ROW())",
      "One less than risers; none where none are wanted.",
      GEOMETRY,
    ),
    column(
      "riser_height",
      "Riser",
      "length",
      "INDEX(climbs.riser_height; ROW())",
      "All of one flight alike.",
      GEOMETRY,
    ),
    column(
      "x",
      "Begins, along the length",
      "length",
      "IF(at_end; INDEX(climbs.x; ROW()); 0)",
      "At the edge of the platform.",
      GEOMETRY,
    ),
    column(
      "y",
      "Begins, across the width",
      "length",
      "IF(ROW() = 4; platform_width; 0)",
      "At the edge of the platform.",
      GEOMETRY,
    ),
    column(
      "outward_x",
      "A tread goes on by, along the length",
      "length",
      "IF(at_end; IF(x = 0; -tread_depth; tread_depth); 0)",
      "Away from the platform.",
      GEOMETRY,
    ),
    column(
      "outward_y",
      "A tread goes on by, across the width",
      "length",
      "IF(at_end; 0; IF(y = 0; -tread_depth; tread_depth))",
      "Away from the platform.",
      GEOMETRY,
    ),
  ],
}

/** A part of heights, with the places of its steps. */
export function withStepPlaces(heights: Section): Section {
  return { ...heights, entries: [...heights.entries, treadDepth, stepPlaces] }
}
