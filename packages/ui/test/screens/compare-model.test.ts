import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { answer } from "../../src/explore/answer.ts"
import type { Stand } from "../../src/explore/asked.ts"
import { checkLines, firstPair, linesOf, rowLines } from "../../src/screens/compare/compare-model.ts"

const scenarios = ["a", "b", "c"].map((id) => ({ id, title: id }))

test("the open scenario is put beside another, in the order in which they were made", () => {
  expect(firstPair(scenarios, "a")).toEqual(["a", "b"])
  expect(firstPair(scenarios, "c")).toEqual(["a", "c"])
  expect(firstPair(scenarios.slice(0, 1), "a")).toEqual(["a"])
})

test("three scenarios stand side by side as each does alone, wherever one of them differs", () => {
  const { book } = openBook(demo())
  const ids = [book.scenario.id]
  book.saveCopy("Shorter")
  book.edit("platform_length", "15 ft")
  ids.push(book.scenario.id)
  book.saveCopy("Closer joists")
  book.edit("joist_spacing", "12 in")
  ids.push(book.scenario.id)
  const names = book.names()
  const stands: Stand[] = []
  const asked = { template: demo().id, document: book.document() }
  for (const part of answer(demo(), { ...asked, question: { kind: "compare", scenarios: ids } }))
    if (part.kind === "compare") stands.push(part.stand)
  const inputs = linesOf("inputs", stands, names)
  expect(inputs.map(({ name }) => name)).toEqual(["platform_length", "joist_spacing"])
  const results = linesOf("results", stands, names)
  expect(results.length).toBeGreaterThan(10)
  for (const [place, id] of ids.entries()) {
    book.switchTo(id)
    const alone = (name: string) => book.entry(name).reading?.text ?? "blank"
    for (const { name, cells } of [...inputs, ...results]) {
      if (book.entry(name).shape === "one") expect(cells[place]?.text, name).toBe(alone(name))
    }
    for (const { name, checks } of checkLines(stands, names))
      expect(checks[place]?.verdict, name).toBe(book.entry(name).check?.verdict)
  }
})

test("the same scenario twice has no line", () => {
  const { book } = openBook(demo())
  const ids = [book.scenario.id, book.saveCopy("Another").id]
  const question = { kind: "compare", scenarios: ids } as const
  const parts = [...answer(demo(), { template: demo().id, document: book.document(), question })]
  const stands = parts.flatMap((part) => (part.kind === "compare" ? [part.stand] : []))
  expect(linesOf("inputs", stands, book.names())).toEqual([])
  expect(linesOf("results", stands, book.names())).toEqual([])
  expect(checkLines(stands, book.names())).toEqual([])
})

test("rows of a list are matched by what they are, and only what differs is said", () => {
  const columns = { labels: ["item", "number", "length"], texts: [true, false, false] }
  const before = [
    ["board", "4", "8 ft"],
    ["screw", "100", ""],
  ]
  const after = [
    ["screw", "120", ""],
    ["board", "4", "8 ft"],
    ["tie", "2", ""],
  ]
  expect(rowLines([before, after], columns)).toEqual([
    { what: "screw", cells: ["number 100", "number 120"] },
    { what: "tie", cells: ["", "number 2"] },
  ])
  expect(rowLines([before, before], columns)).toEqual([])
})
