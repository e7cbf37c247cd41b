import type { StageNeed } from "@pegbook/engine"
import { CAUTION, consumable, DRIVER, SAW, screwsInto, timberFor, type Work } from "./work.ts"

/** Sheets over joists. */
export const sheetWork: Work = {
  stage: {
    id: "sheets",
    title: "Lay and screw the sheets",
    says: [
      "{sheet_piece_count} pieces in {sheet_row_count} rows, cut from {sheet_count} sheets, with a gap of {sheet_gap} between them.",
      "Seal every edge, cut or not, before the sheet is laid. Screws: {screw_spacing_panel_end} apart at ends and seams, {screw_spacing_panel_field} elsewhere.",
    ],
    hold: "Every seam lies on a joist, and no screw has missed one.",
    checks: ["sheet_seam_check", "sheet_piece_check"],
    needs: [
      { thing: "sheet", amount: "sheet_count" },
      screwsInto(
        "screws",
        "sheet end or seam, on a joist",
        "sheet on the joists between",
        "sheet's long edge, between two joists",
      ),
      consumable("tin of edge sealer"),
    ],
    tools: ["saw", "drill-driver", "chalk line", "tape"],
    cautions: [
      CAUTION.lift,
      CAUTION.eyes,
      CAUTION.treated,
      CAUTION.power,
      "Wind takes a sheet out of your hands.",
    ],
    waits: ["The sealer on the edges dries before they are covered, as its tin says."],
    weather: "Dry sheets only, on a day without much wind.",
    safeStop: "Cover the sheets until the surface is on.",
  },
  rate: { of: "a piece of sheet", number: "sheet_piece_count", each: "35 min", people: 2 },
  tools: [SAW, DRIVER],
}

/** Decking boards; `joints` as the table of fixings calls them. */
export function boardWork(...joints: readonly string[]): Work {
  return {
    stage: {
      id: "boards",
      title: "Lay the boards",
      says: [
        "{board_rows} rows of {board_size}, with a gap of {board_gap}. Measure what is left every few rows, so that the last comes out at {board_last_width}.",
        "Joints of neighbouring rows stand {board_joint_stagger} apart or more, each on timber.",
      ],
      hold: "Rows run parallel to the edge; every cut end is brushed.",
      checks: ["board_last_row_check", "board_gap_check"],
      needs: [timberFor("boards", "board", "spare board"), screwsInto("screws", ...joints)],
      tools: ["saw", "drill-driver", "spacers", "string", "lever for crooked boards"],
      cautions: [CAUTION.eyes, CAUTION.treated, CAUTION.power],
      weather: "Gaps are for boards as wet or dry as entered: wet boards shrink apart later.",
      safeStop: "After any whole row.",
    },
    rate: { of: "a row of boards", number: "board_rows", each: "20 min", people: 1 },
    tools: [SAW, DRIVER],
  }
}

/** Hard tiles that click together, loose on the sheets. */
export const tileWork: Work = {
  stage: {
    id: "tiles",
    title: "Lay the tiles",
    says: [
      "{tile_columns} by {tile_row_count} tiles, {tile_count} in all. Start {tile_start}, and keep {tile_edge_gap_hot} free at the edge: in the heat the floor grows by {tile_growth_length}.",
      "Cut tiles last, {tile_cut_count} of them.",
    ],
    hold: "The floor lies loose: nothing is screwed through it.",
    checks: ["tile_fit_check"],
    needs: [{ thing: "tile", amount: "tile_count" }],
    tools: ["rubber hammer", "fine saw", "knee pads"],
    cautions: ["Tiles in the sun burn bare skin, and wet ones are slippery.", CAUTION.eyes],
    weather: "Lay them near {lay_temperature}, or allow for what is missing.",
    safeStop: "After any whole row.",
  },
  rate: { of: "a tile", number: "tile_count", each: "1 min", people: 1 },
  tools: [],
}

/** Boards along the edge. `parts` of the cutting plan. */
export function edgeWork(parts: readonly string[], ...more: readonly StageNeed[]): Work {
  return {
    stage: {
      id: "edges",
      title: "Fix the edge boards",
      says: ["{edging_length} of edge boards go round, in the pieces below. Ends meet over timber."],
      needs: [timberFor("edge boards", ...parts), ...more],
      tools: ["saw", "drill-driver", "clamps"],
      cautions: [CAUTION.eyes, CAUTION.treated, CAUTION.power],
      safeStop: "After any side.",
    },
    rate: { of: "a piece", number: "COUNT(edge_pieces.length)", each: "20 min", people: 2 },
    tools: [SAW, DRIVER],
  }
}
