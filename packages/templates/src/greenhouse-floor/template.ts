import type { Definition } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { GREENHOUSE_DRAWINGS } from "../drawings/index.ts"
import { BY_JOISTS_AND_SUPPORTS, THRIFT_OF_TIMBER } from "../explorations.ts"
import { OFFERS } from "../offers.ts"
import { BEARERS_ON_SLABS, bearerJoints, bearers, bearerTies } from "../parts/bearers.ts"
import { blocking } from "../parts/blocking.ts"
import { BOARDS_ON_JOISTS } from "../parts/board-bearers.ts"
import { boardScrewsOn } from "../parts/board-screws.ts"
import { GREATEST_PRESSURE, reactionCheck, withReactions } from "../parts/by-statics.ts"
import { dig } from "../parts/dig.ts"
import { drainage } from "../parts/drainage.ts"
import { animalMesh, fabric } from "../parts/fabric.ts"
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
import { wetSoil } from "../parts/wet-soil.ts"
import { wood } from "../parts/wood.ts"
import { stagesOf, workOf } from "../parts/work.ts"
import { consumablesBought } from "../stages/consumables.ts"
import { boards } from "./boards.ts"
import { FLOOR_THINGS } from "./bought.ts"
import { buildUp } from "./build-up.ts"
import { house } from "./house.ts"
import { FLOOR_JOB } from "./job.ts"
import { slabBeds, slabLayout, slabs } from "./slabs.ts"
import { strength } from "./strength.ts"
import { FLOOR_MEMBERS, timber, treatment } from "./timber.ts"
import { fasteners, wind } from "./wind.ts"

/** A floor to carry a greenhouse: spaced boards on joists on bearers on slabs, closed against animals. */
export const greenhouseFloor: Definition = {
  ...OFFERS["greenhouse-floor"],
  unitSystem: "metric",
  sections: [
    adapt(size, {
      labels: { platform_length: "Length of the floor", platform_width: "Width of the floor" },
      defaults: { platform_length: "6.0 m", platform_width: "2.4 m" },
    }),
    adapt(ground, { defaults: { ground_fall_length: "60 mm", ground_fall_width: "20 mm" } }),
    adapt(guardedLimits, {
      whys: {
        area_limit:
          "Many places ask for a permit above some area, for the floor or for the greenhouse on it. Ask yours, and write its figure here with the name of who told you in your notes.",
      },
      defaults: { riser_limit: "190 mm", guard_reach: "0.9 m" },
    }),
    frost,
    bearers,
    withReactions(slabLayout),
    adapt(supportLoadsOn(BEARERS_ON_SLABS), {
      labels: {
        live_load: "People and things on the floor",
        dead_load: "Weight of the floor and the greenhouse",
      },
      whys: {
        live_load:
          "The load that comes and goes: people, barrows, bags of soil. The figure to start from is that of a house's deck.",
        dead_load:
          "Floor, greenhouse and benches, spread over the area. The section on the greenhouse says whether it is enough.",
      },
      defaults: { live_load: "1.9 kPa", dead_load: "1 kPa", soil_bearing: "72 kPa" },
    }),
    adapt(dig, { defaults: { dig_min: "100 mm", barrow_volume: "70 L" } }),
    slabBeds,
    adapt(fabric, {
      defaults: {
        fabric_turn_up: "150 mm",
        fabric_roll_width: "2 m",
        fabric_lap: "300 mm",
        fabric_pin_spacing: "1.2 m",
      },
    }),
    slabs,
    bearerJoints,
    adapt(joists, {
      defaults: {
        joist_size: "38x140",
        rim_size: "38x140",
        joist_spacing: "400 mm",
        joist_stock: "2.4 m, 3.0 m, 3.6 m, 4.2 m, 4.8 m, 5.4 m, 6.0 m",
        rim_stock: "2.4 m, 3.0 m, 3.6 m, 4.2 m, 4.8 m, 5.4 m, 6.0 m",
        rim_block_length: "300 mm",
      },
    }),
    adapt(blocking, { defaults: { blocking_rows: "1", blocking_stock: "2.4 m, 3.6 m, 4.8 m" } }),
    adapt(wood, { defaults: { wood_species: "white spruce" } }),
    boards,
    adapt(memberTimber, { defaults: { species: "Spruce-Pine-Fir", design_method: "limit states" } }),
    { ...strength, entries: [...strength.entries, reactionCheck("slab", BEARERS_ON_SLABS.remedies)] },
    wetSoil("MIN(block_length; block_course_width)", BEARERS_ON_SLABS.remedies, GREATEST_PRESSURE),
    publishedStrengths,
    adapt(fixingsOf([bearerTies, joistEnds, blockingEnds, rimJointBlocks, boardScrewsOn(BOARDS_ON_JOISTS)]), {
      defaults: {
        corrosive_site: "always damp, or often wetted",
        screw_coating: "stainless 304",
        connector_coating: "stainless 304",
      },
    }),
    timber,
    treatment,
    house,
    wind,
    fasteners,
    buildUp,
    drainage,
    heights,
    guardPosts(GUARDED_RIM),
    adapt(animalMesh, {
      whys: { mesh_roll_length: "As sold. Openings no wider than 13 mm keep rats out as well." },
      defaults: {
        mesh_bury_depth: "300 mm",
        mesh_turn_out: "300 mm",
        mesh_fixing_height: "50 mm",
        mesh_lap: "150 mm",
        mesh_roll_length: "10 m",
      },
    }),
    adapt(footings, { defaults: { footing_diameter: "350 mm", footing_above_ground: "150 mm" } }),
    pricesOf([...FLOOR_JOB.things, ...consumablesBought(FLOOR_JOB.consumables)]),
    massesOf(FLOOR_THINGS, FLOOR_MEMBERS, [blocksCalled("slab"), STONE]),
    adapt(haulage, { defaults: { payload: "500 kg" } }),
    setOutOf({
      noun: "bearer",
      nouns: "bearers",
      centres: "skids.y",
      measured: "across the width",
      count: "skid_count",
      thickness: "skid_thickness",
      supports: { noun: "slab", courses: true },
    }),
    workOf(FLOOR_JOB),
    houseRules,
  ],
  stages: stagesOf(FLOOR_JOB),
  cautions: [
    "Your local authority and its code decide what may be built, and whether a permit is needed, for the floor and for the greenhouse on it. Ask before you buy or dig.",
    "Have buried cables and pipes marked before you dig, however shallow the holes are.",
    "A greenhouse can be lifted by wind, and this floor with it: the section on wind says how much has to be held, roughly. Ask its maker or a designer how both have to be anchored at your place.",
    "This workbook counts and checks by rules of the trade; a licensed designer decides where the ground is soft, steep or made up, where snow is heavy, or where the public comes in.",
    "Wear eye, ear and breathing protection when you saw treated timber or cut slabs, and lift heavy pieces with a second person.",
    "Electricity in a wet house kills: have sockets, heaters and lamps fitted by a qualified electrician.",
  ],
  drawings: GREENHOUSE_DRAWINGS,
  thrift: THRIFT_OF_TIMBER,
  explorations: BY_JOISTS_AND_SUPPORTS,
}
