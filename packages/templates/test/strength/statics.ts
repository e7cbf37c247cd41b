import { type ByThreeMoments, byThreeMoments } from "../beam/three-moments.ts"

/** One line of timber in metres and newtons: what holds it up, where its pieces meet, and even loads per length. */
export interface TimberLine {
  readonly length: number
  readonly supports: readonly number[]
  readonly joints: readonly number[]
  readonly dead: number
  readonly live: number
  /** One force anywhere, in place of the live load. */
  readonly force: number
}

export interface Acting {
  readonly moment: number
  readonly shear: number
  readonly reaction: number
}

const SAMPLES = 240

/**
 * The worst that dead load everywhere and live load on any spans do to a line, by the equation of three moments: what
 * each loaded span alone does is added up where it makes things worse. Shares nothing with the workbook's solver.
 */
export function worstOf(line: TimberLine): Acting {
  const [spread, point] = [worstOfSpans(line), worstOfForce(line)]
  return {
    moment: Math.max(spread.moment, point.moment),
    shear: Math.max(spread.shear, point.shear),
    reaction: Math.max(spread.reaction, point.reaction),
  }
}

/** What each line of supports takes of an even load of 1 on the piece across it. */
export function handedDown(length: number, supports: readonly number[]): readonly number[] {
  const beam = { start: 0, end: length, supports, hinges: [], stiffness: 1 }
  return byThreeMoments(beam, { spread: [{ from: 0, to: length, load: 1 }], points: [] }).reactions
}

/** Beside a support, as near as makes no difference. */
const BESIDE = 1e-7

/** Dead load and the force at many places: its bending is worst under itself or over a support, its shear beside one. */
function worstOfForce({ length, supports, joints, dead, force }: TimberLine): Acting {
  const held = supports.toSorted((one, other) => one - other)
  const beam = { start: 0, end: length, supports: held, hinges: joints, stiffness: 1 }
  const stops = [0, ...held, length]
  const places = stops.slice(1).flatMap((to, index) => {
    const from = stops[index] ?? 0
    if (to - from < 1e-6) return []
    const inside = Array.from(
      { length: SAMPLES - 1 },
      (_, step) => from + ((to - from) * (step + 1)) / SAMPLES,
    )
    return [from + BESIDE, ...inside, to - BESIDE]
  })
  let [moment, shear, reaction] = [0, 0, 0]
  for (const at of places) {
    const answer = byThreeMoments(beam, {
      spread: [{ from: 0, to: length, load: dead }],
      points: [{ at, load: force }],
    })
    for (const place of [at, ...held]) moment = Math.max(moment, Math.abs(answer.moment(place)))
    for (const place of held)
      for (const beyond of [false, true]) {
        const pushed = reactionsBefore(held, answer, place, beyond)
        shear = Math.max(shear, Math.abs(pushed - dead * place - (at < place ? force : 0)))
      }
    reaction = Math.max(reaction, ...answer.reactions)
  }
  return { moment, shear, reaction }
}

function worstOfSpans({ length, supports, joints, dead, live }: TimberLine): Acting {
  const held = supports.toSorted((one, other) => one - other)
  const ends = [0, ...held, length].filter(
    (at, index, all) => index === 0 || at - (all[index - 1] ?? 0) > 1e-9,
  )
  const beam = { start: 0, end: length, supports: held, hinges: joints, stiffness: 1 }
  const loaded = (from: number, to: number, load: number) => ({
    load: { spread: [{ from, to, load }], points: [] },
    answer: byThreeMoments(beam, { spread: [{ from, to, load }], points: [] }),
  })
  const always = loaded(0, length, dead)
  const coming = ends.slice(1).map((to, index) => loaded(ends[index] ?? 0, to, live))
  type One = typeof always
  const worst = (effect: (one: One) => number): number => {
    const steady = effect(always)
    const others = coming.map(effect)
    const up = others.reduce((sum, each) => sum + Math.max(0, each), steady)
    const down = others.reduce((sum, each) => sum + Math.min(0, each), steady)
    return Math.max(Math.abs(up), Math.abs(down))
  }
  const shearAt =
    (at: number, beyond: boolean) =>
    ({ load, answer }: One): number => {
      const held_ = reactionsBefore(held, answer, at, beyond)
      const [spread] = load.spread
      if (spread === undefined) return held_
      return held_ - spread.load * Math.max(0, Math.min(spread.to, at) - spread.from)
    }
  const places = ends.slice(1).flatMap((to, index) => {
    const from = ends[index] ?? 0
    return Array.from({ length: SAMPLES + 1 }, (_, step) => from + ((to - from) * step) / SAMPLES)
  })
  return {
    moment: Math.max(...places.map((at) => worst(({ answer }) => answer.moment(at)))),
    shear: Math.max(...held.flatMap((at) => [worst(shearAt(at, false)), worst(shearAt(at, true))])),
    reaction: Math.max(
      ...held.map((_, index) =>
        coming.reduce(
          (sum, { answer }) => sum + Math.max(0, answer.reactions[index] ?? 0),
          always.answer.reactions[index] ?? 0,
        ),
      ),
    ),
  }
}

const reactionsBefore = (
  held: readonly number[],
  answer: ByThreeMoments,
  at: number,
  beyond: boolean,
): number =>
  held.reduce(
    (sum, support, index) =>
      support < at - 1e-9 || (beyond && Math.abs(support - at) <= 1e-9)
        ? sum + (answer.reactions[index] ?? 0)
        : sum,
    0,
  )
