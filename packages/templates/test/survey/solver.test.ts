import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { type GroundPlane, groundBetween, onPlane, trianglesOver } from "../../src/solvers/ground.ts"

const SEED = 20261201
const FOOT = 304_800_000

const plane: GroundPlane = { origin: 0, fallLength: 0.03, fallWidth: 0.01 }
const at = (x: number, y: number, level: number) => ({ x: x * FOOT, y: y * FOOT, level: level * FOOT })

/** Places on and round a site of 20 by 12 ft, in whole inches. */
const place = fc.record({ x: fc.integer({ min: -60, max: 300 }), y: fc.integer({ min: -60, max: 204 }) })
const survey = fc.uniqueArray(place, {
  minLength: 4,
  maxLength: 40,
  selector: ({ x, y }) => `${x},${y}`,
})
const inch = FOOT / 12

describe("ground between surveyed points", () => {
  test(`points on a plane give that plane everywhere, inside and out (200 surveys, seed ${SEED})`, () => {
    fc.assert(
      fc.property(
        survey,
        place,
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        (places, wanted, fallLength, fallWidth) => {
          const even: GroundPlane = { origin: 7 * inch, fallLength, fallWidth }
          const points = places.map(({ x, y }) => ({
            x: x * inch,
            y: y * inch,
            level: onPlane(even, x * inch, y * inch),
          }))
          const level = groundBetween(points, even)(wanted.x * inch, wanted.y * inch)
          expect((level - onPlane(even, wanted.x * inch, wanted.y * inch)) / inch).toBeCloseTo(0, 6)
        },
      ),
      { numRuns: 200, seed: SEED },
    )
  })

  test(`it passes through every point, and never leaves the range of the points inside them (seed ${SEED})`, () => {
    fc.assert(
      fc.property(survey, fc.integer(), (places, salt) => {
        const points = places.map(({ x, y }, index) => ({
          x: x * inch,
          y: y * inch,
          level: (((index * 7919 + salt) % 23) - 11) * inch,
        }))
        const ground = groundBetween(points, plane)
        for (const { x, y, level } of points) expect((ground(x, y) - level) / inch).toBeCloseTo(0, 5)
        for (const [a, b, c] of trianglesOver(points)) {
          const middle = ground((a.x + b.x + c.x) / 3, (a.y + b.y + c.y) / 3)
          expect((middle - (a.level + b.level + c.level) / 3) / inch).toBeCloseTo(0, 4)
        }
      }),
      { numRuns: 100, seed: SEED },
    )
  })

  test("a bilinear hill on a grid of 1 ft is met within a quarter of its twist over one cell", () => {
    const twist = 0.002
    const hill = (x: number, y: number) => twist * x * y
    const points = Array.from({ length: 21 * 13 }, (_, index) => {
      const [x, y] = [index % 21, Math.floor(index / 21)]
      return at(x, y, hill(x, y))
    })
    const ground = groundBetween(points, plane)
    for (const [x, y] of [
      [0.5, 0.5],
      [7.25, 3.75],
      [19.5, 11.5],
      [10, 6.5],
    ] as const) {
      expect(Math.abs(ground(x * FOOT, y * FOOT) / FOOT - hill(x, y))).toBeLessThanOrEqual(twist / 4 + 1e-9)
    }
  })

  test("outside, the plane goes on from the nearest edge, without a step", () => {
    const points = [at(0, 0, 1), at(20, 0, 0), at(20, 12, 0), at(0, 12, 1)]
    const ground = groundBetween(points, plane)
    expect(ground(10 * FOOT, -2 * FOOT) / FOOT).toBeCloseTo(0.5 + 2 * plane.fallWidth, 9)
    expect(ground(22 * FOOT, 6 * FOOT) / FOOT).toBeCloseTo(0 - 2 * plane.fallLength, 9)
    expect(ground(-1 * FOOT, -1 * FOOT) / FOOT).toBeCloseTo(1 + plane.fallLength + plane.fallWidth, 9)
    const hair = 1000
    expect(ground(10 * FOOT, -hair) - ground(10 * FOOT, hair)).toBeCloseTo(0, -2)
  })

  test("points in one line, too few or all alike give the plane", () => {
    for (const points of [
      [],
      [at(1, 1, 3)],
      [at(0, 0, 1), at(20, 12, 0)],
      [at(0, 0, 1), at(5, 3, 2), at(20, 12, 0)],
      [at(2, 2, 1), at(2, 2, 1), at(2, 2, 1), at(2, 2, 1)],
    ]) {
      expect(groundBetween(points, plane)(3 * FOOT, 4 * FOOT)).toBe(onPlane(plane, 3 * FOOT, 4 * FOOT))
    }
  })
})
