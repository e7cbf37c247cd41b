import type { Beam, BeamAnswer, BeamStretch } from "./beam.ts"
import { type ActionsOutcome, actionsOf, type SpanActions, type SupportActions } from "./beam-loads.ts"
import {
  type Extreme,
  greaterOf,
  greatest,
  movedBy,
  noMoreThan,
  type Polynomial,
  through,
  valueAt,
  weighted,
} from "./beam-polynomial.ts"
import { type ForcePiece, type ForcePlace, forceInfluence } from "./force-influence.ts"

/** Degree of what a moving force does, as a function of where it stands: at most six, so seven stations are exact. */
const STATIONS = Array.from(
  { length: 7 },
  (_, index) => 0.5 - 0.5 * Math.cos(((2 * index + 1) * Math.PI) / 14),
)

/** Of the force times the length of the beam: less bending than this is none. */
const NO_BENDING = 1e-12

type Changing<T> = { -readonly [K in keyof T]: T[K] }

interface Span {
  readonly actions: Changing<SpanActions>
  /** Of the dead load. */
  readonly stretches: readonly BeamStretch[]
  readonly pieces: readonly ForcePiece[]
  /** The numbers of the supports at its ends; undefined at a free end. */
  readonly left: number | undefined
  readonly right: number | undefined
}

/** What forces on one side of a support bend over it, and how much of that comes over the next support on the other side. */
interface Reach {
  most: number
  least: number
  share: number
  /** The bending that `share` was read from: the greater, the more of its digits are good. */
  readFrom: number
}

/**
 * The beam under the one load of `still`, and one force anywhere on it. Each number follows the force's place as a polynomial, found
 * exactly from seven stations between supports and joints: the bending and the shear under the force, the push of each
 * support beside it, and the bending over both. Past these supports nothing of the force arrives but that bending, so
 * what it does there is one picture, larger or smaller, either way up: its greatest and its least are enough. `fall` is
 * that of the force alone, under it: by the theorem of reciprocal deflections no such force in the same span makes a
 * greater one. `rise` is 0.
 */
export function movingForce(beam: Beam, force: number, still: BeamAnswer): ActionsOutcome {
  if ("unmet" in still) return still
  const influence = forceInfluence(beam, force, STATIONS)
  if ("unmet" in influence) return influence
  const alone = actionsOf(beam, still, 1, false)
  const stretches = still.effects[0]?.stretches ?? []
  const spans = alone.spans.map((actions): Span => {
    const holds = ({ from, to }: { readonly from: number; readonly to: number }) =>
      (from + to) / 2 > actions.from && (from + to) / 2 < actions.to
    const support = (place: number) => {
      const number = still.supports.indexOf(place)
      return number < 0 ? undefined : number
    }
    return {
      actions: { ...actions },
      stretches: stretches.filter(holds),
      pieces: influence.pieces.filter(holds),
      left: support(actions.from),
      right: support(actions.to),
    }
  })
  const supports = alone.supports.map((support) => ({ ...support }))
  const reachOf = () => still.supports.map((): Reach => ({ most: 0, least: 0, share: 0, readFrom: 0 }))
  const [fromRight, fromLeft] = [reachOf(), reachOf()]
  const none = NO_BENDING * Math.abs(force) * (beam.end - beam.start)

  for (const span of spans) {
    const ends = {
      left: { at: span.left, step: -1, reach: fromRight, most: 0, least: 0 },
      right: { at: span.right, step: 1, reach: fromLeft, most: 0, least: 0 },
    }
    for (const piece of span.pieces) {
      const length = piece.to - piece.from
      const following = (read: (place: ForcePlace) => number): Polynomial =>
        through(STATIONS, piece.places.map(read)).map((coefficient, power) => coefficient / length ** power)
      const bent = {
        left: following((place) => momentOver(place, span.left)),
        right: following((place) => momentOver(place, span.right)),
      }
      const bending = following(({ moment }) => moment)
      underForce(span, piece, bending, following, force)
      const looks = [0, length]
      for (const end of [ends.left, ends.right]) {
        if (end.at === undefined) continue
        const number = end.at
        push(
          supports,
          alone.supports,
          number,
          between(
            following(({ reactionOf }) => reactionOf(number)),
            length,
          ),
        )
        const moment = between(end === ends.left ? bent.left : bent.right, length)
        end.most = Math.max(end.most, moment.most.value)
        end.least = Math.min(end.least, moment.least.value)
        looks.push(moment.most.at, moment.least.at)
      }
      for (const along of looks) {
        hogsInItsSpan(span, piece.from + along, {
          left: valueAt(bent.left, along),
          under: valueAt(bending, along),
          right: valueAt(bent.right, along),
        })
      }
    }
    for (const { at, step, reach, most, least } of [ends.left, ends.right]) {
      if (at === undefined || Math.max(most, -least) <= none) continue
      const place = span.pieces
        .flatMap(({ places }) => places)
        .reduce((best, one) => (Math.abs(one.momentOver(at)) > Math.abs(best.momentOver(at)) ? one : best))
      passOn(place, at, step, { most, least, none }, reach, { supports, alone: alone.supports })
    }
  }
  for (const { actions, stretches: own, left, right } of spans) {
    if (left === undefined || right === undefined) continue
    const [over, under] = [fromRight[right], fromLeft[left]]
    if (over !== undefined) bends(actions, own, over, (value) => [value * over.share, value])
    if (under !== undefined) bends(actions, own, under, (value) => [value, value * under.share])
  }
  return { spans: spans.map(({ actions }) => actions), supports }
}

const momentOver = (place: ForcePlace, support: number | undefined): number =>
  support === undefined ? 0 : place.momentOver(support)

const negative = (polynomial: Polynomial): Polynomial => polynomial.map((coefficient) => -coefficient)

function between(
  polynomial: Polynomial,
  length: number,
): { readonly most: Extreme; readonly least: Extreme } {
  const least = greatest(negative(polynomial), length)
  return { most: greatest(polynomial, length), least: { ...least, value: -least.value } }
}

/** A support pushes with the dead load's reaction, and what a force adds to it where it is worst. */
function push(
  supports: readonly Changing<SupportActions>[],
  alone: readonly SupportActions[],
  number: number,
  live: { readonly most: { readonly value: number }; readonly least: { readonly value: number } },
): void {
  const [support, before] = [supports[number], alone[number]]
  if (support === undefined || before === undefined) return
  support.most = Math.max(support.most, before.most + live.most.value)
  support.least = Math.min(support.least, before.least + live.least.value)
}

/** The greater of what is known, and the greatest of `sum` along one stretch, which begins at `from`. */
function worse(known: Extreme, sum: Polynomial, from: number, length: number): Extreme {
  if (noMoreThan(sum, length) <= known.value) return known
  const found = greatest(sum, length)
  return greaterOf(known, { value: found.value, at: from + found.at })
}

const sumOf = (sign: 1 | -1, dead: Polynomial, live: Polynomial): Polynomial =>
  weighted([
    { weight: sign, polynomial: dead },
    { weight: sign, polynomial: live },
  ])

/** Sagging, shear and fall are worst under the force itself. */
function underForce(
  { actions, stretches }: Span,
  piece: ForcePiece,
  bending: Polynomial,
  following: (read: (place: ForcePlace) => number) => Polynomial,
  force: number,
): void {
  const shearing = following(({ shear }) => shear)
  actions.fall = worse(
    actions.fall,
    following(({ fall }) => fall),
    piece.from,
    piece.to - piece.from,
  )
  for (const { from, to, moment, shear } of stretches) {
    if (from < piece.from || to > piece.to) continue
    const [before, length] = [movedBy(shearing, from - piece.from), to - from]
    const after = weighted([
      { weight: 1, polynomial: before },
      { weight: -1, polynomial: [force] },
    ])
    actions.sagging = worse(
      actions.sagging,
      sumOf(1, moment, movedBy(bending, from - piece.from)),
      from,
      length,
    )
    for (const sign of [1, -1] as const) {
      actions.shear = worse(actions.shear, sumOf(sign, shear, before), from, length)
      actions.shear = worse(actions.shear, sumOf(sign, shear, after), from, length)
    }
  }
}

/** The force's bending runs straight from the left end of the span to the force and on to the right end. */
function hogsInItsSpan(
  { actions, stretches }: Span,
  at: number,
  live: { readonly left: number; readonly under: number; readonly right: number },
): void {
  const parts = [
    { from: actions.from, to: at, first: live.left, last: live.under },
    { from: at, to: actions.to, first: live.under, last: live.right },
  ]
  for (const { from, to, first, last } of parts) {
    if (to <= from) continue
    const slope = (last - first) / (to - from)
    for (const stretch of stretches) {
      const [begins, ends] = [Math.max(from, stretch.from), Math.min(to, stretch.to)]
      if (ends <= begins) continue
      const dead = movedBy(stretch.moment, begins - stretch.from)
      const sum = sumOf(-1, dead, [first + slope * (begins - from), slope])
      actions.hogging = worse(actions.hogging, sum, begins, ends - begins)
    }
  }
}

/** What forces in one span bend over the support at its end, told to every support beyond. */
function passOn(
  place: ForcePlace,
  at: number,
  step: number,
  { most, least, none }: { readonly most: number; readonly least: number; readonly none: number },
  reach: readonly Reach[],
  {
    supports,
    alone,
  }: { readonly supports: readonly Changing<SupportActions>[]; readonly alone: readonly SupportActions[] },
): void {
  const over = place.momentOver(at)
  const ranged = (factor: number) => ({
    most: { value: Math.max(factor * most, factor * least) },
    least: { value: Math.min(factor * most, factor * least) },
  })
  for (let number = at; number >= 0 && number < supports.length; number += step) {
    if (number !== at) push(supports, alone, number, ranged(place.reactionOf(number) / over))
    const own = place.momentOver(number)
    const known = reach[number]
    if (known === undefined || Math.abs(own) <= none) continue
    const range = ranged(own / over)
    known.most = Math.max(known.most, range.most.value)
    known.least = Math.min(known.least, range.least.value)
    if (Math.abs(own) <= known.readFrom) continue
    known.readFrom = Math.abs(own)
    known.share = place.momentOver(number + step) / own
  }
}

/** Of a span away from the force: `ends` are the bendings at its ends, between them it runs straight. */
function bends(
  actions: Changing<SpanActions>,
  stretches: readonly BeamStretch[],
  { most, least }: Reach,
  ends: (value: number) => readonly [number, number],
): void {
  for (const value of [most, least]) {
    if (value === 0) continue
    const [first, last] = ends(value)
    const slope = (last - first) / (actions.to - actions.from)
    for (const { from, to, moment, shear } of stretches) {
      const live = [first + slope * (from - actions.from), slope]
      actions.sagging = worse(actions.sagging, sumOf(1, moment, live), from, to - from)
      actions.hogging = worse(actions.hogging, sumOf(-1, moment, live), from, to - from)
      for (const sign of [1, -1] as const)
        actions.shear = worse(actions.shear, sumOf(sign, shear, [slope]), from, to - from)
    }
  }
}
