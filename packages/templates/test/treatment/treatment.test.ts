import { describe, expect, test } from "vitest"
import { column, INCH, inches, number, platform } from "../parts-frame/platform.ts"

const GALLON = 0.003785411784

describe("use class", () => {
  // Acceptance criteria AC236 (record e-004): below 6 in of clearance, or hard to replace, counts as ground contact.
  test("skids and joists want UC4A, edge boards high in the air want UC3B", () => {
    const book = platform()
    expect(column(book, "treated_members.member")).toEqual([
      "skids",
      "joists and blocking",
      "rims",
      "edge boards",
    ])
    expect(column(book, "treated_members.class_needed")).toEqual(["UC4A", "UC4A", "UC4A", "UC3B"])
    expect(book.entry("treatment_check").check?.verdict).toBe("passes")
    expect(book.entry("ground_contact_check").check?.verdict).toBe("passes")
  })

  test.each([
    ["5 15/16 in", "fails"],
    ["6 in", "passes"],
  ])("timber for above ground at a clearance of %s: the 6 in rule %s", (underside_clearance, verdict) => {
    const book = platform({ skid_treatment: "UC3B", underside_clearance })
    const { check } = book.entry("ground_contact_check")
    expect(check?.verdict).toBe(verdict)
    if (verdict === "fails") expect(check?.advice.join(" ")).toMatch(/skids.*UC4A/)
  })

  test("what is hard to replace wants ground contact however high it lies, and the check names it", () => {
    const book = platform({ joist_treatment: "UC3B", underside_clearance: "3 ft" })
    const { check } = book.entry("treatment_check")
    expect(check?.verdict).toBe("fails")
    expect(check?.advice.join(" ")).toMatch(/UC4A.*joists and blocking.*hard to replace/)
  })

  // Record e-004: leaves and soil, no air, often wetted, next to rotten wood, a tropical climate.
  test.each([
    ["debris_builds_up", "yes"],
    ["air_below", "no"],
    ["often_wetted", "yes"],
    ["touches_untreated", "yes"],
    ["tropical_climate", "yes"],
  ])("%s = %s makes the edge boards want ground contact too", (name, value) => {
    expect(column(platform({ [name]: value }), "treated_members.class_needed")[3]).toBe("UC4A")
  })

  // Record e-002: UC4B for severe climates, critical parts and salt splash.
  test("in a severe place what carries wants UC4B, a board in the air does not", () => {
    const book = platform({ severe_decay: "yes" })
    expect(column(book, "treated_members.class_needed")).toEqual(["UC4B", "UC4B", "UC4B", "UC3B"])
    expect(book.entry("treatment_check").check?.verdict).toBe("fails")
  })
})

describe("cut ends", () => {
  const deck = {
    platform_length: "16 ft",
    platform_width: "12 ft",
    joist_stock: "12 ft",
    rim_stock: "16 ft",
    blocking_stock: "8 ft",
    blocking_rows: "1",
    edge_board_ends: "0",
    edge_board_sides: "0",
    skid_board: "8 ft",
  }

  // By hand: 13 joists of 141 in out of 12 ft boards, one cut each; rims of 16 ft and skids of 8 ft as they come, none; 12 pieces of
  // blocking out of two boards of 8 ft: two ends each, less the outer end of either board.
  test("13 joists, whole rims and skids, 12 pieces of blocking: 13 + 0 + 22", () => {
    expect(number(platform(deck), "end_cut_count")).toBe(13 + 22)
  })

  test("trimmed ends are all bare: two a piece", () => {
    const pieces = 13 + 2 + 12 + 6
    const book = platform({ ...deck, end_trim: "1 in", joist_stock: "16 ft", rim_stock: "20 ft" })
    expect(number(book, "end_cut_count")).toBe(2 * pieces)
  })

  // Record e-010: 100 sq ft a gallon on rough wood, a coat, two coats. 35 ends of 2x6, 8.25 sq in each.
  test("preservative for 35 ends of 2x6, two coats", () => {
    const area = (35 * 1.5 * 5.5) / 144
    const book = platform(deck)
    expect(number(book, "end_cut_area")).toBeCloseTo(area * (12 * INCH) ** 2, 9)
    expect(number(book, "preservative_volume")).toBeCloseTo((2 * area * GALLON) / 100, 9)
    expect(number(book, "preservative_tins")).toBe(1)
  })

  // Record e-012: 200 sq ft a gallon, with the metric printed as 18.6 m3. It is square metres a gallon: a gallon that covered 18.6 m3
  // would be no area at all, and 18.6 m2 a gallon is the 4.9 m2 a litre of the record. Rough wood 2.5 m2 a litre (e-010).
  test("the coverage in metric, and the unit that the page misprints", () => {
    const book = platform()
    expect(column(book, "preservative_coverage.wood")).toEqual(["rough, and end grain", "smooth"])
    const [rough = 0, smooth = 0] = column(book, "preservative_coverage.covers").map(Number)
    const [gallon = 0] = column(book, "preservative_coverage.measure").map(Number)
    expect(smooth).toBeCloseTo(18.6, 1)
    expect(smooth / (gallon * 1000)).toBeCloseTo(4.9, 1)
    expect(rough / (gallon * 1000)).toBeCloseTo(2.5, 1)
  })

  test("ripped faces are brushed as smooth wood", () => {
    const bare = number(platform(deck), "preservative_volume")
    const more = number(platform({ ...deck, sawn_face_area: "100 ft2" }), "preservative_volume")
    expect(more - bare).toBeCloseTo(GALLON, 9)
  })
})

test("tape runs over every joist, both rims and the blocking", () => {
  const book = platform()
  const tops = 16 * 141 + 2 * 240 + inches(book, "blocking_length")
  expect(inches(book, "joist_tape_length")).toBeCloseTo(tops, 4)
  expect(number(book, "joist_tape_rolls")).toBe(Math.ceil((tops * 1.05) / 600))
})
