import type { Column, MeasureId, Section, Source, TableEntry } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import {
  ASK_FIRST,
  BUILDING_THRESHOLD_ONTARIO,
  DECK_EXEMPTION_CITY,
  DECK_EXEMPTION_COUNTY,
  DECK_HEIGHT_ONTARIO,
  FROST_PRACTICE,
  GEOMETRY,
  GUARD_IRC,
  GUARD_ONTARIO,
  SHED_EXEMPTION_IBC,
  SHED_EXEMPTION_ONTARIO,
  STAIR_IRC,
  USER,
  USER_AUTHORITY,
} from "../sources.ts"
import { FROST_RISE } from "../sources-actions.ts"
import {
  FROST_FREE_STANDING,
  FROST_MINNESOTA,
  FROST_ONTARIO,
  GUARD_SLOPE_SOUTH_CAROLINA,
} from "../sources-frame.ts"
import { figureTable } from "../strength/figure-table.ts"

/** A figure of another place: what it is of, where it holds, the figure, what to mind, and who says so. */
interface Elsewhere {
  readonly what: string
  readonly place: string
  readonly figure: string
  readonly mind: string
  readonly source: Source
}

const AREAS: readonly Elsewhere[] = [
  {
    what: "free-standing deck",
    place: "one Californian city",
    figure: "200 ft2",
    mind: "a permit also for any deck more than 30 in high, attached to a house or serving its exit door",
    source: DECK_EXEMPTION_CITY,
  },
  {
    what: "small building",
    place: "model code for buildings other than houses",
    figure: "120 ft2",
    mind: "for sheds and the like: ask whether a platform counts as one",
    source: SHED_EXEMPTION_IBC,
  },
  {
    what: "storage shed",
    place: "Ontario",
    figure: "15 m2",
    mind: "for storage only; a platform to play or sit on is not one",
    source: SHED_EXEMPTION_ONTARIO,
  },
  {
    what: "any other structure",
    place: "Ontario",
    figure: "10 m2",
    mind: "the use decides which of Ontario's two areas holds: say what it is for when you ask",
    source: BUILDING_THRESHOLD_ONTARIO,
  },
  {
    what: "let off the frost depth",
    place: "Ontario",
    figure: "55 m2",
    mind: "one storey, standing free, and low as well",
    source: FROST_ONTARIO,
  },
  {
    what: "light structure let off the frost depth",
    place: "Connecticut",
    figure: "600 ft2",
    mind: "also lets off a deck that no house holds up",
    source: FROST_FREE_STANDING,
  },
]

const HEIGHTS: readonly Elsewhere[] = [
  {
    what: "height of a deck",
    place: "one county in Washington State",
    figure: "30 in",
    mind: "measured down to the lowest ground within 6 ft of the deck",
    source: DECK_EXEMPTION_COUNTY,
  },
  {
    what: "height of a deck",
    place: "Ontario, several cities",
    figure: "600 mm",
    mind: "a permit above it",
    source: DECK_HEIGHT_ONTARIO,
  },
  {
    what: "drop that needs a guard",
    place: "model house code",
    figure: "30 in",
    mind: "within 3 ft of the edge",
    source: GUARD_IRC,
  },
  {
    what: "drop that needs a guard",
    place: "Ontario",
    figure: "600 mm",
    mind: "also where the ground within 1.2 m falls away more than one in two",
    source: GUARD_ONTARIO,
  },
  {
    what: "ground that counts for a guard",
    place: "Ontario",
    figure: "1200 mm",
    mind: "measured out from the edge; the model house code takes 36 in",
    source: GUARD_ONTARIO,
  },
  {
    what: "height let off the frost depth",
    place: "Ontario",
    figure: "600 mm",
    mind: "from the ground to the underside of the joists",
    source: FROST_ONTARIO,
  },
  {
    what: "frost depth in a cold place",
    place: "Minnesota, northern zone",
    figure: "60 in",
    mind: "differs from county to county: ask for yours",
    source: FROST_MINNESOTA,
  },
]

const SLOPES: readonly Elsewhere[] = [
  {
    what: "slope that needs a guard",
    place: "South Carolina",
    figure: "3/12",
    mind: "within 36 in of the edge, however small the drop",
    source: GUARD_SLOPE_SOUTH_CAROLINA,
  },
  {
    what: "slope that needs a guard",
    place: "Ontario",
    figure: "1/2",
    mind: "within 1.2 m of the edge",
    source: GUARD_ONTARIO,
  },
]

/** Figures of other places as a table, shown so that a reader knows what to ask for. No check leans on them. */
function elsewhere(
  name: string,
  label: string,
  measure: MeasureId,
  column: Pick<Column, "name" | "label" | "why">,
  rows: readonly Elsewhere[],
): TableEntry {
  const sources = [...new Set(rows.map(({ source }) => source))]
  return {
    kind: "table",
    name,
    label,
    why: "What other places say, so that you know what to ask for. Ask for your own place's figures.",
    sources,
    rows: { kind: "figures" },
    columns: [
      {
        name: "what",
        label: "What",
        why: "What the figure is of.",
        sources,
        measure: "text",
        values: rows.map(({ what }) => what),
      },
      {
        name: "place",
        label: "Where",
        why: "Where it holds.",
        sources,
        measure: "text",
        values: rows.map(({ place }) => place),
      },
      { ...column, sources, measure, values: rows.map(({ figure }) => figure) },
      {
        name: "mind",
        label: "Mind",
        why: "What else the place says about it.",
        sources,
        measure: "text",
        values: rows.map(({ mind }) => mind),
      },
      {
        name: "source",
        label: "Who says so",
        why: "The text that the figure is from, and its record.",
        sources,
        measure: "text",
        values: rows.map(({ source: { title, record } }) => `${title} (${record ?? "no record"})`),
      },
    ],
  }
}

const rises = figureTable({
  name: "frost_rises",
  label: "How far supports may rise in winter",
  why: "Only to show what to expect: supports rise unevenly, the shaded side more. Keep packers at hand, and the frame loose enough to be levelled again.",
  sources: [FROST_RISE, FROST_PRACTICE],
  columns: {
    soil: {
      label: "Soil under the stone",
      measure: "text",
      why: "Silt draws water up to the frost and swells most; clean gravel hardly moves.",
    },
    share: {
      label: "Rises by",
      measure: "share",
      why: "Rough share of the depth frozen, with water to be had. A wet winter can double it.",
    },
  },
  rows: [
    { soil: "gravel or coarse sand", share: "0 %" },
    { soil: "clay", share: "3 %" },
    { soil: "silt or fine sand", share: "6 %" },
  ],
})

const frostRises: TableEntry = {
  ...rises,
  cautions: ["Doors of a shed on it may jam in winter. Fix no rigid pipe or cable across the gap."],
  columns: [
    ...rises.columns,
    {
      name: "rise",
      label: "A support may rise by about",
      measure: "length",
      formula: "share * MAX(0; frost_depth - least_dig)",
      why: "Of the soil that freezes below the shallowest bed of stone: stone drains and does not swell, the soil under it does.",
      sources: [FROST_RISE, GEOMETRY],
    },
  ],
}

/**
 * Whether frost decides how deep the platform has to stand. Two separate questions, as the codes ask them: whether it
 * hangs on a house, and how large and how high it is.
 *
 * `depth`: of what lies under the surface and on the lines of support, a formula: the height is to its underside.
 *
 * Needs: platform_area, height_above_ground, surface_build_up, least_dig, near_limit_share.
 */
export const frostUnder = (depth: string): Section => ({
  id: "frost",
  title: "Frost",
  says: "Blocks on the surface rise and sink with the frost. Your place may allow that for a low platform that stands free.",
  entries: [
    {
      kind: "input",
      name: "frost_depth",
      label: "Frost depth at your place",
      why: "How deep the ground freezes. Blocks on the surface stand above it and will move; the figure shows how far off a footing would be.",
      sources: [USER_AUTHORITY, FROST_PRACTICE],
      cautions: [
        "Surface blocks heave. Keep the platform clear of the house, on drained stone, and level it again in spring.",
      ],
      measure: "length",
      default: null,
      least: "0 in",
      most: "20 ft",
    },
    frostRises,
    {
      kind: "input",
      name: "buildings_touched",
      label: "Buildings that it is fixed to",
      why: "A platform that hangs on a house has to move with the house: it then needs footings below the frost.",
      sources: [USER, FROST_FREE_STANDING],
      measure: "count",
      default: "0",
      least: "0",
      most: "10",
    },
    {
      kind: "check",
      name: "free_standing_check",
      label: "Does it stand free?",
      why: "The lightening for frost is for platforms that no building holds up: none may be touched.",
      sources: [FROST_FREE_STANDING, FROST_PRACTICE],
      measure: "count",
      demand: "buildings_touched",
      limit: "0",
      sense: "at_most",
      advice: ["Keep a gap to the building, or have footings below the frost designed."],
    },
    {
      kind: "input",
      name: "frost_area_limit",
      label: "Largest area let off the frost depth",
      why: "Some codes let small structures stand above the frost. Ask yours for its area.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "area",
      default: null,
      least: "1 ft2",
    },
    {
      kind: "check",
      name: "frost_area_check",
      label: "Small enough to stand above the frost?",
      why: "Holds the platform against the area that your place allows.",
      sources: [USER_AUTHORITY],
      measure: "area",
      demand: "platform_area",
      limit: "frost_area_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "Make the platform smaller than {frost_area_limit}, or have footings below the frost designed.",
      ],
    },
    {
      kind: "input",
      name: "frost_height_limit",
      label: "Greatest height let off the frost depth",
      why: "Measured from the ground to the underside of the joists. Ask whether your place has such a limit.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "1 in",
    },
    {
      kind: "check",
      name: "frost_height_check",
      label: "Low enough to stand above the frost?",
      why: "The height that the frost rule asks about; not the one of the permit. Holds the joists' underside against the height that your place allows.",
      sources: [USER_AUTHORITY],
      measure: "length",
      demand: `height_above_ground - surface_build_up - ${depth}`,
      limit: "frost_height_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "The joists' underside stands higher above the lowest ground than {frost_height_limit}: lower the platform or have footings below the frost designed.",
      ],
    },
  ],
})

/** Frost under a platform of joists. */
export const frost: Section = frostUnder("joist_depth")

/** What the place allows: limits that the user's own authority decides, and the checks against them. */
export const limits: Section = {
  id: "limits",
  title: "Limits of the place",
  says: "What your own authority allows. Leave a limit blank until you have asked; its check then waits for you.",
  entries: [
    {
      kind: "input",
      name: "area_limit",
      label: "Largest area without further permission",
      why: "Many places ask for a permit above some area. Ask yours, and write its figure here with the name of who told you in your notes.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      cautions: [
        "A small or low platform may still need a permit. Boundary distances, easements and drainage rules hold whatever its size. Ask before you buy anything.",
      ],
      measure: "area",
      default: null,
      least: "1 ft2",
    },
    {
      kind: "check",
      name: "area_limit_check",
      label: "Area against your limit",
      why: "Shows how near the platform is to the area at which your place asks for more.",
      sources: [USER_AUTHORITY],
      measure: "area",
      demand: "platform_area",
      limit: "area_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "At this width a length of {length_within_area_limit} would stay within {area_limit}; or apply for the permit.",
      ],
    },
    {
      kind: "formula",
      name: "length_within_area_limit",
      label: "Longest length within your area limit",
      why: "How long the platform could be at its present width.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "area_limit / platform_width",
    },
    {
      kind: "input",
      name: "height_limit",
      label: "Greatest height without further permission",
      why: "Many places ask for a permit above some height of the walking surface over the ground beside it. Ask yours, and from where they measure.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "1 in",
    },
    {
      kind: "check",
      name: "height_limit_check",
      label: "Height against your limit",
      why: "The height is taken to the lowest ground beside the platform, which is what inspectors measure on a slope.",
      sources: [USER_AUTHORITY],
      measure: "length",
      demand: "height_above_ground",
      limit: "height_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "It stands {height_above_ground} above its lowest side, where {height_limit} is allowed. Lower the underside clearance, choose shallower timbers, turn the platform along the slope, or apply for the permit.",
      ],
    },
    {
      kind: "input",
      name: "guard_height_limit",
      label: "Drop that needs a guard",
      why: "Above some drop, a railing is required. Ask your authority for the figure.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "1 in",
    },
    {
      kind: "input",
      name: "guard_reach",
      label: "Guard: ground counts this far from the edge",
      why: "Somebody who falls rolls on, so codes look at the ground some way out from the edge too.",
      sources: [GUARD_IRC, USER_AUTHORITY],
      measure: "length",
      default: "36 in",
      least: "0 in",
      most: "10 ft",
    },
    {
      kind: "formula",
      name: "drop_within_reach",
      label: "Greatest drop within that reach",
      why: "From the walking surface to the lowest ground that counts, with the slope carried on beyond the low corner.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "top_level - ground_low + guard_reach * ground_steepness",
    },
    {
      kind: "check",
      name: "guard_check",
      label: "Is a guard needed?",
      why: "Fails when the drop is more than your limit: then a guard must be designed, which this workbook does not do.",
      sources: [USER_AUTHORITY],
      cautions: ["A net or a low edge board is not a guard and must not be leaned on as one."],
      measure: "length",
      demand: "drop_within_reach",
      limit: "guard_height_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "The drop is {drop_within_reach}: plan a guard to your code, or lower the platform or raise the ground beside it until the drop is less.",
      ],
    },
    {
      kind: "input",
      name: "guard_slope_limit",
      label: "Slope beside it that needs a guard",
      why: "Some codes ask for a guard beside steep ground whatever the drop. Ask whether yours does, and write rise over run.",
      sources: [USER_AUTHORITY, GUARD_SLOPE_SOUTH_CAROLINA, GUARD_ONTARIO],
      measure: "ratio",
      default: null,
      least: "1/100",
      most: "2",
    },
    {
      kind: "check",
      name: "guard_slope_check",
      label: "Is the ground beside it too steep to go without a guard?",
      why: "The steepest way down is taken, as it may lie beside any edge. Ground beyond the platform is taken to fall as it does below: look at it.",
      sources: [USER_AUTHORITY],
      measure: "ratio",
      demand: "ground_steepness",
      limit: "guard_slope_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "The ground falls at {ground_steepness}: grade it flatter beside the platform, or plan a guard to your code.",
      ],
    },
    {
      kind: "input",
      name: "riser_limit",
      label: "Highest step allowed",
      why: "No single step up may be higher than this. It decides how many steps each side needs.",
      sources: [STAIR_IRC, USER_AUTHORITY],
      measure: "length",
      default: "7 3/4 in",
      least: "3 in",
      most: "12 in",
    },
    {
      kind: "input",
      name: "boundary_distance",
      label: "Distance to the nearest boundary",
      why: "Measured from the outside of the frame, or of the net if that stands further out.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "0 ft",
    },
    {
      kind: "input",
      name: "boundary_distance_least",
      label: "Least distance allowed",
      why: "Zoning keeps structures off the boundary, small ones too. People have had to move finished work.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "0 ft",
    },
    {
      kind: "check",
      name: "boundary_check",
      label: "Far enough from the boundary?",
      why: "Holds what you measured against what your place asks.",
      sources: [USER_AUTHORITY],
      measure: "length",
      demand: "boundary_distance",
      limit: "boundary_distance_least",
      sense: "at_least",
      near: "near_limit_share",
      advice: ["Move the platform until it is at least {boundary_distance_least} from the boundary."],
    },
    elsewhere(
      "elsewhere_areas",
      "Elsewhere: areas",
      "area",
      { name: "area", label: "Area", why: "Up to it, less is asked." },
      AREAS,
    ),
    elsewhere(
      "elsewhere_heights",
      "Elsewhere: heights and depths",
      "length",
      { name: "height", label: "Height, depth or reach", why: "Above it, more is asked." },
      HEIGHTS,
    ),
    elsewhere(
      "elsewhere_slopes",
      "Elsewhere: slopes",
      "ratio",
      {
        name: "slope",
        label: "Slope, rise over run",
        why: "On steeper ground beside the edge, a guard is asked for.",
      },
      SLOPES,
    ),
  ],
}

/** Limits of a place, for a template that works out the posts of a guard. */
export const guardedLimits: Section = adapt(limits, {
  whys: {
    guard_check:
      "Fails when the drop is more than your limit: then a guard must be designed. The section on its posts works out these and their bolts, and no more.",
  },
})
