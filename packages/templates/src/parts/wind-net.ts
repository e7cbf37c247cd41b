import type { Column, Entry, MeasureId, Section, Source, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { POST_DEPTH_READS, solvePostDepth } from "../solvers/post-depth.ts"
import { ARITHMETIC, BAG_YIELD, COMMON_PRACTICE, GEOMETRY, STATICS, USER } from "../sources.ts"
import {
  LATERAL_BEARING,
  MESH_SOLIDITY,
  POST_DEPTH,
  POST_DOUBLING,
  POST_MOMENT,
  WIND_ALLOWABLE,
  WIND_BUILDINGS,
  WIND_LEAST,
  WIND_OPEN_FRAMES,
  YIELD_MODES,
} from "../sources-actions.ts"
import { practice } from "../sources-frame.ts"
import { figureTable } from "../strength/figure-table.ts"
import type { LoadedJoint } from "./fastener-strength.ts"
import type { PlatformMember } from "./member.ts"
import { POST_BOLT_FIGURES, pulledBoltColumns } from "./post-bolts.ts"
import { VELOCITY_PRESSURE, windFactor, windPressure } from "./wind-pressure.ts"

const DECIDES =
  "A post that falls can hurt somebody. Your local code and someone who answers for it decide the posts and their fastening; take the net down before a storm and in winter."

const SOILS = ["clay or silt", "sand", "gravel"] as const

/** What posts stand in when they stand in no soil. */
const FRAME = "the frame, bolted"

/** Whether the posts stand in the ground: of a workbook that has this section. */
export const NET_IN_GROUND = `net_post_soil <> "${FRAME}"`

const JOINT = "net post on its two bolts, pushed along the rim"

const net = (name: string): string => `INDEX(net_wind_factors.${name}; 1)`

const factors: TableEntry = {
  kind: "table",
  name: "net_wind_factors",
  label: "Figures of the net's wind and its posts",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [WIND_OPEN_FRAMES, POST_DEPTH],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "thin_limit",
      "Round members are thin up to",
      "force",
      "6.25 lb",
      "Diameter squared times the wind's pressure: 2.5 squared, in feet and pounds per square foot.",
      WIND_OPEN_FRAMES,
    ),
    figureColumn(
      "solidity_most",
      "The table ends at a solid share of",
      "ratio",
      "0.7",
      "More solid than this, it is a wall and not an open frame.",
      WIND_OPEN_FRAMES,
    ),
    figureColumn(
      "wall_factor",
      "Factor of a wall that stands free",
      "ratio",
      "1.4",
      "For a net that is covered all over.",
      WIND_BUILDINGS,
    ),
    figureColumn(
      "bolt_edge",
      "A bolt from the edge of the rim",
      "length",
      "1 1/2 in",
      "The upper bolt below the rim's top, the lower one above its underside: nearer to the edge the wood splits.",
      USER,
    ),
    ...POST_BOLT_FIGURES,
    figureColumn(
      "hole_width",
      "Width of a post's hole in the ground",
      "length",
      "10 in",
      "Filled with concrete to its full width. A wider one leans on more soil.",
      USER,
    ),
    figureColumn(
      "bag_yield",
      "An 80 lb bag of concrete fills",
      "volume",
      "0.60 ft3",
      "Mixed and poured.",
      BAG_YIELD,
    ),
    figureColumn(
      "bent_below",
      "In the ground it is bent most at this share of its depth",
      "ratio",
      "0.333",
      "At the ground it is not held yet: the soil takes the bending over little by little. Where the soil's pressure is counted, from memory.",
      practice("a pole's bending grows to about a third of its depth"),
    ),
    figureColumn(
      "soil_counts",
      "The soil's pressure counts times",
      "ratio",
      "2",
      "By one code, for poles that stand alone and may move half an inch at the ground, as these may. 1 for what may not.",
      USER,
      POST_DOUBLING,
    ),
    figureColumn(
      "reference_depth",
      "Depth that the soil table is for",
      "length",
      "1 ft",
      "The table gives the pressure for each foot of depth.",
      LATERAL_BEARING,
    ),
    figureColumn("depth_factor", "Factor of the depth formula", "ratio", "2.34", "As published.", POST_DEPTH),
    figureColumn("depth_ratio", "Factor of the height in it", "ratio", "4.36", "As published.", POST_DEPTH),
    figureColumn(
      "depth_cap",
      "Soil counts no stronger below",
      "length",
      "12 ft",
      "As published.",
      POST_DEPTH,
    ),
  ],
}

const SHAPES: TableEntry = figureTable({
  name: "net_shape_factors",
  label: "How hard wind pulls at the members of an open frame",
  why: "The factor is on the member's own area, so it falls on few, thin twines most.",
  sources: [WIND_OPEN_FRAMES],
  columns: {
    solidity: { label: "Solid share from", measure: "ratio", why: "The table has three rows." },
    thin: { label: "Thin and round", measure: "ratio", why: "Twine and rope." },
    thick: { label: "Thick and round", measure: "ratio", why: "Pipes in a strong wind." },
    flat: { label: "Flat or square", measure: "ratio", why: "Square posts." },
  },
  rows: [
    { solidity: "0", thin: "1.2", thick: "0.8", flat: "2" },
    { solidity: "0.1", thin: "1.3", thick: "0.9", flat: "1.8" },
    { solidity: "0.3", thin: "1.5", thick: "1.1", flat: "1.6" },
  ],
})

const SOIL_TABLE: TableEntry = figureTable({
  name: "lateral_bearings",
  label: "Sideways pressure that soil holds",
  why: "It grows with the depth.",
  sources: [LATERAL_BEARING],
  columns: {
    soil: { label: "Soil", measure: "text", why: "Firm and undisturbed; nothing for peat, mud or fill." },
    pressure: { label: "One foot down", measure: "pressure", why: "Twice as much two feet down, and so on." },
  },
  rows: [
    { soil: SOILS[0], pressure: "100 psf" },
    { soil: SOILS[1], pressure: "150 psf" },
    { soil: SOILS[2], pressure: "200 psf" },
  ],
})

const look = (column: string): string =>
  `LOOKUP(solidity; net_shape_factors.solidity; net_shape_factors.${column})`

const STEPS: readonly Column[] = [
  column(
    "solidity",
    "Solid share of the net",
    "ratio",
    "MIN(1; 2 * net_twine / net_mesh - (net_twine / net_mesh) ^ 2)",
    "Twine as a share of the net's area; the rest is holes.",
    MESH_SOLIDITY,
  ),
  column(
    "covered",
    "Open enough for the table",
    "yes_no",
    `solidity <= ${net("solidity_most")}`,
    "The wind's force on a net is only known here for open ones. With a wider mesh or thinner twine it is one.",
    WIND_OPEN_FRAMES,
  ),
  column(
    "shape_factor",
    "Shape factor of the net",
    "ratio",
    `IF(net_twine ^ 2 * ${VELOCITY_PRESSURE} <= ${net("thin_limit")}; ${look("thin")}; ${look("thick")})`,
    "From the table, for round twine.",
    WIND_OPEN_FRAMES,
  ),
  column(
    "pressure_by_formula",
    "Pressure on the net by the formula",
    "pressure",
    `${VELOCITY_PRESSURE} * ${windFactor("gust")} * shape_factor * solidity`,
    "Per area of the whole net, holes and all.",
    WIND_OPEN_FRAMES,
  ),
  column(
    "pressure",
    "Pressure on the net used here",
    "pressure",
    `${windFactor("load_factor")} * MAX(pressure_by_formula; ${windFactor("pressure_least")} * solidity)`,
    "Not less than the floor on the twine's own area.",
    WIND_OPEN_FRAMES,
    WIND_LEAST,
  ),
  {
    ...column(
      "pressure_covered",
      "Pressure if it were covered",
      "pressure",
      `${windFactor("load_factor")} * ${VELOCITY_PRESSURE} * ${windFactor("gust")} * ${net("wall_factor")}`,
      "With a cloth on it, or full of ice or wet leaves, a net is a sail. Nothing here is sized for that.",
      WIND_BUILDINGS,
    ),
    cautions: ["Never hang a cloth, a tarpaulin or a banner on the net."],
  },
  column(
    "bay",
    "Net that one post carries",
    "length",
    "MAX(net_runs.bay)",
    "Half of the bay on each side, at the widest spacing.",
    GEOMETRY,
  ),
  column(
    "post_width",
    "Narrow side of a post, real",
    "length",
    "INDEX(dressed_sizes.thickness; MATCH(net_post_size; dressed_sizes.nominal; 0))",
    "What it really measures; a 4x4 is 3 1/2 in.",
    GEOMETRY,
  ),
  column(
    "post_load",
    "Wind on a post, per length",
    "line_load",
    `IF(bay = 0; 0; 1) * (pressure * bay + ${windFactor("load_factor")} * ${VELOCITY_PRESSURE} * ${windFactor("gust")} * MAX(net_shape_factors.flat) * post_width)`,
    "From the net, and on the post itself.",
    WIND_OPEN_FRAMES,
    STATICS,
  ),
  column(
    "post_force",
    "Wind on a post",
    "force",
    "post_load * net_height",
    "All of it, from the surface to the top.",
    STATICS,
  ),
  column(
    "post_moment",
    "Bending of a post at the surface",
    "moment",
    "post_load * net_height ^ 2 / 2",
    "As though no guy line held its top: a line is only as good as its peg. A post twice as high is bent four times as hard.",
    POST_MOMENT,
  ),
  column(
    "bolt_top",
    "Upper bolt below the surface",
    "length",
    `tile_thickness + sheet_thickness + ${net("bolt_edge")}`,
    "Of a post that is bolted to the outside of the rim: as high on it as may be.",
    GEOMETRY,
  ),
  column(
    "bolt_spacing",
    "From the upper bolt to the lower",
    "length",
    `MAX(${net("bolt_edge")} / 3; rim_depth - 2 * ${net("bolt_edge")})`,
    "The two bolts hold the post upright by pulling and pushing: the farther apart, the less each must hold. More than the rim is deep there is not.",
    GEOMETRY,
  ),
  column(
    "bolt_moment",
    "Bending of a post at its upper bolt",
    "moment",
    "post_force * (net_height / 2 + bolt_top)",
    "Where it is bent most: it is free from there up.",
    STATICS,
  ),
  column(
    "bolt_force",
    "Pull on the upper bolt",
    "force",
    "post_force * (net_height / 2 + bolt_top + bolt_spacing) / bolt_spacing",
    "Turning about the lower bolt. The rim that the bolt goes through is pulled off its joists by the same force: block behind it and screw the blocks to the joists.",
    STATICS,
  ),
  ...pulledBoltColumns({
    pull: "bolt_force",
    figure: net,
    bolt: `INDEX(loaded_joints.diameter; MATCH("${JOINT}"; loaded_joints.joint; 0))`,
    member: (name) => `INDEX(members.${name}; MATCH("net posts"; members.member; 0))`,
    idle: "bolt_force = 0",
  }),
  column(
    "along_force",
    "Push along the rim at the upper bolt",
    "force",
    "IF(post_load = 0; 0 * bolt_force; bolt_force * (post_load - pressure * bay) / post_load)",
    "Wind the other way, on the post itself: its bolts are pushed sideways then, through the same lever.",
    STATICS,
  ),
  {
    ...column(
      "corner_force",
      "The same at a corner that nothing else holds",
      "force",
      "IF(post_load = 0; 0 * bolt_force; bolt_force * (post_load - pressure * bay / 2) / post_load)",
      "With half a bay of the other net. It counts where a corner has fewer than two guy lines, one against each of its nets.",
      STATICS,
    ),
    cautions: ["Hold every corner with a guy line or a brace against each of its nets."],
  },
  column(
    "joint_ratio",
    "Its bolts, of what they may bear",
    "share",
    `IF(${NET_IN_GROUND}; 0; MAX(washer_ratio; bolt_ratio; INDEX(loaded_joints.ratio; 1)))`,
    "The worst of washer, steel, and how the joint yields when it is pushed sideways. 0 for posts that stand in the ground: they have none.",
    YIELD_MODES,
  ),
  column(
    "guy_pull",
    "Pull on a guy line, if it holds the top",
    "force",
    "post_force / 2 * SQRT((net_height + height_above_ground) ^ 2 + net_guy_reach ^ 2) / net_guy_reach",
    "Half of the wind goes to the top, along the slant of the line. Its peg has to hold this too.",
    STATICS,
  ),
  column(
    "tipping",
    "Tipping of the platform by its nets",
    "moment",
    `IF(${NET_IN_GROUND}; 0; 1) * pressure * net_height * (height_above_ground + net_height / 2) * MAX(net_sides * platform_length; net_ends * platform_length * IF(platform_length = 0; 0; (platform_width / platform_length) ^ 2))`,
    "Nets on the frame pry at the whole platform. Across it, or along it brought to the same arm, whichever is worse.",
    STATICS,
  ),
  column(
    "righting",
    "Moment of its weight against it",
    "moment",
    `${windFactor("weight_share")} * dead_load * platform_area * (platform_width / 2 - skid_overhang)`,
    "The counted share of the platform's weight, about the outer skid.",
    WIND_ALLOWABLE,
  ),
  column(
    "lateral",
    "Sideways pressure counted on",
    "pressure",
    `IF(${NET_IN_GROUND}; INDEX(lateral_bearings.pressure; MATCH(net_post_soil; lateral_bearings.soil; 0)); 0 * MAX(lateral_bearings.pressure)) * ${net("soil_counts")}`,
    "One foot down, in your soil. 0 for posts that stand in none.",
    LATERAL_BEARING,
    POST_DOUBLING,
  ),
  column(
    "arm",
    "Height of the wind above the ground",
    "length",
    "height_above_ground + net_height / 2",
    "The middle of the net.",
    GEOMETRY,
  ),
  column(
    "depth",
    "Depth of a post in the ground",
    "length",
    "IF(COUNT(net_post_embedment.found) = 0; 0 * arm; INDEX(net_post_embedment.found; COUNT(net_post_embedment.found)))",
    "The last of the tries. 0 for posts that stand in no soil.",
    POST_DEPTH,
  ),
  column(
    "ground_moment",
    "Bending of a post in the ground",
    "moment",
    `post_force * (arm + ${net("bent_below")} * depth)`,
    "Where it is bent most, a little below the ground.",
    STATICS,
  ),
  column(
    "ground_shear",
    "Push of the soil on a post",
    "force",
    "IF(depth = 0; 0 * post_force; post_force + ground_moment / depth)",
    "The soil holds it at two heights that push against one another: more than the wind itself.",
    STATICS,
  ),
]

const depthColumn = (name: string, label: string, measure: MeasureId, why: string, source: Source) => ({
  name,
  label,
  measure,
  why,
  sources: [source],
})

const embedment: TableEntry = {
  kind: "table",
  name: "net_post_embedment",
  label: "Depth of a post that stands in the ground, try by try",
  rows: { kind: "solved", from: POST_DEPTH_READS, solve: solvePostDepth },
  why: "For posts beside the platform that nothing holds at the ground; empty where they stand on the frame. The formula needs the depth to give the depth, so it is tried until the two agree: the last row counts.",
  sources: [POST_DEPTH, COMMON_PRACTICE],
  cautions: [
    "Have buried cables and pipes marked before you dig. Where the ground freezes, the hole goes to the frost depth too. Cover an open hole.",
    DECIDES,
  ],
  columns: [
    depthColumn("try", "Try", "count", "Counted from the first.", ARITHMETIC),
    depthColumn("depth", "Depth tried", "length", "Half way between the last two.", ARITHMETIC),
    depthColumn(
      "pressure",
      "Sideways pressure at a third of it",
      "pressure",
      "What the soil holds there.",
      LATERAL_BEARING,
    ),
    depthColumn(
      "reach",
      "A of the formula",
      "length",
      "Force over pressure and width, times the first factor.",
      POST_DEPTH,
    ),
    depthColumn("found", "Depth found", "length", "By the formula.", POST_DEPTH),
  ],
}

/** A net's post as a member: in the ground or bolted to the rim, free above, bent by wind. */
export const NET_POST: PlatformMember = {
  member: "net posts",
  noun: "net post",
  check: "net_post_check",
  size: "net_post_size",
  thickness: "INDEX(dressed_sizes.depth; MATCH(net_post_size; dressed_sizes.nominal; 0))",
  depth: "INDEX(net_wind.post_width; 1)",
  duration: '"ten minutes"',
  acts: {
    covered: "INDEX(net_wind.covered; 1)",
    span: "net_height",
    moment: `live_factor * IF(${NET_IN_GROUND}; INDEX(net_wind.ground_moment; 1); INDEX(net_wind.bolt_moment; 1))`,
    shear: `live_factor * IF(${NET_IN_GROUND}; INDEX(net_wind.ground_shear; 1); INDEX(net_wind.bolt_force; 1))`,
    joint: "INDEX(net_wind.joint_ratio; 1)",
  },
  remedies: [
    { input: "net_post_spacing_max", toward: "less", step: "1 ft" },
    { input: "net_height", toward: "less", step: "6 in" },
    { input: "net_post_size", toward: "more" },
  ],
  advice: ["Bolts through a rim hold a low net only: for a higher one set the posts in the ground."],
}

/** Wind along a rim pushes the upper bolt sideways: along the rim's grain, across the post's. A corner is held by its guy lines, or by its bolts. */
export const NET_JOINT: LoadedJoint = {
  joint: JOINT,
  fastener: "bolt",
  way: "pushed",
  diameter: "3/4 in",
  holds: "3 1/2 in",
  through: "1 1/2 in",
  across: { holds: true, through: false },
  force: `IF(${NET_IN_GROUND}; 0; 1) * IF(net_guys_per_corner >= 2; INDEX(net_wind.along_force; 1); INDEX(net_wind.corner_force; 1))`,
  count: "1",
  lasts: "wind",
}

const overturn: Entry = {
  kind: "check",
  name: "net_overturn_check",
  label: "Does the platform stay down under the nets?",
  measure: "moment",
  demand: "INDEX(net_wind.tipping; 1)",
  limit: "INDEX(net_wind.righting; 1)",
  covered: "INDEX(net_wind.covered; 1)",
  sense: "at_most",
  near: "near_limit_share",
  why: "Posts bolted to the frame hand all their wind to it.",
  sources: [STATICS, WIND_ALLOWABLE],
  cautions: [DECIDES],
  advice: ["Lower the net, net fewer sides, or set the posts in the ground beside the platform."],
  remedies: [
    { input: "net_height", toward: "less", step: "6 in" },
    { input: "net_sides", toward: "less", step: "1" },
  ],
}

/**
 * Wind on a light net and on its posts. The posts' timber is a row of `members`, by {@link NET_POST}.
 *
 * Needs: net_mesh, net_height, net_ends, net_sides, net_runs, net_guy_reach, platform_length, platform_width,
 * platform_area, skid_overhang, height_above_ground, dead_load, dressed_sizes, net_guys_per_corner, tile_thickness,
 * sheet_thickness, rim_depth, near_limit_share.
 * Gives: the names of `windPressure`; net_twine, net_post_size, net_post_soil, net_wind (one row, a column
 * a step), net_wind_factors, net_shape_factors, lateral_bearings, net_post_embedment, net_overturn_check.
 */
export const windOnNet: Section = {
  id: "wind",
  title: "Wind on the net and its posts",
  says: "What a bare net catches, how hard that bends its posts, and how deep a post that stands in the ground must go.",
  entries: [
    ...windPressure,
    {
      kind: "input",
      name: "net_twine",
      label: "Thickness of the net's twine",
      measure: "length",
      default: "1.5 mm",
      least: "0.2 mm",
      most: "10 mm",
      why: "Thin twine catches less wind.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "net_post_size",
      label: "Size of the net posts",
      measure: "text",
      default: "4x4",
      choices: ["2x4", "38x89", "4x4", "89x89", "4x6", "89x140", "6x6", "140x140"],
      why: "Of the same species and grade as the frame. The wind may come from any side, so the narrow side counts.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "net_post_soil",
      label: "Net posts stand in",
      measure: "text",
      default: SOILS[0],
      choices: [...SOILS, FRAME],
      why: "In holes in your soil, just outside the frame; or bolted to the outside of its rim, which holds a low net only: the rim is not deep enough to keep two bolts apart.",
      sources: [USER, LATERAL_BEARING],
    },
    factors,
    SHAPES,
    SOIL_TABLE,
    {
      kind: "table",
      name: "net_wind",
      label: "Wind on the net and on a post",
      why: "Every step, in the order of the calculation, in one row.",
      sources: [WIND_OPEN_FRAMES, STATICS],
      cautions: [DECIDES],
      rows: { kind: "formula", formula: "1" },
      columns: STEPS,
    },
    embedment,
    overturn,
  ],
}
