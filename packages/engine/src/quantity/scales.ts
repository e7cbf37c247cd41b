import { Decimal } from "./decimal.ts"
import { BASE_DIMENSIONS, type BaseDimension, type Dimension } from "./dimension.ts"

/**
 * The size of the graph's base units, in SI (money: in the currency's major unit), as decimal text.
 *
 * Length is held in whole nanometres: 1 in = 25 400 000 nm and 1/64 in = 396 875 nm, so every usual inch
 * fraction and every tenth of a millimetre is a whole number that a double holds exactly, and the quotient
 * of an exact fit is exact. Money is held in hundredths.
 *
 * Another set of scales must give the same physical answers; a property test holds every template to that.
 */
export type Scales = Readonly<Record<BaseDimension, string>>

export const USUAL_SCALES: Scales = { mass: "1", length: "1e-9", time: "1", temperature: "1", money: "0.01" }

/** How many SI units one base unit of this dimension is, under these scales. */
export function scaleOf(dimension: Dimension, scales: Scales): Decimal {
  let scale = new Decimal(1)
  for (const base of BASE_DIMENSIONS) {
    const exponent = dimension.exponents[base] ?? 0
    if (exponent !== 0) scale = scale.times(new Decimal(scales[base]).pow(exponent))
  }
  return scale
}
