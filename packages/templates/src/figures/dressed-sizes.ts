import type { TableEntry } from "@pegbook/engine"
import { CSA_O141, EN_1313_1, PS_20 } from "../sources.ts"
import { METRIC_DECKING } from "../sources-walk.ts"

/** One size of timber: what it is called, what it measures, and who says so. */
type Size = readonly [nominal: string, thickness: string, depth: string, standard: string]

const SIZES: readonly Size[] = [
  ["1x4", "0.75 in", "3.5 in", "PS 20, dry"],
  ["1x6", "0.75 in", "5.5 in", "PS 20, dry"],
  ["1x8", "0.75 in", "7.25 in", "PS 20, dry"],
  ["1x10", "0.75 in", "9.25 in", "PS 20, dry"],
  ["1x12", "0.75 in", "11.25 in", "PS 20, dry"],
  ["5/4x6", "1 in", "5.5 in", "PS 20, dry"],
  ["2x2", "1.5 in", "1.5 in", "PS 20, dry"],
  ["2x3", "1.5 in", "2.5 in", "PS 20, dry"],
  ["2x4", "1.5 in", "3.5 in", "PS 20, dry"],
  ["2x6", "1.5 in", "5.5 in", "PS 20, dry"],
  ["2x8", "1.5 in", "7.25 in", "PS 20, dry"],
  ["2x10", "1.5 in", "9.25 in", "PS 20, dry"],
  ["2x12", "1.5 in", "11.25 in", "PS 20, dry"],
  ["3x6", "2.5 in", "5.5 in", "PS 20, dry"],
  ["3x8", "2.5 in", "7.25 in", "PS 20, dry"],
  ["3x10", "2.5 in", "9.25 in", "PS 20, dry"],
  ["3x12", "2.5 in", "11.25 in", "PS 20, dry"],
  ["4x4", "3.5 in", "3.5 in", "PS 20, dry"],
  ["4x6", "3.5 in", "5.5 in", "PS 20, dry"],
  ["4x8", "3.5 in", "7.25 in", "PS 20, dry"],
  ["4x10", "3.5 in", "9.25 in", "PS 20, dry"],
  ["4x12", "3.5 in", "11.25 in", "PS 20, dry"],
  ["6x6", "5.5 in", "5.5 in", "PS 20, green"],
  ["6x8", "5.5 in", "7.25 in", "PS 20, green"],
  ["6x10", "5.5 in", "9.25 in", "PS 20, green"],
  ["19x89", "19 mm", "89 mm", "CSA O141, from memory"],
  ["19x140", "19 mm", "140 mm", "CSA O141, from memory"],
  ["38x89", "38 mm", "89 mm", "CSA O141, from memory"],
  ["38x140", "38 mm", "140 mm", "CSA O141, from memory"],
  ["38x184", "38 mm", "184 mm", "CSA O141, from memory"],
  ["38x235", "38 mm", "235 mm", "CSA O141, from memory"],
  ["38x286", "38 mm", "286 mm", "CSA O141, from memory"],
  ["89x89", "89 mm", "89 mm", "CSA O141, from memory"],
  ["89x140", "89 mm", "140 mm", "CSA O141, from memory"],
  ["140x140", "140 mm", "140 mm", "CSA O141, from memory"],
  ["22x100", "22 mm", "100 mm", "EN 1313-1, from memory"],
  ["22x150", "22 mm", "150 mm", "EN 1313-1, from memory"],
  ["47x50", "47 mm", "50 mm", "EN 1313-1, from memory"],
  ["47x100", "47 mm", "100 mm", "EN 1313-1, from memory"],
  ["47x125", "47 mm", "125 mm", "EN 1313-1, from memory"],
  ["47x150", "47 mm", "150 mm", "EN 1313-1, from memory"],
  ["47x175", "47 mm", "175 mm", "EN 1313-1, from memory"],
  ["47x200", "47 mm", "200 mm", "EN 1313-1, from memory"],
  ["47x225", "47 mm", "225 mm", "EN 1313-1, from memory"],
  ["75x150", "75 mm", "150 mm", "EN 1313-1, from memory"],
  ["75x200", "75 mm", "200 mm", "EN 1313-1, from memory"],
  ["100x100", "100 mm", "100 mm", "EN 1313-1, from memory"],
  ["100x150", "100 mm", "150 mm", "EN 1313-1, from memory"],
  ["100x200", "100 mm", "200 mm", "EN 1313-1, from memory"],
  ["150x150", "150 mm", "150 mm", "EN 1313-1, from memory"],
  ["28x95", "28 mm", "95 mm", "metric decking, from memory"],
  ["28x120", "28 mm", "120 mm", "metric decking, from memory"],
  ["28x145", "28 mm", "145 mm", "metric decking, from memory"],
  ["34x145", "34 mm", "145 mm", "metric decking, from memory"],
]

/** Sizes in the table whose thickness and depth make them fit for a use: `sizesFrom("2x", "38x", "47x")`. */
export function sizesFrom(...beginnings: readonly string[]): readonly string[] {
  return SIZES.map(([nominal]) => nominal).filter((nominal) =>
    beginnings.some((beginning) => nominal.startsWith(beginning)),
  )
}

/** The actual sizes of timber, by the name it is sold under. */
export const dressedSizes: TableEntry = {
  kind: "table",
  name: "dressed_sizes",
  label: "Actual sizes of timber",
  why: "A 2x6 is not 2 by 6: it is planed after it was named. Counts and heights go by the actual size.",
  sources: [PS_20, CSA_O141, EN_1313_1, METRIC_DECKING],
  rows: { kind: "figures" },
  columns: [
    {
      name: "nominal",
      label: "Sold as",
      why: "The name on the rack; in inches the size before planing, in millimetres the actual one.",
      sources: [PS_20, CSA_O141, EN_1313_1, METRIC_DECKING],
      measure: "text",
      values: SIZES.map(([nominal]) => nominal),
    },
    {
      name: "thickness",
      label: "Thickness",
      why: "The narrow side, as you would measure it.",
      sources: [PS_20, CSA_O141, EN_1313_1, METRIC_DECKING],
      measure: "length",
      values: SIZES.map(([, thickness]) => thickness),
    },
    {
      name: "depth",
      label: "Depth",
      why: "The wide side; it stands upright in a joist or a skid.",
      sources: [PS_20, CSA_O141, EN_1313_1, METRIC_DECKING],
      measure: "length",
      values: SIZES.map(([, , depth]) => depth),
    },
    {
      name: "standard",
      label: "Who says so",
      why: "Which standard gives the row's size, and whether it was read or recalled.",
      sources: [PS_20, CSA_O141, EN_1313_1, METRIC_DECKING],
      measure: "text",
      values: SIZES.map(([, , , standard]) => standard),
    },
  ],
}
