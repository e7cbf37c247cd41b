import { maximalPatterns, type Pattern } from "./patterns.ts"
import type { Stock } from "./problem.ts"
import type { Program, Term } from "./program.ts"

/** The rule by which a board is cut: `sum(l + kerf) <= B - 2·endTrim + kerf`. */
export interface SawRule {
  readonly kerf: number
  readonly endTrim: number
}

/** A length to cut, and how many. */
export interface Demand {
  readonly length: number
  readonly quantity: number
}

/** One board that is bought and cut. */
export interface Board {
  readonly stock: Stock
  readonly pieces: readonly number[]
}

/** Room of a stock for pieces with their kerfs. */
export function roomOf(stock: Pick<Stock, "length">, { kerf, endTrim }: SawRule): number {
  return stock.length - 2 * endTrim + kerf
}

/** Boards to buy for some that are used, the share for bad ones added, in whole numbers. */
export function bought(used: number, { cullPermille }: Pick<Stock, "cullPermille">): number {
  return Math.ceil((used * (1000 + cullPermille)) / 1000)
}

/** The most boards that can be used out of those that are available. */
export function mostUsed({ available, cullPermille }: Stock): number {
  return available === null
    ? Number.POSITIVE_INFINITY
    : Math.floor((available * 1000) / (1000 + cullPermille))
}

/** Pieces of one length are one demand, longest first. */
export function byLength(pieces: readonly Demand[]): Demand[] {
  const sums = new Map<number, number>()
  for (const { length, quantity } of pieces) sums.set(length, (sums.get(length) ?? 0) + quantity)
  return [...sums]
    .filter(([, quantity]) => quantity > 0)
    .map(([length, quantity]) => ({ length, quantity }))
    .sort((a, b) => b.length - a.length)
}

export function priceOf(boards: readonly Board[]): number {
  const used = new Map<Stock, number>()
  for (const { stock } of boards) used.set(stock, (used.get(stock) ?? 0) + 1)
  return [...used].reduce((sum, [stock, count]) => sum + bought(count, stock) * stock.price, 0)
}

/** A way to cut one stock, and the variable that counts the boards cut so. */
export interface PatternUse {
  readonly stock: Stock
  readonly pattern: Pattern
  readonly variable: number
}

/** What was added to a program: patterns, and for each stock the variables that count the boards used and bought. */
export interface CuttingVariables {
  readonly uses: readonly PatternUse[]
  readonly used: ReadonlyMap<Stock, number>
  readonly boughts: ReadonlyMap<Stock, number>
  /** For each stock, the row that holds its patterns to the boards used. */
  readonly stockRows: ReadonlyMap<Stock, number>
  /** The row of each demand. */
  readonly demandRows: readonly number[]
}

/** A stock with the patterns that may be of use. */
export interface StockPatterns {
  readonly stock: Stock
  readonly patterns: readonly Pattern[]
}

const MOST_PATTERNS = 4_000

/** All maximal patterns of every stock, or `undefined` when there are too many to list. */
export function patternsOf(
  stocks: readonly Stock[],
  demands: readonly Demand[],
  rule: SawRule,
  keep: "all" | "worth buying" = "worth buying",
): StockPatterns[] | undefined {
  const listed: StockPatterns[] = []
  let left = MOST_PATTERNS
  for (const stock of stocks) {
    if (mostUsed(stock) === 0) continue
    const items = demands.map(({ length, quantity }) => ({ size: length + rule.kerf, most: quantity }))
    const patterns = maximalPatterns(items, roomOf(stock, rule), left)
    if (patterns === undefined) return undefined
    left -= patterns.length
    const useful = (pattern: Pattern): boolean =>
      keep === "all" || !cheaperElsewhere(stock, pattern, stocks, demands, rule)
    listed.push({ stock, patterns: patterns.filter(useful) })
  }
  return listed
}

/** Whether a pattern also fits a stock that is never dearer and never runs out: then it need not be cut from this one. */
function cheaperElsewhere(
  stock: Stock,
  pattern: Pattern,
  stocks: readonly Stock[],
  demands: readonly Demand[],
  rule: SawRule,
): boolean {
  const taken = pattern.reduce(
    (sum, count, index) => sum + count * ((demands[index]?.length ?? 0) + rule.kerf),
    0,
  )
  return stocks.some((other, index) => {
    if (other === stock || other.available !== null || other.cullPermille > 0 || other.price > stock.price)
      return false
    if (roomOf(other, rule) < taken) return false
    // Of two at one price the shorter is kept, and of two that are alike in everything the first.
    if (other.price !== stock.price) return true
    return other.length === stock.length ? index < stocks.indexOf(stock) : other.length < stock.length
  })
}

/**
 * Adds the patterns, the boards bought and, for each demand, that enough is cut. `needed` gives the terms that stand against
 * what is cut where the demand is itself a variable.
 */
export function addCutting(
  program: Program,
  listed: readonly StockPatterns[],
  demands: readonly Demand[],
  needed: (index: number) => { readonly least: number; readonly terms: readonly Term[] },
): CuttingVariables {
  const uses: PatternUse[] = []
  const used = new Map<Stock, number>()
  const boughts = new Map<Stock, number>()
  const stockRows = new Map<Stock, number>()
  const covering: Term[][] = demands.map(() => [])
  for (const { stock, patterns } of listed) {
    const here: Term[] = []
    for (const pattern of patterns) {
      const variable = program.variable(0)
      uses.push({ stock, pattern, variable })
      here.push([variable, 1])
      pattern.forEach((count, index) => {
        if (count > 0) covering[index]?.push([variable, count])
      })
    }
    const total = program.variable(stock.price, stock.available ?? Number.POSITIVE_INFINITY)
    boughts.set(stock, total)
    const boards = stock.cullPermille === 0 ? total : program.variable(0)
    used.set(stock, boards)
    if (boards !== total) program.atLeast(0, shareBought(stock, total, [[boards, -1]]))
    stockRows.set(stock, program.rows.length)
    program.atLeast(0, [[boards, 1], ...here.map(([variable]): Term => [variable, -1])])
  }
  const demandRows = demands.map((_, index) => {
    const { least, terms } = needed(index)
    program.atLeast(least, [...(covering[index] ?? []), ...terms])
    return program.rows.length - 1
  })
  return { uses, used, boughts, stockRows, demandRows }
}

/** The terms of a row not under 0 that holds: as many are bought as are used, and the share for bad ones. */
export function shareBought(
  { cullPermille }: Pick<Stock, "cullPermille">,
  boughtOnes: number,
  used: readonly Term[],
): Term[] {
  return [
    [boughtOnes, 1000],
    ...used.map(([variable, factor]): Term => [variable, factor * (1000 + cullPermille)]),
  ]
}

/**
 * The boards of a solution, cut exactly as needed: what was cut too often is left whole, on the board where most is
 * left already, so that one long remainder stays rather than many short ones.
 */
export function boardsOf(
  uses: readonly PatternUse[],
  values: readonly number[],
  demands: readonly Demand[],
  rule: SawRule,
): Board[] {
  const boards = uses.flatMap(({ stock, pattern, variable }) =>
    Array.from({ length: Math.round(values[variable] ?? 0) }, () => ({ stock, counts: [...pattern] })),
  )
  const leftOn = ({ stock, counts }: { stock: Stock; counts: number[] }): number =>
    counts.reduce(
      (left, count, index) => left - count * ((demands[index]?.length ?? 0) + rule.kerf),
      roomOf(stock, rule),
    )
  demands.forEach(({ quantity }, index) => {
    let over = boards.reduce((sum, { counts }) => sum + (counts[index] ?? 0), 0) - quantity
    while (over > 0) {
      const holding = boards.filter(({ counts }) => (counts[index] ?? 0) > 0)
      const loosest = holding.reduce((best, one) => (leftOn(one) > leftOn(best) ? one : best))
      const taken = Math.min(over, loosest.counts[index] ?? 0)
      loosest.counts[index] = (loosest.counts[index] ?? 0) - taken
      over -= taken
    }
  })
  return boards
    .filter(({ counts }) => counts.some((count) => count > 0))
    .map(({ stock, counts }) => ({
      stock,
      pieces: counts.flatMap((count, index) =>
        Array.from({ length: count }, () => demands[index]?.length ?? 0),
      ),
    }))
}

/** Boards that are cut alike, together, in the order of the stocks and the longest piece first. */
export function alike(boards: readonly Board[]): { stock: string; count: number; pieces: number[] }[] {
  const groups = new Map<string, { stock: string; count: number; pieces: number[] }>()
  for (const { stock, pieces } of boards) {
    const key = JSON.stringify([stock.id, pieces])
    const group = groups.get(key) ?? { stock: stock.id, count: 0, pieces: [...pieces] }
    group.count += 1
    groups.set(key, group)
  }
  return [...groups.values()]
}
