import { describe, expect, test } from "vitest"
import { Decimal } from "../../src/quantity/decimal.ts"
import { ALL_UNITS } from "../../src/units/registry.ts"
import { toSi } from "../../src/units/unit.ts"

/** How many SI coherent units one of the unit is, to 40 digits. */
function si(id: string): Decimal {
  const unit = ALL_UNITS.find((each) => each.id === id)
  if (unit === undefined) throw new RangeError(`no unit ${id}`)
  return toSi(new Decimal(1), unit)
}

describe("factors as printed (records l-001 to l-012 of the reference collection)", () => {
  // NIST SP 811, Appendix B (l-001, l-002: read) and a soil testing manual's appendix of conversion factors
  // (l-003 to l-011: read). l-012: recalled from NIST HB 44 and SP 811, from memory.
  // "cut": the printed figure was cut off, not rounded, and is short in its last place.
  const PRINTED: readonly (readonly [
    string,
    unit: string,
    times: string,
    printed: string,
    how: "rounded" | "cut",
  ])[] = [
    ["l-001", "ft", "1", "0.3048", "rounded"],
    ["l-002", "lb", "1", "0.4535924", "rounded"],
    ["l-003", "yd3", "1", "0.7646", "rounded"],
    ["l-004", "ft3", "1", "0.02831", "cut"], // 0.028 316 8…, which rounds to 0.02832
    ["l-005", "psf", "1", "47.8803", "rounded"],
    ["l-006", "psi", "0.001", "6.8947", "cut"], // 6.894 757…, in kPa
    ["l-007", "lb/yd3", "1", "0.5932", "cut"], // 0.593 276…
    ["l-008", "lb/ft3", "1", "16.0185", "rounded"],
    ["l-009", "ft2", "1", "0.0929", "rounded"],
    ["l-010", "lbf.ft", "1", "1.3558", "rounded"],
    ["l-011", "short_ton", "1", "907.184", "cut"], // 907.184 74 exactly
    ["l-012", "gal", "1000", "3.785412", "rounded"], // in litres
    ["l-012", "yd3", "1", "0.7645549", "rounded"],
    ["l-012", "psf", "1", "47.88026", "rounded"],
    ["l-012", "acre", "1", "4046.856", "rounded"],
  ]

  test.each(PRINTED)("%s: %s × %s is %s, %s", (_record, unit, times, printed, how) => {
    const places = printed.split(".")[1]?.length ?? 0
    const mode = how === "rounded" ? Decimal.ROUND_HALF_UP : Decimal.ROUND_DOWN
    expect(si(unit).times(times).toDecimalPlaces(places, mode).toFixed()).toBe(printed)
  })
})

describe("exact definitions (NIST SP 811 Appendix B, NIST HB 44 Appendix C; from memory but for ft and lb)", () => {
  const EXACT: readonly (readonly [string, string])[] = [
    ["in", "0.0254"],
    ["ft", "0.3048"],
    ["yd", "0.9144"],
    ["ft2", "0.09290304"],
    ["acre", "4046.8564224"],
    ["ha", "10000"],
    ["in3", "0.000016387064"],
    ["ft3", "0.028316846592"],
    ["yd3", "0.764554857984"],
    ["gal", "0.003785411784"],
    ["lb", "0.45359237"],
    ["oz", "0.028349523125"],
    ["short_ton", "907.18474"],
    ["t", "1000"],
    ["lbf", "4.4482216152605"],
    ["kWh", "3600000"],
  ]

  test.each(EXACT)("1 %s is %s", (unit, factor) => {
    expect(si(unit).toFixed()).toBe(factor)
  })

  test("the derived ones follow from the foot, the pound and standard gravity (9.806 65 m/s²)", () => {
    const [foot, pound] = [new Decimal("0.3048"), new Decimal("0.45359237")]
    const inch = foot.div(12)
    const force = pound.times("9.80665")
    const derived: Record<string, Decimal> = {
      in: inch,
      yd: foot.times(3),
      in2: inch.pow(2),
      ft2: foot.pow(2),
      yd2: foot.times(3).pow(2),
      acre: foot.pow(2).times(43560),
      in3: inch.pow(3),
      ft3: foot.pow(3),
      yd3: foot.pow(3).times(27),
      gal: inch.pow(3).times(231),
      oz: pound.div(16),
      short_ton: pound.times(2000),
      lbf: force,
      kip: force.times(1000),
      psf: force.div(foot.pow(2)),
      ksf: force.times(1000).div(foot.pow(2)),
      psi: force.div(inch.pow(2)),
      ksi: force.times(1000).div(inch.pow(2)),
      "lbf.ft": force.times(foot),
      "lbf.in": force.times(inch),
      "kip.ft": force.times(foot).times(1000),
      plf: force.div(foot),
      klf: force.times(1000).div(foot),
      "lb/ft3": pound.div(foot.pow(3)),
      "lb/yd3": pound.div(foot.pow(3).times(27)),
      "money/ft2": new Decimal(1).div(foot.pow(2)),
    }
    const wrong = Object.entries(derived).filter(([id, factor]) => !si(id).eq(factor))
    expect(wrong).toEqual([])
  })

  test("a full turn is 2π, to 38 digits", () => {
    expect(si("deg").times(360).toSignificantDigits(38).toFixed()).toBe(
      Decimal.acos(-1).times(2).toSignificantDigits(38).toFixed(),
    )
  })
})

describe("fixed points of the scales of temperature (SP 811 Appendix B, from memory)", () => {
  const POINTS: readonly (readonly [number: string, unit: string, kelvin: string])[] = [
    ["0", "degC", "273.15"],
    ["32", "degF", "273.15"],
    ["212", "degF", "373.15"],
    ["-40", "degF", "233.15"],
    ["-40", "degC", "233.15"],
    ["-459.67", "degF", "0"],
  ]

  test.each(POINTS)("%s %s is %s K", (number, id, kelvin) => {
    const unit = ALL_UNITS.find((each) => each.id === id)
    expect(unit && toSi(new Decimal(number), unit).toFixed()).toBe(kelvin)
  })
})

test("every unit names its source", () => {
  expect(ALL_UNITS.filter(({ source }) => source.title === "")).toEqual([])
  expect(ALL_UNITS.filter(({ source }) => source.kind === "standard" && !source.note)).toEqual([])
})
