import type { Entry } from "@pegbook/engine"
import { PS_20 } from "../sources.ts"
import { DECKING_SPANS } from "../sources-deck.ts"
import type { BoardBearers } from "./board-bearers.ts"

/** Whether the boards may span from one bearer to the next. Needs: what the bearers name, board_thickness, live_load. */
export function boardSpan({ nouns, spacing, closer }: BoardBearers): readonly Entry[] {
  return [
    {
      kind: "table",
      name: "decking_spans",
      label: "How far decking may span",
      rows: { kind: "figures" },
      why: "Boards laid square across. Slanting boards span farther for the same spacing and are not in this table.",
      sources: [DECKING_SPANS],
      columns: [
        {
          name: "thickness",
          label: "Boards from this thickness, real",
          measure: "length",
          values: ["1 in", "1.5 in"],
          why: "The table names them 5/4 and 2 in.",
          sources: [DECKING_SPANS, PS_20],
        },
        {
          name: "spacing",
          label: "Spacing at most, centre to centre",
          measure: "length",
          values: ["16 in", "24 in"],
          why: "For timber. Boards of plastic go by their maker's paper.",
          sources: [DECKING_SPANS],
        },
        {
          name: "load",
          label: "For loads up to",
          measure: "pressure",
          values: ["40 psf", "40 psf"],
          why: "It is a table for the decks of houses. Where a crowd may stand, it does not say enough.",
          sources: [DECKING_SPANS],
        },
      ],
    },
    {
      kind: "formula",
      name: "board_span_most",
      label: `Spacing of the ${nouns} that these boards allow`,
      measure: "length",
      formula:
        "LOOKUP(MAX(board_thickness; MIN(decking_spans.thickness)); decking_spans.thickness; decking_spans.spacing)",
      why: "From the table, by the boards' real thickness.",
      sources: [DECKING_SPANS],
    },
    {
      kind: "check",
      name: "board_check",
      label: `Are the ${nouns} close enough for the boards?`,
      measure: "length",
      demand: spacing,
      limit: "board_span_most",
      sense: "at_most",
      covered: "AND(board_thickness >= MIN(decking_spans.thickness); live_load <= MIN(decking_spans.load))",
      why: "Boards that span too far bounce, and one day one of them breaks.",
      sources: [DECKING_SPANS],
      advice: [`Put the ${nouns} no more than {board_span_most} apart, or choose thicker boards.`],
      remedies: [
        { input: closer, toward: "less", step: "2 in" },
        { input: "board_size", toward: "more" },
      ],
    },
  ]
}
