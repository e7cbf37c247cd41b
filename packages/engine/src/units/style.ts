import type { Unit } from "./unit.ts"

/**
 * How finely a number is printed. The first step that the rounded number stays below is taken; the last has
 * no `below`. `significant`: so many digits in all, but never more than nine decimals.
 */
export type Step = { readonly below?: number } & (
  | { readonly decimals: number; readonly fixed?: true }
  | { readonly significant: number }
)

/** A number and its unit. */
export interface NumberStyle {
  readonly kind: "number"
  readonly unit: Unit
  /** Printed behind the number, with the space that it wants. */
  readonly suffix: string
  readonly steps: readonly Step[]
}

/** A number in two units: feet and inches with a fraction, hours and minutes. */
export interface PartsStyle {
  readonly kind: "parts"
  readonly major: Unit
  readonly minor: Unit
  readonly minorsInMajor: number
  readonly marks: readonly [major: string, minor: string]
  /** The smallest fraction of the minor unit: 16 for sixteenths. */
  readonly denominator: number
}

export type Style = NumberStyle | PartsStyle

const SMALL: Step = { below: 1, significant: 3 }

/** For usual sizes of one to hundreds. */
export const FINE: readonly Step[] = [SMALL, { below: 100, decimals: 2 }, { decimals: 1 }]
/** For usual sizes of hundreds and more. */
export const COARSE: readonly Step[] = [SMALL, { below: 100, decimals: 1 }, { decimals: 0 }]
export const WHOLE: readonly Step[] = [{ decimals: 0 }]
export const TENTHS: readonly Step[] = [{ decimals: 1 }]
export const CENTS: readonly Step[] = [{ decimals: 2, fixed: true }]
/** A tenth matters in a thickness or a gap; in a span it is noise. */
export const WHOLE_FROM_TEN: readonly Step[] = [{ below: 10, decimals: 1 }, { decimals: 0 }]
/** A thousandth of an inch, and what is about as much of a millimetre; of anything smaller its first digit. */
export const THOUSANDTHS: readonly Step[] = [{ below: 0.01, significant: 1 }, { decimals: 3 }]
export const HUNDREDTHS_BELOW_ONE: readonly Step[] = [
  { below: 0.1, significant: 1 },
  { below: 1, decimals: 2 },
  { decimals: 1 },
]
export const FOUR_DIGITS: readonly Step[] = [{ below: 1000, significant: 4 }, { decimals: 0 }]
