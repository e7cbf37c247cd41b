import type { Job } from "../parts/work.ts"
import { FABRIC_PINS, SITE_CONSUMABLES } from "../stages/consumables.ts"
import { disposal, walkAccess, walkRound } from "../stages/finish.ts"
import { endWork, lineWork } from "../stages/frame.ts"
import { digging, markOut, stoneWork, survey } from "../stages/ground.ts"
import { guardWork } from "../stages/guard.ts"
import { boardWork, edgeWork } from "../stages/surface.ts"
import { consumable, screwsInto } from "../stages/work.ts"
import { WALK_THINGS } from "./bought.ts"

/** The order of the work, and what it takes. */
export const WALK_JOB: Job = {
  things: WALK_THINGS,
  consumables: [...SITE_CONSUMABLES, FABRIC_PINS],
  lengthUnit: "ft",
  turf: ["turf_area"],
  works: [
    markOut,
    survey,
    digging("a trench for each sleeper"),
    stoneWork("in the trenches", { thing: "fabric", amount: "fabric_area" }, consumable("fabric pin")),
    lineWork(
      "sleepers and stringers",
      "sleeper_count + stringer_piece_count",
      [
        "{sleeper_count} sleepers of {sleeper_size}, {sleeper_spacing} from centre to centre, level across.",
        "{stringer_count} stringers of {stringer_size} over them, {stringer_spacing} apart; a cleat at each side of every joint.",
      ],
      ["sleeper", "stringer", "cleat"],
      screwsInto("frame screws", "stringer on a sleeper, at a slant", "cleat beside a joint"),
    ),
    endWork(true),
    boardWork("board on a stringer"),
    edgeWork(["kerb", "kerb packer"], screwsInto("frame screws", "kerb through a packer")),
    guardWork,
    walkAccess,
    walkRound,
    disposal,
  ],
}
