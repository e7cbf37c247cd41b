import { expect, test } from "vitest"
import { sweptValues } from "../../src/index.ts"
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
