import type { Decimal } from "../quantity/decimal.ts"
import { foot, inch } from "./definitions/length.ts"
import { hour, minute } from "./definitions/time.ts"
import { groupThousands, type Rounding, roundTo } from "./rounding.ts"
import type { PartsStyle } from "./style.ts"
import { fromSi } from "./unit.ts"

/** `10' 6 1/2"`, below a foot `6 13/16"`. */
export const FEET_INCHES: PartsStyle = {
  kind: "parts",
  major: foot,
  minor: inch,
  minorsInMajor: 12,
  marks: ["'", '"'],
  denominator: 16,
}

/** `2 h 15 min`, below an hour `45 min`. */
export const HOURS_MINUTES: PartsStyle = {
  kind: "parts",
  major: hour,
  minor: minute,
  minorsInMajor: 60,
  marks: [" h", " min"],
  denominator: 1,
}

/**
 * Prints an amount in two units, rounded once, in fractions of the smaller unit, so that sixteen sixteenths
 * carry to the next inch and twelve inches to the next foot.
 *
 * @param si metres, or seconds
 * @param denominator of the fraction, a whole number from 1; halves go away from zero
 */
export function printParts(si: Decimal, style: PartsStyle, denominator: number, rounding: Rounding): string {
  const pieces = roundTo(fromSi(si, style.minor).times(denominator), 0, rounding)
  const whole = pieces.abs().divToInt(denominator)
  const major = whole.divToInt(style.minorsInMajor)
  const minor = whole.mod(style.minorsInMajor)
  const over = pieces.abs().mod(denominator).toNumber()

  const [majorMark, minorMark] = style.marks
  // A bare fraction below one, `1/2"`; but `9' 0 1/2"`, where "9' 1/2" could be misread.
  const digits = whole.isZero() && over > 0 ? [] : [minor.toFixed()]
  const minorText = `${[...digits, ...fraction(over, denominator)].join(" ")}${minorMark}`
  const text = major.isZero() ? minorText : `${groupThousands(major.toFixed())}${majorMark} ${minorText}`
  return pieces.lt(0) ? `-${text}` : text
}

/** The fraction in lowest terms; nothing for 0. */
function fraction(over: number, denominator: number): string[] {
  if (over === 0) return []
  const shared = greatestCommonDivisor(over, denominator)
  return [`${over / shared}/${denominator / shared}`]
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b)
}
