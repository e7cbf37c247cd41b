import { type Book, buildDecimalGraph, type Definition, openBook, type Reading } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../src/index.ts"
import { legalInputs } from "./helpers/random-inputs.ts"

const RUNS = 500
const SEED = 20261125
/** A hundred inputs shrink for minutes; the values that failed say enough. */
const SEEDED = { seed: SEED, endOnFailure: true }

/** Every value of a workbook: one for an entry, one a row for a column. */
function valuesOf(book: Book): ReadonlyMap<string, readonly (Reading | null)[]> {
  return new Map(
    book.names().map((name) => {
      const view = book.entry(name)
      return [name, view.readings ?? [view.reading ?? null]]
    }),
  )
}

/** Fails with the entry's name where two workbooks differ by more than a share of 1e-9; counts must be the same. */
function expectSame(a: Book, b: Book): void {
  const right = valuesOf(b)
  for (const [name, readings] of valuesOf(a)) {
    const others = right.get(name) ?? []
    expect(others.length, `${name}: rows`).toBe(readings.length)
    for (const [index, reading] of readings.entries()) {
      const other = others[index] ?? null
      const where = `${name}${readings.length > 1 ? `, row ${index + 1}` : ""}: ${reading?.text} and ${other?.text}`
      if (typeof reading?.value === "number" && typeof other?.value === "number") {
        const difference = Math.abs(reading.value - other.value)
        const allowed = reading.unit === "1" && Number.isInteger(reading.value) ? 0 : 1e-9
        // Millionths of a nanometre: what is left of a difference of two like lengths is noise.
        expect(difference <= allowed * Math.abs(reading.value) + 1e-15, where).toBe(true)
      } else expect(other?.value, where).toBe(reading?.value)
    }
  }
}

function opened(
  definition: Definition,
  typed: Record<string, string>,
  options: Parameters<typeof openBook>[1] = {},
): Book {
  const { book } = openBook(definition, options)
  const result = book.editAll(typed)
  expect(result.problems).toEqual([])
  return book
}

describe.each(TEMPLATES.map((definition) => [definition.id, definition] as const))("%s", (id, definition) => {
  test(`HyperFormula and the decimal evaluator agree over ${RUNS} random legal inputs`, {
    timeout: 600_000,
  }, () => {
    console.info(`${id}: ${RUNS} random inputs, seed ${SEED}`)
    const { book: fast } = openBook(definition)
    const { book: slow } = openBook(definition, { graph: buildDecimalGraph })
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        expect(fast.editAll(typed).problems).toEqual([])
        slow.editAll(typed)
        expectSame(fast, slow)
      }),
      { numRuns: RUNS, ...SEEDED },
    )
  })

  test("an edited workbook reads as one opened on the same inputs", { timeout: 120_000 }, () => {
    const { book: edited } = openBook(definition)
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        edited.editAll(typed)
        expectSame(edited, opened(definition, typed))
      }),
      { numRuns: 20, ...SEEDED },
    )
  })

  test("other base units give the same physical answers", { timeout: 120_000 }, () => {
    const other = { length: "2.5e-10", mass: "3", time: "7", temperature: "1", money: "0.0001" }
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        expectSame(opened(definition, typed), opened(definition, typed, { scales: other }))
      }),
      { numRuns: 30, ...SEEDED },
    )
  })
})
