import { Decimal } from "../quantity/decimal.ts"

/** Nearest: halves away from zero. Up: towards the greater. Down: towards the less, also below zero. */
export type Rounding = "nearest" | "up" | "down"

const MODES = {
  nearest: Decimal.ROUND_HALF_UP,
  up: Decimal.ROUND_CEIL,
  down: Decimal.ROUND_FLOOR,
} as const

export function roundTo(number: Decimal, decimals: number, rounding: Rounding): Decimal {
  return number.toDecimalPlaces(decimals, MODES[rounding])
}

/** "1234567.5" → "1,234,567.5" */
export function groupThousands(digits: string): string {
  const [whole = "", decimals] = digits.split(".")
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",")
  return decimals === undefined ? grouped : `${grouped}.${decimals}`
}
