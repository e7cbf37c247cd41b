import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { BOARD_PRICE_READS } from "./board-prices.ts"
import { type SplicePlan, splice } from "./splice.ts"
import { pricedStock, spliceReport } from "./splice-stock.ts"

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
  /** The nominal size, a text. */
  readonly size: string
  /** The lengths sold, a list. */
  readonly stock: string
  readonly bearingMin: string
  readonly stagger: string
  readonly pieceMin: string
}

/** The names that the pieces of these rows are worked from. */
export function splicedBoardsReads(names: SplicedBoards): readonly string[] {
  return [...Object.values(names), "end_trim", ...BOARD_PRICE_READS]
}

/** The pieces of all rows, one a row: line, piece, from, to, length. Boards are shared out by the timber plan. */
export function solveBoardPieces(names: SplicedBoards): (given: SolverGiven) => Solution {
  return (given) => {
    const { plan, report } = laidOut(names, given)
    const rows = plan.lines.flatMap((pieces, line) =>
      pieces.map(({ from, to }, index) => ({
        line: line + 1,
        piece: index + 1,
        from,
        to,
        length: to - from,
      })),
    )
    return { rows, report }
  }
}

/** The joints of all rows, one a row: line, position, support, bearing. What is unmet is said once, with the pieces. */
export function solveBoardJoints(names: SplicedBoards): (given: SolverGiven) => Solution {
  return (given) => {
    const { plan, report } = laidOut(names, given)
    const rows = plan.joints.flatMap((joints, line) => joints.map((joint) => ({ line: line + 1, ...joint })))
    return { rows, report: { ...report, unmet: [] } }
  }
}

function laidOut(
  names: SplicedBoards,
  given: SolverGiven,
): { readonly plan: SplicePlan; readonly report: SolverReport } {
  const supports = given.column(names.bearers).map(Number)
  const bearing = given.number(names.bearing)
  const overhang = given.number(names.overhang)
  const { stocks, measure } = pricedStock(
    given,
    given.text(names.size),
    given.column(names.stock).map(Number),
    2 * given.number("end_trim"),
  )
  const plan = splice({
    supports,
    bearings: supports.map(() => bearing),
    start: -overhang,
    end: given.number(names.length) + overhang,
    stocks,
    bearingMin: given.number(names.bearingMin),
    lines: given.number(names.rows),
    stagger: given.number(names.stagger),
    pieceMin: given.number(names.pieceMin),
    shortfall: 0,
  })
  const report = spliceReport(
    plan,
    measure,
    "dynamic programming over the bearers, two neighbouring rows at once",
    {
      length: "length, were each piece cut from a board of its own",
      money: "boards, by your prices, were each piece cut from a board of its own",
    },
  )
  return { plan, report }
}
