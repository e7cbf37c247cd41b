import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { sizesFrom } from "../figures/dressed-sizes.ts"
import { BOARDS_ON_JOISTS } from "../parts/board-bearers.ts"
import { BOARD_SIZES } from "../parts/board-rows.ts"
import { boardsOn } from "../parts/boards.ts"

/** Boards of the floor, with a choice of metric decking as well. */
export const boards: Section = adapt(boardsOn(BOARDS_ON_JOISTS), {
  choices: { board_size: [...sizesFrom("28x", "34x"), ...BOARD_SIZES] },
  labels: { board_overhang: "Boards beyond the long edges" },
  whys: {
    board_size: "What it is called in the shop. In millimetres the name is the real size.",
    board_gap:
      "Plants are watered above: water and soil fall through the gap. Boards that are laid wet shrink and open it.",
    board_overhang: "None where the greenhouse's base stands at the edge.",
  },
  defaults: {
    board_size: "28x120",
    board_gap: "7 mm",
    board_overhang: "0 mm",
    board_width_least: "50 mm",
    board_end_overhang: "0 mm",
    board_stock: "3.0 m, 3.6 m, 4.2 m, 4.8 m, 5.4 m, 6.0 m",
    board_joint_stagger: "400 mm",
    board_piece_min: "1.2 m",
  },
})
