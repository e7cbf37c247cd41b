import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { type SplicePlan, splice } from "./splice.ts"

/** Where the graph holds rows of boards over bearers. Every field is the name of an entry or a column. */
export interface SplicedBoards {
  /** Centres of the bearers along a row, ascending: a column. */
  readonly bearers: string
  /** The thickness of a bearer, all alike. */
  readonly bearing: string
  /** The frame's size along a row, from 0, and how far a row reaches beyond either end of it. */
  readonly length: string
  readonly overhang: string
  readonly rows: string
  /** The lengths sold, a list. */
  readonly stock: string
  readonly bearingMin: string
  readonly stagger: string
  readonly pieceMin: string
}

/** The names that the pieces of these rows are worked from. */
export function splicedBoardsReads(names: SplicedBoards): readonly string[] {
  return [...Object.values(names), "end_trim"]
}

/** The pieces of all rows, one a row: line, piece, from, to, length. Boards are shared out by the timber plan. */
export function solveBoardPieces(names: SplicedBoards): (given: SolverGiven) => Solution {
  return (given) => {
    const plan = planOf(names, given)
    const rows = plan.lines.flatMap((pieces, line) =>
      pieces.map(({ from, to }, index) => ({
        line: line + 1,
        piece: index + 1,
        from,
        to,
        length: to - from,
      })),
    )
    return { rows, report: reportOf(plan) }
  }
}

/** The joints of all rows, one a row: line, position, support, bearing. What is unmet is said once, with the pieces. */
export function solveBoardJoints(names: SplicedBoards): (given: SolverGiven) => Solution {
  return (given) => {
    const plan = planOf(names, given)
    const rows = plan.joints.flatMap((joints, line) => joints.map((joint) => ({ line: line + 1, ...joint })))
    return { rows, report: { ...reportOf(plan), unmet: [] } }
  }
}

function planOf(names: SplicedBoards, given: SolverGiven): SplicePlan {
  const supports = given.column(names.bearers).map(Number)
  const bearing = given.number(names.bearing)
  const trimmed = 2 * given.number("end_trim")
  const overhang = given.number(names.overhang)
  return splice({
    supports,
    bearings: supports.map(() => bearing),
    start: -overhang,
    end: given.number(names.length) + overhang,
    stocks: given.column(names.stock).map((sold) => ({ length: Number(sold) - trimmed, cost: Number(sold) })),
    bearingMin: given.number(names.bearingMin),
    lines: given.number(names.rows),
    stagger: given.number(names.stagger),
    pieceMin: given.number(names.pieceMin),
    shortfall: 0,
  })
}

function reportOf({ lines, cost, unmet }: SplicePlan): SolverReport {
  const method = "dynamic programming over the bearers, two neighbouring rows at once"
  if (lines.length === 0) return { method, unmet }
  return {
    method,
    objective: {
      says: "length, were each piece cut from a board of its own",
      measure: "length",
      value: cost,
    },
    bound: cost,
    unmet,
  }
}
