import type { DrawnMark, DrawnShape } from "@pegbook/engine"
import { type Camera, type Pixel, toPixel } from "./camera.ts"
import type { Dimensioned } from "./dimension-lines.ts"
import { middleOf } from "./paths.ts"
import { type LabelWish, type Stand, widthOf } from "./place-labels.ts"
import { SIGN } from "./segments.ts"

const LIT = 100
const ABOVE = 12
/** How far above or below a peg its letters may stand, in pixels. */
const RINGS = [11, 24, 37, 50]
const BESIDE_SIGN = SIGN + 3
/** From so many letters on it is worth it to write upright. */
const LONG = 4

/** Where a shape's own label could stand: on it, above, below, and beside. */
function stands(shape: DrawnShape, text: string, camera: Camera): readonly Stand[] {
  if (shape.kind === "dimension") return []
  const at = toPixel(camera, shape.kind === "mark" ? shape.at : middleOf(shape.points))
  const beside = widthOf(text) / 2 + ABOVE
  const around = [
    { x: at.x, y: at.y - ABOVE - 6 },
    { x: at.x, y: at.y + ABOVE + 4 },
    { x: at.x + beside, y: at.y },
    { x: at.x - beside, y: at.y },
  ]
  if (shape.kind === "mark") return isPeg(shape) ? betweenStrings(at, text) : around
  if (shape.kind === "line" && isUpright(shape.points)) {
    const top = Math.min(...shape.points.map((point) => toPixel(camera, point).y))
    const over = widthOf(text) / 2 + 4
    return [
      { x: at.x + over, y: top - 18 },
      { x: at.x - over, y: top - 18 },
      { x: at.x, y: top - 18 },
      { x: at.x, y: top - 34 },
      { x: at.x - 8, y: at.y, turned: true },
      { x: at.x + 10, y: at.y, turned: true },
    ]
  }
  return [at, ...around]
}

/** Strings cross at a peg: what is between them is free, level or, for what is long, upright; and nearer is better. */
function betweenStrings(at: Pixel, text: string): readonly Stand[] {
  const along = widthOf(text) / 2 + BESIDE_SIGN
  const signs = [-1, 1]
  return RINGS.flatMap((ring) => [
    ...[1, 0.5, 0].flatMap((share) =>
      signs.flatMap((x) => [ring, -ring].map((y) => ({ x: at.x + x * share * along, y: at.y + y }))),
    ),
    ...(text.length < LONG ? [] : signs).flatMap((x) =>
      signs.map((y) => ({ x: at.x + x * ring, y: at.y + y * along, turned: true })),
    ),
  ])
}

/** What strings are tied to: a cross. */
export function isPeg(shape: DrawnShape): shape is DrawnMark {
  return shape.kind === "mark" && shape.mark === "cross"
}

function isUpright(points: readonly { readonly u: number }[]): boolean {
  return points.every(({ u }) => Math.abs(u - (points[0]?.u ?? u)) < 1e-9)
}

/** Everything that would be written, the most telling first: what is lit, the outer dimensions, the inner, the rest. */
export function labelsOf(
  shapes: readonly DrawnShape[],
  dimensions: readonly Dimensioned[],
  camera: Camera,
  lit: { readonly shape: DrawnShape; readonly text: string } | undefined,
): readonly LabelWish[] {
  const wishes: LabelWish[] = dimensions.map(({ shape, line }, index) => ({
    id: `dimension-${index}`,
    text: shape.label,
    stands: line.stands,
    weight: 10 + shape.tier,
  }))
  for (const [index, shape] of shapes.entries()) {
    if (shape.kind === "dimension" || shape.label === undefined) continue
    wishes.push({
      id: `shape-${index}`,
      text: shape.label,
      stands: stands(shape, shape.label, camera),
      weight: 1,
      ...(isPeg(shape) ? { clear: true } : {}),
    })
  }
  if (lit !== undefined && lit.shape.kind !== "dimension") {
    wishes.push({
      id: "lit",
      text: lit.text,
      stands: stands(lit.shape, lit.text, camera).slice(1),
      weight: LIT,
    })
  }
  return wishes
}
