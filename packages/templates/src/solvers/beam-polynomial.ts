/** Coefficients of a polynomial, constant first, in the distance from where its stretch begins. */
export type Polynomial = readonly number[]

/** A greatest value and where it is. */
export interface Extreme {
  readonly value: number
  readonly at: number
}

/**
 * The greater of two; the first where they are alike to rounding. A beam is often bent alike in two places, and which
 * of them is named must not hang on the last digit.
 */
export function greaterOf(first: Extreme, second: Extreme): Extreme {
  return second.value - first.value > ALIKE * Math.abs(first.value) ? second : first
}

const ALIKE = 1e-9

export function valueAt(polynomial: Polynomial, at: number): number {
  let value = 0
  for (let power = polynomial.length - 1; power >= 0; power--) value = value * at + (polynomial[power] ?? 0)
  return value
}

/** The sum of polynomials, each times its weight. */
export function weighted(
  terms: readonly { readonly weight: number; readonly polynomial: Polynomial }[],
): Polynomial {
  const sum: number[] = []
  for (const { weight, polynomial } of terms) {
    if (weight === 0) continue
    polynomial.forEach((coefficient, power) => {
      sum[power] = (sum[power] ?? 0) + weight * coefficient
    })
  }
  return sum
}

/** The same polynomial in shares of `length`. */
const inShares = (polynomial: Polynomial, length: number): Polynomial =>
  polynomial.map((coefficient, power) => coefficient * length ** power)

/** Of a polynomial's size on its stretch: what differs by less from a multiple of another is one. */
const SAME_SHAPE = 1e-12

/**
 * Those that are positive multiples of one another on 0 to `length` added up, so that at every place a sum has the sign of
 * each of its terms. What is 0 everywhere is left out.
 */
export function multiplesAdded(polynomials: readonly Polynomial[], length: number): readonly Polynomial[] {
  const alike: { readonly shape: Polynomial; readonly terms: Polynomial[] }[] = []
  for (const polynomial of polynomials) {
    const unit = inShares(polynomial, length)
    const size = Math.sqrt(unit.reduce((sum, value) => sum + value ** 2, 0))
    if (size === 0) continue
    const shape = unit.map((value) => value / size)
    const known = alike.find((other) => isSame(other.shape, shape))
    if (known === undefined) alike.push({ shape, terms: [polynomial] })
    else known.terms.push(polynomial)
  }
  return alike.map(({ terms }) => weighted(terms.map((polynomial) => ({ weight: 1, polynomial }))))
}

function isSame(one: Polynomial, other: Polynomial): boolean {
  for (let power = Math.max(one.length, other.length) - 1; power >= 0; power--) {
    if (Math.abs((one[power] ?? 0) - (other[power] ?? 0)) > SAME_SHAPE) return false
  }
  return true
}

/** Every place strictly between 0 and `length` where the polynomial changes its sign, ascending. */
export function crossings(polynomial: Polynomial, length: number): readonly number[] {
  return unitCrossings(inShares(polynomial, length)).map((at) => at * length)
}

/** Every place strictly between 0 and `length` where the polynomial turns from rising to falling or back, ascending. */
export const turns = (polynomial: Polynomial, length: number): readonly number[] =>
  crossings(slopeOf(polynomial), length)

/** The greatest value on 0 to `length`, both ends included. */
export function greatest(polynomial: Polynomial, length: number): Extreme {
  let best: Extreme = { value: valueAt(polynomial, 0), at: 0 }
  for (const at of [...turns(polynomial, length), length]) {
    best = greaterOf(best, { value: valueAt(polynomial, at), at })
  }
  return best
}

/** A number that no value on 0 to `length` exceeds: found at once, and seldom reached. */
export function noMoreThan(polynomial: Polynomial, length: number): number {
  const [constant = 0, ...rest] = inShares(polynomial, length)
  return rest.reduce((sum, coefficient) => sum + Math.max(0, coefficient), constant)
}

/** The polynomial of least degree through points at `places` between 0 and 1, by divided differences. */
export function through(places: readonly number[], values: readonly number[]): Polynomial {
  const differences = [...values]
  for (let order = 1; order < places.length; order++) {
    for (let index = places.length - 1; index >= order; index--) {
      const rise = (differences[index] ?? 0) - (differences[index - 1] ?? 0)
      differences[index] = rise / ((places[index] ?? 0) - (places[index - order] ?? 0))
    }
  }
  let sum: number[] = []
  for (let index = places.length - 1; index >= 0; index--) {
    const times = [0, ...sum]
    sum.forEach((coefficient, power) => {
      times[power] = (times[power] ?? 0) - coefficient * (places[index] ?? 0)
    })
    times[0] = (times[0] ?? 0) + (differences[index] ?? 0)
    sum = times
  }
  return sum
}

/** The same polynomial counted from `by` on. */
export function movedBy(polynomial: Polynomial, by: number): Polynomial {
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

function slopeOf(polynomial: Polynomial): Polynomial {
  return polynomial.slice(1).map((coefficient, power) => coefficient * (power + 1))
}

/** Of a stretch: no double tells places nearer than this from one another. */
const FINEST = 1e-15
const MOST_STEPS = 100

/** Between two neighbouring turning points a polynomial runs one way, so there it crosses once or not at all. */
function unitCrossings(polynomial: Polynomial): readonly number[] {
  if (polynomial.length < 2) return []
  const [constant = 0, rise = 0] = polynomial
  if (polynomial.length === 2) {
    const at = -constant / rise
    return at > 0 && at < 1 ? [at] : []
  }
  const slope = slopeOf(polynomial)
  const stops = [0, ...unitCrossings(slope), 1]
  const found: number[] = []
  for (let index = 1; index < stops.length; index++) {
    const [low = 0, high = 1] = [stops[index - 1], stops[index]]
    const sign = Math.sign(valueAt(polynomial, low))
    if (sign !== 0 && sign * valueAt(polynomial, high) < 0)
      found.push(oneCrossing(polynomial, slope, low, high, sign))
  }
  return found
}

/** Newton's steps, and halving wherever one would leave the stretch that holds the crossing. */
function oneCrossing(
  polynomial: Polynomial,
  slope: Polynomial,
  from: number,
  to: number,
  signAtFrom: number,
): number {
  let [low, high] = [from, to]
  let at = (low + high) / 2
  for (let step = 0; step < MOST_STEPS; step++) {
    const value = valueAt(polynomial, at)
    if (signAtFrom * value > 0) low = at
    else high = at
    const newton = at - value / valueAt(slope, at)
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (Math.abs(next - at) <= FINEST) return next
    at = next
  }
  return at
}
