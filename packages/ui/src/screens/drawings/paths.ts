import type { DrawnShape, Point } from "@pegbook/engine"

const at = ({ u, v }: Point) => `${u.toFixed(5)} ${v.toFixed(5)}`

/** An SVG path in metres, v upward. */
export function pathOf(points: readonly Point[], closed: boolean): string {
  return points.length === 0 ? "" : `M${points.map(at).join("L")}${closed ? "Z" : ""}`
}

export function pathOfShape(shape: DrawnShape): string {
  if (shape.kind === "area") return pathOf(shape.points, true)
  return shape.kind === "line" ? pathOf(shape.points, false) : ""
}

/** A band of this depth under a line: where ground is hatched. */
export function bandUnder(points: readonly Point[], depth: number): string {
  const under = [...points].reverse().map(({ u, v }) => ({ u, v: v - depth }))
  return pathOf([...points, ...under], true)
}

/** Where something is written: the middle of its outline. */
export function middleOf(points: readonly Point[]): Point {
  const [us, vs] = [points.map(({ u }) => u), points.map(({ v }) => v)]
  return {
    u: (Math.min(...us) + Math.max(...us)) / 2,
    v: (Math.min(...vs) + Math.max(...vs)) / 2,
  }
}
