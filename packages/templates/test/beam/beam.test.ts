import fc from "fast-check"
import { describe, expect, test } from "vitest"
import {
  type Beam,
  type BeamAnswer,
  type BeamEffect,
  type BeamLoad,
  solveBeam,
} from "../../src/solvers/beam.ts"
import type { BeamActions } from "../../src/solvers/beam-loads.ts"
import { valueAt } from "../../src/solvers/beam-polynomial.ts"
import { fullLoad } from "./loaded.ts"
import { anyCase } from "./random-beams.ts"
import { byThreeMoments } from "./three-moments.ts"

const EI = 7
const beamOf = (supports: readonly number[], end: number, hinges: readonly number[] = []): Beam => ({
  start: 0,
  end,
  supports,
  hinges,
  stiffness: EI,
})
const even = (load: number, from: number, to: number): BeamLoad => ({
  spread: [{ from, to, load }],
  points: [],
})
const point = (load: number, at: number): BeamLoad => ({ spread: [], points: [{ at, load }] })

function effect(answer: BeamAnswer): BeamEffect {
  if ("unmet" in answer) throw new Error(answer.unmet)
  const [one] = answer.effects
  if (one === undefined) throw new Error("no effect")
  return one
}

function actions(beam: Beam, load: BeamLoad): BeamActions {
  const outcome = fullLoad(beam, load)
  if ("unmet" in outcome) throw new Error(outcome.unmet)
  return outcome
}

function read(of: BeamEffect, what: "shear" | "moment" | "deflection", at: number): number {
  const stretch = of.stretches.find(({ from, to }) => at >= from && at <= to)
  if (stretch === undefined) throw new Error(`nothing at ${at}`)
  return valueAt(stretch[what], at - stretch.from)
}

// Standard statics of single spans, record beam_formulas_single_span of the reference collection (from memory, derived anew).
describe("single spans against their formulas", () => {
  const [L, w, P] = [4, 3, 5]

  test("even load: w L²/8, w L/2, 5 w L⁴/(384 E I)", () => {
    const { spans, supports } = actions(beamOf([0, L], L), even(w, 0, L))
    expect(supports.map(({ most }) => most)).toEqual([w * L * 0.5, w * L * 0.5])
    expect(spans[0]?.sagging.value).toBeCloseTo((w * L ** 2) / 8, 12)
    expect(spans[0]?.sagging.at).toBeCloseTo(L / 2, 12)
    expect(spans[0]?.shear.value).toBeCloseTo((w * L) / 2, 12)
    expect(spans[0]?.fall.value).toBeCloseTo((5 * w * L ** 4) / (384 * EI), 12)
    expect(spans[0]?.hogging.value).toBeCloseTo(0, 12)
  })

  test("one force at a from the left: P a b/L, and the fall at √((L² − b²)/3)", () => {
    const [a, b] = [2.75, 1.25]
    const { spans, supports } = actions(beamOf([0, L], L), point(P, a))
    expect(supports[0]?.most).toBeCloseTo((P * b) / L, 12)
    expect(spans[0]?.sagging.value).toBeCloseTo((P * a * b) / L, 12)
    expect(spans[0]?.sagging.at).toBeCloseTo(a, 12)
    expect(spans[0]?.fall.value).toBeCloseTo(
      (P * b * (L ** 2 - b ** 2) ** 1.5) / (9 * Math.sqrt(3) * L * EI),
      12,
    )
    expect(spans[0]?.fall.at).toBeCloseTo(Math.sqrt((L ** 2 - b ** 2) / 3), 8)
  })

  test("even load on a part of the span: greatest bending where the shear is nothing", () => {
    const [a, c] = [0.7, 1.6]
    const left = (w * c * (L - a - c / 2)) / L
    const { spans } = actions(beamOf([0, L], L), even(w, a, a + c))
    expect(spans[0]?.sagging.value).toBeCloseTo(left * (a + left / (2 * w)), 12)
    expect(spans[0]?.sagging.at).toBeCloseTo(a + left / w, 12)
  })

  test("one overhang, even load over all", () => {
    const a = 1.3
    const beam = beamOf([0, L], L + a)
    const { spans, supports } = actions(beam, even(w, 0, L + a))
    expect(supports[0]?.most).toBeCloseTo((w * (L ** 2 - a ** 2)) / (2 * L), 12)
    expect(supports[1]?.most).toBeCloseTo((w * (L + a) ** 2) / (2 * L), 12)
    expect(spans[0]?.sagging.value).toBeCloseTo((w * (L + a) ** 2 * (L - a) ** 2) / (8 * L ** 2), 12)
    expect(spans[0]?.hogging.value).toBeCloseTo((w * a ** 2) / 2, 12)
    const tip = read(effect(solveBeam(beam, [even(w, 0, L + a)])), "deflection", L + a)
    expect(tip).toBeCloseTo((w * a * (4 * a ** 2 * L - L ** 3 + 3 * a ** 3)) / (24 * EI), 12)
  })

  test("one overhang, load on the overhang only, or on the span only, or a force at the tip", () => {
    const a = 1.3
    const beam = beamOf([0, L], L + a)
    const onOverhang = effect(solveBeam(beam, [even(w, L, L + a)]))
    expect(onOverhang.reactions[0]).toBeCloseTo((-w * a ** 2) / (2 * L), 12)
    expect(onOverhang.reactions[1]).toBeCloseTo((w * a * (2 * L + a)) / (2 * L), 12)
    expect(read(onOverhang, "deflection", L + a)).toBeCloseTo((w * a ** 3 * (4 * L + 3 * a)) / (24 * EI), 12)
    const onSpan = effect(solveBeam(beam, [even(w, 0, L)]))
    expect(read(onSpan, "deflection", L + a)).toBeCloseTo((-w * L ** 3 * a) / (24 * EI), 12)
    const tip = actions(beam, point(P, L + a))
    expect(tip.supports.map(({ most }) => most)).toEqual([
      expect.closeTo((-P * a) / L, 12),
      expect.closeTo((P * (L + a)) / L, 12),
    ])
    expect(tip.spans[1]?.fall.value).toBeCloseTo((P * a ** 2 * (L + a)) / (3 * EI), 12)
    expect(tip.spans[0]?.rise.value).toBeCloseTo((P * a * L ** 2) / (9 * Math.sqrt(3) * EI), 12)
  })

  test("two overhangs: span and support bend alike at a = 0.3536 L", () => {
    const a = L * Math.SQRT1_2 * 0.5
    const { spans } = actions(beamOf([a, a + L], L + 2 * a), even(w, 0, L + 2 * a))
    expect(spans[1]?.sagging.value).toBeCloseTo(spans[1]?.hogging.value ?? 0, 12)
    expect(spans[1]?.sagging.value).toBeCloseTo((w * L ** 2) / 8 - (w * a ** 2) / 2, 12)
  })

  test("a short end on a long span keeps its digits", () => {
    const a = 0.001
    const { spans, supports } = actions(beamOf([a, a + L], L + 2 * a), even(w, 0, L + 2 * a))
    expect(spans[0]?.hogging.value).toBeCloseTo((w * a ** 2) / 2, 15)
    expect(supports[0]?.most).toBeCloseTo((w * (L + 2 * a)) / 2, 10)
  })
})

// Civil Engineering Formulas, table 2.1, equal spans under an even load
// (record continuous_beam_coefficients, read). The fractions are the printed decimals' exact values.
describe("two to five equal spans, all loaded, against the handbook's coefficients", () => {
  const HANDBOOK = [
    {
      reactions: [3 / 8, 5 / 4, 3 / 8],
      printed: [0.375, 1.25, 0.375],
      support: [1 / 8],
      span: [9 / 128, 9 / 128],
      fall: [0.00542, 0.00542],
    },
    {
      reactions: [2 / 5, 11 / 10, 11 / 10, 2 / 5],
      printed: [0.4, 1.1, 1.1, 0.4],
      support: [1 / 10, 1 / 10],
      span: [2 / 25, 1 / 40, 2 / 25],
      fall: [0.00688, 0.00052, 0.00688],
    },
    {
      reactions: [11 / 28, 8 / 7, 13 / 14, 8 / 7, 11 / 28],
      printed: [0.3929, 1.1429, 0.9286, 1.1429, 0.3929],
      support: [3 / 28, 1 / 14, 3 / 28],
      span: [121 / 1568, 57 / 1568, 57 / 1568, 121 / 1568],
      fall: [0.00646, 0.00189, 0.00189, 0.00646],
    },
    {
      reactions: [15 / 38, 43 / 38, 37 / 38, 37 / 38, 43 / 38, 15 / 38],
      printed: [0.3947, 1.1316, 0.9737, 0.9737, 1.1316, 0.3947],
      support: [2 / 19, 3 / 38, 3 / 38, 2 / 19],
      span: [225 / 2888, 24 / 722, 133 / 2888, 24 / 722, 225 / 2888],
      fall: [0.00657, 0.00153, 0.00315, 0.00153, 0.00657],
    },
  ] as const

  test.each(HANDBOOK)("$printed", ({ reactions, printed, support, span, fall }) => {
    const [L, w] = [2.4, 17]
    const n = span.length
    const supports = Array.from({ length: n + 1 }, (_, index) => index * L)
    const beam = beamOf(supports, n * L)
    const { spans, supports: found } = actions(beam, even(w, 0, n * L))
    reactions.forEach((coefficient, index) => {
      expect((found[index]?.most ?? 0) / (w * L)).toBeCloseTo(coefficient, 9)
      expect(coefficient).toBeCloseTo(printed[index] ?? 0, 4)
    })
    const one = effect(solveBeam(beam, [even(w, 0, n * L)]))
    support.forEach((coefficient, index) => {
      expect(-read(one, "moment", (index + 1) * L) / (w * L ** 2)).toBeCloseTo(coefficient, 9)
    })
    span.forEach((coefficient, index) => {
      expect((spans[index]?.sagging.value ?? 0) / (w * L ** 2)).toBeCloseTo(coefficient, 4)
      expect(((spans[index]?.fall.value ?? 0) * EI) / (w * L ** 4)).toBeCloseTo(fall[index] ?? 0, 5)
    })
  })
})

describe("against the equation of three moments", () => {
  test("500 random beams with joints, overhangs and any loads", () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }),
        ({ beam, load }, shares) => {
          const one = effect(solveBeam(beam, [load]))
          const other = byThreeMoments(beam, load)
          const force =
            1 +
            load.points.reduce((sum, each) => sum + each.load, 0) +
            load.spread.reduce((sum, each) => sum + each.load * (each.to - each.from), 0)
          one.reactions.forEach((reaction, index) => {
            expect(Math.abs(reaction - (other.reactions[index] ?? Number.NaN)) / force).toBeLessThan(1e-9)
          })
          for (const share of shares) {
            const at = share * beam.end
            expect(Math.abs(read(one, "moment", at) - other.moment(at)) / (force * beam.end)).toBeLessThan(
              1e-9,
            )
          }
          const [first = 0, last = 0] = [beam.supports[0], beam.supports.at(-1)]
          const at = Math.min(beam.end, first + (shares[0] ?? 0) * (last - first))
          const scale = (force * beam.end ** 3) / beam.stiffness
          expect(Math.abs(read(one, "deflection", at) - other.fall(at)) / scale).toBeLessThan(1e-6)
        },
      ),
      { numRuns: 500 },
    )
  })
})

describe("laws of statics", () => {
  test("reactions carry the load, and turn nothing", () => {
    fc.assert(
      fc.property(anyCase, ({ beam, load }) => {
        const { reactions } = effect(solveBeam(beam, [load]))
        const forces = [
          ...load.points.map(({ at, load: force }) => ({ at, force })),
          ...load.spread.map(({ from, to, load: each }) => ({
            at: (from + to) / 2,
            force: each * (to - from),
          })),
          ...reactions.map((reaction, index) => ({ at: beam.supports[index] ?? 0, force: -reaction })),
        ]
        const size = 1 + forces.reduce((sum, { force }) => sum + Math.abs(force), 0)
        expect(Math.abs(forces.reduce((sum, { force }) => sum + force, 0)) / size).toBeLessThan(1e-10)
        expect(
          Math.abs(forces.reduce((sum, { at, force }) => sum + at * force, 0)) / size / beam.end,
        ).toBeLessThan(1e-10)
      }),
      { numRuns: 200 },
    )
  })

  test("supports do not fall, joints do not bend, and nothing jumps but the shear under a force", () => {
    fc.assert(
      fc.property(anyCase, ({ beam, load }) => {
        const one = effect(solveBeam(beam, [load]))
        const force =
          1 +
          load.points.reduce((sum, each) => sum + each.load, 0) +
          load.spread.reduce((sum, each) => sum + each.load * (each.to - each.from), 0)
        const scale = (force * beam.end ** 3) / beam.stiffness
        for (const at of beam.supports)
          expect(Math.abs(read(one, "deflection", at)) / scale).toBeLessThan(1e-12)
        for (const at of beam.hinges) expect(Math.abs(read(one, "moment", at)) / force).toBeLessThan(1e-10)
        one.stretches.slice(1).forEach((stretch, index) => {
          const before = one.stretches[index]
          if (before === undefined) return
          const length = before.to - before.from
          expect(
            Math.abs(valueAt(before.moment, length) - (stretch.moment[0] ?? 0)) / (force * beam.end),
          ).toBeLessThan(1e-9)
          expect(
            Math.abs(valueAt(before.deflection, length) - (stretch.deflection[0] ?? 0)) / scale,
          ).toBeLessThan(1e-9)
        })
      }),
      { numRuns: 200 },
    )
  })

  test("other units give the same beam: nanometres and kilograms as the workbook holds them", () => {
    const [L, w, N] = [3, 2000, 1e9]
    const plain = actions(
      { start: 0, end: 2 * L, supports: [0, L, 2 * L], hinges: [], stiffness: 5e4 },
      even(w, 0, 2 * L),
    )
    // 1 N is 1e9 kg·nm/s²; 1 N/m is 1 kg/s²; 1 N·m² is 1e27 kg·nm³/s².
    const held = actions(
      { start: 0, end: 2 * L * N, supports: [0, L * N, 2 * L * N], hinges: [], stiffness: 5e4 * N ** 3 },
      even(w, 0, 2 * L * N),
    )
    plain.spans.forEach((span, index) => {
      const other = held.spans[index]
      expect((other?.sagging.value ?? 0) / N ** 2 / span.sagging.value).toBeCloseTo(1, 12)
      expect((other?.shear.value ?? 0) / N / span.shear.value).toBeCloseTo(1, 12)
      expect((other?.fall.value ?? 0) / N / span.fall.value).toBeCloseTo(1, 12)
    })
  })
})

describe("joints", () => {
  // Two spans, a joint in the second at a quarter of it: the outer three quarters are a simple beam that rests on the rest.
  test("a joint between supports: what hangs from it is known by hand", () => {
    const one = effect(solveBeam(beamOf([0, 4, 8], 8, [5]), [even(6, 0, 8)]))
    expect(one.reactions[2]).toBeCloseTo(9, 12)
    expect(read(one, "moment", 4)).toBeCloseTo(-(9 * 1 + (6 * 1 ** 2) / 2), 12)
    expect(read(one, "moment", 5)).toBeCloseTo(0, 12)
    expect(one.reactions.reduce((sum, each) => sum + each, 0)).toBeCloseTo(48, 12)
  })

  test("joints over every inner support make simple spans", () => {
    const { spans, supports } = actions(beamOf([0, 3, 7], 7, [3]), even(2, 0, 7))
    expect(spans.map(({ sagging }) => sagging.value)).toEqual([
      expect.closeTo((2 * 9) / 8, 12),
      expect.closeTo((2 * 16) / 8, 12),
    ])
    expect(supports.map(({ most }) => most)).toEqual([3, 7, 4].map((value) => expect.closeTo(value, 12)))
  })
})

describe("beams that cannot stand are said so, and never crash", () => {
  test.each([
    ["no support", beamOf([], 4)],
    ["one support", beamOf([2], 4)],
    ["a joint inside a single span", beamOf([0, 4], 4, [1])],
    ["two joints in an inner span and one in the next", beamOf([0, 4, 8], 8, [5, 6])],
    ["an overhang that hangs from a joint over the last support", beamOf([0, 4], 5, [4])],
  ])("%s", (_, beam) => {
    const answer = solveBeam(beam, [even(1, 0, beam.end)])
    expect("unmet" in answer && answer.unmet).toMatch(/not held/)
  })

  test.each([
    ["no length", { ...beamOf([0], 0) }, /no length/],
    ["no stiffness", { ...beamOf([0, 4], 4), stiffness: 0 }, /no stiffness/],
    ["a support beyond the end", beamOf([0, 5], 4), /beyond the end/],
    ["not a number", beamOf([0, Number.NaN], 4), /missing/],
  ])("%s", (_, beam, says) => {
    const answer = solveBeam(beam, [even(1, 0, 1)])
    expect("unmet" in answer && answer.unmet).toMatch(says)
  })

  test("a force beside the beam", () => {
    const answer = solveBeam(beamOf([0, 4], 4), [point(1, 5)])
    expect("unmet" in answer && answer.unmet).toMatch(/beyond the end/)
  })

  test("anything at all", () => {
    const anything = fc.oneof(fc.double(), fc.constantFrom(0, 1, 2, 3, -1, Number.POSITIVE_INFINITY))
    fc.assert(
      fc.property(
        anything,
        anything,
        fc.array(anything),
        fc.array(anything),
        anything,
        anything,
        (start, end, supports, hinges, stiffness, load) => {
          const answer = solveBeam({ start, end, supports, hinges, stiffness }, [even(load, start, end)])
          expect(typeof answer).toBe("object")
        },
      ),
      { numRuns: 500 },
    )
  })
})
