import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { mirror } from "../../src/bridge/sheet.ts"
import { stepWords } from "../../src/screens/changes/step-words.ts"

test("each kind of step is told in words, with what it was and what it became", () => {
  const { book } = openBook(demo())
  const sheet = mirror(book)
  const last = () => {
    const step = sheet.history().findLast((one) => !one.undone)
    return step === undefined ? "" : stepWords(step, sheet)
  }
  const label = sheet.label("platform_length")
  sheet.edit("platform_length", "18 ft")
  expect(last()).toBe(`${label}: 20 ft → 18 ft`)
  sheet.edit("platform_length", "17 ft")
  expect(last()).toBe(`${label}: 18 ft → 17 ft`)
  sheet.restore("platform_length")
  expect(last()).toBe(`${label}: put back what the template has, instead of 17 ft`)
  sheet.edit("joist_count", "40")
  expect(last()).toContain("the template’s → 40")
  sheet.saveCopy("Second")
  expect(last()).toBe("Copied as “Second”")
  sheet.seal("Bought")
  expect(last()).toBe("Sealed as “Bought”")
  sheet.rename(sheet.scenario().id, "Third")
  expect(last()).toBe("Scenario “Second” renamed to “Third”")
  sheet.showIn("metric")
  expect(last()).toBe("Shown in metric")
  sheet.addEntry({ kind: "formula", name: "mine", label: "Mine", formula: "joist_count * 2" })
  expect(last()).toBe("Your own entry “Mine” added")
  expect(sheet.typedOver()).toEqual(["joist_count"])
})

test("an own entry is in the mirror as it is in the book, and goes and comes back with undo and redo", () => {
  const { book } = openBook(demo())
  const sheet = mirror(book)
  sheet.addEntry({ kind: "formula", name: "mine", label: "Mine", formula: "joist_count * 2" })
  expect(sheet.label("mine")).toBe("Mine")
  expect(sheet.entry("mine")).toMatchObject({ own: true, reading: { value: 32 } })
  expect(sheet.sections().at(-1)?.id).toBe("own")
  sheet.undo()
  expect(sheet.has("mine")).toBe(false)
  expect(sheet.working("mine")).toBeUndefined()
  expect(sheet.sections().map(({ id }) => id)).toEqual(demo().sections.map(({ id }) => id))
  sheet.redo()
  sheet.edit("joist_spacing", "12 in")
  expect(sheet.entry("mine").reading?.text).toBe(book.entry("mine").reading?.text)
})

test("a cell that is typed over is listed by its row, and reads again after it is put back", () => {
  const { book } = openBook(demo())
  const sheet = mirror(book)
  const [table] = book
    .names()
    .filter((name) => book.entry(name).kind === "figure" && book.entry(name).shape === "table")
  const column = book
    .table(table ?? "")
    .columns.find(({ measure }) => measure === "length" || measure === "ratio")
  if (column === undefined) throw new Error("the template has no table of figures with a number in it")
  const before = sheet.entry(column.name).readings?.[0]?.text
  const cell = `${column.name}.1`
  expect(sheet.edit(cell, column.measure === "length" ? "77 in" : "77").accepted).toBe(true)
  expect(sheet.typedOver()).toEqual([cell])
  expect(sheet.entry(column.name).readings?.[0]?.text).not.toBe(before)
  sheet.restore(cell)
  expect(sheet.entry(column.name).readings?.[0]?.text).toBe(before)
})
