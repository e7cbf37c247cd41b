import type { Book } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { column, deck, INCH, inches, number } from "../ground-level-deck/read.ts"

const SEED = 20261128

/** What a board or its gap comes to when dry, in inches. */
const dried = (book: Book, name: string): number => Number(column(book, `board_drying.${name}`)[0]) / INCH

describe("rows of boards", () => {
  test("an exact fit never rounds up, and a hair more does", () => {
    console.info(`rows of boards: seed ${SEED}`)
    const book = deck({ board_overhang: "0 in" })
    const sixteenths = fc.integer({ min: 0, max: 16 })
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 60 }), sixteenths, (rows, gap) => {
        const width = rows * 5.5 * 16 + (rows - 1) * gap
        book.editAll({ board_gap: `${gap}/16 in`, platform_width: `${width}/16 in` })
        expect(number(book, "board_rows")).toBe(rows)
        expect(number(book, "board_rows_fitted")).toBe(rows)
        expect(inches(book, "board_last_width")).toBeCloseTo(5.5, 9)
        book.editAll({ platform_width: `${width + 1}/16 in` })
        expect(number(book, "board_rows")).toBe(rows + 1)
      }),
      { numRuns: 20, seed: SEED, endOnFailure: true },
    )
  })

  test("a last row without width is flagged, with a gap that fits whole rows", () => {
    // Twenty boards and twenty gaps: the twenty-first row begins where the width ends.
    const book = deck({ board_overhang: "0 in", board_gap: "1/4 in", platform_width: "115 in" })
    expect(number(book, "board_rows")).toBe(21)
    expect(inches(book, "board_last_width")).toBeCloseTo(0, 9)
    const check = book.entry("board_last_row_check").check
    expect(check?.verdict).toBe("fails")
    expect(number(book, "board_rows_fitted")).toBe(20)
    expect(inches(book, "board_gap_fitted")).toBeCloseTo(5 / 19, 9)
    // The offer, taken as it is: whole rows, and none too many.
    book.editAll({ board_gap: `${(number(book, "board_gap_fitted") * 1000).toFixed(6)} mm` })
    expect(number(book, "board_rows")).toBe(20)
    expect(book.entry("board_last_row_check").check?.verdict).toBe("passes")
  })

  test("a sliver is flagged too", () => {
    const book = deck({ board_overhang: "0 in", board_gap: "1/8 in", platform_width: "113 1/4 in" })
    expect(inches(book, "board_last_width")).toBeCloseTo(0.75, 9)
    expect(book.entry("board_last_row_check").check?.verdict).toBe("fails")
  })

  test("whole rows lie in the middle, side by side with the gap between", () => {
    const book = deck()
    const from = column(book, "boards.from").map((at) => Number(at) / INCH)
    const to = column(book, "boards.to").map((at) => Number(at) / INCH)
    for (const [at, next] of from.slice(1).entries()) expect(next - (to[at] ?? 0)).toBeCloseTo(1 / 8, 9)
    expect(-(from[0] ?? 0)).toBeCloseTo((to.at(-1) ?? 0) - 126, 9)
  })
})

describe("the gap as it dries", () => {
  /** Change of width for 1 % of moisture, as a share: Wood Handbook table 13-5, from memory (f-010 to f-014). */
  const COEFFICIENTS = [
    ["Douglas-fir, coast", 0.00267],
    ["loblolly pine", 0.00259],
    ["white spruce", 0.00274],
  ] as const

  // The two tables agree to about a tenth for these (f-022: the coefficient is 0.00034 to 0.00036 of the shrinkage).
  test.each(COEFFICIENTS)(
    "%s from 14 to 6 per cent, against the handbook's coefficient",
    (species, coefficient) => {
      const book = deck({ wood_species: species, moisture_laid: "14 %", moisture_dry: "6 %" })
      const wanted = 5.5 * coefficient * (14 - 6)
      expect(Math.abs(dried(book, "shrink") - wanted)).toBeLessThan(0.1 * wanted)
    },
  )

  // Wood Handbook table 4-3 (read, f-015 to f-017): western redcedar 5.0 %, northern white-cedar 4.9 %, Douglas-fir
  // 7.6 % along the rings, from green to oven-dry. From 30 % down to 15 % a board goes half of that way.
  test.each([
    ["western redcedar", 0.05],
    ["northern white-cedar", 0.049],
    ["Douglas-fir, coast", 0.076],
  ])("%s from green half way to dry", (species, shrinkage) => {
    const book = deck({
      wood_species: species,
      moisture_laid: "80 %",
      moisture_dry: "15 %",
      board_gap: "0 in",
    })
    expect(dried(book, "gap")).toBeCloseTo((5.5 * shrinkage) / 2, 6)
  })

  // A trade blog (f-048): boards laid wet and tight end up 1/4 in to 3/8 in apart.
  test("boards laid wet and tight open about as far as builders say", () => {
    const book = deck({ moisture_laid: "60 %", moisture_dry: "10 %", board_gap: "0 in" })
    expect(dried(book, "gap")).toBeGreaterThan(0.24)
    expect(dried(book, "gap")).toBeLessThan(0.375)
    expect(book.entry("board_gap_check").check?.verdict).toBe("passes")
  })

  test("dry boards laid tight are told to leave a gap, wet ones with a gap to close it", () => {
    const dry = deck({ moisture_laid: "12 %", moisture_dry: "12 %", board_gap: "0 in" })
    expect(dry.entry("board_gap_check").check?.verdict).toBe("fails")
    expect(inches(dry, "board_gap_to_lay_least")).toBeCloseTo(1 / 8, 9)
    const wet = deck({ moisture_laid: "60 %", board_gap: "1/4 in" })
    expect(wet.entry("board_gap_wide_check").check?.verdict).toBe("fails")
  })
})

describe("pieces of long rows", () => {
  const long = deck({
    platform_length: "26 ft",
    board_stock: "12 ft, 16 ft",
    rim_stock: "16 ft",
    spare_boards: "0 %",
  })

  test("every joint lies on a joist, with the joist's half for either end", () => {
    const joists = column(long, "joists.position")
    const supports = column(long, "board_joints.support")
    for (const [at, position] of column(long, "board_joints.position").entries()) {
      expect(position).toBe(joists[Number(supports[at]) - 1])
    }
    for (const rest of column(long, "board_joints.bearing")) expect(rest).toBeCloseTo(0.75 * INCH, 12)
  })

  test("pieces fill every row, come out of the longest board and leave no stub", () => {
    const lengths = column(long, "board_pieces.length").map(Number)
    const lines = column(long, "board_pieces.line")
    for (let row = 1; row <= number(long, "board_rows"); row++) {
      const inRow = lengths.filter((_, at) => lines[at] === row)
      expect(inRow.reduce((sum, length) => sum + length, 0)).toBeCloseTo(26 * 0.3048, 9)
    }
    expect(Math.max(...lengths)).toBeLessThanOrEqual(16 * 0.3048 + 1e-9)
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(3 * 0.3048 - 1e-9)
  })

  test("joints of neighbouring rows are a joist spacing apart or more", () => {
    const lines = column(long, "board_joints.line").map(Number)
    const at = column(long, "board_joints.position").map(Number)
    for (const [one, line] of lines.entries()) {
      for (const [other, beside] of lines.entries()) {
        if (beside !== line + 1) continue
        expect(Math.abs((at[one] ?? 0) - (at[other] ?? 0))).toBeGreaterThanOrEqual(16 * INCH - 1e-9)
      }
    }
  })
})

describe("beams of planks", () => {
  // A joint in a built-up beam lies over a support and beside a plank that runs through: common practice, no source.
  test("planks side by side never meet over the same pad", () => {
    const book = deck({ platform_length: "26 ft", beam_stock: "12 ft, 16 ft", rim_stock: "16 ft" })
    expect(number(book, "beam_joint_count")).toBeGreaterThan(0)
    const lines = column(book, "beam_joints.line").map(Number)
    const supports = column(book, "beam_joints.support").map(Number)
    for (const [one, line] of lines.entries()) {
      for (const [other, beside] of lines.entries()) {
        if (beside === line + 1) expect(supports[one]).not.toBe(supports[other])
      }
    }
  })
})

describe("boards between joists", () => {
  // International Residential Code, table R507.7: 5/4 boards over joists 16 in apart, 2 in boards 24 in.
  test.each([
    ["5/4x6", "16 in", "passes"],
    ["5/4x6", "17 in", "fails"],
    ["2x6", "24 in", "passes"],
    ["2x6", "25 in", "fails"],
    ["1x6", "12 in", "outside_table"],
  ])("%s over joists %s apart: %s", (size, spacing, verdict) => {
    const book = deck({ board_size: size, joist_spacing: spacing })
    expect(book.entry("board_check").check?.verdict).toBe(verdict)
  })

  test("a crowd's load is outside that table", () => {
    expect(deck({ live_load: "100 psf" }).entry("board_check").check?.verdict).toBe("outside_table")
  })
})
