import type { Solution, SolverGiven, SolverReport } from "@pegbook/engine"
import { type BoardsPlan, type CutBoard, type PieceDemand, planBoards } from "./boards.ts"
import { lengthInWords } from "./length-in-words.ts"

/** Where the graph holds the pieces of one kind of member. Every field but `part` is the name of an entry or column. */
export interface TimberMember {
  /** In the reader's words, one piece: "joist". */
  readonly part: string
  /** The nominal size, a text. */
  readonly size: string
  /** The pieces' cut lengths, a column. */
  readonly lengths: string
  /** The lengths sold, a list. Or, where each piece already has a board of its own, that board: a column. */
  readonly stock: { readonly list: string } | { readonly board: string }
  /** How often every piece of the column is wanted; absent: once. */
  readonly times?: string
  /** Bought, but not built in. */
  readonly spare?: true
}

/** The names that a plan of these members is worked from. */
export function timberReads(members: readonly TimberMember[]): readonly string[] {
  const names = members.flatMap(({ size, lengths, stock, times }) => [
    size,
    lengths,
    "list" in stock ? stock.list : stock.board,
    ...(times === undefined ? [] : [times]),
  ])
  return [...new Set([...names, "saw_kerf", "end_trim"])]
}

function demandsOf(members: readonly TimberMember[], given: SolverGiven): readonly PieceDemand[] {
  return members.flatMap((member): readonly PieceDemand[] => {
    const { part, stock } = member
    if (!("list" in stock)) return []
    const sold = whole(given, stock.list)
    const times = member.times === undefined ? 1 : given.number(member.times)
    const counts = new Map<number, number>()
    for (const length of whole(given, member.lengths)) counts.set(length, (counts.get(length) ?? 0) + times)
    const size = given.text(member.size)
    return [...counts].map(([length, count]) => ({ part, size, length, count, stock: sold }))
  })
}

/** A formula that divides leaves a fraction of a nanometre; no saw sees it, and whole numbers add up exactly. */
function whole(given: SolverGiven, name: string): readonly number[] {
  return given.column(name).map((length) => Math.round(Number(length)))
}

/** Boards that another solver has settled already, one piece each. */
function settledBoards(members: readonly TimberMember[], given: SolverGiven): readonly CutBoard[] {
  return members.flatMap((member): readonly CutBoard[] => {
    const { part, stock } = member
    if (!("board" in stock)) return []
    const boards = whole(given, stock.board)
    const size = given.text(member.size)
    return whole(given, member.lengths).map((length, index) => {
      const board = boards[index] ?? length
      return { size, stock: board, pieces: [{ part, length }], left: board - length }
    })
  })
}

interface TimberPlan {
  readonly boards: readonly CutBoard[]
  readonly report: SolverReport
}

function planTimber(members: readonly TimberMember[], given: SolverGiven): TimberPlan {
  const rule = { kerf: Math.round(given.number("saw_kerf")), endTrim: Math.round(given.number("end_trim")) }
  const plan = planBoards(demandsOf(members, given), rule)
  const settled = settledBoards(members, given)
  const boards = [...settled, ...plan.boards]
  const before = settled.reduce((sum, { stock }) => sum + stock, 0)
  return { boards, report: reportOf(plan, before) }
}

function reportOf({ bought, bound, misfits }: BoardsPlan, before: number): SolverReport {
  const proof = bought === bound ? "no plan for these pieces buys less" : "not proven best"
  return {
    method: `best-fit decreasing, tried with each length sold and filling board by board; ${proof}`,
    objective: { says: "timber bought, end to end", measure: "length", value: before + bought },
    bound: before + bound,
    unmet: misfits.map(
      ({ part, size, length, stock }) =>
        `A ${part} of ${lengthInWords(length)} does not come out of the longest ${size} to be had, ${lengthInWords(Math.max(...stock))}, with saw cuts and trimmed ends: add a longer length sold, or change what makes the piece so long.`,
    ),
  }
}

/** What to buy, one size and length a row: size, length, count. Sizes in the order of the members, shortest first. */
export function solveStockToBuy(members: readonly TimberMember[]): (given: SolverGiven) => Solution {
  return (given) => {
    const { boards, report } = planTimber(members, given)
    const sizes = [...new Set(boards.map(({ size }) => size))]
    const rows = sizes.flatMap((size) => {
      const ofSize = boards.filter((board) => board.size === size)
      const lengths = [...new Set(ofSize.map(({ stock }) => stock))].sort((a, b) => a - b)
      return lengths.map((length) => ({
        size,
        length,
        count: ofSize.filter(({ stock }) => stock === length).length,
      }))
    })
    return { rows, report }
  }
}

/** What to cut from each board, one piece a row: board, size, stock, part, length, left. */
export function solveCutPlan(members: readonly TimberMember[]): (given: SolverGiven) => Solution {
  return (given) => {
    const { boards, report } = planTimber(members, given)
    const rows = boards.flatMap(({ size, stock, pieces, left }, index) =>
      pieces.map(({ part, length }, at) => ({
        board: index + 1,
        size,
        stock,
        part,
        length,
        // Once a board, after its last piece, so that the column adds up to what is left over in all.
        left: at === pieces.length - 1 ? left : 0,
      })),
    )
    return { rows, report }
  }
}

/** What pieces are wanted, one part, size and length a row: part, size, length, count. */
export function solvePieces(members: readonly TimberMember[]): (given: SolverGiven) => Solution {
  return (given) => {
    const settled = settledBoards(members, given).map(({ size, pieces }) => ({
      size,
      part: pieces[0]?.part ?? "",
      length: pieces[0]?.length ?? 0,
      count: 1,
    }))
    const wanted = demandsOf(members, given).map(({ part, size, length, count }) => ({
      part,
      size,
      length,
      count,
    }))
    const rows: { part: string; size: string; length: number; count: number }[] = []
    for (const piece of [...settled, ...wanted]) {
      if (piece.count === 0 || piece.length <= 0) continue
      const alike = rows.find(
        ({ part, size, length }) => part === piece.part && size === piece.size && length === piece.length,
      )
      if (alike === undefined) rows.push({ ...piece })
      else alike.count += piece.count
    }
    return { rows, report: { method: "pieces of one part, size and length counted together", unmet: [] } }
  }
}
