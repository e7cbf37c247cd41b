import type { Definition } from "@pegbook/engine"
import { GAME_TABLE_DRAWINGS } from "../drawings/index.ts"
import { BY_JOISTS_AND_SUPPORTS, THRIFT_OF_TIMBER_AND_SHEETS } from "../explorations.ts"
import { OFFERS } from "../offers.ts"
import { blocking } from "../parts/blocking.ts"
import { blocks } from "../parts/blocks.ts"
import { loadedByStatics } from "../parts/by-statics.ts"
import { dig } from "../parts/dig.ts"
import { edgeBoards } from "../parts/edge-boards.ts"
import { fixings } from "../parts/fixings.ts"
import { frost } from "../parts/frost.ts"
import { haulage } from "../parts/haulage.ts"
import { heights } from "../parts/heights.ts"
import { houseRules } from "../parts/house-rules.ts"
import { joists } from "../parts/joists.ts"
import { limits } from "../parts/limits.ts"
import { supportLoads } from "../parts/loads.ts"
import { massesOf } from "../parts/masses.ts"
import { memberTimber, publishedStrengths } from "../parts/member-timber.ts"
import { net } from "../parts/net.ts"
import { blocksCalled, SHEETS, STONE, TILES } from "../parts/placed-materials.ts"
import { pricesOf } from "../parts/prices.ts"
import { setOutOf } from "../parts/set-out.ts"
import { sheets } from "../parts/sheets.ts"
import { ground, size } from "../parts/site.ts"
import { skidJoints, skidLayout } from "../parts/skids.ts"
import { stoneBeds } from "../parts/stone-beds.ts"
import { SKIDS } from "../parts/supported-lines.ts"
import { supportLayout } from "../parts/supports.ts"
import { tiles } from "../parts/tiles.ts"
import { PLATFORM_MEMBERS, timber } from "../parts/timber.ts"
import { treatment } from "../parts/treatment.ts"
import { wetSoil } from "../parts/wet-soil.ts"
import { windOnNet } from "../parts/wind-net.ts"
import { woodWithoutBoards } from "../parts/wood.ts"
import { stagesOf, workOf } from "../parts/work.ts"
import { consumablesBought } from "../stages/consumables.ts"
import { GAME_THINGS } from "./bought.ts"
import { buildUp } from "./build-up.ts"
import { gameSpace } from "./game-space.ts"
import { GAME_JOB } from "./job.ts"
import { fasteners, strength } from "./strength.ts"

/** An outdoor table-tennis platform on a sloping lawn: tiles on sheets on joists on skids on stacks of blocks. */
export const gameTablePlatform: Definition = {
  ...OFFERS["game-table-platform"],
  unitSystem: "us",
  sections: [
    gameSpace,
    size,
    ground,
    limits,
    frost,
    skidLayout,
    loadedByStatics(supportLayout),
    supportLoads,
    dig,
    stoneBeds,
    blocks,
    skidJoints,
    joists,
    blocking,
    sheets,
    memberTimber,
    strength,
    wetSoil("MIN(block_length; block_course_width)", SKIDS.remedies),
    publishedStrengths,
    tiles,
    edgeBoards,
    net,
    windOnNet,
    fasteners,
    fixings,
    timber,
    treatment,
    pricesOf([...GAME_JOB.things, ...consumablesBought(GAME_JOB.consumables)]),
    woodWithoutBoards,
    massesOf(GAME_THINGS, PLATFORM_MEMBERS, [SHEETS, TILES, blocksCalled("block"), STONE]),
    haulage,
    buildUp,
    heights,
    setOutOf({
      noun: "skid",
      nouns: "skids",
      centres: "skids.y",
      measured: "across the width",
      count: "skid_count",
      thickness: "skid_thickness",
      supports: { noun: "stack", courses: true },
    }),
    workOf(GAME_JOB),
    houseRules,
  ],
  stages: stagesOf(GAME_JOB),
  cautions: [
    "Your local authority and its code decide what may be built, and whether a permit is needed. Ask before you buy or dig.",
    "Have buried cables and pipes marked before you dig, however shallow the holes are.",
    "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the public uses the platform, where it stands high, or where the ground is soft, steep or made up.",
    "Wear eye, ear and breathing protection when you saw treated timber or concrete, and lift heavy pieces with a second person.",
  ],
  drawings: GAME_TABLE_DRAWINGS,
  thrift: THRIFT_OF_TIMBER_AND_SHEETS,
  explorations: BY_JOISTS_AND_SUPPORTS,
}
