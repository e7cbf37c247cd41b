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
  type Polynomial,
  through,
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

/** Degree of what a moving load does, as a function of where it stands: at most six, so seven stations are exact. */
const STATIONS = Array.from(
  { length: 7 },
  (_, index) => 0.5 - 0.5 * Math.cos(((2 * index + 1) * Math.PI) / 14),
)

/**
 * The beam under `dead`, and one force anywhere on it. Each number follows the force's place as a polynomial, found
 * exactly from seven stations between supports and joints: the bending and the shear under the force, the push of each support, and the
 * bending over the supports at both ends of its span. What the force does to spans away from it goes with the bending over
 * the nearer of these two, so it is worst where that is, and there the whole beam is looked at. `fall` is that of the force alone, under it: by
 * the theorem of reciprocal deflections no such force in the same span makes a greater one. `rise` is 0.
 */
export function movingPoint(beam: Beam, force: number, dead: BeamLoad): ActionsOutcome {
  const [still, bare] = [solveBeam(beam, [dead]), solveBeam(beam, [{ spread: [], points: [] }])]
  if ("unmet" in still) return still
  if ("unmet" in bare) return bare
  const [base, pieces] = [still.effects[0], bare.effects[0]?.stretches]
  if (base === undefined || pieces === undefined) throw new Error("one load has one effect")
  const spans = spansOf(beam, still.supports).map((span) => ({ ...span, ...nothingYet(span.from) }))
  const supports = still.supports.map((at, index) => {
    const alone = base.reactions[index] ?? 0
    return { at, alone, most: alone, least: alone }
  })
  const looks: Look[] = []
  for (const piece of pieces) {
    const length = piece.to - piece.from
    const places = STATIONS.map((share) => piece.from + share * length)
    const answer = solveBeam(
      beam,
      places.map((at) => pointLoad(force, at)),
    )
    if ("unmet" in answer) return answer
    /** How a number of the loaded beam follows the force from the piece's beginning to its end. */
    const following = (read: (effect: BeamEffect, at: number) => number): Polynomial =>
      through(
        STATIONS,
        answer.effects.map((effect, index) => read(effect, places[index] ?? 0)),
      ).map((coefficient, power) => coefficient / length ** power)
    const middle = piece.from + length / 2
    const span = spans.find(({ from, to }) => middle > from && middle < to)
    if (span === undefined) continue
    const [bending, shearing, falling] = [following(momentAt), following(shearBefore), following(fallAt)]
    for (const stretch of base.stretches) {
      if (stretch.from < piece.from || stretch.to > piece.to) continue
      const worst = (known: Extreme, dead: Polynomial, live: Polynomial, sign: 1 | -1): Extreme => {
        const sum = weighted([
          { weight: sign, polynomial: dead },
          { weight: sign, polynomial: movedBy(live, stretch.from - piece.from) },
        ])
        const found = greatest(sum, stretch.to - stretch.from)
        return greaterOf(known, { value: found.value, at: stretch.from + found.at })
      }
      const shearAfter = weighted([
        { weight: 1, polynomial: stretch.shear },
        { weight: -1, polynomial: [force] },
      ])
      span.sagging = worst(span.sagging, stretch.moment, bending, 1)
      span.fall = worst(span.fall, [], falling, 1)
      for (const sign of [1, -1] as const) {
        span.shear = worst(span.shear, stretch.shear, shearing, sign)
        span.shear = worst(span.shear, shearAfter, shearing, sign)
      }
    }
    const ends = supports.flatMap((support, index) => {
      if (support.at !== span.from && support.at !== span.to) return []
      const reaction = following(({ reactions }) => reactions[index] ?? 0)
      support.most = Math.max(support.most, support.alone + greatest(reaction, length).value)
      support.least = Math.min(support.least, support.alone - greatest(negative(reaction), length).value)
      return [{ at: support.at, moment: following((effect) => momentAt(effect, support.at)) }]
    })
    const bent = (at: number, along: number): number => {
      const end = ends.find((one) => one.at === at)
      return end === undefined ? 0 : Math.abs(valueAt(end.moment, along))
    }
    const worst = ends
      .flatMap(({ moment }) => [moment, negative(moment)])
      .map((one) => greatest(one, length).at)
    for (const along of [0, ...worst, length]) {
      looks.push({ at: piece.from + along, left: bent(span.from, along), right: bent(span.to, along), span })
    }
  }
  const alone = actionsOf(beam, still, 1, false)
  if ("unmet" in alone) return alone
  let known: BeamActions = { spans, supports: supports.map(({ at, most, least }) => ({ at, most, least })) }
  const same = 1e-9 * (beam.end - beam.start)
  const decays = beam.hinges.every((hinge) => still.supports.some((at) => Math.abs(at - hinge) <= same))
  for (const look of looks.toSorted((one, other) => moreOf(other) - moreOf(one))) {
    if (decays && addsNothing(known, alone, look)) continue
    const loaded = solveBeam(beam, [{ ...dead, points: [...dead.points, { at: look.at, load: force }] }])
    const there = actionsOf(beam, loaded, 1, false)
    if ("unmet" in there) return there
    known = worseOf(known, there)
  }
  return known
}

/** A place of the force at which the rest of the beam may be worst, and how much it bends over the supports of its span. */
interface Look {
  readonly at: number
  readonly span: { readonly from: number; readonly to: number }
  readonly left: number
  readonly right: number
}

const moreOf = ({ left, right }: Look): number => Math.max(left, right)

/**
 * Whether nothing known can grow there. Of what bends over a support at most half bends over the next one, the other
 * way round, as long as joints lie over supports: so all that the force adds, farther and farther away, is bounded.
 */
function addsNothing(known: BeamActions, alone: BeamActions, { span, left, right }: Look): boolean {
  const loaded = known.spans.findIndex(({ from }) => from === span.from)
  const added = known.spans.map((_, index) => {
    if (index === loaded) return Math.max(left, right)
    return index < loaded ? left / 2 ** (loaded - index - 1) : right / 2 ** (index - loaded - 1)
  })
  const shears = known.spans.map(({ from, to }, index) => (1.5 * (added[index] ?? 0)) / (to - from))
  const grows = (value: number, was: number, by: number) => by > 0 && was + by > value * (1 + 1e-12)
  return (
    known.spans.every((now, index) => {
      const [dead, moment] = [alone.spans[index], added[index] ?? 0]
      if (dead === undefined || grows(now.hogging.value, dead.hogging.value, moment)) return false
      if (index === loaded) return true
      return (
        !grows(now.sagging.value, dead.sagging.value, moment) &&
        !grows(now.shear.value, dead.shear.value, shears[index] ?? 0)
      )
    }) &&
    known.supports.every(({ at, most, least }, index) => {
      if (at === span.from || at === span.to) return true
      const by = known.spans.reduce(
        (sum, { from, to }, which) => (from === at || to === at ? sum + (shears[which] ?? 0) : sum),
        0,
      )
      const dead = alone.supports[index]
      return dead !== undefined && !grows(most, dead.most, by) && !grows(-least, -dead.least, by)
    })
  )
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

const pointLoad = (load: number, at: number): BeamLoad => ({ spread: [], points: [{ at, load }] })

const negative = (polynomial: Polynomial): Polynomial => polynomial.map((coefficient) => -coefficient)

/** The first `permanent` effects always act; each of the others acts or not. Without `falls`, these are left at 0. */
function actionsOf(beam: Beam, answer: BeamAnswer, permanent: number, falls = true): ActionsOutcome {
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

/** The same polynomial counted from `by` on. */
function movedBy(polynomial: Polynomial, by: number): Polynomial {
  if (by === 0) return polynomial
  let moved: number[] = []
  for (let power = polynomial.length - 1; power >= 0; power--) {
    const times = [0, ...moved]
    moved.forEach((coefficient, at) => {
      times[at] = (times[at] ?? 0) + coefficient * by
    })
    times[0] = (times[0] ?? 0) + (polynomial[power] ?? 0)
    moved = times
  }
  return moved
}

const stretchAt = (effect: BeamEffect, at: number): BeamStretch | undefined =>
  effect.stretches.find(({ from, to }) => at >= from && at <= to)

function momentAt(effect: BeamEffect, at: number): number {
  const stretch = stretchAt(effect, at)
  return stretch === undefined ? 0 : valueAt(stretch.moment, at - stretch.from)
}

function fallAt(effect: BeamEffect, at: number): number {
  const stretch = stretchAt(effect, at)
  return stretch === undefined ? 0 : valueAt(stretch.deflection, at - stretch.from)
}

/** The shear just left of a place. */
function shearBefore(effect: BeamEffect, at: number): number {
  const stretch = stretchAt(effect, at)
  return stretch === undefined ? 0 : valueAt(stretch.shear, at - stretch.from)
}
