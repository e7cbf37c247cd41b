import { type Beam, type BeamLoad, solveBeam } from "./beam.ts"
import { actionsOf, type BeamActions, fallsOf, liveBySpan, worseOf } from "./beam-loads.ts"
import { movingForce } from "./moving-force.ts"

/** What acts in one line. */
export interface Line {
  readonly dead: BeamActions
  /** What each support pushes with everything loaded. */
  readonly full: readonly number[]
  /** Dead load, and the worse of live load on whichever spans are worst and of one force anywhere. Falls: of live load on spans. */
  readonly worst: BeamActions
  /** The greatest fall of each span under live load alone, on whichever spans are worst. */
  readonly liveFalls: readonly number[]
  /** The greatest fall of each span under the force alone, anywhere. */
  readonly forceFalls: readonly number[]
}

/** Whether a span lies before the first support or after the last. */
export function isOverhang(of: BeamActions, from: number, to: number): boolean {
  const middle = (from + to) / 2
  return of.supports.every(({ at }) => at > middle) || of.supports.every(({ at }) => at < middle)
}

/**
 * Works a line under dead load everywhere, with live load on any spans or one force anywhere, never both; a sentence
 * where it could turn or fall.
 */
export function workLine(
  beam: Beam,
  dead: BeamLoad,
  live: BeamLoad,
  force: number,
): Line | { readonly unmet: string } {
  const answer = solveBeam(beam, [dead, ...liveBySpan(beam, live)])
  if ("unmet" in answer) return answer
  const [alone, ...bySpan] = answer.effects
  if (alone === undefined) throw new Error("a load has an effect")
  const still = { ...answer, effects: [alone] }
  const point = movingForce(beam, force, still)
  if ("unmet" in point) return point
  return {
    dead: actionsOf(beam, still, 1),
    full: answer.supports.map((_, index) =>
      answer.effects.reduce((sum, { reactions }) => sum + (reactions[index] ?? 0), 0),
    ),
    worst: worseOf(actionsOf(beam, answer, 1), withoutSag(point)),
    liveFalls: fallsOf(beam, { ...answer, effects: bySpan }),
    forceFalls: point.spans.map(({ fall }) => fall.value),
  }
}

const NOTHING = { value: 0, at: 0 }

/** The fall of a moving force is its own, without the dead load's: it cannot be held against a fall of both. */
const withoutSag = (of: BeamActions): BeamActions => ({
  ...of,
  spans: of.spans.map((span) => ({ ...span, fall: NOTHING, rise: NOTHING })),
})

/** An even load per length over a line that begins at 0. */
export function loadOf(length: number, load: number): BeamLoad {
  return { spread: [{ from: 0, to: length, load }], points: [] }
}
