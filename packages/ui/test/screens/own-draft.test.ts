import { expect, test } from "vitest"
import {
  draftOf,
  EMPTY,
  fieldsOf,
  nameFrom,
  withName,
  wordBefore,
} from "../../src/screens/worksheet/own/draft.ts"

test("a name for formulas is made from the words", () => {
  expect(nameFrom("Height of the gate")).toBe("height_of_the_gate")
  expect(nameFrom("  Größe, ca. 3/4 ")).toBe("gro_e_ca_3_4")
  expect(nameFrom("2 gates")).toBe("n_2_gates")
  expect(nameFrom("x".repeat(90))).toHaveLength(60)
  expect(nameFrom("???")).toBe("")
})

test("the word before the caret is what is completed; a name put in does not run into its neighbours", () => {
  expect(wordBefore("a + joist_c * 2", 11)).toEqual({ word: "joist_c", start: 4 })
  expect(wordBefore("a + ", 4)).toEqual({ word: "", start: 4 })
  expect(withName("a + jo", 4, 6, "joist_count")).toEqual({ text: "a + joist_count", caret: 15 })
  expect(withName("ab", 1, 1, "x").text).toBe("a x b")
})

test("what is changed comes back into the form as it was given", () => {
  const common = { ...EMPTY, label: "Gate", name: "gate", why: "To get in", source: "A page" }
  for (const fields of [
    { ...common, kind: "input" as const, value: "4 ft" },
    { ...common, kind: "figure" as const, measure: "mass" as const, value: "4 lb" },
    { ...common, kind: "formula" as const, formula: "a + b" },
    { ...common, kind: "column" as const, table: "joists", formula: "x * 2" },
    { ...common, kind: "check" as const, demand: "a", limit: "b", sense: "at_least" as const },
  ])
    expect(fieldsOf(draftOf(fields))).toEqual(fields)
})

test("a figure without a source is a draft without one, so that the workbook asks for it", () => {
  expect(draftOf({ ...EMPTY, kind: "figure", label: "Found", value: "3 in" })).not.toHaveProperty("sources")
})
