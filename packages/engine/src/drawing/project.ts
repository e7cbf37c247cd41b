import type { Axis, Look } from "../definition/drawing.ts"
import type { Point } from "./drawn.ts"

/** Sizes along a slanted axis are not shortened, so that they can still be compared. */
const COS = Math.sqrt(3) / 2
const SIN = 1 / 2

/** Where each direction goes on the page; `undefined`: straight into it. */
type Directions = Readonly<Record<Axis, Point | undefined>>

const RIGHT: Point = { u: 1, v: 0 }
const LEFT: Point = { u: -1, v: 0 }
const UP: Point = { u: 0, v: 1 }

export const DIRECTIONS: Readonly<Record<Look, Directions>> = {
  plan: { x: RIGHT, y: UP, z: undefined },
  along: { x: RIGHT, y: undefined, z: UP },
  along_back: { x: LEFT, y: undefined, z: UP },
  across: { x: undefined, y: RIGHT, z: UP },
  across_back: { x: undefined, y: LEFT, z: UP },
  pictorial: { x: { u: COS, v: -SIN }, y: { u: COS, v: SIN }, z: UP },
}

export function project(look: Look, place: Readonly<Partial<Record<Axis, number>>>): Point {
  let [u, v] = [0, 0]
  for (const axis of ["x", "y", "z"] as const) {
    const direction = DIRECTIONS[look][axis]
    u += (direction?.u ?? 0) * (place[axis] ?? 0)
    v += (direction?.v ?? 0) * (place[axis] ?? 0)
  }
  return { u, v }
}

/** The axes that a look shows. */
export function axesOf(look: Look): readonly Axis[] {
  return (["x", "y", "z"] as const).filter((axis) => DIRECTIONS[look][axis] !== undefined)
}
