import type { Definition } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { DECK_DRAWINGS } from "../drawings/index.ts"
import { BY_JOISTS_AND_SUPPORTS, THRIFT_OF_TIMBER } from "../explorations.ts"
import { OFFERS } from "../offers.ts"
import { beamPlankScrews, beamTies } from "../parts/beam-fixings.ts"
import { beamJoints, beamLayout } from "../parts/beams.ts"
import { blocking } from "../parts/blocking.ts"
import { BOARDS_ON_JOISTS } from "../parts/board-bearers.ts"
import { boardScrewsOn } from "../parts/board-screws.ts"
import { boardsOn } from "../parts/boards.ts"
import { GREATEST_PRESSURE, reactionCheck, withReactions } from "../parts/by-statics.ts"
import { dig } from "../parts/dig.ts"
import { fabric } from "../parts/fabric.ts"
import { fixingsOf } from "../parts/fixings.ts"
import { footings } from "../parts/footings.ts"
import { blockingEnds, joistEnds, rimJointBlocks } from "../parts/frame-screws.ts"
import { frost } from "../parts/frost.ts"
import { GUARDED_RIM, guardPosts } from "../parts/guard-posts.ts"
import { haulage } from "../parts/haulage.ts"
import { heights } from "../parts/heights.ts"
import { houseRules } from "../parts/house-rules.ts"
import { joists } from "../parts/joists.ts"
import { guardedLimits } from "../parts/limits.ts"
import { supportLoadsOn } from "../parts/loads.ts"
import { massesOf } from "../parts/masses.ts"
import { memberTimber, publishedStrengths } from "../parts/member-timber.ts"
import { blocksCalled, STONE } from "../parts/placed-materials.ts"
import { pricesOf } from "../parts/prices.ts"
import { setOutOf } from "../parts/set-out.ts"
import { ground, size } from "../parts/site.ts"
import { BEAMS_ON_PADS } from "../parts/supported-lines.ts"
import { timberOf } from "../parts/timber.ts"
import { treatmentOf } from "../parts/treatment.ts"
import { wetSoil } from "../parts/wet-soil.ts"
import { wood } from "../parts/wood.ts"
import { stagesOf, workOf } from "../parts/work.ts"
import { consumablesBought } from "../stages/consumables.ts"
import { DECK_THINGS } from "./bought.ts"
import { deckBuildUp } from "./build-up.ts"
import { DECK_JOB } from "./job.ts"
import { padBeds, padLayout, pads } from "./pads.ts"
import { fasteners, strength } from "./strength.ts"
import { DECK_MEMBERS } from "./timber.ts"

/** A low deck that touches no building: boards on joists on built-up beams on pads over tamped stone. */
export const groundLevelDeck: Definition = {
  ...OFFERS["ground-level-deck"],
  unitSystem: "us",
  sections: [
    adapt(size, { defaults: { platform_length: "14 ft", platform_width: "10 ft 6 in" } }),
    adapt(ground, { defaults: { ground_fall_length: "4 in", ground_fall_width: "1 in" } }),
    guardedLimits,
    frost,
    beamLayout,
    withReactions(padLayout),
    adapt(supportLoadsOn(BEAMS_ON_PADS), { defaults: { live_load: "40 psf" } }),
    dig,
    padBeds,
    fabric,
    pads,
    beamJoints,
    joists,
    adapt(blocking, { defaults: { blocking_rows: "1" } }),
    wood,
    boardsOn(BOARDS_ON_JOISTS),
    memberTimber,
    { ...strength, entries: [...strength.entries, reactionCheck("pad", BEAMS_ON_PADS.remedies)] },
    wetSoil("MIN(block_length; block_course_width)", BEAMS_ON_PADS.remedies, GREATEST_PRESSURE),
    publishedStrengths,
    fixingsOf([
      beamPlankScrews,
      beamTies,
      joistEnds,
      blockingEnds,
      rimJointBlocks,
      boardScrewsOn(BOARDS_ON_JOISTS),
    ]),
    timberOf(DECK_MEMBERS),
    treatmentOf(
      [
        {
          member: "beams",
          treatment: "beam_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance",
          hardToReplace: true,
        },
        {
          member: "joists and blocking",
          treatment: "joist_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance + beam_depth",
          hardToReplace: true,
        },
        {
          member: "rims",
          treatment: "rim_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance + beam_depth + joist_depth - rim_depth",
          hardToReplace: true,
        },
        {
          member: "boards",
          treatment: "board_treatment",
          startsWith: "UC3B",
          clearance: "underside_clearance + beam_depth + joist_depth",
          hardToReplace: false,
        },
      ],
      ["SUM(joists.length)", "SUM(rim_pieces.length)", "blocking_length"],
    ),
    pricesOf([...DECK_JOB.things, ...consumablesBought(DECK_JOB.consumables)]),
    massesOf(DECK_THINGS, DECK_MEMBERS, [blocksCalled("block"), STONE]),
    haulage,
    deckBuildUp,
    heights,
    guardPosts(GUARDED_RIM),
    fasteners,
    footings,
    setOutOf({
      noun: "beam",
      nouns: "beams",
      centres: "beams.y",
      measured: "across the width",
      count: "beam_count",
      thickness: "beam_thickness",
      supports: { noun: "pad", courses: true },
    }),
    workOf(DECK_JOB),
    houseRules,
  ],
  stages: stagesOf(DECK_JOB),
  cautions: [
    "Your local authority and its code decide what may be built, and whether a permit is needed. Ask before you buy or dig.",
    "This deck touches no building. One that leans on a house, or that is high enough to fall from, is designed and checked in another way.",
    "Have buried cables and pipes marked before you dig, however shallow the holes are.",
    "This workbook counts and checks by rules of the trade; a licensed designer decides where the ground is soft, steep or made up, or where many people come together.",
    "Wear eye, ear and breathing protection when you saw treated timber or concrete, and lift heavy pieces with a second person.",
  ],
  drawings: DECK_DRAWINGS,
  thrift: THRIFT_OF_TIMBER,
  explorations: BY_JOISTS_AND_SUPPORTS,
}
