import { Decimal } from "../../quantity/decimal.ts"
import type { Application } from "../application.ts"
import { errorCell, onNumbers } from "../cell.ts"
import { FAULTS, onDouble, onTwoDoubles } from "../double.ts"
import { PLAIN_NUMBER, type ValueType } from "../value-type.ts"
import type { FunctionRule } from "./function-rule.ts"

const DEGREES_PER_RADIAN = new Decimal(180).div(new Decimal(-1).acos())

/** Functions of angles: plain numbers, in radians. */
export const TRIGONOMETRY: readonly FunctionRule[] = [
  ofOne("SIN", (angle) => angle.sin(), Math.sin, "Gives the sine of an angle.", "SIN(0)", 0),
  ofOne("COS", (angle) => angle.cos(), Math.cos, "Gives the cosine of an angle.", "COS(0)", 1),
  ofOne("TAN", (angle) => angle.tan(), Math.tan, "Gives the tangent of an angle.", "TAN(0)", 0),
  ofOne("ASIN", (ratio) => ratio.asin(), Math.asin, "Gives the angle that has this sine.", "ASIN(0)", 0),
  ofOne("ACOS", (ratio) => ratio.acos(), Math.acos, "Gives the angle that has this cosine.", "ACOS(1)", 0),
  ofOne("ATAN", (ratio) => ratio.atan(), Math.atan, "Gives the angle that has this tangent.", "ATAN(0)", 0),
  {
    name: "ATAN2",
    least: 2,
    most: 2,
    typeOf: typeOfAngle,
    evaluate: onNumbers((across, up = new Decimal(0)) =>
      across.isZero() && up.isZero() ? errorCell("division_by_zero") : Decimal.atan2(up, across),
    ),
    inDoubles: onTwoDoubles((across, up) =>
      across === 0 && up === 0 ? FAULTS.division_by_zero : Math.atan2(up, across),
    ),
    says: "Gives the angle of the direction that goes so far across and so far up.",
    example: { formula: "ROUND(DEGREES(ATAN2(1; 1)); 6)", gives: 45 },
  },
  ofOne(
    "DEGREES",
    (angle) => angle.times(DEGREES_PER_RADIAN),
    (angle) => angle * (180 / Math.PI),
    "Turns radians into degrees.",
    "ROUND(DEGREES(PI()); 6)",
    180,
  ),
  ofOne(
    "RADIANS",
    (angle) => angle.div(DEGREES_PER_RADIAN),
    (angle) => angle * (Math.PI / 180),
    "Turns degrees into radians.",
    "ROUND(RADIANS(90) / PI(); 6)",
    0.5,
  ),
]

function ofOne(
  name: string,
  work: (value: Decimal) => Decimal,
  inDoubles: (value: number) => number,
  says: string,
  formula: string,
  gives: number,
): FunctionRule {
  const evaluate = onNumbers(work)
  return {
    name,
    least: 1,
    most: 1,
    typeOf: typeOfAngle,
    evaluate,
    inDoubles: onDouble(inDoubles),
    says,
    example: { formula, gives },
  }
}

function typeOfAngle(application: Application): ValueType {
  for (const index of application.args.keys()) application.plain(index)
  return PLAIN_NUMBER
}
