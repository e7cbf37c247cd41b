import type { SolverGiven } from "@pegbook/engine"
import { BOARD_PRICE_READS, type BoardPrice, boardPrices } from "./board-prices.ts"
import type { BoardCost, CuttingRule, OwnedBoards, PieceDemand } from "./boards.ts"

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
  /** The line that each piece lies in, a column; absent: the pieces are counted through. */
  readonly line?: string
  /** Bought, but not built in. */
  readonly spare?: true
}

/** Some pieces of one part, size and length, and what each is called: "line 2, piece 1", "14". */
export interface NamedDemand extends PieceDemand {
  readonly marks: readonly string[]
}

/** A board that another solver has settled already, for one piece. */
export interface SettledBoard {
  readonly size: string
  readonly stock: number
  readonly part: string
  readonly mark: string
  readonly length: number
}

/** All that a plan of the timber is made from, in whole nanometres: data that JSON holds. */
export interface TimberProblem {
  readonly rule: CuttingRule
  readonly demands: readonly NamedDemand[]
  readonly settled: readonly SettledBoard[]
  readonly owned: readonly OwnedBoards[]
  /** Of every board of a size that has a price. */
  readonly prices: readonly BoardPrice[]
}

/** The columns of the off-cuts that the user has. */
const OWNED = { size: "offcuts_owned.size", length: "offcuts_owned.length", count: "offcuts_owned.count" }

/** The names that the pieces of these members are worked from. */
export function pieceReads(members: readonly TimberMember[]): readonly string[] {
  const names = members.flatMap(({ size, lengths, stock, times, line }) => [
    size,
    lengths,
    "list" in stock ? stock.list : stock.board,
    ...(times === undefined ? [] : [times]),
    ...(line === undefined ? [] : [line]),
  ])
  return [...new Set(names)]
}

/** The names that a plan of these members is worked from. */
export function timberReads(members: readonly TimberMember[]): readonly string[] {
  return [...pieceReads(members), "saw_kerf", "end_trim", ...Object.values(OWNED), ...BOARD_PRICE_READS]
}

export function timberProblem(members: readonly TimberMember[], given: SolverGiven): TimberProblem {
  const { demands, settled } = timberPieces(members, given)
  const owned = ownedOf(given)
  return {
    rule: { kerf: Math.round(given.number("saw_kerf")), endTrim: Math.round(given.number("end_trim")) },
    demands,
    settled,
    owned,
    prices: boardPrices(given, [
      ...demands.flatMap(({ size, stock }) => stock.map((length) => ({ size, length }))),
      ...settled.map(({ size, stock }) => ({ size, length: stock })),
      ...owned,
    ]),
  }
}

/** All pieces of these members. */
export function timberPieces(
  members: readonly TimberMember[],
  given: SolverGiven,
): Pick<TimberProblem, "demands" | "settled"> {
  return {
    demands: members.flatMap((member) => demandsOf(member, given)),
    settled: members.flatMap((member) => settledOf(member, given)),
  }
}

/** What a board costs: hundredths of the currency where its size has a price, or its length in nanometres. */
export function costIn({ prices }: Pick<TimberProblem, "prices">): BoardCost {
  const known = new Map(prices.map(({ size, stock, price }) => [`${size} ${stock}`, price]))
  return (size, length) => known.get(`${size} ${length}`) ?? length
}

function demandsOf(member: TimberMember, given: SolverGiven): readonly NamedDemand[] {
  const { part, stock } = member
  if (!("list" in stock)) return []
  const sold = whole(given, stock.list)
  const times = member.times === undefined ? 1 : given.number(member.times)
  const lengths = whole(given, member.lengths)
  const marks = marksOf(member, given, lengths.length)
  const byLength = new Map<number, string[]>()
  lengths.forEach((length, index) => {
    const alike = byLength.get(length) ?? []
    byLength.set(length, alike)
    for (let time = 0; time < times; time += 1) {
      const mark = marks[index] ?? ""
      alike.push(times > 1 ? `${mark}, row ${time + 1}` : mark)
    }
  })
  const size = given.text(member.size)
  return [...byLength].map(([length, named]) => ({
    part,
    size,
    length,
    count: named.length,
    stock: sold,
    marks: named,
  }))
}

function settledOf(member: TimberMember, given: SolverGiven): readonly SettledBoard[] {
  const { part, stock } = member
  if (!("board" in stock)) return []
  const boards = whole(given, stock.board)
  const size = given.text(member.size)
  const lengths = whole(given, member.lengths)
  const marks = marksOf(member, given, lengths.length)
  return lengths.map((length, index) => ({
    size,
    stock: boards[index] ?? length,
    part,
    mark: marks[index] ?? "",
    length,
  }))
}

/** What each piece is called: its line, and its place in it where the line has several. */
function marksOf({ line }: TimberMember, given: SolverGiven, count: number): readonly string[] {
  if (line === undefined) return Array.from({ length: count }, (_, index) => String(index + 1))
  const lines = given.column(line).map(Number)
  return lines.map((number, index) => {
    const alone = lines.filter((other) => other === number).length === 1
    const piece = lines.slice(0, index + 1).filter((other) => other === number).length
    return alone ? `line ${number}` : `line ${number}, piece ${piece}`
  })
}

function ownedOf(given: SolverGiven): readonly OwnedBoards[] {
  const sizes = given.column(OWNED.size).map((size) => String(size).trim())
  const lengths = whole(given, OWNED.length)
  const counts = whole(given, OWNED.count)
  return sizes
    .map((size, index) => ({ size, length: lengths[index] ?? 0, count: counts[index] ?? 0 }))
    .filter(({ length, count }) => length > 0 && count > 0)
}

/** A formula that divides leaves a fraction of a nanometre; no saw sees it, and whole numbers add up exactly. */
function whole(given: SolverGiven, name: string): readonly number[] {
  return given.column(name).map((length) => Math.round(Number(length)))
}
