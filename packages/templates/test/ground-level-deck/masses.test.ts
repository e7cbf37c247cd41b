import { openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
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
    // 34 lb are 15.4 kg: under all four limits of the table, from 16 kg to 51 lb.
    expect(column(book, "lifts.for_two")).toEqual([false, false, false, false])
    // 23 pieces of 2x6, 26 boards of 4.8768 m, 15 pads, and the stone that was given a weight.
    expect(number(book, "haul_mass")).toBeCloseTo((23 * 20 + 15 * 34 + 2.5 * 2500) * POUND + 26 * 4.8768, 6)
  })

  test("a weight by what the list does not count by is not used, and it is said", () => {
    const book = deck(WORKED_INPUTS, { masses: [{ item: "block", unit: "ft", mass: "34 lb" }] })
    expect(book.entry("haul_list").report?.unmet.join(" ")).toMatch(/block is by "ft"/)
  })
})

describe("weights by what the pieces are for", () => {
  const DRY = 0.51 * 1000 * 1.12
  const FRESH = DRY + 32 * PER_CUBIC_FOOT
  const CUBIC_INCH = 0.0254 ** 3
  const at = (book: ReturnType<typeof deck>, name: string, role: string): number =>
    Number(column(book, name)[column(book, "member_masses.role").indexOf(role)])

  // 12 joists of 10 ft 3 in and 6 planks of 14 ft, by hand: 1.5 in by 5.5 in, 1.5 in by 7.25 in. Loblolly pine, 0.51, 12 %.
  test.each([
    ["joist", 12, 123, 1.5 * 5.5],
    ["beam plank", 6, 168, 1.5 * 7.25],
  ])("%s: %s pieces, dry and fresh, all and the heaviest", (role, pieces, length, section) => {
    const book = deck({})
    const volume = length * section * CUBIC_INCH
    expect(at(book, "member_masses.pieces", role)).toBe(pieces)
    expect(at(book, "member_masses.longest", role) / 0.0254).toBeCloseTo(length, 6)
    expect(at(book, "member_masses.mass_dry", role)).toBeCloseTo(pieces * volume * DRY, 6)
    expect(at(book, "member_masses.mass_wet", role)).toBeCloseTo(pieces * volume * FRESH, 6)
    expect(at(book, "member_masses.heaviest", role)).toBeCloseTo(volume * FRESH, 6)
  })

  // Concrete of 150 lb a cubic foot (record g-006): 15 pads of 16 in by 16 in by 2 in are 0.2963 cubic feet each.
  test("pads by the density of concrete, stone by that of tamped stone, spare boards not at all", () => {
    const book = deck({})
    expect(at(book, "member_masses.mass_wet", "block") / POUND).toBeCloseTo((15 * 150 * 512) / 1728, 6)
    expect(at(book, "member_masses.mass_wet", "stone")).toBeCloseTo(number(book, "stone_mass"), 6)
    expect(column(book, "member_masses.role")).not.toContain("spare board")
  })

  test("what is built is the sum of the roles, and no wood more than was bought", () => {
    const book = deck({})
    const sum = (name: string) => column(book, name).reduce<number>((all, one) => all + Number(one), 0)
    expect(Number(column(book, "built_mass.dry")[0])).toBeCloseTo(sum("member_masses.mass_dry"), 6)
    expect(Number(column(book, "built_mass.wet")[0])).toBeCloseTo(sum("member_masses.mass_wet"), 6)
    const stoneAndPads = number(book, "stone_mass") + number(book, "blocks_mass")
    expect(sum("member_masses.mass_wet") - stoneAndPads).toBeLessThanOrEqual(number(book, "timber_mass"))
  })
})

// From memory, common practice: a plywood sheet of 4 ft by 8 ft and 3/4 in weighs 70 lb dry and near 100 lb fresh from the treater; a
// snap tile of a foot square about 3/4 lb.
test("sheets and tiles have a weight before anybody has weighed one", () => {
  const { book } = openBook(gameTablePlatform)
  const row = column(book, "haul_list.item").indexOf("sheet")
  expect(Number(column(book, "haul_list.one")[row]) / POUND).toBeCloseTo(96, 6)
  const tile = column(book, "haul_list.item").indexOf("tile")
  expect(Number(column(book, "haul_list.one")[tile]) / POUND).toBeCloseTo(0.78, 2)
  const sheets = column(book, "member_masses.role").indexOf("sheet")
  const pounds = Number(column(book, "member_masses.mass_dry")[sheets]) / POUND
  expect(pounds).toBeCloseTo((20 * 12 * 2.25 * 36) / 36, -1)
  book.editTable("masses", [{ item: "sheet", unit: "each", mass: "80 lb" }])
  expect(Number(column(book, "haul_list.one")[row]) / POUND).toBeCloseTo(80, 6)
})
