import { describe, expect, test } from "vitest"
import { fixingsOf } from "../../src/parts/fixings.ts"
import { rowChoice } from "../../src/parts/row-choice.ts"
import { column, columnInches, number, platform } from "../parts-frame/platform.ts"

function row(book: ReturnType<typeof platform>, joint: string): number {
  const at = column(book, "fixings.joint").indexOf(joint)
  if (at < 0) throw new Error(`no joint "${joint}"`)
  return at
}

describe("joint by joint", () => {
  // 20 ft by 12 ft, joists at 16 in: 16 joists, three lines of skids, two lines of blocking, by hand.
  test.each([
    ["joist over a skid, at a slant", 48, 96],
    ["joist end, through the rim", 32, 96],
    ["blocking end, through the joist", 60, 120],
    ["block behind a rim joint", 4, 24],
  ])("%s: %s places, %s screws", (joint, places, screws) => {
    const book = platform()
    expect(column(book, "fixings.places")[row(book, joint)]).toBe(places)
    expect(column(book, "fixings.number")[row(book, joint)]).toBe(screws)
  })

  test("every joint is counted once, in one of two boxes", () => {
    const book = platform()
    const total = column(book, "fixings.number").reduce<number>((sum, one) => sum + Number(one), 0)
    expect(number(book, "screw_count") + number(book, "frame_screw_count")).toBe(total)
  })

  // 96 + 96 + 120 + 24, and two at each place along the edges: sides of 20 ft 1 in in two boards, each of 8 spaces; an end of 12 ft
  // in one board of 9 spaces: 2 × (2 × 2 × 9 + 10).
  test("frame screws of the default platform, by hand", () => {
    expect(number(platform(), "frame_screw_count")).toBe(96 + 96 + 120 + 24 + 2 * (36 + 10))
  })

  test("no crossing screws, no ties: their rows stay and say nothing is wanted", () => {
    const book = platform({ ties_per_crossing: "0", screws_per_crossing: "0" })
    expect(column(book, "fixings.number")[row(book, "joist over a skid, at a slant")]).toBe(0)
    expect(column(book, "hardware.number")).toEqual([0])
    expect(number(book, "connector_nail_count")).toBe(0)
  })

  test("a tie at each of 48 crossings, eight nails in each", () => {
    const book = platform()
    expect(column(book, "hardware.number")).toEqual([48])
    expect(number(book, "connector_nail_count")).toBe(384)
  })
})

describe("lengths", () => {
  // Record d-051: 1 1/2 in of thread in the timber below. Record d-063 (from memory): 2 in for panels of 1/2 in, 3 in for 2x.
  test.each([
    ["1/2 in", 2],
    ["3/4 in", 2.5],
    ["1 in", 2.5],
    ["1 1/2 in", 3],
  ])("a surface of %s takes screws of %s in", (sheet_thickness, length) => {
    const book = platform({ sheet_thickness })
    expect(columnInches(book, "fixings.length")[row(book, "sheet on the joists between")]).toBe(length)
  })

  // Record d-063 (from memory) lets 1 1/4 in of thread do: then 2 in serve for panels of 5/8 in too.
  test("with 1 1/4 in of thread a panel of 5/8 in takes 2 in", () => {
    const book = platform({ sheet_thickness: "5/8 in", screw_bite: "1 1/4 in" })
    expect(columnInches(book, "fixings.length")[row(book, "sheet on the joists between")]).toBe(2)
    book.edit("screw_bite", "1 1/2 in")
  })

  test("frame screws are as long as the thickest piece they go through wants", () => {
    const frame = column(platform(), "screw_kinds.screw").indexOf("frame screws")
    expect(columnInches(platform(), "screw_kinds.least")[frame]).toBeCloseTo(3, 9)
    expect(columnInches(platform({ edge_board_size: "2x8" }), "screw_kinds.least")[frame]).toBeCloseTo(3, 9)
  })
})

describe("a template's own list of joints", () => {
  test("gives surface screws only where a joint takes them", () => {
    const joint = { joint: "a", screw: "frame screws", places: "3", each: "2", through: "x" } as const
    const names = fixingsOf([{ entries: [], joints: [joint] }]).entries.map(({ name }) => name)
    expect(names).toContain("frame_screw_count")
    expect(names).not.toContain("screw_count")
    expect(names).not.toContain("hardware")
  })

  test("refuses a joint named twice, and no joint at all", () => {
    const same = { row: "a", formula: "1" }
    expect(() => rowChoice("joint", [same, same])).toThrow(/one name each/)
    expect(() => rowChoice("joint", [])).toThrow(/at least one row/)
  })
})
