import { readValue } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

/** Figures of the tables as the templates hold them, against the published ones (the reference collection's records). */

const entries = TEMPLATES.flatMap(({ sections }) => sections.flatMap((section) => section.entries))

/** The figure of a column in the row where another column says this, in SI, or its text. */
function figure(column: string, key: string, is: string): number | string {
  const [table = "", name = ""] = column.split(".")
  const found = entries.find((entry) => entry.name === table)
  if (found?.kind !== "table") throw new Error(`no table ${table}`)
  const keys = found.columns.find((one) => one.name === key)?.values ?? []
  const of = found.columns.find((one) => one.name === name)
  const text = of?.values?.[keys.indexOf(is)]
  if (of === undefined || text === undefined) throw new Error(`no row ${is} of ${column}`)
  const outcome = readValue(text, of.measure, "us")
  if (!("value" in outcome)) throw new Error(`cannot read ${text}`)
  return typeof outcome.value === "object" ? outcome.value.si.toNumber() : String(outcome.value)
}

const PSI = 6894.757293168361
const PSF = 47.88025898033584

describe("record nds_reference_design_values: NDS Supplement 2018, tables 4A (read) and 4B (from memory), psi", () => {
  test.each([
    ["Douglas Fir-Larch | No.2 | any width", [900, 575, 180, 625, 1350, 1_600_000, 580_000]],
    ["Hem-Fir | No.2 | any width", [850, 525, 150, 405, 1300, 1_300_000, 470_000]],
    ["Spruce-Pine-Fir | No.1/No.2 | any width", [875, 450, 135, 425, 1150, 1_400_000, 510_000]],
    ["Southern Pine | No.2 | 6 in wide", [1000, 600, 175, 565, 1400, 1_400_000, 510_000]],
    ["Southern Pine | No.2 | 12 in wide", [750, 450, 175, 565, 1250, 1_400_000, 510_000]],
  ])("%s", (key, values) => {
    const given = ["fb", "ft", "fv", "fc_perp", "fc", "e", "e_min"].map(
      (name) => Number(figure(`design_values.${name}`, "key", key)) / PSI,
    )
    given.forEach((value, index) => {
      expect(value).toBeCloseTo(values[index] ?? Number.NaN, 4)
    })
  })
})

describe("record nds_adjustment_factors: NDS 2018 (read but for incising, bearing length and shear's shape)", () => {
  test.each([
    ["size_factors.thin", "width", "4", 1.5],
    ["size_factors.thin", "width", "6", 1.3],
    ["size_factors.thin", "width", "8", 1.2],
    ["size_factors.thin", "width", "10", 1.1],
    ["size_factors.thin", "width", "12", 1],
    ["size_factors.thick", "width", "8", 1.3],
    ["size_factors.thick", "width", "12", 1.1],
    ["load_durations.factor", "duration", "permanent", 0.9],
    ["load_durations.factor", "duration", "ten years", 1],
    ["load_durations.factor", "duration", "two months", 1.15],
    ["load_durations.factor", "duration", "ten minutes", 1.6],
  ])("%s, %s %s: %d", (column, key, is, value) => {
    expect(figure(column, key, is)).toBeCloseTo(value, 12)
  })
})

describe("record csa_o86_specified_strengths: CSA O86, joists and planks, MPa (S-P-F read, others from memory)", () => {
  test.each([
    ["S-P-F | No.1/No.2", [11.8, 1.5, 11.5, 5.3, 9500]],
    ["D Fir-L | No.1/No.2", [10, 1.9, 14, 7, 11000]],
    ["Hem-Fir | No.1/No.2", [11, 1.6, 14.8, 4.6, 11000]],
    ["Northern | No.1/No.2", [7.6, 1.3, 10.4, 3.5, 7000]],
  ])("%s", (key, values) => {
    const given = ["fb", "fv", "fc", "fcp", "e"].map(
      (name) => Number(figure(`specified_strengths.${name}`, "key", key)) / 1e6,
    )
    given.forEach((value, index) => {
      expect(value).toBeCloseTo(values[index] ?? Number.NaN, 9)
    })
  })
})

describe("record csa_o86_factors (resistance factors read, others from memory), worked_examples (load factors, read)", () => {
  test.each([
    ["Wet service factor, KSb", 0.84],
    ["Wet service factor, KSv", 0.96],
    ["Wet service factor, KScp", 0.67],
    ["System factor, KH", 1.1],
    ["Treatment factor, KT, incised and wet", 0.85],
    ["Treatment factor, KT, incised and dry", 0.75],
    ["Treatment factor on stiffness, incised and wet", 0.95],
    ["Treatment factor on stiffness, incised and dry", 0.9],
    ["Resistance factor, bending and shear", 0.9],
    ["Resistance factor, bearing", 0.8],
    ["Load factor on dead load", 1.25],
    ["Load factor on live load", 1.5],
  ])("%s: %d", (name, value) => {
    expect(figure("design_factors.value", "factor", name)).toBeCloseTo(value, 12)
  })
})

// Record panel_floor_live_loads, from memory: 16 oc, 24/16 and 32/16 carry 185 psf at 12 in and 100 psf at 16 in.
test("live loads on sheets", () => {
  expect(Number(figure("sheet_live_loads.load", "spacing", "12 in")) / PSF).toBeCloseTo(185, 9)
  expect(Number(figure("sheet_live_loads.load", "spacing", "16 in")) / PSF).toBeCloseTo(100, 9)
})

// Record deflection_limits (National Building Code table 9.4.3.1, read): floors 1/360 under live load, decks 1/240.
test("sags", () => {
  expect(figure("design_thresholds.sag_live", "sag_live", "360")).toBe(360)
  expect(figure("design_thresholds.sag_total", "sag_total", "240")).toBe(240)
})
