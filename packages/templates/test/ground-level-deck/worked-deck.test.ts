import { describe, expect, test } from "vitest"
import { calcJson, file, type Printed } from "../command/run.ts"
import { WORKED_INPUTS, WORKED_MASSES, WORKED_PRICES } from "./worked-deck.ts"

/**
 * The project's worked example of a free-standing deck, 12 x 16 ft, worked by hand: every row of its answers, through
 * the headless command, in SI units and to the tolerances given there.
 */
function worked(more: Readonly<Record<string, string>> = {}): Printed {
  const set = Object.entries({ ...WORKED_INPUTS, ...more }).flatMap(([name, text]) => [
    "--set",
    `${name}=${text}`,
  ])
  const tables = file(JSON.stringify({ prices: WORKED_PRICES, masses: WORKED_MASSES }))
  return calcJson("ground-level-deck", ...set, "--table", tables)
}

const FOOT = 0.3048
const INCH = 0.0254
const CUBIC_FOOT = FOOT ** 3
const POUND = 0.45359237
const POUND_FORCE = 4.4482216152605
const PSF = 47.88025898033584

/** Name, answer in SI, tolerance in SI. */
const ANSWERS: readonly (readonly [name: string, answer: number, tolerance: number])[] = [
  ["joist_count", 13, 0],
  ["joist_length", 3.5814, 0],
  ["beam_count", 3, 0],
  ["support_count", 15, 0],
  ["tie_count", 39, 0],
  ["blocking_count", 12, 0],
  ["board_rows", 26, 0],
  ["crossing_count", 338, 0],
  ["screw_count", 676, 0],
  ["screws_to_buy", 744, 0],
  ["screw_boxes", 3, 0],
  ["board_feet", 560, 1e-9],
  ["support_load_max", 3892.2, POUND_FORCE],
  ["soil_pressure_max", 23566, PSF],
  ["greatest_dig", 0.17304, 0.01 * INCH],
  ["least_dig", 0.1524, 0.01 * INCH],
  ["dug_volume", 0.60898, 0.05 * CUBIC_FOOT],
  ["dug_volume_loose", 0.76123, 0.07 * CUBIC_FOOT],
  ["stone_in_place", 0.65815, 0.05 * CUBIC_FOOT],
  ["stone_loose", 1.69591, 0.1 * CUBIC_FOOT],
  ["stone_order", 2.5 * 27 * CUBIC_FOOT, 1e-9],
  ["fabric_area", 20.5316, 0.01 * FOOT ** 2],
  ["materials_cost", 1149.18, 0.005],
  ["total_cost", 1352.58, 0.005],
  ["cost_per_area", 75.829, 0.001 / FOOT ** 2],
  ["haul_mass", 1266.25, POUND],
  ["haul_trips", 2, 0],
  ["longest_piece", 4.8768, 0],
  ["top_height", 0.3302, 0.01 * INCH],
  ["height_above_ground", 0.4064, 0.01 * INCH],
  ["risers_high_end", 2, 0],
  ["riser_height_high_end", 0.1651, 0.01 * INCH],
  ["risers_low_end", 3, 0],
  ["riser_height_low_end", 0.13547, 0.01 * INCH],
  ["platform_area", 17.8374, 0.01 * FOOT ** 2],
  ["platform_diagonal", 6.096, 0.01 * INCH],
]

describe("the worked deck", () => {
  test("every answer", () => {
    const { quantities, tables, checks, problems } = worked()
    for (const [name, answer, tolerance] of ANSWERS) {
      const value = quantities[name]?.value
      expect(typeof value, name).toBe("number")
      expect(Math.abs(Number(value) - answer), `${name}: ${value}`).toBeLessThanOrEqual(tolerance)
    }
    const stock = (tables.stock_to_buy ?? []).map((row) => [
      row.size?.value,
      row.length?.value,
      row.count?.value,
    ])
    expect(stock).toEqual([
      ["2x6", 2.4384, 2],
      ["2x6", 3.6576, 13],
      ["2x6", 4.8768, 8],
      ["5/4x6", 4.8768, 26],
    ])
    const second = tables.supports?.find((row) => row.line?.value === 1 && row.number?.value === 2)
    expect(second?.x?.value).toBeCloseTo(54 * INCH, 9)
    expect(Math.abs(Number(second?.pressure?.value) - 16496)).toBeLessThanOrEqual(PSF)
    expect(checks.soil_bearing_check?.verdict).toBe("passes")
    expect(problems.filter(({ code }) => code !== "needs_entry")).toEqual([])
  })

  test("its arithmetic on the way: the last board, the cost of each line, the pounds to spare", () => {
    const { quantities, tables } = worked()
    expect(quantities.board_last_width?.value).toBeCloseTo(5.375 * INCH, 9)
    expect(quantities.board_overhang_laid?.value).toBeCloseTo(1.0625 * INCH, 9)
    const costs = (tables.buy_list ?? []).map((row) => [
      row.item?.value,
      row.quantity?.value,
      row.cost?.value,
    ])
    // The worked deck leaves out what is brushed on, taped, used up and worn out, and so has no price for it.
    const WORKED = ["2x6", "5/4x6", "screws", "frame screws", "block", "stone", "fabric", "tie"]
    const inIt = costs.filter(([item]) => WORKED.includes(String(item)))
    expect(inIt).toEqual([
      ["2x6", 2, 14.5],
      ["2x6", 13, 149.5],
      ["2x6", 8, 126],
      ["5/4x6", 26, 442],
      ["screws", 744, 117],
      ["frame screws", 225, 0],
      ["block", 15, 97.5],
      ["stone", 2.5, 120],
      ["fabric", 221, 39.78],
      ["tie", 39, 42.9],
    ])
    expect(Number(tables.own_haulage?.[0]?.spare?.value) / POUND).toBeCloseTo(2 * 1400 - 2791.6, 6)
    expect(tables.cost_lines?.[1]?.lines?.value).toBe(1 + costs.length - inIt.length)
  })

  test("boards laid tight: one row more, and one run more", () => {
    const { quantities } = worked({ board_gap: "0 in" })
    const read = (name: string): unknown => quantities[name]?.value
    expect(read("board_rows")).toBe(27)
    expect(read("screw_count")).toBe(702)
    expect(read("screws_to_buy")).toBe(773)
    expect(read("screw_boxes")).toBe(3)
    expect(read("board_feet")).toBeCloseTo(570, 9)
    expect(read("materials_cost")).toBeCloseTo(1166.18, 9)
    expect(Number(read("haul_mass")) / POUND).toBeCloseTo(2833.2, 6)
    expect(read("haul_trips")).toBe(3)
  })

  test("an overhang of an inch at the ends too needs boards that 16 ft does not give", () => {
    const { quantities, tables } = worked({ board_end_overhang: "1 in" })
    expect(quantities.board_row_length?.value).toBeCloseTo(194 * INCH, 9)
    expect(Number(quantities.board_joint_count?.value)).toBeGreaterThan(0)
    // Joints on joists, never on the same one in neighbouring rows; each is one crossing more.
    expect(quantities.crossing_count?.value).toBe(338 + Number(quantities.board_joint_count?.value))
    const joints = tables.board_joints ?? []
    for (const joint of joints) {
      const beside = joints.filter((other) => Number(other.line?.value) === Number(joint.line?.value) + 1)
      expect(beside.map((other) => other.support?.value)).not.toContain(joint.support?.value)
    }
    const whole = worked({ board_end_overhang: "1 in", platform_length: "190 in" })
    expect(whole.quantities.board_joint_count?.value).toBe(0)
  })
})
