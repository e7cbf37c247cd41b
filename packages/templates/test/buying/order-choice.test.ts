import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { type Buying, highsSolver, prove, solveCase } from "../../src/cutting/index.ts"
import { leastOrder, type Order, orderOf } from "../../src/solvers/order-choice.ts"
import { type ChoiceProblem, choiceAtOnce, paidFor } from "../../src/solvers/supplier-choice.ts"

const SEED = 20261128

/** The same problem as a workbook asks it: tax on goods and delivery alike, nothing scarce. */
function asked({ suppliers, lines, offers }: Buying): ChoiceProblem {
  const places = new Map(suppliers.map(({ id }, at) => [id, at]))
  return {
    lines: lines.map(({ id, need }) => ({
      label: id,
      need,
      offers: offers
        .filter(({ line }) => line === id)
        .map(({ supplier, packSize, breaks }) => ({
          supplier: places.get(supplier) ?? -1,
          size: packSize,
          breaks: breaks.map(({ fromPacks, pricePerPack }) => ({ from: fromPacks, price: pricePerPack })),
        })),
    })),
    suppliers: suppliers.map(({ id, deliveryFee, freeDeliveryFrom, minimumOrder, taxBasisPoints }) => ({
      name: id,
      delivery: deliveryFee,
      least: minimumOrder,
      tax: taxBasisPoints / 10_000,
      ...(freeDeliveryFrom === null ? {} : { freeFrom: freeDeliveryFrom }),
    })),
  }
}

/** Whole packs that cover every line, and orders that reach what their suppliers take at least. */
function expectLegal({ lines, suppliers }: ChoiceProblem, { taken }: Pick<Order, "taken">): void {
  for (const [at, { need, offers }] of lines.entries()) {
    const list = taken[at] ?? []
    expect(list.every(({ packs }) => Number.isInteger(packs) && packs > 0)).toBe(true)
    expect(
      list.reduce((sum, { offer, packs }) => sum + packs * (offers[offer]?.size ?? 0), 0),
    ).toBeGreaterThanOrEqual(need)
  }
  const { goods } = orderOf(lines, suppliers, taken)
  for (const [at, { least }] of suppliers.entries())
    if ((goods[at] ?? 0) > 0) expect(goods[at]).toBeGreaterThanOrEqual(least)
}

/** What a solution's rows take of each line, suppliers mixed. */
function takenIn({ lines }: ChoiceProblem, rows: Awaited<ReturnType<typeof prove>>["rows"]) {
  const mixed = rows.filter(({ plan }) => plan === rows[0]?.plan)
  return lines.map((_, at) =>
    mixed
      .filter(({ line }) => line === at + 1)
      .map(({ offer, packs }) => ({ offer: Number(offer) - 1, packs: Number(packs) })),
  )
}

const supplier = (at: number) =>
  fc.record({
    id: fc.constant(`S${at}`),
    deliveryFee: fc.integer({ min: 0, max: 90 }).map((units) => units * 100),
    freeDeliveryFrom: fc.option(fc.integer({ min: 1, max: 9 }).map((units) => units * 10_000)),
    taxBasisPoints: fc.constant(0),
    deliveryTaxed: fc.constant(true),
    minimumOrder: fc.integer({ min: 0, max: 4 }).map((units) => units * 5_000),
  })

const offer = (line: string, at: number) =>
  fc
    .record({
      packSize: fc.constantFrom(1, 1, 5, 12),
      unit: fc.integer({ min: 90, max: 900 }),
      breaks: fc.array(fc.integer({ min: 2, max: 12 }), { maxLength: 2 }),
    })
    .map(({ packSize, unit, breaks }) => ({
      line,
      supplier: `S${at}`,
      packSize,
      breaks: [1, ...new Set(breaks.sort((a, b) => a - b))].map((fromPacks, place) => ({
        fromPacks,
        pricePerPack: Math.round(unit * packSize * (1 - place * 0.06)),
      })),
      availablePacks: null,
    }))

const buying: fc.Arbitrary<Buying> = fc
  .tuple(
    fc.tuple(supplier(0), supplier(1), supplier(2)),
    fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 3, maxLength: 7 }),
  )
  .chain(([suppliers, needs]) =>
    fc.tuple(...needs.flatMap((_, line) => [0, 1, 2].map((at) => offer(`L${line}`, at)))).map((offers) => ({
      id: "random",
      kind: "buy" as const,
      money: "cents",
      oneSupplierForEachLine: false,
      suppliers,
      lines: needs.map((need, line) => ({ id: `L${line}`, need })),
      offers,
    })),
  )

describe("the least order over suppliers mixed", () => {
  test(`at once: legal, never under the optimum, its bound never over it; proven: the optimum. Seed ${SEED}`, {
    timeout: 240_000,
  }, async () => {
    console.info(`buying: seed ${SEED}`)
    const solver = highsSolver()
    await fc.assert(
      fc.asyncProperty(buying, async (one) => {
        const problem = asked(one)
        const exact = await solveCase(one, { solver })
        expect(exact.status).toBe("proven")
        const least = exact.objective ?? Number.NaN

        const { order, bound } = leastOrder(problem.lines, problem.suppliers)
        if (order === undefined) throw new Error("no order at once")
        expectLegal(problem, order)
        expect(order.total).toBeGreaterThanOrEqual(least - 1e-6)
        expect(bound).toBeLessThanOrEqual(least + 1e-6)

        const { rows, report } = await prove("buying", problem, { solver })
        expect([report.objective?.value, report.bound]).toEqual([least, least])
        const taken = takenIn(problem, rows)
        expectLegal(problem, { taken })
        expect(orderOf(problem.lines, problem.suppliers, taken).total).toBe(least)
        expect(least).toBeLessThanOrEqual(order.total)
      }),
      { numRuns: 8, seed: SEED, endOnFailure: true },
    )
  })

  test("a mix of packs, a break that is worth buying past the need, and an order filled up for free delivery", () => {
    const alone = (need: number, offers: readonly (readonly [size: number, price: number])[]) =>
      leastOrder(
        [
          {
            need,
            offers: offers.map(([size, price]) => ({ supplier: 0, size, breaks: [{ from: 1, price }] })),
          },
        ],
        [{ delivery: 0, least: 0, tax: 0 }],
      ).order?.total
    // 27 of boxes of 25 at 20 and of singles at 1: a box and two.
    expect(
      alone(27, [
        [25, 20],
        [1, 1],
      ]),
    ).toBe(22)
    // 9 at 10 are 90; 10 at 8 are 80.
    const broken = [
      { from: 1, price: 10 },
      { from: 10, price: 8 },
    ]
    const past = leastOrder(
      [{ need: 9, offers: [{ supplier: 0, size: 1, breaks: broken }] }],
      [{ delivery: 0, least: 0, tax: 0 }],
    )
    expect(past.order?.total).toBe(80)
    expect(past.bound).toBe(80)
    // 95 and 30 to bring it, or 100 and nothing.
    const filled = leastOrder(
      [{ need: 19, offers: [{ supplier: 0, size: 1, breaks: [{ from: 1, price: 5 }] }] }],
      [{ delivery: 30, freeFrom: 100, least: 0, tax: 0 }],
    )
    expect(filled.order?.total).toBe(100)
  })
})

describe("proven by hand", () => {
  const bring = { delivery: 0, least: 0, tax: 0 }
  const ends = async (problem: ChoiceProblem) => {
    const { report } = await prove("buying", problem)
    return [report.objective?.value, report.bound]
  }

  test("by measure: as much as is needed, to the nearest cent, beside sacks", async () => {
    const stone = (sack: number): ChoiceProblem => ({
      suppliers: [{ name: "A", ...bring }],
      lines: [
        {
          label: "stone",
          need: 4.5,
          offers: [
            { supplier: 0, size: 1, amount: 4.5, breaks: [{ from: 0, price: 3317 }] },
            { supplier: 0, size: 0.75, breaks: [{ from: 1, price: sack }] },
          ],
        },
      ],
    })
    // 4.5 at 33.17 are 149.265: 149.27. Six sacks of 0.75 cover it.
    expect(await ends(stone(2500))).toEqual([14_927, 14_927])
    expect(await ends(stone(2400))).toEqual([14_400, 14_400])
  })

  test("a tax of 8.875 %, half a cent upwards, on goods and delivery", async () => {
    const problem: ChoiceProblem = {
      suppliers: [{ name: "A", delivery: 4990, least: 0, tax: 0.08875 }],
      lines: [
        { label: "tie", need: 3, offers: [{ supplier: 0, size: 1, breaks: [{ from: 1, price: 110 }] }] },
      ],
    }
    // 53.20 and 4.7215: 4.72.
    expect(await ends(problem)).toEqual([5792, 5792])
  })

  test("where no order reaches a supplier's least, the cheapest all the same", async () => {
    const offers = [{ supplier: 0, size: 1, breaks: [{ from: 1, price: 0 }] }]
    const problem: ChoiceProblem = {
      suppliers: [
        { name: "A", delivery: 500, least: 9000, tax: 0 },
        { name: "B", ...bring },
      ],
      lines: [{ label: "sand", need: 2, offers }],
    }
    const atOnce = choiceAtOnce(problem, undefined)
    expect(atOnce.taken).toEqual([[{ offer: 0, packs: 2 }]])
    expect(atOnce.bound).toBeLessThanOrEqual(500)
    expect(await ends(problem)).toEqual([500, 500])
  })

  test("one supplier alone is what the report is about where the user wants it so", async () => {
    const offer = (supplier: number, price: number) => ({ supplier, size: 1, breaks: [{ from: 1, price }] })
    const problem: ChoiceProblem = {
      only: 1,
      suppliers: [
        { name: "A", ...bring },
        { name: "B", ...bring },
      ],
      lines: [
        { label: "peg", need: 2, offers: [offer(0, 100), offer(1, 130)] },
        { label: "tie", need: 1, offers: [offer(0, 900), offer(1, 700)] },
      ],
    }
    const { rows, report } = await prove("buying", problem)
    expect([report.objective?.value, report.bound]).toEqual([960, 960])
    expect(rows.map(({ plan, supplier }) => [plan, supplier])).toEqual([
      ["the least in all, suppliers mixed", "A"],
      ["the least in all, suppliers mixed", "B"],
      ["all from A", "A"],
      ["all from A", "A"],
      ["all from B", "B"],
      ["all from B", "B"],
    ])
    expect(paidFor(problem, [[{ offer: 0, packs: 2 }], [{ offer: 1, packs: 1 }]])).toBe(900)
  })
})
