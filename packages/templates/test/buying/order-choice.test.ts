import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { type Buying, highsSolver, solveCase } from "../../src/cutting/index.ts"
import { leastOrder } from "../../src/solvers/order-choice.ts"

const SEED = 20261128

/** The same problem for the workbook's choice: tax on goods and delivery alike, nothing scarce. */
function chosen({ suppliers, lines, offers }: Buying) {
  const places = new Map(suppliers.map(({ id }, at) => [id, at]))
  return leastOrder(
    lines.map(({ id, need }) => ({
      need,
      offers: offers
        .filter(({ line }) => line === id)
        .map(({ supplier, packSize, breaks }) => ({
          supplier: places.get(supplier) ?? -1,
          size: packSize,
          breaks: breaks.map(({ fromPacks, pricePerPack }) => ({ from: fromPacks, price: pricePerPack })),
        })),
    })),
    suppliers.map(({ deliveryFee, freeDeliveryFrom, minimumOrder, taxBasisPoints }) => ({
      delivery: deliveryFee,
      least: minimumOrder,
      tax: taxBasisPoints / 10_000,
      ...(freeDeliveryFrom === null ? {} : { freeFrom: freeDeliveryFrom }),
    })),
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
  test(`never under the exact optimum, its bound never over it, and near it in small hard orders: seed ${SEED}`, {
    timeout: 240_000,
  }, async () => {
    console.info(`buying: seed ${SEED}`)
    const solver = await highsSolver()
    let [best, all, worst] = [0, 0, 0]
    await fc.assert(
      fc.asyncProperty(buying, async (one) => {
        const exact = await solveCase(one, { solver })
        const { order, bound } = chosen(one)
        expect(exact.status).toBe("proven")
        const least = exact.objective ?? Number.NaN
        expect(order?.total ?? Number.NaN).toBeGreaterThanOrEqual(least - 1e-6)
        expect(bound).toBeLessThanOrEqual(least + 1e-6)
        all += 1
        if ((order?.total ?? 0) <= least + 1e-6) best += 1
        worst = Math.max(worst, ((order?.total ?? 0) - least) / least)
      }),
      { numRuns: 12, seed: SEED, endOnFailure: true },
    )
    console.info(`the optimum in ${best} of ${all}; at most ${(worst * 100).toFixed(2)} % over it`)
    // Small carts beside high thresholds are the hardest: there the search may stay some per cent over the optimum.
    expect(best).toBeGreaterThan(0)
    expect(worst).toBeLessThan(0.12)
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
