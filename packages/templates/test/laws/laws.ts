import { type Book, buildDecimalGraph, type Definition, inWords, openBook } from "@pegbook/engine"
import { buildHyperFormulaGraph } from "@pegbook/engine/hyperformula"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { template } from "../../src/index.ts"
import { legalInputs } from "../helpers/random-inputs.ts"
import { readingsOf, type Said, saidBy, sameValues } from "../helpers/same-values.ts"
import { addsUp, nothingForgotten } from "../work/balance.ts"

const SEED = 20261125
/** A hundred inputs shrink for minutes; the values that failed say enough. */
const SEEDED = { seed: SEED, endOnFailure: true }

const RUNS = 300
/** HyperFormula takes ten times as long over a whole new set of inputs; `npm run laws` tries it on every one. */
const LIBRARY_ONE_IN = process.env.PEGBOOK_LAWS === "whole" ? 1 : 10

/** What one random workbook must satisfy, whatever was entered. Each throws with the name of what is wrong. */
const LAWS: readonly ((book: Book, said: Said) => void)[] = [
  numbersAreSound,
  piecesFitTheirStock,
  totalsAreSumsOfRows,
  nothingForgotten,
  addsUp,
]

/**
 * The laws of a template over random legal inputs. One test file a template, so that they run side by side.
 */
export function lawsOf(id: string): void {
  const definition = template(id)
  if (definition === undefined) throw new Error(`there is no template ${id}`)
  describe(id, () => {
    test(`over ${RUNS} random inputs sums hold, nothing is forgotten, decimals agree, and HyperFormula on one in ${LIBRARY_ONE_IN}`, {
      timeout: 1_800_000,
    }, () => {
      console.info(`${id}: ${RUNS} random inputs, seed ${SEED}`)
      const { book: fast } = openBook(definition)
      const { book: slow } = openBook(definition, { graph: buildDecimalGraph })
      const { book: library } = openBook(definition, { graph: buildHyperFormulaGraph })
      let tried = 0
      fc.assert(
        fc.property(legalInputs(definition), (typed) => {
          edit(fast, typed)
          const said = saidBy(fast)
          for (const law of LAWS) law(fast, said)
          edit(slow, typed)
          sameValues(said, saidBy(slow))
          tried += 1
          if (tried % LIBRARY_ONE_IN !== 0) return
          edit(library, typed)
          sameValues(said, saidBy(library))
        }),
        { numRuns: RUNS, ...SEEDED },
      )
    })

    test("an edited workbook reads as one opened on the same inputs", { timeout: 240_000 }, () => {
      const { book: edited } = openBook(definition)
      fc.assert(
        fc.property(legalInputs(definition), (typed) => {
          edit(edited, typed)
          sameValues(saidBy(edited), saidBy(opened(definition, typed)))
        }),
        { numRuns: 10, ...SEEDED },
      )
    })

    test("other base units give the same physical answers", { timeout: 240_000 }, () => {
      const other = { length: "2.5e-10", mass: "3", time: "7", temperature: "1", money: "0.0001" }
      fc.assert(
        fc.property(legalInputs(definition), (typed) => {
          sameValues(saidBy(opened(definition, typed)), saidBy(opened(definition, typed, { scales: other })))
        }),
        { numRuns: 12, ...SEEDED },
      )
    })

    test("more load never needs less", { timeout: 240_000 }, () => {
      const { book } = openBook(definition, { graph: buildDecimalGraph })
      const watched = ["support_load_max", "soil_pressure_max"].filter((name) => book.has(name))
      expect(watched).not.toEqual([])
      fc.assert(
        fc.property(
          legalInputs(definition),
          fc.integer({ min: 20, max: 100 }),
          fc.integer({ min: 1, max: 80 }),
          (typed, load, more) => {
            edit(book, { ...typed, live_load: `${load} psf` })
            const before = watched.map((name) => Number(book.entry(name).reading?.value))
            edit(book, { live_load: `${load + more} psf` })
            watched.forEach((name, index) => {
              const [was, is] = [before[index] ?? Number.NaN, Number(book.entry(name).reading?.value)]
              if (!(is >= was * (1 - 1e-12))) throw new Error(`${name} fell from ${was} to ${is}`)
            })
          },
        ),
        { numRuns: 40, ...SEEDED },
      )
    })
  })
}

function edit(book: Book, typed: Record<string, string>): void {
  const [problem] = book.editAll(typed).problems
  if (problem !== undefined) throw new Error(inWords(problem, "us").says)
}

function opened(
  definition: Definition,
  typed: Record<string, string>,
  options: Parameters<typeof openBook>[1] = {},
): Book {
  const { book } = openBook(definition, options)
  edit(book, typed)
  return book
}

/** No value is infinite or no number, and no count is negative. */
function numbersAreSound(book: Book, said: Said): void {
  for (const [name, readings] of said) {
    for (const reading of readings) {
      if (typeof reading?.value !== "number") continue
      if (!Number.isFinite(reading.value)) throw new Error(`${name} is ${reading.value}`)
      if (reading.value < 0 && book.entry(name).measure === "count")
        throw new Error(`${name} is ${reading.value}, less than none`)
    }
  }
}

/** No piece of the cutting plan is longer than the board that it is cut from. */
function piecesFitTheirStock(book: Book): void {
  if (!book.has("cut_plan")) return
  const stock = readingsOf(book, "cut_plan.stock")
  readingsOf(book, "cut_plan.length").forEach((piece, row) => {
    if (Number(piece?.value) > Number(stock[row]?.value) + 1e-12) {
      throw new Error(`a piece of ${piece?.text} is cut from ${stock[row]?.text}`)
    }
  })
}

/** Totals that are said to be sums, added up here row by row. */
const TOTALS: readonly (readonly [total: string, column: string])[] = [
  ["board_feet", "stock_to_buy.board_feet"],
  ["dug_volume", "supports.dig_volume"],
  ["skid_bought_length", "skid_pieces.stock"],
  ["stone_in_place", "supports.stone_volume"],
  ["tile_cut_count", "tile_rows.cut"],
  ["timber_volume", "stock_to_buy.volume"],
]

function totalsAreSumsOfRows(book: Book): void {
  for (const [total, column] of TOTALS) {
    if (!book.has(total) || !book.has(column)) continue
    const said = Number(book.entry(total).reading?.value)
    const added = readingsOf(book, column).reduce((sum, reading) => sum + Number(reading?.value), 0)
    if (Math.abs(said - added) > 1e-9 * Math.abs(added))
      throw new Error(`${total} is ${said}, its rows add up to ${added}`)
  }
}
