import type { Section, TableEntry } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { column } from "../columns.ts"
import { sizesFrom } from "../figures/dressed-sizes.ts"
import {
  ARITHMETIC,
  COMMON_PRACTICE,
  GEOMETRY,
  OVERHANG_QUARTER,
  PS_20,
  TREATED_TIMBER,
  USER,
} from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { carryingLines } from "./carrying-lines.ts"
import { splicedLines } from "./spliced-lines.ts"

/**
 * Beams built up of members side by side: how many, and where they lie.
 *
 * Needs: platform_length, platform_width, dressed_sizes, rounding_tolerance, near_limit_share.
 */
export const beamLayout: Section = {
  id: "beams",
  title: "Beams",
  says: "The timbers under the joists, along the platform: each is made of planks set side by side.",
  entries: [
    {
      kind: "input",
      name: "beam_size",
      label: "Size of a plank in a beam",
      measure: "text",
      default: "2x8",
      choices: sizesFrom("2x6", "2x8", "2x10", "2x12", "38x140", "38x184", "38x235", "38x286", "47x", "4x"),
      why: "Set on edge: depth is what makes a beam stiff.",
      sources: [USER, PS_20, TREATED_TIMBER],
    },
    {
      kind: "input",
      name: "beam_plies",
      label: "Planks side by side in a beam",
      measure: "count",
      default: "2",
      least: "1",
      most: "4",
      why: "Two thin planks are easier to carry and to buy than one thick timber, and where they are long their joints need not fall together.",
      sources: [USER, practice("built-up beams of two or three planks")],
    },
    {
      kind: "formula",
      name: "beam_thickness",
      label: "Thickness of a beam",
      measure: "length",
      formula: "beam_plies * INDEX(dressed_sizes.thickness; MATCH(beam_size; dressed_sizes.nominal; 0))",
      why: "All planks together, as they really measure.",
      sources: [PS_20],
    },
    {
      kind: "formula",
      name: "beam_depth",
      label: "Depth of a beam",
      measure: "length",
      formula: "INDEX(dressed_sizes.depth; MATCH(beam_size; dressed_sizes.nominal; 0))",
      why: "Upright: part of the platform's height.",
      sources: [PS_20],
    },
    {
      kind: "formula",
      name: "beam_length",
      label: "Length of a beam",
      measure: "length",
      formula: "platform_length",
      why: "Beams run the whole length, each plank in one piece or in several that meet over a support.",
      sources: [GEOMETRY],
    },
    {
      kind: "input",
      name: "beam_spacing_max",
      label: "Widest spacing of the beams",
      measure: "length",
      default: "5 ft",
      least: "18 in",
      most: "14 ft",
      why: "The joists span from beam to beam: the wider the beams lie, the deeper the joists must be.",
      sources: [USER, COMMON_PRACTICE],
    },
    {
      kind: "input",
      name: "beam_edge_offset",
      label: "Outer beams in from the long edges",
      measure: "length",
      default: "10 in",
      least: "0 in",
      most: "4 ft",
      why: "From the frame's long edge to the middle of the first and the last beam. The joists reach past them by as much.",
      sources: [USER],
    },
    ...carryingLines({
      noun: "beam",
      nouns: "beams",
      counted: "Beams",
      each: "Each beam",
      spread: "platform_width - 2 * beam_edge_offset",
      first: "beam_edge_offset",
      markedOn: "the end strings",
    }),
    {
      kind: "figure",
      name: "overhang_share_most",
      label: "Overhang, share of the spacing",
      measure: "share",
      value: "25 %",
      why: "Joists may reach past the outer beam by no more than this share of the spacing, or the edge gets springy and can tip.",
      sources: [OVERHANG_QUARTER],
    },
    {
      kind: "formula",
      name: "beam_edge_offset_most",
      label: "Most overhang at this spacing",
      measure: "length",
      formula: "overhang_share_most * beam_spacing",
      why: "The share above, of the spacing of the beams.",
      sources: [OVERHANG_QUARTER],
    },
    {
      kind: "check",
      name: "beam_overhang_check",
      label: "Are the outer beams far enough out?",
      measure: "length",
      demand: "beam_edge_offset",
      limit: "beam_edge_offset_most",
      sense: "at_most",
      near: "near_limit_share",
      why: "Somebody standing on the edge must not lift the other side.",
      sources: [OVERHANG_QUARTER],
      advice: ["Set the outer beams in by no more than {beam_edge_offset_most}."],
    },
    {
      kind: "formula",
      name: "beam_ply_count",
      label: "Planks in all beams, as lines",
      measure: "count",
      formula: "beam_count * beam_plies",
      why: "So many lines of plank, each as long as the platform.",
      sources: [GEOMETRY],
    },
  ],
}

/** Where each plank lies, by the number that its pieces and joints know it by. */
const beamPlanks: TableEntry = {
  kind: "table",
  name: "beam_planks",
  label: "Each plank of the beams",
  why: "Where it lies in its beam, so that its pieces and joints can be drawn.",
  sources: [GEOMETRY],
  rows: { kind: "formula", formula: "beam_ply_count" },
  columns: [
    column(
      "beam",
      "Beam",
      "count",
      "ROUNDUP(ROW() / beam_plies; 0)",
      "Planks are counted beam by beam.",
      ARITHMETIC,
    ),
    column(
      "thickness",
      "Thickness of the plank",
      "length",
      "beam_thickness / beam_plies",
      "Each plank's share of its beam.",
      ARITHMETIC,
    ),
    column(
      "y",
      "Middle, across the width",
      "length",
      "INDEX(beams.y; beam) + (ROW() - (beam - 1) * beam_plies - (beam_plies + 1) / 2) * thickness",
      "From the frame's first long edge to the middle of the plank.",
      GEOMETRY,
    ),
  ],
}

/**
 * Where the planks of the beams meet. Every plank is a line of its own, so planks side by side have their joints apart.
 *
 * Needs: the layout of the beams and of the supports, block_length, near_limit_share.
 */
export const beamJoints: Section = adapt(
  {
    id: "beam-joints",
    title: "Beams and their joints",
    says: "What to cut each plank from, and over which supports planks meet.",
    entries: [
      beamPlanks,
      ...splicedLines({
        noun: "beam",
        support: "pad",
        member: {
          supports: "support_stations.x",
          bearings: "support_stations.bearing",
          length: "beam_length",
          lines: "beam_ply_count",
        },
        stock: "8 ft, 10 ft, 12 ft, 16 ft",
        bearingMin: "3 in",
      }),
      {
        kind: "formula",
        name: "joint_bearing",
        label: "Rest of each end at a joint",
        measure: "length",
        formula: "block_length / 2",
        why: "Two ends share the length of one pad.",
        sources: [GEOMETRY],
      },
      {
        kind: "formula",
        name: "joint_block_length_least",
        label: "Shortest pad that may carry a joint",
        measure: "length",
        formula: "2 * joint_bearing_min",
        why: "Twice the least rest.",
        sources: [GEOMETRY],
      },
      {
        kind: "check",
        name: "joint_bearing_check",
        label: "Do both ends rest far enough on a pad?",
        measure: "length",
        demand: "joint_bearing",
        limit: "joint_bearing_min",
        sense: "at_least",
        near: "near_limit_share",
        why: "A joint is only as good as what is under it.",
        sources: [COMMON_PRACTICE],
        advice: ["Use pads at least {joint_block_length_least} long, with their length along the beam."],
      },
    ],
  },
  {
    labels: { "beam_pieces.line": "Plank", "beam_joints.line": "Plank", "beam_pieces.stock": "Comes out of" },
    whys: {
      beam_pieces: "What to cut for each plank of each beam.",
      beam_piece_count: "As many pieces to cut and to screw together.",
      beam_joint_count: "None where planks are sold as long as the platform.",
      "beam_pieces.line": "Counted beam by beam, and across each beam from its near face.",
      "beam_joints.line": "As in the pieces.",
      "beam_pieces.stock":
        "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none. The cutting plan may put two into one.",
      joint_stagger_min:
        "Joints of two planks side by side are kept this far apart, so that at every joint another plank runs through.",
    },
  },
)
