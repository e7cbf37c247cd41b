import { membersOf, type PlatformMember } from "../parts/members.ts"

/** Beams of planks on their pads, and the joists across them. A plank that is joined leaves its neighbour to carry on. */
const BEAMS_AND_JOISTS: readonly PlatformMember[] = [
  {
    member: "beams",
    noun: "beam",
    check: "beam_check",
    size: "beam_size",
    thickness: "beam_thickness / beam_plies",
    depth: "beam_depth",
    plies: "beam_plies",
    supports: { line: "supports.line", at: "supports.x" },
    length: "beam_length",
    carries: "beams.carries",
    seat: "MIN(support_stations.bearing)",
    remedies: [
      { input: "support_spacing_max", toward: "less", step: "6 in" },
      { input: "beam_plies", toward: "more", step: "1" },
      { input: "beam_spacing_max", toward: "less", step: "6 in" },
      { input: "beam_size", toward: "more" },
    ],
  },
  {
    member: "joists",
    noun: "joist",
    check: "joist_check",
    size: "joist_size",
    thickness: "joist_thickness",
    depth: "joist_depth",
    supports: { at: "beams.y" },
    length: "platform_width",
    carries: "joist_spacing",
    shares: "joist_spacing",
    seat: "beam_thickness",
    remedies: [
      { input: "joist_spacing", toward: "less", step: "4 in" },
      { input: "beam_spacing_max", toward: "less", step: "6 in" },
      { input: "joist_size", toward: "more" },
    ],
  },
]

/** Beams and joists of the deck. Its boards are held against a table of their own. */
export const strength = membersOf(BEAMS_AND_JOISTS)
