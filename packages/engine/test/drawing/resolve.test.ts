import { expect, test } from "vitest"
import { type Drawing, resolveDrawing, type Shape } from "../../src/index.ts"
import { source } from "./small-source.ts"

function drawing(shapes: readonly Shape[], rest: Partial<Drawing> = {}): Drawing {
  const layers = [
    { id: "low", title: "Low", fill: "a", storey: 0 },
    { id: "high", title: "High", fill: "b", storey: 1 },
  ]
  return { id: "d", title: "D", says: "", look: "plan", layers, shapes, ...rest }
}

const bars = source({ thick: 2, long: 10 }, { bars: { at: [1, 5, null], kind: ["a", "b", "a"] } })
const BAR: Shape = {
  kind: "box",
  layer: "low",
  table: "bars",
  x: { centre: "at", size: "thick" },
  y: { from: [], size: "long" },
}

test("a shape of a table is drawn once a row, where the row says, and knows its row", () => {
  const { shapes, bounds } = resolveDrawing(drawing([BAR]), bars)
  expect(shapes.map((shape) => shape.of)).toEqual([
    { name: "bars", row: 1 },
    { name: "bars", row: 2 },
  ])
  expect(shapes[1]).toMatchObject({
    points: [
      { u: 4, v: 0 },
      { u: 6, v: 0 },
      { u: 6, v: 10 },
      { u: 4, v: 10 },
    ],
  })
  expect(shapes[1]?.reads).toEqual(["bars.at", "thick", "long"])
  expect(bounds).toEqual({ least: { u: 0, v: 0 }, most: { u: 6, v: 10 } })
})

test("rows are picked by what their columns hold, by their number, and by another table's cell", () => {
  const rows = (more: Partial<typeof BAR>) =>
    resolveDrawing(drawing([{ ...BAR, ...more } as Shape]), bars).shapes.map((shape) => shape.of.row)
  expect(rows({ where: { kind: "b" } })).toEqual([2])
  expect(rows({ row: 1 })).toEqual([1])
  expect(rows({ where: { at: { of: "bars.at", row: 2 } } })).toEqual([2])
})

test("names are added, taken away and halved", () => {
  const shape: Shape = {
    kind: "mark",
    layer: "low",
    mark: "ring",
    x: ["long", "-thick", { half: "thick" }, { half: "-long" }],
    y: { of: "bars.at", row: 2 },
  }
  expect(resolveDrawing(drawing([shape]), bars).shapes[0]).toMatchObject({ at: { u: 4, v: 5 } })
})

test("seen from behind, right is left", () => {
  const box: Shape = {
    kind: "box",
    layer: "low",
    x: { from: "thick", to: "long" },
    z: { from: [], to: "thick" },
  }
  const bounds = (look: "along" | "along_back") => resolveDrawing(drawing([box], { look }), bars).bounds
  expect(bounds("along")).toEqual({ least: { u: 2, v: 0 }, most: { u: 10, v: 2 } })
  expect(bounds("along_back")).toMatchObject({ least: { u: -10 }, most: { u: -2 } })
})

test("copies are moved on; those that lie behind each other are drawn once", () => {
  const repeated: Shape = { ...BAR, row: 1, repeat: { times: "thick", y: "long" } } as Shape
  expect(resolveDrawing(drawing([repeated]), bars).bounds?.most.v).toBe(20)
  const behind: Shape = { ...BAR, row: 1, repeat: { times: "thick", z: "long" } } as Shape
  expect(resolveDrawing(drawing([behind]), bars).shapes).toHaveLength(1)
})

test("what lies outside of the frame is cut off, and dimensions that reach out are left out", () => {
  const frame = { y: { from: "thick", size: "thick" } }
  const dimension: Shape = {
    kind: "dimension",
    layer: "low",
    along: "y",
    from: [],
    to: "long",
    side: "before",
    tier: 1,
    says: "long",
  }
  const cut = resolveDrawing(drawing([BAR, dimension], { frame }), bars)
  expect(cut.bounds).toMatchObject({ least: { v: 2 }, most: { v: 4 } })
  expect(cut.shapes.map((shape) => shape.kind)).toEqual(["area", "area"])
})

test("a line is cut into what of it lies in the frame", () => {
  const line: Shape = {
    kind: "line",
    layer: "low",
    through: [
      { x: [], y: [] },
      { x: "long", y: "long" },
    ],
  }
  const frame = { x: { from: "thick", size: ["thick", "thick"] } }
  expect(resolveDrawing(drawing([line], { frame }), bars).shapes[0]).toMatchObject({
    points: [
      { u: 2, v: 2 },
      { u: 6, v: 6 },
    ],
  })
})

test("on a plane, a line of equal level is the plane's own", () => {
  // z = x + y over a square of 4 by 4: the line of level 4 runs from corner to corner.
  const ring = source({}, { ring: { x: [0, 4, 4, 0], y: [0, 0, 4, 4], z: [0, 4, 8, 4], pick: [0, 1, 0, 0] } })
  const shape: Shape = {
    kind: "contours",
    layer: "low",
    table: "ring",
    x: "x",
    y: "y",
    level: "z",
    where: { pick: 1 },
  }
  const [line] = resolveDrawing(drawing([shape]), ring).shapes
  expect(line).toMatchObject({ label: "4", of: { name: "ring", row: 2 } })
  const ends = line?.kind === "line" ? line.points.map(({ u, v }) => `${u},${v}`).sort() : []
  expect(ends).toEqual(["0,4", "4,0"])
})

test("in a pictorial drawing equal lengths along x and y are equally long, and higher storeys are lifted", () => {
  const cube = (layer: string): Shape => ({
    kind: "box",
    layer,
    x: { from: [], size: "thick" },
    y: { from: [], size: "thick" },
    z: { from: [], size: "thick" },
  })
  const look = "pictorial" as const
  const flat = resolveDrawing(drawing([cube("low"), cube("high")], { look }), bars)
  const top = flat.shapes.find((shape) => shape.kind === "area" && shape.face === "top")
  const points = top?.kind === "area" ? top.points : []
  const side = (a: number, b: number) => {
    const [from, to] = [points[a], points[b]]
    return Math.hypot((to?.u ?? 0) - (from?.u ?? 0), (to?.v ?? 0) - (from?.v ?? 0))
  }
  expect(side(0, 1)).toBeCloseTo(2)
  expect(side(1, 2)).toBeCloseTo(2)
  const apart = resolveDrawing(drawing([cube("low"), cube("high")], { look }), bars, { apart: true })
  expect(apart.bounds?.most.v).toBeGreaterThan(flat.bounds?.most.v ?? 0)
  expect(apart.bounds?.least.v).toBe(flat.bounds?.least.v)
})
