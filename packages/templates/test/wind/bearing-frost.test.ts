import { type Definition, openBook, type Section } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { bearingOf } from "../../src/parts/bearing.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { USER } from "../../src/sources.ts"
import { workbook } from "../beam/workbook.ts"

const given: Section = {
  id: "given",
  title: "Given",
  says: "Of the test.",
  entries: (
    [
      ["pier_load", "force", "3200 lb"],
      ["soil_bearing", "pressure", "12000 psf"],
      ["block_face", "area", "1 ft2"],
      ["block_length", "length", "12 in"],
      ["block_course_width", "length", "12 in"],
      ["stone_bed_length", "length", "20 in"],
      ["stone_bed_width", "length", "16 in"],
      ["stone_bed_thickness", "length", "6 in"],
      ["stone_spread", "ratio", "0.5"],
    ] as const
  ).map(([name, measure, text]) => ({
    kind: "input",
    name,
    measure,
    default: text,
    label: "Of the test",
    why: "Of the test.",
    sources: [USER],
  })),
}
const PIER: Definition = {
  id: "pier",
  title: "Pier",
  says: "Of the test.",
  unitSystem: "us",
  cautions: [],
  sections: [given, bearingOf("pier_load"), houseRules],
}

function pier(typed: Readonly<Record<string, string>>) {
  const { book } = openBook(PIER)
  const { accepted, problems } = book.editAll(typed)
  if (!accepted) throw new Error(JSON.stringify(problems))
  return (name: string) => Number(book.entry(name).reading?.value)
}

describe("bearing against published footings", () => {
  // An extension circular's table of pier footings (records m-014 to m-016, read), in square inches.
  test.each([
    ["3200 lb", [307, 230, 154]],
    ["4250 lb", [408, 306, 204]],
    ["5300 lb", [509, 382, 254]],
  ])("a pier of %s", (load, inches) => {
    const soils = [
      "US: clay, silty or sandy clay, silt",
      "US: sand, silty or clayey sand or gravel",
      "US: gravel, sandy gravel",
    ]
    soils.forEach((soil, index) => {
      const area = pier({ pier_load: load, soil_kind: soil })("bearing_face_needed") / 0.0254 ** 2
      expect(Math.abs(area - (inches[index] ?? 0))).toBeLessThan(0.51)
    })
  })

  // National Building Code table 9.4.4.1 (records a-010, a-011 and a-014, read), with the kilopascals as printed.
  test.each([
    ["Canada: dense sand or gravel", 150_000],
    ["Canada: loose sand or gravel", 50_000],
    ["Canada: firm clay", 75_000],
  ])("%s", (soil, pascals) => {
    expect(pier({ soil_kind: soil })("soil_published")).toBeCloseTo(pascals, 6)
  })

  test("water within a block's width halves sand, not stiff clay, and not water farther down", () => {
    const allowed = (soil: string, water: string) =>
      pier({ soil_kind: soil, water_depth: water })("soil_allowed")
    expect(allowed("Canada: dense sand or gravel", "11 in")).toBeCloseTo(75_000, 6)
    expect(allowed("Canada: dense sand or gravel", "12 in")).toBeCloseTo(150_000, 6)
    expect(allowed("Canada: stiff clay", "2 in")).toBeCloseTo(150_000, 6)
  })

  test("stone spreads one out for two down, and never past its bed", () => {
    // 12 + 2 × 0.5 × 6 = 18 in, within 20; across, the bed ends at 16 in.
    const area = (18 * 16) / 144
    expect(pier({})("bearing_pressure_stone") / 47.88025898033584).toBeCloseTo(3200 / area, 6)
  })

  test("peat, mud and fill are outside every table", () => {
    const { book } = openBook(PIER)
    book.edit("soil_kind", "Peat, mud, organic soil or fill")
    expect(book.entry("soil_block_check").check?.verdict).toBe("outside_table")
  })

  test("goes by what the beam solver gives the busiest block", () => {
    const book = workbook()
    expect(book.in("lb", "bearing_load")).toBeCloseTo(
      Math.max(...book.column("lb", "skid_reactions.most")),
      6,
    )
  })
})

describe("frost", () => {
  test("a free base may stand on the surface; one fixed to a building must reach below the frost", () => {
    expect(workbook().verdict("frost_check")).toBe("passes")
    expect(workbook({ attached_to_building: "yes" }).verdict("frost_check")).toBe("needs_entry")
    expect(workbook({ attached_to_building: "yes", frost_depth: "4 ft" }).verdict("frost_check")).toBe(
      "fails",
    )
  })

  test("deeper frost never lessens the rise, and gravel does not rise", () => {
    const rise = (depth: string, soil: string) =>
      workbook({ frost_depth: depth, frost_soil: soil }).in("in", "frost_rise")
    expect(rise("4 ft", "silt or fine sand")).toBeGreaterThan(rise("3 ft", "silt or fine sand"))
    expect(rise("4 ft", "silt or fine sand")).toBeGreaterThan(rise("4 ft", "clay"))
    expect(rise("4 ft", "gravel or coarse sand")).toBe(0)
  })
})
