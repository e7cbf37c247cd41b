import { describe, expect, test } from "vitest"
import { boardwalk } from "../../src/boardwalk/template.ts"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"
import { shedBase } from "../../src/shed-base/template.ts"
import { reader } from "../helpers/read-book.ts"
import { nothingForgotten } from "../work/balance.ts"

const deck = reader(groundLevelDeck)
const walk = reader(boardwalk)
const shed = reader(shedBase)
const greenhouse = reader(greenhouseFloor)
const ALL = [
  ["ground-level deck", deck],
  ["boardwalk", walk],
  ["shed base", shed],
  ["greenhouse floor", greenhouse],
] as const

const WANTED = { guard_where: "on all sides" }
const CHECKS = ["guard_joint_check", "guard_anchor_check"] as const

describe.each(ALL)("%s", (_, read) => {
  test("nothing is counted or bought while no guard is asked for, and the checks wait for the limit", () => {
    const book = read()
    expect(book.texts("guard_sides.answer")).toEqual(Array(4).fill("ask: your limit is blank"))
    expect(book.column("si", "guard_post.number")).toEqual([0])
    for (const check of CHECKS) expect(book.verdict(check)).toBe("needs_entry")
    const low = read({ guard_height_limit: "10 ft" })
    expect(low.texts("guard_sides.answer")).toEqual(Array(4).fill("none is asked for by your limit"))
    for (const check of CHECKS) expect(low.verdict(check)).toBe("passes")
  })

  test("a guard where the drop or the slope is over its limit", () => {
    for (const typed of [{ guard_height_limit: "1 in" }, { guard_slope_limit: "1/100" }, WANTED]) {
      const book = read({ ...typed, ground_fall_length: "1 ft" })
      expect(Math.min(...book.column("si", "guard_sides.posts"))).toBeGreaterThanOrEqual(2)
      expect(book.texts("buy_list.item")).toEqual(expect.arrayContaining(["guard post", "guard bolt"]))
    }
  })

  test("each thing that a guard takes has its stage", () => {
    const { book } = read(WANTED)
    nothingForgotten(book)
    const guard = book.stages().find(({ id }) => id === "guard")
    expect(guard?.says.join(" ")).not.toMatch(/[{}]/)
    expect(Number(guard?.hours?.value)).toBeGreaterThan(0)
  })

  test("one more post than bays, none wider than allowed", () => {
    const book = read({ ...WANTED, guard_post_spacing_max: "5 ft" })
    const lengths = book.column("ft", "guard_sides.length")
    expect(book.column("si", "guard_sides.posts")).toEqual(lengths.map((length) => Math.ceil(length / 5) + 1))
    expect(Math.max(...book.column("ft", "guard_sides.spacing"))).toBeLessThanOrEqual(5 + 1e-9)
  })

  test("a higher load, a higher guard or a wider spacing never improves a ratio", () => {
    const ratios = (typed: Record<string, string>) => {
      const book = read({
        ...WANTED,
        guard_code: "United States, model building code",
        guard_connector_rating: "5000 lb",
        ...typed,
      })
      return ["guard_post_check", ...CHECKS, "loaded_joint_check"].map(
        (check) => book.ratio(check) ?? Number.NaN,
      )
    }
    for (const [name, ...steps] of [
      ["guard_loads.concentrated.2", "100 lb", "200 lb", "400 lb"],
      ["guard_loads.even.2", "0 plf", "50 plf", "90 plf"],
      ["guard_loads.height.2", "30 in", "36 in", "42 in"],
      ["guard_post_spacing_max", "3 ft", "5 ft", "8 ft"],
    ] as const) {
      let before = [0, 0, 0, 0]
      for (const step of steps) {
        const now = ratios({ [name]: step })
        for (const [at, ratio] of now.entries())
          expect(ratio).toBeGreaterThanOrEqual((before[at] ?? 0) - 1e-9)
        before = now
      }
    }
  })
})

// By statics, worked by hand: 200 lb (IRC table R301.5, record design_live_loads) 36 in above boards 1 in thick, on a 2x8 rim of
// 7 1/4 in with the bolts 1 1/2 in and 2 in from its edges.
test("the couple at the bolts of a post on a 2x8 rim", () => {
  const book = deck({ ...WANTED, joist_size: "2x8", rim_size: "2x8", guard_connector_rating: "2500 lb" })
  const arm = 36 + 1 + 1.5
  const apart = 7.25 - 1.5 - 2
  expect(book.in("in", "guard_cases.arm")).toBeCloseTo(arm, 6)
  expect(book.in("in", "guard_cases.bolts_apart")).toBeCloseTo(apart, 6)
  const pull = (200 * (arm + apart)) / apart
  expect(book.in("lb", "guard_cases.pull")).toBeCloseTo(pull, 6)
  expect(book.in("lb", "guard_cases.thrust")).toBeCloseTo(pull - 200, 6)
  // Hem-fir across the grain, wet: 405 psi × 0.67 (NDS Supplement, tables 4A, as in the members).
  const bears = 405 * 0.67
  expect(book.in("si", "guard_cases.washer_ratio")).toBeCloseTo(pull / (9 - 0.25) / bears, 6)
  expect(book.ratio("guard_anchor_check")).toBeCloseTo(pull / 2500, 9)
  // A lever of 38.5 in on a section of 3 1/2 in: M ÷ S.
  expect(book.column("psi", "members.bending_stress")[2]).toBeCloseTo((200 * arm) / (3.5 ** 3 / 6), 6)
})

test("a rim too shallow for two bolts is outside what is worked out", () => {
  const book = deck({ ...WANTED, joist_size: "2x4", rim_size: "2x4", guard_connector_rating: "2500 lb" })
  for (const check of CHECKS) expect(book.verdict(check)).toBe("outside_table")
})

test.each([
  ["ground-level deck", deck],
  ["shed base", shed],
])("%s: a rim too shallow for the bolts is offered one size deeper, which passes", (_, read) => {
  const shallow = { ...WANTED, guard_connector_rating: "5000 lb" }
  const book = read(shallow)
  expect(book.verdict("guard_joint_check")).toBe("fails")
  const percent = Math.round((book.ratio("guard_joint_check") ?? 0) * 100)
  expect(book.book.entry("strength_first").reading?.value).toBe(
    `guard posts: its fastening takes ${percent} % of what is accepted`,
  )
  const [first] = book.book.remediesFor("guard_joint_check")
  expect(first?.input).toBe("rim_size")
  expect(first?.newlyFails).toEqual([])
  expect(read({ ...shallow, rim_size: String(first?.typed) }).ratio("guard_joint_check")).toBeLessThanOrEqual(
    1,
  )
})
