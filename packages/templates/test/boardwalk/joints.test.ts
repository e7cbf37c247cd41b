import { describe, expect, test } from "vitest"
import { type Walk, walk } from "./walk.ts"

interface Joint {
  readonly line: number
  readonly position: number
  readonly support: number
}

function jointsOf(one: Walk): readonly Joint[] {
  const lines = one.column("stringer_joints.line")
  const positions = one.columnInches("stringer_joints.position")
  const supports = one.column("stringer_joints.support")
  return lines.map((line, row) => ({ line, position: positions[row] ?? 0, support: supports[row] ?? 0 }))
}

const LENGTHS = ["9 ft", "22 ft 7 in", "40 ft", "61 ft 3 in"]

describe.each(LENGTHS)("stringers of a walk %s long", (length) => {
  const one = walk({ platform_length: length })
  const joints = jointsOf(one)

  test("every line is whole: its pieces follow each other from end to end, each out of a board that is sold", () => {
    const lines = one.column("stringer_pieces.line")
    const from = one.columnInches("stringer_pieces.from")
    const to = one.columnInches("stringer_pieces.to")
    const stock = one.columnInches("stringer_pieces.stock")
    const whole = one.inches("platform_length")
    for (let line = 1; line <= one.number("stringer_count"); line++) {
      const rows = lines.flatMap((at, row) => (at === line ? [row] : []))
      let end = 0
      for (const row of rows) {
        expect(from[row]).toBeCloseTo(end, 5)
        end = to[row] ?? 0
        expect(end - (from[row] ?? 0)).toBeLessThanOrEqual((stock[row] ?? 0) + 1e-5)
        expect([96, 120, 144, 192]).toContain(stock[row])
      }
      expect(end).toBeCloseTo(whole, 5)
    }
  })

  test("joints fall on sleepers, never on the first or the last (common practice, no source)", () => {
    const sleepers = one.columnInches("sleepers.x")
    for (const { position, support } of joints) {
      expect(position).toBeCloseTo(sleepers[support - 1] ?? Number.NaN, 5)
      expect(support).toBeGreaterThan(1)
      expect(support).toBeLessThan(sleepers.length)
    }
  })

  test("joints of neighbouring lines lie on different sleepers, at least 2 ft apart (common practice, no source)", () => {
    for (const a of joints) {
      for (const b of joints) {
        if (b.line !== a.line + 1) continue
        expect(b.support).not.toBe(a.support)
        expect(Math.abs(b.position - a.position)).toBeGreaterThanOrEqual(24 - 1e-5)
      }
    }
  })

  test("two cleats at every joint", () => {
    expect(one.number("stringer_joint_count")).toBe(joints.length)
    expect(one.number("cleat_count")).toBe(2 * joints.length)
    expect(one.columnInches("cleat_pieces.length")).toEqual(Array<number>(2 * joints.length).fill(24))
  })
})

test("a walk no longer than a board has no joints and no cleats", () => {
  const short = walk({ platform_length: "16 ft" })
  expect(short.number("stringer_joint_count")).toBe(0)
  expect(short.number("cleat_count")).toBe(0)
  expect(short.columnInches("stringer_pieces.length")).toEqual([192, 192, 192, 192])
})

test("a narrow sleeper gives a joint too little to lie on, and the check says what would do", () => {
  const wide = walk({ joint_bearing_min: "2 in", stringer_stock: "40 ft" })
  expect(wide.verdict("joint_bearing_check")).toBe("fails")
  expect(wide.book.entry("joint_bearing_check").check?.advice.join(" ")).toContain('4"')
})
