import type { Point, Shape, Span } from "./shapes.ts"

const TICK = 4

const at = ([x, y]: Point) => `${x.toFixed(1)} ${y.toFixed(1)}`
const moved = ([x, y]: Point, [right, down]: Point): Point => [x + right, y + down]

/** A shape as the `d` of an SVG path. */
export function shapePath({ points, closed, radius }: Shape): string {
  const [first] = points
  if (radius !== undefined && first !== undefined)
    return `M${at(moved(first, [-radius, 0]))}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`
  return `M${points.map(at).join("L")}${closed ? "z" : ""}`
}

/** The two ends of the line of measure. */
export const spanEnds = ({ a, b, out }: Span): readonly [Point, Point] => [moved(a, out), moved(b, out)]

/** The line of measure with a slanting stroke across each end. */
export function spanPath(span: Span): string {
  const [from, to] = spanEnds(span)
  const stroke = (end: Point) => `M${at(moved(end, [-TICK, TICK]))}L${at(moved(end, [TICK, -TICK]))}`
  return `M${at(from)}L${at(to)}${stroke(from)}${stroke(to)}`
}

/** Thin lines from the thing to the line of measure. */
export function witnessPath(span: Span): string {
  const [from, to] = spanEnds(span)
  return `M${at(span.a)}L${at(from)}M${at(span.b)}L${at(to)}`
}
