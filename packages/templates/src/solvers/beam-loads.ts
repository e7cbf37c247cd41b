import type { Beam, BeamAnswer, BeamEffect, BeamLoad, BeamStretch } from "./beam.ts"
import {
  crossings,
  type Extreme,
  greaterOf,
  greatest,
  movedBy,
  multiplesAdded,
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

/** What solving gives of a beam that is held. */
export type MetBeam = Exclude<BeamAnswer, { readonly unmet: string }>

export type ActionsOutcome = BeamActions | { readonly unmet: string; readonly at: number }

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
function spansOf(
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

function nothingYet(at: number) {
  const none: Extreme = { value: 0, at }
  return { sagging: none, hogging: none, shear: none, fall: none, rise: none }
}

/**
 * The worst under the first `permanent` effects, which always act, and the others, each of which acts or not, whichever is
 * worse for a number. They are added up where they make things worse, between the places where one changes its sign: the
 * same answer as trying all loaded and unloaded spans, however many there are. Without `falls`, these are left at 0.
 */
export function actionsOf(beam: Beam, answer: MetBeam, permanent: number, falls = true): BeamActions {
  const { effects, supports } = answer
  const [always, sometimes] = [effects.slice(0, permanent), effects.slice(permanent)]
  const spans = spansOf(beam, supports).map((span) => ({ ...span, ...nothingYet(span.from) }))
  effects[0]?.stretches.forEach((stretch, index) => {
    const middle = (stretch.from + stretch.to) / 2
    const span = spans.find(({ from, to }) => middle > from && middle < to)
    if (span === undefined) return
    const length = stretch.to - stretch.from
    const along = (read: (stretch: BeamStretch) => Polynomial): Envelope =>
      envelopeOf(readAt(always, index, read), readAt(sometimes, index, read), length)
    const worst = (known: Extreme, found: Extreme): Extreme =>
      greaterOf(known, { value: found.value, at: stretch.from + found.at })
    const [bent, sheared] = [along(({ moment }) => moment), along(({ shear }) => shear)]
    span.sagging = worst(span.sagging, bent.most)
    span.hogging = worst(span.hogging, bent.least)
    span.shear = worst(worst(span.shear, sheared.most), sheared.least)
    if (!falls) return
    const fallen = along(({ deflection }) => deflection)
    span.fall = worst(span.fall, fallen.most)
    span.rise = worst(span.rise, fallen.least)
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

/** The greatest fall of each span, each of the loads on it or not. */
export function fallsOf(beam: Beam, { effects, supports }: MetBeam): readonly number[] {
  const stretches = effects[0]?.stretches ?? []
  return spansOf(beam, supports).map((span) =>
    stretches.reduce((most, { from, to }, index) => {
      const middle = (from + to) / 2
      if (middle <= span.from || middle >= span.to) return most
      const falls = readAt(effects, index, ({ deflection }) => deflection)
      return Math.max(most, envelopeOf([], falls, to - from).most.value)
    }, 0),
  )
}

/** A number of one stretch, under each of some loads. */
function readAt(
  effects: readonly BeamEffect[],
  stretch: number,
  read: (stretch: BeamStretch) => Polynomial,
): readonly Polynomial[] {
  return effects.flatMap(({ stretches }) => {
    const own = stretches[stretch]
    return own === undefined ? [] : [read(own)]
  })
}

/** The greatest value, and the greatest of the other sign as a positive number. */
interface Envelope {
  readonly most: Extreme
  readonly least: Extreme
}

/** Of the length of a stretch: places nearer than this are one. */
const SAME_STOP = 1e-12

/**
 * The greatest either way of: all of `always`, and those of `each` that add to it at that place. Between two places where
 * one of these changes its sign the same ones add, so there it is one polynomial. What loads far away do in a span differs
 * in size and sign alone, so that a long line has hardly more such places than a short one.
 */
function envelopeOf(always: readonly Polynomial[], each: readonly Polynomial[], length: number): Envelope {
  const sometimes = multiplesAdded(each, length)
  const signs = sometimes.flatMap((polynomial) => crossings(polynomial, length))
  const stops = [0, ...signs.sort((one, other) => one - other), length]
  const sure = always.map((polynomial) => ({ weight: 1, polynomial }))
  const best: { most?: Extreme; least?: Extreme } = {}
  let from = 0
  for (const to of stops) {
    if (to - from <= SAME_STOP * length) continue
    const middle = (from + to) / 2
    const here = sometimes.map((polynomial) => ({ polynomial, value: valueAt(polynomial, middle) }))
    for (const [which, sign] of [
      ["most", 1],
      ["least", -1],
    ] as const) {
      const sum = weighted([
        ...sure,
        ...here.map(({ polynomial, value }) => ({ weight: sign * value > 0 ? 1 : 0, polynomial })),
      ])
      const signed = sign === 1 ? sum : sum.map((coefficient) => -coefficient)
      const found = greatest(movedBy(signed, from), to - from)
      const there = { value: found.value, at: from + found.at }
      const known = best[which]
      best[which] = known === undefined ? there : greaterOf(known, there)
    }
    from = to
  }
  const { most = NO_VALUE, least = NO_VALUE } = best
  return { most, least }
}

const NO_VALUE: Extreme = { value: Number.NEGATIVE_INFINITY, at: 0 }
