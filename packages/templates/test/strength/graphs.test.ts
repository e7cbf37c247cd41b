import { buildDecimalGraph, openBook } from "@pegbook/engine"
import { buildHyperFormulaGraph } from "@pegbook/engine/hyperformula"
import fc from "fast-check"
import { expect, test } from "vitest"
import { QUICK_TEMPLATES } from "../../src/index.ts"
import { legalInputs } from "../helpers/random-inputs.ts"
import { saidBy, sameValues } from "../helpers/same-values.ts"

const RUNS = 15
const SEED = 20261205

test.each(QUICK_TEMPLATES.map((definition) => [definition.id, definition] as const))(
  `%s: the evaluators agree over ${RUNS} random legal inputs`,
  (id, definition) => {
    console.info(`${id}: ${RUNS} random inputs, seed ${SEED}`)
    const { book: fast } = openBook(definition)
    const others = [buildDecimalGraph, buildHyperFormulaGraph].map(
      (graph) => openBook(definition, { graph }).book,
    )
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        expect(fast.editAll(typed).problems).toEqual([])
        for (const book of others) {
          book.editAll(typed)
          sameValues(saidBy(fast), saidBy(book))
        }
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  },
  240_000,
)
