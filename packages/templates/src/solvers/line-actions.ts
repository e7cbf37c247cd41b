import type { Beam, BeamLoad } from "./beam.ts"
import { type BeamActions, fullLoad, patternLoad } from "./beam-loads.ts"

/** What acts in one line. */
export interface Line {
  readonly dead: BeamActions
  readonly full: BeamActions
  /** Dead load, and live load on whichever spans are worst. */
  readonly worst: BeamActions
  /** Live load alone: only its falls are read. */
  readonly live: BeamActions
}

/** Whether a span lies before the first support or after the last. */
export function isOverhang(of: BeamActions, from: number, to: number): boolean {
  const middle = (from + to) / 2
  return of.supports.every(({ at }) => at > middle) || of.supports.every(({ at }) => at < middle)
}

const NO_LOAD: BeamLoad = { spread: [], points: [] }

/** Works a line under dead load everywhere and live load on any spans; a sentence where it could turn or fall. */
export function workLine(beam: Beam, dead: BeamLoad, live: BeamLoad): Line | { readonly unmet: string } {
  const both = { spread: [...dead.spread, ...live.spread], points: [...dead.points, ...live.points] }
  const alone = fullLoad(beam, dead)
  const full = fullLoad(beam, both)
  const worst = patternLoad(beam, dead, live)
  const coming = patternLoad(beam, NO_LOAD, live)
  for (const outcome of [alone, full, worst, coming]) {
    if ("unmet" in outcome) return { unmet: outcome.unmet }
  }
  return { dead: alone, full, worst, live: coming } as Line
}

/** An even load per length over a line that begins at 0. */
export function loadOf(length: number, load: number): BeamLoad {
  return { spread: [{ from: 0, to: length, load }], points: [] }
}
