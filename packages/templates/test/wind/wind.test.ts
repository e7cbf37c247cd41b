import { describe, expect, test } from "vitest"
import { workbook } from "../beam/workbook.ts"

describe("pressure of the wind against worked examples", () => {
  // A permit file of Rexburg, Idaho, 2019 (record m-020, read): 115 mph, factor 0.7, 0.85: 20.1 psf.
  test("115 mph over houses is 20.1 psf", () => {
    expect(
      workbook({ wind_speed: "115 mph", wind_exposure: "B" }).in("psf", "velocity_pressure"),
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
    expect(Math.abs(book.in("psf", "velocity_pressure") / printed - 1)).toBeLessThan(0.005 / 2.56)
  })

  test("a pressure of one's own takes the place of the speed", () => {
    expect(workbook({ wind_pressure_known: "30 psf" }).in("psf", "velocity_pressure")).toBeCloseTo(30, 9)
  })
})

describe("a shed on the platform", () => {
  test("every step by hand", () => {
    const book = workbook({ anchor_capacity: "400 lb", anchor_side_capacity: "200 lb" })
    const q = book.in("psf", "velocity_pressure")
    const top = book.in("ft", "height_above_ground")
    const [base, area] = [12, 20 * 12]
    const force = q * 0.85 * 1.3 * 10 * 7.5
    const lift = q * (0.85 * 0.9 + 0.18) * 80
    const counted = 0.6 * (900 + 10 * area)
    const tipping = force * (top + 7.5 / 2) + (lift * base) / 2
    const hold = (tipping - (counted * base) / 2) / base
    expect(book.in("lb", "wind_side_force")).toBeCloseTo(force, 6)
    expect(book.in("lb", "wind_uplift")).toBeCloseTo(lift, 6)
    expect(book.in("lbft", "wind_overturning")).toBeCloseTo(tipping, 5)
    expect(book.in("lb", "wind_tie_force_side")).toBeCloseTo(hold, 6)
    const slide = force - 0.35 * (counted - lift)
    expect(book.in("lb", "wind_slide_left")).toBeCloseTo(slide, 6)
    const side = Math.max(2, Math.ceil(hold / 400), Math.ceil(slide / 2 / 200))
    expect(book.in("one", "anchors_needed")).toBe(2 * side)
    expect(book.in("ft", "anchor_spacing")).toBeCloseTo(20 / (side - 1), 6)
    for (const check of ["wind_uplift_check", "wind_overturn_check", "wind_slide_check"])
      expect(book.verdict(check), check).not.toBe("fails")
  })

  test("the anchors that it asks for hold, and two fewer do not", () => {
    for (const speed of ["90 mph", "115 mph", "150 mph"]) {
      const typed = { wind_speed: speed, anchor_capacity: "350 lb", anchor_side_capacity: "350 lb" }
      const needed = workbook(typed).in("one", "anchors_needed")
      expect(needed).toBeGreaterThan(0)
      const fewer = workbook({ ...typed, anchor_count: `${needed - 2}` })
      expect(["wind_uplift_check", "wind_overturn_check", "wind_slide_check"].map(fewer.verdict)).toContain(
        "fails",
      )
    }
  })

  test("more wind, a higher wall or less weight never lessens what the anchors hold", () => {
    const hold = (typed: Readonly<Record<string, string>>) => workbook(typed).in("lb", "wind_tie_force_side")
    const before = hold({})
    expect(before).toBeGreaterThan(0)
    expect(hold({ wind_speed: "130 mph" })).toBeGreaterThan(before)
    expect(hold({ building_wall_height: "8 ft" })).toBeGreaterThan(before)
    expect(hold({ building_weight: "500 lb" })).toBeGreaterThan(before)
    expect(hold({ wind_inside_pressure: "0.55" })).toBeGreaterThan(before)
    expect(hold({ building_weight: "20000 lb" })).toBe(0)
  })

  test("waits for the anchors' strength: there is no figure that fits all soils", () => {
    expect(workbook().verdict("wind_overturn_check")).toBe("needs_entry")
  })
})
