import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { answer } from "../../src/explore/answer.ts"
import type { Answer, Asked } from "../../src/explore/asked.ts"
import { createInOrder } from "../../src/explore/in-order.ts"

const VALUES = ["12 in", "16 in", "20 in", "24 in", "14 in"]
const question = {
  kind: "sweep",
  inputs: [
    { name: "joist_spacing", values: VALUES },
    { name: "platform_length", from: "16 ft", to: "18 ft", step: "1 ft" },
  ],
  results: ["joist_count"],
} as const

function rows(asked: Asked): readonly Answer[] {
  return [...answer(demo(), asked)].filter(({ kind }) => kind === "sweep")
}

test("three who share a sweep come to what one comes to alone, in the same order, whoever is faster", () => {
  const asked = { template: "demo", document: openBook(demo()).book.document(), question }
  const alone = rows(asked)
  expect(alone).toHaveLength(VALUES.length * 3)
  const shares = [0, 1, 2].map((part) => [...rows({ ...asked, share: { part, of: 3 } })])
  expect(shares.map(({ length }) => length)).toEqual([5, 5, 5])

  const came: Answer[] = []
  const inOrder = createInOrder(3, (one) => came.push(one))
  // The last is done before the first has begun.
  for (const share of [...shares].reverse()) for (const one of share) inOrder.come(one)
  expect(came).toEqual(alone)
  expect([inOrder.isLast(), inOrder.isLast(), inOrder.isLast()]).toEqual([false, false, true])
})
