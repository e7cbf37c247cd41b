import { describe, expect, test } from "vitest"
import { workbook } from "./workbook.ts"

/**
 * The project's worked example of a free-standing deck, 12 x 16 ft, worked by hand, as far as ground, supports,
 * stone and heights go. Its beams lie 12 in inside the long edges: the skids here, set in so that their centres do.
 * Its pads are single, so the stone is built up where the ground is low. Boards of 1 in lie on the joists.
 */
const deck = workbook({
  platform_length: "192 in",
  platform_width: "144 in",
  ground_fall_length: "3 in",
  ground_fall_width: "0 in",
  underside_clearance: "1 in",
  skid_size: "4x6",
  skid_inset: "10 1/4 in",
  skid_spacing_max: "60 in",
  support_spacing_max: "48 in",
  support_end_offset: "12 in",
  block_length: "16 in",
  block_width: "16 in",
  block_height: "2 in",
  block_courses_limit: "1",
  stone_bed_length: "20 in",
  stone_bed_width: "20 in",
  stone_bed_thickness: "6 in",
  stone_loose_factor: "1.2",
  spoil_loose_factor: "1.25",
  stone_order_step: "0.5 yd3",
  cover_stone_depth: "2 in",
  dig_min: "6 in",
  live_load: "40 psf",
  dead_load: "10 psf",
  soil_bearing: "1500 psf",
  riser_limit: "7.75 in",
  frame_build_up: "11 in",
  surface_build_up: "1 in",
})

/** The rows of one line, which begin after `5 * (line - 1)` others. */
const line = (values: readonly number[], number: number) => values.slice(5 * (number - 1), 5 * number)

function expectNear(values: readonly number[], wanted: readonly number[], digits = 6): void {
  expect(values).toHaveLength(wanted.length)
  for (const [index, value] of values.entries())
    expect(value).toBeCloseTo(wanted[index] ?? Number.NaN, digits)
}

describe("the worked deck", () => {
  test("supports: three lines at 12, 72 and 132 in, five pads each", () => {
    expect(deck.number("skid_count")).toBe(3)
    expectNear(deck.columnInches("skids.y"), [12, 72, 132])
    expect(deck.number("support_count")).toBe(15)
    expectNear(deck.columnInches("support_stations.x"), [12, 54, 96, 138, 180])
    expect(deck.number("block_count")).toBe(15)
  })

  test("a support carries half way to its neighbours, an outer one to the end of the frame as well", () => {
    const loads = deck.columnPounds("supports.load")
    expectNear(line(loads, 1), [481.25, 612.5, 612.5, 612.5, 481.25])
    expectNear(line(loads, 2), [687.5, 875, 875, 875, 687.5])
    expectNear(line(loads, 3), [481.25, 612.5, 612.5, 612.5, 481.25])
    expect(deck.number("support_load_max")).toBeCloseTo(3892.2, 1)
    const whole = loads.reduce((sum, load) => sum + load, 0)
    expect(whole).toBeCloseTo((192 * 144 * 50) / 144, 6)
  })

  test("pressure is on the pad's own face", () => {
    expectNear(line(deck.columnPsf("supports.pressure"), 2), [386.72, 492.19, 492.19, 492.19, 386.72], 1)
    expect(line(deck.columnPsf("supports.pressure"), 1)[1]).toBeCloseTo(344.53, 1)
    expect(deck.verdict("soil_bearing_check")).toBe("passes")
  })

  test("ground, hole and stone at every pad of a line", () => {
    expectNear(line(deck.columnInches("supports.ground"), 1), [-0.1875, -0.84375, -1.5, -2.15625, -2.8125])
    expectNear(line(deck.columnInches("supports.stone_bottom"), 1), [-7, -7, -7.5, -8.15625, -8.8125])
    expectNear(line(deck.columnInches("supports.dig"), 1), [6.8125, 6.15625, 6, 6, 6])
    expectNear(line(deck.columnInches("supports.stone"), 1), [6, 6, 6.5, 7.15625, 7.8125])
    expect(deck.inches("greatest_dig")).toBeCloseTo(6.8125, 6)
    expect(deck.inches("least_dig")).toBeCloseTo(6, 6)
  })

  test("soil and stone by volume", () => {
    expect(deck.cubicFeet("dug_volume")).toBeCloseTo(21.51, 2)
    expect(deck.cubicFeet("dug_volume_loose")).toBeCloseTo(26.88, 2)
    expect(deck.cubicFeet("stone_in_place")).toBeCloseTo(23.24, 2)
    expect(deck.cubicFeet("stone_loose")).toBeCloseTo(59.89, 2)
    expect(deck.cubicFeet("stone_order")).toBeCloseTo(2.5 * 27, 6)
  })

  test("heights and steps", () => {
    expect(deck.inches("top_height")).toBeCloseTo(13, 6)
    expect(deck.inches("height_above_ground")).toBeCloseTo(16, 6)
    expect(deck.number("risers_high_end")).toBe(2)
    expect(deck.inches("riser_height_high_end")).toBeCloseTo(6.5, 6)
    expect(deck.number("risers_low_end")).toBe(3)
    expect(deck.inches("riser_height_low_end")).toBeCloseTo(5.333, 3)
  })

  test("area and diagonal", () => {
    expect(deck.number("platform_area")).toBeCloseTo(17.8374, 4)
    expect(deck.inches("platform_diagonal")).toBeCloseTo(240, 6)
  })
})
