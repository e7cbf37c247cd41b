import fc from "fast-check"
import { describe, expect, test } from "vitest"
import type { SheetPlan } from "../../src/cutting/answer.ts"
import { type Case, heuristicAnswer, prove, solveCase } from "../../src/cutting/index.ts"
import type { SheetLayout } from "../../src/cutting/problem.ts"
import type { OwnedBoards } from "../../src/solvers/boards.ts"
import { planTimber, timberSolution } from "../../src/solvers/timber-plan.ts"
import type { NamedDemand, TimberProblem } from "../../src/solvers/timber-problem.ts"
import { caseOf } from "./cases.ts"
import { sheetLayouts } from "./random-layouts.ts"

const SEED = 20261126

/** What holds of plans where they lie on the board and on the floor, with nothing of the checker that the solvers use. */
describe("laid out piece by piece", () => {
  const SOLD = [96, 120, 144, 192]
  const demands = fc.array(
    fc.record({
      part: fc.constantFrom("joist", "rim", "blocking"),
      size: fc.constantFrom("2x4", "2x6"),
      length: fc.integer({ min: 5, max: 200 }),
      count: fc.integer({ min: 0, max: 5 }),
      stock: fc.subarray(SOLD, { minLength: 1 }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  const problems = fc
    .record({
      demands,
      rule: fc.record({ kerf: fc.integer({ min: 0, max: 3 }), endTrim: fc.integer({ min: 0, max: 5 }) }),
      owned: fc.array(
        fc.record({
          size: fc.constantFrom("2x4", "2x6"),
          length: fc.integer({ min: 10, max: 200 }),
          count: fc.integer({ min: 1, max: 2 }),
        }),
        { maxLength: 2 },
      ),
      prices: fc.option(
        fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: SOLD.length, maxLength: SOLD.length }),
      ),
    })
    .map(({ demands: wanted, prices, ...rest }): TimberProblem => {
      const named = wanted.map((one): NamedDemand => ({ ...one, marks: marksOf(one.count) }))
      const lengths = [...new Set([...SOLD, ...rest.owned.map(({ length }) => length)])]
      const priced = (prices ?? []).length === 0 ? [] : lengths
      return {
        ...rest,
        settled: [],
        demands: named,
        prices: priced.map((stock, at) => ({ size: "2x4", stock, price: prices?.[at] ?? stock })),
      }
    })

  test("every cut plan covers what is wanted, and no board holds more than it is long, saw cuts counted", async () => {
    console.info(`cut plans laid out: seed ${SEED}`)
    await fc.assert(
      fc.asyncProperty(problems, async (asked) => {
        for (const { rows } of [
          timberSolution(asked, planTimber(asked)),
          await prove("timber", asked, { deadline: 10 }),
        ]) {
          const cut = rows.map(({ size, part, length }) => `${size} ${part} ${length}`)
          const coming = asked.demands.filter((demand) => comesOut(demand, asked))
          const wanted = coming.flatMap(({ size, part, length, count }) =>
            Array<string>(count).fill(`${size} ${part} ${length}`),
          )
          expect(cut.sort()).toEqual(wanted.sort())
          const boards = [...new Set(rows.map(({ board }) => board))].map((number) =>
            rows.filter(({ board }) => board === number),
          )
          const own = new Map<string, number>()
          for (const pieces of boards) {
            const stock = Number(pieces[0]?.stock)
            let at = asked.rule.endTrim
            for (const { length, size } of pieces) {
              expect(size).toBe(pieces[0]?.size)
              at += Number(length)
              expect(at).toBeLessThanOrEqual(stock - asked.rule.endTrim)
              at += asked.rule.kerf
            }
            if (Number(pieces[0]?.own) > 0) {
              const key = `${pieces[0]?.size} ${stock}`
              own.set(key, (own.get(key) ?? 0) + 1)
            } else expect(SOLD).toContain(stock)
          }
          for (const [key, count] of own) expect(count).toBeLessThanOrEqual(countOwned(asked.owned, key))
        }
      }),
      { numRuns: 40, seed: SEED, endOnFailure: true },
    )
  }, 240_000)

  const layouts = sheetLayouts({ longest: 6000, gap: fc.constantFrom(0, 2, 4) })

  test("sheets of a layout do not overlap and leave no hole, every end seam is on a joist, and the pieces are those that are cut", async () => {
    console.info(`sheets laid out: seed ${SEED}`)
    let laid = 0
    await fc.assert(
      fc.asyncProperty(layouts, async (given) => {
        const one = caseOf(given)
        for (const { plan } of [heuristicAnswer(one), await solveCase(one, { deadline: 10 })]) {
          if (plan?.kind !== "sheet") continue
          laid += 1
          laidOnFloor(one, plan)
        }
      }),
      { numRuns: 25, seed: SEED, endOnFailure: true },
    )
    expect(laid).toBeGreaterThan(10)
  }, 240_000)
})

function marksOf(count: number): readonly string[] {
  return Array.from({ length: count }, (_, at) => String(at + 1))
}

function comesOut({ length, stock }: NamedDemand, { rule }: TimberProblem): boolean {
  return length + 2 * rule.endTrim <= Math.max(...stock)
}

function countOwned(owned: readonly OwnedBoards[], key: string): number {
  return owned.reduce((sum, { size, length, count }) => sum + (`${size} ${length}` === key ? count : 0), 0)
}

function laidOnFloor(one: Case, { joints, cuts }: SheetPlan): void {
  if (one.kind !== "sheet") throw new Error("not a layout of sheets")
  const pieces = joints.flatMap((line, course) => {
    const near = one.courses.slice(0, course).reduce((sum, height) => sum + height + one.gap, 0)
    const ends = [0, ...line, one.platform.acrossJoists]
    return ends.slice(1).map((to, at) => {
      const from = ends[at] ?? 0
      const left = from === 0 ? 0 : from + one.gap / 2
      const right = to === one.platform.acrossJoists ? to : to - one.gap / 2
      return { left, right, near, far: near + (one.courses[course] ?? 0), course }
    })
  })
  for (const [at, piece] of pieces.entries()) {
    expect(piece.right).toBeGreaterThan(piece.left)
    expect(piece.right - piece.left).toBeLessThanOrEqual(one.sheet.length)
    for (const other of pieces.slice(at + 1)) {
      const along = Math.max(other.left - piece.right, piece.left - other.right)
      const across = Math.max(other.near - piece.far, piece.near - other.far)
      expect(Math.max(along, across)).toBeGreaterThanOrEqual(one.gap)
    }
  }
  const covered = pieces.reduce((sum, one) => sum + (one.right - one.left) * (one.far - one.near), 0)
  const seamGaps = joints.reduce(
    (sum, line, course) => sum + line.length * one.gap * (one.courses[course] ?? 0),
    0,
  )
  const courseGaps = (one.courses.length - 1) * one.gap * one.platform.acrossJoists
  expect(covered + seamGaps + courseGaps).toBe(one.platform.acrossJoists * one.platform.alongJoists)
  for (const seam of joints.flat()) expect(seam % one.joistSpacing).toBe(0)
  expect(cutOut(one, cuts)).toEqual(
    pieces.map((piece) => `${piece.far - piece.near} ${piece.right - piece.left}`).sort(),
  )
}

/** Height and length of each piece that comes out, every sheet and strip sawn from its end: none runs over. */
function cutOut({ sheet, kerf }: SheetLayout, cuts: SheetPlan["cuts"]): readonly string[] {
  const sawn = (lengths: readonly number[], room: number): void => {
    let at = 0
    for (const length of lengths) {
      expect(at + length).toBeLessThanOrEqual(room)
      at += length + kerf
    }
  }
  const strips = new Map<string, number>()
  const count = (key: string, more: number) => strips.set(key, (strips.get(key) ?? 0) + more)
  const out: string[] = []
  for (const cut of cuts) {
    if ("strip" in cut) {
      sawn(cut.cut, cut.cap)
      count(`${cut.strip} ${cut.cap}`, -cut.n)
      for (const length of cut.cut) out.push(...Array<string>(cut.n).fill(`${cut.strip} ${length}`))
      continue
    }
    sawn([...cut.full, ...(cut.block === undefined ? [] : [cut.block])], sheet.length)
    const ripped = (cut.rip ?? []).flatMap(([height, many]) => Array<number>(many).fill(height))
    sawn(ripped, sheet.width)
    for (const height of ripped) count(`${height} ${cut.block}`, cut.n)
    for (const length of cut.full) out.push(...Array<string>(cut.n).fill(`${sheet.width} ${length}`))
  }
  for (const left of strips.values()) expect(left).toBeGreaterThanOrEqual(0)
  return out.sort()
}
