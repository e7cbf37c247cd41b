import DecimalJs from "decimal.js"

/**
 * Our own decimal constructor: 40 significant digits, half-up rounding (half away from zero).
 * A clone, so that nothing else on the page that uses the library can change our settings, nor we theirs.
 */
export const Decimal = DecimalJs.clone({
  precision: 40,
  rounding: DecimalJs.ROUND_HALF_UP,
  toExpNeg: -30,
  toExpPos: 40,
})

/** A decimal made by {@link Decimal}. */
export type Decimal = DecimalJs

/** How {@link Decimal} may round, e.g. `Decimal.ROUND_UP`. */
export type DecimalRounding = DecimalJs.Rounding
