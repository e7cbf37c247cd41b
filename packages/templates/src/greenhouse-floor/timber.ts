import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { timberOf } from "../parts/timber.ts"
import { treatmentOf } from "../parts/treatment.ts"
import type { TimberMember } from "../solvers/timber-problem.ts"

/** The timber of the floor: what is cut, and from which lengths. */
export const FLOOR_MEMBERS: readonly TimberMember[] = [
  {
    part: "bearer",
    size: "skid_size",
    lengths: "skid_pieces.length",
    stock: { board: "skid_pieces.stock" },
    line: "skid_pieces.line",
  },
  { part: "joist", size: "joist_size", lengths: "joists.length", stock: { list: "joist_stock" } },
  {
    part: "rim",
    size: "rim_size",
    lengths: "rim_pieces.length",
    stock: { list: "rim_stock" },
    line: "rim_pieces.line",
  },
  { part: "rim block", size: "rim_size", lengths: "rim_blocks.length", stock: { list: "blocking_stock" } },
  {
    part: "blocking",
    size: "joist_size",
    lengths: "blocking.length",
    stock: { list: "blocking_stock" },
    times: "blocking_rows",
  },
  {
    part: "board",
    size: "board_size",
    lengths: "board_pieces.length",
    stock: { list: "board_stock" },
    line: "board_pieces.line",
  },
  {
    part: "spare board",
    size: "board_size",
    lengths: "board_spares.length",
    stock: { list: "board_stock" },
    spare: true,
  },
]

/** Every piece of timber of the floor. */
export const timber: Section = adapt(timberOf(FLOOR_MEMBERS), {
  defaults: { saw_kerf: "3 mm", end_trim: "0 mm" },
})

/** Plants are watered above it: every timber counts as in contact with the ground. */
export const treatment: Section = adapt(
  treatmentOf(
    [
      {
        member: "bearers",
        treatment: "skid_treatment",
        startsWith: "UC4A",
        clearance: "underside_clearance - cover_stone_depth",
        hardToReplace: true,
      },
      {
        member: "joists and blocking",
        treatment: "joist_treatment",
        startsWith: "UC4A",
        clearance: "underside_clearance + skid_depth - cover_stone_depth",
        hardToReplace: true,
      },
      {
        member: "rims",
        treatment: "rim_treatment",
        startsWith: "UC4A",
        clearance: "rim_underside_height",
        hardToReplace: true,
      },
      {
        member: "boards",
        treatment: "board_treatment",
        startsWith: "UC4A",
        clearance: "underside_clearance + frame_build_up - cover_stone_depth",
        hardToReplace: false,
      },
    ],
    ["SUM(joists.length)", "SUM(rim_pieces.length)", "blocking_length"],
  ),
  { defaults: { often_wetted: "yes", joist_tape_roll: "15 m" } },
)
