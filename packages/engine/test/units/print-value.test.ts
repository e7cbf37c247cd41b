import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { Decimal } from "../../src/quantity/decimal.ts"
import type { MeasureId, UnitSystem } from "../../src/units/measure.ts"
import { NUMBER_FORMS, type NumberMeasureId } from "../../src/units/measures.ts"
import { printedTo, printQuantity } from "../../src/units/print-value.ts"
import { fromSi } from "../../src/units/unit.ts"
import { anyDecimal } from "./arbitraries.ts"
import { quantity, si } from "./helpers.ts"

/** Prints what was typed. */
function prints(typed: string, measure: MeasureId, system: UnitSystem): string {
  return printQuantity(quantity(si(typed, measure, system), measure), measure, system)
}

describe("quantities are printed", () => {
  test.each([
    ["length", "metric", "3200.4 mm", "3,200 mm"],
    ["length", "metric", "9.96 mm", "10 mm"],
    ["length", "metric", "6.35 mm", "6.4 mm"],
    ["length", "metric", "0", "0 mm"],
    ["length", "metric", "-2.54 mm", "-2.5 mm"],
    ["small_length", "us", "0.03449 in", "0.034 in"],
    ["small_length", "us", "1 1/2 in", "1.5 in"],
    ["small_length", "us", "-0.00042 in", "-0.0004 in"],
    ["small_length", "us", "0.0096 in", "0.01 in"],
    ["small_length", "us", "0", "0 in"],
    ["small_length", "metric", "0.034 in", "0.86 mm"],
    ["small_length", "metric", "12.34 mm", "12.3 mm"],
    ["small_length", "metric", "0.0104 mm", "0.01 mm"],
    ["area", "us", "192 sq ft", "192 sq ft"],
    ["area", "us", "2.7778 sq ft", "2.78 sq ft"],
    ["area", "metric", "0.0625 m²", "0.0625 m²"],
    ["bulk_volume", "us", "2.5 cu yd", "2.5 cu yd"],
    ["mass", "us", "1250 lb", "1,250 lb"],
    ["force", "us", "1250 lb", "1,250 lb"],
    ["force", "metric", "5.5603 kN", "5.56 kN"],
    ["pressure", "us", "40 psf", "40 psf"],
    ["pressure", "metric", "40 psf", "1.92 kPa"],
    ["stress", "us", "1600000 psi", "1,600,000 psi"],
    ["stress", "metric", "850 psi", "5.86 MPa"],
    ["moment", "us", "500 lb·ft", "500 lb·ft"],
    ["moment", "metric", "500 lb·ft", "0.678 kN·m"],
    ["line_load", "us", "60 plf", "60 lb/ft"],
    ["density", "us", "150 pcf", "150 lb/cu ft"],
    ["density", "metric", "150 pcf", "2,403 kg/m³"],
    ["temperature", "us", "70 °F", "70 °F"],
    ["temperature", "metric", "70 °F", "21.1 °C"],
    ["temperature_difference", "us", "20 F deg", "20 F deg"],
    ["temperature_difference", "metric", "20 F deg", "11.1 K"],
    ["expansion", "us", "0.000121", "121 millionths per K"],
    ["angle", "us", "30", "30°"],
    ["time", "us", "2.25 h", "2 h 15 min"],
    ["time", "us", "45 min", "45 min"],
    ["time", "us", "59.5 min", "1 h 0 min"],
    ["energy", "us", "450 Wh", "450 Wh"],
    ["count", "us", "12345", "12,345"],
    ["share", "us", "7.5 %", "7.5 %"],
    ["ratio", "us", "0.568349", "0.5683"],
    ["ratio", "us", "0.000001", "0.000001"],
    ["ratio", "us", "1234.5", "1,235"],
    ["ratio", "us", "-1.25", "-1.25"],
    ["money", "us", "1250.5", "1,250.50"],
    ["money", "us", "-0.001", "0.00"],
    ["money_per_area", "us", "12.5 per sq ft", "12.50 per sq ft"],
  ] as const)("%s, %s: %s as %s", (measure, system, typed, text) => {
    expect(prints(typed, measure, system)).toBe(text)
  })

  test("with a sign where it is asked for, except for what prints as nothing", () => {
    const signed = (inches: string): string =>
      printQuantity(quantity(new Decimal(inches).times("0.0254"), "length"), "length", "us", { signed: true })
    expect(["3", "0.5", "-3", "0", "0.001", "120"].map(signed)).toEqual([
      '+3"',
      '+1/2"',
      '-3"',
      '0"',
      '0"',
      "+10' 0\"",
    ])
  })

  test("noise of doubles prints as nothing", () => {
    expect(printQuantity(quantity("-1.2e-17", "force"), "force", "metric")).toBe("0 kN")
  })

  test("another dimension, or no finite number, is a programmer's mistake", () => {
    expect(() => printQuantity(quantity("1", "area"), "length", "us")).toThrow(/as length/)
    expect(() => printQuantity(quantity("1", "length"), "text", "us")).toThrow(RangeError)
    expect(() => printQuantity(quantity("Infinity", "length"), "length", "us")).toThrow(RangeError)
    expect(() => printQuantity(quantity("NaN", "mass"), "mass", "us")).toThrow(RangeError)
  })
})

test("how finely is said in words", () => {
  expect(printedTo("length", "us")).toBe("nearest 1/16 in")
  expect(printedTo("length", "metric")).toBe("nearest 1 mm; below 10 mm, nearest 0.1 mm")
  expect(printedTo("time", "us")).toBe("nearest 1 min")
  expect(printedTo("money", "us")).toBe("nearest 0.01")
  expect(printedTo("mass", "us")).toBe("nearest 1 lb; below 100 lb, nearest 0.1 lb; below 1 lb, 3 digits")
  expect(printedTo("text", "us")).toBe("as typed")
})

/** The value of the last place that a text may show: what its style allows at that size. */
function step(number: Decimal, id: NumberMeasureId, system: UnitSystem): Decimal {
  const { style } = NUMBER_FORMS[id].writing[system]
  if (style.kind === "parts") return new Decimal(1).div(style.denominator)
  const taken = style.steps.find(({ below }) => below === undefined || number.abs().lt(below))
  if (taken === undefined || number.isZero()) return new Decimal(1)
  if ("decimals" in taken) return new Decimal(10).pow(-taken.decimals)
  return new Decimal(10).pow(Math.max(-9, number.e - taken.significant + 1))
}

test("what is printed reads as the quantity, to half of the last place", () => {
  const ids = Object.keys(NUMBER_FORMS) as NumberMeasureId[]
  fc.assert(
    fc.property(
      fc.constantFrom(...ids),
      fc.constantFrom("us", "metric"),
      anyDecimal,
      fc.integer({ min: 0, max: 12 }),
      (id, system, amount, smaller) => {
        // A temperature is kept clear of the natural zero, below which its rounding would be refused.
        const number =
          id === "temperature" ? amount.abs().plus(1) : amount.times(new Decimal(10).pow(-smaller))
        const text = printQuantity(quantity(number, id), id, system)
        const { style } = NUMBER_FORMS[id].writing[system]
        const unit = style.kind === "parts" ? style.minor : style.unit
        const meant = fromSi(number, unit)
        const back = fromSi(si(text, id, system), unit)
        const half = step(meant, id, system).div(2).times("1.0000000001")
        expect(back.minus(meant).abs().lte(half), `${text} for ${meant}`).toBe(true)
        expect(printQuantity(quantity(si(text, id, system), id), id, system)).toBe(text)
      },
    ),
    { numRuns: 2000 },
  )
})
