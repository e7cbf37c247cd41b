import DecimalJs from "decimal.js"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { Decimal } from "../../src/quantity/decimal.ts"
import {
  BASE_DIMENSIONS,
  dimension,
  isPlain,
  multiplyDimensions,
  PLAIN,
  raiseDimension,
  sameDimension,
} from "../../src/quantity/dimension.ts"
import { scaleOf, USUAL_SCALES } from "../../src/quantity/scales.ts"

const anyDimension = fc
  .record(Object.fromEntries(BASE_DIMENSIONS.map((base) => [base, fc.integer({ min: -3, max: 3 })])))
  .map(dimension)

describe("our decimals", () => {
  test("keep 40 digits and round halves away from zero", () => {
    expect(new Decimal(1).div(3).toFixed()).toBe(`0.${"3".repeat(40)}`)
    expect(new Decimal("2.5").toDecimalPlaces(0).toFixed()).toBe("3")
    expect(new Decimal("-2.5").toDecimalPlaces(0).toFixed()).toBe("-3")
    expect(new Decimal("0.1").plus("0.2").toFixed()).toBe("0.3")
  })

  test("are not changed by what others set on the library", () => {
    const before = DecimalJs.precision
    DecimalJs.set({ precision: 5 })
    expect(new Decimal(2).div(3).toFixed()).toHaveLength(42)
    DecimalJs.set({ precision: before })
  })
})

describe("dimensions", () => {
  test("leave out what is zero, so that equal ones have one shape", () => {
    expect(dimension({ length: 1, mass: 0 })).toEqual({ exponents: { length: 1 } })
    expect(isPlain(dimension({ length: 0 }))).toBe(true)
  })

  test("a point of a scale is not a difference", () => {
    const difference = dimension({ temperature: 1 })
    expect(sameDimension(difference, { ...difference, point: true })).toBe(false)
  })

  test("multiply like numbers", () => {
    fc.assert(
      fc.property(anyDimension, anyDimension, fc.integer({ min: -3, max: 3 }), (a, b, power) => {
        expect(multiplyDimensions(a, b)).toEqual(multiplyDimensions(b, a))
        expect(multiplyDimensions(a, a, -1)).toEqual(PLAIN)
        expect(multiplyDimensions(multiplyDimensions(a, b), b, -1)).toEqual(a)
        expect(raiseDimension(multiplyDimensions(a, b), power)).toEqual(
          multiplyDimensions(raiseDimension(a, power), b, power),
        )
      }),
    )
  })
})

describe("the graph's scales", () => {
  test("hold lengths in whole nanometres, as are all inch fractions to 1/64 (1 in = 25.4 mm exactly)", () => {
    const scale = scaleOf(dimension({ length: 1 }), USUAL_SCALES)
    expect(new Decimal("0.0254").div(scale).toFixed()).toBe("25400000")
    expect(new Decimal("0.0254").div(64).div(scale).toFixed()).toBe("396875")
  })

  test("are products of the base units' scales", () => {
    expect(scaleOf(dimension({ length: 3 }), USUAL_SCALES).eq("1e-27")).toBe(true)
    expect(scaleOf(dimension({ mass: 1, length: -3 }), USUAL_SCALES).eq("1e27")).toBe(true)
    expect(scaleOf(dimension({ money: 1, length: -2 }), USUAL_SCALES).eq("1e16")).toBe(true)
    expect(scaleOf(PLAIN, USUAL_SCALES).eq(1)).toBe(true)
  })
})
