import { type ByThreeMoments, byThreeMoments } from "../beam/three-moments.ts"

/** One line of timber in metres and newtons: what holds it up, where its pieces meet, and even loads per length. */
export interface TimberLine {
  readonly length: number
  readonly supports: readonly number[]
  readonly joints: readonly number[]
  readonly dead: number
  readonly live: number
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
export function worstOf({ length, supports, joints, dead, live }: TimberLine): Acting {
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
