import type { Column, Remedy, Section, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { COMMON_PRACTICE, GEOMETRY, GUARD_IRC, STATICS, USER, USER_AUTHORITY } from "../sources.ts"
import {
  BOLT_STEEL,
  GUARD_FASTENING,
  GUARD_LOAD_CANADA,
  GUARD_LOAD_EVEN,
  GUARD_LOAD_IRC,
} from "../sources-actions.ts"
import { BEARING_LENGTH, DEFLECTION } from "../sources-strength.ts"
import { figureTable } from "../strength/figure-table.ts"
import { ofEach } from "../strength/of-each.ts"
import type { LoadedJoint } from "./fastener-strength.ts"
import type { PlatformMember } from "./member.ts"
import { ofAllGuardPosts } from "./of-all.ts"
import { POST_BOLT_FIGURES, pulledBoltColumns } from "./post-bolts.ts"

const DECIDES =
  "A guard keeps people from falling: lives hang on it. Your local code and a licensed designer decide its height, its load, its posts and its fastening."
const TESTED =
  "Fasten posts as a tested assembly with an evaluation report shows, into the framing and not into the edge timber alone. Screws or nails alone have let whole guards go."

/** The timber that guard posts are bolted to the outside of, by names of entries. */
export interface GuardedEdge {
  /** What a reader calls it: "rim". */
  readonly noun: string
  /** Its real depth, and the input of its size. */
  readonly depth: string
  readonly size: string
}

/** The rim that most frames end in. */
export const GUARDED_RIM: GuardedEdge = { noun: "rim", depth: "rim_depth", size: "rim_size" }

const JOINT = "guard post on its two bolts, pushed down"
const ANSWERS = ["where my limit asks for it", "on all sides"] as const
const CODES = [
  "United States, model house code",
  "United States, model building code",
  "Canada, national code",
] as const

const figure = (name: string): string => `INDEX(guard_figures.${name}; 1)`
const post = (name: string): string => `INDEX(guard_post.${name}; 1)`
const load = (name: string): string => `INDEX(guard_loads.${name}; MATCH(guard_code; guard_loads.code; 0))`
const member = (name: string): string => `INDEX(members.${name}; MATCH("guard posts"; members.member; 0))`
const BOLT = `INDEX(loaded_joints.diameter; MATCH("${JOINT}"; loaded_joints.joint; 0))`

const loads: TableEntry = {
  ...figureTable({
    name: "guard_loads",
    label: "Loads on a guard, by code",
    why: "Somebody who stumbles against the top, or a crowd that leans on it. Each cell can be changed to what your authority says.",
    sources: [GUARD_LOAD_IRC, GUARD_LOAD_EVEN, GUARD_LOAD_CANADA, GUARD_IRC],
    columns: {
      code: { label: "Code", measure: "text", why: "Which one holds is your place's to say." },
      concentrated: { label: "At one place", measure: "force", why: "Along the top, outwards here." },
      even: { label: "Evenly", measure: "line_load", why: "Along the top; not at the same time." },
      height: { label: "Height of the guard", measure: "length", why: "Above the surface. Ask for yours." },
      origin: { label: "Seen or recalled", measure: "text", why: "Confirm what was recalled." },
    },
    rows: [
      { code: CODES[0], concentrated: "200 lb", even: "0 plf", height: "36 in", origin: "read" },
      { code: CODES[1], concentrated: "200 lb", even: "50 plf", height: "42 in", origin: "from memory" },
      { code: CODES[2], concentrated: "1 kN", even: "0.75 kN/m", height: "1070 mm", origin: "from memory" },
    ],
  }),
  cautions: [DECIDES],
}

const figures: TableEntry = {
  kind: "table",
  name: "guard_figures",
  label: "How a guard post is bolted on",
  why: "In one row; each can be changed by itself. The bolts' thickness is in the table of joints that carry a load.",
  sources: [USER, BOLT_STEEL],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "upper_edge",
      "Upper bolt below the timber's top",
      "length",
      "1 1/2 in",
      "Three times the bolt's thickness.",
      COMMON_PRACTICE,
    ),
    figureColumn(
      "lower_edge",
      "Lower bolt above its underside",
      "length",
      "2 in",
      "Four times the bolt's thickness: this edge is pushed at.",
      COMMON_PRACTICE,
    ),
    figureColumn(
      "bolts",
      "Bolts in a post",
      "count",
      "2",
      "One above the other. The upper one is pulled when somebody leans on the guard.",
      USER,
    ),
    ...POST_BOLT_FIGURES,
  ],
}

const sides: TableEntry = {
  kind: "table",
  name: "guard_sides",
  label: "Guard, side by side",
  why: "Each side has its own drop. Where no limit is entered, no guard is counted: ask first.",
  sources: [GUARD_IRC, USER_AUTHORITY],
  cautions: ["Some places ask for a guard on steep ground beside a low platform too, or on a ramp."],
  rows: { kind: "formula", formula: "4" },
  columns: [
    column(
      "side",
      "Side",
      "count",
      "INDEX(side_drops.side; ROW())",
      "As in the heights round the edge.",
      GEOMETRY,
    ),
    column(
      "length",
      "Length",
      "length",
      "IF(MOD(side; 2) = 1; platform_length; platform_width)",
      "1 and 3 are the long sides. Where steps go up, leave out the bay; none is taken off here.",
      GEOMETRY,
    ),
    column(
      "drop",
      "Drop within reach",
      "length",
      "INDEX(side_drops.drop; side) + guard_reach * ground_steepness",
      "With the slope carried on as far as the ground counts.",
      GUARD_IRC,
    ),
    column(
      "needed",
      "Is a guard counted?",
      "yes_no",
      `OR(guard_where = "${ANSWERS[1]}"; IFERROR(drop > guard_height_limit; FALSE()); IFERROR(ground_steepness > guard_slope_limit; FALSE()))`,
      "By your limits of drop and slope, or as you chose.",
      USER_AUTHORITY,
    ),
    column(
      "answer",
      "In words",
      "text",
      'IF(needed; "a guard is counted"; IFERROR(IF(drop > near_limit_share * guard_height_limit; "perhaps: near your limit, measure again"; "none is asked for by your limit"); "ask: your limit is blank"))',
      "Ask your authority where it says so.",
      USER_AUTHORITY,
    ),
    column(
      "bays",
      "Bays",
      "count",
      "IF(needed; MAX(1; ROUNDUP(length / guard_post_spacing_max - rounding_tolerance; 0)); 0)",
      "From post to post, no wider than you allow.",
      GEOMETRY,
    ),
    column(
      "posts",
      "Posts",
      "count",
      "IF(bays = 0; 0; bays + 1)",
      "One more than bays. A corner where two sides meet has two: each side stands by itself.",
      GEOMETRY,
    ),
    column(
      "spacing",
      "From post to post",
      "length",
      `IF(bays = 0; 0 * length; (length - ${post("width")}) / bays)`,
      "From middle to middle, alike along a side. The outer two end where the side ends.",
      GEOMETRY,
    ),
    column(
      "height",
      "Height of the guard",
      "length",
      `IF(bays = 0; 0 * length; ${load("height")})`,
      "Above the surface, by the code you chose.",
      GUARD_IRC,
    ),
  ],
}

const posts = (edge: GuardedEdge): TableEntry => ({
  kind: "table",
  name: "guard_post",
  label: "Guard posts to buy and to set",
  why: "All sides together, in one row. Rails and what fills the bays are not counted here: your code says how close they stand.",
  sources: [GEOMETRY],
  cautions: [DECIDES, TESTED],
  rows: { kind: "formula", formula: "1" },
  columns: [
    column("of", "For", "text", '"all sides"', "The four sides added up.", GEOMETRY),
    column("number", "Posts", "count", "SUM(guard_sides.posts)", "None where no guard is needed.", GEOMETRY),
    column(
      "spacing",
      "Widest bay",
      "length",
      "MAX(guard_sides.spacing)",
      "The post between two of these carries the most.",
      GEOMETRY,
    ),
    column(
      "length",
      "Length of a post",
      "length",
      `${load("height")} + surface_build_up + ${edge.depth}`,
      `From the underside of the ${edge.noun} to the top of the guard.`,
      GEOMETRY,
    ),
    column(
      "width",
      "Along the side",
      "length",
      GUARD_POST.thickness,
      "What lies against the edge timber.",
      GEOMETRY,
    ),
    column("out", "Outwards", "length", GUARD_POST.depth, "How far a post stands out.", GEOMETRY),
    column("bolts", "Bolts", "count", `number * ${figure("bolts")}`, "Through post and timber.", GEOMETRY),
    column("washers", "Square washers", "count", "2 * bolts", "One at either end of each bolt.", GEOMETRY),
    column(
      "connectors",
      "Tested connectors",
      "count",
      "number",
      "One at the upper bolt of each post, back into the framing.",
      GUARD_FASTENING,
    ),
  ],
})

const stepColumns = (edge: GuardedEdge): readonly Column[] => [
  {
    name: "case",
    label: "Load",
    measure: "text",
    values: ["one push at the top of one post", "an even push along the top"],
    why: "The worse of the two counts.",
    sources: [GUARD_LOAD_IRC, GUARD_LOAD_CANADA],
  },
  column(
    "force",
    "Push on a post",
    "force",
    ofEach([
      `IF(${post("number")} = 0; 0; 1) * ${load("concentrated")}`,
      `${load("even")} * ${post("spacing")}`,
    ]),
    "No other post is counted on to help. Nothing where no guard is needed.",
    GUARD_LOAD_IRC,
    GUARD_LOAD_EVEN,
    GUARD_LOAD_CANADA,
  ),
  column(
    "arm",
    "Above the upper bolt",
    "length",
    `${load("height")} + surface_build_up + ${figure("upper_edge")}`,
    "How long the lever is.",
    GEOMETRY,
  ),
  column(
    "moment",
    "Bending at the upper bolt",
    "moment",
    "force * arm",
    "Where the post is bent most.",
    STATICS,
  ),
  column(
    "bolts_apart",
    "From bolt to bolt",
    "length",
    `MAX(0; ${edge.depth} - ${figure("upper_edge")} - ${figure("lower_edge")})`,
    `As far apart as the ${edge.noun} lets them be: the farther, the less each is pulled.`,
    GEOMETRY,
  ),
  column(
    "pull",
    "Pull on the upper bolt",
    "force",
    "IF(force = 0; 0; IF(bolts_apart > 0; moment / bolts_apart + force; NA()))",
    "Post and bolts are a lever: the lower bolt is where it turns.",
    STATICS,
  ),
  column(
    "thrust",
    "Thrust at the lower bolt",
    "force",
    "pull - force",
    `Pushes the ${edge.noun} inwards: blocking behind it has to take this up.`,
    STATICS,
  ),
  ...pulledBoltColumns({ pull: "pull", figure, bolt: BOLT, member, idle: "force = 0" }),
  column(
    "ratio",
    "The worse of the two",
    "share",
    "MAX(washer_ratio; bolt_ratio)",
    "Over 100 % it lets go.",
    STATICS,
  ),
  column(
    "gives",
    "Top moves outwards by",
    "small_length",
    `IF(force = 0; 0 * arm; force * arm ^ 3 / (3 * ${member("e_used")} * ${member("section_modulus")} * ${member("depth")} / 2))`,
    "For information: of the post alone. The joint gives way as much again, or more.",
    DEFLECTION,
    STATICS,
  ),
]

const hold: TableEntry = {
  kind: "table",
  name: "guard_hold",
  label: "What the guard posts' fastening takes",
  why: "The harder of the two loads, to set it beside the members. One row.",
  sources: [STATICS],
  cautions: [DECIDES],
  rows: { kind: "formula", formula: "1" },
  columns: [
    column(
      "known_worst",
      "Worst, where it is known",
      "share",
      `IF(${post("number")} = 0; 0; IFERROR(MAX(guard_cases.ratio); 0))`,
      "The worse of washer and bolt; 0 where no guard is counted, or where nothing can be said.",
      STATICS,
    ),
    column(
      "says",
      "In words",
      "text",
      '"guard posts: its fastening takes " & ROUND(known_worst / 1%; 0) & " % of what is accepted"',
      "What gives first, and how far it is from its limit.",
      STATICS,
    ),
  ],
}

/** A guard's post as a member: bolted to the edge, free above it, pushed outwards. Stands last among the members. */
export const GUARD_POST: PlatformMember = {
  member: "guard posts",
  noun: "guard post",
  check: "guard_post_check",
  size: "guard_post_size",
  thickness: "INDEX(dressed_sizes.depth; MATCH(guard_post_size; dressed_sizes.nominal; 0))",
  depth: "INDEX(dressed_sizes.thickness; MATCH(guard_post_size; dressed_sizes.nominal; 0))",
  duration: '"ten minutes"',
  acts: {
    covered: "TRUE()",
    span: "MAX(guard_cases.arm)",
    moment: "live_factor * MAX(guard_cases.moment)",
    shear: "live_factor * MAX(guard_cases.force)",
  },
  remedies: [
    { input: "guard_post_spacing_max", toward: "less", step: "6 in" },
    { input: "guard_post_size", toward: "more" },
  ],
}

/** Somebody who climbs on the guard: the post's bolts are pushed down. Along the post's grain, across the edge timber's. */
export const GUARD_JOINT: LoadedJoint = {
  joint: JOINT,
  fastener: "bolt",
  way: "pushed",
  diameter: "1/2 in",
  holds: "3 1/2 in",
  through: "1 1/2 in",
  across: { holds: false, through: true },
  force: "MAX(guard_cases.force)",
  count: figure("bolts"),
  lasts: "people",
  remedies: [{ input: "guard_post_spacing_max", toward: "less", step: "6 in" }],
}

/** What a guard's posts take, nothing where none is needed. */
export const GUARD_THINGS: readonly BoughtThing[] = [
  { item: "guard post", quantity: ofAllGuardPosts("number"), measure: "count", unit: "each" },
  { item: "guard bolt", quantity: ofAllGuardPosts("bolts"), measure: "count", unit: "each" },
  { item: "square washer", quantity: ofAllGuardPosts("washers"), measure: "count", unit: "each" },
  { item: "guard connector", quantity: ofAllGuardPosts("connectors"), measure: "count", unit: "each" },
]

/**
 * Posts of a guard, where the drop asks for one: how many, what pushes at them, what pulls at their bolts. Their timber is a row
 * of `members` by {@link GUARD_POST}, their bolts one of `loaded_joints` by {@link GUARD_JOINT}. A post carries no load from above
 * worth the name, so that it could bow out (the column stability factor) is left out.
 *
 * Needs: side_drops, guard_height_limit, guard_slope_limit, guard_reach, ground_steepness, platform_length, platform_width, surface_build_up,
 * what `edge` names, dressed_sizes, members, loaded_joints, near_limit_share, rounding_tolerance.
 * Gives: guard_where, guard_code, guard_post_size, guard_post_spacing_max, guard_connector_rating, guard_loads,
 * guard_figures, guard_sides, guard_post (one row), guard_cases, guard_hold (one row), guard_joint_check, guard_anchor_check.
 */
export function guardPosts(edge: GuardedEdge): Section {
  const deeper: readonly Remedy[] = [
    { input: edge.size, toward: "more" },
    { input: "guard_post_spacing_max", toward: "less", step: "6 in" },
  ]
  const worst = (name: string): string =>
    `IF(${post("number")} > 0; MAX(guard_cases.${name}); 0 * (guard_height_limit / guard_height_limit) * MAX(guard_cases.${name}))`
  return {
    id: "guard",
    title: "Posts of a guard",
    says: "Where the drop asks for a guard: how many posts, how hard they are pushed, and what pulls at their bolts. Rails and what fills the bays are for your code and a designer.",
    entries: [
      {
        kind: "input",
        name: "guard_where",
        label: "Guard",
        measure: "text",
        default: ANSWERS[0],
        choices: ANSWERS,
        why: "Small children and old people are reason enough for one where none is asked for.",
        sources: [USER, USER_AUTHORITY],
        cautions: [DECIDES],
      },
      {
        kind: "input",
        name: "guard_code",
        label: "Loads on the guard by",
        measure: "text",
        default: CODES[0],
        choices: CODES,
        why: "Your place decides. The table of loads shows each, and every cell can be changed.",
        sources: [USER_AUTHORITY, GUARD_LOAD_IRC, GUARD_LOAD_EVEN, GUARD_LOAD_CANADA],
      },
      {
        kind: "input",
        name: "guard_post_size",
        label: "Size of the guard posts",
        measure: "text",
        default: "4x4",
        choices: ["4x4", "89x89", "4x6", "89x140", "6x6", "140x140"],
        why: "Of the same species and grade as the frame, whole and never notched. The narrow side counts.",
        sources: [USER],
      },
      {
        kind: "input",
        name: "guard_post_spacing_max",
        label: "Guard posts, at most apart",
        measure: "length",
        default: "6 ft",
        least: "1 ft",
        most: "8 ft",
        why: "Wider bays hand each post more of an even push, and the rails sag.",
        sources: [USER, COMMON_PRACTICE],
      },
      {
        kind: "input",
        name: "guard_connector_rating",
        label: "The connector at the upper bolt holds",
        measure: "force",
        default: null,
        least: "1 lb",
        why: "The pull that its evaluation report allows for guard posts. It hands the pull back into the framing.",
        sources: [USER, GUARD_FASTENING],
        cautions: [TESTED],
      },
      loads,
      figures,
      sides,
      posts(edge),
      {
        kind: "table",
        name: "guard_cases",
        label: "Push on a guard post, step by step",
        why: "Outwards at the top, once at one place and once evenly. Along the rail the posts of a side help each other; that is not worked out here.",
        sources: [STATICS, GUARD_LOAD_IRC],
        cautions: [DECIDES, TESTED],
        rows: { kind: "figures" },
        columns: stepColumns(edge),
      },
      hold,
      {
        kind: "check",
        name: "guard_joint_check",
        label: "Do the guard posts' bolts and washers hold?",
        measure: "share",
        demand: worst("ratio"),
        limit: "1",
        covered: `IF(${post("number")} = 0; TRUE(); AND(${member("covered")}; MIN(guard_cases.bolts_apart) > 0))`,
        sense: "at_most",
        near: "near_limit_share",
        why: "A push at the top pulls many times harder at the upper bolt, as the bolts stand close together. Nothing where no guard is needed.",
        sources: [STATICS, BEARING_LENGTH, BOLT_STEEL],
        cautions: [DECIDES, TESTED],
        advice: [
          `Make the ${edge.noun} deeper, so that the bolts stand farther apart; take larger washers or thicker bolts in the tables; or have a tested assembly laid out by a designer.`,
        ],
        remedies: deeper,
      },
      {
        kind: "check",
        name: "guard_anchor_check",
        label: "Is the pull handed on into the framing?",
        measure: "force",
        demand: worst("pull"),
        limit: `IF(${post("number")} = 0; 0 * MAX(guard_cases.pull); guard_connector_rating)`,
        covered: `IF(${post("number")} = 0; TRUE(); MIN(guard_cases.bolts_apart) > 0)`,
        sense: "at_most",
        near: "near_limit_share",
        why: `The ${edge.noun} hangs on screws in end grain, which hold no pull: a rated connector at the upper bolt has to take all of it.`,
        sources: [GUARD_FASTENING, STATICS],
        cautions: [TESTED],
        advice: [
          `Take a connector that is rated for the pull in the table, or make the ${edge.noun} deeper so that the pull is less.`,
        ],
        remedies: deeper,
      },
    ],
  }
}
