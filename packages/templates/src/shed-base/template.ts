import type { Definition } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { SHED_DRAWINGS } from "../drawings/index.ts"
import { BY_JOISTS_AND_SUPPORTS, THRIFT_OF_TIMBER_AND_SHEETS } from "../explorations.ts"
import { OFFERS } from "../offers.ts"
import { blocking } from "../parts/blocking.ts"
import { cutFill, cutFillColumns, groundGrid } from "../parts/cut-fill.ts"
import { services } from "../parts/dig.ts"
import { drainage } from "../parts/drainage.ts"
import { animalMesh, fabricOver } from "../parts/fabric.ts"
import { fixingsOf } from "../parts/fixings.ts"
import { footings } from "../parts/footings.ts"
import { blockingEnds, joistEnds, rimJointBlocks, skidCrossings } from "../parts/frame-screws.ts"
import { frost } from "../parts/frost.ts"
import { GUARDED_RIM, guardPosts } from "../parts/guard-posts.ts"
import { haulage } from "../parts/haulage.ts"
import { heights } from "../parts/heights.ts"
import { houseRules } from "../parts/house-rules.ts"
import { joists } from "../parts/joists.ts"
import { guardedLimits } from "../parts/limits.ts"
import { massesOf } from "../parts/masses.ts"
import { memberTimber, publishedStrengths } from "../parts/member-timber.ts"
import { JOINT_SLABS, SHEETS, STONE } from "../parts/placed-materials.ts"
import { pricesOf } from "../parts/prices.ts"
import { setOutOf } from "../parts/set-out.ts"
import { sheetScrews } from "../parts/sheet-screws.ts"
import { sheets } from "../parts/sheets.ts"
import { ground, size } from "../parts/site.ts"
import { stonePad, stonePadColumns } from "../parts/stone-pad.ts"
import { FRAME_MEMBERS, timberOf } from "../parts/timber.ts"
import { treatmentOf } from "../parts/treatment.ts"
import { turfOff } from "../parts/turf.ts"
import { wetSoil } from "../parts/wet-soil.ts"
import { woodWithoutBoards } from "../parts/wood.ts"
import { stagesOf, workOf } from "../parts/work.ts"
import { consumablesBought } from "../stages/consumables.ts"
import { SHED_THINGS } from "./bought.ts"
import { door } from "./door.ts"
import { SHED_JOB } from "./job.ts"
import { layers } from "./layers.ts"
import { padLoads } from "./pad-loads.ts"
import { joints, ON_STONE, places, skids } from "./skids-on-stone.ts"
import { strength } from "./strength.ts"
import { fasteners, wind } from "./wind.ts"

/** A base for a garden shed on a slope: sheets on joists on skids, lying on a level pad of tamped stone. */
export const shedBase: Definition = {
  ...OFFERS["shed-base"],
  unitSystem: "us",
  sections: [
    adapt(size, {
      labels: { platform_length: "Length of the base", platform_width: "Width of the base" },
      whys: {
        platform_length:
          "The outside of the frame, the long way. Ask the shed's maker whether its walls stand on the edge or overhang it.",
      },
      defaults: { platform_length: "12 ft", platform_width: "10 ft" },
    }),
    adapt(ground, {
      defaults: { ground_fall_length: "5 in", ground_fall_width: "1 in" },
      labels: { ground_steepness_most: "Steepest ground for a pad of stone" },
      whys: {
        ground_steepness_most:
          "On steeper ground, stone held by an edging alone can creep downhill; the site wants terracing or proper footings.",
        ground_steepness_check: "The pad holds by its weight and its edging alone.",
        fall_in_use: "Stone makes up this much. Most people guess it too small.",
        ground_low: "The stone is thickest and the step highest near here.",
      },
    }),
    adapt(guardedLimits, {
      whys: {
        boundary_distance: "Measured from whatever stands out furthest: frame, stone, or the shed's roof.",
      },
    }),
    adapt(frost, {
      whys: {
        frost_depth:
          "How deep the ground freezes. A pad of stone drains and moves less than soil, but it stands above the frost and can move.",
      },
    }),
    services,
    skids,
    places,
    turfOff("pad_area"),
    groundGrid([...cutFillColumns, ...stonePadColumns]),
    stonePad,
    fabricOver("pad_length", "pad_width"),
    padLoads,
    joints,
    joists,
    blocking,
    sheets,
    memberTimber,
    strength,
    wetSoil("skid_thickness", ON_STONE.remedies),
    wind,
    fasteners,
    publishedStrengths,
    fixingsOf([skidCrossings, joistEnds, blockingEnds, rimJointBlocks, sheetScrews]),
    timberOf(FRAME_MEMBERS),
    treatmentOf(
      [
        {
          member: "skids",
          treatment: "skid_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance",
          hardToReplace: true,
        },
        {
          member: "joists and blocking",
          treatment: "joist_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance + skid_depth",
          hardToReplace: true,
        },
        {
          member: "rims",
          treatment: "rim_treatment",
          startsWith: "UC4A",
          clearance: "underside_clearance + rim_underside_height",
          hardToReplace: true,
        },
      ],
      ["SUM(joists.length)", "SUM(rim_pieces.length)", "blocking_length"],
    ),
    pricesOf([...SHED_JOB.things, ...consumablesBought(SHED_JOB.consumables)]),
    woodWithoutBoards,
    massesOf(SHED_THINGS, FRAME_MEMBERS, [SHEETS, JOINT_SLABS, STONE]),
    haulage,
    layers,
    drainage,
    heights,
    guardPosts(GUARDED_RIM),
    door,
    adapt(animalMesh, {
      without: ["mesh_trench_volume"],
      labels: { mesh_bury_depth: "Mesh let into the stone", mesh_turn_out: "Turned outwards in the stone" },
      whys: {
        mesh_bury_depth: "Lay the mesh before the last layer of stone, so that its foot is held by it.",
        mesh_turn_out:
          "As far as the stone reaches beyond the frame: an animal digs down onto wire and gives up.",
        mesh_height: "From the staples down the opening, into the stone and out along the bottom.",
      },
      defaults: { mesh_bury_depth: "2 in", mesh_turn_out: "6 in" },
    }),
    cutFill,
    footings,
    setOutOf({
      noun: "skid",
      nouns: "skids",
      centres: "skids.y",
      measured: "across the width",
      count: "skid_count",
      thickness: "skid_thickness",
    }),
    workOf(SHED_JOB),
    houseRules,
  ],
  stages: stagesOf(SHED_JOB),
  cautions: [
    "Your local authority and its code decide what may be built, and whether a permit is needed, for the base and for the shed on it. Ask before you buy or dig.",
    "Have buried cables and pipes marked before you dig, however shallow the pad is.",
    "This workbook counts and checks by rules of the trade; it does not replace a licensed designer where the ground is soft, steep or made up, where snow is heavy, or where people live or work in the shed.",
    "A shed can be lifted and rolled by wind: the section on wind says how much has to be held, roughly. Ask how it has to be anchored at your place.",
    "Wear eye, ear and breathing protection when you saw treated timber or cut slabs, and lift heavy pieces with a second person.",
  ],
  drawings: SHED_DRAWINGS,
  thrift: THRIFT_OF_TIMBER_AND_SHEETS,
  explorations: BY_JOISTS_AND_SUPPORTS,
}
