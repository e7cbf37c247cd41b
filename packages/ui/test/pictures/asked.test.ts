import { TEMPLATES } from "@pegbook/templates"
import { describe, expect, test } from "vitest"
import { askedOf, PICTURED, SCENES } from "../../src/pictures/asked.ts"
import { spanEnds } from "../../src/pictures/paths.ts"
import { FRAME, type Point } from "../../src/pictures/shapes.ts"

/** Slanting strokes and thick lines need this much beyond a line's end. */
const ROOM = 4

const entries = TEMPLATES.flatMap(({ id, sections }) =>
  sections.flatMap((section) => section.entries.map((entry) => ({ template: id, entry }))),
)

function inFrame([x, y]: Point, room: number): boolean {
  return x >= room && y >= room && x <= FRAME.width - room && y <= FRAME.height - room
}

test("every length that is asked for has a picture", () => {
  const lengths = entries.filter(({ entry }) => entry.kind === "input" && entry.measure === "length")
  expect(lengths.length).toBeGreaterThan(250)
  const without = lengths.filter(({ entry }) => askedOf(entry.name) === undefined)
  expect(without.map(({ template, entry }) => `${template}: ${entry.name}`)).toEqual([])
})

/** Of a guy line's knots no length is seen: the knots are lit. */
const NOT_MEASURED = new Set(["net_guy_knots"])

test("every length that is asked for is measured in its picture, at lengths sold at several boards", () => {
  for (const { entry } of entries) {
    if (entry.kind !== "input" || entry.measure !== "length") continue
    const spans = askedOf(entry.name)?.ask.spans ?? []
    if (NOT_MEASURED.has(entry.name)) expect(spans, entry.name).toEqual([])
    else expect(spans.length, entry.name).toBeGreaterThanOrEqual(entry.name.endsWith("_stock") ? 3 : 1)
  }
})

test("a picture is of an entry that a workbook asks for", () => {
  const asked = new Set(
    entries
      .filter(
        ({ entry }) => entry.kind === "input" || (entry.kind === "table" && entry.rows.kind === "input"),
      )
      .map(({ entry }) => entry.name),
  )
  expect(PICTURED.filter((name) => !asked.has(name))).toEqual([])
})

test("entries that are told apart by their picture alone have pictures of their own", () => {
  const shown = (name: string) => {
    const asked = askedOf(name)
    return JSON.stringify([asked?.ask, asked?.scene.parts])
  }
  for (const [one, other] of [
    ["platform_length", "platform_width"],
    ["diagonal_measured_1", "diagonal_measured_2"],
    ["end_measured_1", "end_measured_2"],
    ["steps_first_side", "steps_other_side"],
    ["block_length", "block_width"],
    ["screw_spacing_panel_end", "screw_spacing_panel_field"],
    ["board_overhang", "board_end_overhang"],
  ] as const)
    expect(shown(one), one).not.toBe(shown(other))
})

describe.each(PICTURED)("%s", (name) => {
  const { scene, ask } = askedOf(name) ?? { scene: { parts: {}, asks: {} }, ask: {} }
  const lit = ask.lit ?? []

  test("lights a part of its scene", () => {
    expect(lit.length).toBeGreaterThan(0)
    for (const part of lit) expect(Object.keys({ ...scene.parts, ...scene.extras }), part).toContain(part)
  })

  test("what is lit and what is measured lies inside the frame", () => {
    for (const { points, radius = 0 } of lit.flatMap(
      (part) => scene.parts[part] ?? scene.extras?.[part] ?? [],
    ))
      for (const point of points) expect(inFrame(point, radius), `${point}`).toBe(true)
    for (const span of ask.spans ?? []) {
      for (const end of spanEnds(span)) expect(inFrame(end, ROOM), `${end}`).toBe(true)
      expect(Math.hypot(span.b[0] - span.a[0], span.b[1] - span.a[1])).toBeGreaterThanOrEqual(8)
    }
  })
})

test("every way of asking is used, and every part that comes and goes is lit by one", () => {
  const used = new Set(PICTURED.map((name) => askedOf(name)?.ask))
  for (const [of, scene] of Object.entries(SCENES)) {
    const asks = Object.entries(scene.asks)
    expect(asks.filter(([, ask]) => !used.has(ask)).map(([what]) => `${of}.${what}`)).toEqual([])
    const lit = new Set(asks.flatMap(([, ask]) => ask.lit ?? []))
    expect(
      Object.keys(scene.extras ?? {}).filter((part) => !lit.has(part)),
      of,
    ).toEqual([])
  }
})
