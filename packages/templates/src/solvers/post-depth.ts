import type { Solution, SolverGiven } from "@pegbook/engine"

/** Names that the depth of a post is worked from, all lengths and forces of one post. */
export const POST_DEPTH_READS = [
  "net_wind.post_force",
  "net_wind.arm",
  "net_wind_factors.hole_width",
  "net_wind.lateral",
  "net_wind_factors.reference_depth",
  "net_wind_factors.depth_factor",
  "net_wind_factors.depth_ratio",
  "net_wind_factors.depth_cap",
] as const

/** Two tries nearer than this share of the depth are the answer. */
const CLOSE = 1e-9
const MOST_TRIES = 100

/**
 * The depth of a post that nothing holds at the ground: the published formula gives the depth from the soil's sideways
 * pressure at a third of that depth, so it is tried again and again, each time from half way between the depth tried and
 * the depth found. One row a try: try, depth, pressure, reach (A of the formula), found. None where no wind or no soil is.
 */
export function solvePostDepth(given: SolverGiven): Solution {
  const [force, arm, width] = [
    given.number("net_wind.post_force"),
    given.number("net_wind.arm"),
    given.number("net_wind_factors.hole_width"),
  ]
  const method = "repeated tries of the published formula, each from half way to the last answer"
  const perDepth = given.number("net_wind.lateral") / given.number("net_wind_factors.reference_depth")
  // No wind, or a post that stands in no soil.
  if (force <= 0 || perDepth <= 0) return { rows: [], report: { method, unmet: [] } }
  const [factor, ratio, cap] = [
    given.number("net_wind_factors.depth_factor"),
    given.number("net_wind_factors.depth_ratio"),
    given.number("net_wind_factors.depth_cap"),
  ]
  const rows: Record<string, number>[] = []
  // A depth to begin with: where A and the depth are alike.
  let depth = Math.sqrt((3 * factor * force) / (perDepth * width))
  for (let number = 1; number <= MOST_TRIES; number++) {
    const pressure = (perDepth * Math.min(depth, cap)) / 3
    const reach = (factor * force) / (pressure * width)
    const found = (reach / 2) * (1 + Math.sqrt(1 + (ratio * arm) / reach))
    rows.push({ try: number, depth, pressure, reach, found })
    if (Math.abs(found - depth) <= CLOSE * found)
      return {
        rows,
        report: { method, objective: { says: "depth", measure: "length", value: found }, unmet: [] },
      }
    depth = (depth + found) / 2
  }
  return {
    rows,
    report: { method, unmet: ["The depth did not settle. Check the post's force and the soil."] },
  }
}
