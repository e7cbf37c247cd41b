import { openBook, type Problem } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { freshTitle, readKept } from "../../src/storage/kept-workbook.ts"

const known = () => undefined
const saved = openBook(demo()).book.document()
const document = () => structuredClone(saved)

test("a workbook is read with its title and the moment it was changed", () => {
  const kept = { title: "Behind the house", changed: "2024-05-06T07:08:09.000Z", document: document() }
  expect(readKept("a", kept, known)).toEqual({ id: "a", ...kept })
})

test.each([
  [undefined],
  ["text"],
  [42],
  [{ title: "Odd", document: { format: "pegbook-workbook", version: 999 } }],
  [{ title: "Odd", document: "spoiled" }],
])("%j cannot be opened, and says so", (record) => {
  expect(readKept("a", record, known)).toMatchObject({ id: "a", problem: { at: {} } })
})

test("a title or a moment that is none is left out", () => {
  const read = readKept("a", { title: "", changed: "yesterday", document: document() }, known)
  expect(Object.keys(read).sort()).toEqual(["document", "id"])
})

test("a workbook of a kind that is not known cannot be opened", () => {
  const problem: Problem = { code: "file_unknown_template", at: {}, template: "barn", known: [] }
  expect(readKept("a", { document: document() }, () => problem)).toEqual({ id: "a", problem })
})

test("a title that is taken gets a number", () => {
  expect(freshTitle("Shed base", [])).toBe("Shed base")
  expect(freshTitle("Shed base", ["Shed base", "Shed base 3"])).toBe("Shed base 2")
  expect(freshTitle("Shed base", ["Shed base", "Shed base 2"])).toBe("Shed base 3")
})
