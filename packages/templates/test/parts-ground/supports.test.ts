import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { workbook } from "./workbook.ts"

const SEED = 20261127

/** A site drawn at random, in whole sixteenths of an inch. */
const sites = fc.record({
  length: fc.integer({ min: 100 * 16, max: 500 * 16 }),
  width: fc.integer({ min: 60 * 16, max: 300 * 16 }),
  fallLength: fc.integer({ min: 0, max: 24 * 16 }),
  fallWidth: fc.integer({ min: 0, max: 12 * 16 }),
  clearance: fc.integer({ min: 0, max: 8 * 16 }),
  skidSpacing: fc.integer({ min: 24 * 16, max: 72 * 16 }),
  supportSpacing: fc.integer({ min: 24 * 16, max: 96 * 16 }),
  offset: fc.integer({ min: 0, max: 12 * 16 }),
  block: fc.integer({ min: 2 * 16, max: 8 * 16 }),
  bed: fc.integer({ min: 2 * 16, max: 8 * 16 }),
  digLeast: fc.integer({ min: 0, max: 8 * 16 }),
})

const text = (sixteenths: number) => `${sixteenths}/16 in`

/** How many members, with the first and the last `span` apart and none further than `most` from the next. */
function membersOver(span: number, most: number): number {
  let spaces = 1
  while (spaces * most < span) spaces++
  return spaces + 1
}

describe("supports, by a plain loop", () => {
  test(`every support's place, stack, hole and stone (60 sites, seed ${SEED})`, () => {
    const read = workbook()
    fc.assert(
      fc.property(sites, (site) => {
        read.set({
          platform_length: text(site.length),
          platform_width: text(site.width),
          ground_fall_length: text(site.fallLength),
          ground_fall_width: text(site.fallWidth),
          underside_clearance: text(site.clearance),
          skid_size: "4x6",
          skid_spacing_max: text(site.skidSpacing),
          support_spacing_max: text(site.supportSpacing),
          support_end_offset: text(site.offset),
          block_height: text(site.block),
          block_courses_limit: "20",
          stone_bed_thickness: text(site.bed),
          dig_min: text(site.digLeast),
        })
        const skidThickness = 3.5 * 16
        const lines = membersOver(site.width - skidThickness, site.skidSpacing)
        const perLine = membersOver(site.length - 2 * site.offset, site.supportSpacing)
        expect(read.number("skid_count")).toBe(lines)
        expect(read.number("support_count")).toBe(lines * perLine)

        const got = {
          x: read.columnInches("supports.x"),
          y: read.columnInches("supports.y"),
          courses: read.column("supports.courses"),
          dig: read.columnInches("supports.dig"),
          stone: read.columnInches("supports.stone"),
        }
        let blocks = 0
        let row = 0
        for (let line = 0; line < lines; line++) {
          const y = skidThickness / 2 + (line * (site.width - skidThickness)) / (lines - 1)
          for (let number = 0; number < perLine; number++, row++) {
            const x = site.offset + (number * (site.length - 2 * site.offset)) / (perLine - 1)
            const ground = -(site.fallLength * x) / site.length - (site.fallWidth * y) / site.width
            let courses = 1
            while (courses * site.block < site.clearance - ground - 1e-4) courses++
            const stoneTop = site.clearance - courses * site.block
            const stoneBottom = Math.min(stoneTop - site.bed, ground - site.digLeast)
            blocks += courses
            expect(got.x[row]).toBeCloseTo(x / 16, 5)
            expect(got.y[row]).toBeCloseTo(y / 16, 5)
            expect(got.courses[row]).toBe(courses)
            expect(got.dig[row]).toBeCloseTo((ground - stoneBottom) / 16, 5)
            expect(got.stone[row]).toBeCloseTo((stoneTop - stoneBottom) / 16, 5)
            expect(stoneTop).toBeLessThanOrEqual(ground + 1e-4)
          }
        }
        expect(read.number("block_count")).toBe(blocks)
        const carried = read.column("supports.load").reduce((sum, load) => sum + load, 0)
        expect(carried).toBeCloseTo(read.number("platform_load"), 3)
      }),
      { numRuns: 60, seed: SEED },
    )
  })
})

describe("facts of the trade (common practice, no source)", () => {
  test("three skids with four supports each take 12", () => {
    const read = workbook({
      platform_length: "16 ft",
      platform_width: "8 ft",
      skid_spacing_max: "4 ft",
      support_spacing_max: "5 ft",
      support_end_offset: "6 in",
    })
    expect(read.number("skid_count")).toBe(3)
    expect(read.number("supports_per_skid")).toBe(4)
    expect(read.number("support_count")).toBe(12)
    expect(read.column("supports.line")).toHaveLength(12)
  })

  test("on a fall of 5 in with one block everywhere, the highest side is dug deepest", () => {
    const read = workbook({
      ground_fall_length: "5 in",
      ground_fall_width: "0 in",
      underside_clearance: "1 in",
      block_height: "8 in",
    })
    expect(new Set(read.column("supports.courses"))).toEqual(new Set([1]))
    const dig = read.columnInches("supports.dig").slice(0, read.number("supports_per_skid"))
    expect(dig).toEqual([...dig].sort((one, other) => other - one))
    expect(read.inches("greatest_dig")).toBeCloseTo(dig[0] ?? Number.NaN, 6)
    expect((dig[0] ?? 0) - (dig.at(-1) ?? 0)).toBeCloseTo((5 * 228) / 240, 6)
  })

  test("a sloping site needs more blocks than a flat list says", () => {
    const read = workbook()
    expect(read.number("block_count") - read.number("blocks_missed_by_flat")).toBe(24)
    expect(read.number("blocks_missed_by_flat")).toBeGreaterThan(0)
    const level = workbook({ ground_fall_length: "0 in", ground_fall_width: "0 in" })
    expect(level.number("blocks_missed_by_flat")).toBe(0)
    expect(level.number("block_count")).toBe(level.number("support_count"))
  })

  test("a skid just over 21 ft is two pieces that meet over a support, neighbours over different ones", () => {
    const read = workbook({ platform_length: "21 ft 2 in" })
    const pieces = read.column("skid_pieces.line")
    for (const line of [1, 2, 3, 4]) expect(pieces.filter((one) => one === line)).toHaveLength(2)
    const stations = read.columnInches("support_stations.x")
    const support = read.column("skid_joints.support")
    for (const [index, at] of read.columnInches("skid_joints.position").entries()) {
      expect(at).toBeCloseTo(stations[(support[index] ?? 0) - 1] ?? Number.NaN, 6)
      expect(support[index]).not.toBe(support[index - 1])
    }
    expect(read.columnInches("skid_joints.bearing")).toEqual([8, 8, 8, 8])
  })

  test("an exact fit costs no support more", () => {
    expect(
      workbook({ platform_length: "21 ft", support_spacing_max: "5 ft" }).number("supports_per_skid"),
    ).toBe(5)
    expect(
      workbook({ platform_length: "21 ft 1/64 in", support_spacing_max: "5 ft" }).number("supports_per_skid"),
    ).toBe(6)
  })
})

describe("published figures", () => {
  /** Reference record m-014: 3,200 lb on soils of 1,000 to 4,000 psf needs so many square inches. */
  test("face of block that the soil asks for", () => {
    const read = workbook()
    for (const [soil, area] of [
      [1000, 460.8],
      [1500, 307.2],
      [2000, 230.4],
      [3000, 153.6],
    ] as const) {
      read.set({
        platform_length: "16 ft 4 in",
        platform_width: "8 ft 3 1/2 in",
        skid_spacing_max: "4 ft",
        support_end_offset: "2 in",
        support_spacing_max: "8 ft",
        live_load: "100 psf",
        dead_load: "0 psf",
        soil_bearing: `${soil} psf`,
      })
      expect(read.number("support_load_max") / 4.4482216152605).toBeCloseTo(3200, 6)
      expect(read.number("block_face_needed") / 0.0254 ** 2).toBeCloseTo(area, 6)
    }
  })

  test("dressed sizes are those of PS 20", () => {
    const read = workbook()
    for (const [size, thickness, depth] of [
      ["4x4", 3.5, 3.5],
      ["4x6", 3.5, 5.5],
      ["4x8", 3.5, 7.25],
      ["6x6", 5.5, 5.5],
    ] as const) {
      read.set({ skid_size: size })
      expect(read.inches("skid_thickness")).toBeCloseTo(thickness, 9)
      expect(read.inches("skid_depth")).toBeCloseTo(depth, 9)
    }
  })
})
