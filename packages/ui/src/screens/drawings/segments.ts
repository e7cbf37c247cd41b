import type { DrawnShape } from "@pegbook/engine"
import { type Camera, type Pixel, toPixel } from "./camera.ts"
import type { Dimensioned } from "./dimension-lines.ts"

export interface Segment {
  readonly from: Pixel
  readonly to: Pixel
}

interface Sides {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** Half of a mark's sign, in pixels. */
export const SIGN = 5

/** What a label may be asked to keep clear of: strings and other lines, the signs of marks, and dimension lines. */
export function obstaclesOf(
  shapes: readonly DrawnShape[],
  dimensions: readonly Dimensioned[],
  camera: Camera,
): readonly Segment[] {
  return [
    ...dimensions.flatMap(({ line }) => line.strokes),
    ...shapes.flatMap((shape) => {
      if (shape.kind === "line") return pairs(shape.points.map((point) => toPixel(camera, point)))
      return shape.kind === "mark" ? crossAt(toPixel(camera, shape.at)) : []
    }),
  ]
}

function crossAt({ x, y }: Pixel): readonly Segment[] {
  return [1, -1].map((down) => ({
    from: { x: x - SIGN, y: y - down * SIGN },
    to: { x: x + SIGN, y: y + down * SIGN },
  }))
}

function pairs(points: readonly Pixel[]): readonly Segment[] {
  return points.slice(1).map((to, index) => ({ from: points[index] ?? to, to }))
}

/** Whether any of a segment lies in a box: what is left of it when it is cut off at each side (after Liang and Barsky). */
export function crosses({ from, to }: Segment, box: Sides): boolean {
  const [right, down] = [to.x - from.x, to.y - from.y]
  let [start, end] = [0, 1]
  for (const [step, room] of [
    [-right, from.x - box.left],
    [right, box.right - from.x],
    [-down, from.y - box.top],
    [down, box.bottom - from.y],
  ] as const) {
    if (step === 0) {
      if (room < 0) return false
      continue
    }
    if (step < 0) start = Math.max(start, room / step)
    else end = Math.min(end, room / step)
  }
  return start <= end
}
