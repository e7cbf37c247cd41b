import { describe, expect, test } from "vitest"
import { postHeight } from "../../src/post-height/template.ts"
import { reader } from "../helpers/read-book.ts"

const read = reader(postHeight)
const EXAMPLE = {
  species: "Spruce-Pine-Fir",
  grade: "No.2",
  wet_service: "no",
  incised: "no",
  load_duration: "ten years",
  post_size: "4x4",
  post_height: "7.3 ft",
  post_load: "4800 lb",
}

/** HUD Residential Structural Design Guide, 2nd edition (2017), example 5.6, read in an open transcription (record worked_examples, WE8). */
describe("a 4x4 post of spruce-pine-fir No.2, 7.3 ft tall, under 4800 lb", () => {
  const book = read(EXAMPLE)
  const psi = (name: string) => book.in("psi", `post_strength.${name}`)

  test("what goes in is as published", () => {
    expect(book.in("in", "post_strength.thickness")).toBeCloseTo(3.5, 9)
    expect(book.in("in", "post_strength.depth")).toBeCloseTo(3.5, 9)
    expect(psi("fc_published")).toBeCloseTo(1150, 6)
    expect(psi("e_min_published")).toBeCloseTo(510_000, 3)
    expect(book.in("si", "post_strength.size_factor")).toBe(1.15)
    expect(book.in("si", "post_strength.duration_factor")).toBe(1)
    expect(book.in("si", "bowing_shape")).toBe(0.8)
  })

  test("each intermediate value is reproduced", () => {
    expect(book.in("si", "post_strength.stability_factor")).toBeCloseTo(0.43783, 5)
    expect(psi("fc_allowed")).toBeCloseTo(579, 1)
    expect(psi("stress")).toBeCloseTo(391.8, 1)
    expect(book.in("si", "post_strength.ratio")).toBeCloseTo(0.6767, 4)
  })

  test("it passes at 68 per cent", () => {
    expect(book.verdict("post_check")).toBe("passes")
    expect(Math.round((book.ratio("post_check") ?? 0) * 100)).toBe(68)
  })
})

test("taller, wetter or slit posts carry less, thicker ones more", () => {
  const allowed = (typed: Record<string, string>) =>
    read({ ...EXAMPLE, ...typed }).in("lb", "post_load_allowed")
  const whole = allowed({})
  for (const worse of [{ post_height: "8 ft" }, { wet_service: "yes" }, { load_duration: "permanent" }])
    expect(allowed(worse)).toBeLessThan(whole)
  expect(allowed({ species: "Hem-Fir", incised: "yes" })).toBeLessThan(allowed({ species: "Hem-Fir" }))
  expect(allowed({ post_size: "4x6" })).toBeGreaterThan(whole)
  // A short block is crushed before it bows out: CP near 1.
  expect(read({ ...EXAMPLE, post_height: "2 in" }).in("si", "post_strength.stability_factor")).toBeCloseTo(
    1,
    2,
  )
})

test("too slim for the rule, or in no table: no answer", () => {
  const slim = read({ ...EXAMPLE, post_height: "15 ft" })
  expect(slim.verdict("post_slenderness_check")).toBe("fails")
  expect(slim.verdict("post_check")).toBe("outside_table")
  expect(read({ ...EXAMPLE, species: "Redwood", post_size: "6x6" }).verdict("post_check")).toBe(
    "outside_table",
  )
})
