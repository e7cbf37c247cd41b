import type { Solution, SolverGiven } from "@pegbook/engine"

/** What the drops of the sides are worked from: stations in order round the platform, a side's first corner with it. */
export const SIDE_DROP_READS = [
  "edge_stations.side",
  "edge_stations.x",
  "edge_stations.y",
  "edge_stations.height",
] as const

/**
 * The station of each side where the surface is highest above the ground, a row a side in the order of their numbers:
 * side, drop, x, y. Both corners of a side count as its own. Of stations alike, the first.
 */
export function solveSideDrops(given: SolverGiven): Solution {
  const [sides = [], x = [], y = [], heights = []] = SIDE_DROP_READS.map((name) =>
    given.column(name).map(Number),
  )
  const rows = [...new Set(sides)].map((side) => {
    const first = sides.indexOf(side)
    const own = heights.slice(first, sides.lastIndexOf(side) + 1)
    const nextCorner = heights[(first + own.length) % heights.length] ?? 0
    const along = [...own, nextCorner]
    const drop = Math.max(...along)
    const at = (first + along.indexOf(drop)) % heights.length
    return { side, drop, x: x[at] ?? 0, y: y[at] ?? 0 }
  })
  return { rows, report: { method: "the highest of each side's stations, both corners with it", unmet: [] } }
}
