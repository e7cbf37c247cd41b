import { type Book, openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { handedDown } from "./statics.ts"

const PSI = 6894.757293168361
const INCH = 0.0254

function platform(typed: Readonly<Record<string, string>> = {}): Book {
  const { book, problems } = openBook(gameTablePlatform)
  expect(problems).toEqual([])
  expect(book.editAll(typed).problems).toEqual([])
  return book
}

const numbers = (book: Book, name: string): readonly number[] =>
  (book.entry(name).readings ?? [book.entry(name).reading]).map((reading) => Number(reading?.value))

const SKID = 0
const JOIST = 1

/**
 * Hem-Fir No.2, NDS Supplement 2018 table 4A (record nds_reference_design_values): Fb 850, Fv 150, Fc across 405 psi,
 * E 1.3 million psi. Factors of record nds_adjustment_factors: CF 1.3 for a width of 6 in, CM 0.97 on shear, 0.67 on
 * bearing, 0.9 on E; Fb × CF = 1105 psi is not over 1150 psi, so damp takes nothing off bending; Ci 0.8 and 0.95; Cr 1.15.
 */
test("allowable stresses of skids and joists, factor by factor, as the published tables give them", () => {
  const book = platform({ species: "Hem-Fir", grade: "No.2", wet_service: "yes", incised: "yes" })
  const psi = (name: string, row: number): number =>
    (numbers(book, `members.${name}`)[row] ?? Number.NaN) / PSI
  expect(psi("fb_published", SKID)).toBeCloseTo(850, 6)
  expect(numbers(book, "members.size_factor")).toEqual([1.3, 1.3, 1.5])
  expect(numbers(book, "members.wet_bending_factor")).toEqual([1, 1, 0.85])
  expect(numbers(book, "members.sharing_factor")).toEqual([1, 1.15, 1])
  expect(psi("fb_allowed", SKID)).toBeCloseTo(850 * 1.3 * 0.8, 6)
  expect(psi("fb_allowed", JOIST)).toBeCloseTo(850 * 1.3 * 0.8 * 1.15, 6)
  expect(psi("fv_allowed", JOIST)).toBeCloseTo(150 * 0.97 * 0.8, 6)
  expect(psi("fc_perp_allowed", JOIST)).toBeCloseTo(405 * 0.67, 6)
  expect(psi("e_used", JOIST)).toBeCloseTo(1_300_000 * 0.9 * 0.95, 3)
})

/**
 * Shape and statics of a rectangle (record beam_formulas_single_span). The inner skid, 20 ft on five supports with a
 * joint over the middle one, is two beams of two spans each. By three moments, over the inner support an even load w gives
 * w L² ÷ 8 less a quarter of the bending over the outer one, w a² ÷ 2, where the overhang a bears only dead load.
 */
test("ratios of an inner skid, by hand from its moment", () => {
  const book = platform({ support_spacing_max: "5 ft 9 in" })
  const [moment = 0] = numbers(book, "members.moment")
  const [shear = 0] = numbers(book, "members.shear")
  const width = handedDown(numbers(book, "platform_width")[0] ?? 0, numbers(book, "skids.y"))[1] ?? 0
  const load = 110 * 47.88025898033584 * width
  const span = 57 * INCH
  const overhang = 6 * INCH
  expect(moment).toBeCloseTo((load * span ** 2) / 8 - (10 / 110) * load * overhang ** 2 * 0.125, 6)
  const [breadth, depth] = [3.5 * INCH, 5.5 * INCH]
  expect(numbers(book, "members.bending_ratio")[SKID]).toBeCloseTo(
    moment / ((breadth * depth ** 2) / 6) / (850 * 1.3 * 0.8 * PSI),
    9,
  )
  expect(numbers(book, "members.shear_ratio")[SKID]).toBeCloseTo(
    (1.5 * shear) / (breadth * depth) / (150 * 0.97 * 0.8 * PSI),
    9,
  )
})

/** Statics: what goes in comes out. */
test("the supports carry all of the platform, by statics", () => {
  const book = platform()
  const all = numbers(book, "supports.load").reduce((sum, load) => sum + load, 0)
  expect(all).toBeCloseTo(Number(book.entry("platform_load").reading?.value), 3)
})

/** CSA O86 (records csa_o86_specified_strengths, csa_o86_factors): Hem-Fir No.1/No.2 fb 11 MPa, KZ 1.5 at 89 by 140 and 1.4 at 38 by 140. */
test("limit states: resisted stresses and factored loads", () => {
  const book = platform({ design_method: "limit states", wet_service: "no", incised: "no" })
  const [skid = 0, joist = 0] = numbers(book, "members.fb_allowed")
  expect(numbers(book, "members.size_factor")).toEqual([1.5, 1.4, 1.7])
  expect(skid / 1e6).toBeCloseTo(0.9 * 11 * 1.5, 6)
  expect(joist / 1e6).toBeCloseTo(0.9 * 11 * 1.1 * 1.4, 6)
  expect(numbers(book, "members.live_factor")).toEqual([1.5, 1.5, 1.5])
})

test("a species or a size that no published row holds is outside the table", () => {
  const book = platform({ skid_size: "6x6", species: "Redwood" })
  expect(book.entry("skid_check").check?.verdict).toBe("outside_table")
  expect(book.entry("joist_check").check?.verdict).toBe("passes")
  expect(book.entry("deflection_check").check?.verdict).toBe("outside_table")
})

test("sheets under more load than any row holds are outside the table", () => {
  const book = platform({ live_load: "900 psf" })
  expect(book.entry("sheet_check").check?.verdict).toBe("outside_table")
})

test.each([
  ["live_load", ["40 psf", "60 psf", "100 psf", "150 psf", "300 psf"], "members.bending_ratio"],
  ["support_spacing_max", ["3 ft", "4 ft", "5 ft", "7 ft", "10 ft"], "members.bending_ratio"],
  ["joist_spacing", ["8 in", "12 in", "16 in", "24 in"], "members.worst"],
] as const)("more %s never improves the worst ratio", (input, steps, name) => {
  const book = platform()
  const worst = steps.map((step) => {
    expect(book.edit(input, step).problems).toEqual([])
    return Math.max(...numbers(book, name))
  })
  expect(worst).toEqual(worst.toSorted((one, other) => one - other))
})
