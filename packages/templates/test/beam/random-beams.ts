import fc from "fast-check"
import type { Beam, BeamLoad } from "../../src/solvers/beam.ts"

export interface Case {
  readonly beam: Beam
  readonly load: BeamLoad
}

/** Beams of one to six spans with overhangs or without, joints over some inner supports, and any loads down. */
export const anyCase: fc.Arbitrary<Case> = fc
  .record({
    spans: fc.array(fc.integer({ min: 300, max: 4000 }), { minLength: 1, maxLength: 6 }),
    left: fc.oneof(fc.constant(0), fc.integer({ min: 20, max: 1500 })),
    right: fc.oneof(fc.constant(0), fc.integer({ min: 20, max: 1500 })),
    joints: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    spread: fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 1, max: 9000 }),
      ),
      { maxLength: 4 },
    ),
    points: fc.array(fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 9000 })), {
      maxLength: 4,
    }),
    stiffness: fc.integer({ min: 1, max: 1_000_000 }),
  })
  .map(({ spans, left, right, joints, spread, points, stiffness }) => {
    let at = left / 1000
    const supports = [at, ...spans.map((span) => (at += span / 1000))]
    const end = at + right / 1000
    // A joint over the support next to an overhang would let the overhang swing: none are made there.
    const hinges = supports.slice(1, -1).filter((_, index) => joints[index] === true)
    return {
      beam: { start: 0, end, supports, hinges, stiffness },
      load: {
        spread: spread.map(([one, other, load]) => ({
          from: (Math.min(one, other) / 1000) * end,
          to: (Math.max(one, other) / 1000) * end,
          load,
        })),
        points: points.map(([share, load]) => ({ at: (share / 10_000) * end, load })),
      },
    }
  })
