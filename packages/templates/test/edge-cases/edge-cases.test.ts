import {
  type Book,
  type CheckEntry,
  type Definition,
  type Entry,
  type InputEntry,
  inWords,
  openBook,
  readValue,
} from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"

/** Text to type for inputs that the template has; others are left out. */
type Typed = Readonly<Record<string, string>>

const entriesOf = (definition: Definition): readonly Entry[] =>
  definition.sections.flatMap(({ entries }) => entries)

const inputsOf = (definition: Definition): readonly InputEntry[] =>
  entriesOf(definition).filter((entry): entry is InputEntry => entry.kind === "input")

/** The least or greatest that an input takes, in SI, or nothing where it says none. */
function bound(entry: InputEntry, text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const outcome = readValue(text, entry.measure, "us")
  return "value" in outcome && typeof outcome.value === "object" ? outcome.value.si.toNumber() : undefined
}

/** What can be typed: names that the template does not have are skipped, lengths beyond a bound become the bound. */
function fitting(definition: Definition, typed: Typed): Record<string, string> {
  const inputs = new Map(inputsOf(definition).map((entry) => [entry.name, entry]))
  return Object.fromEntries(
    Object.entries(typed).flatMap(([name, text]) => {
      const entry = inputs.get(name)
      if (entry === undefined) return []
      const value = bound(entry, text)
      if (value === undefined) return [[name, text]]
      if (value < (bound(entry, entry.least) ?? -Infinity)) return [[name, entry.least ?? text]]
      if (value > (bound(entry, entry.most) ?? Infinity)) return [[name, entry.most ?? text]]
      return [[name, text]]
    }),
  )
}

/** What may be told: something to enter, or a limit that no plan keeps. A formula that breaks down is neither. */
const TOLD = ["needs_entry", "unmet"]

/** Counts that are differences, and so may be below nothing: a flat list may also count too many. */
const SIGNED = new Set(["blocks_missed_by_flat"])

/** Fails on a number that is not one, on a count below nothing, and on a problem that says nothing to do. */
function expectSane(definition: Definition, book: Book): void {
  const counts = countsOf(definition)
  for (const name of book.names()) {
    const view = book.entry(name)
    for (const reading of view.readings ?? [view.reading ?? null]) {
      if (reading === null || typeof reading.value !== "number") continue
      expect(Number.isFinite(reading.value), `${name} is ${reading.value}`).toBe(true)
      if (counts.has(name) && !SIGNED.has(name)) expect(reading.value, name).toBeGreaterThanOrEqual(0)
    }
  }
  const outside = checksOf(definition).some(({ name }) => book.entry(name).check?.verdict === "outside_table")
  for (const problem of book.problems()) {
    // A member or a sheet that no published table holds has no strength to show, and its check says that it is outside.
    if (outside && problem.code === "not_found" && /^(members|sheet_strength)\./.test(problem.at.entry ?? ""))
      continue
    expect(TOLD, JSON.stringify(problem)).toContain(problem.code)
    const { says, next } = inWords(problem, "us")
    expect(says.trim(), JSON.stringify(problem)).not.toBe("")
    expect(next.trim(), JSON.stringify(problem)).not.toBe("")
  }
  for (const { name } of checksOf(definition)) {
    const { check } = book.entry(name)
    if (check?.verdict === "fails") expect(check.advice.join(" ").trim().length, name).toBeGreaterThan(10)
  }
}

const checksOf = (definition: Definition): readonly CheckEntry[] =>
  entriesOf(definition).filter((entry): entry is CheckEntry => entry.kind === "check")

function countsOf(definition: Definition): ReadonlySet<string> {
  return new Set(
    entriesOf(definition).flatMap((entry): readonly string[] => {
      if (entry.kind === "table")
        return entry.columns
          .filter(({ measure }) => measure === "count")
          .map(({ name }) => `${entry.name}.${name}`)
      return entry.kind === "check" || entry.measure !== "count" ? [] : [entry.name]
    }),
  )
}

/** A template's workbook with an unusual case typed in: what fails now, and that nothing else is out of order. */
function opened(definition: Definition, typed: Typed, levels?: readonly Typed[]): Book {
  const { book } = openBook(definition)
  const values = fitting(definition, typed)
  const { accepted, problems } = book.editAll(values)
  expect(accepted, JSON.stringify(problems)).toBe(true)
  if (levels !== undefined) expect(book.editTable("ground_levels", levels).accepted).toBe(true)
  expectSane(definition, book)
  return book
}

function failing(definition: Definition, book: Book): readonly string[] {
  return checksOf(definition)
    .map(({ name }) => name)
    .filter((name) => book.entry(name).check?.verdict === "fails")
}

const has = (definition: Definition, name: string): boolean =>
  entriesOf(definition).some((entry) => entry.name === name)

const takesLevels = (definition: Definition): boolean => has(definition, "ground_levels")

describe.each(TEMPLATES.map((definition) => [definition.id, definition] as const))("%s", (_, definition) => {
  test.runIf(has(definition, "ground_fall_length"))(
    "ground steeper than it can take fails a check that says what to change",
    () => {
      const book = opened(definition, { ground_fall_length: "12 ft", ground_fall_width: "6 ft" })
      expect(failing(definition, book).length).toBeGreaterThan(0)
    },
  )

  test("the smallest platform that it takes, smaller than one sheet and of one bay", () => {
    opened(definition, { platform_length: "0 in", platform_width: "0 in" })
  })

  test("one joist bay", () => {
    const book = opened(definition, {
      platform_length: "4 ft",
      joist_spacing: "47 in",
      sleeper_spacing_max: "8 ft",
      support_spacing_max: "12 ft",
    })
    if (!has(definition, "joist_count") || !has(definition, "joist_spacing")) return
    expect(Number(book.entry("joist_count").reading?.value)).toBeGreaterThanOrEqual(2)
  })

  test("the largest platform that it takes", () => {
    opened(definition, { platform_length: "100000 ft", platform_width: "100000 ft" })
  })

  test.runIf(takesLevels(definition))("levels of which two are the same point", () => {
    const same = { x: "5 ft", y: "5 ft", level: "-1 in" }
    const book = opened(definition, {}, [same, same, { x: "15 ft", y: "2 ft", level: "-3 in" }])
    expect(failing(definition, book)).toContain("levels_check")
  })

  test.runIf(takesLevels(definition))("two equal points beside two good ones are no trouble", () => {
    const same = { x: "5 ft", y: "5 ft", level: "-1 in" }
    const others = [
      { x: "15 ft", y: "2 ft", level: "-3 in" },
      { x: "1 ft", y: "9 ft", level: "-2 in" },
    ]
    const book = opened(definition, {}, [same, same, ...others])
    expect(failing(definition, book)).not.toContain("levels_check")
  })

  test.runIf(takesLevels(definition)).each([
    [
      "aslant",
      [
        ["0 ft", "0 ft"],
        ["5 ft", "3 ft"],
        ["10 ft", "6 ft"],
      ],
    ],
    [
      "along the length",
      [
        ["0 ft", "2 ft"],
        ["5 ft", "2 ft"],
        ["10 ft", "2 ft"],
      ],
    ],
    [
      "across the width",
      [
        ["3 ft", "0 ft"],
        ["3 ft", "4 ft"],
        ["3 ft", "9 ft"],
      ],
    ],
  ])("three points in a line, %s: the check says to take one more", (_, points) => {
    const levels = points.map(([x = "", y = ""], index) => ({ x, y, level: `-${index} in` }))
    const book = opened(definition, {}, levels)
    expect(failing(definition, book)).toContain("levels_check")
    expect(book.entry("levels_check").check?.advice.join(" ")).toMatch(/one more level/)
  })

  test.runIf(takesLevels(definition))("one level alone, and levels all alike", () => {
    const book = opened(definition, {}, [{ x: "1 ft", y: "1 ft", level: "0 in" }])
    expect(failing(definition, book)).toContain("levels_check")
    opened(definition, {}, [
      { x: "0 ft", y: "0 ft", level: "0 in" },
      { x: "9 ft", y: "0 ft", level: "0 in" },
      { x: "0 ft", y: "9 ft", level: "0 in" },
    ])
  })

  const stocks = inputsOf(definition).filter(({ list, name }) => list === true && name.endsWith("_stock"))

  test.runIf(stocks.length > 0).each(stocks.map(({ name }) => name))(
    "an empty %s is told, and nothing is made up",
    (name) => {
      const { book } = openBook(definition)
      const result = book.edit(name, "")
      expectSane(definition, book)
      const told = [...result.problems, ...book.problems()]
      expect(told.some((problem) => JSON.stringify(problem).includes(name))).toBe(true)
    },
  )

  test.runIf(stocks.length > 0)("stock far too short for every piece is told", () => {
    const book = opened(definition, Object.fromEntries(stocks.map(({ name }) => [name, "1 ft"])))
    const told =
      failing(definition, book).length + book.problems().filter(({ code }) => code === "unmet").length
    expect(told).toBeGreaterThan(0)
  })

  test("nothing on it and no weight of its own: no load, and a spacing that the soil does not limit", () => {
    const book = opened(definition, { live_load: "0 psf", dead_load: "0 psf" })
    const value = (name: string): number => Number(book.entry(name).reading?.value)
    expect(value("platform_load")).toBe(0)
    const whole = [
      ["sleeper_spacing_for_soil", "platform_length"],
      ["skid_width_for_soil", "platform_width"],
    ] as const
    expect(book.entry("soil_bearing_check").check?.verdict).toBe("passes")
    for (const [name, size] of whole.filter(([name]) => has(definition, name)))
      expect(value(name)).toBeCloseTo(value(size), 9)
  })

  // Length and width keep their defaults: the finest of everything on the largest platform is a matter of patience.
  test.each(["least", "most"] as const)("everything but the size at its %s", (side) => {
    const { book } = openBook(definition)
    const extremes = inputsOf(definition).flatMap((entry) => {
      const text = entry[side]
      return text === undefined || entry.list === true || /^platform_/.test(entry.name)
        ? []
        : [[entry.name, text]]
    })
    expect(book.editAll(Object.fromEntries(extremes)).problems).toEqual([])
    expectSane(definition, book)
  })
})
