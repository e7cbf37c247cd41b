import type { Column, MeasureId, TableEntry } from "@pegbook/engine"
import { column } from "../columns.ts"
import {
  memberReads,
  solveMemberCurves,
  solveMemberReactions,
  solveMemberSpans,
  solveMembers,
} from "../solvers/member-actions.ts"
import { ARITHMETIC } from "../sources.ts"
import { BEAM_PATTERN, BEAM_STATICS } from "../sources-actions.ts"
import type { FloorMember } from "./member.ts"

export function actionTables(members: readonly FloorMember[]): readonly TableEntry[] {
  const from = memberReads(members)
  const solved = (name: string, label: string, measure: MeasureId, why: string): Column => ({
    name,
    label,
    measure,
    why,
    sources: [BEAM_STATICS, BEAM_PATTERN],
  })
  const member = solved("member", "Member", "text", "Which kind of member.")
  const line = solved("line", "Line", "count", "Counted as in the layout.")
  const sag = (name: string, label: string): Column =>
    solved(name, label, "length", "For a stiffness of 1 GPa: a step of the calculation.")
  const table = (
    name: string,
    label: string,
    why: string,
    solve: Extract<TableEntry["rows"], { kind: "solved" }>["solve"],
    columns: readonly Column[],
  ): TableEntry => ({
    kind: "table",
    name,
    label,
    why,
    sources: [BEAM_STATICS, BEAM_PATTERN],
    rows: { kind: "solved", from, solve },
    columns,
  })
  return [
    table(
      "member_actions",
      "What acts in each member",
      "The worst of all lines and spans of each kind of member.",
      solveMembers(members),
      [
        member,
        solved("span", "Greatest span", "length", "From support to support."),
        solved("moment", "Greatest moment", "moment", "Between supports or over one."),
        solved("shear", "Greatest shear", "force", "Beside a support. Never notch a member there."),
        solved("reaction", "Greatest load on a seat", "force", "With people where they press hardest."),
        sag("sag_live", "Sag under people, at 1 GPa"),
        sag("sag_total", "Sag in all, at 1 GPa"),
        solved(
          "share_live",
          "Sag under people over its length, at 1 GPa",
          "ratio",
          "An overhang counts twice its length.",
        ),
        solved(
          "share_total",
          "Sag in all over its length, at 1 GPa",
          "ratio",
          "An overhang counts twice its length.",
        ),
        solved("solved", "Every line stands", "yes_no", "No where a line could turn or fall."),
      ],
    ),
    table(
      "member_spans",
      "Each span of each member",
      "From support to support, and the ends that reach past the outer supports.",
      solveMemberSpans(members),
      [
        member,
        line,
        solved("span", "Span", "count", "Counted along the line from the first end."),
        solved("from", "From", "length", "Where the span begins."),
        solved("length", "Length", "length", "From centre to centre of the supports."),
        solved(
          "limit_length",
          "Length that the sag is held against",
          "length",
          "An overhang counts twice its length.",
        ),
        solved("moment", "Greatest moment", "moment", "The size is decided by it."),
        solved("moment_at", "Where it is bent most", "length", "Keep big knots and cuts away from here."),
        solved("shear", "Greatest shear", "force", "Beside a support."),
        sag("sag_live", "Sag under people, at 1 GPa"),
        sag("sag_total", "Sag in all, at 1 GPa"),
      ],
    ),
    {
      ...table(
        "member_reactions",
        "What each support carries",
        "By statics: a member that runs on over a support leans harder on it than half way to each neighbour says, and a joint lets off its neighbours.",
        solveMemberReactions(members),
        [
          member,
          line,
          solved("position", "Along the line", "length", "Where the support stands."),
          solved("dead", "From the platform alone", "force", "With nobody there."),
          solved("full", "With everything loaded", "force", "Adds up to the whole load, over all supports."),
          solved("most", "At most", "force", "With people on the spans that press hardest here."),
          solved("least", "At least", "force", "Below 0 the member would lift off unless it is tied down."),
        ],
      ),
      cautions: ["Supports are taken as equally firm. On soft ground the load moves to the firmer ones."],
    },
    table(
      "member_curves",
      "Moment, shear and sag along each member",
      "Points for a picture: the hardest bent line of each kind, with everything loaded.",
      solveMemberCurves(members),
      [
        member,
        solved("position", "Along the line", "length", "From its first end."),
        solved("at_support", "At a support", "yes_no", "Where the line is held up."),
        solved("at_joint", "At a joint", "yes_no", "Where two pieces meet, and no bending passes."),
        solved("moment", "Moment", "moment", "Positive where the underside is pulled."),
        solved("shear", "Shear", "force", "Positive where the left part pushes the right part up."),
        sag("sag", "Sag, at 1 GPa"),
        column(
          "deflection",
          "Sag",
          "small_length",
          "sag * IF(INDEX(member_actions.sag_total; MATCH(member; member_actions.member; 0)) = 0; 1; INDEX(members.sag_total; MATCH(member; members.member; 0)) / INDEX(member_actions.sag_total; MATCH(member; member_actions.member; 0)))",
          "With the member's own stiffness, which makes of the sag at 1 GPa the one that is checked. Blank where no table holds it.",
          ARITHMETIC,
        ),
      ],
    ),
  ]
}
