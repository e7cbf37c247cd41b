import { Decimal, type DecimalRounding } from "../../quantity/decimal.ts"
import { type Application, writtenNumber } from "../application.ts"
import { type ErrorCell, errorCell, onNumbers } from "../cell.ts"
import { FAULTS, type InDoubles, onDouble, onTwoDoubles } from "../double.ts"
import { PLAIN_NUMBER, type ValueType } from "../value-type.ts"
import type { FunctionRule } from "./function-rule.ts"

/** Functions that round. Only plain numbers have digits to round to; CEILING and FLOOR round to a step. */
export const ROUNDING: readonly FunctionRule[] = [
  {
    name: "ROUND",
    least: 1,
    most: 2,
    typeOf: typeOfDigits,
    evaluate: onNumbers((value, digits) => toDigits(value, digits, Decimal.ROUND_HALF_UP)),
    inDoubles: toPlaces(Math.round),
    says: "Rounds to the nearest number with so many decimal digits; a half goes away from 0.",
    example: { formula: "ROUND(2.5; 0)", gives: 3 },
  },
  {
    name: "ROUNDUP",
    least: 1,
    most: 2,
    typeOf: typeOfDigits,
    evaluate: onNumbers((value, digits) => toDigits(value, digits, Decimal.ROUND_UP)),
    inDoubles: toPlaces(Math.ceil),
    says: "Rounds away from 0 to so many decimal digits.",
    example: { formula: "ROUNDUP(4.25; 0)", gives: 5 },
  },
  {
    name: "ROUNDDOWN",
    least: 1,
    most: 2,
    typeOf: typeOfDigits,
    evaluate: onNumbers((value, digits) => toDigits(value, digits, Decimal.ROUND_DOWN)),
    inDoubles: toPlaces(Math.floor),
    says: "Rounds towards 0 to so many decimal digits.",
    example: { formula: "ROUNDDOWN(-4.75; 0)", gives: -4 },
  },
  {
    name: "TRUNC",
    least: 1,
    most: 2,
    typeOf: typeOfDigits,
    evaluate: onNumbers((value, digits) => toDigits(value, digits, Decimal.ROUND_DOWN)),
    inDoubles: toPlaces(Math.floor),
    says: "Cuts off all but so many decimal digits.",
    example: { formula: "TRUNC(8.75; 1)", gives: 8.7 },
  },
  {
    name: "INT",
    least: 1,
    most: 1,
    typeOf: typeOfDigits,
    evaluate: onNumbers((value) => value.floor()),
    inDoubles: onDouble(Math.floor),
    says: "Gives the greatest whole number that is not above the value.",
    example: { formula: "INT(-1.5)", gives: -2 },
  },
  {
    name: "CEILING",
    least: 2,
    most: 2,
    typeOf: typeOfStep,
    evaluate: onNumbers((value, step = ONE) => toStep(value, step, (steps) => steps.ceil())),
    inDoubles: toSteps(Math.ceil),
    says: "Rounds up to a whole number of steps.",
    example: { formula: "CEILING(7; 2)", gives: 8 },
  },
  {
    name: "FLOOR",
    least: 2,
    most: 2,
    typeOf: typeOfStep,
    evaluate: onNumbers((value, step = ONE) => toStep(value, step, (steps) => steps.floor())),
    inDoubles: toSteps(Math.floor),
    says: "Rounds down to a whole number of steps.",
    example: { formula: "FLOOR(-7; 2)", gives: -8 },
  },
]

const ONE = new Decimal(1)
const TEN = new Decimal(10)
/** No double has a digit beyond these places. */
const MOST_DIGITS = 400
/** The greatest power of ten in a double, and its inverse the least with all its digits. */
const MOST_POWER = 307

function typeOfDigits(application: Application): ValueType {
  application.plain(0)
  application.plain(1)
  const digits = writtenNumber(application.args[1]?.ast)
  if (digits !== undefined && !digits.isInteger()) application.refuse(1, "a whole number of digits")
  return PLAIN_NUMBER
}

function toDigits(value: Decimal, digits: Decimal | undefined, mode: DecimalRounding): Decimal {
  const places = digits === undefined ? 0 : digits.clamp(-MOST_DIGITS, MOST_DIGITS).trunc().toNumber()
  if (places >= 0) return value.toDecimalPlaces(places, mode)
  const step = TEN.pow(-places)
  return value.div(step).toDecimalPlaces(0, mode).times(step)
}

function typeOfStep(application: Application): ValueType | undefined {
  return application.alike([application.quantity(0), application.quantity(1)])
}

function toStep(value: Decimal, step: Decimal, round: (steps: Decimal) => Decimal): Decimal | ErrorCell {
  if (value.isZero()) return value
  if (step.isZero()) return errorCell("division_by_zero")
  if (value.isPositive() && step.isNegative()) return errorCell("not_a_number")
  return round(value.div(step)).times(step)
}

/** Rounds the number without its sign, so that what goes up goes away from 0. */
function toPlaces(round: (value: number) => number): InDoubles {
  return onTwoDoubles((value, digits) => {
    const power = 10 ** Math.trunc(Math.min(Math.max(digits, -MOST_POWER), MOST_POWER))
    const scaled = Math.abs(value) * power
    // So great that it has no digit there.
    if (!Number.isFinite(scaled)) return value
    return (Math.sign(value) * round(scaled)) / power
  }, 0)
}

function toSteps(round: (steps: number) => number): InDoubles {
  return onTwoDoubles((value, step) => {
    if (value === 0) return 0
    if (step === 0) return FAULTS.division_by_zero
    if (value > 0 && step < 0) return FAULTS.not_a_number
    return round(value / step) * step
  })
}
