import { expect, test } from "vitest"
import type { Entry } from "../../src/index.ts"
import { bookOf, formula, input, table, value } from "../helpers/small-book.ts"

const SOUND = [input("width", "length", "4 m"), formula("twice", "length", "2 * width")]

/** Opens the entries beside sound ones; the problem is at its entry alone, and the rest calculates. */
function faultOf(name: string, ...entries: readonly Entry[]) {
  const book = bookOf([...SOUND, ...entries])
  expect(value(book, "twice")).toBe(8)
  book.edit("width", "5 m")
  expect(value(book, "twice")).toBe(10)
  return book.entry(name).problems
}

test("a ring of formulas is named in order, at each of its members", () => {
  const ring = [formula("a", "length", "b + width"), formula("b", "length", "c"), formula("c", "length", "a")]
  const problems = faultOf("b", ...ring)
  expect(problems).toMatchObject([{ code: "cycle", at: { entry: "b" } }])
  const [problem] = problems
  const members = problem?.code === "cycle" ? problem.ring : []
  expect([...members].sort()).toEqual(["a", "b", "c"])
  const order = ["a", "b", "c", "a"]
  for (const [index, name] of members.entries()) {
    const next = members[(index + 1) % members.length]
    expect(next).toBe(order[order.indexOf(name) + 1])
  }
})

test("what leans on a ring says so, even behind IFERROR", () => {
  const entries = [formula("a", "length", "a + width"), formula("safe", "length", "IFERROR(a; width)")]
  expect(faultOf("safe", ...entries)).toMatchObject([{ code: "leans_on_problem", on: ["a"] }])
})

test("a table whose number of rows leans on its own column is a ring", () => {
  const rows = table("posts", { kind: "formula", formula: "COUNT(posts.x) + 1" }, [
    ["x", "length", "ROW() * width"],
  ])
  expect(faultOf("posts", rows)[0]?.code).toBe("cycle")
})

test.each<[string, Entry, string]>([
  ["an unknown name", formula("bad", "length", "widht * 2"), "unknown_name"],
  ["mismatched units", formula("bad", "length", "width + width * width"), "dimension_mismatch"],
  ["a result of another dimension", formula("bad", "length", "width * width"), "result_mismatch"],
  ["text where a number belongs", formula("bad", "length", 'width * "two"'), "wrong_argument"],
  ["division by zero", formula("bad", "ratio", "width / (width - width)"), "division_by_zero"],
  ["the root of a negative number", formula("bad", "ratio", "SQRT(-1)"), "not_a_number"],
  ["a formula of 10,000 characters", formula("bad", "ratio", `1${"+1".repeat(5000)}`), "formula_too_long"],
  ["nesting 500 deep", formula("bad", "ratio", `${"(".repeat(500)}1${")".repeat(500)}`), "formula_too_deep"],
  ["an unknown function", formula("bad", "ratio", "RUONDUP(1.5; 0)"), "unknown_function"],
  ["a missing operand", formula("bad", "ratio", "1 +"), "unexpected"],
  ["an empty formula", formula("bad", "ratio", " "), "formula_empty"],
])("%s is one clear problem at its entry", (_, entry, code) => {
  expect(faultOf("bad", entry).map((problem) => problem.code)).toEqual([code])
})

test("a problem is told once, at the entry that has it", () => {
  const book = bookOf([
    ...SOUND,
    formula("bad", "ratio", "width / (width - width)"),
    formula("above", "ratio", "bad + 1"),
  ])
  expect(book.entry("above").problems).toMatchObject([{ code: "leans_on_problem", on: ["bad"] }])
  expect(book.problems()).toMatchObject([{ code: "division_by_zero", at: { entry: "bad" } }])
})

test("a fault in one row names the row", () => {
  const rows = table("posts", { kind: "formula", formula: "3" }, [["x", "ratio", "1 / (ROW() - 2)"]])
  expect(faultOf("posts.x", rows)).toMatchObject([
    { code: "division_by_zero", at: { entry: "posts.x", row: 2 } },
  ])
})

test("a number of rows that cannot be is refused", () => {
  const counted = (text: string) =>
    table("posts", { kind: "formula", formula: text }, [["x", "count", "ROW()"]])
  expect(faultOf("posts", counted("-1"))).toMatchObject([{ code: "bad_row_count", wanted: -1 }])
  expect(faultOf("posts", counted("2.5"))).toMatchObject([{ code: "bad_row_count", wanted: 2.5 }])
  expect(faultOf("posts", counted("1000000"))).toMatchObject([{ code: "too_many_rows" }])
})
