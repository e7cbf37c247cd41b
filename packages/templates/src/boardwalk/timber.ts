import type { Section } from "@pegbook/engine"
import { timberOf } from "../parts/timber.ts"
import { treatmentOf } from "../parts/treatment.ts"
import type { TimberMember } from "../solvers/timber-problem.ts"

/** The timber of the walk: what is cut, and from which lengths. */
export const WALK_MEMBERS: readonly TimberMember[] = [
  {
    part: "stringer",
    size: "stringer_size",
    lengths: "stringer_pieces.length",
    stock: { list: "stringer_stock" },
    line: "stringer_pieces.line",
  },
  {
    part: "ramp stringer",
    size: "stringer_size",
    lengths: "ramp_stringers.length",
    stock: { list: "stringer_stock" },
  },
  { part: "cleat", size: "stringer_size", lengths: "cleat_pieces.length", stock: { list: "stringer_stock" } },
  { part: "sleeper", size: "sleeper_size", lengths: "sleepers.length", stock: { list: "sleeper_stock" } },
  {
    part: "board",
    size: "board_size",
    lengths: "board_pieces.length",
    stock: { list: "board_stock" },
    line: "board_pieces.line",
  },
  { part: "ramp board", size: "board_size", lengths: "ramp_boards.length", stock: { list: "board_stock" } },
  { part: "tread board", size: "board_size", lengths: "step_boards.length", stock: { list: "board_stock" } },
  {
    part: "spare board",
    size: "board_size",
    lengths: "board_spares.length",
    stock: { list: "board_stock" },
    spare: true,
  },
  {
    part: "step carriage",
    size: "step_carriage_size",
    lengths: "step_carriage_pieces.length",
    stock: { list: "step_carriage_stock" },
  },
  {
    part: "kerb",
    size: "edge_board_size",
    lengths: "edge_pieces.length",
    stock: { list: "edge_board_stock" },
  },
  {
    part: "kerb packer",
    size: "edge_board_size",
    lengths: "kerb_packers.length",
    stock: { list: "edge_board_stock" },
  },
]

/** Every piece of timber of the walk, its ramps, its steps and its kerbs. */
export const timber: Section = timberOf(WALK_MEMBERS)

export const treatment: Section = treatmentOf(
  [
    {
      member: "sleepers",
      treatment: "sleeper_treatment",
      startsWith: "UC4A",
      clearance: "underside_clearance",
      hardToReplace: true,
    },
    {
      member: "stringers and cleats",
      treatment: "stringer_treatment",
      startsWith: "UC4A",
      clearance: "underside_clearance + sleeper_depth",
      hardToReplace: true,
    },
    {
      member: "ramps and steps, their timbers",
      treatment: "ramp_treatment",
      startsWith: "UC4A",
      clearance: "0",
      hardToReplace: false,
    },
    {
      member: "boards",
      treatment: "board_treatment",
      startsWith: "UC3B",
      clearance: "underside_clearance + frame_build_up",
      hardToReplace: false,
    },
    {
      member: "kerbs",
      treatment: "edge_board_treatment",
      startsWith: "UC3B",
      clearance: "top_height + kerb_packer_height",
      hardToReplace: false,
    },
  ],
  ["SUM(stringer_pieces.length)", "SUM(ramp_stringers.length)"],
)
