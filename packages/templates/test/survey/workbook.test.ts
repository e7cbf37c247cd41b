import { describe, expect, test } from "vitest"
import { workbook } from "../parts-ground/workbook.ts"

const point = (x: number, y: number, level: number) => ({
  x: `${x} ft`,
  y: `${y} ft`,
  level: `${level} in`,
})

/** A lawn of 20 by 12 ft that is level but for a hump of 6 in in the middle. */
const HUMP = [point(0, 0, 0), point(20, 0, 0), point(20, 12, 0), point(0, 12, 0), point(10, 6, 6)]
/** Ground of the hump at (x, y) ft: a pyramid over the rectangle. */
const hump = (x: number, y: number) => 6 * Math.min(x / 10, (20 - x) / 10, y / 6, (12 - y) / 6)

describe("the shape of the ground", () => {
  test("automatic takes the plane while every point is near it, and triangles when one is not", () => {
    expect(workbook({}, HUMP).book.entry("ground_between_points").reading?.value).toBe(true)
    const near = workbook({ ground_plane_tolerance: "5 in" }, HUMP)
    expect(near.book.entry("ground_between_points").reading?.value).toBe(false)
    expect(near.columnInches("ground_plane.off_plane")[0]).toBeCloseTo(4.8, 6)
  })

  test("the choice is the user's, but three points are a plane", () => {
    expect(workbook({ ground_model: "plane" }, HUMP).inches("ground_high")).toBeCloseTo(1.2, 6)
    const three = workbook({ ground_model: "between points" }, HUMP.slice(0, 3))
    expect(three.book.entry("ground_between_points").reading?.value).toBe(false)
  })

  test("supports and edge stations stand on the ground between the points", () => {
    const read = workbook({}, HUMP)
    const [xs, ys] = [read.columnInches("supports.x"), read.columnInches("supports.y")]
    const ground = read.columnInches("supports.ground")
    expect(ground.length).toBe(read.number("support_count"))
    for (const [index, level] of ground.entries()) {
      expect(level).toBeCloseTo(hump((xs[index] ?? 0) / 12, (ys[index] ?? 0) / 12), 6)
    }
    for (const level of read.columnInches("edge_stations.ground")) expect(level).toBeCloseTo(0, 6)
    expect(read.inches("ground_high")).toBeCloseTo(0, 6)
    expect(read.book.problems().filter(({ code }) => code !== "needs_entry")).toEqual([])
  })

  test("levels that lie on a plane give the same answers either way", () => {
    const sloping = [
      point(0, 0, 0),
      point(20, 0, -7),
      point(20, 12, -9),
      point(0, 12, -2),
      point(5, 6, -2.75),
    ]
    const [by, between] = [workbook({}, sloping), workbook({ ground_model: "between points" }, sloping)]
    expect(between.book.entry("ground_between_points").reading?.value).toBe(true)
    for (const name of ["supports.dig", "supports.courses", "edge_stations.height", "ends.ground"]) {
      for (const [index, value] of between.column(name).entries()) {
        expect(value, name).toBeCloseTo(by.column(name)[index] ?? Number.NaN, 8)
      }
    }
  })

  test("more supports, and no levels any more, are followed", () => {
    const read = workbook({}, HUMP)
    read.set({ support_spacing_max: "3 ft" })
    expect(read.column("supports.ground").length).toBe(read.number("support_count"))
    expect(read.book.editTable("ground_levels", []).accepted).toBe(true)
    expect(read.book.entry("ground_between_points").reading?.value).toBe(false)
    expect(read.number("ground_slope_length") * 240).toBeCloseTo(7, 6)
  })
})

describe("levels that cannot be right", () => {
  test("two at one place are named, and the check says what to do", () => {
    const read = workbook({}, [...HUMP, point(10, 6, 4)])
    expect(read.verdict("levels_apart_check")).toBe("fails")
    expect(read.column("level_neighbours.repeats")).toEqual([0, 0, 0, 0, 0, 1])
    const problems = read.book.problems().filter(({ code }) => code !== "needs_entry")
    expect(problems).toEqual([
      {
        code: "unmet",
        at: { entry: "level_neighbours" },
        says: [expect.stringMatching(/points 5 and 6 .*Delete one/)],
      },
    ])
    expect(read.book.entry("levels_apart_check").check?.advice[0]).toContain('3"')
    for (const level of read.columnInches("supports.ground")) expect(level).toBeTypeOf("number")
  })

  test("three in a line fail the older check, not this one", () => {
    const read = workbook({}, [point(0, 0, 1), point(5, 3, 0.9), point(20, 12, 0)])
    expect(read.verdict("levels_check")).toBe("fails")
    expect(read.verdict("levels_apart_check")).toBe("passes")
  })
})
