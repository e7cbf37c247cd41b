import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { firstPair, isSame } from "../../src/screens/compare/compare-model.ts"

const scenarios = ["a", "b", "c"].map((id) => ({ id, title: id }))

test("the open scenario is put beside another, in the order in which they were made", () => {
  expect(firstPair(scenarios, "a")).toEqual({ left: "a", right: "b" })
  expect(firstPair(scenarios, "c")).toEqual({ left: "a", right: "c" })
  expect(firstPair(scenarios.slice(0, 1), "a")).toEqual({ left: "a", right: "a" })
})

test("a fresh copy is the same; one input changed is not", () => {
  const { book } = openBook(demo())
  const first = book.scenario.id
  const copy = book.saveCopy("Another").id
  expect(isSame(book.compare(first, copy))).toBe(true)
  book.edit("platform_length", "15 ft")
  expect(isSame(book.compare(first, copy))).toBe(false)
})
