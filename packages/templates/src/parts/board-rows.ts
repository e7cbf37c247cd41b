import type { Entry } from "@pegbook/engine"
import { sizesFrom } from "../figures/dressed-sizes.ts"
import { ARITHMETIC, GEOMETRY, PS_20, USER } from "../sources.ts"
import { GAP_LAID_DRY } from "../sources-deck.ts"
import { practice } from "../sources-frame.ts"
import type { BoardBearers } from "./board-bearers.ts"

/** Sizes that are sold to be walked on. */
export const BOARD_SIZES = sizesFrom(
  "1x",
  "5/4",
  "2x4",
  "2x6",
  "19x",
  "22x",
  "38x89",
  "38x140",
  "47x100",
  "47x150",
)

const dressed = (column: "thickness" | "depth"): string =>
  `INDEX(dressed_sizes.${column}; MATCH(board_size; dressed_sizes.nominal; 0))`

/** How many rows of boards, and where they lie. Needs: what the bearers name, dressed_sizes, rounding_tolerance. */
export function boardRows({ across }: BoardBearers): readonly Entry[] {
  return [
    {
      kind: "input",
      name: "board_size",
      label: "Board size",
      measure: "text",
      default: "5/4x6",
      choices: BOARD_SIZES,
      why: "What it is called in the shop. A 5/4x6 is a board of full inch with rounded edges, made to be walked on.",
      sources: [USER],
      cautions: [
        "Decking is treated too: mask, goggles and gloves when you saw it, and never burn the off-cuts.",
      ],
    },
    {
      kind: "formula",
      name: "board_thickness",
      label: "Board thickness, real",
      measure: "length",
      formula: dressed("thickness"),
      why: "Part of the height, and what carries you from one support to the next.",
      sources: [PS_20],
    },
    {
      kind: "formula",
      name: "board_width",
      label: "Board width, real",
      measure: "length",
      formula: dressed("depth"),
      why: "The face that covers the ground. It is less than the name says, and rows counted by the name come out too few.",
      sources: [PS_20],
    },
    {
      kind: "input",
      name: "board_gap",
      label: "Gap between boards, as laid",
      measure: "length",
      default: "1/8 in",
      least: "0 in",
      most: "1 in",
      why: "Water and dirt fall through the gap. Boards that are laid wet shrink and open it; dry ones need it from the start.",
      sources: [USER, GAP_LAID_DRY],
    },
    {
      kind: "input",
      name: "board_overhang",
      label: "Boards beyond the long edges",
      measure: "length",
      default: "1 in",
      least: "0 in",
      most: "3 in",
      why: "A small overhang lets water drip off free of the rim.",
      sources: [USER, practice("an inch or so of overhang")],
    },
    {
      kind: "formula",
      name: "board_cover_width",
      label: "Width to cover",
      measure: "length",
      formula: `${across} + 2 * board_overhang`,
      why: "The frame, and the overhang at both of its edges.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "board_rows",
      label: "Rows of boards",
      measure: "count",
      formula:
        "MAX(0; ROUNDUP((board_cover_width + board_gap) / (board_width + board_gap) - rounding_tolerance; 0))",
      why: "A row takes its board and a gap; the last row has no gap after it. An exact fit takes no row more.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "board_overhang_laid",
      label: "Overhang with whole boards",
      measure: "length",
      formula: `(board_rows * board_width + (board_rows - 1) * board_gap - ${across}) / 2`,
      why: "What whole boards leave beyond each long edge, shared evenly. Not enough? Then the last board is sawn.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "board_last_width",
      label: "Last board, if sawn to the overhang",
      measure: "length",
      formula: "board_cover_width - (board_rows - 1) * (board_width + board_gap)",
      why: "What is left for the last row when the overhang is kept to the letter. Nothing, or less: the last row only fills a gap.",
      sources: [GEOMETRY],
    },
    {
      kind: "input",
      name: "board_width_least",
      label: "Narrowest board worth laying",
      measure: "length",
      default: "2 in",
      least: "0.5 in",
      most: "6 in",
      why: "A sliver splits at its screws, and it lies at the edge, where people step.",
      sources: [USER, practice("no slivers at an edge")],
    },
    {
      kind: "formula",
      name: "board_rows_fitted",
      label: "Whole rows that nearly fit",
      measure: "count",
      formula:
        "MAX(2; MIN(ROUND((board_cover_width + board_gap) / (board_width + board_gap); 0); ROUNDDOWN(board_cover_width / board_width; 0)))",
      why: "An offer: the number of whole boards nearest to your gap. Nothing is counted by it unless you change the gap.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "board_gap_fitted",
      label: "Gap that fits them",
      measure: "length",
      formula: "(board_cover_width - board_rows_fitted * board_width) / (board_rows_fitted - 1)",
      why: "With this gap the whole boards cover the width exactly. Enter it as the gap to take the offer.",
      sources: [GEOMETRY],
    },
    {
      kind: "check",
      name: "board_last_row_check",
      label: "Is the last row wide enough?",
      measure: "length",
      demand: "board_last_width",
      limit: "board_width_least",
      sense: "at_least",
      why: "A last row without width, or a sliver, is a board bought for nothing.",
      sources: [GEOMETRY, practice("no slivers at an edge")],
      advice: [
        "A gap of {board_gap_fitted} fits {board_rows_fitted} whole rows exactly; check that it is a gap you want.",
        "Or let whole boards overhang {board_overhang_laid} at each long edge, or saw the first and the last board alike.",
      ],
    },
    {
      kind: "table",
      name: "boards",
      label: "Each row of boards",
      rows: { kind: "formula", formula: "board_rows" },
      why: "Marks for the rows, whole boards. Check every fifth row against them: small errors in the gap add up.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "number",
          label: "Row",
          measure: "count",
          formula: "ROW()",
          why: "Counted from the first edge.",
          sources: [ARITHMETIC],
        },
        {
          name: "from",
          label: "From",
          measure: "length",
          formula: "(number - 1) * (board_width + board_gap) - board_overhang_laid",
          why: "Near edge of the board, from the frame's edge. Less than nothing is beyond the frame.",
          sources: [GEOMETRY],
        },
        {
          name: "centre",
          label: "Middle",
          measure: "length",
          formula: "from + board_width / 2",
          why: "Middle of the board.",
          sources: [GEOMETRY],
        },
        {
          name: "to",
          label: "To",
          measure: "length",
          formula: "from + board_width",
          why: "Far edge of the board.",
          sources: [GEOMETRY],
        },
      ],
    },
  ]
}
