import type { Beam, BeamLoad } from "./beam.ts"
import { type BeamActions, fullLoad, patternLoad, worseOf } from "./beam-loads.ts"
import { movingForce } from "./moving-force.ts"

/** What acts in one line. */
export interface Line {
  readonly dead: BeamActions
  readonly full: BeamActions
  /** Dead load, and the worse of live load on whichever spans are worst and of one force anywhere. Falls: of live load on spans. */
  readonly worst: BeamActions
  /** Live load on spans alone: only its falls are read. */
  readonly live: BeamActions
  /** The force alone, anywhere: only its falls are read. */
  readonly point: BeamActions
}

/** Whether a span lies before the first support or after the last. */
export function isOverhang(of: BeamActions, from: number, to: number): boolean {
  const middle = (from + to) / 2
  return of.supports.every(({ at }) => at > middle) || of.supports.every(({ at }) => at < middle)
}

const NO_LOAD: BeamLoad = { spread: [], points: [] }

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
  const both = { spread: [...dead.spread, ...live.spread], points: [...dead.points, ...live.points] }
  const alone = fullLoad(beam, dead)
  if ("unmet" in alone) return alone
  const full = fullLoad(beam, both)
  if ("unmet" in full) return full
  const spans = patternLoad(beam, dead, live)
  if ("unmet" in spans) return spans
  const coming = patternLoad(beam, NO_LOAD, live)
  if ("unmet" in coming) return coming
  const point = movingForce(beam, force, dead)
  if ("unmet" in point) return point
  const worst = worseOf(spans, withoutSag(point))
  return { dead: alone, full, worst, live: coming, point }
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
