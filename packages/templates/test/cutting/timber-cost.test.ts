import { type Book, openBook, type Solution, type SolverGiven } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { prove } from "../../src/cutting/index.ts"
import { checkTimber } from "../../src/cutting/timber-check.ts"
import { demo } from "../../src/index.ts"
import { type BoardPrice, boardPrices } from "../../src/solvers/board-prices.ts"
import type { CutBoard, CuttingRule } from "../../src/solvers/boards.ts"
import { planTimber, timberSolution } from "../../src/solvers/timber-plan.ts"
import type { TimberProblem } from "../../src/solvers/timber-problem.ts"

const SEED = 20261126
const FOOT = 304_800_000
const SIZE = "2x4"

type Wanted = readonly [length: number, count: number]
type Price = readonly [stock: number, price: number]

/** Pieces of one size that may be bought as every length that is sold. */
function problem(
  sold: readonly number[],
  wanted: readonly Wanted[],
  prices: readonly Price[] = [],
  rule: CuttingRule = { kerf: 0, endTrim: 0 },
): TimberProblem {
  return {
    rule,
    settled: [],
    owned: [],
    prices: prices.map(([stock, price]) => ({ size: SIZE, stock, price })),
    demands: wanted.map(([length, count], index) => ({
      part: `part ${index}`,
      size: SIZE,
      length,
      count,
      stock: sold,
      marks: Array.from({ length: count }, (_, at) => String(at + 1)),
    })),
  }
}

const atOnce = (asked: TimberProblem): Solution => timberSolution(asked, planTimber(asked))
const stocks = ({ rows }: Solution) => {
  const boards = new Map(rows.map(({ board, stock }) => [board, Number(stock)]))
  return [...boards.values()].sort((a, b) => a - b)
}

describe("by hand", () => {
  const wanted: readonly Wanted[] = [[60, 2]]
  // Two of 60 are 120 in all; one of 130 is longer, and cheaper.
  const prices: readonly Price[] = [
    [60, 1000],
    [130, 1500],
  ]

  test.each([
    ["at once", (asked: TimberProblem) => Promise.resolve(atOnce(asked))],
    ["proven", (asked: TimberProblem) => prove("timber", asked)],
  ])("%s: a plan that is longer in all is chosen where it costs less", async (_, solve) => {
    const shortest = await solve(problem([60, 130], wanted))
    expect(stocks(shortest)).toEqual([60, 60])
    expect(shortest.report.objective).toEqual({
      says: "timber bought, end to end",
      measure: "length",
      value: 120,
    })
    const cheapest = await solve(problem([60, 130], wanted, prices))
    expect(stocks(cheapest)).toEqual([130])
    expect(cheapest.report.objective).toEqual({
      says: "timber bought, by your prices",
      measure: "money",
      value: 1500,
    })
    expect(cheapest.report.bound).toBe(1500)
  })

  test("of plans that cost as much the one with fewer boards, then the one that leaves the longest rest", async () => {
    const even: readonly Price[] = [
      [60, 750],
      [130, 1500],
    ]
    expect(stocks(await prove("timber", problem([60, 130], wanted, even)))).toEqual([130])
    // One board each; the longer one leaves more.
    const alike: readonly Price[] = [
      [60, 900],
      [80, 900],
    ]
    expect(stocks(await prove("timber", problem([60, 80], [[50, 1]], alike)))).toEqual([80])
    expect(stocks(atOnce(problem([60, 80], [[50, 1]], alike)))).toEqual([80])
  })

  test("of two plans of two boards the one with the longest rest is proven", async () => {
    // Longest first, 40 + 40 and 30 + 30 leave 20 and 40; 40 + 30 + 30 fill a board, and 40 leaves 60 of the other.
    const asked = problem(
      [100],
      [
        [30, 2],
        [40, 2],
      ],
    )
    const longest = ({ rows }: Solution) => Math.max(...rows.map(({ left }) => Number(left)))
    expect([longest(atOnce(asked)), longest(await prove("timber", asked))]).toEqual([40, 60])
  })

  test("boards that cost nothing are proven as well", async () => {
    const { report } = await prove("timber", problem([60], wanted, [[60, 0]]))
    expect([report.objective?.value, report.bound]).toEqual([0, 0])
  })

  test("a size without a price is named, and cut as short as can be", async () => {
    const [priced, bare] = [problem([60, 130], wanted, prices), problem([60, 130], wanted)]
    const other = bare.demands.map((demand) => ({ ...demand, size: "4x4" }))
    const { rows, report } = await prove("timber", { ...priced, demands: [...priced.demands, ...other] })
    expect(report.objective).toEqual({
      says: "timber bought, by your prices; no price for 4x4",
      measure: "money",
      value: 1500,
    })
    expect(rows.map(({ size, stock }) => [size, stock])).toEqual([
      [SIZE, 130],
      [SIZE, 130],
      ["4x4", 60],
      ["4x4", 60],
    ])
  })

  test("the checker refuses a sum, a bound or a board that does not hold", () => {
    const asked = problem([60, 130], wanted, prices)
    const piece = { part: "part 0", length: 60 }
    const board: CutBoard = { size: SIZE, stock: 130, pieces: [piece, piece], left: 10 }
    const check = (bought: number, bound: number, boards = [board]) =>
      checkTimber(asked, asked.demands, boards, [{ size: SIZE, bought, bound }])
    expect(() => check(1500, 1500)).not.toThrow()
    expect(() => check(1499, 1400)).toThrow("the boards of 2x4 come to 1500, not to 1499")
    expect(() => check(1500, 1501)).toThrow("the bound 1501 of 2x4 lies above its boards")
    expect(() => checkTimber(asked, asked.demands, [board], [])).toThrow("nothing is claimed of 2x4")
    expect(() => check(1500, 0, [{ ...board, pieces: [piece] }])).toThrow("1 times too few")
  })
})

type Line = Readonly<
  Partial<Record<"item" | "length" | "unit" | "price" | "supplier" | "pack" | "from", string>>
>

function priced(lines: readonly Line[], feet: readonly number[], only = ""): readonly number[] {
  const columns = new Map<string, readonly (string | number)[]>([["buying_rules.buy_from", [only]]])
  for (const name of [
    "item",
    "length",
    "unit",
    "price",
    "supplier",
    "pack",
    "from",
    "date",
    "lead",
  ] as const) {
    const texts = lines.map((line) => (line as Record<string, string | undefined>)[name] ?? "")
    columns.set(`prices.${name}`, name === "price" ? texts.map((text) => Number(text) * 100) : texts)
  }
  const given: SolverGiven = {
    number: () => 0,
    text: () => "",
    yes: () => false,
    column: (name) => columns.get(name) ?? [],
  }
  const boards = feet.map((length) => ({ size: SIZE, length: length * FOOT }))
  return boardPrices(given, boards).map(({ price }: BoardPrice) => price)
}

describe("what a board costs", () => {
  test.each<[string, readonly Line[], readonly number[]]>([
    ["nothing is known of a size without a price", [{ item: "2x6", unit: "each", price: "9" }], []],
    ["by the piece, for every length", [{ item: "2x4", unit: "each", price: "9" }], [900, 900]],
    ["by length", [{ item: "2×4", unit: "ft", price: "0.85" }], [680, 1020]],
    [
      "the cheapest of two suppliers, length by length",
      [
        { item: "2x4", unit: "ft", price: "1", supplier: "North yard" },
        { item: "2x4", unit: "each", price: "9", supplier: "South yard" },
      ],
      [800, 900],
    ],
    [
      "a supplier's price of this length goes before the same one's price of every length",
      [
        { item: "2x4", unit: "ft", price: "1" },
        { item: "2x4", length: "12 ft", unit: "each", price: "20" },
      ],
      [800, 2000],
    ],
    [
      "a length that nobody offers, at the cheapest rate of the others: 6.00 for 10 ft is 60 a foot",
      [
        { item: "2x4", length: "10 ft", unit: "each", price: "6" },
        { item: "2x4", length: "16 ft", unit: "each", price: "16" },
      ],
      [480, 720],
    ],
    ["a pack by its share", [{ item: "2x4", unit: "each", price: "90", pack: "10" }], [900, 900]],
    [
      "a price that holds only for many does not count",
      [
        { item: "2x4", unit: "each", price: "9" },
        { item: "2x4", unit: "each", price: "5", from: "100" },
      ],
      [900, 900],
    ],
    ["a unit that timber is not counted in says nothing", [{ item: "2x4", unit: "kg", price: "5" }], []],
  ])("%s", (_, lines, expected) => {
    expect(priced(lines, [8, 12])).toEqual(expected)
  })

  test("where all is bought from one, that one's price counts", () => {
    const lines: readonly Line[] = [
      { item: "2x4", unit: "each", price: "7", supplier: "North yard" },
      { item: "2x4", unit: "each", price: "9", supplier: "South yard" },
    ]
    expect(priced(lines, [8])).toEqual([700])
    expect(priced(lines, [8], "South yard")).toEqual([900])
    expect(priced(lines, [8], "Nobody")).toEqual([700])
  })
})

const SOLD = [96, 120, 144, 192]
const wantedOnes = fc.array(
  fc.tuple(fc.integer({ min: 8, max: 150 }), fc.integer({ min: 1, max: 3 })) as fc.Arbitrary<Wanted>,
  { minLength: 1, maxLength: 3 },
)
const rules = fc.record({ kerf: fc.integer({ min: 0, max: 3 }), endTrim: fc.integer({ min: 0, max: 4 }) })
const costs = fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 4, maxLength: 4 })
const RUNS = { numRuns: 40, seed: SEED, endOnFailure: true }

describe("for any prices", () => {
  test("bound at once ≤ proven ≤ at once, and the proof is what trying everything finds", async () => {
    console.info(`timber cost: seed ${SEED}`)
    await fc.assert(
      fc.asyncProperty(wantedOnes, rules, costs, async (wanted, rule, dear) => {
        const prices = SOLD.map((stock, index): Price => [stock, dear[index] ?? 0])
        const asked = problem(SOLD, wanted, prices, rule)
        const [first, best] = [atOnce(asked), await prove("timber", asked)]
        const least = best.report.objective?.value ?? Number.NaN
        expect(least).toBeLessThanOrEqual(first.report.objective?.value ?? Number.NaN)
        expect(best.report.bound).toBe(least)
        expect(first.report.bound).toBeLessThanOrEqual(least)
        const pieces = wanted.flatMap(([length, count]) => Array<number>(count).fill(length))
        if (pieces.length > 6) return
        const left = Math.max(...best.rows.map((row) => Number(row.left)))
        expect([least, stocks(best).length, left]).toEqual(bestByTryingAll(pieces, prices, rule))
      }),
      RUNS,
    )
  }, 120_000)

  test("prices by the length alone change no board: without prices nothing is other than it was", async () => {
    await fc.assert(
      fc.asyncProperty(wantedOnes, rules, fc.integer({ min: 1, max: 9 }), async (wanted, rule, rate) => {
        const bare = problem(SOLD, wanted, [], rule)
        const byLength = problem(
          SOLD,
          wanted,
          SOLD.map((stock): Price => [stock, rate * stock]),
          rule,
        )
        expect(atOnce(byLength).rows).toEqual(atOnce(bare).rows)
        const [shortest, cheapest] = [await prove("timber", bare), await prove("timber", byLength)]
        expect(cheapest.rows).toEqual(shortest.rows)
        expect(cheapest.report.objective?.value).toBe(rate * (shortest.report.objective?.value ?? Number.NaN))
      }),
      { ...RUNS, numRuns: 15 },
    )
  }, 120_000)
})

/** What the best of all ways to share the pieces out between boards costs, its boards, and its longest rest. */
function bestByTryingAll(
  pieces: readonly number[],
  prices: readonly Price[],
  rule: CuttingRule,
): readonly number[] {
  const boardFor = (held: number): Price => {
    const room = ([stock]: Price) => stock - 2 * rule.endTrim + rule.kerf
    const holding = prices.filter((price) => held <= room(price))
    const least = Math.min(...holding.map(([, price]) => price))
    const longest = Math.max(...holding.filter(([, price]) => price === least).map(([stock]) => stock))
    return [Math.max(0, longest - 2 * rule.endTrim - held), least]
  }
  let best: readonly number[] = [Number.POSITIVE_INFINITY, 0, 0]
  const place = (rest: readonly number[], held: readonly number[]): void => {
    const [next, ...others] = rest
    if (next === undefined) {
      const boards = held.map(boardFor)
      const cost = boards.reduce((sum, [, price]) => sum + price, 0)
      const left = Math.max(...boards.map(([over]) => over))
      const [leastCost = 0, fewest = 0, longest = 0] = best
      const gains = [leastCost - cost, fewest - boards.length, left - longest]
      if ((gains.find((gain) => gain !== 0) ?? 0) > 0) best = [cost, boards.length, left]
      return
    }
    const needs = next + rule.kerf
    const ways = [...held.keys()].map((at) => held.map((one, index) => (index === at ? one + needs : one)))
    for (const way of [...ways, [...held, needs]]) place(others, way)
  }
  place(pieces, [])
  return best
}

describe("in a workbook", () => {
  const column = (book: Book, name: string) =>
    (book.entry(name).readings ?? []).map((reading) => reading?.value ?? "")
  const askedOf = (book: Book) => {
    const asked = book.unproven().find(({ table }) => table === "cut_plan")
    if (asked === undefined) throw new Error("the plan made at once is proven already: choose another design")
    return asked
  }

  test("prices reach the plan, and it costs what the list says of its timber", async () => {
    const { book } = openBook(demo())
    const sizes = [...new Set(column(book, "timber_pieces.size").map(String))]
    const { demands, settled } = askedOf(book).given as TimberProblem
    const sold = [...demands.flatMap(({ stock }) => stock), ...settled.map(({ stock }) => stock)]
    const lengths = [...new Set(sold)].map((nanometres) => `${nanometres / 1e9} m`)
    const before = book.entry("cut_plan").report?.objective
    expect(before?.measure).toBe("length")
    const prices = sizes.flatMap((item, at) =>
      lengths.map((length, index) => ({
        item,
        length,
        unit: "each",
        price: `${7 + at + 3 * index}.${10 + index}`,
      })),
    )
    expect(book.editTable("prices", prices).problems).toEqual([])
    const listed = () => {
      const items = column(book, "buy_list.item").map(String)
      const paid = column(book, "buy_list.cost").map(Number)
      return items.reduce((sum, item, at) => sum + (sizes.includes(item) ? (paid[at] ?? 0) : 0), 0)
    }
    const asked = askedOf(book)
    const solution = await prove(asked.prover, JSON.parse(JSON.stringify(asked.given)))
    expect(book.settle(asked.table, asked.given, solution).accepted).toBe(true)
    const { objective, bound } = book.entry("cut_plan").report ?? {}
    expect(objective?.measure).toBe("money")
    expect(bound).toBe(objective?.value)
    expect(listed()).toBeCloseTo((objective?.value ?? Number.NaN) / 100, 6)
    book.editTable("prices", [])
    expect(book.entry("cut_plan").report?.objective?.measure).toBe("length")
  }, 60_000)
})
