import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { type SplicePlan, splice } from "./splice.ts"

/** The pieces of all lines of skids, one a row: line, piece, from, to, length, stock. */
export function splicePieces(given: SolverGiven): Solution {
  const plan = planOf(given)
  const rows = plan.lines.flatMap((pieces, line) =>
    pieces.map((piece, index) => ({
      line: line + 1,
      piece: index + 1,
      from: piece.from,
      to: piece.to,
      length: piece.to - piece.from,
      stock: piece.stock.length,
    })),
  )
  return { rows, report: reportOf(plan) }
}

/**
 * The joints of all lines of skids, one a row: line, position, support, bearing. What could not be satisfied is
 * said once, with the pieces.
 */
export function spliceJoints(given: SolverGiven): Solution {
  const plan = planOf(given)
  const rows = plan.joints.flatMap((joints, line) => joints.map((joint) => ({ line: line + 1, ...joint })))
  return { rows, report: { ...reportOf(plan), unmet: [] } }
}

function planOf(given: SolverGiven): SplicePlan {
  return splice({
    supports: given.column("support_stations.x").map(Number),
    bearings: given.column("support_stations.bearing").map(Number),
    start: 0,
    end: given.number("skid_length"),
    stocks: given.column("skid_stock").map((length) => ({ length: Number(length), cost: Number(length) })),
    bearingMin: given.number("joint_bearing_min"),
    lines: given.number("skid_count"),
    stagger: given.number("joint_stagger_min"),
    pieceMin: given.number("piece_length_min"),
    shortfall: given.number("shortfall_allowed"),
  })
}

function reportOf(plan: SplicePlan): SolverReport {
  const method = "dynamic programming over the supports, two neighbouring lines at once"
  if (plan.lines.length === 0) return { method, unmet: plan.unmet }
  return {
    method,
    objective: {
      says: "length bought, each piece from a board of its own",
      measure: "length",
      value: plan.cost,
    },
    bound: plan.cost,
    unmet: plan.unmet,
  }
}
