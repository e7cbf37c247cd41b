import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { EDGE_ADA } from "../sources-walk.ts"
import { edgeBoards } from "./edge-boards.ts"
import type { JointGroup } from "./fixings.ts"
import { edgeBoardScrews } from "./frame-screws.ts"

const lyingBoards = adapt(edgeBoards, {
  labels: {
    edge_board_size: "Kerb timber",
    edge_board_thickness: "Kerb timber thickness, real",
    edge_board_depth: "Kerb timber width, real",
    edge_board_ends: "Ends with a kerb",
    edge_board_sides: "Long sides with a kerb",
    edging_length: "Kerbs, end to end",
    edge_board_stock: "Lengths sold, kerbs",
    edge_board_longest: "Longest kerb that can be bought",
    edge_pieces: "Each kerb piece",
  },
  whys: {
    edge_board_size: "It lies flat on the boards along the edge.",
    edge_board_thickness: "It lies flat, so this is its height.",
    edge_board_depth: "It lies flat, so this much of the walk's width goes to it.",
    edge_board_ends: "None on a walk: people get on there.",
    edge_board_sides: "Both long sides, unless people also step off there.",
    "edge_runs.run": "As long as the walk.",
    edge_board_stock: "A side longer than the longest of these is made of several pieces.",
    "edge_runs.pieces":
      "Pieces may meet over any packer. They are made alike, which looks better than one stub at the end.",
  },
  defaults: { edge_board_size: "2x4", edge_board_ends: "0" },
  without: ["edge_board_rise", "edge_board_overlap", "edge_board_overlap_least", "edge_board_hold_check"],
})

/**
 * Low kerbs lying along a walk's edges, on packers that let leaves and water out.
 *
 * Needs: edge_screw_places, platform_length, platform_width, dressed_sizes, end_trim, rounding_tolerance, near_limit_share.
 */
export const edgeTrim: Section = {
  id: "edge-trim",
  title: "Kerbs",
  says: "Low timbers along both edges keep wheels and feet on the walk.",
  entries: [
    ...lyingBoards.entries,
    {
      kind: "input",
      name: "kerb_packer_height",
      label: "Height of the packers",
      why: "The kerb lies on short packers, so that water and leaves get out under it.",
      sources: [USER, practice("kerbs on packers")],
      measure: "length",
      default: "1 1/2 in",
      least: "0 in",
      most: "6 in",
    },
    {
      kind: "input",
      name: "kerb_packer_length",
      label: "Length of a packer",
      why: "Short pieces of kerb timber; off-cuts do.",
      sources: [USER],
      measure: "length",
      default: "6 in",
      least: "2 in",
      most: "4 ft",
    },
    {
      kind: "table",
      name: "kerb_packers",
      label: "Each packer",
      why: "One wherever the kerb is screwed down.",
      sources: [GEOMETRY],
      rows: { kind: "formula", formula: "edge_screw_places" },
      columns: [
        {
          name: "length",
          label: "Cut length",
          why: "What to cut.",
          sources: [GEOMETRY],
          measure: "length",
          formula: "kerb_packer_length",
        },
      ],
    },
    {
      kind: "figure",
      name: "kerb_gap_most",
      label: "Most opening under a kerb",
      why: "A small front wheel must not slip under it.",
      sources: [EDGE_ADA],
      measure: "length",
      value: "4 in",
    },
    {
      kind: "check",
      name: "kerb_gap_check",
      label: "Does the kerb stop a wheel?",
      why: "An opening that a wheel or a foot gets under is worse than no kerb.",
      sources: [EDGE_ADA],
      measure: "length",
      demand: "kerb_packer_height",
      limit: "kerb_gap_most",
      sense: "at_most",
      near: "near_limit_share",
      advice: ["Take packers lower than {kerb_gap_most}."],
    },
    {
      kind: "formula",
      name: "clear_width",
      label: "Clear width between the kerbs",
      why: "What is left to walk on.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "platform_width - edge_board_sides * edge_board_depth",
    },
  ],
}

/** A packer, and the screws through it, wherever an edge board of its kind is screwed. Needs: the kerbs. */
export const kerbScrews: JointGroup = {
  entries: adapt(
    { id: "kerb-screws", title: "", says: "", entries: edgeBoardScrews.entries },
    {
      labels: {
        edge_screw_spacing: "Packers and screws of a kerb, at most apart",
        edge_screws_per_place: "Kerb screws at a packer",
        edge_screw_places: "Packers",
      },
      whys: {
        edge_screw_spacing: "A kerb that bends between its packers works loose.",
        edge_screws_per_place: "Side by side, so that the packer cannot turn.",
        edge_screw_places: "Along each kerb piece, one at both its ends.",
      },
      defaults: { edge_screw_spacing: "4 ft" },
    },
  ).entries,
  joints: [
    {
      joint: "kerb through a packer",
      screw: "frame screws",
      places: "edge_screw_places",
      each: "edge_screws_per_place",
      through: "edge_board_thickness + kerb_packer_height",
    },
  ],
}
