import type { Job } from "../parts/work.ts"
import { CONNECTOR_NAILS, EDGE_SEALER, SITE_CONSUMABLES } from "../stages/consumables.ts"
import { disposal, netWork, stepsWork, walkRound } from "../stages/finish.ts"
import { endWork, joistWork, lineWork } from "../stages/frame.ts"
import { blockWork, digging, markOut, stoneWork, survey, TURF_OF_HOLES } from "../stages/ground.ts"
import { edgeWork, sheetWork, tileWork } from "../stages/surface.ts"
import { consumable, screwsInto } from "../stages/work.ts"
import { GAME_THINGS } from "./bought.ts"

/** The order of the work, and what it takes. */
export const GAME_JOB: Job = {
  things: GAME_THINGS,
  consumables: [...SITE_CONSUMABLES, CONNECTOR_NAILS, EDGE_SEALER],
  lengthUnit: "ft",
  turf: TURF_OF_HOLES,
  holes: "net_order.hole_soil",
  works: [
    markOut,
    survey,
    digging("a hole for each stack"),
    stoneWork("in the holes"),
    blockWork("block", "blocks"),
    lineWork(
      "skids",
      "skid_piece_count",
      [
        "{skid_count} skids of {skid_size}, {skid_spacing} from centre to centre. Every joint lies over a stack.",
      ],
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
    tileWork,
    edgeWork(["edge board"], screwsInto("frame screws", "edge board against the frame")),
    netWork,
    stepsWork,
    walkRound,
    disposal,
  ],
}
