import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { Decimal } from "../../src/quantity/decimal.ts"
import { printQuantity } from "../../src/units/print-value.ts"
import type { Rounding } from "../../src/units/rounding.ts"
import { anyLength } from "./arbitraries.ts"
import { quantity, refusal, si } from "./helpers.ts"

const INCH = new Decimal("0.0254")

/** Prints so many inches. */
function prints(inches: string, options: { denominator?: number; rounding?: Rounding } = {}): string {
  return printQuantity(quantity(new Decimal(inches).times(INCH), "length"), "length", "us", options)
}

describe("lengths are read", () => {
  // Ways in which builders and drawings write lengths: common practice, no source. 1 ft = 12 in, 1 in = 25.4 mm.
  const READ: readonly (readonly [typed: string, inches: string])[] = [
    ["10' 6 1/2\"", "126.5"],
    ["10’ 6 1/2”", "126.5"],
    ["10′ 6 1/2″", "126.5"],
    ["10' 6½\"", "126.5"],
    ["10' 6 ½''", "126.5"],
    ["10' 6-1/2\"", "126.5"],
    ["10'-6 1/2\"", "126.5"],
    ["10 ft 6-1/2 in", "126.5"],
    ["10 ft. 6 1/2 in.", "126.5"],
    ["10ft6-1/2in", "126.5"],
    ["10 feet 6.5 inches", "126.5"],
    ["10 FT 6.5 IN", "126.5"],
    ["126.5 in", "126.5"],
    ['126 1/2"', "126.5"],
    ["126.5", "126.5"],
    ["10'6", "126"],
    ["10' 6", "126"],
    ["10'-6", "126"],
    ["5 ft 10", "70"],
    ["5 ft 1/2", "60.5"],
    ["1 yd 1 ft 2 in", "50"],
    ["1/2", "0.5"],
    ["6-1/2", "6.5"],
    ["6 1⁄2", "6.5"],
    ["⅛", "0.125"],
    ["5/4", "1.25"],
    [".5", "0.5"],
    ["1,250.50", "1250.5"],
    ["1e3", "1000"],
    ["-3 in", "-3"],
    ["−3 in", "-3"],
    ["+3 in", "3"],
    ["-10' 6\"", "-126"],
    ["0", "0"],
    ["25.4 mm", "1"],
    ["2.54cm", "1"],
    ["0.3048 m", "12"],
    ["3 m 4 cm 8 mm", "120"],
    ['  12\t"  ', "12"],
  ]

  test.each(READ)("%s is %s in", (typed, inches) => {
    expect(si(typed, "length").toFixed()).toBe(new Decimal(inches).times(INCH).toFixed())
  })

  test("a bare number is in millimetres where metric units are shown", () => {
    expect(si("3200", "length", "metric").toFixed()).toBe("3.2")
    expect(si("3200mm", "length", "us").toFixed()).toBe("3.2")
    expect(si("3.2 m", "length", "us").toFixed()).toBe("3.2")
    expect(si("10' 6", "length", "metric").toFixed()).toBe("3.2004")
  })
})

describe("lengths that could be read in two ways, or in none, are refused", () => {
  test.each([
    "10' -6\"", // less six inches, or and six inches?
    "10' - 6\"",
    "3,2",
    "1,25",
    "12,34,567",
    "10 6",
    "10 6 1/2",
    "2 m 30", // centimetres or millimetres?
    "6 in 2 ft",
    "1 ft 2 ft",
    "1.5' 6\"",
    "10 1/2' 6\"",
    "6 5/4",
    "1'6\"3",
    "5 ft.10",
    "1/0",
    "1.2.3",
    "1.5/2",
    "--3",
    "3-",
    "feet",
    "'",
    "1e31",
    "1e999999999",
    "1e-999999999",
    "Infinity",
    "NaN",
    "__proto__",
    "0x10",
    "=1+1",
    "１２",
    "12\u0000 in",
    "12\u202e in",
  ])("%j", (typed) => {
    expect(refusal(typed, "length")).toMatch(/^input_un(readable|known_unit)$/)
  })
})

describe("lengths are printed", () => {
  test.each([
    ["0", '0"'],
    ["0.5", '1/2"'],
    ["6.8125", '6 13/16"'],
    ["11.5", '11 1/2"'],
    ["12", "1' 0\""],
    ["12.5", "1' 0 1/2\""],
    ["117", "9' 9\""],
    ["126.5", "10' 6 1/2\""],
    ["240", "20' 0\""],
    ["15006", "1,250' 6\""],
    ["-3", '-3"'],
    ["-126.5", "-10' 6 1/2\""],
    // Halves of a sixteenth go away from zero.
    ["0.03125", '1/16"'],
    ["-0.03125", '-1/16"'],
    ["0.03124", '0"'],
    ["-0.03124", '0"'],
    // Fifteen sixteenths and a half carry to the inch, and eleven inches of them to the foot.
    ["5.97", '6"'],
    ["11.97", "1' 0\""],
    ["23.97", "2' 0\""],
    ["-11.97", "-1' 0\""],
    ["11.96", '11 15/16"'],
  ])("%s in as %s", (inches, text) => {
    expect(prints(inches)).toBe(text)
  })

  test.each([
    ["11.99", 16, "down", '11 15/16"'],
    ["11.94", 16, "up", "1' 0\""],
    ["6.01", 16, "up", '6 1/16"'],
    ["6", 16, "up", '6"'],
    ["6.99", 16, "down", '6 15/16"'],
    ["-6.01", 16, "up", '-6"'],
    ["-6.01", 16, "down", '-6 1/16"'],
    ["6.19", 8, "nearest", '6 1/4"'],
    ["6.19", 8, "down", '6 1/8"'],
    ["6.1875", 4, "nearest", '6 1/4"'],
    ["6.7", 1, "nearest", '7"'],
    ["6.515625", 64, "nearest", '6 33/64"'],
  ] as const)("%s in, in 1/%s, %s, as %s", (inches, denominator, rounding, text) => {
    expect(prints(inches, { denominator, rounding })).toBe(text)
  })

  test("a denominator that is no whole number from 1 is a programmer's mistake", () => {
    expect(() => prints("6", { denominator: 0 })).toThrow(RangeError)
    expect(() => prints("6", { denominator: 2.5 })).toThrow(RangeError)
  })
})

test("what is printed reads as the length rounded to the step", () => {
  const modes = { nearest: Decimal.ROUND_HALF_UP, up: Decimal.ROUND_CEIL, down: Decimal.ROUND_FLOOR }
  fc.assert(
    fc.property(
      anyLength,
      fc.constantFrom(1, 2, 4, 8, 16, 32, 64),
      fc.constantFrom("nearest", "up", "down"),
      (length, denominator, rounding) => {
        const text = printQuantity(quantity(length, "length"), "length", "us", { denominator, rounding })
        const step = INCH.div(denominator)
        const rounded = length.div(step).toDecimalPlaces(0, modes[rounding]).times(step)
        expect(si(text, "length").eq(rounded), `${text} for ${length} m`).toBe(true)
      },
    ),
  )
})
