import { expect, test } from "vitest"
import { checkPlan, heuristicAnswer, type Plan, solveCase } from "../../src/cutting/index.ts"
import { caseOf } from "./cases.ts"
import { origin, records } from "./worked-cases.json"

test("the records say where they are from", () => {
  expect(origin).toContain("R01 to R04")
  expect(records).toHaveLength(4)
})

test.each(records)("$case.id is proven best: $note", async ({ case: given, answer }) => {
  const one = caseOf(given)
  expect(await solveCase(one)).toMatchObject({
    status: "proven",
    objective: answer.objective,
    bound: answer.bound,
    gap: 0,
  })
})

test.each(records)(
  "$case.id: the checker finds the recorded plan sound, at the recorded cost",
  ({ case: given, answer }) => {
    const one = caseOf(given)
    const plan = { kind: one.kind, ...answer.plan } as Plan
    expect(checkPlan(one, plan)).toEqual({ objective: answer.objective, broken: [] })
  },
)

test.each(records)("$case.id: what is answered at once is sound and no better", ({ case: given, answer }) => {
  const atOnce = heuristicAnswer(caseOf(given))
  expect(atOnce.objective).toBeGreaterThanOrEqual(answer.objective)
  expect(atOnce.bound).toBeLessThanOrEqual(answer.objective)
})
