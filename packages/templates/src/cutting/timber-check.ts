import type { CutBoard, PieceDemand } from "../solvers/boards.ts"
import type { SizeBought } from "../solvers/timber-plan.ts"
import type { TimberProblem } from "../solvers/timber-problem.ts"

/**
 * Holds a plan against what was asked, in whole numbers, apart from how it was made: every piece is cut as often as it is
 * wanted, comes out of its board, from a length that may be bought for one of the board's pieces or that is owned; and the
 * boards bought cost what is claimed, by the user's prices or by their length, which is not under the bound.
 *
 * @throws Error naming the first rule that is broken
 */
export function checkTimber(
  { rule, owned, prices }: Pick<TimberProblem, "rule" | "owned" | "prices">,
  demands: readonly PieceDemand[],
  boards: readonly CutBoard[],
  claimed: readonly SizeBought[],
): void {
  const { kerf, endTrim } = rule
  const wanted = new Map<string, number>()
  for (const { size, part, length, count } of demands) {
    const key = `${size} ${part} ${length}`
    wanted.set(key, (wanted.get(key) ?? 0) + count)
  }
  const mine = new Map<string, number>()
  for (const { size, length, count } of owned)
    mine.set(`${size} ${length}`, (mine.get(`${size} ${length}`) ?? 0) + count)
  for (const board of boards) {
    const { size, stock, pieces } = board
    const takes = pieces.reduce((sum, { length }) => sum + length + kerf, 0)
    if (!Number.isSafeInteger(takes) || takes > stock - 2 * endTrim + kerf)
      throw new Error(
        `${pieces.map(({ length }) => length).join(" + ")} does not come out of ${stock} of ${size}`,
      )
    const bought = demands.some(
      (demand) =>
        demand.size === size &&
        demand.stock.includes(stock) &&
        pieces.some(({ part, length }) => part === demand.part && length === demand.length),
    )
    const own = `${size} ${stock}`
    if (board.owned) mine.set(own, (mine.get(own) ?? 0) - 1)
    else if (!bought) throw new Error(`no piece of the board may be bought as ${stock} of ${size}`)
    if ((mine.get(own) ?? 0) < 0) throw new Error(`more of ${own} are used than there are`)
    for (const { part, length } of pieces) {
      const key = `${size} ${part} ${length}`
      wanted.set(key, (wanted.get(key) ?? 0) - 1)
    }
  }
  for (const [key, count] of wanted)
    if (count !== 0)
      throw new Error(`${key} is cut ${Math.abs(count)} times too ${count > 0 ? "few" : "many"}`)
  for (const { size, bought, bound } of claimed) {
    const ofSize = boards.filter((board) => board.size === size && !board.owned)
    const priced = prices.some((price) => price.size === size)
    const paid = ofSize.reduce((sum, { stock }) => {
      const price = prices.find((one) => one.size === size && one.stock === stock)
      if (priced && price === undefined) throw new Error(`${stock} of ${size} has no price`)
      return sum + (price?.price ?? stock)
    }, 0)
    if (!Number.isSafeInteger(paid) || paid !== bought)
      throw new Error(`the boards of ${size} come to ${paid}, not to ${bought}`)
    if (bound > paid) throw new Error(`the bound ${bound} of ${size} lies above its boards, ${paid}`)
  }
  for (const { size } of boards)
    if (!claimed.some((one) => one.size === size)) throw new Error(`nothing is claimed of ${size}`)
}
