import { expect, test } from "vitest"
import { formulaParts } from "../../src/parts/formula-parts.ts"

const NAMES = new Set(["joist_count", "supports", "supports.dig", "supports.x", "x"])
const has = (name: string) => NAMES.has(name)
const named = (formula: string, table?: string) =>
  formulaParts(formula, has, table).flatMap((part) => (part.name === undefined ? [] : [part.name]))

test("the parts, put together, are the formula", () => {
  const formulas = ['IF(joist_count > 3; "joist_count is ""x"""; supports.dig)', "", "1 + 2", "joist_count"]
  for (const formula of formulas) {
    expect(
      formulaParts(formula, has)
        .map((part) => part.text)
        .join(""),
    ).toBe(formula)
  }
})

test("names are found, functions and words in quotes are not", () => {
  expect(named('ROUNDUP(joist_count; 0) & "x" & SUM(supports.dig)')).toEqual(["joist_count", "supports.dig"])
})

test("in a table's formula a bare word is first a column of that table", () => {
  expect(named("x + joist_count", "supports")).toEqual(["supports.x", "joist_count"])
  expect(named("x + joist_count")).toEqual(["x", "joist_count"])
})
