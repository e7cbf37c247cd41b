import { readValue } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { accept, column, deck, number } from "./read.ts"
import { WORKED_INPUTS, WORKED_PRICES } from "./worked-deck.ts"

const SEED = 20261127

/** What the engine reads amounts into: a decimal of decimal.js, the reference here. */
function decimal(text: string) {
  const read = readValue(text, "ratio", "us")
  if ("problem" in read || typeof read.value !== "object") throw new Error(`not a number: ${text}`)
  return read.value.si
}

const HALF_UP = 4

/** What the worked deck buys of each line of its prices. */
const BOUGHT = ["13", "8", "2", "26", "3", "15", "2.5", "221", "39"] as const

describe("cost", () => {
  test("to the cent, and rounded once, over random prices", () => {
    console.info(`prices: seed ${SEED}`)
    const book = deck(WORKED_INPUTS)
    const cents = fc.integer({ min: 0, max: 30_000 })
    const case_ = fc.record({
      prices: fc.array(cents, { minLength: BOUGHT.length, maxLength: BOUGHT.length }),
      contingency: fc.integer({ min: 0, max: 60 }),
      tax: fc.integer({ min: 0, max: 120 }),
    })
    fc.assert(
      fc.property(case_, ({ prices, contingency, tax }) => {
        const amounts = prices.map((price) => (price / 100).toFixed(2))
        const [share, rate] = [(contingency / 2).toFixed(1), (tax / 8).toFixed(3)]
        accept(book.editAll({ contingency: `${share} %`, tax_rate: `${rate} %` }).problems)
        accept(
          book.editTable(
            "prices",
            WORKED_PRICES.map((row, at) => ({ ...row, price: amounts[at] ?? "" })),
          ).problems,
        )
        const materials = BOUGHT.reduce(
          (sum, quantity, at) => sum.plus(decimal(quantity).times(amounts[at] ?? "0")),
          decimal("0"),
        )
        const total = materials
          .times(decimal(share).div(100).plus(1))
          .times(decimal(rate).div(100).plus(1))
          .toDecimalPlaces(2, HALF_UP)
        expect(number(book, "materials_cost")).toBeCloseTo(materials.toNumber(), 8)
        expect(number(book, "total_cost")).toBe(total.toNumber())
      }),
      { numRuns: 60, seed: SEED, endOnFailure: true },
    )
  })

  test("half a cent goes up, whatever the noise of doubles", () => {
    // 15 pads at 0.10 are 1.50; 15 % tax on 1.50 is 0.225: 1.725 is shown as 1.73.
    const book = deck(
      { ...WORKED_INPUTS, contingency: "0 %", tax_rate: "15 %" },
      { prices: [{ item: "block", length: "", unit: "each", price: "0.10" }] },
    )
    expect(number(book, "total_cost")).toBe(1.73)
  })

  test("timber may be priced by the foot or the metre, for one length or for all", () => {
    const prices = [
      { item: "2X6", length: "", unit: "ft", price: "1.00" },
      { item: "2x6", length: "144 in", unit: "each", price: "10.00" },
      { item: "5/4x6", length: "", unit: "m", price: "4.00" },
    ]
    const book = deck(WORKED_INPUTS, { prices })
    // 8 at 16 ft and 2 at 8 ft by the foot, 13 at 12 ft by the piece, 26 at 16 ft = 4.8768 m by the metre.
    expect(number(book, "materials_cost")).toBeCloseTo(8 * 16 + 2 * 8 + 130 + 26 * 4.8768 * 4, 8)
  })

  test("stone priced by the cubic metre, fabric by the square metre, screws by the piece", () => {
    const prices = [
      { item: "stone", length: "", unit: "m3", price: "60" },
      { item: "Fabric", length: "", unit: "m2", price: "2" },
      { item: "screw", length: "", unit: "each", price: "0.05" },
    ]
    const book = deck(WORKED_INPUTS, { prices })
    // 1 cu yd = 0.764554857984 m³ and 1 sq ft = 0.09290304 m², NIST SP 811.
    const wanted = 2.5 * 0.764554857984 * 60 + 221 * 0.09290304 * 2 + 744 * 0.05
    expect(number(book, "materials_cost")).toBeCloseTo(wanted, 6)
  })

  test("what has no price is listed, named and counted; nothing is made up for it", () => {
    const book = deck(WORKED_INPUTS)
    expect(number(book, "materials_cost")).toBe(0)
    const lines = book.table("buy_list").rowCount
    expect(lines).toBeGreaterThan(10)
    expect(column(book, "buy_list.finding")).toEqual(Array(lines).fill("no price"))
    expect(book.entry("buy_list").report?.method).toMatch(/no price for .*stone/)
    expect(book.entry("buy_list").state).toBe("ok")
  })

  test.each([
    [{ item: "stone", length: "", unit: "bucket", price: "3" }, /stone is by "bucket".*Give it by yd3/],
    [{ item: "stone", length: "", unit: "", price: "3" }, /stone is by "".*Give it by yd3/],
    [{ item: "2x6", length: "12", unit: "each", price: "3" }, /Line 1 .*"12".*with its unit/],
    [{ item: "2x6", length: "long", unit: "each", price: "3" }, /Line 1 .*"long"/],
  ])("says what stops a price from being used: %o", (row, says) => {
    const book = deck(WORKED_INPUTS, { prices: [row] })
    expect(book.entry("buy_list").report?.unmet.join(" ")).toMatch(says)
    expect(number(book, "total_cost")).toBe(0)
  })

  test("two prices for one thing: the first is used, and it is said", () => {
    const prices = [
      { item: "tie", length: "", unit: "each", price: "1" },
      { item: "ties", length: "", unit: "each", price: "2" },
    ]
    const book = deck(WORKED_INPUTS, { prices })
    expect(number(book, "materials_cost")).toBe(39)
    expect(book.entry("buy_list").report?.unmet.join(" ")).toMatch(/two prices for tie/)
  })
})
