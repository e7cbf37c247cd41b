import type { StageNeed } from "@pegbook/engine"
import { CAUTION, consumable, DRIVER, SAW, timberFor, type Work } from "./work.ts"

const SQUARE = ["square_check", "corners_check"] as const

/** The lines that lie on the supports, by the parts of the cutting plan. `number`: formula of how many pieces are laid. */
export function lineWork(
  nouns: string,
  number: string,
  says: readonly string[],
  parts: readonly string[],
  ...more: readonly StageNeed[]
): Work {
  return {
    stage: {
      id: "lines",
      title: `Lay the ${nouns}, and square them`,
      says: [
        ...says,
        "Brush preservative on each cut end before the piece is laid.",
        "Measure both diagonals ({platform_diagonal}) and both pairs of sides before anything is fixed; enter what you measure and push the corners as the set-out sheet says.",
      ],
      hold: "Square, level and in line. Nothing is fixed before that.",
      checks: [...SQUARE, "joint_bearing_check"],
      needs: [
        timberFor(`timber for the ${nouns}`, ...parts),
        ...more,
        consumable("driver bit"),
        consumable("drill bit"),
        consumable("saw blade"),
        consumable("dust mask"),
        consumable("tin brush"),
      ],
      tools: ["saw", "drill-driver", "long tape", "level on a straight board", "clamps"],
      cautions: [CAUTION.lift, CAUTION.treated, CAUTION.eyes, CAUTION.power],
      safeStop: "May rest for weeks under a sheet that lets air through.",
    },
    rate: { of: "a piece laid", number, each: "30 min", people: 2 },
    tools: [SAW, DRIVER],
  }
}

/** Joists, rims and blocking. */
export function joistWork(...more: readonly StageNeed[]): Work {
  return {
    stage: {
      id: "joists",
      title: "Set the joists, rims and blocking",
      says: [
        "Mark {joist_count} joists on both rims, {joist_spacing} from centre to centre, from the same end.",
        "Crowns up: sight along each joist and turn the bow upwards. {blocking_count} pieces of blocking go between them.",
      ],
      hold: "Diagonals and ends once more, before the last screws.",
      checks: [...SQUARE, "last_bay_check"],
      needs: [
        timberFor("timber for joists, rims and blocking", "joist", "rim", "rim block", "blocking"),
        ...more,
      ],
      tools: ["saw", "drill-driver", "carpenter's square", "tape", "clamps"],
      cautions: [CAUTION.eyes, CAUTION.treated, CAUTION.power],
      weather: "Fresh treated timber moves as it dries: fix what you cut on the same day.",
      safeStop: "Once the rims are on and it is square, the frame may rest.",
    },
    rate: {
      of: "a joist or a piece of blocking",
      number: "joist_count + blocking_count",
      each: "12 min",
      people: 2,
    },
    tools: [SAW, DRIVER],
  }
}

/** What nobody can reach later. `tape`: tops are taped as well. */
export function endWork(tape: boolean): Work {
  return {
    stage: {
      id: "ends",
      title: "Treat every cut end before closing up",
      says: [
        "The saw has laid bare {end_cut_count} ends, {end_cut_area} of them. Brush each {preservative_coats} times, and bolt and notch holes too.",
        ...(tape ? ["Tape the tops of the timber where water would stand: {joist_tape_length} in all."] : []),
      ],
      hold: "Photograph it: under the surface nobody sees it again.",
      checks: ["ground_contact_check", "treatment_check"],
      needs: [
        { thing: "preservative tin", amount: "preservative_tins" },
        ...(tape ? [{ thing: "tape roll", amount: "joist_tape_rolls" }] : []),
      ],
      tools: ["brush", "rags", ...(tape ? ["knife"] : [])],
      cautions: [
        "Preservative harms skin, eyes and fish: gloves, goggles, nothing into a drain or pond. Rags with oil in them can catch fire by themselves: dry them spread out.",
      ],
      waits: ["A day between coats, or as the tin says."],
      weather: "Dry, and above the temperature that the tin names.",
      safeStop: "A good place to stop: what is treated may wait.",
    },
    rate: { of: "a cut end", number: "end_cut_count", each: "2 min", people: 1 },
    tools: [],
  }
}
