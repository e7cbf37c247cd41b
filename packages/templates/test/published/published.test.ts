import { type Book, type Definition, type Entry, type MeasureId, openBook, readValue } from "@pegbook/engine"
import { afterAll, describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"
import type { PublishedValue } from "./published-value.ts"
import { IN_WORDS, PUBLISHED } from "./records.ts"

const EXACT = 1e-9

const entriesOf = (definition: Definition): readonly Entry[] =>
  definition.sections.flatMap(({ entries }) => entries)

/** The measure of an entry or column, where the template has it. */
function measureOf(definition: Definition, name: string): MeasureId | undefined {
  for (const entry of entriesOf(definition)) {
    if (entry.kind !== "table") {
      if (entry.name === name) return entry.measure
      continue
    }
    const column = entry.columns.find((one) => `${entry.name}.${one.name}` === name)
    if (column !== undefined) return column.measure
  }
  return undefined
}

function templateOf({ template, entry, record }: PublishedValue): Definition {
  const found = TEMPLATES.find((one) =>
    template === undefined ? measureOf(one, entry) !== undefined : one.id === template,
  )
  if (found === undefined) throw new Error(`${record}: no template ${template ?? `has ${entry}`}`)
  return found
}

/** A published text as the book would give it: SI, plain, or the text itself. */
function published(value: string | number, measure: MeasureId): number | string {
  if (typeof value === "number" || measure === "text") return value
  const outcome = readValue(value, measure, "us")
  if (!("value" in outcome) || typeof outcome.value !== "object") throw new Error(`cannot read ${value}`)
  return outcome.value.si.toNumber()
}

const books = new Map<string, Book>()

/** One book a template: what a value types in is put back before the next value reads. */
function reading<T>(value: PublishedValue, read: (book: Book) => T): T {
  const definition = templateOf(value)
  const { typed = {}, levels = [] } = value
  const book = books.get(definition.id) ?? openBook(definition).book
  books.set(definition.id, book)
  const before = Object.fromEntries(Object.keys(typed).map((name) => [name, book.entry(name).typed ?? ""]))
  const { accepted, problems } = book.editAll(typed)
  if (!accepted) throw new Error(`${value.record}: ${JSON.stringify(problems)}`)
  if (levels.length > 0) {
    const rows = levels.map(([x, y, level]) => ({ x, y, level }))
    expect(book.editTable("ground_levels", rows).accepted).toBe(true)
  }
  const result = read(book)
  expect(book.editAll(before).problems).toEqual([])
  if (levels.length > 0) book.editTable("ground_levels", [])
  return result
}

function found(book: Book, expected: PublishedValue): number | string | boolean | undefined {
  const { entry, row, over } = expected
  if (row === undefined) {
    const { reading } = book.entry(entry)
    if (over === undefined) return reading?.value
    return Number(reading?.value) / Number(book.entry(over).reading?.value)
  }
  const [column, is] = row
  const wanted = published(is, measureOf(templateOf(expected), column) ?? "text")
  const at = (book.entry(column).readings ?? []).findIndex((reading) => reading?.value === wanted)
  if (at < 0) throw new Error(`${expected.record}: no row where ${column} is ${is}`)
  const value = book.entry(entry).readings?.[at]?.value
  return over === undefined ? value : Number(value) / Number(book.entry(over).readings?.[at]?.value)
}

let reproduced = 0

afterAll(() => {
  console.info(`${reproduced} published values reproduced`)
})

describe("published values", () => {
  const named = PUBLISHED.map((value) => [`${value.record} ${value.source}: ${value.entry}`, value] as const)

  test.each(named)("%s", (_, value) => {
    const measure = measureOf(templateOf(value), value.entry)
    expect(measure, `${value.entry} is there`).toBeDefined()
    const expected = published(value.value, measure ?? "text")
    const given = reading(value, (book) => found(book, value))
    if (typeof expected === "number" && typeof given === "number") {
      const allowed = (value.within ?? EXACT) * Math.abs(expected)
      expect(Math.abs(given - expected), `${given} against ${expected}`).toBeLessThanOrEqual(allowed)
    } else expect(given).toBe(expected)
    reproduced++
  })
})

describe("sources", () => {
  const cited = TEMPLATES.flatMap((definition) =>
    entriesOf(definition).flatMap((entry) => [
      ...entry.sources,
      ...(entry.kind === "table" ? entry.columns.flatMap(({ sources }) => sources) : []),
    ]),
  )
  const grades = new Map(PUBLISHED.map(({ record, grade }) => [record, grade]))

  test("every record that a template cites is compared here, or is a rule in words", () => {
    const unknown = new Set(
      cited.flatMap(({ record }) =>
        record === undefined || grades.has(record) || record in IN_WORDS ? [] : [record],
      ),
    )
    expect([...unknown], "add a row to test/published/records.ts").toEqual([])
  })

  test("what was recalled says so, and what was read does not", () => {
    for (const { record, origin, title, kind } of cited) {
      const grade = record === undefined ? undefined : grades.get(record)
      if (grade === undefined || kind === "geometry") continue
      expect(origin, `${record} ${title}`).toBe(grade === "M" ? "memory" : "read")
    }
  })

  test("a secondary page is not passed off as the standard itself", () => {
    for (const { record, kind, title } of cited) {
      if (record !== undefined && grades.get(record) === "C")
        expect(kind, `${record} ${title}`).not.toBe("standard")
    }
  })
})
