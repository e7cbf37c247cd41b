import { describe, expect, test } from "vitest"
import { column, columnInches, inches, number, platform } from "./platform.ts"

/** The frame of the project's worked deck: 16 ft by 12 ft, 2x6 at 16 in, one line of blocking, three lines below. */
const deck = platform({
  platform_length: "16 ft",
  platform_width: "12 ft",
  joist_stock: "12 ft",
  rim_stock: "16 ft",
  blocking_stock: "8 ft",
  blocking_rows: "1",
})

describe("the worked deck, by hand", () => {
  test("13 joists of 141 in, at 3/4 in, 16, 32 … 176 and 191 1/4 in", () => {
    expect(number(deck, "joist_count")).toBe(13)
    expect(inches(deck, "joist_length")).toBeCloseTo(141, 9)
    expect(columnInches(deck, "joists.position")).toEqual([
      0.75, 16, 32, 48, 64, 80, 96, 112, 128, 144, 160, 176, 191.25,
    ])
  })

  test("12 pieces of blocking: ten of 14 1/2 in, and 13 3/4 in in the two end bays", () => {
    expect(number(deck, "blocking_count")).toBe(12)
    expect(columnInches(deck, "blocking.length")).toEqual([13.75, ...Array<number>(10).fill(14.5), 13.75])
    expect(columnInches(deck, "joists.bay").at(-2)).toBeCloseTo(13.75, 9)
  })

  test("two rims of 16 ft exactly, in one piece", () => {
    expect(columnInches(deck, "rim_pieces.length")).toEqual([192, 192])
    expect(number(deck, "rim_joint_count")).toBe(0)
  })

  test("2x6 to buy: 2 at 8 ft, 13 at 12 ft, 2 at 16 ft", () => {
    const sizes = column(deck, "stock_to_buy.size")
    const lengths = columnInches(deck, "stock_to_buy.length")
    const counts = column(deck, "stock_to_buy.count")
    const bought = sizes.flatMap((size, row) => (size === "2x6" ? [[lengths[row], counts[row]]] : []))
    expect(bought).toEqual([
      [96, 2],
      [144, 13],
      [192, 2],
    ])
  })

  test("board feet: joists 156, rims 32, blocking 16", () => {
    const sizes = column(deck, "stock_to_buy.size")
    const feet = column(deck, "stock_to_buy.board_feet")
    const total = sizes.reduce<number>(
      (sum, size, row) => (size === "2x6" ? sum + Number(feet[row]) : sum),
      0,
    )
    expect(total).toBeCloseTo(204, 9)
  })

  test("39 crossings over three lines, a tie at each", () => {
    expect(number(deck, "crossing_count")).toBe(39)
    expect(number(deck, "tie_count")).toBe(39)
  })
})
