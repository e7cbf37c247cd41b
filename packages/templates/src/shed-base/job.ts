import type { Job } from "../parts/work.ts"
import {
  CONNECTOR_NAILS,
  EDGE_SEALER,
  EDGING_STAKES,
  FABRIC_PINS,
  SITE_CONSUMABLES,
  STAPLES,
} from "../stages/consumables.ts"
import { disposal, meshWork, stepsWork, walkRound } from "../stages/finish.ts"
import { endWork, joistWork, lineWork } from "../stages/frame.ts"
import { digging, markOut, stoneWork, survey } from "../stages/ground.ts"
import { guardWork } from "../stages/guard.ts"
import { sheetWork } from "../stages/surface.ts"
import { consumable, screwsInto } from "../stages/work.ts"
import { SHED_THINGS } from "./bought.ts"

/** The order of the work, and what it takes. */
export const SHED_JOB: Job = {
  things: SHED_THINGS,
  consumables: [...SITE_CONSUMABLES, FABRIC_PINS, EDGING_STAKES, CONNECTOR_NAILS, EDGE_SEALER, STAPLES],
  lengthUnit: "ft",
  turf: ["turf_area"],
  works: [
    markOut,
    survey,
    digging("the whole pad"),
    stoneWork(
      "over the fabric and inside the edging",
      { thing: "fabric", amount: "fabric_area" },
      consumable("fabric pin"),
      { thing: "edging", amount: "edging_length" },
      consumable("edging stake"),
    ),
    lineWork(
      "skids",
      "skid_piece_count",
      ["{skid_count} skids of {skid_size} on the stone, {skid_spacing} from centre to centre."],
      ["skid"],
    ),
    joistWork(
      screwsInto(
        "frame screws",
        "joist over a skid, at a slant",
        "joist end, through the rim",
        "blocking end, through the joist",
        "block behind a rim joint",
      ),
      { thing: "tie", amount: "tie_count" },
      consumable("box of 100 connector nails"),
    ),
    endWork(true),
    sheetWork,
    guardWork,
    meshWork,
    stepsWork,
    walkRound,
    disposal,
  ],
}
