import { inWords, openBook } from "@pegbook/engine"
import fc from "fast-check"
import { test } from "vitest"
import { template } from "../../../src/index.ts"
import { legalInputs } from "../../helpers/random-inputs.ts"
import { addsUp, nothingForgotten } from "../balance.ts"

const SEED = 20261125
/** Of each template; there is a file for each, so that they run beside each other. */
const RUNS = 40

/** Holds what is bought against what the stages use in random designs: one workbook, typed over whole each time. */
export function nothingForgottenIn(id: string): void {
  const definition = template(id)
  if (definition === undefined) throw new Error(`there is no template ${id}`)
  test(`${definition.id}: nothing is forgotten in ${RUNS} random designs, seed ${SEED}`, {
    timeout: 300_000,
  }, () => {
    const { book } = openBook(definition)
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        const [problem] = book.editAll(typed).problems
        if (problem !== undefined) throw new Error(inWords(problem, "us").says)
        nothingForgotten(book)
        addsUp(book)
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  })
}
