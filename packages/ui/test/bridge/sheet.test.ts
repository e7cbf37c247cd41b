import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { expect, test } from "vitest"
import { mirror } from "../../src/bridge/sheet.ts"

/** Raw numbers may differ by rounding noise that moves no text; a person reads the texts. */
const asRead = (view: unknown): string =>
  JSON.stringify(view, (key, value) => (key === "value" || key === "ratio" ? undefined : value))

/** A mirror with every entry and table read once, so that each has a signal that could go stale. */
function mirrored() {
  const { book } = openBook(demo())
  const sheet = mirror(book)
  const tables = book.names().filter((name) => book.entry(name).shape === "table")
  const check = (): void => {
    const stale = [
      ...book.names().filter((name) => asRead(sheet.entry(name)) !== asRead(book.entry(name))),
      ...tables.filter((name) => asRead(sheet.table(name)) !== asRead(book.table(name))),
    ]
    expect(stale).toEqual([])
  }
  check()
  return { book, sheet, check }
}

test("after an edit the mirror shows what the book says, everywhere", () => {
  const { sheet, check } = mirrored()
  const edits: readonly [string, string][] = [
    ["platform_length", "14 ft 3-1/2 in"],
    ["platform_width", "3.3 m"],
    ["joist_spacing", "12 in"],
    ["joist_stock", "8 ft, 16 ft"],
    ["area_limit", "30 sq ft"],
    ["soil_bearing", "1000 psf"],
    ["platform_length", "20 ft"],
  ]
  for (const [name, typed] of edits) {
    expect(sheet.edit(name, typed).accepted, `${name} ${typed}`).toBe(true)
    check()
  }
})

test("a preview, the next, the edit that ends them and one that is given up are shown everywhere", () => {
  const { book, sheet, check } = mirrored()
  const before = JSON.stringify(book.document())
  for (const typed of ["14 ft", "20 ft 1 in", "9 ft"]) {
    expect(sheet.preview("platform_length", typed).accepted).toBe(true)
    check()
  }
  expect(JSON.stringify(book.document())).toBe(before)
  sheet.edit("platform_length", "20 ft 1 in")
  check()
  sheet.preview("platform_length", "9 ft")
  sheet.edit("platform_width", "10 ft")
  check()
  sheet.preview("platform_length", "9 ft")
  sheet.endPreview()
  check()
  expect(sheet.history().length).toBe(2)
})

test("every blank input filled in, one at a time, wakes what waited for it", () => {
  const { book, sheet, check } = mirrored()
  const blank = book
    .names()
    .filter((name) => book.entry(name).kind === "input" && book.entry(name).state !== "ok")
  expect(blank.length).toBeGreaterThan(0)
  for (const name of blank) {
    const { measure } = book.entry(name)
    if (measure !== "length" && measure !== "area") continue
    expect(sheet.edit(name, measure === "length" ? "2 ft" : "150 sq ft").accepted, name).toBe(true)
    check()
  }
})

test("an edit that is refused leaves the mirror as it was", () => {
  const { sheet, check } = mirrored()
  expect(sheet.edit("platform_length", "twelve").accepted).toBe(false)
  check()
})

test("surveyed ground, another system of units, a copy, and its removal are all shown", () => {
  const { sheet, check } = mirrored()
  const levels = [
    { x: "0 ft", y: "0 ft", level: "0 in" },
    { x: "20 ft", y: "0 ft", level: "-5 in" },
    { x: "20 ft", y: "12 ft", level: "-7 1/2 in" },
  ]
  expect(sheet.editTable("ground_levels", levels).accepted).toBe(true)
  expect(sheet.typedRows("ground_levels")).toEqual(levels)
  check()
  sheet.showIn("metric")
  check()
  const copy = sheet.saveCopy("Longer")
  sheet.edit("platform_length", "7 m")
  check()
  const putBack = sheet.remove(copy.id)
  check()
  putBack()
  check()
  expect(sheet.entry("platform_length").typed).toBe("7 m")
})

test("what moved is found under its entry, and under its table for a cell", () => {
  const { sheet } = mirrored()
  const { moved } = sheet.edit("joist_spacing", "12 in")
  const cells = moved.filter((one) => one.name.startsWith("joists."))
  expect(cells.length).toBeGreaterThan(0)
  expect(sheet.movedAt("joists")).toEqual(cells)
  expect(sheet.movedAt("joist_spacing")).toEqual([moved.find((one) => one.name === "joist_spacing")])
  sheet.edit("joist_spacing", "16 in")
  sheet.edit("joist_spacing", "16 in")
  expect(sheet.movedAt("joists")).toEqual([])
})

test("a column is labelled with its table before it", () => {
  const { book, sheet } = mirrored()
  const [column] = book.table("joists").columns
  if (column === undefined) throw new Error("joists has no columns")
  expect(sheet.label(column.name)).toBe(`${book.entry("joists").label}: ${column.label}`)
  expect(sheet.label("joist_count")).toBe(book.entry("joist_count").label)
})
