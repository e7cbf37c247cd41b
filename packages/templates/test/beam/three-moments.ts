import type { Beam, BeamLoad } from "../../src/solvers/beam.ts"

/**
 * A second way to the same answer: the equation of three moments over the supports (Clapeyron 1857), bending
 * elsewhere by adding up forces to the left, and the fall by the theorem of moment areas, integrated numerically.
 * Joints may lie over supports only. Shares nothing with the solver but the shape of the data.
 */
export interface ByThreeMoments {
  readonly reactions: readonly number[]
  moment(at: number): number
  fall(at: number): number
}

interface OnSpan {
  readonly toLeft: number
  readonly toRight: number
}

export function byThreeMoments(beam: Beam, load: BeamLoad): ByThreeMoments {
  const supports = beam.supports.toSorted((a, b) => a - b)
  const last = supports.length - 1
  const at = (index: number): number => supports[index] ?? Number.NaN
  const jointed = (index: number) => beam.hinges.some((hinge) => Math.abs(hinge - at(index)) < 1e-9)

  const left = turning(load, beam.start, at(0), at(0))
  const right = turning(load, at(last), beam.end, at(last))
  const known = supports.map((_, index) => {
    if (index === 0) return left
    if (index === last) return -right
    return jointed(index) ? 0 : undefined
  })
  const unknown = supports.map((_, index) => index).filter((index) => known[index] === undefined)
  const rows = unknown.map((index) => {
    const [before, after] = [at(index) - at(index - 1), at(index + 1) - at(index)]
    const row = new Array<number>(unknown.length + 1).fill(0)
    let side = -onSpan(load, at(index - 1), at(index)).toRight - onSpan(load, at(index), at(index + 1)).toLeft
    for (const [which, factor] of [
      [index - 1, before],
      [index, 2 * (before + after)],
      [index + 1, after],
    ] as const) {
      const given = known[which]
      if (given !== undefined) side -= factor * given
      else row[unknown.indexOf(which)] = factor
    }
    row[unknown.length] = side
    return row
  })
  const found = eliminate(rows)
  const moments = known.map((given, index) => given ?? found[unknown.indexOf(index)] ?? Number.NaN)

  const reactions = supports.map((_, index) => {
    let sum = 0
    if (index > 0) {
      const length = at(index) - at(index - 1)
      sum += ((moments[index - 1] ?? 0) - (moments[index] ?? 0)) / length
      sum += turning(load, at(index - 1), at(index), at(index - 1), index === last) / length
    } else sum += total(load, beam.start, at(0))
    if (index < last) {
      const length = at(index + 1) - at(index)
      sum += ((moments[index + 1] ?? 0) - (moments[index] ?? 0)) / length
      sum -= turning(load, at(index), at(index + 1), at(index + 1)) / length
    } else sum += total(load, at(last), beam.end)
    return sum
  })

  const moment = (place: number): number =>
    supports.reduce(
      (sum, support, index) => sum + Math.max(0, place - support) * (reactions[index] ?? 0),
      0,
    ) + turning(load, beam.start, place, place)

  const fall = (place: number): number => {
    const span = Math.max(
      0,
      supports.slice(0, last).findLastIndex((support) => support <= place),
    )
    const [from, to] = [at(span), at(span + 1)]
    const area = (end: number, about: number) => integral((x) => moment(x) * (about - x), from, end)
    return (((place - from) / (to - from)) * area(to, to) - area(place, place)) / beam.stiffness
  }
  return { reactions, moment, fall }
}

/** Six times the area of the simple span's bending diagram times its arm, over the span: for both of its ends. */
function onSpan(load: BeamLoad, from: number, to: number): OnSpan {
  const length = to - from
  const one = (b: number) => (b * (length ** 2 - b ** 2)) / length
  const many = (b: number) => ((length ** 2 * b ** 2) / 2 - b ** 4 / 4) / length
  let [toLeft, toRight] = [0, 0]
  for (const { at, load: force } of load.points) {
    if (at <= from || at >= to) continue
    toLeft += force * one(to - at)
    toRight += force * one(at - from)
  }
  for (const each of load.spread) {
    const [a, b] = [Math.max(from, each.from), Math.min(to, each.to)]
    if (b <= a) continue
    toRight += each.load * (many(b - from) - many(a - from))
    toLeft += each.load * (many(to - a) - many(to - b))
  }
  return { toLeft, toRight }
}

/** The sum of force times (its place − `about`), of the loads from `from` to `to`. */
function turning(load: BeamLoad, from: number, to: number, about: number, closed = true): number {
  let sum = 0
  for (const { at, load: force } of load.points) {
    if (at >= from && (closed ? at <= to : at < to)) sum += force * (at - about)
  }
  for (const each of load.spread) {
    const [a, b] = [Math.max(from, each.from), Math.min(to, each.to)]
    if (b > a) sum += each.load * (b - a) * ((a + b) / 2 - about)
  }
  return sum
}

function total(load: BeamLoad, from: number, to: number): number {
  let sum = 0
  for (const { at, load: force } of load.points) if (at >= from && at <= to) sum += force
  for (const each of load.spread)
    sum += each.load * Math.max(0, Math.min(to, each.to) - Math.max(from, each.from))
  return sum
}

function integral(of: (x: number) => number, from: number, to: number): number {
  const steps = 2000
  const step = (to - from) / steps
  let sum = 0
  for (let index = 0; index < steps; index++) sum += of(from + (index + 0.5) * step)
  return sum * step
}

/** Three diagonals that outweigh the rest: elimination without a search for pivots is safe here. */
function eliminate(rows: readonly (readonly number[])[]): readonly number[] {
  const work = rows.map((row) => [...row])
  const size = work.length
  work.forEach((row, pivot) => {
    for (let below = pivot + 1; below < size; below++) {
      const other = work[below] ?? []
      const factor = (other[pivot] ?? 0) / (row[pivot] ?? 1)
      for (let column = 0; column <= size; column++)
        other[column] = (other[column] ?? 0) - factor * (row[column] ?? 0)
    }
  })
  const found = new Array<number>(size).fill(0)
  for (let row = size - 1; row >= 0; row--) {
    const values = work[row] ?? []
    let rest = values[size] ?? 0
    for (let column = row + 1; column < size; column++) rest -= (values[column] ?? 0) * (found[column] ?? 0)
    found[row] = rest / (values[row] ?? 1)
  }
  return found
}
