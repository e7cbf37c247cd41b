import { describe, expect, test } from "vitest"
import { shedBase } from "../../src/shed-base/template.ts"
import { readOf } from "../parts-ground/workbook.ts"

const base = (typed: Readonly<Record<string, string>> = {}, levels: Parameters<typeof readOf>[2] = []) =>
  readOf(shedBase, typed, levels)

/** Stone and digging of a pad by summing many small columns: nothing of the grid method in it. Feet. */
function byColumns(pad: {
  readonly ground: (x: number, y: number) => number
  readonly top: number
  readonly thickness: number
  readonly strip: number
  readonly level?: number
}) {
  const [length, width, margin, steps] = [12, 10, 0.5, 400]
  const cell = ((length + 2 * margin) / steps) * ((width + 2 * margin) / steps)
  let [stone, dug] = [0, 0]
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const x = ((i + 0.5) / steps) * (length + 2 * margin) - margin
      const y = ((j + 0.5) / steps) * (width + 2 * margin) - margin
      const ground = pad.ground(x, y)
      const bottom = pad.level ?? Math.min(pad.top - pad.thickness, ground - pad.strip)
      stone += (pad.top - bottom) * cell
      dug += (ground - bottom) * cell
    }
  }
  return { stone, dug }
}

describe("the pad of stone on a slope", () => {
  const slope = (x: number, y: number) => -(5 / 12) * (x / 12) - (1 / 12) * (y / 10)

  test("following the ground: a wedge, exact on even ground", () => {
    const read = base()
    const wedge = byColumns({ ground: slope, top: 1 / 12, thickness: 4 / 12, strip: 4 / 12 })
    expect(read.cubicFeet("stone_in_place")).toBeCloseTo(wedge.stone, 3)
    expect(read.cubicFeet("dug_volume")).toBeCloseTo(wedge.dug, 3)
    expect(read.cubicFeet("stone_in_place")).toBeCloseTo(13 * 11 * (8 / 12), 6)
  })

  test("where the least thickness needs more than the topsoil, within a third of a percent", () => {
    const read = base({ stone_bed_thickness: "9 in", strip_depth: "4 in" })
    const wedge = byColumns({ ground: slope, top: 1 / 12, thickness: 9 / 12, strip: 4 / 12 })
    expect(read.cubicFeet("stone_in_place") / wedge.stone).toBeCloseTo(1, 2)
    expect(Math.abs(read.cubicFeet("stone_in_place") / wedge.stone - 1)).toBeLessThan(0.003)
    expect(Math.abs(read.cubicFeet("dug_volume") / wedge.dug - 1)).toBeLessThan(0.003)
  })

  test("level: one thickness, deeper into the high side", () => {
    const read = base({ stone_formation: "level" })
    const low = -(5 * (12.5 / 12) + 10.5 / 10) / 12
    const level = byColumns({
      ground: slope,
      top: 1 / 12,
      thickness: 4 / 12,
      strip: 4 / 12,
      level: low - 4 / 12,
    })
    expect(read.cubicFeet("stone_in_place")).toBeCloseTo(level.stone, 3)
    expect(read.cubicFeet("dug_volume")).toBeCloseTo(level.dug, 3)
    expect(read.inches("greatest_dig")).toBeCloseTo(5 * (13 / 12) + 11 / 10 + 4, 6)
    expect(read.inches("least_dig")).toBeCloseTo(4, 6)
  })

  test("flat ground: area times thickness, and nothing missed", () => {
    const read = base({
      ground_fall_length: "0 in",
      ground_fall_width: "0 in",
      underside_clearance: "0 in",
    })
    expect(read.cubicFeet("stone_in_place")).toBeCloseTo(143 / 3, 9)
    expect(read.cubicFeet("stone_missed_by_flat")).toBeCloseTo(0, 9)
    expect(read.inches("stone_edge_height_max")).toBeCloseTo(0, 9)
  })

  test("a hollow between surveyed points takes stone, and leaves the edging as it is", () => {
    const corner = (x: string, y: string, level = "0 in") => ({ x, y, level })
    const corners = [
      corner("-2 ft", "-2 ft"),
      corner("14 ft", "-2 ft"),
      corner("14 ft", "12 ft"),
      corner("-2 ft", "12 ft"),
    ]
    const flat = base({}, corners)
    const hollow = base({}, [...corners, corner("6 ft", "5 ft", "-8 in")])
    expect(hollow.book.entry("ground_between_points").reading?.value).toBe(true)
    const pit = (x: number, y: number) =>
      (-8 / 12) * Math.min((x + 2) / 8, (14 - x) / 8, (y + 2) / 7, (12 - y) / 7)
    const top = hollow.inches("underside_level") / 12
    const wedge = byColumns({ ground: pit, top, thickness: 4 / 12, strip: 4 / 12 })
    expect(Math.abs(hollow.cubicFeet("stone_in_place") / wedge.stone - 1)).toBeLessThan(0.005)
    expect(hollow.cubicFeet("stone_in_place")).toBeGreaterThan(flat.cubicFeet("stone_in_place") + 10)
  })

  test("edging, stakes, fabric and turf of the pad", () => {
    const read = base()
    expect(read.inches("edging_length")).toBeCloseTo(2 * 12 * (13 + 11), 6)
    expect(read.column("edging_stakes.count")[0]).toBe(2 * (5 + 4))
    expect(read.inches("stone_edge_height_max")).toBeCloseTo(1 + 5 * (12.5 / 12) + 10.5 / 10, 6)
    expect(read.squareFeet("fabric_area")).toBeCloseTo(14 * 12, 6)
    expect(read.cubicFeet("strip_volume")).toBeCloseTo(13 * 11 * (4 / 12), 9)
    expect(read.cubicFeet("dug_volume")).toBeGreaterThanOrEqual(read.cubicFeet("strip_volume") - 1e-9)
  })

  test("stone behind stakes that is too high fails, and says so", () => {
    const read = base({ ground_fall_length: "20 in" })
    expect(read.verdict("stone_edge_check")).toBe("fails")
  })
})

describe("published stone (in place, then loose)", () => {
  const flat = {
    ground_fall_length: "0 in",
    ground_fall_width: "0 in",
    underside_clearance: "0 in",
    strip_depth: "0 in",
    stone_margin: "0 in",
  }

  /** m-012: road of 100 by 16 ft, 6 in tamped, a quarter more loose: 800 cu ft, 37.04 cu yd. */
  test("the road", () => {
    const read = base({
      ...flat,
      platform_length: "100 ft",
      platform_width: "16 ft",
      stone_bed_thickness: "6 in",
      stone_loose_factor: "1.25",
    })
    expect(read.cubicFeet("stone_in_place")).toBeCloseTo(800, 6)
    expect(read.cubicFeet("stone_loose") / 27).toBeCloseTo(37.04, 2)
    expect(read.cubicFeet("stone_order") / 27).toBeCloseTo(37.5, 9)
  })

  /**
   * m-011: 4 in of tamped base from stone that tamps to 0.75 of its loose depth. The page prints "just over 6" in; 4 over 0.75 is
   * 5.33, and 6 would want a factor of two thirds.
   */
  test("loose depth for 4 in tamped is 5.33 in, not 6", () => {
    const read = base({ ...flat, stone_bed_thickness: "4 in", stone_loose_factor: `${1 / 0.75}` })
    expect((read.cubicFeet("stone_loose") / read.squareFeet("pad_area")) * 12).toBeCloseTo(5.333, 3)
  })
})

describe("the frame on it", () => {
  test("10 ft wide: joists of 9' 9\" between rims of 1 1/2 in (PS 20)", () => {
    const read = base()
    expect(read.inches("joist_length")).toBeCloseTo(117, 9)
    expect(read.number("joist_count")).toBe(10)
    expect(read.inches("top_height")).toBeCloseTo(1 + 5.5 + 5.5 + 0.75, 6)
    expect(read.number("board_feet")).toBeCloseTo(96 + 60 + 24 + 64, 6)
  })

  test("pressure of the busiest skid: 70 psf over 38 5/6 in of floor, on 3 1/2 in of skid", () => {
    const read = base()
    expect(read.number("soil_pressure_max") / 47.88025898033584).toBeCloseTo((70 * (116.5 / 3)) / 3.5, 6)
    expect(read.verdict("soil_bearing_check")).toBe("passes")
    read.set({ soil_bearing: "700 psf" })
    expect(read.verdict("soil_bearing_check")).toBe("fails")
    expect(read.inches("skid_width_for_soil")).toBeCloseTo((700 * 3.5) / 70, 6)
  })

  test("a base longer than any skid sold: joints over slabs, one slab a joint", () => {
    const read = base({ platform_length: "20 ft" })
    expect(read.number("block_count")).toBe(read.column("skid_joints.line").length)
    expect(read.number("block_count")).toBe(4)
    expect(read.book.problems().filter(({ code }) => code !== "needs_entry")).toEqual([])
  })

  test("the door: on the low side the ramp is longer by the fall", () => {
    const read = base({ door_ramp_slope: "1/8" })
    const run = () => read.columnInches("door_climb.ramp_run")[0] ?? Number.NaN
    const high = run()
    read.set({ door_end: "low end" })
    expect(run() - high).toBeCloseTo(8 * 5, 6)
  })

  test("water: until measured it waits; 6 in within 10 ft is 5 % (a-022)", () => {
    const read = base()
    expect(read.verdict("fall_away_check")).toBe("needs_entry")
    expect(read.number("fall_away_slope")).toBeCloseTo(0.05, 9)
    read.set({ fall_away_measured: "2 in" })
    expect(read.verdict("fall_away_check")).toBe("fails")
    expect(read.inches("fall_away_missing")).toBeCloseTo(4, 9)
    read.set({ fall_away_measured: "6 in" })
    expect(read.verdict("fall_away_check")).toBe("passes")
  })
})
