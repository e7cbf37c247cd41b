import type { Section } from "@pegbook/engine"
import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import type { JointGroup } from "./fixings.ts"

const BESIDE = practice("cleats on both sides of a butt joint")

/**
 * Cleats: short pieces of the stringers' timber, screwed to both sides of every joint.
 *
 * Needs: stringer_joints, stringer_joint_count, stringer_thickness, stringer_spacing.
 */
export const cleats: Section = {
  id: "cleats",
  title: "Cleats at the joints",
  says: "Short pieces beside every joint in a stringer keep the two ends in line and on their sleeper.",
  entries: [
    {
      kind: "input",
      name: "cleats_per_joint",
      label: "Cleats at a joint",
      measure: "count",
      default: "2",
      least: "0",
      most: "2",
      why: "One on either side. With one only, the joint folds to the open side.",
      sources: [USER, BESIDE],
    },
    {
      kind: "input",
      name: "cleat_length",
      label: "Length of a cleat",
      measure: "length",
      default: "2 ft",
      least: "4 in",
      most: "8 ft",
      why: "Half of it lies beside either end, so that the screws stand well away from the cut.",
      sources: [USER, BESIDE],
    },
    {
      kind: "formula",
      name: "cleat_count",
      label: "Cleats",
      measure: "count",
      formula: "cleats_per_joint * stringer_joint_count",
      why: "At every joint of every line.",
      sources: [GEOMETRY],
    },
    {
      kind: "table",
      name: "cleat_pieces",
      label: "Each cleat",
      rows: { kind: "formula", formula: "cleat_count" },
      why: "Where each cleat goes, and what to cut. They come out of what is left of the stringers first.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "joint",
          label: "Joint",
          measure: "count",
          formula: "INT((ROW() - 1) / cleats_per_joint) + 1",
          why: "The row of the table of joints.",
          sources: [GEOMETRY],
        },
        {
          name: "line",
          label: "Line",
          measure: "count",
          formula: "INDEX(stringer_joints.line; joint)",
          why: "The line of stringers, as in the layout.",
          sources: [GEOMETRY],
        },
        {
          name: "position",
          label: "Middle, along the walk",
          measure: "length",
          formula: "INDEX(stringer_joints.position; joint)",
          why: "The cleat's middle is at the joint.",
          sources: [GEOMETRY],
        },
        {
          name: "length",
          label: "Cut length",
          measure: "length",
          formula: "cleat_length",
          why: "What to cut.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "formula",
      name: "cleat_reach",
      label: "Cleat beside either end",
      measure: "length",
      formula: "cleat_length / 2",
      why: "Half the cleat on each side of the joint.",
      sources: [GEOMETRY],
    },
    {
      kind: "figure",
      name: "cleat_reach_least",
      label: "Least cleat beside either end",
      measure: "length",
      value: "8 in",
      why: "Room for two pairs of screws, the nearest ones far enough from the cut end that it does not split.",
      sources: [practice("two pairs of screws beside each end of a joint")],
    },
    {
      kind: "check",
      name: "cleat_reach_check",
      label: "Are the cleats long enough?",
      measure: "length",
      demand: "cleat_reach",
      limit: "cleat_reach_least",
      sense: "at_least",
      why: "A short cleat is held by screws that stand near the cut, and these are the first to split out.",
      sources: [practice("two pairs of screws beside each end of a joint")],
      advice: ["Make the cleats long enough to reach {cleat_reach_least} past the joint on either side."],
    },
    {
      kind: "formula",
      name: "cleat_room",
      label: "Clear between two stringers",
      measure: "length",
      formula: "stringer_spacing - stringer_thickness",
      why: "Where neighbouring joints stand side by side, two cleats share this room.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "cleat_room_needed",
      label: "Room that two cleats need",
      measure: "length",
      formula: "2 * stringer_thickness",
      why: "Cleats are of the stringers' timber, so as thick as these.",
      sources: [GEOMETRY],
    },
    {
      kind: "check",
      name: "cleat_room_check",
      label: "Room for the cleats",
      measure: "length",
      demand: "cleat_room",
      limit: "cleat_room_needed",
      sense: "at_least",
      why: "Stringers that stand very close leave no room for a cleat and a driver between them.",
      sources: [GEOMETRY],
      advice: ["Set the stringers further apart, with at least {cleat_room_needed} clear between them."],
    },
    {
      kind: "input",
      name: "screws_per_cleat",
      label: "Frame screws in a cleat",
      measure: "count",
      default: "8",
      least: "0",
      most: "24",
      why: "Two pairs into either end of the stringer.",
      sources: [USER, practice("two pairs of screws beside each end of a joint")],
    },
  ],
}

/** Cleats on both sides of a joint. Needs: the cleats. */
export const cleatScrews: JointGroup = {
  entries: [],
  joints: [
    {
      joint: "cleat beside a joint",
      screw: "frame screws",
      places: "cleat_count",
      each: "screws_per_cleat",
      through: "stringer_thickness",
    },
  ],
}
