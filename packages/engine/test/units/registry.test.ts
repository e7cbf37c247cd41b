import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { Decimal } from "../../src/quantity/decimal.ts"
import { sameDimension } from "../../src/quantity/dimension.ts"
import { NUMBER_FORMS } from "../../src/units/measures.ts"
import { ALL_UNITS, isUnit } from "../../src/units/registry.ts"
import { fromSi, toSi, type Unit } from "../../src/units/unit.ts"
import { UnitIndex } from "../../src/units/unit-index.ts"
import { anyDecimal } from "./arbitraries.ts"

const FORMS = Object.entries(NUMBER_FORMS)

describe("spellings", () => {
  test.each(FORMS)("of %s lead each to the unit that claims them", (_id, form) => {
    const astray = form.units.flatMap((unit) => unit.names.filter((name) => form.index.find(name) !== unit))
    expect(astray).toEqual([])
  })

  test.each(FORMS)("of %s are units of its own dimension, and are registered", (_id, form) => {
    expect(form.units.filter(({ dimension }) => !sameDimension(dimension, form.dimension))).toEqual([])
    expect(form.units.filter((unit) => !ALL_UNITS.includes(unit))).toEqual([])
    expect(form.units.flatMap(({ names }) => names).filter((name) => !isUnit(name))).toEqual([])
  })

  test("ids are unique", () => {
    expect(new Set(ALL_UNITS.map(({ id }) => id)).size).toBe(ALL_UNITS.length)
  })

  test("one that two units claim is refused, whatever its capitals", () => {
    const [first, second] = ALL_UNITS
    if (first === undefined || second === undefined) throw new Error("no units")
    const twins = [
      { ...first, id: "one", names: ["Foo"] },
      { ...second, id: "two", names: ["foo."] },
    ]
    expect(() => new UnitIndex(twins)).toThrow(/"foo\." is claimed by the units one and two/)
  })

  const found = (spelling: string): string | undefined =>
    new UnitIndex(ALL_UNITS.filter(isPressure)).find(spelling)?.id
  const isPressure = (unit: Unit): boolean => sameDimension(unit.dimension, NUMBER_FORMS.pressure.dimension)

  test.each([
    ["PSF", "psf"],
    ["Psf", "psf"],
    ["lb / sq. ft.", "psf"],
    ["lb/ft²", "psf"],
    ["lb/ft^2", "psf"],
    ["lb per sq ft", "psf"],
    ["mpa", "MPa"],
    ["N/mm²", "MPa"],
    // A thousandth must not be read as a million.
    ["mPa", undefined],
    ["__proto__", undefined],
  ])("%s is read as %s", (spelling, id) => {
    expect(found(spelling)).toBe(id)
  })
})

test("every unit converts there and back to 1e-30", () => {
  fc.assert(
    fc.property(fc.constantFrom(...ALL_UNITS), anyDecimal, (unit, amount) => {
      const back = fromSi(toSi(amount, unit), unit)
      const scale = Decimal.max(1, amount.abs())
      expect(back.minus(amount).abs().div(scale).lt("1e-30")).toBe(true)
    }),
  )
})
