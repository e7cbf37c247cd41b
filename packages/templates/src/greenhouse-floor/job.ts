import type { Job } from "../parts/work.ts"
import { CONNECTOR_NAILS, FABRIC_PINS, SITE_CONSUMABLES, STAPLES } from "../stages/consumables.ts"
import { disposal, meshWork, stepsWork, walkRound } from "../stages/finish.ts"
import { endWork, joistWork, lineWork } from "../stages/frame.ts"
import { blockWork, digging, markOut, stoneWork, survey, TURF_OF_HOLES } from "../stages/ground.ts"
import { guardWork } from "../stages/guard.ts"
import { boardWork } from "../stages/surface.ts"
import { consumable, screwsInto } from "../stages/work.ts"
import { FLOOR_THINGS } from "./bought.ts"

/** The order of the work, and what it takes. */
export const FLOOR_JOB: Job = {
  things: FLOOR_THINGS,
  consumables: [...SITE_CONSUMABLES, FABRIC_PINS, CONNECTOR_NAILS, STAPLES],
  lengthUnit: "m",
  turf: TURF_OF_HOLES,
  works: [
    markOut,
    survey,
    digging("a hole for each of the supports"),
    stoneWork("in the holes", { thing: "fabric", amount: "fabric_length" }, consumable("fabric pin")),
    blockWork("slab", "slabs"),
    lineWork(
      "bearers",
      "skid_piece_count",
      ["{skid_count} bearers of {skid_size}, {skid_spacing} from centre to centre."],
      ["bearer"],
    ),
    joistWork(
      screwsInto(
        "frame screws",

        "joist end, through the rim",
        "blocking end, through the joist",
        "block behind a rim joint",
      ),
      { thing: "tie", amount: "tie_count" },
      consumable("box of 100 connector nails"),
    ),
    endWork(true),
    boardWork("board on a joist"),
    guardWork,
    meshWork,
    stepsWork,
    walkRound,
    disposal,
  ],
}
