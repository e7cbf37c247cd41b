import type { Entry, Solution, SolverGiven } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, PS_20, USER } from "../sources.ts"
import { BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL, FIELD_CUTS, FIELD_PRESERVATIVE } from "../sources-frame.ts"

/** Counts the ends that a cut made, board by board of the cutting plan: rows of size, pieces, ends. */
export function solveEndCuts(given: SolverGiven): Solution {
  const boards = given.column("cut_plan.board")
  const sizes = given.column("cut_plan.size").map(String)
  const left = given.column("cut_plan.left").map(Number)
  const trimmed = given.number("end_trim") > 0
  const bySize = new Map<string, { pieces: number; ends: number }>()
  for (const [at, size] of sizes.entries()) {
    const startsBoard = boards[at - 1] !== boards[at]
    const endsBoard = boards[at + 1] !== boards[at] && (left[at] ?? 0) <= 0
    const asSold = trimmed ? 0 : Number(startsBoard) + Number(endsBoard)
    const { pieces, ends } = bySize.get(size) ?? { pieces: 0, ends: 0 }
    bySize.set(size, { pieces: pieces + 1, ends: ends + 2 - asSold })
  }
  return {
    rows: [...bySize].map(([size, counted]) => ({ size, ...counted })),
    report: { method: "two ends a piece, less those that came from the treater", unmet: [] },
  }
}

/**
 * The ends that the saw leaves bare, and the preservative for them. An end that left the treater as it is needs none.
 *
 * Needs: cut_plan, end_trim, dressed_sizes. Gives end_cut_count, preservative_volume.
 */
export const endCuts: readonly Entry[] = [
  {
    kind: "table",
    name: "end_cuts",
    label: "Cut ends, size by size",
    rows: {
      kind: "solved",
      from: ["cut_plan.board", "cut_plan.size", "cut_plan.left", "end_trim"],
      solve: solveEndCuts,
    },
    why: "The treatment goes in from outside and seldom reaches the core: every cut lays it bare.",
    sources: [FIELD_CUTS],
    columns: [
      {
        name: "size",
        label: "Size",
        measure: "text",
        why: "The size that the plan cuts.",
        sources: [GEOMETRY],
      },
      {
        name: "pieces",
        label: "Pieces",
        measure: "count",
        why: "In the cutting plan.",
        sources: [GEOMETRY],
      },
      {
        name: "ends",
        label: "Cut ends",
        measure: "count",
        why: "Two a piece, less those that no saw has touched: a board's own first end, and its last where nothing is left over. Where ends are trimmed, all of them.",
        sources: [GEOMETRY],
      },
      {
        name: "face",
        label: "One end's area",
        measure: "area",
        formula:
          "INDEX(dressed_sizes.thickness; MATCH(size; dressed_sizes.nominal; 0)) * INDEX(dressed_sizes.depth; MATCH(size; dressed_sizes.nominal; 0))",
        why: "Thickness times depth, by the real size.",
        sources: [PS_20],
      },
    ],
  },
  {
    kind: "formula",
    name: "end_cut_count",
    label: "Cut ends to brush",
    measure: "count",
    formula: "SUM(end_cuts.ends)",
    why: "Over all pieces of timber. Brush holes and notches as well.",
    sources: [FIELD_CUTS, GEOMETRY],
    cautions: [
      "Preservative harms skin and eyes and may burn: gloves and goggles, in the open air, away from flames, and nothing into drains or soil. Follow the label.",
    ],
  },
  {
    kind: "formula",
    name: "end_cut_area",
    label: "Area of the cut ends",
    measure: "area",
    formula: "SUMPRODUCT(end_cuts.ends; end_cuts.face)",
    why: "End grain drinks: it takes as much as rough wood.",
    sources: [GEOMETRY],
  },
  {
    kind: "input",
    name: "sawn_face_area",
    label: "Other bare faces to brush",
    measure: "area",
    default: "0 ft2",
    least: "0 ft2",
    most: "1000 ft2",
    why: "The long faces of pieces that were ripped lengthwise, for one.",
    sources: [USER, FIELD_CUTS],
  },
  {
    kind: "input",
    name: "preservative_coats",
    label: "Coats",
    measure: "count",
    default: "2",
    least: "1",
    most: "5",
    why: "The sheet that gives the coverage asks for two, a day apart. Yours may say otherwise.",
    sources: [BRUSH_COVERAGE, USER],
  },
  {
    kind: "figure",
    name: "preservative_copper",
    label: "Copper in the preservative",
    measure: "share",
    value: "2 %",
    why: "Of copper naphthenate, the usual one for cuts; 1 % where that is not to be had. Borate only for what stays off the ground and dry.",
    sources: [FIELD_PRESERVATIVE],
  },
  {
    kind: "figure",
    name: "preservative_measure",
    label: "Coverage is given for",
    measure: "volume",
    value: "1 gal",
    why: "The two areas below are for this much.",
    sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
  },
  {
    kind: "figure",
    name: "preservative_covers_rough",
    label: "Covers of rough wood and end grain",
    measure: "area",
    value: "100 ft2",
    why: "One coat.",
    sources: [BRUSH_COVERAGE],
  },
  {
    kind: "figure",
    name: "preservative_covers_smooth",
    label: "Covers of smooth wood",
    measure: "area",
    value: "200 ft2",
    why: "One coat. Another sheet gives a little more; this is the safer figure.",
    sources: [BRUSH_COVERAGE_TYPICAL, BRUSH_COVERAGE],
  },
  {
    kind: "formula",
    name: "preservative_volume",
    label: "Preservative",
    measure: "volume",
    formula:
      "preservative_coats * preservative_measure * (end_cut_area / preservative_covers_rough + sawn_face_area / preservative_covers_smooth)",
    why: "All coats, before what stays in the brush.",
    sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
  },
  {
    kind: "input",
    name: "preservative_tin",
    label: "One tin holds",
    measure: "volume",
    default: "1 L",
    least: "0.05 L",
    most: "100 L",
    why: "The size that your shop sells.",
    sources: [USER],
  },
  {
    kind: "formula",
    name: "preservative_tins",
    label: "Tins of preservative",
    measure: "count",
    formula: "MAX(0; ROUNDUP(preservative_volume / preservative_tin - rounding_tolerance; 0))",
    why: "Whole tins.",
    sources: [ARITHMETIC],
  },
]
