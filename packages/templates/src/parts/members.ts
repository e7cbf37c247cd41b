import type {
  CheckEntry,
  Column,
  Entry,
  MeasureId,
  Remedy,
  Section,
  Source,
  TableEntry,
} from "@pegbook/engine"
import { column } from "../columns.ts"
import {
  type MemberLines,
  memberReads,
  solveMemberCurves,
  solveMemberReactions,
  solveMemberSpans,
  solveMembers,
} from "../solvers/member-actions.ts"
import { ARITHMETIC, GEOMETRY, PS_20, STATICS, USER } from "../sources.ts"
import { BEAM_PATTERN, BEAM_STATICS, POINT_LOAD, YIELD_MODES } from "../sources-actions.ts"
import {
  BEAM_STABILITY,
  BEARING_LENGTH,
  CSA_FACTORS,
  CSA_RESISTANCE,
  CSA_STRENGTHS,
  DEFLECTION,
  DESIGN_VALUES,
  DESIGN_VALUES_SOUTHERN_PINE,
  FLAT_FACTORS,
  INCISED_SPECIES,
  INCISING,
  LOAD_DURATION,
  NBC_LOAD_FACTORS,
  SHEAR_STRESS,
  SIZE_FACTORS,
  STABILITY_BY_SHAPE,
  STATICS_HANDBOOK,
  WET_SERVICE,
} from "../sources-strength.ts"
import { csaDurations, designFactors, designThresholds, factor } from "../strength/design-factors.ts"
import { ofEach } from "../strength/of-each.ts"

/** What every kind of member has, by the names of entries that the template has. Texts are formulas. */
interface OfMember {
  /** What a reader calls them: "joists". */
  readonly member: string
  /** Nominal size, as in `size_classes`; one ply's thickness and depth. */
  readonly size: string
  readonly thickness: string
  readonly depth: string
  /** Pieces side by side that bend together. */
  readonly plies?: string
  /** Spacing of members that share their load; without, each carries alone. */
  readonly shares?: string
  /** One force anywhere on it, a formula; without, the `point_load` of the thresholds. */
  readonly point?: string
  /** How far its upper edge is free between things that hold it, a formula; without, sheets or boards hold it all along. */
  readonly held?: string
  /** How long its load lasts in all; without, as long as the template's `load_duration`. */
  readonly duration?: string
}

/** A row of `members`, with a check of its own. */
interface Checked {
  /** The name of its check: "joist_check". */
  readonly check: string
  /** What a reader calls one of them: "joist". */
  readonly noun: string
  /** What to try, the cheapest first. */
  readonly remedies: readonly Remedy[]
  /** What no single input does. */
  readonly advice?: readonly string[]
}

/** A member that lies on supports and carries floor: its actions are solved. */
export interface FloorMember extends OfMember, Checked, MemberLines {
  /** How long the piece lies on its support. */
  readonly seat: string
  /** Most plies that a joint interrupts at one support, where others run through. */
  readonly interrupted?: string
}

/**
 * A member whose actions are formulas, each with its load factors: a post that wind bends, a board over one bay. They may name the
 * columns before them in its row.
 */
export interface LoneMember extends OfMember {
  /** How long it lies on its support; without, as of a post that lies on none, its depth. */
  readonly seat?: string
  readonly acts: {
    readonly covered: string
    readonly span: string
    readonly moment: string
    readonly shear: string
    /** On one seat; without, none. */
    readonly reaction?: string
    /** Its fastening, of what that may bear: counts for its check, and for what gives first. */
    readonly joint?: string
    /** Under people, and in all, for a stiffness of `design_thresholds.stiffness`; without, its sag is not held against a limit. */
    readonly sag?: { readonly live: string; readonly total: string }
  }
}

export type PlatformMember = FloorMember | (LoneMember & Checked)
type AnyMember = FloorMember | LoneMember

const isFloor = (member: AnyMember): member is FloorMember => !("acts" in member)

export const threshold = (name: string): string => `INDEX(design_thresholds.${name}; 1)`

/** For members that nothing stands on in one place. */
export const NO_POINT = `0 * ${threshold("point_load")}`

const VALUES: readonly Source[] = [DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE, CSA_STRENGTHS]
const LIMIT_STATES = 'design_method = "limit states"'

/** One number by limit states, another by allowable stress. */
const either = (limitStates: string, allowable: string): string =>
  `IF(${LIMIT_STATES}; ${limitStates}; ${allowable})`

export const sizeClass = (name: string): string =>
  `INDEX(size_classes.${name}; MATCH(size; size_classes.nominal; 0))`

const sizeFactor = (name: string): string =>
  `INDEX(size_factors.${name}; MATCH(width_class; size_factors.width; 0))`

const wetFactor = (name: string, csa: string, thinOnly: boolean): string =>
  `IF(found = 0; NA(); IF(wet_service; ${either(
    thinOnly ? `IF(thin; ${factor(csa)}; 1)` : factor(csa),
    `INDEX(wet_factors.${name}; MATCH(thickness_class; wet_factors.thickness; 0))`,
  )}; 1))`

const published = (name: string, csa: string, label: string, why: string): Column =>
  column(
    `${name}_published`,
    label,
    "stress",
    `IF(found > 0; ${either(`INDEX(specified_strengths.${csa}; found)`, `INDEX(design_values.${name}; found)`)}; NA())`,
    why,
    ...VALUES,
  )

const key = (grade: string, sizes: string): string =>
  `MATCH(species & " | " & ${grade} & " | " & ${sizes}; design_values.key; 0)`
const JOINED_GRADE = 'OR(grade = "No.1"; grade = "No.2")'
/** The row of `design_values` for a row's species, grade, sizes and thickness_class; 0 where there is none. */
export const FOUND = `IFERROR(${key("grade", "sizes")}; IF(thickness_class = "5 in and more"; 0; IFERROR(${key("grade", '"any width"')}; IF(${JOINED_GRADE}; IFERROR(${key('"No.1/No.2"', '"any width"')}; 0); 0))))`
const FOUND_CSA = `IFERROR(MATCH(INDEX(species_traits.csa_name; MATCH(species; species_traits.species; 0)) & " | " & IF(${JOINED_GRADE}; "No.1/No.2"; grade); specified_strengths.key; 0); 0)`

/** Columns from the piece itself. */
function pieceColumns(members: readonly AnyMember[]): readonly Column[] {
  const of = (pick: (member: AnyMember) => string): string => ofEach(members.map(pick))
  return [
    column(
      "member",
      "Member",
      "text",
      of(({ member }) => `"${member}"`),
      "One kind of member a row.",
      ARITHMETIC,
    ),
    column(
      "size",
      "Size",
      "text",
      of(({ size }) => size),
      "As it is sold.",
      USER,
    ),
    column(
      "thickness",
      "Thickness of a ply",
      "length",
      of(({ thickness }) => thickness),
      "As it is planed.",
      PS_20,
    ),
    column(
      "depth",
      "Depth",
      "length",
      of(({ depth }) => depth),
      "As it stands.",
      PS_20,
    ),
    column(
      "plies",
      "Plies",
      "count",
      of(({ plies }) => plies ?? "1"),
      "Pieces that bend together.",
      ARITHMETIC,
    ),
    column("breadth", "Thickness in all", "length", "plies * thickness", "All plies together.", GEOMETRY),
    column(
      "plies_through",
      "Plies that run through",
      "count",
      `plies - ${ofEach(members.map((member) => (isFloor(member) ? (member.interrupted ?? "0") : "0")))}`,
      "Where planks of a beam meet, the others carry the bending alone: the worst such place counts for all of it.",
      GEOMETRY,
    ),
    column(
      "seat",
      "Length of its seat",
      "length",
      of((member) => member.seat ?? member.depth),
      "How much of it lies on its support. Of a post: nothing lies on it.",
      GEOMETRY,
    ),
    column(
      "dead",
      "Own weight of the platform",
      "pressure",
      "dead_load",
      "On every part of the floor.",
      STATICS,
    ),
    column("live", "People and things", "pressure", "live_load", "On some spans, or all.", STATICS),
    column(
      "point_load",
      "One load anywhere on it",
      "force",
      of((member) => member.point ?? (isFloor(member) ? threshold("point_load") : NO_POINT)),
      "A person, a wheel or the leg of a table, in the worst place; in place of the people spread out, not with them. Its neighbours are not taken to help.",
      POINT_LOAD,
    ),
    column(
      "dead_factor",
      "Load factor on dead load",
      "ratio",
      either(factor("dead_load_factor"), "1"),
      "1 in allowable stress design.",
      NBC_LOAD_FACTORS,
    ),
    column(
      "live_factor",
      "Load factor on live load",
      "ratio",
      either(factor("live_load_factor"), "1"),
      "1 in allowable stress design.",
      NBC_LOAD_FACTORS,
    ),
    column(
      "section_modulus",
      "Section modulus",
      "volume",
      `plies_through * thickness * depth ^ 2 / ${factor("section_modulus_divisor")}`,
      "How well the shape resists bending, of the plies that run through. Twice the depth counts four times.",
      STATICS_HANDBOOK,
    ),
    column(
      "thickness_class",
      "Class of thickness",
      "text",
      `IFERROR(${sizeClass("thickness_class")}; "none")`,
      "Thin timber and timbers of 5 in and more are graded by different rules.",
      PS_20,
      SIZE_FACTORS,
    ),
    column(
      "width_class",
      "Width in the name, inches",
      "count",
      `IFERROR(${sizeClass("width")}; 0)`,
      "The size factor goes by it. 0: a size that the tables do not hold.",
      PS_20,
      SIZE_FACTORS,
    ),
    column(
      "sizes",
      "Class of published values",
      "text",
      `IFERROR(${sizeClass("grading")}; "none")`,
      "Where a species is published by width, the row for this width.",
      ...VALUES,
    ),
    column(
      "thin",
      "Counts as thin",
      "yes_no",
      `MIN(breadth; depth) <= ${threshold("thin")}`,
      "In limit states, damp and slits count for thin pieces.",
      CSA_FACTORS,
    ),
    column(
      "found",
      "Row of the published table",
      "count",
      `IF(width_class = 0; 0; ${either(FOUND_CSA, FOUND)})`,
      "0 where the table has no row for this species, grade and size: then there is no answer, and what follows is left blank.",
      ...VALUES,
    ),
  ]
}

/** By the width of the face that lies level; the table ends with 10 in and wider. */
const FLAT =
  'IF(width_class < MIN(flat_factors.width); NA(); IF(thickness_class = "2 or 3 in"; INDEX(flat_factors.thin; MATCH(width_class; flat_factors.width; 1)); INDEX(flat_factors.thick; MATCH(width_class; flat_factors.width; 1))))'

const LEAN_SHARE = `(1 + lean_stress / fb_before_lean) / ${threshold("lean_spread")}`
const LEANING = `${LEAN_SHARE} - SQRT((${LEAN_SHARE}) ^ 2 - lean_stress / fb_before_lean / ${threshold("lean_meeting")})`

/** Columns of published strengths, of each factor, and of the stresses that are left. */
function strengthColumns(members: readonly AnyMember[]): readonly Column[] {
  const sharing = ofEach(
    members.map(({ shares }) =>
      shares === undefined ? "FALSE()" : `${shares} <= ${threshold("sharing_spacing")}`,
    ),
  )
  const step = (ahead: number): string =>
    `AND(INDEX(csa_size_factors.depth; csa_row + ${ahead}) = INDEX(csa_size_factors.depth; csa_row); breadth >= INDEX(csa_size_factors.least; csa_row + ${ahead}))`
  const sizeInside = 'OR(INDEX(design_values.size_inside; MAX(1; found)); thickness_class = "5 in and more")'
  return [
    published("fb", "fb", "Bending, published", "Before any factor."),
    published("fv", "fv", "Shear, published", "Before any factor."),
    published("fc_perp", "fcp", "Bearing, published", "Across the grain, before any factor."),
    published("e", "e", "Stiffness, published", "Before any factor."),
    column(
      "duration",
      "How long its load lasts in all",
      "text",
      ofEach(members.map((member) => member.duration ?? "load_duration")),
      "Over the life of the platform, added up. A gust lasts minutes.",
      LOAD_DURATION,
    ),
    column(
      "duration_factor",
      "Load duration factor, CD or KD",
      "ratio",
      either(
        "INDEX(csa_durations.factor; MATCH(duration; csa_durations.duration; 0))",
        "INDEX(load_durations.factor; MATCH(duration; load_durations.duration; 0))",
      ),
      "Wood carries a short load better than a lasting one.",
      LOAD_DURATION,
      CSA_FACTORS,
    ),
    column(
      "csa_row",
      "Row of the Canadian size factors",
      "count",
      `IF(found = 0; NA(); MATCH(${sizeClass("metric_width")}; csa_size_factors.depth; 0))`,
      "The first row of its depth.",
      CSA_FACTORS,
    ),
    column(
      "size_factor",
      "Size factor, CF or KZ",
      "ratio",
      `IF(found = 0; NA(); ${either(`INDEX(csa_size_factors.factor; csa_row + IF(${step(1)}; IF(${step(2)}; 2; 1); 0))`, `IF(${sizeInside}; 1; IF(thickness_class = "2 or 3 in"; ${sizeFactor("thin")}; ${sizeFactor("thick")}))`)})`,
      "A slim piece is stronger for its size. 1 where the size is inside the published value. On bending; by limit states on shear as well.",
      SIZE_FACTORS,
      CSA_FACTORS,
    ),
    column(
      "wet_bending_factor",
      "Wet service factor on bending",
      "ratio",
      `IF(found = 0; NA(); IF(AND(NOT(${LIMIT_STATES}); fb_published * size_factor <= ${threshold("wet_bending")}); 1; ${wetFactor("fb", "csa_wet_bending", true)}))`,
      "1 where it stays dry, and by allowable stress where Fb × CF is not over the threshold.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_shear_factor",
      "Wet service factor on shear",
      "ratio",
      wetFactor("fv", "csa_wet_shear", true),
      "1 where it stays dry.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_bearing_factor",
      "Wet service factor on bearing",
      "ratio",
      wetFactor("fc_perp", "csa_wet_bearing", false),
      "Wet wood is crushed across the grain far more easily.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_stiffness_factor",
      "Wet service factor on stiffness",
      "ratio",
      wetFactor("e", "csa_wet_stiffness", true),
      "Wet wood sags more.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "is_incised",
      "Incised",
      "yes_no",
      `AND(incised; INDEX(species_traits.incised; MATCH(species; species_traits.species; 0)); OR(NOT(${LIMIT_STATES}); thin))`,
      "Only a species that needs it; by limit states, only thin pieces.",
      INCISED_SPECIES,
      CSA_FACTORS,
    ),
    column(
      "incising_factor",
      "Incising factor on strength",
      "ratio",
      `IF(is_incised; ${either(`IF(wet_service; ${factor("csa_incised_wet")}; ${factor("csa_incised_dry")})`, factor("incising_strength_factor"))}; 1)`,
      "The slits cut for the preservative cost strength.",
      INCISING,
      CSA_FACTORS,
    ),
    column(
      "incising_stiffness_factor",
      "Incising factor on stiffness",
      "ratio",
      `IF(is_incised; ${either(`IF(wet_service; ${factor("csa_incised_wet_stiffness")}; ${factor("csa_incised_dry_stiffness")})`, factor("incising_stiffness_factor"))}; 1)`,
      "The slits cost little stiffness.",
      INCISING,
      CSA_FACTORS,
    ),
    column(
      "sharing_factor",
      "Members that share, Cr or KH",
      "ratio",
      `IF(${sharing}; ${either(factor("csa_system_factor"), factor("repetitive_factor"))}; 1)`,
      "Three or more joists under one floor help a weak one out.",
      SIZE_FACTORS,
      CSA_FACTORS,
    ),
    column(
      "flat_factor",
      "Flat use factor, Cfu",
      "ratio",
      either("1", `IF(depth < thickness; ${FLAT}; 1)`),
      "A plank laid on its wide face bears a little more. 1 for what stands on edge or is square, and by limit states.",
      FLAT_FACTORS,
    ),
    column(
      "free_length",
      "Upper edge free over",
      "length",
      ofEach(
        members.map(
          ({ held }) => held ?? `IF(depth <= ${threshold("lean_ratio")} * breadth; 0 * depth; span)`,
        ),
      ),
      "How far it is between things that keep its upper edge from leaning over: the joists on a beam; 0 under sheets and boards, which hold a piece that is not too deep for its thickness; one that is counts as free over its span.",
      STABILITY_BY_SHAPE,
    ),
    column(
      "lean_length",
      "Free length that counts",
      "length",
      `IF(free_length < ${threshold("lean_from")} * depth; ${threshold("lean_short")} * free_length; ${threshold("lean_long")} * free_length + ${threshold("lean_depths")} * depth)`,
      "By how an even load leans a beam over.",
      BEAM_STABILITY,
    ),
    column(
      "slenderness",
      "Slenderness, RB",
      "ratio",
      "SQRT(lean_length * depth / breadth ^ 2)",
      "Beyond 50 the rule does not hold.",
      BEAM_STABILITY,
    ),
    column(
      "fb_before_lean",
      "Bending stress before leaning over, Fb*",
      "stress",
      "fb_published * duration_factor * temperature_factor * wet_bending_factor * size_factor * incising_factor * sharing_factor",
      "The published value with every factor but those for leaning over and for lying flat.",
      BEAM_STABILITY,
    ),
    column(
      "lean_stress",
      "Stress at which it leans over, FbE",
      "stress",
      `IF(found = 0; NA(); IF(slenderness = 0; 0 * fb_published; ${either("0 * fb_published", `${threshold("lean_share")} * INDEX(design_values.e_min; found) * temperature_factor * wet_stiffness_factor * incising_stiffness_factor / slenderness ^ 2`)}))`,
      "0 where the edge is held all along, and by limit states: then nothing is taken off.",
      BEAM_STABILITY,
    ),
    column(
      "stability_factor",
      "Stability factor, CL or KL",
      "ratio",
      either(
        factor("csa_lateral_factor"),
        `IF(OR(depth <= ${threshold("lean_bare")} * breadth; slenderness = 0); ${factor("stability_factor")}; IF(slenderness > ${threshold("lean_most")}; NA(); ${LEANING}))`,
      ),
      "1 where sheets or boards hold its upper edge, and where it is no more than about twice as deep as thick. By limit states 1: hold pieces more than four times as deep as thick at their ends.",
      BEAM_STABILITY,
      STABILITY_BY_SHAPE,
      CSA_RESISTANCE,
    ),
    column(
      "temperature_factor",
      "Temperature factor, Ct",
      "ratio",
      either("1", factor("temperature_factor")),
      "1 for timber that cools at night.",
      WET_SERVICE,
    ),
    column(
      "resistance_factor",
      "Resistance factor, bending and shear",
      "ratio",
      either(factor("resistance_factor"), "1"),
      "1 in allowable stress design.",
      CSA_RESISTANCE,
    ),
    column(
      "bearing_resistance_factor",
      "Resistance factor, bearing",
      "ratio",
      either(factor("bearing_resistance_factor"), "1"),
      "1 in allowable stress design.",
      CSA_RESISTANCE,
    ),
    column(
      "bearing_length_factor",
      "Bearing length factor, Cb or KB",
      "ratio",
      either(factor("csa_bearing_length_factor"), factor("bearing_length_factor")),
      "At the end of a piece nothing is added.",
      BEARING_LENGTH,
      CSA_FACTORS,
    ),
    column(
      "fb_allowed",
      "Bending stress it may bear",
      "stress",
      "fb_before_lean * stability_factor * flat_factor * resistance_factor",
      "The published value, times each factor in this row.",
      ...VALUES,
    ),
    column(
      "fv_allowed",
      "Shear stress it may bear",
      "stress",
      `fv_published * duration_factor * temperature_factor * wet_shear_factor * incising_factor * resistance_factor * ${either("size_factor * sharing_factor", "1")}`,
      "By limit states, size and sharing count here too.",
      ...VALUES,
    ),
    column(
      "fc_perp_allowed",
      "Bearing stress it may bear",
      "stress",
      `fc_perp_published * temperature_factor * wet_bearing_factor * bearing_length_factor * bearing_resistance_factor * ${either("duration_factor * incising_factor", "1")}`,
      "By allowable stress, duration and incising do not count here.",
      ...VALUES,
      BEARING_LENGTH,
    ),
    column(
      "e_used",
      "Stiffness in use",
      "stress",
      "e_published * temperature_factor * wet_stiffness_factor * incising_stiffness_factor",
      "Duration does not count here.",
      ...VALUES,
    ),
  ]
}

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

const jointOf = (member: AnyMember): string | undefined => (isFloor(member) ? undefined : member.acts.joint)

/** Columns of what acts, and how much of each limit it takes. */
function demandColumns(members: readonly AnyMember[]): readonly Column[] {
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

function actionTables(members: readonly FloorMember[]): readonly TableEntry[] {
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
