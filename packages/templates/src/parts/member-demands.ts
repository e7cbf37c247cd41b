import type { Column, MeasureId } from "@pegbook/engine"
import { column } from "../columns.ts"
import { ARITHMETIC } from "../sources.ts"
import { BEAM_PATTERN, BEAM_STATICS, YIELD_MODES } from "../sources-actions.ts"
import { BEARING_LENGTH, DEFLECTION, SHEAR_STRESS, STATICS_HANDBOOK } from "../sources-strength.ts"
import { factor } from "../strength/design-factors.ts"
import { ofEach } from "../strength/of-each.ts"
import { type AnyMember, isFloor, type LoneMember, threshold } from "./member.ts"
import { VALUES } from "./member-values.ts"

/** The formula of an action: solved for floor members, which stand first; a post's own otherwise. */
function action(
  members: readonly AnyMember[],
  name: string,
  own: (acts: LoneMember["acts"]) => string,
): string {
  return ofEach(
    members.map((member) => (isFloor(member) ? `INDEX(member_actions.${name}; ROW())` : own(member.acts))),
  )
}

export const jointOf = (member: AnyMember): string | undefined =>
  isFloor(member) ? undefined : member.acts.joint

/** Columns of what acts, and how much of each limit it takes. */
export function demandColumns(members: readonly AnyMember[]): readonly Column[] {
  const acted = (
    name: string,
    label: string,
    measure: MeasureId,
    why: string,
    own: (acts: LoneMember["acts"]) => string,
  ): Column => column(name, label, measure, action(members, name, own), why, BEAM_STATICS, BEAM_PATTERN)
  const hasJoints = members.some((member) => jointOf(member) !== undefined)
  const sagging = (name: string, of: "live" | "total"): string =>
    `(${action(members, name, ({ span, sag }) => sag?.[of] ?? `0 * ${span}`)})`
  const shareOf = (name: string, of: "live" | "total"): string =>
    `(${action(members, name, ({ span, sag }) => (sag === undefined ? "0" : `${sag[of]} / (${span})`))})`
  return [
    acted(
      "span",
      "Greatest span",
      "length",
      "From support to support; of a post, its height.",
      ({ span }) => span,
    ),
    acted(
      "moment",
      "Greatest moment",
      "moment",
      "Where people stand on the worst spans, or one load stands in the worst place, with the load factors. A post is bent by wind.",
      ({ moment }) => moment,
    ),
    acted("shear", "Greatest shear", "force", "Beside a support, the full force.", ({ shear }) => shear),
    acted(
      "reaction",
      "Greatest load on a seat",
      "force",
      "What the busiest support pushes back with; 0 of a post.",
      ({ shear, reaction }) => reaction ?? `0 * (${shear})`,
    ),
    column(
      "sag_live",
      "Sag under people",
      "small_length",
      `IF(covered; ${sagging("sag_live", "live")} * ${threshold("stiffness")} * plies / plies_through / e_used; NA())`,
      "How springy it feels.",
      BEAM_STATICS,
    ),
    column(
      "sag_total",
      "Sag in all",
      "small_length",
      `IF(covered; ${sagging("sag_total", "total")} * ${threshold("stiffness")} * plies / plies_through / e_used; NA())`,
      "With the platform's weight. Wet timber goes on sagging, to about twice this.",
      BEAM_STATICS,
    ),
    column(
      "bending_stress",
      "Bending stress",
      "stress",
      "moment / section_modulus",
      "At the edge of the piece.",
      STATICS_HANDBOOK,
    ),
    column(
      "shear_stress",
      "Shear stress",
      "stress",
      `${factor("shear_shape_factor")} * shear / (breadth * depth)`,
      "In the middle of the depth.",
      SHEAR_STRESS,
    ),
    column(
      "bearing_stress",
      "Bearing stress",
      "stress",
      "reaction / (breadth * seat)",
      "Where it sits.",
      BEARING_LENGTH,
    ),
    column(
      "seat_needed",
      "Seat needed",
      "length",
      "IF(covered; reaction / (breadth * fc_perp_allowed); NA())",
      "How much of it has to rest on its support.",
      BEARING_LENGTH,
    ),
    column(
      "bending_ratio",
      "Bending, of what it may bear",
      "share",
      "IF(covered; bending_stress / fb_allowed; NA())",
      "Over 100 % it breaks at its lower or upper edge.",
      STATICS_HANDBOOK,
    ),
    column(
      "shear_ratio",
      "Shear, of what it may bear",
      "share",
      "IF(covered; shear_stress / fv_allowed; NA())",
      "Over 100 % it splits along the grain near its end.",
      SHEAR_STRESS,
    ),
    column(
      "bearing_ratio",
      "Bearing, of what it may bear",
      "share",
      "IF(covered; bearing_stress / fc_perp_allowed; NA())",
      "Over 100 % it is crushed where it sits.",
      BEARING_LENGTH,
    ),
    column(
      "sag_live_ratio",
      "Sag under people, of what is accepted",
      "share",
      `IF(covered; ${shareOf("share_live", "live")} * ${threshold("stiffness")} * plies / plies_through / e_used * ${threshold("sag_live")}; NA())`,
      "Over 100 % the floor feels soft.",
      DEFLECTION,
      BEAM_STATICS,
    ),
    column(
      "sag_total_ratio",
      "Sag in all, of what is accepted",
      "share",
      `IF(covered; ${shareOf("share_total", "total")} * ${threshold("stiffness")} * plies / plies_through / e_used * ${threshold("sag_total")}; NA())`,
      "Over 100 % what lies on it cracks.",
      DEFLECTION,
      BEAM_STATICS,
    ),
    ...(hasJoints
      ? [
          column(
            "joint_ratio",
            "Its fastening, of what that may bear",
            "share",
            `IF(covered; ${ofEach(members.map((member) => jointOf(member) ?? "0"))}; NA())`,
            "Over 100 % its bolts, or the wood round them, let go. 0 where a joint has a table of its own.",
            YIELD_MODES,
          ),
        ]
      : []),
    column(
      "covered",
      "Inside the tables",
      "yes_no",
      `AND(found > 0; IFERROR(fb_allowed > 0; FALSE()); ${action(members, "solved", ({ covered }) => covered)})`,
      "No: no published row for it, nothing holds it up, or it is so slim that the rule for leaning over does not hold. Then nothing is guessed.",
      ...VALUES,
    ),
    column(
      "worst",
      "Worst of all",
      "share",
      `MAX(bending_ratio; shear_ratio; bearing_ratio; sag_live_ratio; sag_total_ratio${hasJoints ? "; joint_ratio" : ""})`,
      "The one that gives first.",
      ARITHMETIC,
    ),
    column(
      "governs",
      "What gives first",
      "text",
      `${hasJoints ? 'IF(joint_ratio = worst; "its fastening"; ' : "("}IF(bending_ratio = worst; "bending"; IF(shear_ratio = worst; "shear"; IF(bearing_ratio = worst; "bearing on its seat"; "sag"))))`,
      "Change this first.",
      ARITHMETIC,
    ),
    column(
      "known_worst",
      "Worst, where it is known",
      "share",
      "IF(covered; worst; 0)",
      "So that the other members can be compared when one is outside the tables.",
      ARITHMETIC,
    ),
    column(
      "says",
      "In words",
      "text",
      'IF(covered; member & ": " & governs & " takes " & ROUND(worst / 1%; 0) & " % of what is accepted"; member & ": outside the tables: no published row for this species, grade and size, nothing holds it up, or it is too slim")',
      "What gives first, and how far it is from its limit.",
      ARITHMETIC,
    ),
  ]
}
