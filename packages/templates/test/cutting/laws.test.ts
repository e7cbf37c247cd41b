import fc from "fast-check"
import { expect, test } from "vitest"
import { type Case, checkPlan, heuristicAnswer, solveCase } from "../../src/cutting/index.ts"
import { caseOf } from "./cases.ts"
import { sheetLayouts } from "./random-layouts.ts"

const SEED = Date.now() % 1_000_000
console.log(`cutting laws: seed ${SEED}`)
const RUNS = { numRuns: 12, seed: SEED, interruptAfterTimeLimit: 40_000, markInterruptAsFailure: false }

const lengths = fc.integer({ min: 200, max: 2400 })
const stocks = fc
  .array(
    fc.record({
      length: fc.constantFrom(1536, 1920, 2304, 3072),
      price: fc.integer({ min: 0, max: 2000 }),
      available: fc.option(fc.integer({ min: 0, max: 12 })),
      cullPermille: fc.constantFrom(0, 0, 50, 333),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((list) => list.map((stock, index) => ({ id: `s${index}`, ...stock })))

const boardLists = fc.record({
  id: fc.constant("boards"),
  kind: fc.constant("cut"),
  kerf: fc.constantFrom(0, 2, 3),
  endTrim: fc.constantFrom(0, 8),
  stocks,
  pieces: fc.array(fc.record({ length: lengths, quantity: fc.integer({ min: 0, max: 5 }) }), {
    maxLength: 7,
  }),
})

const splices = fc
  .record({
    bays: fc.array(fc.integer({ min: 300, max: 800 }), { minLength: 2, maxLength: 6 }),
    bearings: fc.array(fc.constantFrom(128, 90), { minLength: 7, maxLength: 7 }),
    minBaysForPiece: fc.integer({ min: 1, max: 2 }),
    minStagger: fc.constantFrom(0, 384, 900),
    skids: fc.integer({ min: 1, max: 4 }),
    stocks,
  })
  .map(({ bays, bearings, ...rest }) => {
    const supports = [
      0,
      ...bays.map((_, index) => bays.slice(0, index + 1).reduce((sum, bay) => sum + bay, 0)),
    ]
    const bearing = bearings.slice(0, supports.length)
    return { id: "skids", kind: "splice", kerf: 2, endTrim: 0, minBearing: 48, supports, bearing, ...rest }
  })

const layouts = sheetLayouts({ longest: 5400, gap: fc.integer({ min: 0, max: 5 }) })

const orders = fc
  .record({
    suppliers: fc.array(
      fc.record({
        deliveryFee: fc.integer({ min: 0, max: 9000 }),
        freeDeliveryFrom: fc.option(fc.integer({ min: 0, max: 20_000 })),
        taxBasisPoints: fc.constantFrom(0, 500, 825),
        deliveryTaxed: fc.boolean(),
        minimumOrder: fc.constantFrom(0, 5000),
      }),
      { minLength: 2, maxLength: 2 },
    ),
    needs: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 3 }),
    offers: fc.array(
      fc.record({
        line: fc.nat(2),
        supplier: fc.nat(1),
        packSize: fc.constantFrom(1, 5, 25),
        price: fc.integer({ min: 0, max: 900 }),
        from: fc.integer({ min: 2, max: 6 }),
        availablePacks: fc.option(fc.integer({ min: 0, max: 20 })),
      }),
      { maxLength: 8 },
    ),
    oneSupplierForEachLine: fc.boolean(),
  })
  .map(({ suppliers, needs, offers, oneSupplierForEachLine }) => ({
    id: "order",
    kind: "buy",
    oneSupplierForEachLine,
    suppliers: suppliers.map((supplier, index) => ({ id: `S${index}`, ...supplier })),
    lines: needs.map((need, index) => ({ id: `L${index}`, need })),
    offers: offers
      .filter(({ line }) => line < needs.length)
      .map(({ line, supplier, price, from, ...offer }) => ({
        ...offer,
        line: `L${line}`,
        supplier: `S${supplier}`,
        breaks: [
          { fromPacks: 1, pricePerPack: price },
          { fromPacks: from, pricePerPack: Math.round(price * 0.9) },
        ],
      })),
  }))

/** What holds of every answer, exact or at once. */
async function holds(one: Case): Promise<void> {
  const atOnce = heuristicAnswer(one)
  const exact = await solveCase(one, { deadline: 20 })
  for (const answer of [atOnce, exact]) {
    if (answer.plan === null) continue
    expect(checkPlan(one, answer.plan)).toEqual({ objective: answer.objective, broken: [] })
    expect(answer.bound).toBeLessThanOrEqual(answer.objective ?? -1)
  }
  if (exact.status === "impossible") {
    expect(atOnce.plan).toBeNull()
    expect(exact.impossible?.says).not.toBe("")
  } else {
    expect(exact.method).toMatch(/HiGHS|at once|best fit|cheapest|layouts/)
    expect(exact.notices.join()).not.toContain("could not be used")
    if (atOnce.objective !== null) expect(exact.objective).toBeLessThanOrEqual(atOnce.objective)
    if (exact.status === "proven" && atOnce.bound !== null)
      expect(exact.objective).toBeGreaterThanOrEqual(atOnce.bound)
  }
}

test.each<[string, fc.Arbitrary<object>]>([
  ["board lists", boardLists],
  ["spliced skids", splices],
  ["sheet layouts", layouts],
  ["orders", orders],
])("%s: plans keep every rule, bound ≤ exact ≤ at once", async (_, arbitrary) => {
  await fc.assert(
    fc.asyncProperty(arbitrary, async (given) => holds(caseOf(given))),
    RUNS,
  )
})
