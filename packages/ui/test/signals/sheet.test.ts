import { openBook } from "@pegbook/engine"
import { demo } from "@pegbook/templates"
import { createEffect, createRoot } from "solid-js"
import { expect, onTestFinished, test } from "vitest"
import { mirror } from "../../src/bridge/sheet.ts"

/** Raw numbers may differ by rounding noise that moves no text; a person reads the texts. */
const asRead = (view: unknown): string =>
  JSON.stringify(view, (key, value) => (key === "value" || key === "ratio" ? undefined : value))

/** What waits until the page has been painted, and until a pause, run by hand. */
function heldBack() {
  const waiting = new Set<() => void>()
  const hold = (work: () => void) => {
    waiting.add(work)
    return () => void waiting.delete(work)
  }
  const run = (): void => {
    for (const work of waiting) {
      waiting.delete(work)
      work()
    }
  }
  return { later: { clock: { after: (_: number, work: () => void) => hold(work) }, whenPainted: hold }, run }
}

/** A mirror with every entry and table watched, at once and later, so that each has a signal that could go stale. */
function mirrored() {
  const { book } = openBook(demo())
  const { later, run } = heldBack()
  const sheet = mirror(book, later)
  const tables = book.names().filter((name) => book.entry(name).shape === "table")
  const shown = { now: new Map<string, string>(), later: new Map<string, string>() }
  const dispose = createRoot((end) => {
    for (const [when, from] of [
      ["now", sheet],
      ["later", sheet.later],
    ] as const) {
      for (const name of book.names()) {
        createEffect(() => shown[when].set(name, asRead(from.entry(name))))
        createEffect(() => shown[when].set(`moved at ${name}`, JSON.stringify(from.movedAt(name))))
      }
      for (const name of tables)
        createEffect(() => shown[when].set(`table ${name}`, asRead(from.table(name))))
    }
    return end
  })
  onTestFinished(dispose)
  const stale = (when: keyof typeof shown): string[] => [
    ...book.names().filter((name) => shown[when].get(name) !== asRead(book.entry(name))),
    ...book
      .names()
      .filter((name) => shown[when].get(`moved at ${name}`) !== JSON.stringify(book.movedAt(name))),
    ...tables.filter((name) => shown[when].get(`table ${name}`) !== asRead(book.table(name))),
  ]
  const check = (): void => {
    expect(stale("now"), "at once").toEqual([])
    run()
    expect(sheet.settling()).toBe(false)
    expect(stale("later"), "when the page has been painted").toEqual([])
  }
  check()
  return { book, sheet, check, stale, run }
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

test("what is out of sight follows later, several edits together, and no less", () => {
  const { sheet, stale, run } = mirrored()
  sheet.edit("platform_length", "14 ft")
  expect(sheet.settling()).toBe(true)
  expect(stale("later")).toContain("platform_area")
  sheet.edit("joist_spacing", "12 in")
  sheet.preview("platform_width", "9 ft")
  sheet.preview("platform_width", "8 ft")
  sheet.edit("soil_bearing", "1000 psf")
  run()
  expect(stale("later").filter((name) => !name.startsWith("moved at"))).toEqual([])
})

test("what nobody watches any more is not read", () => {
  const { book } = openBook(demo())
  const reads: string[] = []
  const counted = new Proxy(book, {
    get: (target, key) => {
      const found = Reflect.get(target, key, target)
      if (typeof found !== "function") return found
      return (...given: unknown[]) => {
        if (key === "entry") reads.push(String(given[0]))
        return Reflect.apply(found, target, given)
      }
    },
  })
  const sheet = mirror(counted)
  const end = createRoot((dispose) => {
    createEffect(() => sheet.entry("total_cost"))
    createEffect(() => sheet.entry("platform_area"))
    return dispose
  })
  reads.length = 0
  sheet.edit("platform_length", "14 ft")
  expect(new Set(reads)).toEqual(new Set(["total_cost", "platform_area"]))
  end()
  reads.length = 0
  sheet.edit("platform_length", "15 ft")
  expect(reads).toEqual([])
})
