import type { DrawnShape, Layer, Point } from "@pegbook/engine"
import { type Camera, toPixel } from "./camera.ts"
import { type Box, type LabelWish, placeLabels, widthOf } from "./place-labels.ts"

/** From a layer's outermost corner to what is written beside it, in pixels. */
const BESIDE = 12
const DOWNS = [0, 16, -16, 32, -32, 48, -48]
const WEIGHT = 5

/** What is written beside a layer, and its title. */
export interface NamedLayer {
  readonly id: string
  readonly text: string
  readonly title: string
  readonly storey: number | undefined
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
  const titled = drawn.map(({ id, title, storey }) => ({ id, text: title, title, storey }))
  const wishes = layerWishes(titled, shapes, camera)
  if (placeLabels(wishes, window).length === wishes.length) return titled
  return drawn.map(({ id, title, storey }, index) => ({ id, text: `${index + 1}`, title, storey }))
}

/** Each to the left of its layer's storey, or to its right: beside a layer that lies within another, it would stand on that. */
export function layerWishes(
  named: readonly NamedLayer[],
  shapes: readonly DrawnShape[],
  camera: Camera,
): readonly LabelWish[] {
  return named.flatMap(({ id, text, storey }) => {
    if (pointsOf(id, shapes).length === 0) return []
    const points = named
      .filter((other) => other.storey === storey)
      .flatMap((other) => pointsOf(other.id, shapes))
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
