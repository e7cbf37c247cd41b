import fc from "fast-check"
import { describe, expect, test } from "vitest"
import type { Beam, BeamLoad } from "../../src/solvers/beam.ts"
import { type ActionsOutcome, type BeamActions, liveBySpan } from "../../src/solvers/beam-loads.ts"
import { anyOf, forceAnywhere, fullLoad, patternLoad } from "./loaded.ts"
import { anyCase } from "./random-beams.ts"

const NONE: BeamLoad = { spread: [], points: [] }
const met = (outcome: ActionsOutcome): BeamActions => {
  if ("unmet" in outcome) throw new Error(outcome.unmet)
  return outcome
}
const add = (loads: readonly BeamLoad[]): BeamLoad => ({
  spread: loads.flatMap(({ spread }) => spread),
  points: loads.flatMap(({ points }) => points),
})
const sizeOf = (load: BeamLoad) =>
  1 +
  load.points.reduce((sum, each) => sum + each.load, 0) +
  load.spread.reduce((sum, each) => sum + each.load * (each.to - each.from), 0)

const equalSpans = (n: number): { beam: Beam; live: BeamLoad } => ({
  beam: {
    start: 0,
    end: n,
    supports: Array.from({ length: n + 1 }, (_, index) => index),
    hinges: [],
    stiffness: 1,
  },
  live: { spread: [{ from: 0, to: n, load: 1 }], points: [] },
})

// Record continuous_beam_pattern_maxima of the reference collection (0.0957, 0.1013, 0.1167, 0.1205 and 0.0097 agree with
// handbook tables, from memory). Fractions worked by hand from the equation of three moments.
describe("live load on any spans of two to five equal ones", () => {
  const PUBLISHED = [
    {
      n: 2,
      hogging: [1 / 8],
      sagging: [49 / 512, 49 / 512],
      reactions: [7 / 16, 5 / 4, 7 / 16],
      shear: [5 / 8, 5 / 8],
      fall: [0.00915, 0.00915],
      lift: [1 / 16, 0, 1 / 16],
    },
    {
      n: 3,
      hogging: [7 / 60, 7 / 60],
      sagging: [81 / 800, 3 / 40, 81 / 800],
      reactions: [9 / 20, 6 / 5, 6 / 5, 9 / 20],
      shear: [37 / 60, 7 / 12, 37 / 60],
      fall: [0.00992, 0.00677, 0.00992],
      lift: [1 / 20, 1 / 10, 1 / 10, 1 / 20],
    },
    {
      n: 4,
      hogging: [27 / 224, 3 / 28, 27 / 224],
      sagging: [0.09965, 0.08052, 0.08052, 0.09965],
      reactions: [25 / 56, 137 / 112, 8 / 7, 137 / 112, 25 / 56],
      shear: [139 / 224, 0.60268, 0.60268, 139 / 224],
      fall: [0.0097, 0.00744, 0.00744, 0.0097],
      lift: [3 / 56, 9 / 112, 3 / 14, 9 / 112, 3 / 56],
    },
    {
      n: 5,
      hogging: [25 / 209, 93 / 836, 93 / 836, 25 / 209],
      sagging: [0.10007, 0.07903, 0.08553, 0.07903, 0.10007],
      reactions: [17 / 38, 1.2177, 1.16746, 1.16746, 1.2177, 17 / 38],
      shear: [0.61962, 0.59809, 0.59091, 0.59809, 0.61962],
      fall: [0.00976, 0.00727, 0.00809, 0.00727, 0.00976],
      lift: [1 / 19, 0.08612, 0.19378, 0.19378, 0.08612, 1 / 19],
    },
  ]
  /** Where the record prints five places, half a unit of the last; a fraction is held to a millionth. */
  const close = (found: number | undefined, published: number) => {
    const printed = Number(published.toFixed(5)) === published
    expect(found).toBeCloseTo(published, printed ? 5 : 6)
  }

  test.each(PUBLISHED)("$n spans", ({ n, hogging, sagging, reactions, shear, fall, lift }) => {
    const { beam, live } = equalSpans(n)
    const { spans, supports } = met(patternLoad(beam, NONE, live))
    spans.forEach((span, index) => {
      close(span.hogging.value, Math.max(hogging[index - 1] ?? 0, hogging[index] ?? 0))
    })
    sagging.forEach((value, index) => {
      close(spans[index]?.sagging.value, value)
    })
    shear.forEach((value, index) => {
      close(spans[index]?.shear.value, value)
    })
    fall.forEach((value, index) => {
      close(spans[index]?.fall.value, value)
    })
    reactions.forEach((value, index) => {
      close(supports[index]?.most, value)
    })
    lift.forEach((value, index) => {
      close(-(supports[index]?.least ?? 0), value)
    })
  })
})

describe("against every pattern tried one by one", () => {
  test("random beams: the same worst in every span and at every support", () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 0, max: 4000 }), ({ beam, load }, weight) => {
        const dead: BeamLoad = { spread: [{ from: 0, to: beam.end, load: weight }], points: [] }
        const found = met(patternLoad(beam, dead, load))
        const bySpan = liveBySpan(beam, load)
        const all: BeamActions[] = []
        for (let pattern = 0; pattern < 2 ** bySpan.length; pattern++) {
          all.push(
            met(fullLoad(beam, add([dead, ...bySpan.filter((_, span) => (pattern >> span) % 2 === 1)]))),
          )
        }
        const size = sizeOf(load) + weight * beam.end
        const scales = {
          sagging: size * beam.end,
          hogging: size * beam.end,
          shear: size,
          fall: (size * beam.end ** 3) / beam.stiffness,
          rise: (size * beam.end ** 3) / beam.stiffness,
        }
        found.spans.forEach((span, index) => {
          for (const what of ["sagging", "hogging", "shear", "fall", "rise"] as const) {
            const tried = Math.max(...all.map(({ spans }) => spans[index]?.[what].value ?? 0))
            expect(Math.abs(span[what].value - tried) / scales[what], what).toBeLessThan(1e-9)
          }
        })
        found.supports.forEach((support, index) => {
          expect(
            Math.abs(support.most - Math.max(...all.map(({ supports }) => supports[index]?.most ?? 0))) /
              size,
          ).toBeLessThan(1e-9)
          expect(
            Math.abs(support.least - Math.min(...all.map(({ supports }) => supports[index]?.least ?? 0))) /
              size,
          ).toBeLessThan(1e-9)
        })
      }),
      { numRuns: 40 },
    )
  })

  test("forty spans need no more than the same few solutions", () => {
    const { beam, live } = equalSpans(40)
    const { supports } = met(patternLoad(beam, NONE, live))
    // Far from the ends of many spans, the greatest hogging and reaction tend to those of endless spans: 1.1830 w L.
    expect(supports[20]?.most).toBeCloseTo(1.183, 3)
  })
})

describe("one force that may stand anywhere", () => {
  test("single span: P L/4, P, P L³/48 E I", () => {
    const [L, P, EI] = [3, 8, 5]
    const { spans, supports } = met(
      forceAnywhere({ start: 0, end: L, supports: [0, L], hinges: [], stiffness: EI }, P, NONE),
    )
    expect(spans[0]?.sagging.value).toBeCloseTo((P * L) / 4, 10)
    expect(spans[0]?.sagging.at).toBeCloseTo(L / 2, 8)
    expect(spans[0]?.shear.value).toBeCloseTo(P, 10)
    expect(spans[0]?.fall.value).toBeCloseTo((P * L ** 3) / (48 * EI), 10)
    expect(supports[0]?.most).toBeCloseTo(P, 10)
    expect(supports[0]?.least).toBeCloseTo(0, 10)
  })

  // Two equal spans, from memory of handbook influence lines: 0.2074 P L under the load at 0.4323 L; 0.0962 P L over the support.
  test("two equal spans", () => {
    const { spans } = met(
      forceAnywhere({ start: 0, end: 2, supports: [0, 1, 2], hinges: [], stiffness: 1 }, 1, NONE),
    )
    expect(spans[0]?.sagging.value).toBeCloseTo(0.2074, 4)
    expect(spans[0]?.sagging.at).toBeCloseTo(0.4323, 3)
    expect(spans[0]?.hogging.value).toBeCloseTo(1 / (6 * Math.sqrt(3)), 9)
  })

  test("random beams: nothing that 30 places a span find is greater, and the best of them comes near", () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 9000 }), ({ beam, load }, force) => {
        const found = met(forceAnywhere(beam, force, load))
        const size = sizeOf(load) + force
        // In each span, since a beam may have one of a tenth of its length, in which a support takes up all.
        const bounds = [...new Set([beam.start, ...beam.supports, beam.end])].sort((a, b) => a - b)
        const places = bounds.slice(1).flatMap((to, index) => {
          const from = bounds[index] ?? to
          return Array.from({ length: 31 }, (_, part) => from + (part / 30) * (to - from))
        })
        const tried = places.map((at) =>
          met(fullLoad(beam, add([load, { spread: [], points: [{ at, load: force }] }]))),
        )
        found.spans.forEach((span, index) => {
          for (const what of ["sagging", "hogging"] as const) {
            const best = Math.max(...tried.map(({ spans }) => spans[index]?.[what].value ?? 0))
            expect((best - span[what].value) / (size * beam.end), what).toBeLessThan(1e-9)
            expect((span[what].value - best) / (size * beam.end), what).toBeLessThan(0.02)
          }
          const shear = Math.max(...tried.map(({ spans }) => spans[index]?.shear.value ?? 0))
          expect((shear - span.shear.value) / size).toBeLessThan(1e-9)
        })
        found.supports.forEach((support, index) => {
          const most = Math.max(...tried.map(({ supports }) => supports[index]?.most ?? 0))
          const least = Math.min(...tried.map(({ supports }) => supports[index]?.least ?? 0))
          expect((most - support.most) / size).toBeLessThan(1e-9)
          expect((support.least - least) / size).toBeLessThan(1e-9)
          expect((support.most - most) / size).toBeLessThan(0.08)
        })
      }),
      { numRuns: 30 },
    )
  })

  test("random beams: no place of the force in a span makes that span fall more", () => {
    fc.assert(
      fc.property(anyCase, ({ beam }) => {
        const found = met(forceAnywhere(beam, 1, NONE))
        for (let index = 0; index <= 40; index++) {
          const at = (index / 40) * beam.end
          const { spans } = met(fullLoad(beam, { spread: [], points: [{ at, load: 1 }] }))
          spans.forEach((span, which) => {
            if (at < span.from || at > span.to) return
            const most = found.spans[which]?.fall.value ?? 0
            expect(span.fall.value).toBeLessThanOrEqual(
              most * (1 + 1e-9) + (1e-12 * beam.end ** 3) / beam.stiffness,
            )
          })
        }
      }),
      { numRuns: 30 },
    )
  })
})

describe("a heavier load never lessens", () => {
  test("what acts in a span or on a support", () => {
    fc.assert(
      fc.property(anyCase, fc.double({ min: 1, max: 5, noNaN: true }), ({ beam, load }, times) => {
        const heavier: BeamLoad = {
          spread: load.spread.map((each) => ({ ...each, load: each.load * times })),
          points: load.points.map((each) => ({ ...each, load: each.load * times })),
        }
        const [light, heavy] = [met(patternLoad(beam, NONE, load)), met(patternLoad(beam, NONE, heavier))]
        const slack = 1 + 1e-9
        light.spans.forEach((span, index) => {
          for (const what of ["sagging", "hogging", "shear", "fall", "rise"] as const)
            expect(span[what].value).toBeLessThanOrEqual(
              (heavy.spans[index]?.[what].value ?? 0) * slack + 1e-9,
            )
        })
        light.supports.forEach((support, index) => {
          expect(support.most).toBeLessThanOrEqual((heavy.supports[index]?.most ?? 0) * slack + 1e-9)
        })
      }),
      { numRuns: 60 },
    )
  })

  // One that acts or not by itself: on a span that carries others, and acting only with them, it can hog where they sag.
  test("nor does one more load, for what is worst over all patterns", () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 9000 }), ({ beam, load }, more) => {
        const extra: BeamLoad = { spread: [{ from: beam.start, to: beam.end, load: more }], points: [] }
        const bySpan = liveBySpan(beam, load)
        const light = met(anyOf(beam, bySpan))
        const heavy = met(anyOf(beam, [...bySpan, ...liveBySpan(beam, extra)]))
        light.spans.forEach((span, index) => {
          for (const what of ["sagging", "hogging", "shear", "fall", "rise"] as const)
            expect(span[what].value, what).toBeLessThanOrEqual(
              (heavy.spans[index]?.[what].value ?? 0) * (1 + 1e-9) + 1e-9,
            )
        })
        light.supports.forEach((support, index) => {
          expect(support.most).toBeLessThanOrEqual((heavy.supports[index]?.most ?? 0) * (1 + 1e-9) + 1e-9)
        })
      }),
      { numRuns: 40 },
    )
  })
})
