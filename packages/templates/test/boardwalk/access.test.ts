import { describe, expect, test } from "vitest"
import { walk } from "./walk.ts"

/** ADA Standards for Accessible Design 2010, section 405 (from memory): 1 in 12 at most, 30 in of rise in one run. */
const ADA = { run: 12, riseMost: 30 }

const level = walk()

describe("ramps", () => {
  test("at 1 in 12, 11 in of rise takes 11 ft, and 14 in take 14 ft (ADA 405.2, from memory)", () => {
    expect(level.inches("ramp_length")).toBeCloseTo(11 * ADA.run, 9)
    expect(level.columnInches("climbs.ramp_length")[1]).toBeCloseTo(14 * ADA.run, 9)
    expect(level.verdict("ramp_slope_check")).toBe("passes")
  })

  test("a steeper ramp fails the check, and the table says what lengths would pass", () => {
    const steep = walk({ ramp_slope: "1/8" })
    expect(steep.verdict("ramp_slope_check")).toBe("fails")
    const [high = Number.NaN, low = Number.NaN] = steep.columnInches("ramps.run_gentle")
    expect(high).toBeCloseTo(11 * ADA.run, 9)
    expect(low).toBeCloseTo(14 * ADA.run, 9)
  })

  test("a rise of more than 30 in wants a rest half way (ADA 405.6, from memory)", () => {
    const high = walk({ access_low_end: "ramp", ground_fall_length: "24 in" })
    expect(Math.max(...high.columnInches("ramps.rise_wanted"))).toBeGreaterThan(ADA.riseMost)
    expect(high.verdict("ramp_rise_check")).toBe("fails")
    expect(high.verdict("ramp_stock_check")).toBe("fails")
  })

  test("both ends, one end or none: timber and screws follow", () => {
    const boards = (ends: Readonly<Record<string, string>>) => walk(ends).column("ramp_boards.length").length
    expect(boards({ access_high_end: "nothing", access_low_end: "nothing" })).toBe(0)
    expect(boards({ access_high_end: "ramp", access_low_end: "nothing" })).toBe(24)
    // 14 ft and a little along the slope: 168.58 in.
    expect(boards({ access_high_end: "ramp", access_low_end: "ramp" })).toBe(
      24 + Math.ceil((Math.hypot(14, 168) + 0.25) / 5.75),
    )
    const none = walk({ access_high_end: "nothing", access_low_end: "nothing" })
    expect(none.column("ramp_stringers.length")).toEqual([])
    expect(none.column("step_boards.length")).toEqual([])
    expect(none.number("screw_count")).toBe(2 * 84 * 4)
  })
})

describe("steps", () => {
  test("14 in at the low end: two risers of 7 in, one tread, the walk itself the last (IRC R311.7: 7 3/4 in)", () => {
    expect(level.number("risers_low_end")).toBe(2)
    expect(level.inches("riser_height_low_end")).toBeCloseTo(7, 9)
    expect(level.column("flights.treads")).toEqual([0, 1, 0, 0])
    expect(level.column("step_boards.length")).toHaveLength(2)
    expect(level.column("step_carriage_pieces.length")).toHaveLength(4)
  })

  test("steps at a long side as well: its treads and carriages are counted", () => {
    const sides = walk({ steps_other_side: "yes", riser_limit: "4 in" })
    const treads = sides.column("flights.treads").map(Number)
    expect(treads[0]).toBe(0)
    const risers = sides.columnInches("climbs.rise").map((rise) => Math.ceil(rise / 4 - 1e-6))
    expect(treads.slice(1)).toEqual([(risers[1] ?? 0) - 1, 0, (risers[3] ?? 0) - 1])
    expect(sides.column("step_carriage_pieces.flight").map(Number)).toEqual([2, 2, 2, 2, 4, 4, 4, 4])
  })

  test("a step of one riser needs no tread and no carriage", () => {
    const low = walk({
      access_high_end: "steps",
      stringer_size: "2x4",
      underside_clearance: "0 in",
      ground_fall_length: "0 in",
      riser_limit: "9 in",
    })
    expect(low.number("risers_high_end")).toBe(1)
    expect(low.column("step_carriage_pieces.length")).toEqual([])
  })
})
