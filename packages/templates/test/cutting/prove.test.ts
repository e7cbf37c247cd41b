import { type Book, openBook, type Solution } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { prove } from "../../src/cutting/index.ts"
import { TEMPLATES } from "../../src/index.ts"
import { sawAdvice } from "../../src/solvers/saw-advice.ts"
import type { TimberProblem } from "../../src/solvers/timber-problem.ts"
import { legalInputs } from "../helpers/random-inputs.ts"

const SEED = 20261125
const CUTTING = TEMPLATES.filter((definition) => openBook(definition).book.has("cut_plan"))

/** Pieces that all may be bought as the stocks given with them, in whole units. */
function problem(
  demands: readonly (readonly [part: string, length: number, count: number, stock: readonly number[]])[],
  more: Partial<TimberProblem> = {},
): TimberProblem {
  return {
    rule: { kerf: 0, endTrim: 0 },
    settled: [],
    owned: [],
    prices: [],
    demands: demands.map(([part, length, count, stock]) => ({
      part,
      size: "2x4",
      length,
      count,
      stock,
      marks: Array.from({ length: count }, (_, index) => String(index + 1)),
    })),
    ...more,
  }
}

const ends = ({ report }: Solution) => [report.objective?.value, report.bound]

describe("by hand", () => {
  test("a board may be bought only for a piece that may be bought so", async () => {
    // The long piece brings one 100 with room for one more; a second 100 would hold three, but may not be bought for them.
    const asked = problem([
      ["long", 50, 1, [100]],
      ["short", 30, 4, [40]],
    ])
    expect(ends(await prove("timber", asked))).toEqual([220, 220])
    // Where it may, the same pieces come out of two.
    const free = problem([
      ["long", 50, 1, [40, 100]],
      ["short", 30, 4, [40, 100]],
    ])
    expect(ends(await prove("timber", free))).toEqual([200, 200])
  })

  test("what is owned is used before anything is bought, and no more of it than there is", async () => {
    const asked = problem([["piece", 30, 5, [40, 70]]], { owned: [{ size: "2x4", length: 65, count: 2 }] })
    const { rows, report } = await prove("timber", asked)
    expect([report.objective?.value, report.bound]).toEqual([40, 40])
    expect(rows.filter(({ own }) => Number(own) > 0).map(({ own }) => own)).toEqual([65, 65])
    const other = problem([["piece", 30, 1, [40]]], { owned: [{ size: "4x4", length: 65, count: 1 }] })
    expect(ends(await prove("timber", other))).toEqual([40, 40])
  })

  test("every piece has its own name", async () => {
    const { rows } = await prove("timber", problem([["stake", 28, 9, [120, 144]]]))
    expect(rows.map(({ mark }) => Number(mark)).sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
  })

  test("an id that no prover has is refused", async () => {
    await expect(prove("stone", {})).rejects.toThrow("there is no prover stone")
  })
})

describe("what the saw takes", () => {
  const INCH = 25_400_000
  const FOOT = 12 * INCH
  const rule = { kerf: INCH / 8, endTrim: 0 }
  const advice = (count: number, stock: readonly number[]) =>
    sawAdvice({ ...problem([["stake", 36 * INCH, count, stock.map((feet) => feet * FOOT)]]), rule })

  // Common practice, no source: three cuts of 1/8 in part four pieces.
  test("4 × 36 in does not come out of 12 ft, and which length gives them is said", () => {
    expect(advice(4, [12, 14])).toEqual([
      expect.stringMatching(
        /^4 × 3 ft \(0.914 m\) of 2x4 does not come out of 12 ft .* 14 ft \(4.267 m\) gives them\.$/,
      ),
    ])
    expect(advice(4, [12])).toEqual([expect.stringMatching(/It takes a board of at least 12 ft 0.38 in/)])
  })

  test("nothing is said where that many are not wanted, or come out", () => {
    expect(advice(3, [12, 14])).toEqual([])
    expect(advice(4, [14])).toEqual([])
  })
})

/** What is wanted and what is cut, as the workbook's own tables say. */
function counted(book: Book, table: string): Map<string, number> {
  const column = (name: string) => book.entry(`${table}.${name}`).readings ?? []
  const counts = table === "timber_pieces" ? column("count") : undefined
  const found = new Map<string, number>()
  column("part").forEach((part, row) => {
    const key = [part, column("size")[row], column("length")[row]].map((one) => one?.value).join(" ")
    found.set(key, (found.get(key) ?? 0) + Number(counts?.[row]?.value ?? 1))
  })
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)))
}

async function provenNoDearer(book: Book): Promise<void> {
  const [asked] = book.unproven()
  if (asked === undefined) return
  const before = book.entry("cut_plan").report
  const misfits = before?.unmet.length ?? 0
  const solution = await prove(asked.prover, JSON.parse(JSON.stringify(asked.given)), { deadline: 6 })
  expect(book.settle(asked.table, asked.given, solution).accepted).toBe(true)
  const { objective, bound } = solution.report
  expect(objective?.value).toBeLessThanOrEqual(before?.objective?.value ?? 0)
  expect(bound).toBeLessThanOrEqual(objective?.value ?? 0)
  // The two bounds are worked out apart: neither may lie above a plan.
  expect(before?.bound).toBeLessThanOrEqual(objective?.value ?? 0)
  if (misfits === 0) expect(counted(book, "cut_plan")).toEqual(counted(book, "timber_pieces"))
  const bought = Number(book.entry("timber_length_bought").reading?.value)
  expect(bought * 1e9).toBeCloseTo(objective?.value ?? 0, -1)
}

describe.each(CUTTING.map((definition) => [definition.id, definition] as const))("%s", (id, definition) => {
  test("the plan of the workbook as it opens is proven best", async () => {
    const { book } = openBook(definition)
    const start = performance.now()
    await provenNoDearer(book)
    const { report } = book.entry("cut_plan")
    console.info(`${id}: proven in ${Math.round(performance.now() - start)} ms`)
    expect(report?.bound).toBe(report?.objective?.value)
  })

  test("random designs: all is cut as wanted, and nothing costs more than at once", {
    timeout: 240_000,
  }, async () => {
    console.info(`${id}: 4 random designs, seed ${SEED}`)
    await fc.assert(
      fc.asyncProperty(legalInputs(definition), async (typed) => {
        const { book } = openBook(definition)
        for (const [name, text] of Object.entries(typed)) book.edit(name, text)
        await provenNoDearer(book)
      }),
      { numRuns: 4, seed: SEED, endOnFailure: true },
    )
  })
})
