import { createRequire } from "node:module"
import { join } from "node:path"
import { FUNCTIONS } from "@pegbook/engine"
import { expect, test } from "vitest"
import { FUNCTION_FAMILIES } from "../../packages/ui/build/evaluator.ts"
import { root } from "../files.ts"

/*
 * The page is built without the functions of the evaluator that no formula can name (packages/ui/build/evaluator.ts). The
 * evaluator itself is asked which family each function belongs to.
 */

interface Evaluator {
  getFunctionPlugin(name: string): { readonly name: string } | undefined
}

const { HyperFormula } = createRequire(join(root, "packages/engine/package.json"))("hyperformula") as {
  HyperFormula: Evaluator
}

/** Written by the graph itself, for what it says of functions, faults and texts. */
const WRITTEN = ["CHAR", "COUNTIFS", "FLOOR", "INDEX", "MATCH", "NA", "SQRT", "SUM"]
/** Never handed on: the graph writes INDEX and MATCH in its place. */
const NOT_HANDED_ON = ["LOOKUP"]

test("every function of formulas, and every one that the graph writes, is in what is built", () => {
  const names = [...FUNCTIONS.keys(), ...WRITTEN].filter((name) => !NOT_HANDED_ON.includes(name))
  expect(names.length).toBeGreaterThan(40)
  const left = names.filter((name) => {
    const family = HyperFormula.getFunctionPlugin(name)?.name
    return family === undefined || !FUNCTION_FAMILIES.includes(family)
  })
  expect(left).toEqual([])
})

test("no family is built that nothing needs", () => {
  const needed = new Set(
    [...FUNCTIONS.keys(), ...WRITTEN].map((name) => HyperFormula.getFunctionPlugin(name)?.name),
  )
  expect(FUNCTION_FAMILIES.filter((family) => !needed.has(family))).toEqual([])
})
