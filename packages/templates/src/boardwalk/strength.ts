import type { Section, TableEntry } from "@pegbook/engine"
import { fastenerStrength } from "../parts/fastener-strength.ts"
import { GUARD_JOINT, GUARD_POST } from "../parts/guard-posts.ts"
import { type FloorMember, NO_POINT } from "../parts/member.ts"
import { membersOf } from "../parts/members.ts"
import { GEOMETRY, STATICS } from "../sources.ts"

/** Along the walk on the sleepers, in pieces that meet over them. */
const STRINGERS: FloorMember = {
  member: "stringers",
  noun: "stringer",
  check: "stringer_check",
  size: "stringer_size",
  thickness: "stringer_thickness",
  depth: "stringer_depth",
  supports: { at: "sleepers.x" },
  joints: { line: "stringer_joints.line", at: "stringer_joints.position" },
  length: "stringer_length",
  carries: "stringers.carries",
  shares: "stringer_spacing",
  seat: "sleeper_thickness",
  remedies: [
    { input: "sleeper_spacing_max", toward: "less", step: "6 in" },
    { input: "stringer_spacing_max", toward: "less", step: "2 in" },
    { input: "stringer_size", toward: "more" },
  ],
}

/** Turned upside down: the stone pushes all along the sleeper, and the stringers hold it down. */
const SLEEPERS: FloorMember = {
  member: "sleepers",
  noun: "sleeper",
  check: "sleeper_check",
  size: "sleeper_size",
  thickness: "sleeper_thickness",
  depth: "sleeper_depth",
  supports: { at: "stringers.y" },
  length: "sleeper_length",
  from: "sleeper_line.starts",
  carries: "sleeper_line.carries",
  // The stone shares out what stands on one stringer: nothing pushes on the sleeper in one place.
  point: NO_POINT,
  held: "stringer_spacing",
  seat: "stringer_thickness",
  remedies: [
    { input: "sleeper_spacing_max", toward: "less", step: "6 in" },
    { input: "stringer_spacing_max", toward: "less", step: "2 in" },
    { input: "sleeper_size", toward: "more" },
  ],
}

const sleeperLine: TableEntry = {
  kind: "table",
  name: "sleeper_line",
  label: "A sleeper as a beam upside down",
  why: "The stone pushes up all along it, and the stringers hold it down. One row, the busiest sleeper.",
  sources: [STATICS],
  rows: { kind: "formula", formula: "1" },
  columns: [
    {
      name: "starts",
      label: "Begins across the walk at",
      measure: "length",
      formula: "(platform_width - sleeper_length) / 2",
      why: "It lies in the middle.",
      sources: [GEOMETRY],
    },
    {
      name: "carries",
      label: "Width of walk for each length of it",
      measure: "length",
      formula: "MAX(sleepers.carries) * platform_width / sleeper_length",
      why: "All that comes down on it, shared evenly along its length.",
      sources: [STATICS],
    },
  ],
}

const strong = membersOf([STRINGERS, SLEEPERS, GUARD_POST], ["board_strength", "guard_hold"])

/** Stringers, sleepers and guard posts of the walk; its boards beside them. */
export const strength: Section = { ...strong, entries: [sleeperLine, ...strong.entries] }

/** Cleats beside the stringers' joints, and bolts of the guard posts. */
export const fasteners: Section = fastenerStrength([
  {
    joint: "cleats at a joint of a stringer, should its sleeper sink",
    fastener: "screw",
    way: "pushed",
    diameter: "0.19 in",
    holds: "1 1/2 in",
    through: "1 1/2 in",
    force: "INDEX(members.reaction; 1) / 2",
    count: "cleats_per_joint * screws_per_cleat / 2",
    lasts: "people",
    remedies: [
      { input: "screws_per_cleat", toward: "more", step: "2" },
      { input: "sleeper_spacing_max", toward: "less", step: "6 in" },
    ],
  },
  GUARD_JOINT,
])
