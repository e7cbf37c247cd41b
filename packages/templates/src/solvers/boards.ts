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
  /** The lengths of the boards bought, end to end. */
  readonly bought: number
  /** No plan buys less than this. Equal to `bought`: proven best. */
  readonly bound: number
  /** Pieces that come out of no length sold; they are in no board. */
  readonly misfits: readonly PieceDemand[]
}

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

/** How to choose the length of a new board for a piece, from those that hold it, shortest first. */
type Choose = (holding: readonly number[], item: Item, waiting: readonly Item[]) => number

/**
 * Plans which lengths to buy and what to cut from each, buying the least length: best-fit decreasing, once for each
 * length sold as the preferred one and once filling each new board as well as it goes; the cheapest of these is kept.
 *
 * Lengths are plain numbers in any one unit and should be whole. Pieces of no length are left out.
 * Never throws; pieces that fit nothing are `misfits`.
 */
export function planBoards(
  demands: readonly PieceDemand[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[] = [],
): BoardsPlan {
  const wanted = demands.filter(({ length, count }) => length > 0 && count > 0)
  const misfits = wanted.filter(
    ({ length, stock }) => !stock.some((sold) => capacity(sold, rule) >= length + rule.kerf),
  )
  const fitting = wanted.filter((demand) => !misfits.includes(demand))
  const plans = [...new Set(fitting.map(({ size }) => size))].map((size) =>
    planOneSize(
      size,
      fitting.filter((demand) => demand.size === size),
      rule,
      owned.filter((boards) => boards.size === size),
    ),
  )
  return {
    boards: plans.flatMap(({ boards }) => boards),
    bought: plans.reduce((sum, { bought }) => sum + bought, 0),
    bound: plans.reduce((sum, { bound }) => sum + bound, 0),
    misfits,
  }
}

function capacity(sold: number, { kerf, endTrim }: CuttingRule): number {
  return sold - 2 * endTrim + kerf
}

function planOneSize(
  size: string,
  demands: readonly PieceDemand[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[],
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
    (holding, item, waiting) => bestFilled(holding, item, waiting, rule),
  ]
  const plans = choices.map((choose) =>
    pack(items, choose, rule, owned).map((board) => shortened(board, rule)),
  )
  const boughtBy = (boards: readonly OpenBoard[]): number =>
    boards.reduce((sum, board) => (board.owned ? sum : sum + board.stock), 0)
  const best = plans.reduce((a, b) => {
    const [boughtA, boughtB] = [boughtBy(a), boughtBy(b)]
    return boughtB < boughtA || (boughtB === boughtA && b.length < a.length) ? b : a
  })
  const bought = boughtBy(best)
  return {
    boards: best.map(({ stock, owned, pieces, room }) => ({
      size,
      stock,
      ...(owned === undefined ? {} : { owned }),
      pieces: pieces.map(({ part, length }) => ({ part, length })),
      left: Math.max(0, room - rule.kerf),
    })),
    bought,
    bound: Math.min(bought, leastBought(demands, sold, rule, owned)),
  }
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

/** The length that wastes the smallest share when filled from the longest waiting piece down. */
function bestFilled(
  holding: readonly number[],
  item: Item,
  waiting: readonly Item[],
  rule: CuttingRule,
): number {
  let best = { stock: holding[0] ?? 0, waste: Number.POSITIVE_INFINITY }
  for (const stock of holding) {
    let room = capacity(stock, rule) - item.length - rule.kerf
    let used = item.length
    for (const { length } of waiting) {
      if (length + rule.kerf > room) continue
      room -= length + rule.kerf
      used += length
    }
    const waste = (stock - used) / stock
    if (waste < best.waste) best = { stock, waste }
  }
  return best.stock
}

/** The same pieces from the shortest length that may be bought in its place. */
function shortened(board: OpenBoard, rule: CuttingRule): OpenBoard {
  const filled = capacity(board.stock, rule) - board.room
  const stock = board.sold.find((sold) => capacity(sold, rule) >= filled) ?? board.stock
  return { ...board, stock, room: capacity(stock, rule) - filled }
}

const MOST_PATTERNS = 20_000

/**
 * A length below which no plan can buy. Each piece is given a price such that no board's fill is worth more than the
 * board is long; then all pieces together are worth no more than all boards bought. Two ways to price are tried (by
 * the timber that a piece takes, and by its share of the best board cut into pieces of its kind alone), each scaled
 * until it is honest. Boards that are owned give no more than their length. What is bought is also a whole number of the greatest length that measures all lengths sold.
 */
function leastBought(
  demands: readonly PieceDemand[],
  sold: readonly number[],
  rule: CuttingRule,
  owned: readonly OwnedBoards[],
): number {
  const boards = [...sold, ...owned.map(({ length }) => length)].filter((one) => capacity(one, rule) > 0)
  const given = owned.reduce((sum, { length, count }) => sum + length * count, 0)
  const kinds = kindsOf(demands)
  const byTimber = kinds.map(({ length }) => length + rule.kerf)
  const byShare = kinds.map(({ length, count }) =>
    Math.min(
      ...sold
        .filter((stock) => capacity(stock, rule) >= length + rule.kerf)
        .map((stock) => stock / Math.min(count, Math.floor(capacity(stock, rule) / (length + rule.kerf)))),
    ),
  )
  const bounds = [byTimber, byShare].map((prices) => {
    const scale = Math.min(
      ...boards.map((stock) => stock / worthMost(kinds, prices, capacity(stock, rule), rule)),
    )
    return scale * kinds.reduce((sum, { count }, index) => sum + count * (prices[index] ?? 0), 0)
  })
  const step = sold.reduce(commonMeasure)
  // The prices are worked in doubles; a hair is taken off so that an exact bound is not lifted by a whole step.
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

function commonMeasure(a: number, b: number): number {
  return b === 0 ? a : commonMeasure(b, a % b)
}
