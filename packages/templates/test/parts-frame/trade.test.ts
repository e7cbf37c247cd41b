import { describe, expect, test } from "vitest"
import { column, INCH, inches, number, platform } from "./platform.ts"

describe("facts of the trade", () => {
  // Common practice, no source.
  test("14 by 7 tiles of 18 in are 21 ft by 10 ft 6 in, about 220 sq ft, on a base a few inches larger", () => {
    const book = platform({
      platform_length: "21 ft 6 in",
      platform_width: "11 ft",
      tile_length: "18 in",
      tile_width: "18 in",
      tile_area_length: "21 ft",
      tile_area_width: "10 ft 6 in",
    })
    expect(number(book, "tile_count")).toBe(98)
    expect(number(book, "tile_cut_count")).toBe(0)
    expect(number(book, "tile_count") * 1.5 * 1.5).toBeCloseTo(220, -1)
    expect(inches(book, "tile_base_margin")).toBeCloseTo(3, 9)
    expect(book.entry("tile_fit_check").check?.verdict).toBe("passes")
  })

  // Common practice, no source.
  test("a tiled area as large as its base has no room to grow", () => {
    const book = platform({ tile_area_length: "20 ft", tile_area_width: "12 ft" })
    expect(book.entry("tile_fit_check").check?.verdict).toBe("fails")
  })

  // Common practice, no source.
  test("the sheets of such a platform take several hundred screws", () => {
    const screws = number(platform({ platform_length: "21 ft 6 in", platform_width: "11 ft" }), "screw_count")
    expect(screws).toBeGreaterThan(300)
    expect(screws).toBeLessThan(900)
  })
})

describe("published figures", () => {
  // American Softwood Lumber Standard PS 20, in a tabulation (records f-034 to f-038).
  test.each([
    ["2x4", 1.5, 3.5],
    ["2x6", 1.5, 5.5],
    ["2x8", 1.5, 7.25],
    ["2x10", 1.5, 9.25],
    ["2x12", 1.5, 11.25],
  ])("a %s is %s in by %s in", (size, thickness, depth) => {
    const book = platform({ joist_size: size, rim_size: size })
    expect(inches(book, "joist_thickness")).toBeCloseTo(thickness, 9)
    expect(inches(book, "joist_depth")).toBeCloseTo(depth, 9)
  })

  // US Army subcourse EN5155 (record m-001): fourteen 1x4 of 8 ft are 37 1/3 board feet. Here they are the edge boards: ten
  // along the sides and four across the ends.
  test("fourteen 1x4 of 8 ft are 37 1/3 board feet", () => {
    const book = platform({
      platform_length: "38 ft",
      platform_width: "16 ft",
      edge_board_size: "1x4",
      edge_board_rise: "0 in",
      edge_board_stock: "8 ft",
      edge_board_ends: "2",
      edge_board_sides: "2",
    })
    const sizes = book.entry("stock_to_buy.size").readings?.map((reading) => reading?.value) ?? []
    const row = sizes.indexOf("1x4")
    expect(book.entry("stock_to_buy.count").readings?.[row]?.value).toBe(14)
    expect(Number(book.entry("stock_to_buy.board_feet").readings?.[row]?.value)).toBeCloseTo(37 + 1 / 3, 9)
  })

  // The board foot is 144 cubic inches (record f-032); in SI 0.002359737 m3 (record f-033, from memory).
  test("a board foot is 0.002359737 cubic metres", () => {
    expect(number(platform(), "board_foot")).toBeCloseTo(0.002359737, 9)
  })

  // Growth = expansion × length × rise (record h-001). 15 m over 55 K at 100 millionths: 82.5 mm (record h-011, from memory).
  test("15 m of plastic at 100 millionths grow 82.5 mm over 55 K", () => {
    const book = platform({
      tile_area_length: "15 m",
      tile_expansion: "100 millionths per K",
      lay_temperature: "-20 °C",
      hottest_temperature: "35 °C",
    })
    expect(number(book, "tile_growth_length")).toBeCloseTo(0.0825, 9)
  })

  // A how-to article gives 350 screws for 100 sq ft and its own 10 ft × 10 ft deck takes 396 (record d-052).
  test("the rule of thumb gives 350 screws for 100 sq ft, and its error is shown", () => {
    const book = platform({ platform_length: "10 ft", platform_width: "10 ft" })
    expect(column(book, "screw_rules.says")).toEqual([350])
    expect(column(book, "screw_rules.off")[0]).toBeCloseTo(350 / number(book, "screw_count") - 1, 9)
  })

  // Residential code R602.3(1) (record d-013): 6 in along a panel's edges, 12 in between.
  test("across a sheet of 4 ft the screws stand as the table's nails do, 6 in and 12 in apart", () => {
    const book = platform()
    const rowWidth = Number(book.entry("sheet_rows.width").readings?.[0]?.value) / INCH
    const perEnd = Number(book.entry("sheet_screws.per_end_line").readings?.[0]?.value)
    const perField = Number(book.entry("sheet_screws.per_field_line").readings?.[0]?.value)
    expect(rowWidth / (perEnd - 1)).toBeCloseTo(6, 9)
    expect(rowWidth / (perField - 1)).toBeCloseTo(12, 9)
  })

  test("joists farther apart want more screws between them, along a panel's edge", () => {
    expect(platform().entry("screws_mid_bay_check").check?.verdict).toBe("passes")
    const wide = platform({ joist_spacing: "24 in" })
    expect(wide.entry("screws_mid_bay_check").check?.verdict).toBe("fails")
    expect(number(wide, "screws_mid_bay_needed")).toBe(3)
  })
})
