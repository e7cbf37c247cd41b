import { type Book, inWords, openBook } from "@pegbook/engine"
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"
import { legalInputs } from "../helpers/random-inputs.ts"

const SEED = 20261125
/** A design of a whole job takes a second or so: as many as fit into a minute over five templates. */
const RUNS = 8

function texts(book: Book, name: string): readonly string[] {
  return (book.entry(name).readings ?? []).map((reading) => `${reading?.value}`)
}

function numbers(book: Book, name: string): readonly number[] {
  return (book.entry(name).readings ?? []).map((reading) => Number(reading?.value))
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/**
 * Fails with the lines that are not in order. Where stock is shorter than a piece the plan of the timber says so and buys
 * nothing for it; then, and only then, that size may come up short here as well.
 */
function nothingForgotten(book: Book): void {
  const finding = texts(book, "things_by_stage.finding")
  const stockTooShort = (book.entry("stock_to_buy").report?.unmet ?? []).length > 0
  const sizes = new Set(texts(book, "timber_pieces.size"))
  const excused = (item: string, at: number): boolean =>
    stockTooShort && sizes.has(item) && finding[at] === "less is bought than is used"
  const items = texts(book, "things_by_stage.item")
  const wrong = items.filter((item, at) => finding[at] !== "in order" && !excused(item, at))
  expect(wrong.map((item) => `${item}: ${finding[items.indexOf(item)]}`)).toEqual([])
  const verdict = finding.every((one) => one === "in order") ? "passes" : "fails"
  expect(book.entry("nothing_forgotten_check").check?.verdict).toBe(verdict)
}

/** What the stages use, against totals that other parts of the workbook add up for themselves. */
function addsUp(book: Book): void {
  const items = texts(book, "things_by_stage.item")
  const used = numbers(book, "things_by_stage.used")
  const of = (item: string): number => used[items.indexOf(item)] ?? 0
  expect(of("screws"), "screws").toBe(book.entry("screw_count").reading?.value)
  expect(of("frame screws"), "frame screws").toBe(book.entry("frame_screw_count").reading?.value)
  const units = texts(book, "things_by_stage.unit")
  const sizes = new Set(texts(book, "timber_pieces.size"))
  const metres = (column: string): number =>
    sum(
      numbers(book, `things_by_stage.${column}`).map((value, at) =>
        sizes.has(items[at] ?? "") ? value * (units[at] === "ft" ? 0.3048 : 1) : 0,
      ),
    )
  const pieces = numbers(book, "timber_pieces.length").map(
    (length, at) => length * (numbers(book, "timber_pieces.count")[at] ?? 0),
  )
  expect(metres("used"), "timber used").toBeCloseTo(sum(pieces), 6)
  expect(metres("bought"), "timber bought").toBeCloseTo(
    Number(book.entry("timber_length_bought").reading?.value),
    6,
  )
}

describe.each(TEMPLATES.map((definition) => [definition.id, definition] as const))("%s", (_, definition) => {
  test("every thing bought has a stage, and every stage its things", () => {
    const { book } = openBook(definition)
    nothingForgotten(book)
    addsUp(book)
  })

  test("its stages read as sentences, with a number for every name", () => {
    const { book } = openBook(definition)
    const stages = book.stages()
    expect(stages.length).toBeGreaterThan(8)
    expect(new Set(stages.map(({ id }) => id)).size).toBe(stages.length)
    for (const stage of stages) {
      const said = [stage.title, ...stage.says, ...stage.cautions, ...stage.waits, stage.hold ?? ""].join(" ")
      expect(said, stage.id).not.toMatch(/[{}—]/)
      expect(stage.hours?.unit, stage.id).toBe("s")
      expect(Number(stage.people?.value), stage.id).toBeGreaterThan(0)
      for (const need of stage.needs) expect(book.has(need.name), need.name).toBe(true)
    }
    // Common practice, no source: dug after the call, closed up after the brush, cleared up last.
    const order = stages.map(({ id }) => id)
    for (const [before, after] of [
      ["mark-out", "dig"],
      ["dig", "stone"],
      ["stone", "lines"],
      ["lines", "ends"],
      ["walk-round", "disposal"],
    ] as const) {
      expect(order.indexOf(before), `${before} before ${after}`).toBeGreaterThanOrEqual(0)
      expect(order.indexOf(before), `${before} before ${after}`).toBeLessThan(order.indexOf(after))
    }
    expect(order.indexOf("ends")).toBeLessThan(Math.max(order.indexOf("sheets"), order.indexOf("boards")))
  })

  test("what is carried away is what was dug, swollen, and what was bought, less what is in the work", () => {
    const { book } = openBook(definition)
    const [what, unit] = [texts(book, "disposal.what"), texts(book, "disposal.unit")]
    const amount = numbers(book, "disposal.amount")
    const value = (name: string): number => Number(book.entry(name).reading?.value)
    // 1 yd3 = 0.764554857984 m3 (NIST Special Publication 811). Earth swells by 25 % (handbook, as in the workbook).
    const cubicMetres = (amount[0] ?? 0) * (unit[0] === "yd3" ? 0.764554857984 : 1)
    expect(what[0]).toBe("soil, loose")
    expect(cubicMetres).toBeCloseTo(value("dug_volume") * 1.25, 6)
    const offcuts = sum(
      what.map((item, at) =>
        item.startsWith("off-cuts") ? (amount[at] ?? 0) * (unit[at] === "ft" ? 0.3048 : 1) : 0,
      ),
    )
    expect(offcuts).toBeCloseTo(value("timber_length_bought") - value("timber_length_used"), 6)
    const goes = texts(book, "disposal.goes")
    for (const [at, item] of what.entries())
      if (item.startsWith("off-cuts")) expect(goes[at]).toMatch(/never burned/)
    const [shown] = book.stages().find(({ id }) => id === "disposal")?.tables ?? []
    expect(shown?.rows.map(([item]) => item)).toEqual(what)
  })

  test("hire is paid by whole days, and only for what is hired", () => {
    const { book } = openBook(definition)
    const row = texts(book, "power_tools.tool").indexOf("plate tamper") + 1
    expect(row).toBeGreaterThan(0)
    expect(book.edit(`power_tools.hire_a_day.${row}`, "45").problems).toEqual([])
    expect(numbers(book, "power_tools.hire")[row - 1]).toBe(
      45 * (numbers(book, "power_tools.days")[row - 1] ?? 0),
    )
    expect(book.edit(`power_tools.hired.${row}`, "no").problems).toEqual([])
    expect(sum(numbers(book, "power_tools.hire"))).toBe(0)
    const stone = book.stages().find(({ id }) => id === "stone")
    expect(stone?.tables.map(({ rows }) => rows[0]?.[0])).toEqual(["plate tamper"])
  })

  test("every tool of a stage stands in the tables of tools", () => {
    const { book } = openBook(definition)
    const hand = texts(book, "hand_tools.tool")
    const stagesOfHand = texts(book, "hand_tools.stage")
    const powered = ["saw", "drill-driver"]
    for (const { title, tools } of book.stages()) {
      const listed = hand.filter((_, at) => stagesOfHand[at] === title)
      expect(
        tools.filter((tool) => !listed.includes(tool) && !powered.includes(tool)),
        title,
      ).toEqual([])
    }
  })

  test("cautions stand where the harm is", () => {
    const { book } = openBook(definition)
    const cautionsOf = (id: string): string =>
      book
        .stages()
        .filter((stage) => stage.id === id)
        .flatMap(({ cautions }) => cautions)
        .join(" ")
    expect(cautionsOf("mark-out")).toMatch(/cable/i)
    expect(cautionsOf("stone")).toMatch(/lungs/i)
    expect(cautionsOf("lines")).toMatch(/treated wood.*burn/is)
    expect(cautionsOf("lines")).toMatch(/lift/i)
    expect(cautionsOf("lines")).toMatch(/switch that trips/i)
  })

  test(`nothing is forgotten in ${RUNS} random designs, seed ${SEED}`, { timeout: 300_000 }, () => {
    const { book } = openBook(definition)
    fc.assert(
      fc.property(legalInputs(definition), (typed) => {
        const [problem] = book.editAll(typed).problems
        if (problem !== undefined) throw new Error(inWords(problem, "us").says)
        nothingForgotten(book)
        addsUp(book)
      }),
      { numRuns: RUNS, seed: SEED, endOnFailure: true },
    )
  })
})
