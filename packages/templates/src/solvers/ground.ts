import type { Solution, SolverGiven } from "@pegbook/engine"
import Delaunator from "delaunator"

/** A surveyed point: along the length, across the width, and how high the ground is there. Any one unit of length. */
export interface SurveyedPoint {
  readonly x: number
  readonly y: number
  readonly level: number
}

/** Ground that falls evenly: `origin` at (0, 0), and the falls for each unit along and across. */
export interface GroundPlane {
  readonly origin: number
  readonly fallLength: number
  readonly fallWidth: number
}

export type Triangle = readonly [SurveyedPoint, SurveyedPoint, SurveyedPoint]

/** A point a hair outside its triangle, by this share of the triangle, still counts as inside. */
const HAIR = 1e-9

export function onPlane({ origin, fallLength, fallWidth }: GroundPlane, x: number, y: number): number {
  return origin - x * fallLength - y * fallWidth
}

/** The triangles of Delaunay over the points; none where there are fewer than three, or all lie in one line. */
export function trianglesOver(points: readonly SurveyedPoint[]): readonly Triangle[] {
  const { triangles } = Delaunator.from(points.map(({ x, y }) => [x, y]))
  const found: Triangle[] = []
  for (let index = 0; index < triangles.length; index += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => points[triangles[index + corner] ?? -1])
    if (a !== undefined && b !== undefined && c !== undefined) found.push([a, b, c])
  }
  return found
}

/**
 * Ground between surveyed points: linear over the triangles of Delaunay. Outside all of them the plane goes on, shifted
 * to meet the ground at the nearest place of the outer edge, so that there is no step. Without a triangle: the plane.
 */
export function groundBetween(
  points: readonly SurveyedPoint[],
  plane: GroundPlane,
): (x: number, y: number) => number {
  const triangles = trianglesOver(points)
  if (triangles.length === 0) return (x, y) => onPlane(plane, x, y)
  const edges = outerEdges(triangles)
  return (x, y) => {
    for (const triangle of triangles) {
      const level = withinTriangle(triangle, x, y)
      if (level !== undefined) return level
    }
    const nearest = edges
      .map((edge) => nearestOn(edge, x, y))
      .reduce((best, place) => (place.distance < best.distance ? place : best))
    return nearest.level + onPlane(plane, x, y) - onPlane(plane, nearest.x, nearest.y)
  }
}

function withinTriangle([a, b, c]: Triangle, x: number, y: number): number | undefined {
  const whole = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)
  const ofB = ((x - a.x) * (c.y - a.y) - (c.x - a.x) * (y - a.y)) / whole
  const ofC = ((b.x - a.x) * (y - a.y) - (x - a.x) * (b.y - a.y)) / whole
  if (!(ofB >= -HAIR && ofC >= -HAIR && ofB + ofC <= 1 + HAIR)) return undefined
  return a.level + ofB * (b.level - a.level) + ofC * (c.level - a.level)
}

type Edge = readonly [SurveyedPoint, SurveyedPoint]

/** Edges that belong to one triangle only. */
function outerEdges(triangles: readonly Triangle[]): readonly Edge[] {
  const edges = triangles.flatMap(([a, b, c]): readonly Edge[] => [
    [a, b],
    [b, c],
    [c, a],
  ])
  const shared = (one: Edge, other: Edge): boolean => one[0] === other[1] && one[1] === other[0]
  return edges.filter((edge) => !edges.some((other) => shared(edge, other)))
}

function nearestOn([a, b]: Edge, x: number, y: number): SurveyedPoint & { readonly distance: number } {
  const [runX, runY] = [b.x - a.x, b.y - a.y]
  const along = ((x - a.x) * runX + (y - a.y) * runY) / (runX ** 2 + runY ** 2)
  const share = Math.min(1, Math.max(0, along))
  const place = { x: a.x + share * runX, y: a.y + share * runY, level: a.level + share * (b.level - a.level) }
  return { ...place, distance: Math.hypot(x - place.x, y - place.y) }
}

/** The names that ground between points is worked from. */
export const GROUND_READS = [
  "ground_between_points",
  "ground_levels.x",
  "ground_levels.y",
  "ground_levels.level",
  "ground_origin",
  "ground_slope_length",
  "ground_slope_width",
] as const

/**
 * Ground at every row of a table that has x and y, one row a row: level. No rows while the plane is in use.
 * The solver reads `<table>.x` and `<table>.y` besides `GROUND_READS`.
 */
export function solveGroundAt(table: string): (given: SolverGiven) => Solution {
  return (given) => {
    if (!given.yes("ground_between_points")) return { rows: [], report: { method: "the plane", unmet: [] } }
    const at = groundBetween(surveyed(given), {
      origin: given.number("ground_origin"),
      fallLength: given.number("ground_slope_length"),
      fallWidth: given.number("ground_slope_width"),
    })
    const ys = given.column(`${table}.y`)
    const rows = given.column(`${table}.x`).map((x, index) => ({ level: at(Number(x), Number(ys[index])) }))
    return { rows, report: { method: METHOD, unmet: [] } }
  }
}

const METHOD = "linear over the triangles of Delaunay; beyond them the plane, shifted to meet the outer edge"

/**
 * For every surveyed point the nearest other one: point, nearest, apart, repeats (1 where an earlier point stands nearer
 * than `levels_apart_least`). A point that stands alone has itself for a neighbour, 0 apart. What is unmet names the pairs.
 */
export function solveNeighbours(given: SolverGiven): Solution {
  const points = surveyed(given)
  const least = given.number("levels_apart_least")
  const apart = (a: SurveyedPoint, b: SurveyedPoint): number => Math.hypot(a.x - b.x, a.y - b.y)
  const unmet: string[] = []
  const rows = points.map((point, index) => {
    const others = points.flatMap((other, place) =>
      place === index ? [] : [{ place, distance: apart(point, other) }],
    )
    const nearest = others.reduce((best, other) => (other.distance < best.distance ? other : best), {
      place: index,
      distance: others.length === 0 ? 0 : Number.POSITIVE_INFINITY,
    })
    const earlier = others.find(({ place, distance }) => place < index && distance < least)
    if (earlier !== undefined) {
      unmet.push(
        `Surveyed points ${earlier.place + 1} and ${index + 1} stand at almost the same place. ` +
          "Delete one of them, or correct where it stands.",
      )
    }
    return {
      point: index + 1,
      nearest: nearest.place + 1,
      apart: nearest.distance,
      repeats: earlier === undefined ? 0 : 1,
    }
  })
  return { rows, report: { method: "every point held against every other", unmet } }
}

function surveyed(given: SolverGiven): readonly SurveyedPoint[] {
  const ys = given.column("ground_levels.y")
  const levels = given.column("ground_levels.level")
  // Whole nanometres: a rounding of other base units must not turn the triangles of a square.
  return given.column("ground_levels.x").map((x, index) => ({
    x: Math.round(Number(x)),
    y: Math.round(Number(ys[index])),
    level: Number(levels[index]),
  }))
}
