import { Decimal } from "../../quantity/decimal.ts"
import { raiseDimension } from "../../quantity/dimension.ts"
import type { Application } from "../application.ts"
import { errorCell, onNumbers } from "../cell.ts"
import { FAULTS, onDouble, onTwoDoubles } from "../double.ts"
import { evaluatePower, powerInDoubles, typeOfPower } from "../power.ts"
import { dimensionOf, numberType, PLAIN_NUMBER, type ValueType } from "../value-type.ts"
import type { FunctionRule } from "./function-rule.ts"

const PI = new Decimal(-1).acos()
/** Beyond these, e to the x is too great for a double, or too small to be told from 0. */
const GREATEST_EXPONENT = 710
const LEAST_EXPONENT = -750

/** Functions of one or two numbers. */
export const ARITHMETIC: readonly FunctionRule[] = [
  {
    name: "MOD",
    least: 2,
    most: 2,
    typeOf: (application) => application.alike([application.quantity(0), application.quantity(1)]),
    evaluate: onNumbers((value, divisor = new Decimal(0)) => {
      if (divisor.isZero()) return errorCell("division_by_zero")
      const rest = value.mod(divisor)
      return rest.isZero() || rest.isNegative() === divisor.isNegative() ? rest : rest.plus(divisor)
    }),
    inDoubles: onTwoDoubles((value, divisor) => {
      if (divisor === 0) return FAULTS.division_by_zero
      const rest = value % divisor
      return rest === 0 || rest < 0 === divisor < 0 ? rest : rest + divisor
    }),
    says: "Gives what is left after dividing, with the sign of the divisor.",
    example: { formula: "MOD(-7; 3)", gives: 2 },
  },
  {
    name: "ABS",
    least: 1,
    most: 1,
    typeOf: (application) => application.quantity(0),
    evaluate: onNumbers((value) => value.abs()),
    inDoubles: onDouble(Math.abs),
    says: "Gives the number without its sign.",
    example: { formula: "ABS(-3)", gives: 3 },
  },
  {
    name: "SQRT",
    least: 1,
    most: 1,
    typeOf: typeOfRoot,
    evaluate: onNumbers((value) => value.sqrt()),
    inDoubles: onDouble(Math.sqrt),
    says: "Gives the square root.",
    example: { formula: "SQRT(9)", gives: 3 },
  },
  {
    name: "POWER",
    least: 2,
    most: 2,
    typeOf: typeOfPower,
    evaluate: evaluatePower,
    inDoubles: powerInDoubles,
    says: "Multiplies the first number by itself as often as the second says.",
    example: { formula: "POWER(2; 10)", gives: 1024 },
  },
  {
    name: "EXP",
    least: 1,
    most: 1,
    typeOf: typeOfPlain,
    evaluate: onNumbers((value) => {
      if (value.greaterThan(GREATEST_EXPONENT)) return errorCell("not_a_number")
      return value.lessThan(LEAST_EXPONENT) ? new Decimal(0) : value.exp()
    }),
    inDoubles: onDouble(Math.exp),
    says: "Raises e, the base of natural logarithms, to a power.",
    example: { formula: "EXP(0)", gives: 1 },
  },
  {
    name: "LN",
    least: 1,
    most: 1,
    typeOf: typeOfPlain,
    evaluate: onNumbers((value) => value.ln()),
    inDoubles: onDouble(Math.log),
    says: "Gives the natural logarithm.",
    example: { formula: "LN(1)", gives: 0 },
  },
  {
    name: "PI",
    least: 0,
    most: 0,
    typeOf: () => PLAIN_NUMBER,
    evaluate: () => PI,
    inDoubles: () => Math.PI,
    says: "Gives the ratio of a circle's circumference to its diameter.",
    example: { formula: "ROUND(10 * PI(); 1)", gives: 31.4 },
  },
]

function typeOfPlain(application: Application): ValueType {
  application.plain(0)
  return PLAIN_NUMBER
}

function typeOfRoot(application: Application): ValueType | undefined {
  const type = application.quantity(0)
  const dimension = type && dimensionOf(type)
  return dimension && numberType(raiseDimension(dimension, 0.5))
}
