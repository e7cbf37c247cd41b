import { expect, test } from "vitest"
import { bookOf, figure, formula, input, table } from "../helpers/small-book.ts"

const ENTRIES = [
  input("fall", "length", "5 in"),
  input("run", "length", "10 ft"),
  figure("step", "length", "4 in"),
  table("posts", { kind: "formula", formula: "3" }, [
    ["x", "length", "(ROW() - 1) * run / 2"],
    ["ground", "length", "-fall * x / run"],
    ["blocks", "count", "MAX(1; ROUNDUP(-ground / step; 0))"],
  ]),
  formula("block_count", "count", "SUM(posts.blocks)"),
]

test("every name can be walked down to inputs and figures", () => {
  const book = bookOf(ENTRIES)
  const seen = new Set<string>()
  const walk = (name: string): void => {
    if (seen.has(name)) return
    seen.add(name)
    for (const next of book.leansOn(name)) walk(next)
  }
  walk("block_count")
  expect([...seen].sort()).toEqual([
    "block_count",
    "fall",
    "posts.blocks",
    "posts.ground",
    "posts.x",
    "run",
    "step",
  ])
})

test("what leans on a name is the inverse of what it leans on", () => {
  const book = bookOf(ENTRIES)
  for (const name of book.names()) {
    for (const needed of book.leansOn(name)) expect(book.leanedOnBy(needed)).toContain(name)
    for (const user of book.leanedOnBy(name)) expect(book.leansOn(user)).toContain(name)
  }
})

test("the working shows the formula as written and with the values put in", () => {
  const book = bookOf(ENTRIES, { unitSystem: "us" })
  const working = book.working("posts.blocks", 3)
  expect(working?.formula).toBe("MAX(1; ROUNDUP(-ground / step; 0))")
  expect(working?.withValues).toContain(`4"`)
  expect(working?.withValues).toContain(`-5"`)
  expect(book.working("block_count")?.withValues).toBe("SUM(1; 1; 2)")
  expect(book.working("fall")).toBeUndefined()
})

test("a search finds an exact name first, then what begins with the words, then what holds them all", () => {
  const book = bookOf(ENTRIES)
  expect(book.search("run")).toEqual(["run"])
  expect(book.search("posts")[0]).toBe("posts")
  expect(book.search("bl")).toEqual(["posts.blocks", "block_count"])
  expect(book.search("")).toEqual([])
})
