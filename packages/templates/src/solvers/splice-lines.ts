import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { BOARD_PRICE_READS } from "./board-prices.ts"
import { type SplicePlan, splice } from "./splice.ts"
import { pricedStock, spliceReport } from "./splice-stock.ts"

/** Where the graph holds a member that lies in alike lines over supports. Every field is the name of an entry or column. */
export interface SplicedMember {
  /** Centres of the supports along a line, a column. */
  readonly supports: string
  /** How far each support bears along the line, a column. */
  readonly bearings: string
  /** The length of a line. */
  readonly length: string
  /** How many lines. */
  readonly lines: string
  /** The nominal size, a text. */
  readonly size: string
  /** The lengths sold, a list. */
  readonly stock: string
}

/** The names that the layout of a member is worked from. */
export function spliceReads(member: SplicedMember): readonly string[] {
  const { supports, bearings, length, lines, size, stock } = member
  return [
    supports,
    bearings,
    length,
    lines,
    size,
    stock,
    "joint_bearing_min",
    "joint_stagger_min",
    "piece_length_min",
    "shortfall_allowed",
    ...BOARD_PRICE_READS,
  ]
}

/** The pieces of all lines, one a row: line, piece, from, to, length, stock. */
export function solveLinePieces(member: SplicedMember): (given: SolverGiven) => Solution {
  return (given) => {
    const { plan, report } = laidOut(member, given)
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
    return { rows, report }
  }
}

/**
 * The joints of all lines, one a row: line, position, support, bearing. What could not be satisfied is said once,
 * with the pieces.
 */
export function solveLineJoints(member: SplicedMember): (given: SolverGiven) => Solution {
  return (given) => {
    const { plan, report } = laidOut(member, given)
    const rows = plan.joints.flatMap((joints, line) => joints.map((joint) => ({ line: line + 1, ...joint })))
    return { rows, report: { ...report, unmet: [] } }
  }
}

function laidOut(
  member: SplicedMember,
  given: SolverGiven,
): { readonly plan: SplicePlan; readonly report: SolverReport } {
  const { stocks, measure } = pricedStock(
    given,
    given.text(member.size),
    given.column(member.stock).map(Number),
    0,
  )
  const plan = splice({
    supports: given.column(member.supports).map(Number),
    bearings: given.column(member.bearings).map(Number),
    start: 0,
    end: given.number(member.length),
    stocks,
    bearingMin: given.number("joint_bearing_min"),
    lines: given.number(member.lines),
    stagger: given.number("joint_stagger_min"),
    pieceMin: given.number("piece_length_min"),
    shortfall: given.number("shortfall_allowed"),
  })
  const report = spliceReport(
    plan,
    measure,
    "dynamic programming over the supports, two neighbouring lines at once",
    {
      length: "length bought, each piece from a board of its own",
      money: "boards bought, by your prices, each piece from a board of its own",
    },
  )
  return { plan, report }
}
