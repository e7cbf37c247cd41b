import { describe, expect, test } from "vitest"
import { adapt } from "../../src/adapt.ts"
import { blocks } from "../../src/parts/blocks.ts"
import { skidLayout } from "../../src/parts/skids.ts"
import { supportLayout } from "../../src/parts/supports.ts"

describe("a template's variant of a part", () => {
  test("takes new labels, reasons and defaults, and leaves entries out", () => {
    const slabs = adapt(blocks, {
      labels: { block_count: "Slabs" },
      whys: { block_height: "A garden slab lies flat." },
      defaults: { block_height: "2 in", block_courses_limit: "1" },
      without: ["block_courses_max", "blocks_missed_by_flat"],
    })
    const names = slabs.entries.map((entry) => entry.name)
    expect(names).toEqual(
      blocks.entries
        .map((entry) => entry.name)
        .filter((name) => name !== "block_courses_max" && name !== "blocks_missed_by_flat"),
    )
    expect(slabs.entries.find((entry) => entry.name === "block_count")).toMatchObject({ label: "Slabs" })
    expect(slabs.entries.find((entry) => entry.name === "block_height")).toMatchObject({
      default: "2 in",
      why: "A garden slab lies flat.",
      least: "1 in",
    })
    expect(blocks.entries.find((entry) => entry.name === "block_height")).toMatchObject({ default: "4 in" })
  })

  test("rewords a table's columns", () => {
    const pads = adapt(supportLayout, { labels: { "supports.courses": "Pads" } })
    const table = pads.entries.find((entry) => entry.name === "supports")
    if (table?.kind !== "table") throw new Error("the part has no table of supports")
    expect(table.columns.find((column) => column.name === "courses")?.label).toBe("Pads")
    expect(table.columns.find((column) => column.name === "dig")?.label).toBe("Dig")
  })

  test("takes another range, other choices and other advice", () => {
    const slabs = adapt(blocks, {
      least: { block_height: "1/2 in" },
      most: { block_height: "3 in" },
      advice: { stack_height_check: ["Lay larger slabs."] },
    })
    const named = (name: string) => slabs.entries.find((entry) => entry.name === name)
    expect(named("block_height")).toMatchObject({ least: "1/2 in", most: "3 in", default: "4 in" })
    expect(named("stack_height_check")).toMatchObject({ advice: ["Lay larger slabs."] })
    const skids = adapt(skidLayout, { choices: { skid_size: ["4x4", "4x6"] } })
    expect(skids.entries.find((entry) => entry.name === "skid_size")).toMatchObject({
      choices: ["4x4", "4x6"],
    })
  })

  test("refuses what the part does not have, by name", () => {
    expect(() => adapt(blocks, { least: { slab_height: "1 in" } })).toThrow(/least value for slab_height/)
    expect(() => adapt(blocks, { most: { block_count: "3" } })).toThrow(/greatest value for block_count/)
    expect(() => adapt(blocks, { choices: { block_height: ["1 in"] } })).toThrow(/choices for block_height/)
    expect(() => adapt(blocks, { advice: { block_height: ["Dig."] } })).toThrow(/advice for block_height/)
    expect(() => adapt(blocks, { labels: { slab_count: "Slabs" } })).toThrow(/"blocks".*label for slab_count/)
    expect(() => adapt(blocks, { defaults: { block_count: "3" } })).toThrow(/default for block_count/)
    expect(() => adapt(blocks, { without: ["supports"] })).toThrow(/left-out entry for supports/)
  })
})
