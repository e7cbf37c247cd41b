import type { StageNeed } from "@pegbook/engine"
import { CAUTION, consumable, TAMPER, type Work } from "./work.ts"

/** Pegs, strings, and the call to those who know where cables and pipes lie. Needs the set-out sheet and services_check. */
export const markOut: Work = {
  stage: {
    id: "mark-out",
    title: "Mark out, and have services found",
    says: [
      "Ask the locating service to mark cables and pipes, {locate_notice_days} working days ahead or more.",
      "Drive peg A, stretch the first long side, and mark {platform_length} on it. Every other length is measured from A.",
      "Square the short side with the triangle: {square_triangle.short} along it, {square_triangle.long} along the long side, {square_triangle.across} across.",
      "Both diagonals measure {platform_diagonal}. Measure both pairs of sides as well: {platform_length} and {platform_width}.",
    ],
    hold: "Nobody digs before the services are marked and the pegs measure true.",
    checks: ["services_check"],
    needs: [consumable("peg"), consumable("roll of string"), consumable("can of marking paint")],
    tools: ["two long tapes", "hammer", "the set-out sheet"],
    cautions: [
      "A peg can pierce a cable as a spade can: wait for the marks before you drive one.",
      "Keep to what your local authority says of distances to the boundary.",
    ],
    waits: ["The service needs its days of notice; order timber and stone meanwhile."],
    safeStop: "Pegs and strings may stand for weeks. Tie a rag to each, so that nobody trips.",
  },
  rate: { of: "a peg", number: "COUNT(set_out_points.x)", each: "15 min", people: 2 },
  tools: [],
}

/** Levels at the pegs. */
export const survey: Work = {
  stage: {
    id: "survey",
    title: "Take the levels",
    says: [
      "Stretch one level string, or use a water level: the underside of the lowest timber is {underside_level} above the ground at the high corner.",
      "Measure down from it to the ground at every peg. The plan goes by a fall of {fall_in_use} in all; enter your own levels where they differ.",
    ],
    hold: "The levels are entered, and every hole's depth has been read again after that.",
    checks: ["levels_check", "ground_steepness_check"],
    needs: [],
    tools: ["water level, or a level on a straight board", "tape", "pencil and paper"],
    cautions: ["Strings at knee height trip people: mark them."],
    weather: "A water level freezes, and a string sags in wind: choose a still day above freezing.",
    safeStop: "After this stage nothing is open yet.",
  },
  rate: { of: "a peg", number: "COUNT(set_out_points.x)", each: "5 min", people: 2 },
  tools: [],
}

/** Names whose product is the area that turf is lifted from where there is a hole under each support. */
export const TURF_OF_HOLES = ["support_count", "stone_bed_length", "stone_bed_width"] as const

/** Digging: of holes, trenches or the whole area. Needs greatest_dig, least_dig, dug_volume and its barrows. */
export function digging(what: string): Work {
  return {
    stage: {
      id: "dig",
      title: "Strip the turf and dig",
      says: [
        `Lift the turf in sods and keep them in the shade. Dig ${what}: from {least_dig} to {greatest_dig} deep, as the set-out sheet says.`,
        "{dug_volume} come out of the ground and loosen to {dug_volume_loose}: about {spoil_barrows} barrows. Heap them where water does not wash them back.",
      ],
      hold: "Every bottom is flat, firm and out of the turf; soft places are dug out further.",
      needs: [
        consumable("pair of gloves"),
        consumable("pair of goggles"),
        consumable("set of ear defenders"),
      ],
      tools: ["spade", "shovel", "barrow", "tape and level string"],
      cautions: [
        "Dig by hand near a mark of the locating service, and stop at any tape, tile or pipe.",
        "Edges of a trench give way: keep the heap and your feet back from them, and let nobody step into a deep one.",
        CAUTION.lift,
      ],
      weather: "Not in frozen or waterlogged ground: the bottom is trodden to mud.",
      safeStop:
        "Cover open holes with boards overnight. Rain softens the bottoms: do not leave them for long.",
    },
    rate: { of: "a barrow dug and wheeled", number: "spoil_barrows", each: "12 min", people: 1 },
    tools: [],
  }
}

/** Stone, with what lies under and around it. */
export function stoneWork(where: string, ...more: readonly StageNeed[]): Work {
  return {
    stage: {
      id: "stone",
      title: "Lay and tamp the stone",
      says: [
        `Spread the stone ${where} in layers no thicker than a hand is long, and tamp each until it rings.`,
        "Order {stone_order}, loose; the beds take {stone_in_place} when tamped: about {stone_barrows} barrows.",
      ],
      hold: "The stone is level both ways and at its height below the string; nothing moves underfoot.",
      needs: [{ thing: "stone", amount: "stone_loose" }, ...more],
      tools: ["barrow", "rake", "hand tamper or plate tamper", "level on a straight board"],
      cautions: [
        CAUTION.silica,
        "A plate tamper crushes feet and is loud: strong boots and ear defenders.",
        CAUTION.lift,
      ],
      weather: "Stone may be laid in light rain, never on frozen ground: it sinks when it thaws.",
      safeStop: "Tamped stone may lie for weeks.",
    },
    rate: { of: "a barrow of stone", number: "stone_barrows", each: "10 min", people: 1 },
    tools: [TAMPER],
  }
}

/** Blocks, pads or slabs, in the words of the list. */
export function blockWork(thing: string, things: string): Work {
  return {
    stage: {
      id: "blocks",
      title: `Set the ${things} level`,
      says: [
        `Set {block_count} ${things} at {support_count} places, with their middles where the set-out sheet says.`,
        "Bring each top to the level string and check it against its neighbours with a straight board.",
      ],
      hold: `Every top touches the string, no ${thing} rocks, and the rows run straight.`,
      checks: ["soil_bearing_check", "stone_bed_check"],
      needs: [{ thing, amount: "block_count" }],
      tools: ["level on a straight board", "rubber hammer", "string", "trowel"],
      cautions: [CAUTION.silica, `One ${thing} weighs {block_mass}. ${CAUTION.lift}`],
      safeStop: "A good place to stop: nothing rots or shifts.",
    },
    rate: { of: `one of the ${things}`, number: "block_count", each: "15 min", people: 1 },
    tools: [],
  }
}
