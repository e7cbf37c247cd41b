import { describe, expect, test } from "vitest"
import { workbook } from "./workbook.ts"

const FEET = 0.3048

const point = (x: number, y: number, level: number) => ({ x: `${x} ft`, y: `${y} ft`, level: `${level} ft` })

describe("the plane through surveyed levels", () => {
  /** Reference record m-030: five points, z = 158/15 - 7/3 x + 56/15 y. */
  test("the published exercise of five points", () => {
    const read = workbook({}, [
      point(0, -3, 0),
      point(4, 0, 0),
      point(3, -1, 1),
      point(1, -2, 1),
      point(-1, -4, -3),
    ])
    expect(read.number("ground_slope_length")).toBeCloseTo(7 / 3, 9)
    expect(read.number("ground_slope_width")).toBeCloseTo(-56 / 15, 9)
    expect(read.number("ground_origin") / FEET).toBeCloseTo(158 / 15, 9)
  })

  test("levels of the four corners give what the falls give, from any mark", () => {
    const byFalls = workbook()
    const byLevels = workbook({ ground_fall_length: "0 in", ground_fall_width: "0 in" }, [
      { x: "0 ft", y: "0 ft", level: "50 ft" },
      { x: "20 ft", y: "0 ft", level: "49 ft 5 in" },
      { x: "20 ft", y: "12 ft", level: "49 ft 3 in" },
      { x: "0 ft", y: "12 ft", level: "49 ft 10 in" },
    ])
    expect(byLevels.inches("ground_origin")).toBeCloseTo(600, 6)
    expect(byLevels.columnInches("ground_plane.off_plane")[0]).toBeCloseTo(0, 6)
    for (const name of ["supports.dig", "supports.courses", "edge_stations.height"]) {
      for (const [index, value] of byLevels.column(name).entries()) {
        expect(value).toBeCloseTo(byFalls.column(name)[index] ?? Number.NaN, 9)
      }
    }
  })

  test("points that are too few, or in one line, are refused in favour of the falls, and say so", () => {
    for (const levels of [
      [point(0, 0, 1)],
      [point(0, 0, 1), point(20, 12, 0)],
      [point(0, 0, 1), point(5, 3, 0.9), point(20, 12, 0)],
      [point(0, 4, 1), point(5, 4, 0.9), point(20, 4, 0)],
    ]) {
      const read = workbook({}, levels)
      expect(read.verdict("levels_check")).toBe("fails")
      expect(read.number("ground_slope_length") * 240).toBeCloseTo(7, 9)
      expect(read.book.problems().filter((problem) => problem.code !== "needs_entry")).toEqual([])
    }
    expect(workbook().verdict("levels_check")).toBe("passes")
  })

  test("the worst point off the plane is named", () => {
    const read = workbook({}, [
      point(0, 0, 1),
      point(20, 0, 1),
      point(20, 12, 1),
      point(0, 12, 1),
      point(10, 6, 0.5),
    ])
    expect((read.column("ground_plane.off_plane")[0] ?? Number.NaN) / FEET).toBeCloseTo(0.4, 9)
  })
})

describe("size and heights", () => {
  test("the 3-4-5 triangle is the biggest that fits in whole steps", () => {
    const read = workbook({ platform_length: "22 ft", platform_width: "13 ft" })
    expect(read.columnInches("square_triangle.short")[0]).toBeCloseTo(144, 9)
    expect(read.columnInches("square_triangle.long")[0]).toBeCloseTo(192, 9)
    expect(read.columnInches("square_triangle.across")[0]).toBeCloseTo(240, 9)
  })

  test("ground that falls towards the first end makes that the low end", () => {
    const read = workbook({}, [point(0, 0, 0), point(20, 0, 1), point(0, 12, 0)])
    expect(read.inches("ground_high")).toBeCloseTo(12, 6)
    const [high = Number.NaN, low = Number.NaN] = read.columnInches("climbs.rise")
    expect(low - high).toBeCloseTo(12, 6)
    expect(read.inches("height_above_ground")).toBeCloseTo(read.inches("top_height") + 12, 6)
  })

  // Level along, 24 in down across: an end is 12 in lower at its middle than at its high corner, 24 in at its low one.
  test("every side has a drop, a rise at its middle and alike steps of its own", () => {
    const chosen = { steps_low_end: "no", steps_other_side: "yes", riser_limit: "8 in" }
    const read = workbook({ ground_fall_length: "0 in", ground_fall_width: "24 in", ...chosen })
    const top = read.inches("top_height")
    const rises = [top + 12, top + 12, top, top + 24]
    const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 6))
    const said = (name: string) => read.book.entry(name).readings?.map((reading) => reading?.value)
    expect(said("climbs.end")).toEqual(["high end", "low end", "first long side", "other long side"])
    expect(read.column("climbs.side").slice(2)).toEqual([1, 3])
    expect(read.columnInches("climbs.rise")).toEqual(near(rises))
    expect(read.columnInches("climbs.drop")).toEqual(near([top + 24, top + 24, top, top + 24]))
    const risers = rises.map((rise) => Math.ceil(rise / 8))
    expect(read.column("climbs.risers")).toEqual(risers)
    expect(read.columnInches("climbs.riser_height")).toEqual(
      near(rises.map((rise, at) => rise / (risers[at] ?? 0))),
    )
    expect(read.column("climbs.treads")).toEqual([(risers[0] ?? 0) - 1, 0, 0, (risers[3] ?? 0) - 1])
    expect(said("climbs.within")).toEqual([
      (top + 24) / (risers[0] ?? 0) <= 8,
      (top + 24) / (risers[1] ?? 0) <= 8,
      true,
      true,
    ])
  })

  // The ground is surveyed with a hole beside the middle of the first long side: only that side drops into it.
  test("the worst station of a side is found between its corners", () => {
    const corners = [point(0, 0, 0), point(20, 0, 0), point(0, 12, 0), point(20, 12, 0)]
    const read = workbook({}, [...corners, point(10, 0, -1), point(10, 6, 0)])
    const top = read.inches("top_height")
    const [first = Number.NaN, ...others] = read.columnInches("side_drops.drop")
    expect(first).toBeCloseTo(top + 12, 6)
    for (const drop of others) expect(drop).toBeCloseTo(top, 6)
    expect(read.columnInches("side_drops.x")[0]).toBeCloseTo(120, 6)
  })

  test("the drop for a guard reaches past the low corner, straight downhill", () => {
    const read = workbook({ ground_fall_length: "20 in", ground_fall_width: "0 in", guard_reach: "36 in" })
    expect(read.inches("drop_within_reach") - read.inches("height_above_ground")).toBeCloseTo(
      (36 * 20) / 240,
      6,
    )
  })
})

describe("limits wait for the user's authority", () => {
  test("blank limits need an entry, and no check passes for want of one", () => {
    const read = workbook()
    for (const name of ["area_limit_check", "height_limit_check", "guard_check", "boundary_check"]) {
      expect(read.verdict(name)).toBe("needs_entry")
    }
  })

  test("over the limit, the advice names the length that would stay within it", () => {
    const read = workbook({ area_limit: "200 ft2" })
    expect(read.verdict("area_limit_check")).toBe("fails")
    expect(read.inches("length_within_area_limit")).toBeCloseTo(200, 6)
    expect(read.book.entry("area_limit_check").check?.advice[0]).toContain(`16' 8"`)
  })
})
