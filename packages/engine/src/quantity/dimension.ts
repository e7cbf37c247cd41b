/** The base dimensions, in the order in which they are printed. An angle is a plain number (SI: 1 rad = 1). */
export const BASE_DIMENSIONS = ["mass", "length", "time", "temperature", "money"] as const

export type BaseDimension = (typeof BASE_DIMENSIONS)[number]

/**
 * Exponents of the base dimensions; one that is absent is 0.
 *
 * `point` marks a point on a scale that has no natural zero to add from (a temperature of 20 °C), as against
 * a difference (a rise of 20 K). Point − point is a difference; point + difference is a point; nothing else
 * may be done with a point than compare it.
 */
export interface Dimension {
  readonly exponents: Readonly<Partial<Record<BaseDimension, number>>>
  readonly point?: true
}

export const PLAIN: Dimension = { exponents: {} }

/** Makes a dimension, leaving out zero exponents so that equal dimensions have equal shapes. */
export function dimension(exponents: Partial<Record<BaseDimension, number>>): Dimension {
  const kept: Partial<Record<BaseDimension, number>> = {}
  for (const base of BASE_DIMENSIONS) {
    const exponent = exponents[base] ?? 0
    if (exponent !== 0) kept[base] = exponent
  }
  return { exponents: kept }
}

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return (
    (a.point ?? false) === (b.point ?? false) &&
    BASE_DIMENSIONS.every((base) => (a.exponents[base] ?? 0) === (b.exponents[base] ?? 0))
  )
}

export function isPlain(a: Dimension): boolean {
  return sameDimension(a, PLAIN)
}

/** The product of two dimensions, `b` raised to `power` first. Points must be refused by the caller. */
export function multiplyDimensions(a: Dimension, b: Dimension, power = 1): Dimension {
  const exponents: Partial<Record<BaseDimension, number>> = {}
  for (const base of BASE_DIMENSIONS) {
    exponents[base] = (a.exponents[base] ?? 0) + (b.exponents[base] ?? 0) * power
  }
  return dimension(exponents)
}

export function raiseDimension(a: Dimension, power: number): Dimension {
  return multiplyDimensions(PLAIN, a, power)
}
