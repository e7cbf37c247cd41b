import fc from "fast-check"
import { Decimal } from "../../src/quantity/decimal.ts"

/** Decimals from −10^9 to 10^9, with up to 12 places. */
export const anyDecimal = fc
  .record({
    digits: fc.bigInt({ min: -(10n ** 18n), max: 10n ** 18n }),
    places: fc.integer({ min: 9, max: 12 }),
  })
  .map(({ digits, places }) => new Decimal(digits.toString()).times(new Decimal(10).pow(-places)))

/** Metres, in whole nanometres up to 10 km. */
export const anyLength = fc
  .bigInt({ min: -(10n ** 13n), max: 10n ** 13n })
  .map((nanometres) => new Decimal(nanometres.toString()).times("1e-9"))
