import type { GraphBuilder } from "../../src/graph/graph.ts"
import { f, graphOf } from "./small-graph.ts"

/** In whole nanometres: 1/64 in and 0.1 mm. */
const GRIDS = [396_875, 100_000]
const SPACINGS_PER_GRID = 600
/** Spacings grow by so many steps of the grid, so that 600 of them reach past 4 ft and past 1 m. */
const STRIDES = [5, 17]
const MOST_PIECES = 1_000
const COUNTS_PER_SPACING = 4
/** A prime, so that the counts tried wander over all of 1 to 1,000. */
const WANDER = 379

/**
 * Cuts many lengths into whole numbers of spacings, and the same lengths one nanometre longer, and counts the
 * pieces with ROUNDUP. One row a case.
 *
 * @returns how many spacings and cases were tried, and a line for each count that was wrong
 */
export function exactFits(build: GraphBuilder): {
  readonly spacings: number
  readonly cases: number
  readonly wrong: readonly string[]
} {
  const cases = GRIDS.flatMap((grid, which) =>
    Array.from({ length: SPACINGS_PER_GRID }, (_, index) => grid * (1 + index * (STRIDES[which] ?? 1))),
  ).flatMap((spacing, index) =>
    [1, MOST_PIECES, ...Array.from({ length: COUNTS_PER_SPACING }, (_, k) => pieces(index, k))].map(
      (count) => ({
        spacing,
        count,
      }),
    ),
  )
  const graph = graphOf(
    build,
    {},
    {
      fits: {
        columns: {
          spacing: cases.map(({ spacing }) => spacing),
          total: cases.map(({ spacing, count }) => spacing * count),
          exact: f("ROUNDUP(total / spacing; 0)"),
          over: f("ROUNDUP((total + 1) / spacing; 0)"),
          whole: f("INT(total / spacing)"),
        },
      },
    },
  )
  const exact = graph.column("fits", "exact")
  const over = graph.column("fits", "over")
  const whole = graph.column("fits", "whole")
  const wrong = cases.flatMap(({ spacing, count }, row) =>
    exact[row] === count && over[row] === count + 1 && whole[row] === count
      ? []
      : [`${count} of ${spacing} nm: ${exact[row]}, one nanometre more: ${over[row]}, whole: ${whole[row]}`],
  )
  return { spacings: new Set(cases.map(({ spacing }) => spacing)).size, cases: cases.length, wrong }
}

function pieces(index: number, k: number): number {
  return (((index * COUNTS_PER_SPACING + k) * WANDER) % MOST_PIECES) + 1
}
