import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { type CuttingRule, type PieceDemand, planBoards } from "../../src/solvers/boards.ts"

const FOOT = 12
const NO_LOSS: CuttingRule = { kerf: 0, endTrim: 0 }

function pieces(length: number, count: number, stockInFeet: readonly number[]): PieceDemand {
  return { part: "piece", size: "2x4", length, count, stock: stockInFeet.map((feet) => feet * FOOT) }
}

const bought = (demands: readonly PieceDemand[], rule: CuttingRule): readonly number[] =>
  planBoards(demands, rule).boards.map(({ stock }) => stock / FOOT)

describe("worked examples", () => {
  // US Army subcourse EN0069 (record m-003): four stakes of 28 in, the lengths sold 10 ft and 12 ft, no saw cut counted:
  // a 10 ft board gives four and leaves 8 in; a 12 ft board gives five and leaves 4 in; 10 ft is the one to buy.
  test("four 28 in stakes come out of one 10 ft board, 8 in left", () => {
    const { boards, bound } = planBoards([pieces(28, 4, [10, 12])], NO_LOSS)
    expect(boards.map(({ stock, left }) => [stock, left])).toEqual([[10 * FOOT, 8]])
    expect(bound).toBe(10 * FOOT)
  })

  test("five 28 in stakes come out of one 12 ft board, 4 in left", () => {
    const { boards } = planBoards([pieces(28, 5, [10, 12])], NO_LOSS)
    expect(boards.map(({ stock, left }) => [stock, left])).toEqual([[12 * FOOT, 4]])
  })

  // Common practice, no source: a saw cut makes dust of 1/8 in of the board.
  test("four 36 in pieces do not come out of a 12 ft board with a saw cut, three do", () => {
    expect(bought([pieces(36, 4, [12])], NO_LOSS)).toEqual([12])
    expect(bought([pieces(36, 4, [12])], { kerf: 1 / 8, endTrim: 0 })).toEqual([12, 12])
    expect(bought([pieces(36, 3, [12])], { kerf: 1 / 8, endTrim: 0 })).toEqual([12])
  })

  test("the last saw cut may fall off the end: a piece as long as its board fits", () => {
    expect(bought([pieces(144, 1, [12])], { kerf: 1 / 8, endTrim: 0 })).toEqual([12])
    expect(planBoards([pieces(144, 1, [12])], { kerf: 1 / 8, endTrim: 1 / 2 }).misfits).toHaveLength(1)
  })

  // The project's worked deck: ten pieces of blocking of 14.5 in and two of 13.75 in, from 8 ft pieces, six out of each.
  test("twelve pieces of blocking come out of two 8 ft pieces", () => {
    const blocking = [pieces(14.5, 10, [8]), pieces(13.75, 2, [8])]
    expect(bought(blocking, { kerf: 1 / 8, endTrim: 0 })).toEqual([8, 8])
  })

  test("an off-cut serves another part of the same size, not of another", () => {
    const joist: PieceDemand = { part: "joist", size: "2x6", length: 80, count: 1, stock: [96] }
    const block: PieceDemand = { part: "block", size: "2x6", length: 14, count: 1, stock: [48] }
    expect(planBoards([joist, block], NO_LOSS).boards).toHaveLength(1)
    expect(planBoards([joist, { ...block, size: "2x8" }], NO_LOSS).boards).toHaveLength(2)
  })

  test("nothing wanted, nothing bought", () => {
    expect(planBoards([], NO_LOSS)).toEqual({ boards: [], bought: 0, bound: 0, misfits: [] })
    expect(planBoards([pieces(0, 5, [8]), pieces(10, 0, [8])], NO_LOSS).boards).toEqual([])
  })
})

const rules = fc.record({ kerf: fc.integer({ min: 0, max: 4 }), endTrim: fc.integer({ min: 0, max: 6 }) })
const demands = fc.array(
  fc.record({
    part: fc.constantFrom("joist", "rim", "blocking"),
    size: fc.constantFrom("2x4", "2x6"),
    length: fc.integer({ min: 1, max: 220 }),
    count: fc.integer({ min: 0, max: 9 }),
    stock: fc.uniqueArray(fc.constantFrom<number>(96, 120, 144, 192), { minLength: 1 }),
  }),
  { maxLength: 6 },
)

describe("for any pieces", () => {
  test("every piece that fits a length sold is cut once, and no other", () => {
    fc.assert(
      fc.property(demands, rules, (wanted, rule) => {
        const { boards, misfits } = planBoards(wanted, rule)
        const cut = boards.flatMap(({ size, pieces }) =>
          pieces.map(({ part, length }) => `${size} ${part} ${length}`),
        )
        const asked = wanted
          .filter((demand) => !misfits.includes(demand))
          .flatMap(({ size, part, length, count }) => Array<string>(count).fill(`${size} ${part} ${length}`))
        expect(cut.sort()).toEqual(asked.sort())
        for (const { length, stock } of misfits)
          expect(length + 2 * rule.endTrim).toBeGreaterThan(Math.max(...stock))
      }),
    )
  })

  test("no board holds more than it is long, saw cuts and trimmed ends counted", () => {
    fc.assert(
      fc.property(demands, rules, (wanted, rule) => {
        for (const { stock, pieces, left } of planBoards(wanted, rule).boards) {
          const used = pieces.reduce((sum, { length }) => sum + length + rule.kerf, 0)
          expect(used).toBeLessThanOrEqual(stock - 2 * rule.endTrim + rule.kerf)
          expect(left).toBe(Math.max(0, stock - 2 * rule.endTrim - used))
        }
      }),
    )
  })

  test("only lengths sold are bought, and never less than the bound", () => {
    fc.assert(
      fc.property(demands, rules, (wanted, rule) => {
        const { boards, bought, bound } = planBoards(wanted, rule)
        const sold = new Set(wanted.flatMap(({ stock }) => stock))
        expect(boards.every(({ stock }) => sold.has(stock))).toBe(true)
        expect(bought).toBe(boards.reduce((sum, { stock }) => sum + stock, 0))
        expect(bound).toBeLessThanOrEqual(bought)
      }),
    )
  })

  test("the bound is below what trying everything finds", () => {
    const few = fc.array(
      fc.record({
        part: fc.constant("piece"),
        size: fc.constant("2x4"),
        length: fc.integer({ min: 10, max: 130 }),
        count: fc.integer({ min: 1, max: 2 }),
        stock: fc.constant([96, 144]),
      }),
      { minLength: 1, maxLength: 3 },
    )
    fc.assert(
      fc.property(few, rules, (wanted, rule) => {
        const { bound, bought } = planBoards(wanted, rule)
        const lengths = wanted.flatMap(({ length, count }) => Array<number>(count).fill(length))
        const least = leastByTryingAll(lengths, [96, 144], rule)
        expect(bound).toBeLessThanOrEqual(least)
        expect(bought).toBeGreaterThanOrEqual(least)
      }),
    )
  })
})

/** Every way to share the pieces out between boards. */
function leastByTryingAll(lengths: readonly number[], sold: readonly number[], rule: CuttingRule): number {
  const boardFor = (held: number): number =>
    Math.min(...sold.filter((stock) => held <= stock - 2 * rule.endTrim + rule.kerf))
  const place = (rest: readonly number[], held: readonly number[]): number => {
    const [next, ...others] = rest
    if (next === undefined) return held.reduce((sum, one) => sum + boardFor(one), 0)
    const needs = next + rule.kerf
    const ways = [...held.keys()].map((at) => held.map((one, index) => (index === at ? one + needs : one)))
    return Math.min(...[...ways, [...held, needs]].map((way) => place(others, way)))
  }
  return place(lengths, [])
}
