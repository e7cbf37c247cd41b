import { openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { floor } from "./floor.ts"

const opened = floor()

/** The floor as it opens but for European sizes of timber, 6.0 m by 2.4 m, counted here in millimetres without the workbook's formulas. */
describe("the floor in European sizes, counted by hand", () => {
  test("16 joists: one at each mark of 400 mm, and one at the far end", () => {
    const marks = [23.5]
    for (let mark = 400; mark < 6000 - 47; mark += 400) marks.push(mark)
    marks.push(6000 - 23.5)
    expect(marks).toHaveLength(16)
    expect(opened.number("joist_count")).toBe(16)
    expect(opened.columnMillimetres("joists.position")).toEqual(marks)
    expect(opened.millimetres("joist_length")).toBe(2400 - 2 * 47)
  })

  test("19 rows of boards of 120 mm with gaps of 7 mm", () => {
    let rows = 0
    for (let covered = 0; covered < 2400; covered = rows * 120 + (rows - 1) * 7) rows++
    expect(opened.number("board_rows")).toBe(rows)
    expect(rows).toBe(19)
    expect(opened.millimetres("board_overhang_laid")).toBe((19 * 120 + 18 * 7 - 2400) / 2)
  })

  test("3 bearers of 6 slabs: no bearer more than 1.2 m from the next, no slab either", () => {
    expect(opened.number("skid_count")).toBe(3)
    expect(opened.columnMillimetres("skids.y")).toEqual([50, 1200, 2350])
    expect(opened.number("supports_per_skid")).toBe(6)
    expect(opened.millimetres("support_spacing")).toBe((6000 - 2 * 225) / 5)
    expect(opened.number("support_count")).toBe(18)
    expect(opened.number("block_count")).toBe(18)
  })

  test("screws from the crossings, and a tie at each joist on each bearer", () => {
    expect(opened.number("crossing_count")).toBe(19 * 16)
    expect(opened.number("screw_count")).toBe(2 * 19 * 16)
    expect(opened.number("tie_count")).toBe(3 * 16)
    // Three in each joist's end, two in each end of fifteen pieces of blocking.
    expect(opened.number("frame_screw_count")).toBe(3 * 2 * 16 + 2 * 2 * 15)
  })

  test("timber in whole lengths: bearers, rims and boards of 6 m, joists two to a length with blocking between", () => {
    const sizes = opened.texts("stock_to_buy.size")
    const lengths = opened.columnMillimetres("stock_to_buy.length")
    const counts = opened.column("stock_to_buy.count")
    const bought = sizes.map((size, row) => `${counts[row]} of ${size} at ${lengths[row]}`)
    expect(bought).toContain("3 of 100x100 at 6000")
    expect(bought).toContain("20 of 28x120 at 6000")
    expect(bought).toContain("2 of 47x150 at 6000")
    // Two joists and two pieces of blocking: 2 × 2306 + 2 × 353 and three cuts of 3 mm leave 73 mm of 5.4 m.
    expect(bought).toContain("8 of 47x150 at 5400")
  })

  test("stone: each bed from 100 mm below its own ground to one level, and 40 mm loose under all", () => {
    let stone = 0
    for (const y of [50, 1200, 2350]) {
      for (let number = 0; number < 6; number++) {
        const x = 225 + number * 1110
        const ground = (-60 * x) / 6000 - (20 * y) / 2400
        const top = 50 - 50
        stone += (top - Math.min(top - 100, ground - 100)) * 550 * 550
      }
    }
    const cubicMetres = stone / 1e9
    expect(opened.number("stone_in_place")).toBeCloseTo(cubicMetres, 9)
    const loose = cubicMetres * 1.25 + 6 * 2.4 * 0.04
    expect(opened.number("stone_loose")).toBeCloseTo(loose, 9)
    expect(opened.number("stone_order")).toBeCloseTo(Math.ceil(loose / 0.5) * 0.5, 9)
  })

  test("an inner slab carries 1110 mm by 1150 mm; all slabs together carry the whole floor", () => {
    expect(opened.number("support_load_max")).toBeCloseTo(2900 * 1.11 * 1.15, 6)
    expect(opened.number("soil_pressure_max")).toBeCloseTo((2900 * 1.11 * 1.15) / (0.45 * 0.45), 6)
    const all = opened.column("supports.load").reduce((sum, load) => sum + load, 0)
    expect(all).toBeCloseTo(2900 * 6 * 2.4, 6)
  })

  test("air below: 50 mm clear, a bearer of 100 mm, less 40 mm of stone", () => {
    expect(opened.millimetres("rim_underside_height")).toBe(50 + 100 - 40)
    expect(opened.verdict("air_gap_check")).toBe("passes")
  })

  test("mesh all the way round: 16.8 m and a lap for each of two rolls", () => {
    expect(opened.number("mesh_rolls")).toBe(2)
    expect(opened.millimetres("mesh_length")).toBe(2 * (6000 + 2400) + 2 * 150)
    // From the low corner's ground, 80 mm down, to the underside of the rims at 50 + 100 mm.
    expect(opened.millimetres("mesh_height")).toBe(50 + (150 + 80) + 300 + 300)
  })
})

describe("the greenhouse on it", () => {
  test("fits as it opens, and a longer one is told what floor it wants", () => {
    expect(opened.verdict("house_fit_check")).toBe("passes")
    const long = floor({ house_length: "6.2 m" })
    expect(long.verdict("house_fit_check")).toBe("fails")
    expect(long.millimetres("floor_length_wanted")).toBe(6240)
  })

  test("a heavier one asks for more weight in the loads", () => {
    const heavy = floor({ house_weight: "12 kN" })
    expect(heavy.verdict("dead_load_check")).toBe("fails")
    expect(heavy.number("dead_load_needed")).toBeCloseTo(12000 / 14.4 + 480, 6)
  })

  test("10 L of water on 14.4 m² is a layer of 0.69 mm a day", () => {
    expect(opened.millimetres("water_depth")).toBeCloseTo(10 / 14.4, 5)
  })
})

test("joists further apart than the boards' thickness allows fail the check of the boards (IRC R507.7: 16 in for 1 in)", () => {
  expect(opened.verdict("board_check")).toBe("passes")
  expect(floor({ joist_spacing: "450 mm" }).verdict("board_check")).toBe("fails")
})

test("the same floor entered in millimetres and in inches gives the same answers", () => {
  const metric = floor({ platform_length: "6096 mm", platform_width: "2438.4 mm", joist_spacing: "406.4 mm" })
  const inches = floor({ platform_length: "20 ft", platform_width: "96 in", joist_spacing: "16 in" })
  for (const name of metric.book.names()) {
    const a = metric.book.entry(name)
    const b = inches.book.entry(name)
    expect(b.reading?.value, name).toEqual(a.reading?.value)
    expect(
      b.readings?.map((one) => one?.value),
      name,
    ).toEqual(a.readings?.map((one) => one?.value))
  }
})

test("lists give the lengths of timber as lengths, in metric here and in feet where feet are shown", () => {
  const { book } = openBook(greenhouseFloor)
  const imperial = openBook(greenhouseFloor, { unitSystem: "us" }).book
  for (const list of ["buy_list", "haul_list"]) {
    const rows = book.entry(`${list}.item`).readings?.map((reading) => reading?.value) ?? []
    const row = rows.indexOf("89x89")
    const reading = book.entry(`${list}.length`).readings?.[row]
    expect(reading?.value, list).toBeCloseTo(6, 9)
    expect(reading?.text, list).toBe("6,000 mm")
    expect(imperial.entry(`${list}.length`).readings?.[row]?.text, list).toMatch(/^19' 8/)
  }
})
