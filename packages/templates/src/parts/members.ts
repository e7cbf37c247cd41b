import type { CheckEntry, Entry, Section, TableEntry } from "@pegbook/engine"
import { ARITHMETIC } from "../sources.ts"
import { BEAM_PATTERN, BEAM_STATICS } from "../sources-actions.ts"
import {
  BEARING_LENGTH,
  CSA_STRENGTHS,
  DEFLECTION,
  DESIGN_VALUES,
  SHEAR_STRESS,
} from "../sources-strength.ts"
import { csaDurations, designFactors, designThresholds } from "../strength/design-factors.ts"
import { type AnyMember, isFloor, type PlatformMember } from "./member.ts"
import { actionTables } from "./member-actions.ts"
import { demandColumns, jointOf } from "./member-demands.ts"
import { pieceColumns } from "./member-pieces.ts"
import { strengthColumns } from "./member-strengths.ts"
import { VALUES } from "./member-values.ts"

const CAUTIONS = [
  "Your local code and a licensed designer decide where people's safety leans on this: a public or sports floor, a high platform, or timber that is notched, cracked or of unknown grade.",
  "Figures marked as recalled were not seen in print. Confirm them before you build on them.",
  "The lines of support are taken as equally firm, and joists as one piece over all of them. Where a joist is cut over a line, or a line sinks, its neighbours carry more.",
]

const share = { measure: "share", limit: "1", sense: "at_most", near: "near_limit_share" } as const

function memberCheck(of: PlatformMember, row: number): CheckEntry {
  return {
    ...share,
    kind: "check",
    name: of.check,
    label: `Are the ${of.member} strong enough?`,
    why:
      jointOf(of) === undefined
        ? "The worse of bending and shear, of what the timber may bear."
        : "The worst of bending, shear and its fastening, of what timber and bolts may bear.",
    sources: [DESIGN_VALUES, CSA_STRENGTHS, BEAM_PATTERN, SHEAR_STRESS],
    cautions: CAUTIONS,
    demand: `MAX(${["bending", "shear", ...(jointOf(of) === undefined ? [] : ["joint"])].map((way) => `INDEX(members.${way}_ratio; ${row})`).join("; ")})`,
    covered: `INDEX(members.covered; ${row})`,
    advice: [
      "What gives first: {strength_first}.",
      `Shorten the span of the ${of.member}, set them closer together, or take the next size up or a better grade. Choose a species, grade and size that the tables hold where this one is outside them.`,
      ...(of.advice ?? []),
    ],
    remedies: of.remedies,
  }
}

/** A row a member, each step from the piece to the answer in a column of its own. `rows`: how many, a formula. */
export function memberTable(
  table: Pick<TableEntry, "name" | "label" | "why">,
  members: readonly AnyMember[],
  rows = String(members.length),
): TableEntry {
  return {
    kind: "table",
    ...table,
    sources: [...VALUES, BEAM_STATICS],
    cautions: CAUTIONS,
    rows: { kind: "formula", formula: rows },
    columns: [...pieceColumns(members), ...strengthColumns(members), ...demandColumns(members)],
  }
}

/**
 * Whether the members of a platform are strong and stiff enough: one table, one row a kind of member, each step of the
 * design in a column of its own.
 *
 * Needs: what the members name; species, grade, wet_service, incised, load_duration, design_method; dead_load,
 * live_load, near_limit_share; and the published tables of {@link publishedStrengths}.
 * Gives: members, member_actions, member_spans, member_reactions, member_curves, strength_first, the check of each
 * member, member_bearing_check, deflection_check. `beside`: tables of one row or none, with the columns known_worst and says: boards,
 * sheets or a fastening, which have a check in their own part and may give first.
 * Rows of `member_reactions` begin with the first member: put the one on the ground there, and lone members last.
 */
export function membersOf(members: readonly PlatformMember[], beside: readonly string[] = []): Section {
  const remedies = members.flatMap((member) => member.remedies)
  const known = `COUNTIF(members.covered; TRUE()) = ${members.length}`
  const first = beside.reduce(
    (all, table) => {
      const worst = `IFERROR(INDEX(${table}.known_worst; 1); 0)`
      return {
        worst: `MAX(${worst}; ${all.worst})`,
        says: `IF(${worst} > ${all.worst}; INDEX(${table}.says; 1); ${all.says})`,
      }
    },
    {
      worst: "MAX(members.known_worst)",
      says: "INDEX(members.says; MATCH(MAX(members.known_worst); members.known_worst; 0))",
    },
  )
  const entries: readonly Entry[] = [
    memberTable(
      {
        name: "members",
        label: "Strength, member by member",
        why: "Each step from the piece to the answer, in the order of the calculation.",
      },
      members,
    ),
    ...actionTables(members.filter(isFloor)),
    {
      kind: "formula",
      name: "strength_first",
      label: "What gives first",
      why: "Of all members, and of what is worked out beside them, the one that is nearest to its limit, or furthest over it; before it, one that no table holds.",
      sources: [ARITHMETIC],
      measure: "text",
      formula: `IF(COUNTIF(members.covered; FALSE()) = 0; ""; INDEX(members.says; MATCH(FALSE(); members.covered; 0)) & IF(${first.worst} = 0; ""; "; of the others, ")) & IF(AND(COUNTIF(members.covered; TRUE()) = 0; ${first.worst} = 0); ""; ${first.says})`,
    },
    ...members.map((member, index) => memberCheck(member, index + 1)),
    {
      ...share,
      kind: "check",
      name: "member_bearing_check",
      label: "Are the members' seats long enough?",
      why: "Wood is crushed across the grain where it sits. Span tables leave this out.",
      sources: [BEARING_LENGTH, DESIGN_VALUES, CSA_STRENGTHS],
      cautions: CAUTIONS,
      demand: "MAX(members.bearing_ratio)",
      covered: known,
      advice: [
        "Give the piece a longer seat or a wider one: the column of seats needed says how long. {strength_first}.",
      ],
      remedies,
    },
    {
      ...share,
      kind: "check",
      name: "deflection_check",
      label: "Is it stiff enough?",
      why: "A floor that sags more than this feels soft and cracks what lies on it, long before it breaks.",
      sources: [DEFLECTION, BEAM_STATICS],
      cautions: CAUTIONS,
      demand: "MAX(MAX(members.sag_live_ratio); MAX(members.sag_total_ratio))",
      covered: known,
      advice: [
        "Shorten the span, or take a deeper size: twice the depth is eight times as stiff. {strength_first}.",
      ],
      remedies,
    },
    designFactors,
    designThresholds,
    csaDurations,
  ]
  return {
    id: "strength",
    title: "Strong enough?",
    says: "What acts in each member, what its timber may bear, and what gives first.",
    entries,
  }
}
