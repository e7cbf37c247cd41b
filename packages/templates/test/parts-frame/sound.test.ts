import { buildDecimalGraph, openBook } from "@pegbook/engine"
import { expect, test } from "vitest"
import { PLATFORM, platform } from "./platform.ts"

test("nothing is wrong with the definition, and every value is there", () => {
  const book = platform()
  expect(book.problems()).toEqual([])
  const without = book.names().filter((name) => book.entry(name).state !== "ok")
  expect(without).toEqual([])
})

test("the slow evaluator in decimals says the same", () => {
  const fast = platform()
  const slow = openBook(PLATFORM, { graph: buildDecimalGraph }).book
  for (const name of fast.names()) {
    const [here, there] = [fast.entry(name), slow.entry(name)]
    expect(there.reading?.text, name).toEqual(here.reading?.text)
    expect(
      there.readings?.map((reading) => reading?.text),
      name,
    ).toEqual(here.readings?.map((reading) => reading?.text))
  }
})

test("nothing built of a part leaves every other answer standing", () => {
  const none = {
    blocking_rows: "0",
    net_ends: "0",
    net_sides: "0",
    edge_board_ends: "0",
    edge_board_sides: "0",
    ties_per_crossing: "0",
  }
  expect(platform(none).problems()).toEqual([])
})

test("every entry and column says what it is, why, and by whose word", () => {
  for (const { entries } of PLATFORM.sections.slice(2)) {
    for (const entry of entries) {
      for (const said of [entry, ...(entry.kind === "table" ? entry.columns : [])]) {
        expect(said.label, said.name).not.toBe("")
        expect(said.why, said.name).toMatch(/[.:?]$/)
        expect(said.sources.length, said.name).toBeGreaterThan(0)
      }
    }
  }
})
