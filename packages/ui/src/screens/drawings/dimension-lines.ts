import type { Bounds, DrawnDimension, DrawnShape } from "@pegbook/engine"
import { type Camera, type Margins, type Pixel, toPixel } from "./camera.ts"
import { type Stand, widthOf } from "./place-labels.ts"
import type { Segment } from "./segments.ts"

/** From the drawing to its first dimension line, and from one to the next, in pixels. */
const FIRST = 26
const NEXT = 26
const TICK = 5
const OUTER = 14
const ROOMY = 600

export interface DimensionLine {
  readonly path: string
  /** The line itself, and the thin ones to it, without their ticks. */
  readonly strokes: readonly Segment[]
  readonly stands: readonly Stand[]
  /** The end that a handle takes hold of. */
  readonly to: Pixel
}

/** A dimension and where its line lies. */
export interface Dimensioned {
  readonly shape: DrawnDimension
  readonly line: DimensionLine
}

export function dimensionsIn(
  shapes: readonly DrawnShape[],
  bounds: Bounds,
  camera: Camera,
): readonly Dimensioned[] {
  return shapes
    .filter((shape): shape is DrawnDimension => shape.kind === "dimension")
    .map((shape) => ({ shape, line: dimensionLine(shape, bounds, camera) }))
}

const offset = (tier: number) => FIRST + (tier - 1) * NEXT

/** A line with a slanting stroke at both ends, and a thin line from the drawing to each. */
export function dimensionLine(shape: DrawnDimension, bounds: Bounds, camera: Camera): DimensionLine {
  const least = toPixel(camera, bounds.least)
  const most = toPixel(camera, bounds.most)
  const away = offset(shape.tier)
  const text = widthOf(shape.label)
  if (shape.axis === "u") {
    const edge = shape.side === "before" ? least.y : most.y
    const sign = shape.side === "before" ? 1 : -1
    const y = edge + sign * away
    const [from, to] = [camera.left + shape.from * camera.scale, camera.left + shape.to * camera.scale]
    const [left, right] = [Math.min(from, to), Math.max(from, to)]
    const fits = right - left >= text + 4
    const middle = { x: (left + right) / 2, y: y - 9 }
    const outside = [
      { x: right + text / 2 + 6, y: y - 9 },
      { x: left - text / 2 - 6, y: y - 9 },
    ]
    return {
      path: [
        `M${left - TICK} ${y}H${right + TICK}`,
        ...[left, right].map(
          (x) =>
            `M${x} ${edge + sign * 5}V${y + sign * TICK}M${x - TICK} ${y + TICK}L${x + TICK} ${y - TICK}`,
        ),
      ].join(""),
      strokes: [
        { from: { x: left, y }, to: { x: right, y } },
        ...[left, right].map((x) => ({ from: { x, y: edge + sign * 5 }, to: { x, y } })),
      ],
      stands: fits ? [middle, ...outside] : [...outside, middle],
      to: { x: to, y },
    }
  }
  const edge = shape.side === "before" ? least.x : most.x
  const sign = shape.side === "before" ? -1 : 1
  const x = edge + sign * away
  const [from, to] = [camera.top - shape.from * camera.scale, camera.top - shape.to * camera.scale]
  const [top, bottom] = [Math.min(from, to), Math.max(from, to)]
  const middle = { x: x - 9, y: (top + bottom) / 2, turned: true }
  const beyond = [
    { x: x - 9, y: top - text / 2 - 6, turned: true },
    { x: x - 9, y: bottom + text / 2 + 6, turned: true },
    { x: x + sign * (text / 2 + 8), y: (top + bottom) / 2 },
  ]
  return {
    path: [
      `M${x} ${top - TICK}V${bottom + TICK}`,
      ...[top, bottom].map(
        (y) => `M${edge + sign * 5} ${y}H${x + sign * TICK}M${x - TICK} ${y + TICK}L${x + TICK} ${y - TICK}`,
      ),
    ].join(""),
    strokes: [
      { from: { x, y: top }, to: { x, y: bottom } },
      ...[top, bottom].map((y) => ({ from: { x: edge + sign * 5, y }, to: { x, y } })),
    ],
    stands: bottom - top >= text + 4 ? [middle, ...beyond] : [...beyond.slice(2), ...beyond.slice(0, 2)],
    to: { x, y: to },
  }
}

/** How much room the dimension lines of a drawing take on each side. */
export function marginsFor(shapes: readonly DrawnShape[], width: number): Margins {
  const out = (axis: "u" | "v", side: "before" | "after") => {
    const found = shapes.filter(
      (shape): shape is DrawnDimension =>
        shape.kind === "dimension" && shape.axis === axis && shape.side === side,
    )
    if (found.length === 0) return axis === "u" ? FIRST + 8 : OUTER + 8
    // An upright line too short for its number has it beside it, where there is room to.
    const beside = axis === "v" && width >= ROOMY ? Math.max(...found.map(({ label }) => widthOf(label))) : 0
    return OUTER + offset(Math.max(...found.map(({ tier }) => tier))) + 4 + beside
  }
  return {
    left: out("v", "before"),
    right: out("v", "after"),
    top: out("u", "after"),
    bottom: out("u", "before"),
  }
}
