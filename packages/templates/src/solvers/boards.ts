/** Some pieces of one length and size, and the lengths that they may be cut from. */
export interface PieceDemand {
  /** What it is for, in the reader's words: "joist". */
  readonly part: string
  /** Pieces of different sizes never share a board. */
  readonly size: string
  readonly length: number
  readonly count: number
  /** Lengths sold that may be bought for this piece. Pieces may also come out of a board bought for others. */
  readonly stock: readonly number[]
}

/** A board of length B holds pieces l while `sum(l + kerf) <= B - 2·endTrim + kerf`: the last cut may fall off the end. */
export interface CuttingRule {
  readonly kerf: number
  readonly endTrim: number
}

export interface CutPiece {
  readonly part: string
  readonly length: number
}

/** Boards that are there already: they are used before any is bought. */
export interface OwnedBoards {
  readonly size: string
  readonly length: number
  readonly count: number
}

export interface CutBoard {
  readonly size: string
  readonly stock: number
  /** It is not bought. */
  readonly owned?: true
  /** Longest first. */
  readonly pieces: readonly CutPiece[]
  /** What is left after the last cut, the trimmed ends not counted. */
  readonly left: number
}

export interface BoardsPlan {
  readonly boards: readonly CutBoard[]
  /** What the boards bought cost: where no price is given, their lengths end to end. */
  readonly bought: number
  /** No plan costs less than this. Equal to `bought`: proven best. */
  readonly bound: number
  /** Pieces that come out of no length sold; they are in no board. */
  readonly misfits: readonly PieceDemand[]
}

/** What a board of a size and length costs, in whole units of any kind, nothing or more. */
export type BoardCost = (size: string, length: number) => number

const BY_LENGTH: BoardCost = (_, length) => length

interface Item extends CutPiece {
  readonly stock: readonly number[]
}

interface OpenBoard {
  readonly stock: number
  readonly owned?: true
  /** Lengths that may be bought in place of this one. */
  readonly sold: readonly number[]
  /** Of `sum(l + kerf)`. */
  room: number
  readonly pieces: Item[]
}

/** What a board of one size costs, by its length. */
type LengthCost = (length: number) => number

/** How to choose the length of a new board for a piece, from those that hold it, shortest first. */
type Choose = (holding: readonly number[], item: Item, waiting: readonly Item[]) => number

/**
 * Plans which lengths to buy and what to cut from each, at the least cost, and without prices the least
 * length: best-fit decreasing, once for each length sold as the preferred one and once filling each new board as well as it
 * goes; the best of these is kept (`beats`).
 *
 * Lengths are plain numbers in any one unit and should be whole. Pieces of no length are left out.
 * Never throws; pieces that fit nothing are `misfits`.
 */
export function planBoards(
  demands: readonly PieceDemand[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[] = [],
  cost: BoardCost = BY_LENGTH,
): BoardsPlan {
  const { fitting, misfits } = sorted(demands, rule)
  const plans = [...new Set(fitting.map(({ size }) => size))].map((size) =>
    planOneSize(
      size,
      fitting.filter((demand) => demand.size === size),
      rule,
      owned.filter((boards) => boards.size === size),
      (length) => cost(size, length),
    ),
  )
  return {
    boards: plans.flatMap(({ boards }) => boards),
    bought: plans.reduce((sum, { bought }) => sum + bought, 0),
    bound: plans.reduce((sum, { bound }) => sum + bound, 0),
    misfits,
  }
}

/** The pieces that are wanted: those that come out of a length sold for them, and those that do not. */
export function sorted<Demand extends PieceDemand>(
  demands: readonly Demand[],
  rule: CuttingRule,
): { readonly fitting: readonly Demand[]; readonly misfits: readonly Demand[] } {
  const wanted = demands.filter(({ length, count }) => length > 0 && count > 0)
  const fits = ({ length, stock }: PieceDemand) =>
    stock.some((sold) => capacity(sold, rule) >= length + rule.kerf)
  return { fitting: wanted.filter(fits), misfits: wanted.filter((demand) => !fits(demand)) }
}

/** What the boards that are bought cost. */
export function paidFor(boards: readonly CutBoard[], cost: BoardCost): number {
  return boards.reduce((sum, { size, stock, owned }) => (owned ? sum : sum + cost(size, stock)), 0)
}

/** Whether boards are better than others: they cost less; or as much and are fewer; or as many, and one leaves a longer rest. */
export function beats(boards: readonly CutBoard[], others: readonly CutBoard[], cost: BoardCost): boolean {
  const saved = paidFor(others, cost) - paidFor(boards, cost)
  const fewer = others.length - boards.length
  const longer = longestLeft(boards) - longestLeft(others)
  return saved > 0 || (saved === 0 && (fewer > 0 || (fewer === 0 && longer > 0)))
}

function longestLeft(boards: readonly CutBoard[]): number {
  return boards.reduce((longest, { left }) => Math.max(longest, left), 0)
}

function capacity(sold: number, { kerf, endTrim }: CuttingRule): number {
  return sold - 2 * endTrim + kerf
}

function planOneSize(
  size: string,
  demands: readonly PieceDemand[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[],
  cost: LengthCost,
): { readonly boards: readonly CutBoard[]; readonly bought: number; readonly bound: number } {
  const items = demands
    .flatMap(({ part, length, count, stock }) => {
      const sold = [...new Set(stock)].sort((a, b) => a - b)
      return Array.from({ length: count }, (): Item => ({ part, length, stock: sold }))
    })
    .sort((a, b) => b.length - a.length)
  const sold = [...new Set(demands.flatMap(({ stock }) => stock))].sort((a, b) => a - b)

  const choices: readonly Choose[] = [
    ...sold.map(
      (preferred): Choose =>
        (holding) =>
          holding.find((one) => one >= preferred) ?? holding[0] ?? 0,
    ),
    (holding, item, waiting) => bestFilled(holding, item, waiting, rule, cost),
  ]
  const plans = choices.map((choose) =>
    pack(items, choose, rule, owned).map((board): CutBoard => {
      const { stock, owned, pieces, room } = cheaper(board, rule, cost)
      return {
        size,
        stock,
        ...(owned === undefined ? {} : { owned }),
        pieces: pieces.map(({ part, length }) => ({ part, length })),
        left: Math.max(0, room - rule.kerf),
      }
    }),
  )
  const boards = plans.reduce((best, one) => (beats(one, best, (_, length) => cost(length)) ? one : best))
  const bought = paidFor(boards, (_, length) => cost(length))
  return { boards, bought, bound: Math.min(bought, leastBought(demands, sold, rule, owned, cost)) }
}

/** Best-fit decreasing: each piece goes where it leaves the least room; where none has room, a board is opened. */
function pack(
  items: readonly Item[],
  choose: Choose,
  rule: CuttingRule,
  owned: readonly OwnedBoards[],
): readonly OpenBoard[] {
  const boards = owned.flatMap(({ length, count }) =>
    Array.from(
      { length: count },
      (): OpenBoard => ({
        stock: length,
        owned: true,
        sold: [length],
        room: capacity(length, rule),
        pieces: [],
      }),
    ),
  )
  for (const [index, item] of items.entries()) {
    const needs = item.length + rule.kerf
    let tightest: OpenBoard | undefined
    for (const board of boards) {
      if (board.room >= needs && (tightest === undefined || board.room < tightest.room)) tightest = board
    }
    if (tightest === undefined) {
      const holding = item.stock.filter((sold) => capacity(sold, rule) >= needs)
      const stock = choose(holding, item, items.slice(index + 1))
      tightest = { stock, sold: item.stock, room: capacity(stock, rule), pieces: [] }
      boards.push(tightest)
    }
    tightest.pieces.push(item)
    tightest.room -= needs
  }
  return boards.filter(({ pieces }) => pieces.length > 0)
}

/** The length that costs least for what comes out of it, filled from the longest waiting piece down. */
function bestFilled(
  holding: readonly number[],
  item: Item,
  waiting: readonly Item[],
  rule: CuttingRule,
  cost: LengthCost,
): number {
  let best = { stock: holding[0] ?? 0, yields: Number.NEGATIVE_INFINITY }
  for (const stock of holding) {
    let room = capacity(stock, rule) - item.length - rule.kerf
    let used = item.length
    for (const { length } of waiting) {
      if (length + rule.kerf > room) continue
      room -= length + rule.kerf
      used += length
    }
    const yields = used / cost(stock)
    if (yields > best.yields) best = { stock, yields }
  }
  return best.stock
}

/** The same pieces from the cheapest length that may be bought in its place, the longest of several. */
function cheaper(board: OpenBoard, rule: CuttingRule, cost: LengthCost): OpenBoard {
  if (board.owned) return board
  const filled = capacity(board.stock, rule) - board.room
  const stock = board.sold
    .filter((sold) => capacity(sold, rule) >= filled)
    .reduce((best, sold) => (cost(sold) <= cost(best) ? sold : best))
  return { ...board, stock, room: capacity(stock, rule) - filled }
}

const MOST_PATTERNS = 20_000

/**
 * A cost below which no plan can buy. Each piece is given a worth such that no board's fill is worth more than the
 * board costs; then all pieces together are worth no more than all boards bought. Two ways to value are tried (by
 * the timber that a piece takes, and by its share of the best board cut into pieces of its kind alone), each scaled
 * until it is honest. Boards that are owned give no more than they would cost. What is paid is also a whole number of
 * the greatest amount that measures all costs.
 */
function leastBought(
  demands: readonly PieceDemand[],
  sold: readonly number[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[],
  cost: LengthCost,
): number {
  const boards = [...sold, ...owned.map(({ length }) => length)]
  const given = owned.reduce((sum, { length, count }) => sum + cost(length) * count, 0)
  const kinds = kindsOf(demands)
  const byTimber = kinds.map(({ length }) => length + rule.kerf)
  const byShare = kinds.map(({ length, count }) =>
    Math.min(
      ...sold
        .filter((stock) => capacity(stock, rule) >= length + rule.kerf)
        .map(
          (stock) => cost(stock) / Math.min(count, Math.floor(capacity(stock, rule) / (length + rule.kerf))),
        ),
    ),
  )
  const bounds = [byTimber, byShare].map((worths) => {
    const scales = boards
      .map((stock) => ({ stock, worth: worthMost(kinds, worths, capacity(stock, rule), rule) }))
      .filter(({ worth }) => worth > 0)
      .map(({ stock, worth }) => cost(stock) / worth)
    const all = kinds.reduce((sum, { count }, index) => sum + count * (worths[index] ?? 0), 0)
    return scales.length === 0 ? 0 : Math.min(...scales) * all
  })
  // Where all costs nothing, nothing measures it.
  const step = sold.map(cost).reduce(commonMeasure) || 1
  // The worths are worked in doubles; a hair is taken off so that an exact bound is not lifted by a whole step.
  return Math.max(0, Math.ceil((Math.max(...bounds) * (1 - 1e-12) - given) / step) * step)
}

interface Kind {
  readonly length: number
  readonly count: number
}

function kindsOf(demands: readonly PieceDemand[]): readonly Kind[] {
  const counts = new Map<number, number>()
  for (const { length, count } of demands) counts.set(length, (counts.get(length) ?? 0) + count)
  return [...counts].map(([length, count]) => ({ length, count })).sort((a, b) => b.length - a.length)
}

/** The most that the pieces in one board can be worth: by trying all fills, or above that where there are too many. */
function worthMost(
  kinds: readonly Kind[],
  prices: readonly number[],
  room: number,
  rule: CuttingRule,
): number {
  const fitting = kinds
    .map(({ length, count }, index) => ({ takes: length + rule.kerf, count, price: prices[index] ?? 0 }))
    .filter(({ takes }) => takes <= room)
    .sort((a, b) => b.price / b.takes - a.price / a.takes)
  const dearest = fitting[0]
  if (dearest === undefined) return 0
  let tried = 0
  let best = 0
  const fill = (index: number, left: number, worth: number): void => {
    best = Math.max(best, worth)
    const kind = fitting[index]
    tried++
    if (kind === undefined || tried > MOST_PATTERNS || worth + (left * kind.price) / kind.takes <= best)
      return
    for (let pieces = Math.min(kind.count, Math.floor(left / kind.takes)); pieces >= 0; pieces--) {
      fill(index + 1, left - pieces * kind.takes, worth + pieces * kind.price)
    }
  }
  fill(0, room, 0)
  return tried > MOST_PATTERNS ? (room * dearest.price) / dearest.takes : best
}

/** The greatest number that measures both. */
export function commonMeasure(a: number, b: number): number {
  return b === 0 ? a : commonMeasure(b, a % b)
}
