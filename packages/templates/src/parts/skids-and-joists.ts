import type { FloorMember } from "./member.ts"

/** Skids on their supports, and the joists that lie across them. Skids stand first: the supports take their loads. */
export const SKIDS_AND_JOISTS: readonly FloorMember[] = [
  {
    member: "skids",
    noun: "skid",
    check: "skid_check",
    size: "skid_size",
    thickness: "skid_thickness",
    depth: "skid_depth",
    supports: { line: "supports.line", at: "supports.x" },
    joints: { line: "skid_joints.line", at: "skid_joints.position" },
    length: "skid_length",
    carries: { across: "joists" },
    held: "joist_spacing",
    seat: "MIN(support_stations.bearing)",
    remedies: [
      { input: "support_spacing_max", toward: "less", step: "6 in" },
      { input: "skid_spacing_max", toward: "less", step: "6 in" },
      { input: "skid_size", toward: "more" },
    ],
  },
  {
    member: "joists",
    noun: "joist",
    check: "joist_check",
    size: "joist_size",
    thickness: "joist_thickness",
    depth: "joist_depth",
    supports: { at: "skids.y" },
    length: "platform_width",
    carries: "joist_spacing",
    shares: "joist_spacing",
    seat: "skid_thickness",
    remedies: [
      { input: "joist_spacing", toward: "less", step: "4 in" },
      { input: "skid_spacing_max", toward: "less", step: "6 in" },
      { input: "joist_size", toward: "more" },
    ],
  },
]
