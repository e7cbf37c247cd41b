import { expect, test } from "vitest"
import { nearNames } from "../../src/formula/near-names.ts"

const NAMES = ["joist_count", "joist_length", "rim_count", "platform_length", "platform_width", "a", "b"]

test.each([
  ["joist_cuont", "joist_count"],
  ["joistcount", "joist_count"],
  ["JOIST_COUNT", "joist_count"],
  ["joist_lenghts", "joist_length"],
  ["platform_witdh", "platform_width"],
  ["platform_", "platform_length"],
  ["length", "joist_length"],
])("%s may have meant %s", (written, meant) => {
  expect(nearNames(written, NAMES)[0]).toBe(meant)
})

test.each(["", "wheelbarrow", "x".repeat(8_000)])("nothing is near %s", (written) => {
  expect(nearNames(written, NAMES.slice(0, 5))).toEqual([])
})

test("the nearest comes first, and few are given", () => {
  expect(nearNames("cat", ["cart", "cat", "hat", "bat", "rat"])).toEqual(["cat", "cart", "hat"])
})
