import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { frenchNumber, keptNumber } from "../../src/language/french-numbers.ts"
import { Decimal } from "../../src/quantity/decimal.ts"
import type { MeasureId, UnitSystem } from "../../src/units/measure.ts"
import { NUMBER_FORMS } from "../../src/units/measures.ts"
import { printQuantity } from "../../src/units/print-value.ts"
import { readValue } from "../../src/units/read-value.ts"

const MEASURES = Object.keys(NUMBER_FORMS) as (keyof typeof NUMBER_FORMS)[]
const SYSTEMS: readonly UnitSystem[] = ["us", "metric"]

/** By the style guide of Canada's federal government in French: comma for decimals, space for thousands (from memory). */
describe("as it is written in Canada", () => {
  test.each([
    ["1,250.50", "money", "1\u202f250,50\u00a0$"],
    ["17.8 m²", "area", "17,8\u00a0m²"],
    ["192 sq ft", "area", "192\u00a0pi²"],
    ["2.5 cu yd", "bulk_volume", "2,5\u00a0vg³"],
    ["1,500 psf", "pressure", "1\u202f500\u00a0lb/pi²"],
    ["12.50 per sq ft", "money_per_area", "12,50\u00a0$/pi²"],
    ["10' 6 1/2\"", "length", "10' 6 1/2\""],
    ["40 F deg", "temperature_difference", "40\u00a0°F"],
    ["12345.50", "money", "12\u202f345,50\u00a0$"],
    ["2438 mm", "length", "2438\u00a0mm"],
    ["-0.5 %", "share", "-0,5\u00a0%"],
  ] as const)("%s", (printed, measure, french) => {
    expect(frenchNumber(printed, measure)).toBe(french)
  })
})

describe("as it is kept", () => {
  test.each([
    ["1,5 m", "1.5 m"],
    ["1.5 m", "1.5 m"],
    ["1 250,5 pi²", "1250.5 sq ft"],
    ["1\u202f250 kg", "1250 kg"],
    ["8 pi 2 1/2 po", "8 ft 2 1/2 in"],
    ["3 pieds", "3 ft"],
    ["6 1/2", "6 1/2"],
    ["6 125/128 po", "6 125/128 in"],
    ["1,250.5", "1250.5"],
    ["100 lb/pi³", "100 lb/cu ft"],
    ["2 vg³", "2 cu yd"],
    ["12 po", "12 in"],
    ["n'importe quoi", "n'importe quoi"],
  ])("%s", (typed, kept) => {
    expect(keptNumber(typed)).toBe(kept)
  })
})

test.each(MEASURES)("what is shown of %s reads back as what was printed", (measure: MeasureId) => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1e7, noNaN: true }),
      fc.constantFrom(...SYSTEMS),
      (amount, system) => {
        const dimension = NUMBER_FORMS[measure as keyof typeof NUMBER_FORMS].dimension
        const si = new Decimal(measure === "count" ? Math.round(amount) : amount)
        const printed = printQuantity({ si, dimension }, measure, system)
        const kept = keptNumber(frenchNumber(printed, measure))
        expect(readValue(kept, measure, system)).toEqual(readValue(printed, measure, system))
      },
    ),
  )
})
