import {
  type Beam,
  type BeamAnswer,
  type BeamEffect,
  type BeamLoad,
  type BeamStretch,
  solveBeam,
} from "./beam.ts"
import {
  crossings,
  type Extreme,
  greaterOf,
  greatest,
  movedBy,
  type Polynomial,
  valueAt,
  weighted,
} from "./beam-polynomial.ts"

/** The worst that happens in one span: between neighbouring supports, or from the last support to a free end. */
export interface SpanActions {
  readonly from: number
  readonly to: number
  /** Greatest bending that sags, tension below; 0 where there is none. */
  readonly sagging: Extreme
  /** Greatest bending that hogs, tension above, as a positive number; 0 where there is none. */
  readonly hogging: Extreme
  /** Greatest shear either way, as a positive number. */
  readonly shear: Extreme
  /** Greatest fall below the straight line, and greatest rise above it, as positive numbers. */
  readonly fall: Extreme
  readonly rise: Extreme
}

export interface SupportActions {
  readonly at: number
  /** Greatest and least push of the support on the beam; a negative least would lift the beam off. */
  readonly most: number
  readonly least: number
}

export interface BeamActions {
  readonly spans: readonly SpanActions[]
  readonly supports: readonly SupportActions[]
}

export type ActionsOutcome = BeamActions | { readonly unmet: string; readonly at: number }

/** The beam under one load that lies as it lies. */
export function fullLoad(beam: Beam, load: BeamLoad): ActionsOutcome {
  return actionsOf(beam, solveBeam(beam, [load]), 1)
}

/**
 * The beam under `dead`, and `live` on any of its spans, each span loaded or not, whichever is worst for each
 * number. The effects of single spans are added up where they make things worse, between the places where one changes
 * its sign: the same answer as trying all loaded and unloaded spans, however many there are.
 */
export function patternLoad(beam: Beam, dead: BeamLoad, live: BeamLoad): ActionsOutcome {
  return actionsOf(beam, solveBeam(beam, [dead, ...liveBySpan(beam, live)]), 1)
}

/** The worse of two, number by number, of the same beam. */
export function worseOf(one: BeamActions, other: BeamActions): BeamActions {
  const more = (a: Extreme, b: Extreme | undefined) => (b === undefined ? a : greaterOf(a, b))
  return {
    spans: one.spans.map((span, index) => {
      const also = other.spans[index]
      return {
        ...span,
        sagging: more(span.sagging, also?.sagging),
        hogging: more(span.hogging, also?.hogging),
        shear: more(span.shear, also?.shear),
        fall: more(span.fall, also?.fall),
        rise: more(span.rise, also?.rise),
      }
    }),
    supports: one.supports.map((support, index) => {
      const also = other.supports[index]
      return {
        ...support,
        most: Math.max(support.most, also?.most ?? support.most),
        least: Math.min(support.least, also?.least ?? support.least),
      }
    }),
  }
}

/** The live load of each span by itself. */
export function liveBySpan(beam: Beam, live: BeamLoad): readonly BeamLoad[] {
  const supports = beam.supports.toSorted((one, other) => one - other)
  const spans = spansOf(beam, supports)
  return spans.map(({ from, to }, index) => ({
    spread: live.spread.flatMap((each) => {
      const [left, right] = [Math.max(from, each.from), Math.min(to, each.to)]
      return right > left ? [{ from: left, to: right, load: each.load }] : []
    }),
    points: live.points.filter(({ at }) => at >= from && (at < to || index === spans.length - 1)),
  }))
}

/** From support to support, and from the outer ones to the ends of the beam. */
export function spansOf(
  beam: Beam,
  supports: readonly number[],
): readonly { readonly from: number; readonly to: number }[] {
  const stops = [beam.start, ...supports, beam.end]
  const least = 1e-9 * (beam.end - beam.start)
  return stops.slice(1).flatMap((to, index) => {
    const from = stops[index] ?? to
    return to - from > least ? [{ from, to }] : []
  })
}

export function nothingYet(at: number) {
  const none: Extreme = { value: 0, at }
  return { sagging: none, hogging: none, shear: none, fall: none, rise: none }
}

/** The first `permanent` effects always act; each of the others acts or not. Without `falls`, these are left at 0. */
export function actionsOf(beam: Beam, answer: BeamAnswer, permanent: number, falls = true): ActionsOutcome {
  if ("unmet" in answer) return answer
  const { effects, supports } = answer
  const [always, sometimes] = [effects.slice(0, permanent), effects.slice(permanent)]
  const spans = spansOf(beam, supports).map((span) => ({ ...span, ...nothingYet(span.from) }))
  effects[0]?.stretches.forEach((stretch, index) => {
    const middle = (stretch.from + stretch.to) / 2
    const span = spans.find(({ from, to }) => middle > from && middle < to)
    if (span === undefined) return
    const worst = (known: Extreme, read: (stretch: BeamStretch) => Polynomial, sign: 1 | -1): Extreme => {
      const of = (some: readonly BeamEffect[]) =>
        some.flatMap(({ stretches }) => {
          const own = stretches[index]
          return own === undefined ? [] : [read(own).map((coefficient) => sign * coefficient)]
        })
      const found = greatestEnvelope(of(always), of(sometimes), stretch.to - stretch.from)
      return greaterOf(known, { value: found.value, at: stretch.from + found.at })
    }
    span.sagging = worst(span.sagging, ({ moment }) => moment, 1)
    span.hogging = worst(span.hogging, ({ moment }) => moment, -1)
    span.shear = worst(span.shear, ({ shear }) => shear, 1)
    span.shear = worst(span.shear, ({ shear }) => shear, -1)
    if (!falls) return
    span.fall = worst(span.fall, ({ deflection }) => deflection, 1)
    span.rise = worst(span.rise, ({ deflection }) => deflection, -1)
  })
  return {
    spans,
    supports: supports.map((at, index) => {
      const read = ({ reactions }: BeamEffect) => reactions[index] ?? 0
      const alone = always.reduce((sum, effect) => sum + read(effect), 0)
      return {
        at,
        most: sometimes.reduce((sum, effect) => sum + Math.max(0, read(effect)), alone),
        least: sometimes.reduce((sum, effect) => sum + Math.min(0, read(effect)), alone),
      }
    }),
  }
}

/**
 * The greatest of: all of `always`, and those of `sometimes` that add to it at that place. Between two places where
 * one of `sometimes` changes its sign the same ones add, so there it is one polynomial.
 */
function greatestEnvelope(
  always: readonly Polynomial[],
  sometimes: readonly Polynomial[],
  length: number,
): Extreme {
  const signs = sometimes.flatMap((polynomial) => crossings(polynomial, length))
  const stops = [0, ...signs.sort((one, other) => one - other), length]
  let best: Extreme | undefined
  for (let index = 1; index < stops.length; index++) {
    const [from = 0, to = 0] = [stops[index - 1], stops[index]]
    if (to <= from) continue
    const middle = (from + to) / 2
    const sum = weighted([
      ...always.map((polynomial) => ({ weight: 1, polynomial })),
      ...sometimes.map((polynomial) => ({ weight: valueAt(polynomial, middle) > 0 ? 1 : 0, polynomial })),
    ])
    const found = greatest(movedBy(sum, from), to - from)
    const here = { value: found.value, at: from + found.at }
    best = best === undefined ? here : greaterOf(best, here)
  }
  return best ?? { value: Number.NEGATIVE_INFINITY, at: 0 }
}
