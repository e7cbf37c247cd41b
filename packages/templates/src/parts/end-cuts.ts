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
    kind: "table",
    name: "field_preservatives",
    label: "Preservative for cut ends",
    rows: { kind: "figures" },
    why: "What the standard takes for cuts. Borate only for what stays off the ground and dry.",
    sources: [FIELD_PRESERVATIVE],
    columns: [
      {
        name: "preservative",
        label: "Preservative",
        measure: "text",
        values: ["copper naphthenate", "copper naphthenate, where the stronger is not to be had"],
        why: "The usual one for cuts; its name is on the tin.",
        sources: [FIELD_PRESERVATIVE],
      },
      {
        name: "copper",
        label: "Copper in it, at least",
        measure: "share",
        values: ["2 %", "1 %"],
        why: "It is on the tin as well.",
        sources: [FIELD_PRESERVATIVE],
      },
    ],
  },
  {
    kind: "table",
    name: "preservative_coverage",
    label: "How far preservative goes",
    rows: { kind: "figures" },
    why: "One coat. Another sheet gives a little more for smooth wood; these are the safer figures.",
    sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
    columns: [
      {
        name: "wood",
        label: "Wood",
        measure: "text",
        values: ["rough, and end grain", "smooth"],
        why: "End grain drinks as much as rough wood.",
        sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
      },
      {
        name: "measure",
        label: "So much preservative",
        measure: "volume",
        values: ["1 gal", "1 gal"],
        why: "The area beside it is for this much.",
        sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
      },
      {
        name: "covers",
        label: "Covers",
        measure: "area",
        values: ["100 ft2", "200 ft2"],
        why: "One coat.",
        sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
      },
      {
        name: "brushed",
        label: "To brush here",
        measure: "area",
        formula: 'IF(wood = "smooth"; sawn_face_area; end_cut_area)',
        why: "The cut ends, and what else the saw left bare.",
        sources: [GEOMETRY],
      },
      {
        name: "takes",
        label: "Takes, all coats",
        measure: "volume",
        formula: "preservative_coats * measure * brushed / covers",
        why: "Before what stays in the brush.",
        sources: [BRUSH_COVERAGE, BRUSH_COVERAGE_TYPICAL],
      },
    ],
  },
  {
    kind: "formula",
    name: "preservative_volume",
    label: "Preservative",
    measure: "volume",
    formula: "SUM(preservative_coverage.takes)",
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
