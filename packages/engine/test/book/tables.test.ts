import { expect, test } from "vitest"
import type { Solution } from "../../src/index.ts"
import { EVERY_GRAPH } from "../helpers/every-graph.ts"
import { bookOf, formula, input, table, value } from "../helpers/small-book.ts"

const POSTS = [
  input("run", "length", "10 m"),
  input("spacing", "length", "2.5 m"),
  formula("bays", "count", "ROUNDUP(run / spacing; 0)"),
  table("posts", { kind: "formula", formula: "bays + 1" }, [
    ["x", "length", "MIN(run; (ROW() - 1) * spacing)"],
    ["from_middle", "length", "ABS(x - run / 2)"],
  ]),
  formula("spread", "length", "SUM(posts.from_middle)"),
  formula("last", "length", "INDEX(posts.x; COUNT(posts.x))"),
]

test.each(EVERY_GRAPH)("rows follow their formula, growing and shrinking, in %s", (_, graph) => {
  const book = bookOf(POSTS, { graph })
  expect(value(book, "posts.x")).toEqual([0, 2.5, 5, 7.5, 10])
  expect(value(book, "spread")).toBe(15)
  book.edit("spacing", "1 m")
  expect(book.table("posts").rowCount).toBe(11)
  expect(value(book, "spread")).toBe(30)
  book.edit("spacing", "20 m")
  expect(value(book, "posts.x")).toEqual([0, 10])
  expect(value(book, "spread")).toBe(10)
  expect(value(book, "last")).toBe(10)
})

test("an edit names the rows that moved, that came and that went", () => {
  const book = bookOf(POSTS)
  const { moved } = book.edit("run", "5 m")
  const rows = moved
    .filter(({ name }) => name === "posts.x")
    .map(({ row, old, new: now }) => [row, old?.value ?? null, now?.value ?? null])
  expect(rows).toEqual([
    [4, 7.5, null],
    [5, 10, null],
  ])
})

test("a row's working has that row's values in it", () => {
  const book = bookOf(POSTS)
  expect(book.working("posts.from_middle", 4)?.withValues).toContain("7,500 mm")
  expect(book.leansOn("posts.from_middle")).toEqual(["posts.x", "run", "posts"])
  expect(book.leanedOnBy("posts.from_middle")).toEqual(["spread"])
  expect(book.leanedOnBy("bays")).toEqual(["posts"])
})

const LEVELS = table("levels", { kind: "input", most: 4, default: [] }, [
  ["x", "length"],
  ["level", "length"],
  ["below", "length", "-level"],
])

test("an entered table starts empty, takes rows, and refuses bad ones whole", () => {
  const book = bookOf([LEVELS, formula("deepest", "length", "MAX(levels.below)")])
  expect(value(book, "deepest")).toBe(0)
  expect(
    book.editTable("levels", [
      { x: "0 ft", level: "-3 in" },
      { x: "10 ft", level: "-1/2 in" },
    ]).accepted,
  ).toBe(true)
  expect(value(book, "deepest")).toBe(0.0762)
  const bad = book.editTable("levels", [{ x: "0 ft", level: "low" }])
  expect(bad.problems).toMatchObject([{ code: "input_unreadable", at: { entry: "levels.level", row: 1 } }])
  expect(book.editTable("levels", [{ x: "0", depth: "1" }]).problems).toMatchObject([
    { code: "no_such_column", column: "depth" },
  ])
  expect(book.editTable("levels", new Array(5).fill({ x: "0", level: "0" })).problems).toMatchObject([
    { code: "table_too_long" },
  ])
  expect(value(book, "deepest")).toBe(0.0762)
  book.restore("levels")
  expect(book.table("levels").rowCount).toBe(0)
})

/** Puts as many whole pieces as fit one after the other. */
function layOut(run: number, piece: number): Solution {
  const count = Math.floor(run / piece)
  const unmet = count === 0 ? ["the piece is longer than the run"] : []
  return {
    rows: Array.from({ length: count }, (_, index) => ({ from: index * piece, label: `piece ${index + 1}` })),
    report: {
      method: "one after the other",
      objective: { says: "length used", measure: "length", value: count * piece },
      bound: run,
      unmet,
    },
  }
}

test("a solver reads whole nanometres, and its rows and its report can be leant on", () => {
  let runs = 0
  const pieces = table(
    "pieces",
    {
      kind: "solved",
      from: ["run", "spacing"],
      solve: (given) => {
        runs++
        expect(Number.isInteger(given.number("run"))).toBe(true)
        return layOut(given.number("run"), given.number("spacing"))
      },
    },
    [
      ["from", "length"],
      ["label", "text"],
      ["to", "length", "from + spacing"],
    ],
  )
  const book = bookOf([
    ...POSTS,
    pieces,
    formula("covered", "length", "MAX(pieces.to)"),
    input("other", "count", "1"),
  ])
  expect(value(book, "pieces.from")).toEqual([0, 2.5, 5, 7.5])
  expect(value(book, "covered")).toBe(10)
  expect(book.entry("pieces").report?.bound).toBe(10e9)
  book.edit("other", "2")
  expect(runs).toBe(1)
  book.edit("run", "6 m")
  expect(value(book, "pieces.label")).toEqual(["piece 1", "piece 2"])
  expect(runs).toBe(2)
  book.edit("spacing", "7 m")
  expect(book.entry("pieces").problems).toMatchObject([
    { code: "unmet", says: ["the piece is longer than the run"] },
  ])
  expect(value(book, "covered")).toBe(0)
})

test("a solver that throws stops nothing else", () => {
  const broken = table(
    "broken",
    {
      kind: "solved",
      from: ["run"],
      solve: () => {
        throw new Error("no room")
      },
    },
    [["x", "length"]],
  )
  const book = bookOf([...POSTS, broken])
  expect(book.entry("broken").problems).toMatchObject([{ code: "unmet" }])
  expect(value(book, "bays")).toBe(4)
})
