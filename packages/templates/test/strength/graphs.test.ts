import { type Book, buildDecimalGraph, openBook, type Reading } from "@pegbook/engine"
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

test.each(QUICK_TEMPLATES.map((definition) => [definition.id, definition] as const))(
  `%s: both evaluators agree over ${RUNS} random legal inputs`,
  (id, definition) => {
    console.info(`${id}: ${RUNS} random inputs, seed ${SEED}`)
    const { book: fast } = openBook(definition)
    const { book: slow } = openBook(definition, { graph: buildDecimalGraph })
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        expect(fast.editAll(typed).problems).toEqual([])
        slow.editAll(typed)
        const others = new Map(valuesOf(slow))
        for (const [name, readings] of valuesOf(fast)) {
          readings.forEach((reading, row) => {
            const other = others.get(name)?.[row] ?? null
            if (typeof reading?.value === "number" && typeof other?.value === "number") {
              const difference = Math.abs(reading.value - other.value)
              expect(difference, name).toBeLessThanOrEqual(1e-9 * Math.abs(reading.value) + 1e-15)
            } else expect(other?.value, name).toBe(reading?.value)
          })
        }
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  },
  240_000,
)
