import type { Column, Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { dig } from "../parts/dig.ts"
import { stoneBeds } from "../parts/stone-beds.ts"
import { supportLayoutUnder } from "../parts/supports.ts"
import { supportsTableUnder } from "../parts/supports-table.ts"
import { groundAt } from "../parts/survey-between.ts"
import { turfOff } from "../parts/turf.ts"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, STATICS, STRESS_SPREAD, STRIP_TOPSOIL } from "../sources.ts"
import { SLEEPERS_ON_STRIPS } from "./walk.ts"

const shared = supportsTableUnder(SLEEPERS_ON_STRIPS)

function sharedColumns(...names: readonly string[]): readonly Column[] {
  return names.map((name) => {
    const column = shared.columns.find((one) => one.name === name)
    if (column === undefined) throw new RangeError(`The table of supports has no column ${name}`)
    return column
  })
}

/** One row a sleeper: where it lies, the stone under it, and what it carries. */
const supportColumns: readonly Column[] = [
  {
    name: "line",
    label: "Sleeper",
    why: "Counted along the walk from the first end.",
    sources: [ARITHMETIC],
    measure: "count",
    formula: "ROW()",
  },
  {
    name: "x",
    label: "Along the walk",
    why: "From the first end to the middle of the sleeper.",
    sources: [GEOMETRY],
    measure: "length",
    formula: "INDEX(sleepers.x; line)",
  },
  {
    name: "y",
    label: "Across the walk",
    why: "The middle of the sleeper is the middle of the walk.",
    sources: [GEOMETRY],
    measure: "length",
    formula: "platform_width / 2",
  },
  ...sharedColumns("ground", "gap"),
  {
    name: "stone_top",
    label: "Top of the stone",
    why: "One level along the whole walk: the sleepers lie straight on it. Check it with a straight board and a level.",
    sources: [GEOMETRY],
    measure: "length",
    formula: "underside_level",
  },
  ...sharedColumns(
    "stone_bottom",
    "dig",
    "stone_extra",
    "stone",
    "stone_above_ground",
    "dig_volume",
    "stone_volume",
  ),
  {
    name: "load_area",
    label: "Area carried",
    why: "Half way to the sleepers on either side, over the whole width of the walk.",
    sources: [STATICS],
    measure: "area",
    formula: "INDEX(sleepers.carries; line) * platform_width",
  },
  ...sharedColumns("load"),
  {
    name: "pressure",
    label: "Pressure under the sleeper",
    why: "The load over the underside of the sleeper, before the stone spreads it.",
    sources: [STATICS],
    measure: "pressure",
    formula: "load / sleeper_seat",
  },
  {
    name: "spread_pressure",
    label: "Pressure under the stone",
    why: "The stone spreads the load before it reaches the soil. A second opinion; the check goes by the sleeper's underside.",
    sources: [STRESS_SPREAD],
    measure: "pressure",
    formula:
      "load / (MIN(stone_bed_length; sleeper_length + 2 * stone_spread * stone) * MIN(stone_bed_width; sleeper_thickness + 2 * stone_spread * stone))",
  },
]

/** The strips under the sleepers, one a row. */
export const supports: Section = {
  id: "supports",
  title: "The strips, one by one",
  says: "Where each sleeper lies, how deep to dig for its strip of stone, and what it carries.",
  entries: [
    ...adapt(supportLayoutUnder(SLEEPERS_ON_STRIPS), {
      whys: {
        underside_clearance:
          "The top of the stone above the ground at the high corner. Timber that touches soil rots; a little more air costs height.",
      },
      without: [
        "support_spacing_max",
        "support_end_offset",
        "sleeper_count",
        "support_spacing",
        "support_count",
        "support_stations",
        "ground_at_supports",
        "supports",
      ],
    }).entries,
    {
      kind: "formula",
      name: "support_count",
      label: "Strips of stone",
      why: "One under each sleeper: as many trenches to dig, to fill and to level.",
      sources: [GEOMETRY],
      measure: "count",
      formula: "sleeper_count",
    },
    {
      kind: "formula",
      name: "sleeper_seat",
      label: "Underside of a sleeper",
      why: "The face that presses on the stone.",
      sources: [GEOMETRY],
      measure: "area",
      formula: "sleeper_length * sleeper_thickness",
    },
    groundAt("supports", "the sleepers"),
    {
      ...shared,
      label: "Sleepers and their strips, one by one",
      why: "Every sleeper has its own ground and its own trench. Take this table outside with you.",
      columns: supportColumns,
    },
  ],
}

/** The trenches of the strips. */
export const trenches: Section = {
  ...adapt(dig, {
    labels: { greatest_dig: "Deepest trench", least_dig: "Shallowest trench" },
    whys: { dug_volume: "The trenches together. Cuts are measured in place." },
    without: ["dig_min"],
  }),
  says: "How deep each trench is, and how much soil there is to put somewhere.",
}

/** Turf and topsoil over the strips, and that every trench goes below them. */
export const turf: Section = {
  ...turfOff("strips_area"),
  entries: [
    {
      kind: "formula",
      name: "strips_area",
      label: "Ground under the strips",
      why: "Only what lies under stone is stripped; the grass between may stay, and dies in the shade.",
      sources: [GEOMETRY],
      measure: "area",
      formula: "support_count * stone_bed_length * stone_bed_width",
    },
    ...turfOff("strips_area").entries,
    {
      kind: "formula",
      name: "dig_min",
      label: "Dig at least",
      why: "Every trench goes down through turf and topsoil to firm soil.",
      sources: [STRIP_TOPSOIL],
      measure: "length",
      formula: "strip_depth",
    },
  ],
}

const adaptedBeds = adapt(stoneBeds, {
  labels: {
    stone_bed_length: "Length of a strip",
    stone_bed_width: "Width of a strip",
    stone_bed_margin_least: "Least stone beyond the sleeper",
  },
  whys: {
    stone_bed_length:
      "Across the walk. A little longer than the sleeper, so that its end does not break the edge.",
    stone_bed_width: "Along the walk. Wide enough to be tamped, and to spread the load.",
    stone_edge_height_max:
      "Where the ground falls away the stone stands proud. It must be held by an edging this high, or by soil banked against it.",
    stone_in_place: "All strips together, each with its own thickness.",
    stone_bed_margin_least: "So that the sleeper lies on stone that is held, not on its edge.",
    stone_missed_by_flat: "Where the ground is low the strips get thicker than planned.",
  },
  defaults: { stone_bed_length: "52 in", stone_bed_width: "12 in" },
  without: ["stone_bed_check"],
})

/** The stone in the trenches, and what to order. */
export const strips: Section = {
  ...adaptedBeds,
  id: "strips",
  title: "Strips of stone",
  says: "Crushed stone under every sleeper: how much in place, and how much to order loose.",
  entries: [
    ...adaptedBeds.entries,
    {
      kind: "check",
      name: "stone_bed_check",
      label: "Is the strip bigger than the sleeper?",
      why: "A sleeper at the edge of its strip tips. On the narrower side, each way.",
      sources: [COMMON_PRACTICE],
      measure: "length",
      demand: "MIN(stone_bed_length - sleeper_length; stone_bed_width - sleeper_thickness) / 2",
      limit: "stone_bed_margin_least",
      sense: "at_least",
      advice: ["Make the strip at least {stone_bed_margin_least} bigger than the sleeper on every side."],
    },
  ],
}
