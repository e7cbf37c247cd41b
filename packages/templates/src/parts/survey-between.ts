import type { Entry, TableEntry } from "@pegbook/engine"
import { GROUND_READS, solveGroundAt, solveNeighbours } from "../solvers/ground.ts"
import { ARITHMETIC, COMMON_PRACTICE, PLANE_FIT, TRIANGLES, USER } from "../sources.ts"

/** Which shape is laid through the surveyed levels: one plane, or triangles from point to point. */
export const groundModel: readonly Entry[] = [
  {
    kind: "input",
    name: "ground_model",
    label: "Shape of the ground",
    why: "One even plane smooths out stones and tufts; between points follows every hump and hollow that you measured. Automatic takes the plane while every point is near it.",
    sources: [USER, PLANE_FIT, TRIANGLES],
    measure: "text",
    default: "automatic",
    choices: ["automatic", "plane", "between points"],
  },
  {
    kind: "input",
    name: "ground_plane_tolerance",
    label: "A plane will do up to",
    why: "Grass, a boot heel and a hand-held level make about an inch between them; a point further than this from the plane is a real hump or hollow.",
    sources: [USER, COMMON_PRACTICE],
    measure: "length",
    default: "1 in",
    least: "0 in",
    most: "2 ft",
  },
  {
    kind: "formula",
    name: "ground_between_points",
    label: "Between points in use?",
    why: "Yes: the ground at every place is read from the triangle of levels round it. No: from one plane. Three points are a plane already; only a fourth can show that the ground is not one.",
    sources: [ARITHMETIC, TRIANGLES],
    measure: "yes_no",
    formula:
      'AND(levels_in_use; INDEX(ground_plane.points; 1) > 3; OR(ground_model = "between points"; AND(ground_model = "automatic"; INDEX(ground_plane.off_plane; 1) > ground_plane_tolerance)))',
  },
  {
    kind: "figure",
    name: "levels_apart_least",
    label: "Levels nearer than this are one point",
    why: "Two levels at one place contradict each other, and a slip between them tilts the ground steeply.",
    sources: [COMMON_PRACTICE],
    measure: "length",
    value: "3 in",
  },
  {
    kind: "table",
    name: "level_neighbours",
    label: "Nearest point to each point",
    why: "Shows whether a point was entered twice, and where the survey is thin.",
    sources: [ARITHMETIC],
    rows: {
      kind: "solved",
      from: ["ground_levels.x", "ground_levels.y", "ground_levels.level", "levels_apart_least"],
      solve: solveNeighbours,
    },
    columns: [
      {
        name: "point",
        label: "Point",
        why: "The row of the surveyed levels.",
        sources: [ARITHMETIC],
        measure: "count",
      },
      {
        name: "nearest",
        label: "Nearest point",
        why: "The row of the point nearest to it.",
        sources: [ARITHMETIC],
        measure: "count",
      },
      {
        name: "apart",
        label: "Apart",
        why: "From the one to the other, level.",
        sources: [ARITHMETIC],
        measure: "length",
      },
      {
        name: "repeats",
        label: "Repeats an earlier point",
        why: "1 where an earlier point stands at the same place.",
        sources: [ARITHMETIC],
        measure: "count",
      },
    ],
  },
  {
    kind: "check",
    name: "levels_apart_check",
    label: "Has every level a place of its own?",
    why: "Two levels at one place cannot both be right. Held against each other: the points at a place of their own, and all points.",
    sources: [ARITHMETIC],
    measure: "count",
    demand: "MAX(1; INDEX(ground_plane.points; 1) - SUM(level_neighbours.repeats))",
    limit: "MAX(1; INDEX(ground_plane.points; 1))",
    sense: "at_least",
    advice: [
      "Delete one of each pair of points that stand nearer than {levels_apart_least} to one another, or correct where it stands. The table of nearest points shows which.",
    ],
  },
]

/**
 * Ground at every row of a table that has columns x and y, for use while the ground is read between points.
 * Stands beside that table, whose ground column is `groundFormula(table)`.
 */
export function groundAt(table: string, where: string): TableEntry {
  return {
    kind: "table",
    name: `ground_at_${table}`,
    label: `Ground at ${where}, between points`,
    why: "Read from the triangle of surveyed levels round each place. Empty while the plane is in use.",
    sources: [TRIANGLES],
    rows: {
      kind: "solved",
      from: [...GROUND_READS, `${table}.x`, `${table}.y`],
      solve: solveGroundAt(table),
    },
    columns: [
      {
        name: "level",
        label: "Ground",
        why: "Level of the ground there, up positive, one row for each row of the other table.",
        sources: [TRIANGLES],
        measure: "length",
      },
    ],
  }
}

/** The ground column of a table that has `groundAt` beside it: between points where that is in use, else the plane. */
export function groundFormula(table: string): string {
  return `IF(ground_between_points; INDEX(ground_at_${table}.level; ROW()); ground_origin - x * ground_slope_length - y * ground_slope_width)`
}
