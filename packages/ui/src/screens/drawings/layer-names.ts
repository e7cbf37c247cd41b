import type { DrawnShape, Layer, Point } from "@pegbook/engine"
import { type Camera, toPixel } from "./camera.ts"
import { type Box, type LabelWish, placeLabels, widthOf } from "./place-labels.ts"

/** From a layer's outermost corner to what is written beside it, in pixels. */
const BESIDE = 12
const DOWNS = [0, -16, 16, -32, 32, -48, 48]
const WEIGHT = 5

/** What is written beside a layer, and its title. */
export interface NamedLayer {
  readonly id: string
  readonly text: string
  readonly title: string
}

/**
 * What names the layers of a drawing seen at an angle, from the ground up: their titles where there is room for every one,
 * else numbers, which want a key.
 */
export function layerNames(
  layers: readonly Layer[],
  shapes: readonly DrawnShape[],
  camera: Camera,
  window: Box,
): readonly NamedLayer[] {
  const drawn = layers.filter(({ id }) => pointsOf(id, shapes).length > 0)
  const titled = drawn.map(({ id, title }) => ({ id, text: title, title }))
  const wishes = layerWishes(titled, shapes, camera)
  if (placeLabels(wishes, window).length === wishes.length) return titled
  return drawn.map(({ id, title }, index) => ({ id, text: `${index + 1}`, title }))
}

/** Each to the left of its layer, or to its right where another of the same storey has the left. */
export function layerWishes(
  named: readonly NamedLayer[],
  shapes: readonly DrawnShape[],
  camera: Camera,
): readonly LabelWish[] {
  return named.flatMap(({ id, text }) => {
    const points = pointsOf(id, shapes)
    if (points.length === 0) return []
    const left = toPixel(
      camera,
      points.reduce((a, b) => (b.u < a.u ? b : a)),
    )
    const right = toPixel(
      camera,
      points.reduce((a, b) => (b.u > a.u ? b : a)),
    )
    const away = widthOf(text) / 2 + BESIDE
    const stands = DOWNS.flatMap((down) => [
      { x: left.x - away, y: left.y + down },
      { x: right.x + away, y: right.y + down },
    ])
    return [{ id: `layer-${id}`, text, stands, weight: WEIGHT }]
  })
}

/** What has to be said under a drawing of these: only numbers need it. */
export function keyOf(named: readonly NamedLayer[]): readonly NamedLayer[] {
  return named.filter(({ text, title }) => text !== title)
}

function pointsOf(layer: string, shapes: readonly DrawnShape[]): readonly Point[] {
  return shapes.flatMap((shape) => (shape.layer === layer && shape.kind === "area" ? shape.points : []))
}
