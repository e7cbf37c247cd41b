import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { column, columnInches, inches, number, platform } from "../parts-frame/platform.ts"

describe("where the laying starts", () => {
  // 19 ft 3 in of 12 in tiles: 19 whole and 3 in left. From the middle: 18 whole and two of 7 1/2 in.
  test("from one edge a sliver of 3 in, from the middle two fair cuts of 7 1/2 in", () => {
    const typed = { platform_length: "20 ft 3 in" }
    const edge = platform(typed)
    expect(columnInches(edge, "tile_edges.cut").slice(0, 2)).toEqual([0, 3])
    expect(edge.entry("tile_strip_check").check?.verdict).toBe("passes")
    const middle = platform({ ...typed, tile_start: "from the middle" })
    expect(columnInches(middle, "tile_edges.cut").slice(0, 2)).toEqual([7.5, 7.5])
  })

  test("a sliver is flagged, and laying from the middle cures it", () => {
    const typed = { platform_width: "12 ft 1 in" }
    expect(platform(typed).entry("tile_strip_check").check?.verdict).toBe("fails")
    const middle = platform({ ...typed, tile_start: "from the middle" })
    expect(middle.entry("tile_strip_check").check?.verdict).toBe("passes")
  })

  test("whole tiles stay whole wherever the laying starts", () => {
    const middle = platform({ tile_start: "from the middle" })
    expect(number(middle, "tile_cut_count")).toBe(0)
    expect(number(middle, "tile_count")).toBe(19 * 11)
  })

  test("tiles of a row and the rows fill the tiled area, from either start", () => {
    const fields = fc.record({
      length: fc.integer({ min: 5 * 16 * 12, max: 40 * 16 * 12 }),
      width: fc.integer({ min: 5 * 16 * 12, max: 20 * 16 * 12 }),
      tile: fc.constantFrom(12 * 16, 18 * 16, 250),
      start: fc.constantFrom("from one edge", "from the middle"),
    })
    fc.assert(
      fc.property(fields, ({ length, width, tile, start }) => {
        const book = platform({
          platform_length: `${length / 16} in`,
          platform_width: `${width / 16} in`,
          tile_length: `${tile / 16} in`,
          tile_width: `${tile / 16} in`,
          tile_margin: "0 in",
          tile_start: start,
        })
        const [whole = 0] = column(book, "tile_directions.whole").map(Number)
        const cuts = columnInches(book, "tile_edges.cut")
        expect(whole * (tile / 16) + (cuts[0] ?? 0) + (cuts[1] ?? 0)).toBeCloseTo(length / 16, 5)
        const rows = columnInches(book, "tile_rows.width").reduce((sum, one) => sum + one, 0)
        expect(rows).toBeCloseTo(width / 16, 5)
        const nearEdges = columnInches(book, "tile_rows.y")
        const widths = columnInches(book, "tile_rows.width")
        for (const [row, y] of nearEdges.entries()) {
          const before = widths.slice(0, row).reduce((sum, one) => sum + one, 0)
          expect(y).toBeCloseTo(before, 5)
        }
        expect(number(book, "tile_count")).toBe(Math.ceil(length / tile) * Math.ceil(width / tile))
      }),
      { numRuns: 40 },
    )
  })
})

describe("warm and cold", () => {
  // Growth = expansion × length × rise (record h-001). 19 ft at 121 millionths (h-002) from 65 °F to 140 °F is 75 °F, 41.67 K: 1.149 in;
  // down to 0 °F is 36.11 K: 0.996 in.
  test("growth and shrinkage by hand, half at either end", () => {
    const book = platform()
    const grown = 228 * 121e-6 * (75 / 1.8)
    const shrunk = 228 * 121e-6 * (65 / 1.8)
    expect(inches(book, "tile_growth_length")).toBeCloseTo(grown, 9)
    expect(Number(column(book, "tile_directions.shrink")[0]) / 0.0254).toBeCloseTo(shrunk, 9)
    expect(columnInches(book, "tile_edges.gap_laid")).toEqual([6, 6, 6, 6])
    expect(columnInches(book, "tile_edges.gap_hot")[0]).toBeCloseTo(6 - grown / 2, 5)
    expect(columnInches(book, "tile_edges.gap_cold")[1]).toBeCloseTo(6 + shrunk / 2, 5)
  })

  test("the largest field that fits just fits, and an inch more buckles", () => {
    const tight = { tile_margin: "1/4 in" }
    const buckled = platform(tight)
    const { check } = buckled.entry("tile_fit_check")
    expect(check?.verdict).toBe("fails")
    expect(check?.advice.join(" ")).toMatch(/Lay|lay/)
    const length = inches(buckled, "tile_area_length_most")
    const width = inches(buckled, "tile_area_width_most")
    const fits = { tile_area_length: `${length - 1e-5} in`, tile_area_width: `${width - 1e-5} in` }
    expect(["passes", "near"]).toContain(platform(fits).entry("tile_fit_check").check?.verdict)
    const over = { ...fits, tile_area_length: `${length + 1} in` }
    expect(platform(over).entry("tile_fit_check").check?.verdict).toBe("fails")
  })

  test("laid at the temperature that the advice names, the same field fits", () => {
    const typed = { tile_area_length: "238 1/2 in", tile_area_width: "10 ft" }
    const cold = platform({ ...typed, lay_temperature: "40 °F" })
    expect(cold.entry("tile_fit_check").check?.verdict).toBe("fails")
    const kelvin = number(cold, "lay_temperature_least")
    const warm = platform({ ...typed, lay_temperature: `${kelvin - 273.15 + 0.01} °C` })
    expect(warm.entry("tile_fit_check").check?.verdict).not.toBe("fails")
    const cooler = platform({ ...typed, lay_temperature: `${kelvin - 273.15 - 1} °C` })
    expect(cooler.entry("tile_fit_check").check?.verdict).toBe("fails")
  })
})

describe("colours", () => {
  // 19 by 11 tiles are 209; chequered from a corner, 105 and 104; the ring round the edge is 2 × (19 + 11) − 4.
  test.each([
    ["one colour", 209, 0],
    ["chequered in two colours", 105, 104],
    ["border in a second colour", 153, 56],
  ])("%s: %s and %s, each with its spare", (tile_pattern, first, second) => {
    const book = platform({ tile_pattern })
    expect(column(book, "tile_colours.in_floor")).toEqual([first, second])
    const buy = [Math.ceil((first * 105) / 100), Math.ceil((second * 105) / 100)]
    expect(column(book, "tile_colours.to_buy")).toEqual(buy)
    expect(number(book, "tiles_to_buy")).toBe((buy[0] ?? 0) + (buy[1] ?? 0))
  })
})
