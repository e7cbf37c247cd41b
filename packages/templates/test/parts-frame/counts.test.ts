import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { column, columnInches, inches, number, platform } from "./platform.ts"

/** Spaces rounded up; in whole sixteenths, so that an exact fit is exact. */
const up = (over: number, by: number): number => Math.ceil(over / by)

/** The counts of a frame, worked in a straight line from whole sixteenths of an inch, and nothing from the workbook. */
function byHand(length: number, width: number, spacing: number, blockingRows: number) {
  const t = 24
  const [sheetLength, sheetWidth, gap] = [96 * 16, 48 * 16, 2]
  const joists = up(length - t, spacing) + 1
  const seamStep = Math.floor((sheetLength + gap) / spacing) * spacing
  const halfStep = Math.max(spacing, Math.floor(seamStep / 2 / spacing) * spacing)
  let rows = 0
  let seams = 0
  let screws = 0
  for (let near = 0; near < width; near += sheetWidth + gap) {
    let inRow = 0
    // A sheet reaches as far as its length and half a gap at either end.
    for (let start = 0; length - start > sheetLength + gap; inRow++)
      start = inRow > 0 ? start + seamStep : rows % 2 === 0 ? seamStep : halfStep
    rows++
    seams += inRow
    const rowWidth = Math.min(sheetWidth, width - near)
    const endLines = 2 + 2 * inRow
    const fieldLines = Math.max(0, joists - 2 - inRow)
    screws += endLines * (up(rowWidth, 6 * 16) + 1) + fieldLines * (up(rowWidth, 12 * 16) + 1)
  }
  const edges = 2 + 2 * Math.min(blockingRows, rows - 1)
  return {
    joist_count: joists,
    blocking_count: blockingRows * (joists - 1),
    sheet_row_count: rows,
    sheet_seam_count: seams,
    sheet_piece_count: seams + rows,
    screw_count: screws + edges * (joists - 1) * 2,
    crossing_count: 3 * joists,
  }
}

describe("counts against a straight-line computation", () => {
  test("for any platform in whole sixteenths", () => {
    const frames = fc.record({
      length: fc.integer({ min: 100 * 16, max: 400 * 16 }),
      width: fc.integer({ min: 60 * 16, max: 190 * 16 }),
      spacing: fc.constantFrom(12 * 16, 16 * 16, 24 * 16),
      blockingRows: fc.integer({ min: 0, max: 4 }),
    })
    fc.assert(
      fc.property(frames, ({ length, width, spacing, blockingRows }) => {
        const book = platform({
          platform_length: `${length / 16} in`,
          platform_width: `${width / 16} in`,
          joist_spacing: `${spacing / 16} in`,
          blocking_rows: `${blockingRows}`,
        })
        const expected = byHand(length, width, spacing, blockingRows)
        const found = Object.fromEntries(Object.keys(expected).map((name) => [name, number(book, name)]))
        expect(found).toEqual(expected)
      }),
      { numRuns: 60 },
    )
  })

  test("exact fits never round up: 9 spaces of 16 in and a joist's thickness are 10 joists, 1/16 in more is 11", () => {
    expect(number(platform({ platform_length: "145 1/2 in" }), "joist_count")).toBe(10)
    expect(number(platform({ platform_length: "145 9/16 in" }), "joist_count")).toBe(11)
  })

  test("three rows of sheets and three gaps are three rows, 1/16 in more is a strip of that, which is flagged", () => {
    const rowsOf = (platform_width: string) => columnInches(platform({ platform_width }), "sheet_rows.width")
    expect(rowsOf("144 1/4 in")).toEqual([48, 48, 48])
    expect(rowsOf("144 3/8 in")).toEqual([48, 48, 48])
    expect(rowsOf("144 7/16 in")[3]).toBeCloseTo(1 / 16, 6)
    const verdict = (platform_width: string) =>
      platform({ platform_width }).entry("sheet_strip_check").check?.verdict
    expect(verdict("144 3/8 in")).toBe("passes")
    expect(verdict("144 7/16 in")).toBe("fails")
    expect(verdict("150 in")).toBe("fails")
    expect(verdict("151 in")).toBe("passes")
  })

  test("a sheet and a gap reach from end to end without a seam, 1/16 in more takes one in each row", () => {
    const whole = platform({ platform_length: "96 1/8 in" })
    expect(columnInches(whole, "sheet_pieces.length")).toEqual([96, 96, 96])
    const longer = platform({ platform_length: "96 3/16 in" })
    expect(columnInches(longer, "sheet_seams.position")).toEqual([96, 48, 96])
  })
})

describe("joists and rims", () => {
  test("a last mark that falls on the end joist is flagged, with a spacing that does not", () => {
    const { check } = platform({ platform_length: "178 in" }).entry("last_bay_check")
    expect(check?.verdict).toBe("fails")
    expect(check?.advice.join(" ")).toContain("1' 2 11/16\"")
  })

  test("the bays and the joists together are the platform", () => {
    const book = platform({ platform_length: "19 ft 5 in", joist_spacing: "19.2 in" })
    const bays = columnInches(book, "joists.bay").reduce((sum, bay) => sum + bay, 0)
    expect(bays + number(book, "joist_count") * 1.5).toBeCloseTo(233, 5)
  })

  // Common practice, no source: a rim is joined behind a joist, and the joints of the two rims are not opposite.
  test.each(["20 ft", "22 ft 5 in", "31 ft", "35 ft 11 in", "48 ft"])(
    "rims of %s: pieces no longer than the lengths sold, joined behind joists",
    (length) => {
      const book = platform({ platform_length: length, rim_stock: "12 ft, 16 ft" })
      const total = columnInches(book, "rim_pieces.length").reduce((sum, one) => sum + one, 0)
      expect(total).toBeCloseTo(2 * inches(book, "platform_length"), 4)
      expect(Math.max(...columnInches(book, "rim_pieces.length"))).toBeLessThanOrEqual(192)
      expect(Math.min(...columnInches(book, "rim_pieces.length"))).toBeGreaterThan(16)
      expect(new Set(columnInches(book, "rim_joints.bearing"))).toEqual(new Set([0.75]))
    },
  )

  test("a stub at the end of a rim is flagged, and the other rim has none", () => {
    const book = platform({ platform_length: "13190 mm", joist_spacing: "807 mm", rim_stock: "12 ft" })
    expect(book.problems()).toEqual([])
    expect(book.entry("rim_piece_check").check?.verdict).toBe("fails")
    const lengths = columnInches(book, "rim_pieces.length")
    expect(Math.min(...lengths.slice(5))).toBeGreaterThan(30)
  })

  test("the joints of the two rims are behind different joists", () => {
    expect(column(platform(), "rim_joints.joist")).toEqual([9, 8])
  })

  test("joists longer than the longest length sold fail, and say so twice: at the check and at the plan", () => {
    const book = platform({ joist_stock: "8 ft" })
    expect(book.entry("joist_stock_check").check?.verdict).toBe("fails")
    expect(book.problems().map(({ code }) => code)).toContain("unmet")
  })
})

describe("sheets", () => {
  test("seams lie on joists and are staggered from row to row", () => {
    const book = platform()
    expect(columnInches(book, "sheet_seams.position")).toEqual([96, 192, 48, 144, 96, 192])
    expect(new Set(columnInches(book, "sheet_seams.distance"))).toEqual(new Set([0]))
    expect(book.entry("sheet_seam_check").check?.verdict).toBe("passes")
  })

  // Twenty by twelve feet: 7 1/2 sheets by the area, so 8 at least; the halves of three rows make two more whole ones.
  test("nine pieces come out of eight sheets, and no fewer would do", () => {
    const book = platform()
    expect(number(book, "sheet_piece_count")).toBe(9)
    expect(number(book, "sheet_count")).toBe(8)
    expect(book.entry("sheet_cuts").report?.bound).toBe(8)
  })

  test("the pieces of a row and its gaps fill the row", () => {
    const book = platform({ platform_length: "27 ft 3 in" })
    const rows = column(book, "sheet_pieces.row")
    const runs = columnInches(book, "sheet_pieces.run")
    for (const row of [1, 2, 3]) {
      const run = runs.reduce((sum, one, at) => (rows[at] === row ? sum + one : sum), 0)
      expect(run).toBeCloseTo(327, 5)
    }
  })

  test("a last piece over one bay only is flagged", () => {
    const { check } = platform({ platform_length: "17 ft" }).entry("sheet_piece_check")
    expect(check?.verdict).toBe("fails")
  })
})

describe("net", () => {
  test.each([
    ["0", "0", 0],
    ["1", "0", 3],
    ["0", "1", 4],
    ["1", "1", 6],
    ["1", "2", 9],
    ["2", "1", 8],
    ["2", "2", 10],
  ])(
    "nets at %s ends and %s sides of a 20 ft by 12 ft platform: %s posts, all different",
    (ends, sides, posts) => {
      const book = platform({ net_ends: ends, net_sides: sides })
      expect(number(book, "net_post_count")).toBe(posts)
      const y = columnInches(book, "net_posts.y")
      const places = columnInches(book, "net_posts.x").map((x, row) => `${x} ${y[row]}`)
      expect(new Set(places).size).toBe(posts)
    },
  )

  // Nine posts at 20 ft by 12 ft with posts 8 ft apart at most: four corners, one across the end, two along each side.
  test("two guys at each of four corners and one at each of five posts between are 13, each with a peg", () => {
    const book = platform({ net_ends: "1", net_sides: "2" })
    expect(number(book, "net_guy_count")).toBe(13)
  })

  // A right triangle of 3, 4 and 5: 6 ft of net and 2 ft to the ground, the peg 6 ft out, is 10 ft.
  test("a guy from 8 ft up to a peg 6 ft out is 10 ft, and two for the knots", () => {
    const book = platform({ net_height: "6 ft", height_above_ground: "2 ft", net_guy_reach: "6 ft" })
    expect(columnInches(book, "net_order.guy_length")[0]).toBeCloseTo(144, 6)
    expect(columnInches(book, "net_order.guy_rope")[0]).toBeCloseTo(144 * number(book, "net_guy_count"), 4)
  })

  // FAO hanging ratios (record i-017, pairs in i-018): hung at 0.6 of its length, a net hangs 0.8 of its height.
  test("a net hung at 0.6 is ordered a quarter higher than it hangs", () => {
    const book = platform({ net_hanging_ratio: "0.6", net_height: "8 ft" })
    expect(columnInches(book, "net_order.stretched_height")[0]).toBeCloseTo(120, 6)
  })

  // Table tennis ball of 40 mm (record j-009, from memory): a mesh as large lets it through.
  test("a mesh of 40 mm does not stop a ball of 40 mm", () => {
    expect(platform({ net_mesh: "40 mm" }).entry("net_mesh_check").check?.verdict).toBe("fails")
    expect(platform({ net_mesh: "25 mm" }).entry("net_mesh_check").check?.verdict).toBe("passes")
  })
})
