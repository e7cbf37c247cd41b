import { describe, expect, test } from "vitest"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { shedBase } from "../../src/shed-base/template.ts"
import { reader } from "../helpers/read-book.ts"

const workbook = reader(shedBase)

describe("pressure of the wind against worked examples", () => {
  // A permit file of Rexburg, Idaho, 2019 (record m-020, read): 115 mph, factor 0.7, 0.85: 20.1 psf.
  test("115 mph over houses is 20.1 psf", () => {
    expect(
      workbook({ wind_speed: "115 mph", wind_exposure: "B" }).in("psf", "wind.velocity_pressure"),
    ).toBeCloseTo(20.1, 1)
  })

  // Record i-001, read: 0.00256 K V² in psf and mph, the same equation in the other units.
  test.each([
    ["60 mph", "C", 0.85],
    ["90 mph", "D", 1.03],
    ["140 mph", "B", 0.7],
  ])("%s over %s by the equation in pounds and miles", (speed, exposure, factor) => {
    const book = workbook({ wind_speed: speed, wind_exposure: exposure })
    const printed = 0.00256 * factor * 0.85 * Number.parseFloat(speed) ** 2
    // Half a unit of the last place of 0.00256.
    expect(Math.abs(book.in("psf", "wind.velocity_pressure") / printed - 1)).toBeLessThan(0.005 / 2.56)
  })

  test("a pressure of one's own takes the place of the speed", () => {
    expect(
      workbook({ "wind_factors.pressure_known.1": "30 psf" }).in("psf", "wind.velocity_pressure"),
    ).toBeCloseTo(30, 9)
  })
})

const CHECKS = ["wind_uplift_check", "wind_overturn_check", "wind_slide_check"]

describe("a shed on its base", () => {
  test("every step by hand", () => {
    const book = workbook({ anchor_capacity: "400 lb", anchor_side_capacity: "200 lb" })
    const q = book.in("psf", "wind.velocity_pressure")
    const top = book.in("ft", "height_above_ground")
    // 12 ft by 10 ft; it tips over the middle of its outer skid.
    const base = 10 - 2 * book.in("ft", "skid_overhang")
    const force = q * 0.85 * 1.3 * 12 * 7.5
    const lift = q * (0.85 * 0.9 + 0.18) * 120
    const counted = 0.6 * (900 + 8 * 120)
    const tipping = force * (top + 7.5 / 2) + (lift * base) / 2
    const hold = (tipping - (counted * base) / 2) / base
    expect(book.in("lb", "wind_on_building.side_force")).toBeCloseTo(force, 6)
    expect(book.in("lb", "wind_on_building.uplift")).toBeCloseTo(lift, 6)
    expect(book.in("lbft", "wind_on_building.overturning")).toBeCloseTo(tipping, 5)
    expect(book.in("lb", "wind_on_building.tie_force_side")).toBeCloseTo(hold, 6)
    const slide = force - 0.35 * Math.max(0, counted - lift)
    expect(book.in("lb", "wind_on_building.slide_left")).toBeCloseTo(slide, 6)
    const side = Math.max(2, Math.ceil(hold / 400), Math.ceil(slide / 2 / 200))
    expect(book.in("si", "wind_on_building.anchors_needed")).toBe(2 * side)
    expect(book.in("ft", "wind_on_building.anchor_spacing")).toBeCloseTo(12 / (side - 1), 6)
    for (const check of CHECKS) expect(book.verdict(check), check).not.toBe("fails")
  })

  test("the anchors that it asks for hold, and two fewer do not", () => {
    for (const speed of ["90 mph", "115 mph", "150 mph"]) {
      const typed = { wind_speed: speed, anchor_capacity: "350 lb", anchor_side_capacity: "350 lb" }
      const needed = workbook(typed).in("si", "wind_on_building.anchors_needed")
      expect(needed).toBeGreaterThan(0)
      const fewer = workbook({ ...typed, anchor_count: `${needed - 2}` })
      expect(CHECKS.map(fewer.verdict)).toContain("fails")
      expect(CHECKS.flatMap((check) => fewer.book.entry(check).check?.advice ?? []).join(" ")).not.toContain(
        "—",
      )
    }
  })

  test("more wind, a higher wall or less weight never lessens what the anchors hold", () => {
    const hold = (typed: Readonly<Record<string, string>>) =>
      workbook(typed).in("lb", "wind_on_building.tie_force_side")
    const before = hold({})
    expect(before).toBeGreaterThan(0)
    expect(hold({ wind_speed: "130 mph" })).toBeGreaterThan(before)
    expect(hold({ building_wall_height: "8 ft" })).toBeGreaterThan(before)
    expect(hold({ building_weight: "500 lb" })).toBeGreaterThan(before)
    expect(hold({ "wind_building_factors.inside_pressure.1": "0.55" })).toBeGreaterThan(before)
    expect(hold({ building_weight: "20000 lb" })).toBe(0)
  })

  test("waits for the anchors' strength: there is no figure that fits all soils", () => {
    expect(workbook().verdict("wind_overturn_check")).toBe("needs_entry")
  })
})

// Record a-008 (International Building Code, table 1806.2, read): 0.35 on gravel, 0.25 on sand.
test("friction: gravel under the shed's skids, sand under the greenhouse's slabs", () => {
  expect(workbook().in("si", "wind_building_factors.friction")).toBe(0.35)
  const greenhouse = reader(greenhouseFloor)()
  expect(greenhouse.in("si", "wind_building_factors.friction")).toBe(0.25)
  // 5.9 m by 2.3 m, walls of 1.5 m and a roof of 0.8 m: half of the rise meets the wind.
  expect(greenhouse.in("si", "wind_on_building.side_area")).toBeCloseTo(5.9 * 1.9, 9)
  expect(greenhouse.in("si", "wind_on_building.weight")).toBeCloseTo(0.5 * 6000 + 380 * 6 * 2.4, 6)
})
