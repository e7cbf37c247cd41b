import { describe, expect, test } from "vitest"
import { workbook } from "./workbook.ts"

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)

describe("the skids of a platform by statics", () => {
  const book = workbook()

  test("nothing is unmet, and the supports together carry the whole load", () => {
    expect(book.book.problems().filter(({ code }) => code !== "needs_entry")).toEqual([])
    expect(sum(book.column("lb", "skid_reactions.full"))).toBeCloseTo(book.in("lb", "skid_load_total"), 6)
    expect(sum(book.column("lb", "skid_reactions.full"))).toBeCloseTo(book.in("lb", "platform_load"), 6)
    expect(sum(book.column("lb", "crossed_reactions.full"))).toBeCloseTo(book.in("lb", "platform_load"), 6)
  })

  test("the rows are the supports, in their order", () => {
    expect(book.column("one", "skid_reactions.line")).toEqual(book.column("one", "supports.line"))
    expect(book.column("one", "skid_reactions.support")).toEqual(book.column("one", "supports.number"))
    book.column("in", "skid_reactions.position").forEach((at, row) => {
      expect(at).toBeCloseTo(book.column("in", "supports.x")[row] ?? Number.NaN, 6)
    })
  })

  test("least, dead alone, everything and most stand in that order", () => {
    const [least, dead, full, most] = ["least", "dead", "full", "most"].map((name) =>
      book.column("lb", `skid_reactions.${name}`),
    )
    most?.forEach((value, row) => {
      expect(least?.[row]).toBeLessThanOrEqual((dead?.[row] ?? 0) + 1e-9)
      expect(full?.[row]).toBeLessThanOrEqual(value + 1e-9)
    })
  })

  test("an overhang bends over its support by w a²/2, and counts twice its length", () => {
    const carried =
      (book.column("plf", "skid_lines.dead")[0] ?? 0) + (book.column("plf", "skid_lines.live")[0] ?? 0)
    expect(book.column("lbft", "skid_spans.hogging")[0]).toBeCloseTo((carried * 0.5 ** 2) / 2, 6)
    expect(book.column("in", "skid_spans.limit_length")[0]).toBeCloseTo(12, 6)
    expect(book.column("in", "skid_spans.limit_length")[1]).toBeCloseTo(57, 6)
  })

  test("one heavy person at a tip bends its support by force times reach", () => {
    // Nothing else hangs from this tip: the first crossing is behind the first support.
    expect(book.column("in", "crossing_places.at")[0]).toBeGreaterThan(6)
    expect(book.column("lbft", "crossed_spans.hogging")[0]).toBeCloseTo(300 * 0.5, 6)
  })
})

describe("follows its entries", () => {
  test("heavier people, or supports farther apart, never lessen what acts", () => {
    const [light, heavy, wide] = [
      workbook(),
      workbook({ live_load: "150 psf" }),
      workbook({ support_spacing_max: "8 ft" }),
    ]
    for (const name of [
      "skid_moment_max",
      "skid_shear_max",
      "skid_reaction_max",
      "skid_deflection_live",
      "crossed_moment_max",
    ]) {
      expect(light.in("one", name), name).toBeLessThan(heavy.in("one", name))
      expect(light.in("one", name), name).toBeLessThan(wide.in("one", name))
    }
  })

  test("a stiffer timber sags less and is bent no less", () => {
    const [soft, stiff] = [workbook(), workbook({ skid_modulus: "1600000 psi" })]
    expect(soft.in("in", "skid_deflection_live") / stiff.in("in", "skid_deflection_live")).toBeCloseTo(
      16 / 12,
      9,
    )
    expect(stiff.in("lbft", "skid_moment_max")).toBeCloseTo(soft.in("lbft", "skid_moment_max"), 6)
  })

  test("a line without a joint: one piece over two supports is the simple span with two overhangs", () => {
    const book = workbook({
      platform_length: "8 ft",
      support_spacing_max: "8 ft",
      skid_stock: "8 ft",
      live_load: "40 psf",
    })
    const [dead, live] = [
      book.column("plf", "skid_lines.dead")[1] ?? 0,
      book.column("plf", "skid_lines.live")[1] ?? 0,
    ]
    const [a, L] = [0.5, 7]
    // Worst sagging: people on the span only, the platform's own weight everywhere.
    const sagging = ((dead + live) * L ** 2) / 8 - (dead * a ** 2) / 2
    expect(book.column("lbft", "skid_spans.sagging")[4]).toBeCloseTo(sagging, 6)
    expect(book.column("lb", "skid_reactions.full")[2]).toBeCloseTo(((dead + live) * (L + 2 * a)) / 2, 6)
  })
})
