import { GEOMETRY, USER } from "../sources.ts"
import { DECK_SCREWS } from "../sources-deck.ts"
import type { BoardBearers } from "./board-bearers.ts"
import type { JointGroup } from "./fixings.ts"

/** Boards on what they lie across. Needs: what the bearers name, board_rows, board_joint_count, board_thickness. */
export function boardScrewsOn({ noun, nouns, count }: BoardBearers): JointGroup {
  return {
    entries: [
      {
        kind: "input",
        name: "screws_per_crossing",
        label: `Screws where a board crosses a ${noun}`,
        measure: "count",
        default: "2",
        least: "1",
        most: "4",
        why: "One near either edge of the board: it cannot cup, and no one trips on it.",
        sources: [USER, DECK_SCREWS],
      },
      {
        kind: "formula",
        name: "crossing_count",
        label: `Crossings of boards and ${nouns}`,
        measure: "count",
        formula: `board_rows * ${count} + board_joint_count`,
        why: `Every row crosses every ${noun}, the outer ones too. Where two boards meet, both ends are screwed down, which is one crossing more.`,
        sources: [GEOMETRY],
      },
    ],
    joints: [
      {
        joint: `board on a ${noun}`,
        screw: "surface screws",
        places: "crossing_count",
        each: "screws_per_crossing",
        through: "board_thickness",
      },
    ],
  }
}
