import { openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"
import { addsUp, nothingForgotten, numbers, sum, texts } from "./balance.ts"

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
    const first = (name: string): number => numbers(book, name)[0] ?? Number.NaN
    // Round holes for a net's posts are dug one by one beside the platform.
    const holes = book.has("net_order.hole_depth")
      ? value("net_post_count") *
        (Math.PI / 4) *
        first("net_wind_factors.hole_width") ** 2 *
        first("net_wind.depth")
      : 0
    expect(cubicMetres).toBeCloseTo((value("dug_volume") + holes) * 1.25, 6)
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
})
