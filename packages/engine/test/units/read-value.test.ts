import fc from "fast-check"
import { describe, expect, test } from "vitest"
import type { MeasureId } from "../../src/units/measure.ts"
import { MEASURES } from "../../src/units/measures.ts"
import { readValue, splitList, withUsualUnit } from "../../src/units/read-value.ts"
import { refusal, si } from "./helpers.ts"

const IDS = Object.keys(MEASURES) as MeasureId[]
const NUMBER_IDS = IDS.filter((id) => MEASURES[id].dimension)
const SYSTEMS = ["us", "metric"] as const

describe("values are read in SI", () => {
  // Expected figures are worked from the exact definitions (see published-factors.test.ts).
  const READ: readonly (readonly [MeasureId, typed: string, si: string])[] = [
    ["area", "100 sq ft", "9.290304"],
    ["area", "100 sq. ft.", "9.290304"],
    ["area", "17.8 m^2", "17.8"],
    ["area", "17.8m²", "17.8"],
    ["volume", "100 ft3", "2.8316846592"],
    ["bulk_volume", "2.5 cu yd", "1.91138714496"],
    ["bulk_volume", "2.5", "1.91138714496"],
    ["volume", "2.5", "0.0707921164800"],
    ["mass", "40 lbs", "18.1436948"],
    ["mass", "1 lb 8 oz", "0.680388555"],
    ["force", "1 kip", "4448.2216152605"],
    ["force", "100 lbf", "444.82216152605"],
    ["pressure", "1.9 kPa", "1900"],
    ["pressure", "2 kN/m2", "2000"],
    ["stress", "8 N/mm2", "8000000"],
    ["moment", "100 ft-lb", "135.58179483314004"],
    ["moment", "1 kN.m", "1000"],
    ["line_load", "0.9 kN/m", "900"],
    ["density", "1600 kg/m3", "1600"],
    ["temperature", "70 °C", "343.15"],
    ["temperature", "-40", "233.15"],
    ["temperature_difference", "18 F deg", "10"],
    ["temperature_difference", "22 K", "22"],
    ["temperature_difference", "22 °C", "22"],
    ["expansion", "0.000121", "0.000121"],
    ["expansion", "121e-6 1/K", "0.000121"],
    ["expansion", "121 millionths per K", "0.000121"],
    ["expansion", "50 millionths per °F", "0.00009"],
    ["angle", "0.5 rad", "0.5"],
    ["time", "1 h 30", "5400"],
    ["time", "1.5 h", "5400"],
    ["time", "90 min", "5400"],
    ["speed", "100 mph", "44.704"],
    ["speed", "90 km/h", "25"],
    ["speed", "50", "22.352"],
    ["energy", "0.5 kWh", "1800000"],
    ["energy", "500", "1800000"],
    ["count", "1,250", "1250"],
    ["count", "12 pcs", "12"],
    ["share", "10 %", "0.1"],
    ["share", "10%", "0.1"],
    ["share", "10", "0.1"],
    ["ratio", "1/12", "0.08333333333333333333333333333333333333333"],
    ["ratio", "125 %", "1.25"],
    ["money", "$1,250.50", "1250.5"],
    ["money", "1250.5", "1250.5"],
    ["money", "-$3", "-3"],
    ["money_per_area", "$0.09290304/sq ft", "1"],
    ["money_per_area", "12.50 per m²", "12.5"],
  ]

  test.each(READ)("%s: %s", (measure, typed, expected) => {
    expect(si(typed, measure).toFixed()).toBe(
      Number(expected) === 0 ? "0" : expected.replace(/(\.\d*?)0+$/, "$1"),
    )
  })

  test("a temperature on one scale is the same on the other (32 °F is 0 °C)", () => {
    expect(si("32 °F", "temperature").eq(si("0 °C", "temperature"))).toBe(true)
    expect(si("32", "temperature", "us").eq(si("0", "temperature", "metric"))).toBe(true)
  })

  test.each(IDS)("%s: the example given in messages", (id) => {
    for (const system of SYSTEMS) {
      expect(readValue(MEASURES[id].example[system], id, system)).toHaveProperty("value")
    }
  })

  test.each(NUMBER_IDS)("%s: what a machine writes, a number and the SI unit", (id) => {
    const { si: unit } = MEASURES[id]
    expect(si(unit === "1" ? "2" : `2 ${unit}`, id).toFixed()).toBe(id === "share" ? "0.02" : "2")
  })
})

describe("values are refused with what is wrong", () => {
  test.each([
    ["length", "", "input_empty"],
    ["length", " \t ", "input_empty"],
    ["length", "5 lb", "input_wrong_unit"],
    ["length", "5ft2", "input_wrong_unit"],
    ["length", "$5", "input_wrong_unit"],
    ["moment", "5 J", "input_wrong_unit"],
    ["angle", "5 %", "input_wrong_unit"],
    ["temperature", "70°", "input_wrong_unit"],
    ["length", "5 furlongs", "input_unknown_unit"],
    ["mass", "2 tons", "input_unknown_unit"], // short, long or metric?
    ["pressure", "2 mPa", "input_unknown_unit"],
    ["count", "1.5", "input_not_whole"],
    ["temperature", "-460 °F", "input_below"],
    ["temperature", "20 °C 5 K", "input_unreadable"],
    ["ratio", "9".repeat(40), "input_above"],
    ["length", "9".repeat(501), "input_too_long"],
    ["text", "x".repeat(501), "input_too_long"],
    ["yes_no", "maybe", "input_unreadable"],
    ["money", "$1 $2", "input_unreadable"],
  ] as const)("%s: %j is %s", (measure, typed, code) => {
    expect(refusal(typed, measure)).toBe(code)
  })

  test("the units accepted are named", () => {
    expect(readValue("5 lb", "length", "us")).toEqual({
      problem: {
        code: "input_wrong_unit",
        at: {},
        given: "5 lb",
        unit: "lb",
        accepted: ["in", "ft", "yd", "mm", "cm", "m"],
      },
    })
  })

  test("long or odd text is not repeated whole", () => {
    const read = readValue(`5\u0007${"z".repeat(400)}`, "length", "us")
    expect(read).toMatchObject({ problem: { given: `5 ${"z".repeat(58)}…` } })
  })
})

test("a text is trimmed, and a yes or no is read in the usual words", () => {
  expect(readValue("  two words ", "text", "us")).toEqual({ value: "two words" })
  for (const yes of ["yes", "Y", "TRUE", "1"]) expect(readValue(yes, "yes_no", "us")).toEqual({ value: true })
  for (const no of ["no", "n", "False", "0"]) expect(readValue(no, "yes_no", "us")).toEqual({ value: false })
})

test("nothing typed throws", () => {
  const pieces = fc.constantFrom(
    ..."0 1 9 12 1/2 ½ . , - + ' \" ft in mm m2 ft3 $ % ° / per K e E 1e9 1e999 lb · ² ^2 ( ) = NaN Infinity __proto__ constructor".split(
      " ",
    ),
    " ",
    "\u0000",
    "\ud800",
    "\u202e",
  )
  const junk = fc.oneof(
    fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join("")),
    fc.string({ unit: "binary", maxLength: 40 }),
    fc.string({ unit: "binary", minLength: 400, maxLength: 600 }),
  )
  fc.assert(
    fc.property(junk, fc.constantFrom(...IDS), fc.constantFrom(...SYSTEMS), (text, id, system) => {
      const read = readValue(text, id, system)
      if ("value" in read && typeof read.value === "object") expect(read.value.si.isFinite()).toBe(true)
      withUsualUnit(text, id, system)
      splitList(text)
    }),
    { numRuns: 2000 },
  )
})

describe("lists", () => {
  test.each([
    ["8 ft, 12 ft", ["8 ft", "12 ft"]],
    ["8 ft; 12 ft", ["8 ft", "12 ft"]],
    ["8 ft,12 ft", ["8 ft", "12 ft"]],
    ["96, 120, 144", ["96", "120", "144"]],
    ["1,250, 2,500", ["1,250", "2,500"]],
    ["1,250;2,500", ["1,250", "2,500"]],
    ["2400,3000", ["2400", "3000"]],
    ["8 ft,120 in", ["8 ft", "120 in"]],
    [" 8 ft ,, ", ["8 ft"]],
    ["", []],
  ])("%j is %j", (text, items) => {
    expect(splitList(text)).toEqual(items)
  })
})

describe("the usual unit", () => {
  test.each([
    ["240", "length", "us", "240 in"],
    ["240", "length", "metric", "240 mm"],
    ["1/2", "length", "us", "1/2 in"],
    ["-1,250.5", "length", "us", "-1,250.5 in"],
    ["10' 6", "length", "metric", "10' 6"],
    ["20 ft", "length", "us", "20 ft"],
    ["40", "pressure", "metric", "40 kPa"],
    ["70", "temperature", "us", "70 °F"],
    ["12", "count", "us", "12"],
    ["12", "money", "us", "12"],
    ["12", "text", "us", "12"],
    ["junk", "length", "us", "junk"],
  ] as const)("%s (%s, %s) is kept as %s", (text, measure, system, kept) => {
    expect(withUsualUnit(text, measure, system)).toBe(kept)
  })

  test("keeps the meaning when the other units are shown", () => {
    const typed = fc.constantFrom(
      "240",
      "1/2",
      "6-1/2",
      "1,250.50",
      "-3",
      "1e3",
      "10' 6",
      "20 ft",
      "3.2 m",
      "7 %",
      "12",
    )
    fc.assert(
      fc.property(typed, fc.constantFrom(...NUMBER_IDS), fc.constantFrom(...SYSTEMS), (text, id, system) => {
        const meant = readValue(text, id, system)
        if ("problem" in meant) return
        const kept = withUsualUnit(text, id, system)
        for (const shown of SYSTEMS) expect(readValue(kept, id, shown)).toEqual(meant)
      }),
    )
  })
})
