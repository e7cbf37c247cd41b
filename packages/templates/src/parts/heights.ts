import type { InputEntry, Section } from "@pegbook/engine"
import { SIDE_DROP_READS, solveSideDrops } from "../solvers/side-drops.ts"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, STAIR_IRC, USER } from "../sources.ts"
import { withStepPlaces } from "./step-places.ts"
import { groundAt, groundFormula } from "./survey-between.ts"

/** Which sides have steps. */
interface StepSides {
  readonly entries: readonly InputEntry[]
  /** Formula, for a row of `climbs`: yes where steps are wanted at its side `end`. */
  readonly wanted: string
}

function side(name: string, label: string, startsWith: "yes" | "no"): InputEntry {
  return {
    kind: "input",
    name,
    label: `Steps at ${label}`,
    measure: "yes_no",
    default: startsWith,
    why: "Each side has its own drop, and so its own number of steps.",
    sources: [USER],
  }
}

const longSides: StepSides = {
  entries: [
    side("steps_first_side", "the first long side", "no"),
    side("steps_other_side", "the other long side", "no"),
  ],
  wanted: 'IF(end = "first long side"; steps_first_side; steps_other_side)',
}

const anySide: StepSides = {
  entries: [
    side("steps_high_end", "the high end", "yes"),
    side("steps_low_end", "the low end", "yes"),
    ...longSides.entries,
  ],
  wanted: `IF(end = "high end"; steps_high_end; IF(end = "low end"; steps_low_end; ${longSides.wanted}))`,
}

/**
 * How high the platform stands, all the way round, and the steps up to it. A template that takes this part
 * gives `frame_build_up` (underside of the lowest timber to the top of the frame) and `surface_build_up` (the
 * frame's top to the walking surface).
 */
const heightsWith = (steps: StepSides): Section => ({
  id: "heights",
  title: "Heights and steps",
  says: "How high the surface is above the ground on every side, and how many steps each side needs.",
  entries: [
    {
      kind: "formula",
      name: "top_height",
      label: "Surface above the high corner",
      why: "Clearance, frame and surface, added up: the least height anywhere on the edge.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "underside_clearance + frame_build_up + surface_build_up",
    },
    {
      kind: "formula",
      name: "top_level",
      label: "Level of the surface",
      why: "In the same levels as the ground.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "underside_level + frame_build_up + surface_build_up",
    },
    {
      kind: "figure",
      name: "edge_stations_per_side",
      label: "Stations on each side",
      why: "At how many places along each side the height is taken, the first corner included.",
      sources: [COMMON_PRACTICE],
      measure: "count",
      value: "4",
    },
    groundAt("edge_stations", "the edge"),
    {
      kind: "table",
      name: "edge_stations",
      label: "Height round the edge",
      why: "The surface above the ground at each station round the platform, in order from the first corner.",
      sources: [GEOMETRY],
      rows: { kind: "formula", formula: "4 * edge_stations_per_side" },
      columns: [
        {
          name: "side",
          label: "Side",
          why: "1 and 3 are the long sides, 2 the far end, 4 the first end.",
          sources: [GEOMETRY],
          measure: "count",
          formula: "INT((ROW() - 1) / edge_stations_per_side) + 1",
        },
        {
          name: "along",
          label: "Share of the side",
          why: "0 at the corner where the side begins.",
          sources: [GEOMETRY],
          measure: "ratio",
          formula: "(ROW() - 1 - (side - 1) * edge_stations_per_side) / edge_stations_per_side",
        },
        {
          name: "x",
          label: "Along the length",
          why: "Where the station is.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "platform_length * IF(side = 1; along; IF(side = 2; 1; IF(side = 3; 1 - along; 0)))",
        },
        {
          name: "y",
          label: "Across the width",
          why: "Where the station is.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "platform_width * IF(side = 1; 0; IF(side = 2; along; IF(side = 3; 1; 1 - along)))",
        },
        {
          name: "ground",
          label: "Ground",
          why: "Level of the ground beside the platform there.",
          sources: [GEOMETRY],
          measure: "length",
          formula: groundFormula("edge_stations"),
        },
        {
          name: "height",
          label: "Surface above the ground",
          why: "What somebody who steps off here drops.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "top_level - ground",
        },
      ],
    },
    {
      kind: "formula",
      name: "height_above_ground",
      label: "Greatest height above the ground",
      why: "To the lowest ground beside the platform: the height that permit rules ask about.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "MAX(edge_stations.height)",
    },
    {
      kind: "formula",
      name: "height_least",
      label: "Least height above the ground",
      why: "Where a trolley or a wheelchair gets on most easily.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "MIN(edge_stations.height)",
    },
    {
      kind: "table",
      name: "side_drops",
      label: "Greatest drop along each side",
      why: "Where somebody who steps off a side falls farthest.",
      sources: [GEOMETRY],
      rows: { kind: "solved", from: SIDE_DROP_READS, solve: solveSideDrops },
      columns: [
        {
          name: "side",
          label: "Side",
          why: "As in the heights round the edge.",
          sources: [GEOMETRY],
          measure: "count",
        },
        {
          name: "drop",
          label: "Drop",
          why: "At its worst station, both corners with it.",
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "x",
          label: "Along the length",
          why: "Where that is.",
          sources: [GEOMETRY],
          measure: "length",
        },
        {
          name: "y",
          label: "Across the width",
          why: "Where that is.",
          sources: [GEOMETRY],
          measure: "length",
        },
      ],
    },
    ...steps.entries,
    {
      kind: "table",
      name: "climbs",
      label: "Getting up at each side",
      why: "From the ground at the middle of each side to the surface: steps or ramps stand there. The end with the higher ground first, then the other end and the two long sides.",
      sources: [GEOMETRY],
      cautions: [
        "Measure the rise where the foot of the steps will stand. Steps need a firm, level landing, and from some number of steps a handrail: ask your authority.",
      ],
      rows: { kind: "formula", formula: "4" },
      columns: [
        {
          name: "end",
          label: "Side",
          why: "The higher end first. The first long side is the one that levels across are measured from.",
          sources: [GEOMETRY],
          measure: "text",
          formula:
            'IF(ROW() = 1; "high end"; IF(ROW() = 2; "low end"; IF(ROW() = 3; "first long side"; "other long side")))',
        },
        {
          name: "side",
          label: "Its number",
          why: "As in the heights round the edge.",
          sources: [GEOMETRY],
          measure: "count",
          formula:
            "IF(ROW() > 2; 2 * ROW() - 5; IF(INDEX(ends.ground; 1) >= INDEX(ends.ground; 2); IF(ROW() = 1; 4; 2); IF(ROW() = 1; 2; 4)))",
        },
        {
          name: "steps",
          label: "Steps here?",
          why: "As you chose.",
          sources: [USER],
          measure: "yes_no",
          formula: steps.wanted,
        },
        {
          name: "x",
          label: "At, along the length",
          why: "Where this end of the platform is: the first end's 0 or the whole length.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "INDEX(ends.x; IF((INDEX(ends.ground; 1) >= INDEX(ends.ground; 2)) = (ROW() = 1); 1; 2))",
        },
        {
          name: "ground",
          label: "Ground",
          why: "At the middle of the side.",
          sources: [GEOMETRY],
          measure: "length",
          formula:
            "IF(ROW() > 2; INDEX(ends.ground; ROW()); IF(ROW() = 1; MAX(INDEX(ends.ground; 1); INDEX(ends.ground; 2)); MIN(INDEX(ends.ground; 1); INDEX(ends.ground; 2))))",
        },
        {
          name: "rise",
          label: "Rise",
          why: "From the ground there to the surface.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "top_level - ground",
        },
        {
          name: "risers",
          label: "Steps up",
          why: "How often you lift your foot. The last one is onto the platform itself.",
          sources: [STAIR_IRC],
          measure: "count",
          formula: "MAX(0; ROUNDUP(rise / riser_limit - rounding_tolerance; 0))",
        },
        {
          name: "riser_height",
          label: "Height of each step",
          why: "All steps of one flight must be alike: people trip on the odd one.",
          sources: [STAIR_IRC],
          measure: "length",
          formula: "IF(risers = 0; rise; rise / risers)",
        },
        {
          name: "drop",
          label: "Greatest drop along the side",
          why: "To the lowest ground beside it. Where it is much more than the rise, measure where the steps will stand.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "INDEX(side_drops.drop; side)",
        },
        {
          name: "within",
          label: "Within the limit anywhere on the side?",
          why: "Yes: as many steps stay within your limit even where the drop is greatest. No: keep them to the middle, or make one step more.",
          sources: [STAIR_IRC, USER],
          measure: "yes_no",
          formula: "drop / MAX(1; risers) <= riser_limit",
        },
        {
          name: "treads",
          label: "Treads to make",
          why: "One fewer than the steps: the platform is the last tread. None where you want no steps.",
          sources: [ARITHMETIC],
          measure: "count",
          formula: "IF(steps; MAX(0; risers - 1); 0)",
        },
        {
          name: "ramp_length",
          label: "Length of a ramp",
          why: "Along the ground, as if it were level in front.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "rise / ramp_slope",
        },
      ],
    },
    {
      kind: "formula",
      name: "risers_high_end",
      label: "Steps up at the high end",
      why: "How often you lift your foot. The last one is onto the platform itself.",
      sources: [STAIR_IRC],
      measure: "count",
      formula: "INDEX(climbs.risers; 1)",
    },
    {
      kind: "formula",
      name: "riser_height_high_end",
      label: "Height of each step at the high end",
      why: "All steps of one flight must be alike: people trip on the odd one.",
      sources: [STAIR_IRC],
      measure: "length",
      formula: "INDEX(climbs.riser_height; 1)",
    },
    {
      kind: "formula",
      name: "risers_low_end",
      label: "Steps up at the low end",
      why: "On a slope the two ends often need different numbers of steps.",
      sources: [STAIR_IRC],
      cautions: [
        "Steps need a firm, level landing, and from some number of steps a handrail: ask your authority.",
      ],
      measure: "count",
      formula: "INDEX(climbs.risers; 2)",
    },
    {
      kind: "formula",
      name: "riser_height_low_end",
      label: "Height of each step at the low end",
      why: "All steps of one flight must be alike.",
      sources: [STAIR_IRC],
      measure: "length",
      formula: "INDEX(climbs.riser_height; 2)",
    },
    {
      kind: "input",
      name: "ramp_slope",
      label: "Slope of a ramp",
      why: "Rise over run. One in twelve is the usual steepest for a wheelchair.",
      sources: [COMMON_PRACTICE, USER],
      measure: "ratio",
      default: "1/12",
      least: "1/50",
      most: "1/4",
    },
    {
      kind: "formula",
      name: "ramp_length",
      label: "Length of a ramp at the high end",
      why: "The high end is where a ramp is shortest.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "INDEX(climbs.ramp_length; 1)",
    },
  ],
})

/** Steps at whichever of the four sides the user wants them. */
export const heights: Section = withStepPlaces(heightsWith(anySide))

/** Where the two ends have a ramp, steps or nothing. Needs access_high_end, access_low_end. */
export const heightsBesideRamps: Section = heightsWith({
  entries: longSides.entries,
  wanted: `IF(end = "high end"; access_high_end = "steps"; IF(end = "low end"; access_low_end = "steps"; ${longSides.wanted}))`,
})
