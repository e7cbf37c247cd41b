import { expect, test } from "vitest"
import { type Drawing, openBook, type Shape, steppedLength } from "../../src/index.ts"
import { define, input } from "../helpers/small-book.ts"

const layers = [{ id: "all", title: "All", fill: "a" }]
const open = (shape: Shape) => {
  const drawing: Drawing = { id: "d", title: "D", says: "", look: "plan", layers, shapes: [shape] }
  return openBook({ ...define(input("width", "length", "4 m")), drawings: [drawing] })
}
const mark: Shape = { kind: "mark", layer: "all", mark: "ring", x: "width", y: ["-width"] }

test("a drawing of names that are there is let through", () => {
  expect(() => open(mark)).not.toThrow()
})

test.each<[string, Shape]>([
  ["wide", { ...mark, x: "wide" }],
  ["high", { ...mark, y: ["width", { half: "-high" }] }],
  ["bars.at", { ...mark, x: { of: "bars.at", row: 1 } }],
  ["bars", { ...mark, table: "bars" }],
  ["kind", { ...mark, where: { kind: 1 } }],
  ["other", { ...mark, layer: "other" }],
  [
    "said",
    {
      kind: "dimension",
      layer: "all",
      along: "x",
      from: [],
      to: "width",
      side: "before",
      tier: 1,
      says: "said",
    },
  ],
])("an unknown name is found when the template is loaded: %s", (name, shape) => {
  expect(() => open(shape)).toThrow(`"${name}"`)
})

test("a dragged length lands on whole steps, in the units shown", () => {
  // 20 ft = 6.096 m; 6.1 m is 240.16 in, so 240 in is nearest; 3 steps more are 243 in = 20' 3".
  expect(steppedLength(6.1, "1 in", 0, "us")).toBe(`20' 0"`)
  expect(steppedLength(6.1, "1 in", 3, "us")).toBe(`20' 3"`)
  expect(steppedLength(6.004, "10 mm", 0, "metric")).toBe("6,000 mm")
  expect(steppedLength(6.004, "10 mm", -1, "metric")).toBe("5,990 mm")
})
