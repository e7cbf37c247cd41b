import { expect, test } from "vitest"
import { checkPlan, heuristicAnswer, solveCase } from "../../src/cutting/index.ts"
import { order } from "./cases.ts"

const offer = (pricePerPack: number, availablePacks: number | null = null) => ({
  line: "screws",
  supplier: "A",
  packSize: 1,
  breaks: [{ fromPacks: 1, pricePerPack }],
  availablePacks,
})

test("of two offers that are alike but for the price, a plan says which it buys", async () => {
  const one = order({ lines: [{ id: "screws", need: 3 }], offers: [offer(5), offer(2)] })
  for (const answer of [heuristicAnswer(one), await solveCase(one)]) {
    expect(answer.objective).toBe(6)
    expect(answer.plan).toMatchObject({ packs: [{ packs: 3, offer: 1 }] })
  }
})

test("a plan that does not say takes the first of them, and one that says wrongly is refused", () => {
  const one = order({ lines: [{ id: "screws", need: 3 }], offers: [offer(5), offer(2)] })
  const packs = (more: object) => ({
    kind: "buy" as const,
    packs: [{ line: "screws", supplier: "A", packSize: 1, packs: 3, ...more }],
  })
  expect(checkPlan(one, packs({}))).toEqual({ objective: 15, broken: [] })
  expect(checkPlan(one, packs({ offer: 1 }))).toEqual({ objective: 6, broken: [] })
  expect(checkPlan(one, packs({ offer: 2 })).broken).toContain("A does not offer screws in packs of 1")
})

test("the cheaper runs out, and the other makes up", async () => {
  const one = order({ lines: [{ id: "screws", need: 3 }], offers: [offer(5), offer(2, 1)] })
  const answer = await solveCase(one)
  expect([answer.status, answer.objective]).toEqual(["proven", 12])
})
