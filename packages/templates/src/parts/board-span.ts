import type { Entry } from "@pegbook/engine"
import { PS_20 } from "../sources.ts"
import { BEAM_STATICS } from "../sources-actions.ts"
import { DECKING_SPANS } from "../sources-deck.ts"
import { factor } from "../strength/design-factors.ts"
import type { BoardBearers } from "./board-bearers.ts"
import { type LoneMember, threshold } from "./member.ts"
import { memberTable } from "./members.ts"

const TABLE_COVERS =
  "AND(board_thickness >= MIN(decking_spans.thickness); live_load <= MIN(decking_spans.load))"
const PITCH = "(board_width + board_gap)"
const STIFFNESS = `(${threshold("stiffness")} * section_modulus * depth / 2)`

/**
 * A board laid flat over one bay, as though it was cut over every bearer: one that runs on is bent less, and joints may then lie on any.
 * Simple span, people spread out or one load in the worst place; statics as in the handbooks.
 */
function boardOver({ spacing, thickness }: BoardBearers): LoneMember {
  const span = spacing
  const dead = `dead * ${PITCH}`
  const live = `live * ${PITCH}`
  const bent = (load: string): string => `${factor("span_moment_share")} * ${load} * ${span} ^ 2`
  const even = (load: string): string =>
    `${factor("span_deflection_share")} * ${load} * ${span} ^ 4 / ${STIFFNESS}`
  const sag = `MAX(${even(live)}; ${threshold("point_sag")} * point_load * ${span} ^ 3 / ${STIFFNESS})`
  const seat = `dead_factor * ${dead} * ${span} / 2 + live_factor * MAX(${live} * ${span} / 2; point_load)`
  return {
    member: "boards",
    size: "board_size",
    thickness: "board_width",
    depth: "board_thickness",
    shares: PITCH,
    point: threshold("point_load"),
    seat: `${thickness} / 2`,
    acts: {
      covered: "TRUE()",
      span,
      moment: `dead_factor * ${bent(dead)} + live_factor * MAX(${bent(live)}; point_load * ${span} / 4)`,
      shear: seat,
      reaction: seat,
      sag: { live: sag, total: `(${sag} + ${even(dead)})` },
    },
  }
}

/**
 * Whether the boards may span from one bearer to the next: by a published table, and by the open calculation where strengths are
 * published for their size; the harder of the two decides.
 *
 * Needs: what the bearers name, board_thickness, board_width, board_gap, and what `members` needs.
 * Gives: board_strength (one row or none), decking_spans, board_span_most, board_check.
 */
export function boardSpan(bearers: BoardBearers): readonly Entry[] {
  const { noun, nouns, spacing, closer } = bearers
  return [
    memberTable(
      {
        name: "board_strength",
        label: "Strength of a board, step by step",
        why: `One board over one bay, as though it was cut over every ${noun}. No row where no strength is published for its size, as for boards an inch thick: then the table of spacings decides alone.`,
      },
      [boardOver(bearers)],
      "IF(IFERROR(MATCH(board_size; size_classes.nominal; 0); 0) > 0; 1; 0)",
    ),
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
      measure: "share",
      demand: `MAX(IF(${TABLE_COVERS}; ${spacing} / board_span_most; 0); IFERROR(INDEX(board_strength.known_worst; 1); 0))`,
      limit: "1",
      sense: "at_most",
      covered: `OR(${TABLE_COVERS}; IFERROR(INDEX(board_strength.covered; 1); FALSE()))`,
      why: "Boards that span too far bounce, and one day one of them breaks. Their spacing over what the table allows, or what one board bears where strengths are published for its size: the harder of the two.",
      sources: [DECKING_SPANS, BEAM_STATICS],
      cautions: [
        "Your local code decides, and where a crowd may stand a licensed designer does. The table is for the decks of houses.",
        "Boards are taken to be of the frame's species and grade. Boards of plastic go by their maker's evaluation report.",
      ],
      advice: [
        `Put the ${nouns} no more than {board_span_most} apart, or choose thicker boards.`,
        "The table of a board's strength shows each step, and what gives first.",
      ],
      remedies: [
        { input: closer, toward: "less", step: "2 in" },
        { input: "board_size", toward: "more" },
      ],
    },
  ]
}
