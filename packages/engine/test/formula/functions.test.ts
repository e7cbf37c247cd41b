import { describe, expect, test } from "vitest"
import { checkTypes } from "../../src/formula/check-types.ts"
import { EXAMPLE_TABLE } from "../../src/formula/functions/function-rule.ts"
import { FUNCTIONS } from "../../src/formula/functions/index.ts"
import { PLAIN_NUMBER, TEXT } from "../../src/formula/value-type.ts"
import { read } from "./small-language.ts"

/** The functions that formulas may lean on; one that goes missing breaks saved workbooks. */
const PROMISED =
  "IF AND OR NOT TRUE FALSE MIN MAX SUM ROUND ROUNDUP ROUNDDOWN TRUNC CEILING FLOOR INT MOD ABS SQRT POWER " +
  "SIN COS TAN ASIN ACOS ATAN ATAN2 DEGREES RADIANS EXP LN PI COUNT COUNTIF SUMIF SUMPRODUCT AVERAGE INDEX " +
  "MATCH LOOKUP IFERROR CONCATENATE ROW NA"

test("every promised function is there, once", () => {
  expect([...FUNCTIONS.keys()].sort()).toEqual(PROMISED.split(" ").sort())
})

describe.each([...FUNCTIONS.values()])("$name", (rule) => {
  test("says what it gives in one sentence", () => {
    expect(rule.says).toMatch(/^[A-Z].*\.$/)
    expect(rule.least).toBeLessThanOrEqual(rule.most)
  })

  test("has an example that uses it and fits", () => {
    expect(rule.example.formula).toContain(`${rule.name}(`)
    const types: Readonly<Record<string, typeof PLAIN_NUMBER>> = {
      "parts.item": TEXT,
      "parts.size": PLAIN_NUMBER,
      "parts.count": PLAIN_NUMBER,
    }
    expect(Object.keys(types)).toEqual(Object.keys(EXAMPLE_TABLE.columns).map((name) => `parts.${name}`))
    const judged = checkTypes(
      read(rule.example.formula),
      (name) => {
        const type = types[name]
        return type && { type, column: true }
      },
      true,
    )
    expect(judged.problems).toEqual([])
    const kinds = { string: ["text"], boolean: ["yes_no"], number: ["number", "zero"] }
    expect(kinds[typeof rule.example.gives as keyof typeof kinds]).toContain(judged.shape?.type.kind)
  })
})
