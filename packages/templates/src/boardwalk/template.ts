import type { Definition, Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { BOARDWALK_DRAWINGS } from "../drawings/index.ts"
import { explorationsBy, THRIFT_OF_TIMBER } from "../explorations.ts"
import { OFFERS } from "../offers.ts"
import { boardsOn } from "../parts/boards.ts"
import { cleats } from "../parts/cleats.ts"
import { drainage } from "../parts/drainage.ts"
import { edgeTrim } from "../parts/edge-trim.ts"
import { fabric } from "../parts/fabric.ts"
import { frostUnder } from "../parts/frost.ts"
import { guardPosts } from "../parts/guard-posts.ts"
import { haulage } from "../parts/haulage.ts"
import { heightsBesideRamps } from "../parts/heights.ts"
import { houseRules } from "../parts/house-rules.ts"
import { guardedLimits } from "../parts/limits.ts"
import { massesOf } from "../parts/masses.ts"
import { memberTimber, publishedStrengths } from "../parts/member-timber.ts"
import { STONE } from "../parts/placed-materials.ts"
import { pricesOf } from "../parts/prices.ts"
import { ramp } from "../parts/ramp.ts"
import { setOutOf } from "../parts/set-out.ts"
import { ground, size } from "../parts/site.ts"
import { sleepers } from "../parts/sleepers.ts"
import { stepPlaces } from "../parts/step-places.ts"
import { steps } from "../parts/steps.ts"
import { stringerJoints, stringers } from "../parts/stringers.ts"
import { wetSoil } from "../parts/wet-soil.ts"
import { wood } from "../parts/wood.ts"
import { stagesOf, workOf } from "../parts/work.ts"
import { consumablesBought } from "../stages/consumables.ts"
import { WALK_THINGS } from "./bought.ts"
import { buildUp } from "./build-up.ts"
import { WALK_JOB } from "./job.ts"
import { loads } from "./loads.ts"
import { screws } from "./screws.ts"
import { fasteners, strength } from "./strength.ts"
import { strips, supports, trenches, turf } from "./strips.ts"
import { timber, treatment, WALK_MEMBERS } from "./timber.ts"
import { BOARDS_ON_STRINGERS, SLEEPERS_ON_STRIPS } from "./walk.ts"

/** A walk may be narrower than a platform. */
const walkSize: Section = adapt(size, {
  least: { platform_width: "2 ft" },
  labels: {
    platform_length: "Length of the walk",
    platform_width: "Width of the walk",
    platform_area: "Area of the walk",
  },
  whys: {
    platform_length: "Along the walk, without ramps and steps. Nearly every count follows from it.",
    platform_width:
      "Across the walk: the length of the boards, but for what they overhang. Two people pass each other on 4 ft.",
  },
  defaults: { platform_length: "40 ft", platform_width: "4 ft" },
})

/** The frost rules ask for the height of the stringers' underside. */
const walkFrost: Section = adapt(frostUnder("stringer_depth"), {
  labels: { buildings_touched: "Buildings that the walk is fixed to" },
  whys: {
    buildings_touched:
      "Count a building also if the walk is the only way out of its door: a way out must not heave.",
    frost_rises:
      "Only to show what to expect: sleepers rise unevenly, the shaded ones more. Keep packers at hand, and level the walk again in spring.",
  },
})

const boards: Section = adapt(boardsOn(BOARDS_ON_STRINGERS), {
  labels: {
    board_overhang: "Boards beyond the walk's ends",
    board_end_overhang: "Boards beyond the walk's sides",
    board_cover_width: "Length to cover",
    board_row_length: "Length of a row, across the walk",
  },
  whys: {
    board_overhang: "0 where a ramp or steps begin at the end of the stringers.",
    board_end_overhang:
      "Mind the lengths sold: an inch at each side may take one board less out of each length.",
    board_cover_width: "The walk, and the overhang at both of its ends.",
  },
  defaults: {
    board_gap: "1/4 in",
    board_overhang: "0 in",
    board_stock: "8 ft, 10 ft, 12 ft, 14 ft, 16 ft",
  },
})

/** A garden walk of boards across stringers on sleepers, each on its own strip of stone. */
export const boardwalk: Definition = {
  ...OFFERS.boardwalk,
  unitSystem: "us",
  sections: [
    walkSize,
    adapt(ground, { defaults: { ground_fall_length: "3 in", ground_fall_width: "0 in" } }),
    guardedLimits,
    walkFrost,
    stringers,
    sleepers,
    supports,
    loads,
    turf,
    trenches,
    fabric,
    strips,
    drainage,
    stringerJoints,
    cleats,
    wood,
    boards,
    memberTimber,
    strength,
    wetSoil("sleeper_thickness", SLEEPERS_ON_STRIPS.remedies),
    fasteners,
    publishedStrengths,
    edgeTrim,
    buildUp,
    heightsBesideRamps,
    guardPosts({ noun: "outer stringer", depth: "stringer_depth", size: "stringer_size" }),
    ramp,
    { ...steps, entries: [...steps.entries, stepPlaces] },
    treatment,
    screws,
    timber,
    pricesOf([...WALK_JOB.things, ...consumablesBought(WALK_JOB.consumables)]),
    massesOf(WALK_THINGS, WALK_MEMBERS, [STONE]),
    haulage,
    setOutOf({
      noun: "sleeper",
      nouns: "sleepers",
      centres: "sleepers.x",
      measured: "along the length",
      count: "sleeper_count",
      thickness: "sleeper_thickness",
      supports: { noun: "strip of stone", courses: false },
    }),
    workOf(WALK_JOB),
    houseRules,
  ],
  stages: stagesOf(WALK_JOB),
  cautions: [
    "Your local authority and its code decide what may be built, and whether a permit is needed. Wetland, shores and banks of streams have rules of their own. Ask before you buy or dig.",
    "Have buried cables and pipes marked before you dig, however shallow the trenches are.",
    "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the public uses the walk, where it stands high or crosses water, or where the ground is soft, steep or made up.",
    "Wear eye, ear and breathing protection when you saw treated timber, and lift heavy pieces with a second person.",
    "Wet boards are slippery: brush leaves and moss off, and keep them out of deep shade where you can.",
  ],
  drawings: BOARDWALK_DRAWINGS,
  thrift: THRIFT_OF_TIMBER,
  explorations: explorationsBy({
    members: ["stringer_spacing_max", "stringer_count"],
    supports: "sleeper_spacing_max",
  }),
}
