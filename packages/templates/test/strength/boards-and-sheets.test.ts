import { describe, expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"
import { shedBase } from "../../src/shed-base/template.ts"
import { type Read, reader } from "../helpers/read-book.ts"

const deck = reader(groundLevelDeck)
const game = reader(gameTablePlatform)
const first = (book: Read): string => String(book.book.entry("strength_first").reading?.value)
const board = (book: Read, name: string): number => book.in("si", `board_strength.${name}`)

describe("boards across joists", () => {
  /**
   * A 2x6 laid flat over joists 24 in apart, Hem-Fir No.2, wet and incised (NDS Supplement 2018 table 4A, records
   * nds_reference_design_values and nds_adjustment_factors): Fb 850, CF 1.3, Cfu 1.15, Ci 0.8, Cr 1.15. One span with 300 lb
   * in its middle (record design_live_loads) and 10 psf of floor, by statics.
   */
  test("one load in the middle of a 2x6, by hand", () => {
    const book = deck({ board_size: "2x6", joist_spacing: "24 in" })
    const width = 5.5 + book.in("in", "board_gap")
    const moment = (300 * 24) / 4 + (((10 / 144) * width) / 8) * 24 ** 2
    const stress = moment / ((5.5 * 1.5 ** 2) / 6)
    const ratio = stress / (850 * 1.3 * 1.15 * 0.8 * 1.15)
    expect(board(book, "bending_ratio")).toBeCloseTo(ratio, 9)
    // Shear close beside a joist: all of the load on one of them, 1.5 V ÷ A, against 150 × 0.97 × 0.8 psi.
    const shear = 300 + (10 / 144) * width * 12
    expect(board(book, "shear_ratio")).toBeCloseTo((1.5 * shear) / (5.5 * 1.5) / (150 * 0.97 * 0.8), 9)
    // P L³ ÷ 48 E I under the load, against the span over 360; E 1.3 million psi × 0.9 × 0.95.
    const sag = (300 * 24 ** 3) / (48 * 1.3e6 * 0.9 * 0.95 * ((5.5 * 1.5 ** 3) / 12))
    expect(board(book, "sag_live_ratio")).toBeCloseTo((sag * 360) / 24, 9)
  })

  test("where strengths are published for them, the harder of table and calculation decides", () => {
    const book = deck({ board_size: "2x4", "design_thresholds.point_load.1": "800 lb" })
    expect(book.verdict("board_check")).toBe("fails")
    expect(book.ratio("board_check")).toBe(board(book, "bending_ratio"))
    expect(deck({ board_size: "2x6" }).ratio("board_check")).toBeCloseTo(16 / 24, 9)
    // A crowd's load is outside that table; the calculation answers.
    expect(deck({ board_size: "2x6", live_load: "100 psf" }).verdict("board_check")).toBe("passes")
  })

  test.each([groundLevelDeck, greenhouseFloor])("$id: what gives first may be the boards", (definition) => {
    const book = reader(definition)({
      board_size: "2x6",
      joist_spacing: "24 in",
      "design_thresholds.point_load.1": "2 kN",
      live_load: "0 psf",
    })
    expect(first(book)).toMatch(/^boards: bending takes \d+ %/)
  })

  test("without a published strength their own table decides, and the members' other checks stand", () => {
    const book = deck({ board_size: "5/4x6" })
    expect(book.book.entry("board_strength.worst").readings).toEqual([])
    expect(book.ratio("board_check")).toBe(1)
    expect(book.verdict("member_bearing_check")).toBe("passes")
    expect(book.verdict("deflection_check")).toBe("passes")
    expect(first(book)).not.toMatch(/outside/)
  })
})

describe("sheets across joists", () => {
  /**
   * The published form (record panel_load_formulas): loads in psf, 120 FbS ÷ L², 20 Fs(Ib/Q) ÷ clear span, and a sag of w L⁴ ÷ (1743 EI),
   * in inches. 48/24 (record panel_design_capacities): FbS 845, Fs(Ib/Q) 165 and EI 400 000, the less of strand board and
   * plywood; damp 0.75 and 0.85 (panel design specification, from memory).
   */
  test("three spans of a sheet 3/4 in thick at 16 in, by hand", () => {
    const book = game()
    expect(book.texts("sheet_strength.rating")).toEqual(["48/24"])
    expect(book.in("si", "sheet_strength.spans")).toBe(3)
    expect(book.in("si", "sheet_strength.bending_ratio")).toBeCloseTo(110 / ((120 * 845 * 0.75) / 16 ** 2), 9)
    expect(book.in("si", "sheet_strength.shear_ratio")).toBeCloseTo(110 / ((20 * 165 * 0.75) / 14.5), 9)
    const sag = (100 * 14.75 ** 4) / (1743 * 400_000 * 0.85)
    expect(book.in("si", "sheet_strength.sag_ratio")).toBeCloseTo((sag * 360) / 16, 3)
  })

  test("the check takes the harder of the makers' table and the calculation", () => {
    const book = game({ "sheet_factors.wet_strength.1": "0.3" })
    expect(book.verdict("sheet_check")).toBe("fails")
    expect(book.ratio("sheet_check")).toBe(book.in("si", "sheet_strength.shear_ratio"))
    expect(game().ratio("sheet_check")).toBeCloseTo(16 / 24, 9)
    expect(first(book)).toMatch(/^sheets: shear takes/)
  })

  test.each([gameTablePlatform, shedBase])(
    "$id: more load or wider joists never help a sheet",
    (definition) => {
      const read = reader(definition)
      for (const [input, steps] of [
        ["live_load", ["40 psf", "100 psf", "200 psf"]],
        ["joist_spacing", ["8 in", "12 in", "16 in", "24 in"]],
      ] as const) {
        const worst = steps.map((step) => read({ [input]: step }).in("si", "sheet_strength.known_worst"))
        expect(worst).toEqual(worst.toSorted((one, other) => one - other))
      }
    },
  )

  test("a sheet thinner than any that is rated has no ratio", () => {
    const book = game({ sheet_thickness: "1/4 in" })
    expect(book.verdict("sheet_check")).toBe("outside_table")
    expect(book.book.entry("sheet_strength.bending_ratio").readings).toEqual([null])
  })
})
