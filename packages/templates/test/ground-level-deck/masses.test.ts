import { describe, expect, test } from "vitest"
import { column, deck, number, POUND } from "./read.ts"
import { WORKED_INPUTS } from "./worked-deck.ts"

const PER_CUBIC_FOOT = POUND / 0.3048 ** 3

describe("weights", () => {
  // A roofing reference page: a treated southern pine 2x6 of 10 ft weighs 40 lb fresh and 23 lb dry (f-041); that is
  // longleaf, the heaviest of the group, so the loblolly of this book is a little lighter.
  test("a treated 2x6 of 10 ft against a published weight, fresh and dry", () => {
    const book = deck({ platform_width: "10 ft", joist_stock: "10 ft", wood_species: "loblolly pine" })
    const at = column(book, "timber_weights.length").findIndex(
      (length, row) =>
        Math.abs(Number(length) - 3.048) < 1e-9 && column(book, "timber_weights.size")[row] === "2x6",
    )
    const fresh = Number(column(book, "timber_weights.as_bought")[at]) / POUND
    const dry = Number(column(book, "timber_weights.dry")[at]) / POUND
    expect(fresh).toBeGreaterThan(0.95 * 40)
    expect(fresh).toBeLessThanOrEqual(40)
    expect(dry).toBeGreaterThan(0.87 * 23)
    expect(dry).toBeLessThanOrEqual(23)
  })

  // The forestry page's rule (f-024): 1000 kg/m³ × gravity × (1 + moisture); Douglas-fir 0.48 at 12 % gives 537.6.
  test("density by specific gravity and moisture", () => {
    const book = deck({ wood_species: "Douglas-fir, coast", timber_fresh: "no", moisture_laid: "19 %" })
    expect(number(book, "wood_density_dry")).toBeCloseTo(537.6, 6)
    expect(number(book, "wood_density_bought")).toBeCloseTo(571.2, 6)
    expect(number(book, "treating_water") / PER_CUBIC_FOOT).toBeCloseTo(32, 6)
  })

  test("the user's own weight goes before density, and the rest keeps its density", () => {
    const plain = deck(WORKED_INPUTS)
    const weighed = deck(WORKED_INPUTS, { masses: [{ item: "blocks", unit: "each", mass: "34 lb" }] })
    const blocks = number(plain, "blocks_mass")
    expect(number(weighed, "haul_mass")).toBeCloseTo(number(plain, "haul_mass") - blocks + 15 * 34 * POUND, 6)
    expect(column(weighed, "haul_list.from").filter((from) => from === "your table")).toHaveLength(1)
  })

  test("the heaviest piece is one piece, not a row", () => {
    const book = deck(WORKED_INPUTS, {
      masses: [
        { item: "2x6", unit: "each", mass: "20 lb" },
        { item: "5/4x6", unit: "m", mass: "1 kg" },
        { item: "block", unit: "each", mass: "34 lb" },
        { item: "stone", unit: "yd3", mass: "2500 lb" },
      ],
    })
    expect(number(book, "heaviest_piece") / POUND).toBeCloseTo(34, 9)
    expect(book.entry("two_person_lift").reading?.value).toBe(false)
    // 23 pieces of 2x6, 26 boards of 4.8768 m, 15 pads, and the stone that was given a weight.
    expect(number(book, "haul_mass")).toBeCloseTo((23 * 20 + 15 * 34 + 2.5 * 2500) * POUND + 26 * 4.8768, 6)
  })

  test("a weight by what the list does not count by is not used, and it is said", () => {
    const book = deck(WORKED_INPUTS, { masses: [{ item: "block", unit: "ft", mass: "34 lb" }] })
    expect(book.entry("haul_list").report?.unmet.join(" ")).toMatch(/block is by "ft"/)
  })
})
