import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { tiesOn } from "./beam-fixings.ts"
import type { JointGroup } from "./fixings.ts"
import { skidJoints, skidLayout } from "./skids.ts"
import { SKIDS, type SupportedLines } from "./supported-lines.ts"

/** Bearers: skids that are never dragged, on slabs. The names are the skids'; the words are not. */
export const BEARERS_ON_SLABS: SupportedLines = {
  ...SKIDS,
  noun: "bearer",
  nouns: "bearers",
  stack: "slab",
  block: "slab",
}

/** Bearers along the floor, on slabs. Needs what the skids need. */
export const bearers: Section = {
  ...adapt(skidLayout, {
    labels: {
      skid_size: "Size of the bearers",
      skid_thickness: "Thickness of a bearer",
      skid_depth: "Depth of a bearer",
      skid_length: "Length of a line of bearers",
      skid_spacing_max: "Widest spacing of the bearers",
      skid_inset: "Outer bearers set in by",
      skid_count: "Lines of bearers",
      skid_spacing: "Spacing of the bearers, centre to centre",
      skids: "Lines of bearers",
      "skids.y": "Centre, across the width",
      skid_overhang: "Overhang beyond the outer bearers",
      skid_overhang_check: "Are the outer bearers far enough out?",
    },
    whys: {
      skid_size: "The timbers that carry the joists. They lie on the slabs and run the long way.",
      skid_length:
        "Each line runs the whole length of the floor, in one piece or in several that meet over a slab.",
      skid_spacing_max:
        "The joists span from bearer to bearer: the wider the bearers lie, the deeper the joists must be.",
      skid_inset:
        "How far the outer faces of the first and last bearer stand back from the frame's long edges; 0: flush.",
      overhang_share_most:
        "Joists may reach past the outer bearer by no more than this share of the spacing, or the edge gets springy and can tip.",
      skid_overhang: "From the middle of the outer bearer to the edge of the frame.",
      skid_overhang_most: "The share above, of the spacing of the bearers.",
      "skids.y": "From the frame's first long edge to the middle of the bearer.",
    },
    defaults: { skid_size: "89x89", skid_spacing_max: "1.2 m" },
  }),
  id: "bearers",
  title: "Bearers",
  says: "The timbers along the floor that carry its joists: how many lines, and where each one lies.",
}

/** Where the pieces of a long bearer meet. */
export const bearerJoints: Section = {
  ...adapt(skidJoints, {
    labels: {
      skid_stock: "Lengths of bearer you can buy",
      joint_bearing_check: "Do both ends rest far enough on a slab?",
      joint_block_length_least: "Shortest slab that may carry a joint",
      skid_pieces: "Pieces of the bearers",
      skid_joints: "Joints of the bearers",
      skid_piece_count: "Pieces of bearer",
      skid_joint_count: "Joints in the bearers",
      skid_bought_length: "Bearer timber bought",
    },
    whys: {
      joint_bearing_min:
        "Each piece must lie on the slab by at least this much, or a little movement lets it slip off.",
      joint_bearing: "Two ends share the length of one slab, half each.",
      joint_bearing_check: "A joint is only as good as the slab under it.",
      skid_joints:
        "Where two pieces of one line meet, always over a slab; neighbouring lines meet over different ones.",
      "skid_pieces.line": "The line of bearers, as in the layout.",
      "skid_joints.line": "The line of bearers, as in the layout.",
      "skid_pieces.to": "Where the piece ends: in the middle of a slab, or at the end of the frame.",
      "skid_joints.bearing": "How much of the slab lies under each of the two ends.",
    },
    defaults: {
      skid_stock: "3.0 m, 3.6 m, 4.2 m, 4.8 m, 5.4 m, 6.0 m",
      joint_bearing_min: "75 mm",
      joint_stagger_min: "0.6 m",
      piece_length_min: "1.2 m",
      shortfall_allowed: "0 mm",
    },
  }),
  id: "bearer-joints",
  title: "Bearers and their joints",
}

/** Joists on bearers. Needs: skid_count, joist_count. */
export const bearerTies: JointGroup = tiesOn({
  noun: "bearer",
  count: "skid_count",
  why: "A small metal tie keeps the joist on the bearer when wind lifts what stands on it.",
})
