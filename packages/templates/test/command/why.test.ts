import { expect, test } from "vitest"
import { pegbook, refuses } from "./run.ts"

const T = "game-table-platform"

function lines(...args: string[]): string[] {
  const { status, out, err } = pegbook(...args)
  expect(err).toBe("")
  expect(status).toBe(0)
  return out.trimEnd().split("\n")
}

test("list gives one template a line", () => {
  expect(lines("list").map((line) => line.split(/\s/)[0])).toContain(T)
})

test("help is given when nothing or help is asked", () => {
  const help = lines("help")
  expect(help.join("\n")).toContain("pegbook calc <template-or-saved-file>")
  expect(lines()).toEqual(help)
  expect(lines("--help")).toEqual(help)
})

test("why walks from a number down to what was entered, with values", () => {
  const printed = lines(
    "why",
    T,
    "joist_count",
    "--set",
    "platform_length=16 ft",
    "--set",
    "joist_spacing=16 in",
  )
  const text = printed.join("\n")
  expect(text).toMatch(/^ {2}Why: .+$/m)
  // What kind of authority it is, said once.
  expect(text).toMatch(/^ {2}From: Geometry$/m)
  // Common practice, no source: (16 ft − 1 1/2 in) ÷ 16 in is 11.9, so 12 spaces and 13 joists.
  expect(text).toMatch(/^joist_count = 13 {3}= /m)
  expect(text).toMatch(/^ {2,}platform_length = 16' 0" {3}input, changed$/m)
  expect(text).toMatch(/^ {2,}joist_spacing = 1' 4" {3}input/m)
})

test("a branch that comes twice is written once", () => {
  const printed = lines("why", T, "screws_to_buy")
  const formulas = printed.filter((line) => / {3}= /.test(line)).map((line) => line.trim().split(" ")[0])
  expect(new Set(formulas).size).toBe(formulas.length)
})

test("a table shows the formula of each column and its rows", () => {
  const text = lines("why", T, "supports").join("\n")
  expect(text).toMatch(/^ {2}supports\.dig = /m)
  expect(text).toMatch(/^supports: \d+ rows$/m)
})

test("an unknown name suggests near ones", () => {
  refuses(["why", T, "joist_cuont"], "joist_cuont", "joist_count")
  refuses(["why", T, ""], T)
  refuses(["why", T], "<name>")
  refuses(["why", T, "toString"], "toString")
})

test("a number that nobody published says so, once", () => {
  const [, from = ""] =
    /^ {2}From: (.*Common practice.*)$/m.exec(lines("why", T, "square_step").join("\n")) ?? []
  expect(from.match(/common practice/gi)).toHaveLength(1)
  expect(from).toContain("Common practice, no source")
})
