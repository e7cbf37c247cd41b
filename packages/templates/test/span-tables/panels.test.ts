import { expect, test } from "vitest"
import { panelSpan } from "../../src/panel-span/template.ts"
import { asked, holdTable } from "./book.ts"
import { DECKING, PANEL_LIVE_LOADS, PANEL_RATINGS } from "./published.ts"

const METRES_PER_INCH = 0.0254
const PASCALS_PER_PSF = 47.88025898033584

test("panels: recommended live loads", () => {
  const book = asked(panelSpan)
  holdTable(
    "Panel makers' floor live loads (psf)",
    "A table that is looked up, apart from the calculation. All cells from memory.",
    PANEL_LIVE_LOADS.map(([rating, spacing, load]) => {
      book.set({ span_rating: rating, joist_spacing: `${spacing} in` })
      return {
        says: `${rating} at ${spacing} in`,
        published: load,
        worked: book.number("panel_load_recommended") / PASCALS_PER_PSF,
      }
    }),
  )
})

test("panels: span ratings, and between the printed spacings no answer", () => {
  const book = asked(panelSpan)
  holdTable(
    "IRC R503.2.1.1(1), floor spans",
    "The floor number of the rating. All cells from memory.",
    PANEL_RATINGS.map(([rating, span]) => {
      book.set({ span_rating: rating })
      return { says: rating, published: span, worked: book.inches("panel_spacing_max") }
    }),
  )
  book.set({ span_rating: "48/24", joist_spacing: "17 in" })
  expect(book.book.entry("panel_recommended_check").check?.verdict).toBe("outside_table")
  expect(book.book.entry("panel_load_check").check?.verdict).toBe("passes")
  book.set({ span_rating: "40/20" })
  expect(book.book.entry("panel_load_check").check?.verdict).toBe("outside_table")
  expect(book.book.entry("panel_spacing_check").check?.verdict).toBe("outside_table")
  book.set({ span_rating: "24/0" })
  expect(book.book.entry("panel_spacing_check").check?.verdict).toBe("outside_table")
})

/**
 * Ratio of the calculated to the recommended load at the rated spacing: published comparisons put the calculation 10 %
 * to 60 % above, because the recommendation allows for single heavy loads too.
 */
test("panels: near the rated span the calculation is above the recommendation", () => {
  const book = asked(panelSpan)
  for (const [rating, spacing] of [
    ["24/16", 16],
    ["48/24", 24],
  ] as const) {
    book.set({ span_rating: rating, joist_spacing: `${spacing} in` })
    expect(book.number("panel_load_max")).toBeGreaterThan(book.number("panel_load_recommended") * 0.9)
  }
})

test("deck boards: joist spacing", () => {
  const book = asked(panelSpan)
  holdTable(
    "IRC R507.7, deck boards",
    "Looked up. All cells read.",
    DECKING.map(([boards, direction, spacing]) => {
      book.set({ decking: boards, decking_direction: direction, joist_spacing: `${spacing} in` })
      expect(book.book.entry("decking_spacing_check").check?.verdict).toBe("passes")
      return {
        says: `${boards} ${direction}`,
        published: spacing,
        worked: Math.round(book.number("decking_spacing_max") / METRES_PER_INCH),
      }
    }),
  )
  book.set({ decking: "plastic composite" })
  expect(book.book.entry("decking_spacing_check").check?.verdict).toBe("outside_table")
})
