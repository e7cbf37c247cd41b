import { describe, expect, test } from "vitest"
import { walk } from "./walk.ts"

const boardwalk = walk()

/**
 * The walk as it opens: 40 ft by 4 ft, counted here in straight lines of arithmetic in inches, without the workbook's
 * formulas.
 */
const LENGTH = 480
const WIDTH = 48
const BOARD = 5.5
const GAP = 0.25
const STRINGER = { thickness: 1.5, depth: 5.5 }
const SLEEPER = { side: 3.5, length: 46, inFromEnd: 6, apartAtMost: 48 }
const FALL = 3
const STRIP = { length: 52, width: 12, thickness: 4, dig: 4 }

describe("the walk as it opens, counted by hand", () => {
  test("84 rows of boards: laid one by one until the walk is covered", () => {
    let rows = 0
    for (let covered = 0; covered < LENGTH; covered = rows * BOARD + (rows - 1) * GAP) rows++
    expect(rows).toBe(84)
    expect(boardwalk.number("board_rows")).toBe(rows)
    expect(boardwalk.inches("board_last_width")).toBeCloseTo(LENGTH - 83 * (BOARD + GAP), 9)
  })

  test("4 lines of stringers, 2 in from either edge", () => {
    const room = WIDTH - 2 * 2 - STRINGER.thickness
    let spaces = 0
    while (spaces * 16 < room) spaces++
    expect(boardwalk.number("stringer_count")).toBe(spaces + 1)
    const centres = Array.from({ length: spaces + 1 }, (_, line) => 2.75 + (line * room) / spaces)
    expect(boardwalk.columnInches("stringers.y")).toEqual(centres.map((y) => Math.round(y * 1e6) / 1e6))
    const carried = boardwalk.columnInches("stringers.carries").reduce((sum, one) => sum + one, 0)
    expect(carried).toBeCloseTo(WIDTH, 5)
  })

  test("11 sleepers, the first and the last 6 in from the ends, none more than 4 ft from the next", () => {
    const places = boardwalk.columnInches("sleepers.x")
    expect(boardwalk.number("sleeper_count")).toBe(11)
    expect(boardwalk.number("support_count")).toBe(11)
    expect(places).toHaveLength(11)
    expect(places[0]).toBeCloseTo(SLEEPER.inFromEnd, 6)
    expect(places.at(-1)).toBeCloseTo(LENGTH - SLEEPER.inFromEnd, 6)
    const apart = places.slice(1).map((x, index) => x - (places[index] ?? 0))
    for (const one of apart) expect(one).toBeLessThanOrEqual(SLEEPER.apartAtMost)
    // One space fewer would be too wide.
    expect((LENGTH - 2 * SLEEPER.inFromEnd) / 9).toBeGreaterThan(SLEEPER.apartAtMost)
  })

  test("screws from the crossings: 84 boards, 4 stringers, 2 screws; ramp and step beside them", () => {
    expect(boardwalk.number("crossing_count")).toBe(84 * 4)
    // The ramp: 11 in up and 132 in out.
    const slope = Math.sqrt(11 ** 2 + 132 ** 2)
    const rampRows = Math.ceil((slope + GAP) / (BOARD + GAP))
    expect(rampRows).toBe(24)
    // 14 in up at the low end is two risers of 7 in, so one tread of two boards on four carriages.
    expect(boardwalk.number("screw_count")).toBe(2 * (84 * 4 + rampRows * 4 + 2 * 4))
    // 880 and a tenth of it.
    expect(boardwalk.number("screws_to_buy")).toBe(880 + 88)
  })

  test("frame screws: seats, heads, cleats and kerbs", () => {
    const joints = boardwalk.number("stringer_joint_count")
    const seats = 4 * 11 + joints
    const heads = 4 + 4
    const packers = 2 * 3 * (Math.ceil(160 / 48) + 1)
    expect(boardwalk.number("frame_screw_count")).toBe(2 * seats + 4 * heads + 8 * 2 * joints + 2 * packers)
  })

  test("stone: each strip from 4 in below its own ground up to one level", () => {
    const places = Array.from({ length: 11 }, (_, index) => 6 + index * 46.8)
    const depths = places.map((x) => {
      const ground = (-FALL * x) / LENGTH
      const bottom = Math.min(1 - STRIP.thickness, ground - STRIP.dig)
      return { dig: ground - bottom, stone: 1 - bottom }
    })
    const face = STRIP.length * STRIP.width
    const stone = depths.reduce((sum, one) => sum + one.stone * face, 0) / 1728
    const dug = depths.reduce((sum, one) => sum + one.dig * face, 0) / 1728
    expect(boardwalk.cubicFeet("stone_in_place")).toBeCloseTo(stone, 6)
    expect(boardwalk.cubicFeet("dug_volume")).toBeCloseTo(dug, 6)
    expect(boardwalk.inches("greatest_dig")).toBeCloseTo(Math.max(...depths.map(({ dig }) => dig)), 6)
    // 1.20 cu yd loose, in steps of half a yard.
    expect(boardwalk.cubicFeet("stone_order")).toBeCloseTo(Math.ceil((stone * 1.25) / 13.5) * 13.5, 6)
  })

  test("an inner sleeper carries 46.8 in of walk, and presses with its own underside", () => {
    const load = (50 * 46.8 * WIDTH) / 144
    expect(boardwalk.pounds("support_load_max")).toBeCloseTo(load, 4)
    expect(boardwalk.psf("soil_pressure_max")).toBeCloseTo(load / ((SLEEPER.length * SLEEPER.side) / 144), 4)
    const all = boardwalk.column("supports.load").reduce((sum, one) => sum + one, 0)
    expect(all).toBeCloseTo(boardwalk.number("platform_load"), 6)
  })

  test("11 in above the high end, 14 in above the low end", () => {
    const up = 1 + SLEEPER.side + STRINGER.depth + 1
    expect(boardwalk.inches("top_height")).toBeCloseTo(up, 9)
    expect(boardwalk.inches("height_above_ground")).toBeCloseTo(up + FALL, 9)
  })
})

describe("facts of the trade (common practice, no source)", () => {
  test("a 40 ft walk of 5 1/2 in boards with 1/4 in gaps takes 84, and the gap that fits is a little less", () => {
    expect(boardwalk.number("board_rows_fitted")).toBe(84)
    expect(boardwalk.inches("board_gap_fitted")).toBeCloseTo((480 - 84 * 5.5) / 83, 9)
  })

  test("an 8 ft board gives two sleepers of 46 in, but only one of 48 in: the saw takes its eighth", () => {
    const sold = { sleeper_stock: "8 ft" }
    const boards = (length: string): number => {
      const one = walk({ ...sold, sleeper_length: length, stone_bed_length: "56 in" })
      const sizes = one.texts("stock_to_buy.size")
      const counts = one.column("stock_to_buy.count")
      return counts[sizes.indexOf("4x4")] ?? 0
    }
    expect(boards("46 in")).toBe(6)
    expect(boards("48 in")).toBe(11)
  })

  test("a kerb and its packer leave room for water, and the walk wide enough for a wheelchair", () => {
    expect(boardwalk.inches("clear_width")).toBeCloseTo(48 - 2 * 3.5, 9)
    expect(boardwalk.verdict("clear_width_check")).toBe("passes")
    expect(walk({ platform_width: "3 ft 6 in" }).verdict("clear_width_check")).toBe("fails")
  })
})
