import type { Section } from "@pegbook/engine"
import type { BoardBearers } from "./board-bearers.ts"
import { boardGaps } from "./board-gaps.ts"
import { boardPieces } from "./board-pieces.ts"
import { boardRows } from "./board-rows.ts"
import { boardSpan } from "./board-span.ts"

/**
 * Boards laid side by side over joists or stringers: rows, gaps, pieces and joints.
 *
 * Needs: what the bearers name, dressed_sizes, the wood, live_load, end_trim, rounding_tolerance, near_limit_share.
 */
export function boardsOn(bearers: BoardBearers): Section {
  return {
    id: "boards",
    title: "Boards",
    says: `The boards to walk on, across the ${bearers.nouns}: how many rows, what is left for the last one, and how far the gaps open.`,
    entries: [...boardRows(bearers), ...boardGaps, ...boardPieces(bearers), ...boardSpan(bearers)],
  }
}
