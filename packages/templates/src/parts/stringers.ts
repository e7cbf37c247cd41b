import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { sizesFrom } from "../figures/dressed-sizes.ts"
import { COMMON_PRACTICE, GEOMETRY, OVERHANG_QUARTER, PS_20, TREATED_TIMBER, USER } from "../sources.ts"
import { carryingLines } from "./carrying-lines.ts"
import { splicedLines } from "./spliced-lines.ts"

/**
 * The stringers: timbers on edge along the walk, side by side, under the boards.
 *
 * Needs: platform_length, platform_width, dressed_sizes, rounding_tolerance, near_limit_share.
 */
export const stringers: Section = {
  id: "stringers",
  title: "Stringers",
  says: "The timbers along the walk that the boards lie on: how many lines, and where each one lies.",
  entries: [
    {
      kind: "input",
      name: "stringer_size",
      label: "Size of the stringers",
      why: "They stand on edge along the walk. A deeper one spans further from sleeper to sleeper, and makes the walk higher.",
      sources: [USER, TREATED_TIMBER],
      cautions: [
        "Stringers this near the ground must be treated for ground contact, cut ends too. Never burn the off-cuts.",
      ],
      measure: "text",
      default: "2x6",
      choices: sizesFrom("2x4", "2x6", "2x8", "2x10", "2x12", "3x", "4x", "38x", "47x", "75x", "89x", "100x"),
    },
    {
      kind: "formula",
      name: "stringer_thickness",
      label: "Thickness of a stringer, real",
      why: "The narrow face, which the boards are screwed to.",
      sources: [PS_20],
      measure: "length",
      formula: "INDEX(dressed_sizes.thickness; MATCH(stringer_size; dressed_sizes.nominal; 0))",
    },
    {
      kind: "formula",
      name: "stringer_depth",
      label: "Depth of a stringer, real",
      why: "Upright: part of the height of the walk.",
      sources: [PS_20],
      measure: "length",
      formula: "INDEX(dressed_sizes.depth; MATCH(stringer_size; dressed_sizes.nominal; 0))",
    },
    {
      kind: "formula",
      name: "stringer_length",
      label: "Length of a line of stringers",
      why: "Each line runs the whole length of the walk, in one piece or in several that meet over a sleeper.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "platform_length",
    },
    {
      kind: "input",
      name: "stringer_spacing_max",
      label: "Widest spacing of the stringers",
      why: "The boards span from stringer to stringer: thin boards need stringers close together.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "16 in",
      least: "6 in",
      most: "4 ft",
    },
    {
      kind: "input",
      name: "stringer_inset",
      label: "Outer stringers set in by",
      why: "How far the outer faces of the first and last stringer stand back from the walk's edges; 0: flush. A little hides them and keeps rain off.",
      sources: [USER],
      measure: "length",
      default: "2 in",
      least: "0 in",
      most: "18 in",
    },
    ...carryingLines({
      noun: "stringer",
      nouns: "stringers",
      counted: "Lines of stringers",
      each: "Lines of stringers",
      spread: "platform_width - 2 * stringer_inset - stringer_thickness",
      first: "stringer_overhang",
      markedOn: "every sleeper",
    }),
    {
      kind: "formula",
      name: "stringer_overhang",
      label: "Boards beyond the middle of the outer stringer",
      why: "A foot on the edge of the walk stands here.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "stringer_inset + stringer_thickness / 2",
    },
    {
      kind: "figure",
      name: "overhang_share_most",
      label: "Overhang, share of the spacing",
      why: "Boards may reach past the outer stringer by no more than this share of the spacing, or the edge gets springy and can tip. The published figure is for joists past a beam.",
      sources: [OVERHANG_QUARTER],
      measure: "share",
      value: "25 %",
    },
    {
      kind: "formula",
      name: "stringer_overhang_most",
      label: "Most overhang at this spacing",
      why: "The share above, of the spacing of the stringers.",
      sources: [OVERHANG_QUARTER],
      measure: "length",
      formula: "overhang_share_most * stringer_spacing",
    },
    {
      kind: "check",
      name: "stringer_overhang_check",
      label: "Are the outer stringers far enough out?",
      why: "Somebody who steps on the edge must not lift the other end of the board.",
      sources: [OVERHANG_QUARTER],
      measure: "length",
      demand: "stringer_overhang",
      limit: "stringer_overhang_most",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "Set the outer stringers in less, so that no more than {stringer_overhang_most} is left beyond their middle.",
      ],
    },
  ],
}

/**
 * Where the pieces of a long stringer meet.
 *
 * Needs: stringers, stringer_count, stringer_length, sleepers, sleeper_thickness, near_limit_share.
 */
export const stringerJoints: Section = adapt(
  {
    id: "stringer-joints",
    title: "Stringers and their joints",
    says: "Which lengths to buy, and over which sleepers the pieces of one line meet.",
    entries: [
      ...splicedLines({
        noun: "stringer",
        support: "sleeper",
        member: {
          supports: "sleepers.x",
          bearings: "sleepers.bearing",
          length: "stringer_length",
          lines: "stringer_count",
        },
        stock: "8 ft, 10 ft, 12 ft, 16 ft",
        bearingMin: "1 1/2 in",
      }),
      {
        kind: "formula",
        name: "joint_bearing",
        label: "Rest of each piece at a joint",
        why: "Two ends share the width of one sleeper, half each.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "sleeper_thickness / 2",
      },
      {
        kind: "formula",
        name: "joint_sleeper_width_least",
        label: "Narrowest sleeper that may carry a joint",
        why: "Twice the least rest.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "2 * joint_bearing_min",
      },
      {
        kind: "check",
        name: "joint_bearing_check",
        label: "Do both ends rest far enough on a sleeper?",
        why: "A joint is only as good as the sleeper under it.",
        sources: [COMMON_PRACTICE],
        measure: "length",
        demand: "joint_bearing",
        limit: "joint_bearing_min",
        sense: "at_least",
        near: "near_limit_share",
        advice: ["Use sleepers at least {joint_sleeper_width_least} wide."],
      },
    ],
  },
  {
    labels: { "stringer_pieces.stock": "Comes out of" },
    whys: {
      stringer_pieces: "What to cut for each line.",
      stringer_piece_count: "As many pieces to cut and to lay.",
      "stringer_pieces.stock":
        "The length on sale that the piece comes out of: the cheapest by your prices, the shortest where there are none. The cutting plan may put two into one, and cuts the cleats from what is left.",
    },
  },
)
