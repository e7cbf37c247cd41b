import type { Job } from "../parts/work.ts"
import { CONNECTOR_NAILS, FABRIC_PINS, SITE_CONSUMABLES } from "../stages/consumables.ts"
import { disposal, stepsWork, walkRound } from "../stages/finish.ts"
import { endWork, joistWork, lineWork } from "../stages/frame.ts"
import { blockWork, digging, markOut, stoneWork, survey, TURF_OF_HOLES } from "../stages/ground.ts"
import { guardWork } from "../stages/guard.ts"
import { boardWork } from "../stages/surface.ts"
import { consumable, screwsInto } from "../stages/work.ts"
import { DECK_THINGS } from "./bought.ts"

/** The order of the work, and what it takes. */
export const DECK_JOB: Job = {
  things: DECK_THINGS,
  consumables: [...SITE_CONSUMABLES, FABRIC_PINS, CONNECTOR_NAILS],
  lengthUnit: "ft",
  turf: TURF_OF_HOLES,
  works: [
    markOut,
    survey,
    digging("a hole for each of the supports"),
    stoneWork("in the holes", { thing: "fabric", amount: "fabric_area" }, consumable("fabric pin")),
    blockWork("block", "pads"),
    lineWork(
      "beams",
      "beam_piece_count",
      ["{beam_count} beams of {beam_plies} planks of {beam_size}, {beam_spacing} from centre to centre."],
      ["beam plank"],
      screwsInto("frame screws", "plank of a beam to the next"),
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
    stepsWork,
    walkRound,
    disposal,
  ],
}
