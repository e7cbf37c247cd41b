import type { Point } from "./drawn.ts"

export interface Levelled extends Point {
  readonly level: number
}

/**
 * Where a level line crosses the area that `ring` goes round: straight from side to side, as far as the ring's own
 * levels tell. On a plane this is exact.
 */
export function levelLine(ring: readonly Levelled[], level: number): readonly (readonly Point[])[] {
  const crossings: Point[] = []
  ring.forEach((a, index) => {
    const b = ring[(index + 1) % ring.length]
    if (b === undefined || a.level >= level === b.level >= level) return
    const share = (level - a.level) / (b.level - a.level)
    crossings.push({ u: a.u + share * (b.u - a.u), v: a.v + share * (b.v - a.v) })
  })
  const lines: Point[][] = []
  for (let at = 0; at + 1 < crossings.length; at += 2) lines.push(crossings.slice(at, at + 2))
  return lines
}
