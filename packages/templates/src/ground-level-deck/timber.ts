import type { TimberMember } from "../solvers/timber-problem.ts"

/** The timber of the deck: what is cut, and from which lengths. */
export const DECK_MEMBERS: readonly TimberMember[] = [
  {
    part: "beam plank",
    size: "beam_size",
    lengths: "beam_pieces.length",
    stock: { list: "beam_stock" },
    line: "beam_pieces.line",
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
