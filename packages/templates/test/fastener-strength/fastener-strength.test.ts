import { type Definition, openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { fastenerStrength } from "../../src/parts/fastener-strength.ts"
import { houseRules } from "../../src/parts/house-rules.ts"
import { workbook } from "../beam/workbook.ts"

const FASTENERS: Definition = {
  id: "fasteners",
  title: "Fasteners",
  says: "Of the test.",
  unitSystem: "us",
  cautions: [],
  sections: [fastenerStrength([]), houseRules],
}

const POUND = 4.4482216152605
const PER_INCH = POUND / 0.0254

function fasteners(typed: Readonly<Record<string, string>>) {
  const { book } = openBook(FASTENERS)
  const { accepted, problems } = book.editAll(typed)
  if (!accepted) throw new Error(JSON.stringify(problems))
  return (name: string) => Number(book.entry(name).reading?.value)
}

describe("screws pulled out", () => {
  // Civil Engineering Formulas, p. 170 (records d-041 to d-044, read and worked from the formula), in lb per inch.
  test.each([
    ["Spruce-pine-fir", "0.164 in", 82.4],
    ["Spruce-pine-fir", "0.19 in", 95.5],
    ["Douglas fir-larch", "0.164 in", 116.9],
    ["Douglas fir-larch", "0.19 in", 135.4],
  ])("%s, %s: %d lb per inch", (species, diameter, published) => {
    const read = fasteners({ fastener_species: species, screw_diameter: diameter, screw_thread: "2 in" })
    expect(read("screw_withdrawal_per_length") / PER_INCH).toBeCloseTo(published, 1)
    expect(read("screw_withdrawal") / POUND).toBeCloseTo(
      2 * (read("screw_withdrawal_per_length") / PER_INCH),
      6,
    )
  })

  test("nothing in end grain; a test would show five and a half times as much (record d-048, from memory)", () => {
    expect(fasteners({ screw_in_end_grain: "yes" })("screw_withdrawal")).toBe(0)
    const read = fasteners({})
    expect(read("screw_ultimate") / read("screw_withdrawal")).toBeCloseTo(5.5, 1)
  })
})

describe("screws pushed sideways", () => {
  // The same page: C D² with 3960 for Douglas fir and southern pine, 3240 for hemlock, 2520 for spruce (d-034 to d-038, read).
  test.each([
    ["Douglas fir-larch", 3960],
    ["Southern pine", 3960],
    ["Hem-fir", 3240],
    ["Spruce-pine-fir", 2520],
  ])("%s: %d D² at full penetration", (species, constant) => {
    const read = fasteners({ fastener_species: species, screw_diameter: "0.19 in", screw_thread: "2 in" })
    expect(read("screw_lateral") / POUND).toBeCloseTo(constant * 0.19 ** 2, 6)
  })

  test("falls with the penetration from ten diameters, and is nothing under six", () => {
    const lateral = (thread: string) =>
      fasteners({ screw_diameter: "0.2 in", screw_thread: thread })("screw_lateral")
    expect(lateral("1.5 in") / lateral("2 in")).toBeCloseTo(0.75, 9)
    expect(lateral("1.19 in")).toBe(0)
    expect(lateral("1.2 in")).toBeGreaterThan(0)
  })
})

// A structural engineers' mailing list, NDS 2005 (records d-062 and m-024, read): 141 lb, 1.25 in, 0.7716, 174 lb in wind.
test("the 16d nail through a plate and a floor: 1.25 in, 0.7716, 174 lb", () => {
  const read = fasteners({ nail_side_thickness: "1.5 in", nail_gap: "0.75 in" })
  expect(read("nail_penetration") / 0.0254).toBeCloseTo(1.25, 9)
  expect(read("nail_penetration_share")).toBeCloseTo(0.7716, 4)
  expect((read("nail_lateral") * read("duration_wind")) / POUND).toBeCloseTo(174, 0)
})

describe("joints that carry a load", () => {
  test("as many fasteners as the force asks for, outdoors, in wind", () => {
    const book = workbook()
    const one = book.in("lb", "screw_withdrawal") * 0.7 * 1.6
    expect(book.in("lb", "tie_fastener_allowed")).toBeCloseTo(one, 6)
    expect(book.in("one", "tie_fasteners_needed")).toBe(Math.ceil(book.in("lb", "wind_uplift") / one))
    expect(book.verdict("tie_fastener_check")).toBe("passes")
    expect(book.verdict("post_fastener_check")).toBe("fails")
  })

  test("heavier wood, a thicker screw or more thread never lessens what one holds", () => {
    const before = fasteners({})("screw_withdrawal")
    for (const typed of [
      { fastener_species: "Southern pine" },
      { screw_diameter: "0.216 in" },
      { screw_thread: "2 in" },
    ])
      expect(fasteners(typed)("screw_withdrawal")).toBeGreaterThan(before)
  })

  test("a joint that would pull at nails is refused when the template is loaded", () => {
    const wrong = {
      prefix: "guard",
      joint: "guard posts",
      force: "f",
      count: "n",
      direction: "withdrawal",
      fastener: "nail",
      duration: "people",
    } as const
    expect(() => fastenerStrength([wrong])).toThrow(/guard.*nails/)
  })
})
