import { expect, test } from "vitest"
import { openBook, rangeAround, sweptValues } from "../../src/index.ts"
import { bookOf, define, input } from "../helpers/small-book.ts"

const ENTRIES = [input("width", "length", `10' 0"`), input("name", "text", "x")]
const valuesFrom = (from: string, to: string, step: string, name = "width") =>
  sweptValues(define(...ENTRIES), bookOf(ENTRIES, { unitSystem: "us" }).document(), name, { from, to, step })

test("values a step apart, upwards and downwards, never past the end", () => {
  expect(valuesFrom("12 in", "24 in", "4 in")).toEqual({ values: [`1' 0"`, `1' 4"`, `1' 8"`, `2' 0"`] })
  expect(valuesFrom("24 in", "13 in", "4 in")).toEqual({ values: [`2' 0"`, `1' 8"`, `1' 4"`] })
  expect(valuesFrom("1 ft", "1 ft", "1 in")).toEqual({ values: [`1' 0"`] })
})

test("what cannot be read, and what would be too long, is a problem", () => {
  expect(valuesFrom("wide", "2 ft", "1 in")).toMatchObject({ problem: { at: { entry: "width" } } })
  expect(valuesFrom("1 ft", "2 ft", "0 in")).toMatchObject({
    problem: { code: "input_unreadable", given: "0 in" },
  })
  expect(valuesFrom("1 ft", "100 ft", "1/16 in")).toMatchObject({
    problem: { code: "too_many_values", most: 200 },
  })
  expect(valuesFrom("a", "b", "c", "name")).toHaveProperty("problem")
  expect(valuesFrom("1 ft", "2 ft", "1 in", "nothing")).toMatchObject({ problem: { code: "no_such_entry" } })
})

test("a range about the value in force, in the reader's units, within the input's limits", () => {
  const entries = [
    input("width", "length", `10' 0"`, { least: "9 ft" }),
    input("blank", "length", null),
    input("name", "text", "x"),
  ]
  const exploration = { step: { us: "6 in", metric: "150 mm" }, each: 3, results: [] }
  const around = (of: string, unitSystem: "us" | "metric" = "us") =>
    rangeAround(define(...entries), bookOf(entries, { unitSystem }).document(), { input: of, ...exploration })
  // Three steps up; down only two, to the least.
  expect(around("width")).toEqual({ from: `9' 0"`, to: `11' 6"`, step: "6 in" })
  // 10 ft is 3048 mm; 9 ft is 2743.2 mm, two steps of 150 mm below.
  expect(around("width", "metric")).toEqual({ from: "2,748 mm", to: "3,498 mm", step: "150 mm" })
  expect(around("blank")).toBeUndefined()
  expect(around("name")).toBeUndefined()
})

test("a template that explores by a name it has not is refused when it is opened", () => {
  const explorations = [
    { input: "width", step: { us: "1 ft", metric: "1 m" }, each: 1, results: ["nothing"] },
  ]
  expect(() => openBook({ ...define(...ENTRIES), explorations })).toThrow(/there is no nothing/)
})
