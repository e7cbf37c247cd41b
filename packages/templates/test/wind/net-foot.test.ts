import { describe, expect, test } from "vitest"
import { gameTablePlatform } from "../../src/game-table-platform/template.ts"
import { reader } from "../helpers/read-book.ts"

const game = reader(gameTablePlatform)
const last = (numbers: readonly number[]): number => numbers.at(-1) ?? Number.NaN

describe("net posts in the ground", () => {
  /** IBC 1807.3.2.1 (records i-018 and i-019): d = A/2 (1 + √(1 + 4.36 h/A)), A = 2.34 P/(S₁ b), S₁ at a third of d. */
  test("go as deep as the published formula says for their wind", () => {
    const book = game()
    const force = book.in("lb", "net_wind.post_force")
    const arm = book.in("ft", "net_wind.arm")
    const depth = book.in("ft", "net_wind.depth")
    const pressure = (2 * 100 * depth) / 3
    const reach = (2.34 * force) / (pressure * (10 / 12))
    expect(depth).toBeCloseTo((reach / 2) * (1 + Math.sqrt(1 + (4.36 * arm) / reach)), 6)
    expect(book.in("ft", "net_post_length")).toBeCloseTo(
      book.in("ft", "net_height") + book.in("ft", "height_above_ground") + depth,
      9,
    )
  })

  /** BAG_YIELD (record g-001): 0.60 cu ft for a bag of 80 lb. */
  test("take holes, whole bags of concrete and no bolts, and the soil is carried away", () => {
    const book = game()
    const posts = book.in("si", "net_post_count")
    const hole = (Math.PI / 4) * (10 / 12) ** 2 * book.in("ft", "net_wind.depth")
    const post = (3.5 / 12) ** 2 * book.in("ft", "net_wind.depth")
    const bags = Math.ceil((posts * (hole - post)) / 0.6)
    const bought = (item: string) =>
      book.column("si", "buy_list.quantity")[book.texts("buy_list.item").indexOf(item)]
    expect(bought("80 lb bag of concrete")).toBe(bags)
    expect(bought("net bolt")).toBeUndefined()
    const soil = book.texts("disposal.what").indexOf("soil, loose")
    const loose =
      book.in("si", "dug_volume_loose") / 0.3048 ** 3 + posts * hole * book.in("si", "spoil_loose_factor")
    expect(book.column("si", "disposal.amount")[soil]).toBeCloseTo(loose / 27, 6)
  })

  test("the whole wind bends them a little below the ground, and nothing tips the platform", () => {
    const book = game()
    const depth = book.in("ft", "net_wind.depth")
    const moment = book.in("lb", "net_wind.post_force") * (book.in("ft", "net_wind.arm") + 0.333 * depth)
    const row = book.texts("members.member").indexOf("net posts")
    expect(book.column("psi", "members.bending_stress")[row]).toBeCloseTo((12 * moment * 6) / 3.5 ** 3, 5)
    expect(book.in("si", "net_wind.tipping")).toBe(0)
  })

  test("on the frame there is no hole, no concrete and two bolts a post", () => {
    const book = game({ net_post_soil: "the frame, bolted", net_height: "4 ft" })
    expect(book.column("ft", "net_post_embedment.found")).toEqual([])
    for (const none of ["holes", "hole_depth", "hole_soil", "concrete", "bags"])
      expect(book.in("si", `net_order.${none}`)).toBe(0)
    expect(book.in("si", "net_order.bolts")).toBe(2 * book.in("si", "net_post_count"))
    expect(book.in("in", "net_order.bolt_length")).toBe(6.5)
  })

  test("firmer soil never asks for a deeper hole", () => {
    const depths = ["clay or silt", "sand", "gravel"].map((net_post_soil) =>
      last(game({ net_post_soil }).column("ft", "net_post_embedment.found")),
    )
    expect(depths).toEqual([...depths].sort((a, b) => b - a))
    expect(depths[0]).toBeGreaterThan(depths[2] ?? Number.NaN)
  })
})
