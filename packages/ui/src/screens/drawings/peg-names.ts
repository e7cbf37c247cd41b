import type { Bounds, DrawnMark, DrawnShape } from "@pegbook/engine"
import type { Camera } from "./camera.ts"
import { dimensionsIn } from "./dimension-lines.ts"
import type { KeyLine } from "./Key.tsx"
import { isPeg, labelsOf } from "./label-wishes.ts"
import { type Box, placeLabels } from "./place-labels.ts"
import { obstaclesOf } from "./segments.ts"

/** Shapes with what is written at each, and what of that has to be explained under the drawing. */
export interface NamedPegs {
  readonly shapes: readonly DrawnShape[]
  readonly key: readonly KeyLine[]
}

type Named = DrawnMark & { readonly label: string }

/** Pegs keep their names where there is room for every one; else the long ones are written as the number of their row. */
export function namePegs(
  shapes: readonly DrawnShape[],
  bounds: Bounds,
  camera: Camera,
  window: Box,
): NamedPegs {
  const pegs = shapes.filter(isNamed)
  if (pegs.length === 0) return { shapes, key: [] }
  const dimensions = dimensionsIn(shapes, bounds, camera)
  const placed = placeLabels(
    labelsOf(shapes, dimensions, camera, undefined),
    window,
    obstaclesOf(shapes, dimensions, camera),
  )
  const written = new Set(placed.map(({ text }) => text))
  if (pegs.every(({ label }) => written.has(label))) return { shapes, key: [] }
  const long = pegs.filter((peg) => numberOf(peg).length < peg.label.length)
  return {
    shapes: shapes.map((shape) =>
      isNamed(shape) && long.includes(shape) ? { ...shape, label: numberOf(shape) } : shape,
    ),
    key: long.map((peg) => ({ text: numberOf(peg), title: peg.label })),
  }
}

function isNamed(shape: DrawnShape): shape is Named {
  return isPeg(shape) && shape.label !== undefined
}

function numberOf({ of, label }: Named): string {
  return of.row === undefined ? label : `${of.row}`
}
