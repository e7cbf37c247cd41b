import { type Book, buildDecimalGraph, openBook, type Reading } from "@pegbook/engine"
import { buildHyperFormulaGraph } from "@pegbook/engine/hyperformula"
import fc from "fast-check"
import { expect, test } from "vitest"
import { QUICK_TEMPLATES } from "../../src/index.ts"
import { legalInputs } from "../helpers/random-inputs.ts"

const RUNS = 15
const SEED = 20261205

const valuesOf = (book: Book): readonly (readonly [name: string, readings: readonly (Reading | null)[]])[] =>
  book.names().map((name) => {
    const view = book.entry(name)
    return [name, view.readings ?? [view.reading ?? null]]
  })

function sameValues(book: Book, others: ReadonlyMap<string, readonly (Reading | null)[]>): void {
  for (const [name, readings] of valuesOf(book)) {
    readings.forEach((reading, row) => {
      const other = others.get(name)?.[row] ?? null
      if (typeof reading?.value === "number" && typeof other?.value === "number") {
        const difference = Math.abs(reading.value - other.value)
        expect(difference, name).toBeLessThanOrEqual(1e-9 * Math.abs(reading.value) + 1e-15)
      } else expect(other?.value, name).toBe(reading?.value)
    })
  }
}

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
          sameValues(fast, new Map(valuesOf(book)))
        }
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  },
  240_000,
)
