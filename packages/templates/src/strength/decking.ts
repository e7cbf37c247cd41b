import type { Section } from "@pegbook/engine"
import { USER } from "../sources.ts"
import { DECKING_SPACING } from "../sources-strength.ts"
import { figureTable } from "./figure-table.ts"

const KINDS = ["5/4 boards", "2 in boards", "plastic composite"] as const

/**
 * How far apart joists may lie under deck boards.
 *
 * Gives: decking, decking_direction, decking_spacing_max, decking_spacing_check. Needs: joist_spacing, near_limit_share.
 */
export const deckingSpacing: Section = {
  id: "decking-spacing",
  title: "Boards on joists",
  says: "Deck boards are not calculated: a table says how far apart the joists may lie.",
  entries: [
    {
      kind: "input",
      name: "decking",
      label: "Deck boards",
      measure: "text",
      default: "5/4 boards",
      choices: KINDS,
      why: "5/4 boards are one inch thick when planed. For composites the maker's evaluation decides.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "decking_direction",
      label: "Boards lie",
      measure: "text",
      default: "across the joists",
      choices: ["across the joists", "at 45 degrees"],
      why: "Laid slantwise a board spans further from joist to joist.",
      sources: [USER],
    },
    figureTable({
      name: "decking_spacings",
      label: "Joist spacing under deck boards",
      why: "Boards that span further feel soft underfoot.",
      sources: [DECKING_SPACING],
      columns: {
        key: { label: "Found by", measure: "text", why: "Boards and direction in one text." },
        spacing_most: { label: "Joists no further apart than", measure: "length", why: "Centre to centre." },
      },
      rows: [
        { key: "5/4 boards | across the joists", spacing_most: "16 in" },
        { key: "5/4 boards | at 45 degrees", spacing_most: "12 in" },
        { key: "2 in boards | across the joists", spacing_most: "24 in" },
        { key: "2 in boards | at 45 degrees", spacing_most: "16 in" },
      ],
    }),
    {
      kind: "formula",
      name: "decking_covered",
      label: "The table has these boards",
      measure: "yes_no",
      formula: `decking <> "${KINDS[2]}"`,
      why: "Composites are not in the table: ask for the maker's evaluation report.",
      sources: [DECKING_SPACING],
    },
    {
      kind: "formula",
      name: "decking_spacing_max",
      label: "Joists under these boards no further apart than",
      measure: "length",
      formula:
        'INDEX(decking_spacings.spacing_most; MATCH(decking & " | " & decking_direction; decking_spacings.key; 0))',
      why: "Centre to centre.",
      sources: [DECKING_SPACING],
    },
    {
      kind: "check",
      name: "decking_spacing_check",
      label: "Joist spacing under the boards",
      why: "Holds your joist spacing against the table.",
      sources: [DECKING_SPACING],
      measure: "length",
      demand: "joist_spacing",
      limit: "decking_spacing_max",
      sense: "at_most",
      near: "spacing_near",
      covered: "decking_covered",
      advice: ["Set joists {decking_spacing_max} apart at most, or take thicker boards."],
    },
    {
      kind: "figure",
      name: "spacing_near",
      label: "A spacing is near its limit from",
      measure: "share",
      value: "101 %",
      why: "A spacing that is just what the table prints is meant to be used, so it is no near thing.",
      sources: [DECKING_SPACING],
    },
  ],
}
