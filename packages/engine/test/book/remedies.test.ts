import { describe, expect, test } from "vitest"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, check, figure, formula, input, value } from "../helpers/small-book.ts"

//  spacing, width ──> count ──> cost ── cost_check (at most)
//     └────────────── spacing_check        width ── width_check (at least)
const ENTRIES = [
  input("width", "length", "4 m", { least: "1 m", most: "10 m" }),
  input("spacing", "length", "300 mm", { least: "100 mm", most: "700 mm" }),
  input("finish", "text", "gilt", { choices: ["bare", "oiled", "gilt", "jewelled"] }),
  input("discount", "yes_no", "no"),
  input("stock", "length", "1 m, 2 m", { list: true }),
  figure("unit_cost", "money", "10"),
  figure("budget", "money", "100"),
  formula("pieces", "count", "ROUNDUP(width / spacing; 0)"),
  formula("finish_cost", "money", 'IF(finish = "bare"; 0; IF(finish = "oiled"; 1; 3)) * unit_cost'),
  formula("cost", "money", "pieces * unit_cost + finish_cost - IF(discount; 80 * unit_cost / 10; 0)"),
  check("cost_check", "money", "cost", "budget", {
    remedies: [
      { input: "spacing", toward: "more", step: "10 mm" },
      { input: "spacing", toward: "less", step: "10 mm" },
      { input: "width", toward: "less" },
      { input: "finish", toward: "less" },
      { input: "finish", toward: "more" },
      { input: "discount", toward: "more" },
      { input: "stock", toward: "more" },
      { input: "unit_cost", toward: "less", step: "0.50" },
      { input: "nothing", toward: "more" },
    ],
  }),
  check("spacing_check", "length", "spacing", "spacing_limit"),
  figure("spacing_limit", "length", "500 mm"),
]

describe.each(EVERY_GRAPH)("with the %s graph", (_, graph) => {
  test("each remedy is the smallest change that passes, and those that do not help are left out", () => {
    const book = bookOf(ENTRIES, { graph })
    // 4 m at 300 mm is 14 pieces: 140 and 30 for the finish, against 100. Seven pieces cost 70 + 30:
    // 4 m ÷ 7 = 571.4 mm, so 580 mm in steps of 10, or 7 × 300 mm = 2.1 m of width.
    expect(book.remediesFor("cost_check")).toMatchObject([
      {
        input: "spacing",
        from: { value: 0.3 },
        to: { value: 0.58 },
        typed: "580 mm",
        newlyFails: ["spacing_check"],
      },
      { input: "width", to: { value: 2.1 }, typed: "2,100 mm", newlyFails: [] },
      { input: "discount", typed: "yes", newlyFails: [] },
      // 14 + 3 = 17 of them: 100 ÷ 17 = 5.88, so 5.50 in steps of a half.
      { input: "unit_cost", to: { value: 5.5 } },
    ])
  })

  test("a choice is tried in the order of its list, the nearest first", () => {
    const book = bookOf(ENTRIES, { graph })
    book.edit("width", "2.6 m")
    // 9 pieces are 90: with "oiled" 100.
    expect(book.remediesFor("cost_check").find(({ input: name }) => name === "finish")).toMatchObject({
      typed: "oiled",
    })
    book.edit("width", "2.9 m")
    expect(book.remediesFor("cost_check").find(({ input: name }) => name === "finish")).toMatchObject({
      typed: "bare",
      from: { text: "gilt" },
    })
  })

  test("nothing is told, moved or noted by looking", () => {
    const book = bookOf(ENTRIES, { graph })
    book.edit("width", "3.9 m")
    const before = [book.document(), book.moved(), value(book, "cost")]
    let told = 0
    book.subscribe(() => told++)
    book.remediesFor("cost_check")
    expect([book.document(), book.moved(), value(book, "cost")]).toEqual(before)
    expect(told).toBe(0)
  })

  test("what is offered passes when it is typed, and a step less does not", () => {
    const book = bookOf(ENTRIES, { graph })
    for (const { input: name, typed } of book.remediesFor("cost_check")) {
      const was = book.scenario.id
      expect(book.tryChange(`With ${name}`, { [name]: typed }).accepted).toBe(true)
      expect(book.scenario.title).toBe(`With ${name}`)
      expect(book.entry("cost_check").check?.verdict).toBe("passes")
      book.switchTo(was)
      expect(book.entry("cost_check").check?.verdict).toBe("fails")
    }
    book.edit("spacing", "570 mm")
    expect(book.entry("cost_check").check?.verdict).toBe("fails")
  })
})

test("a check that passes, or that no change helps, has no remedies", () => {
  const book = bookOf(ENTRIES)
  expect(book.remediesFor("spacing_check")).toEqual([])
  book.edit("width", "1 m")
  expect(book.entry("cost_check").check?.verdict).toBe("passes")
  expect(book.remediesFor("cost_check")).toEqual([])
  expect(() => book.remediesFor("cost")).toThrow(RangeError)
})

test("in feet and inches what is to be typed reads back to exactly what was tried", () => {
  const book = bookOf(
    [
      input("width", "length", `10' 0"`, { most: "20 ft" }),
      figure("least", "length", "3.2 m"),
      check("width_check", "length", "width", "least", {
        sense: "at_least",
        remedies: [
          { input: "width", toward: "more", step: "1/2 in" },
          { input: "width", toward: "more", step: "1 mm" },
        ],
      }),
    ],
    { unitSystem: "us" },
  )
  const [half, millimetre] = book.remediesFor("width_check")
  // 3.2 m = 125.98 in: the next half inch from 120 in is 126 in; 152 steps of 1 mm from 3,048 mm.
  expect(half).toMatchObject({ typed: `10' 6"`, to: { value: 3.2004 } })
  expect(millimetre?.to?.value).toBe(3.2)
  book.edit("width", millimetre?.typed ?? "")
  expect(value(book, "width")).toBe(3.2)
})

test("a change that is refused makes no copy", () => {
  const book = bookOf(ENTRIES)
  expect(book.tryChange("Wide", { width: "99 m" }).problems).toMatchObject([{ code: "input_above" }])
  expect(book.scenarios()).toHaveLength(1)
})
