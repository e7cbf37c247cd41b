import type { Bounds, Point } from "./drawn.ts"

interface Edge {
  readonly axis: "u" | "v"
  readonly at: number
  /** 1: what is greater stays. */
  readonly keeps: 1 | -1
}

function edges(frame: Bounds): readonly Edge[] {
  return [
    { axis: "u", at: frame.least.u, keeps: 1 },
    { axis: "u", at: frame.most.u, keeps: -1 },
    { axis: "v", at: frame.least.v, keeps: 1 },
    { axis: "v", at: frame.most.v, keeps: -1 },
  ]
}

const inside = (point: Point, edge: Edge) => (point[edge.axis] - edge.at) * edge.keeps >= 0

function crossing(a: Point, b: Point, edge: Edge): Point {
  const share = (edge.at - a[edge.axis]) / (b[edge.axis] - a[edge.axis])
  const between = { u: a.u + share * (b.u - a.u), v: a.v + share * (b.v - a.v) }
  return { ...between, [edge.axis]: edge.at }
}

/** What of an area lies in the frame (Sutherland and Hodgman's method: one edge after the other). */
export function clipArea(points: readonly Point[], frame: Bounds): readonly Point[] {
  let kept = points
  for (const edge of edges(frame)) {
    kept = kept.flatMap((point, index) => {
      const before = kept[(index + kept.length - 1) % kept.length] ?? point
      const cross = inside(before, edge) === inside(point, edge) ? [] : [crossing(before, point, edge)]
      return inside(point, edge) ? [...cross, point] : cross
    })
  }
  return kept
}

/** The pieces of a line that lie in the frame. */
export function clipLine(points: readonly Point[], frame: Bounds): readonly (readonly Point[])[] {
  let pieces: readonly (readonly Point[])[] = [points]
  for (const edge of edges(frame)) pieces = pieces.flatMap((piece) => cut(piece, edge))
  return pieces.filter((piece) => piece.length > 1)
}

function cut(piece: readonly Point[], edge: Edge): readonly (readonly Point[])[] {
  const parts: Point[][] = []
  let open: Point[] | undefined
  for (const [index, point] of piece.entries()) {
    const before = piece[index - 1]
    const turns = before !== undefined && inside(before, edge) !== inside(point, edge)
    const cross = turns ? [crossing(before, point, edge)] : []
    if (inside(point, edge)) {
      if (open === undefined) {
        open = [...cross]
        parts.push(open)
      }
      open.push(point)
    } else {
      open?.push(...cross)
      open = undefined
    }
  }
  return parts
}

export function holds(frame: Bounds, point: Point): boolean {
  return edges(frame).every((edge) => inside(point, edge))
}
