import type { Section, TableEntry } from "@pegbook/engine"
import { fastenerStrength } from "../parts/fastener-strength.ts"
import { GUARD_JOINT, GUARD_POST } from "../parts/guard-posts.ts"
import type { PlatformMember } from "../parts/member.ts"
import { membersOf } from "../parts/members.ts"
import { ARITHMETIC, GEOMETRY } from "../sources.ts"

/** Where planks of the beams meet: how many of one beam over the same pad. */
const plyJoints: TableEntry = {
  kind: "table",
  name: "ply_joints",
  label: "Planks that meet over the same pad",
  why: "Where some planks of a beam meet, the others carry its bending alone; where all of them do, the beam turns there like a hinge.",
  sources: [GEOMETRY],
  rows: { kind: "formula", formula: "COUNT(beam_joints.line)" },
  columns: [
    {
      name: "beam",
      label: "Beam",
      measure: "count",
      formula: "ROUNDUP(INDEX(beam_joints.line; ROW()) / beam_plies; 0)",
      why: "Planks are counted beam by beam.",
      sources: [ARITHMETIC],
    },
    {
      name: "position",
      label: "Along the beam",
      measure: "length",
      formula: "INDEX(beam_joints.position; ROW())",
      why: "The middle of the pad.",
      sources: [GEOMETRY],
    },
    {
      name: "place",
      label: "Beam and pad in one number",
      measure: "count",
      formula:
        "beam * (supports_per_beam + 1) + ROUND((position - INDEX(support_stations.x; 1)) / support_spacing; 0)",
      why: "To find the joints that lie together.",
      sources: [ARITHMETIC],
    },
    {
      name: "together",
      label: "Planks that meet there",
      measure: "count",
      formula: "COUNTIF(ply_joints.place; place)",
      why: "Of this beam, over this pad.",
      sources: [ARITHMETIC],
    },
    {
      name: "hinged",
      label: "Beam that turns there",
      measure: "count",
      formula: "IF(together >= beam_plies; beam; 0)",
      why: "0 where a plank runs through.",
      sources: [GEOMETRY],
    },
    {
      name: "interrupted",
      label: "Planks lost to bending",
      measure: "count",
      formula: "IF(together >= beam_plies; 0; together)",
      why: "Where a plank runs through, those that do not.",
      sources: [GEOMETRY],
    },
  ],
}

/** Beams of planks on their pads, and the joists across them. */
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
    joints: { line: "ply_joints.hinged", at: "ply_joints.position" },
    interrupted: "IF(COUNT(ply_joints.beam) = 0; 0; MAX(ply_joints.interrupted))",
    length: "beam_length",
    carries: { across: "joists" },
    held: "joist_spacing",
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

/** Beams, joists and guard posts of the deck; its boards beside them. */
const strong = membersOf([...BEAMS_AND_JOISTS, GUARD_POST], ["board_strength", "guard_hold"])
export const strength: Section = { ...strong, entries: [plyJoints, ...strong.entries] }

/** Bolts of the guard posts. */
export const fasteners: Section = fastenerStrength([GUARD_JOINT])
