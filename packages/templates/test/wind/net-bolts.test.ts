import { describe, expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { reader } from "../helpers/read-book.ts"

const game = reader(gameTablePlatform)
/** A net low enough for two bolts through the rim. */
const bolted = (typed: Readonly<Record<string, string>> = {}) =>
  game({ net_post_soil: "the frame, bolted", net_height: "4 ft", ...typed })

describe("bolts of the net posts", () => {
  /**
   * NDS table 12.3.1A (from memory), mode by mode, for a 3/4 in bolt through a rim of 1 1/2 in along its grain into a post of 3 1/2 in
   * across its grain, hem-fir of gravity 0.43: Fe along 11200 G, across 6100 G^1.45 ÷ √D; Rd 4, 3.6 and 3.2, times 1.25.
   */
  test("pushed along the rim, the bolt yields as the published equations say", () => {
    const book = bolted()
    const [diameter, gravity, fyb, main, side] = [0.75, 0.43, 45_000, 3.5, 1.5]
    const fem = (6100 * gravity ** 1.45) / Math.sqrt(diameter)
    const fes = 11_200 * gravity
    const [re, rt] = [fem / fes, main / side]
    const k1 =
      (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re)
    const k2 = Math.sqrt(2 * (1 + re) + (2 * fyb * (1 + 2 * re) * diameter ** 2) / (3 * fem * main ** 2)) - 1
    const k3 =
      Math.sqrt((2 * (1 + re)) / re + (2 * fyb * (2 + re) * diameter ** 2) / (3 * fem * side ** 2)) - 1
    const modes = [
      (diameter * main * fem) / (4 * 1.25),
      (diameter * side * fes) / (4 * 1.25),
      (k1 * diameter * side * fes) / (3.6 * 1.25),
      (k2 * diameter * main * fem) / ((1 + 2 * re) * 3.2 * 1.25),
      (k3 * diameter * side * fem) / ((2 + re) * 3.2 * 1.25),
      (diameter ** 2 / (3.2 * 1.25)) * Math.sqrt((2 * fem * fyb) / (3 * (1 + re))),
    ]
    expect(book.in("lb", "joint_yields.least")).toBeCloseTo(Math.min(...modes), 6)
    // Wet service 0.7, wind 1.6.
    expect(book.in("lb", "loaded_joints.allowed")).toBeCloseTo(Math.min(...modes) * 0.7 * 1.6, 6)
  })

  test("the lever of the wind on the post itself, and of a corner that nothing else holds", () => {
    const book = bolted()
    // A rim of 5 1/2 in, a bolt 1 1/2 in from either edge; tile and sheet lie on it.
    const top = book.in("in", "tile_thickness") + book.in("in", "sheet_thickness") + 1.5
    const lever = (book.in("in", "net_height") / 2 + top + 2.5) / 2.5
    const net = book.in("si", "net_wind.pressure") * book.in("si", "net_wind.bay")
    const own = book.in("si", "net_wind.post_load") - net
    const height = book.in("si", "net_height")
    expect(book.in("si", "net_wind.along_force")).toBeCloseTo(own * height * lever, 6)
    expect(book.in("si", "net_wind.corner_force")).toBeCloseTo((own + net / 2) * height * lever, 6)
    expect(book.in("si", "loaded_joints.force")).toBe(book.in("si", "net_wind.along_force"))
    const lone = bolted({ net_guys_per_corner: "1" })
    expect(lone.in("si", "loaded_joints.force")).toBe(lone.in("si", "net_wind.corner_force"))
  })

  test("what the posts' check says is the worst of timber, washer, steel and yielding", () => {
    const book = bolted()
    const row = book.texts("members.member").indexOf("net posts")
    const of = (name: string) => book.column("si", `members.${name}`)[row] ?? Number.NaN
    expect(book.ratio("net_post_check")).toBe(
      Math.max(of("bending_ratio"), of("shear_ratio"), of("joint_ratio")),
    )
    const thin = bolted({ "loaded_joints.diameter.1": "3/8 in" })
    expect(thin.verdict("net_post_check")).toBe("fails")
    expect(thin.book.entry("strength_first").reading?.value).toMatch(/^net posts: its fastening takes/)
    const small = bolted({ "net_wind_factors.washer.1": "1 1/2 in" })
    expect(small.ratio("net_post_check")).toBe(small.in("si", "net_wind.washer_ratio"))
  })

  test("without nets nothing pulls", () => {
    const book = bolted({ net_ends: "0", net_sides: "0" })
    expect(book.in("si", "net_wind.joint_ratio")).toBe(0)
    expect(book.verdict("net_post_check")).toBe("passes")
  })

  test("both bolts go through the rim; where they cannot be far enough apart the check fails and says what holds", () => {
    const book = bolted({ net_height: "6 ft 6 in" })
    const rim = book.in("in", "rim_depth")
    const onRim =
      book.in("in", "net_wind.bolt_top") - book.in("in", "tile_thickness") - book.in("in", "sheet_thickness")
    expect(onRim + book.in("in", "net_wind.bolt_spacing")).toBeCloseTo(rim - 1.5, 9)
    expect(book.verdict("net_post_check")).toBe("fails")
    expect(book.book.entry("net_post_check").check?.advice.join(" ")).toContain("set the posts in the ground")
  })
})
