import { Decimal } from "../quantity/decimal.ts"
import { multiplyDimensions } from "../quantity/dimension.ts"
import type { Application } from "./application.ts"
import type { InfixOperator } from "./ast.ts"
import { type Cell, errorCell, joinCells, type Operand, onCells, onNumbers, sameCell } from "./cell.ts"
import { evaluatePower, typeOfPower } from "./power.ts"
import {
  agree,
  dimensionOf,
  isPlainNumber,
  isPoint,
  numberType,
  TEXT,
  type ValueType,
  YES_NO,
} from "./value-type.ts"

export interface InfixRule {
  readonly symbol: InfixOperator
  /** How tightly it binds: the greater, the tighter. All bind from the left. */
  readonly precedence: number
  /** How it is printed in a working, for people. */
  readonly working: string
  readonly typeOf: (application: Application) => ValueType | undefined
  readonly evaluate: (operands: readonly Operand[]) => Cell
}

/** Binding of what is no infix operator: OpenFormula puts prefixes before %, and both before ^. */
export const PERCENT_PRECEDENCE = 6
export const PREFIX_PRECEDENCE = 7
export const WHOLE_PRECEDENCE = 8

/** The operators, by the precedence of OpenFormula (OASIS OpenDocument 1.3 part 4, section 5.5). */
const RULES: readonly InfixRule[] = [
  equality("=", "=", (left, right) => sameCell(left, right)),
  equality("<>", "≠", (left, right) => !sameCell(left, right)),
  order("<", "<", (left, right) => left.lessThan(right)),
  order("<=", "≤", (left, right) => left.lessThanOrEqualTo(right)),
  order(">", ">", (left, right) => left.greaterThan(right)),
  order(">=", "≥", (left, right) => left.greaterThanOrEqualTo(right)),
  { symbol: "&", precedence: 2, working: "&", typeOf: typeOfJoin, evaluate: joinCells },
  {
    symbol: "+",
    precedence: 3,
    working: "+",
    typeOf: typeOfSum,
    evaluate: onNumbers((left, right) => left.plus(right)),
  },
  {
    symbol: "-",
    precedence: 3,
    working: "−",
    typeOf: typeOfSum,
    evaluate: onNumbers((left, right) => left.minus(right)),
  },
  {
    symbol: "*",
    precedence: 4,
    working: "×",
    typeOf: (application) => typeOfProduct(application, 1),
    evaluate: onNumbers((left, right) => left.times(right)),
  },
  {
    symbol: "/",
    precedence: 4,
    working: "÷",
    typeOf: (application) => typeOfProduct(application, -1),
    evaluate: onNumbers((left, right) => (right.isZero() ? errorCell("division_by_zero") : left.div(right))),
  },
  { symbol: "^", precedence: 5, working: "^", typeOf: typeOfPower, evaluate: evaluatePower },
]

const BY_SYMBOL: ReadonlyMap<string, InfixRule> = new Map(RULES.map((rule) => [rule.symbol, rule]))

/** The rule of an infix operator, or undefined when the mark is none. */
export function infixRule(symbol: string): InfixRule | undefined {
  return BY_SYMBOL.get(symbol)
}

/** Types of a sign: it keeps what the number measures. */
export function typeOfPrefix(application: Application): ValueType | undefined {
  return application.quantity(0)
}

export const evaluateMinus = onNumbers((number) => number.negated())
export const evaluatePlus = onNumbers((number) => number)
export const evaluatePercent = onNumbers((number) => number.div(100))

/** Types of what joins texts: a number with a unit has no one way to be written. */
export function typeOfJoin(application: Application): ValueType {
  for (const index of application.args.keys()) {
    const type = application.one(index)
    if (type !== undefined && type.kind !== "text" && !isPlainNumber(type)) {
      application.refuse(index, "a text or a plain number")
    }
  }
  return TEXT
}

function equality(
  symbol: InfixOperator,
  working: string,
  holds: (left: Cell, right: Cell) => boolean,
): InfixRule {
  return {
    symbol,
    precedence: 1,
    working,
    typeOf: (application) => {
      application.alike([application.one(0), application.one(1)])
      return YES_NO
    },
    evaluate: onCells(holds),
  }
}

function order(
  symbol: InfixOperator,
  working: string,
  holds: (left: Decimal, right: Decimal) => boolean,
): InfixRule {
  return {
    symbol,
    precedence: 1,
    working,
    typeOf: (application) => {
      const common = application.alike([application.one(0), application.one(1)])
      if (common !== undefined && dimensionOf(common) === undefined) application.refuse(0, "a number")
      return YES_NO
    },
    evaluate: onCells((left, right) =>
      left instanceof Decimal && right instanceof Decimal ? holds(left, right) : errorCell("text_for_number"),
    ),
  }
}

/** Point − point is a difference, point ± difference a point; all else must be alike. */
function typeOfSum(application: Application): ValueType | undefined {
  const left = application.one(0)
  const right = application.one(1)
  if (left === undefined || right === undefined) return undefined
  return sumOf(left, right, application.doing === "-") ?? application.mismatch(left, right)
}

function sumOf(left: ValueType, right: ValueType, minus: boolean): ValueType | undefined {
  if (dimensionOf(left) === undefined || dimensionOf(right) === undefined) return undefined
  if (isPoint(left)) {
    if (!isPoint(right)) return agree(differenceOf(left), right) && left
    return minus && agree(left, right) ? differenceOf(left) : undefined
  }
  if (isPoint(right)) return minus ? undefined : agree(left, differenceOf(right)) && right
  return agree(left, right)
}

function differenceOf(point: ValueType): ValueType {
  return numberType({ exponents: dimensionOf(point)?.exponents ?? {} })
}

function typeOfProduct(application: Application, power: 1 | -1): ValueType | undefined {
  const left = application.quantity(0)
  const right = application.quantity(1)
  const [a, b] = [left && dimensionOf(left), right && dimensionOf(right)]
  return a && b && numberType(multiplyDimensions(a, b, power))
}
