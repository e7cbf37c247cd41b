import { isPlain, raiseDimension } from "../quantity/dimension.ts"
import { type Application, writtenNumber } from "./application.ts"
import { onNumbers } from "./cell.ts"
import { onTwoDoubles } from "./double.ts"
import { dimensionOf, numberType, PLAIN_NUMBER, type ValueType } from "./value-type.ts"

/** Types of a power, for `^` and POWER: the dimension must be known before anything is calculated. */
export function typeOfPower(application: Application): ValueType | undefined {
  const base = application.quantity(0)
  const dimension = base && dimensionOf(base)
  application.plain(1)
  if (dimension === undefined) return undefined
  if (isPlain(dimension)) return PLAIN_NUMBER
  const exponent = writtenNumber(application.args[1]?.ast)
  if (exponent === undefined) {
    return application.refuse(1, "a number written out, because it changes what the result measures")
  }
  const raised = raiseDimension(dimension, exponent.toNumber())
  const halves = Object.values(raised.exponents).every((power) => Number.isInteger(power * 2))
  return halves ? numberType(raised) : application.refuse(1, "a whole number or a half")
}

/** A power in decimals. 0 to the 0 is 1; a root of a negative number is none. */
export const evaluatePower = onNumbers((base, exponent) => base.pow(exponent))

export const powerInDoubles = onTwoDoubles((base, exponent) => base ** exponent)
