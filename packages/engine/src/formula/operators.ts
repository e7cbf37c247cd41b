import type { GraphValue } from "../graph/graph.ts"
import { Decimal } from "../quantity/decimal.ts"
import { multiplyDimensions } from "../quantity/dimension.ts"
import type { Application } from "./application.ts"
import type { InfixOperator } from "./ast.ts"
import { type Cell, errorCell, joinCells, type Operand, onCells, onNumbers, sameCell } from "./cell.ts"
import {
  FAULTS,
  type InDoubles,
  isDoubles,
  isFault,
  joinDoubles,
  onDouble,
  onTwoDoubles,
  sameDouble,
} from "./double.ts"
import { evaluatePower, powerInDoubles, typeOfPower } from "./power.ts"
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
  /** The same in doubles. */
  readonly inDoubles: InDoubles
  /** Where that is no more than a calculation on two numbers: the calculation, which needs no list of operands. */
  readonly onDoubles?: (left: number, right: number) => number
}

/** Binding of what is no infix operator: OpenFormula puts prefixes before %, and both before ^. */
export const PERCENT_PRECEDENCE = 6
export const PREFIX_PRECEDENCE = 7
export const WHOLE_PRECEDENCE = 8

/** The operators, by the precedence of OpenFormula (OASIS OpenDocument 1.3 part 4, section 5.5). */
const RULES: readonly InfixRule[] = [
  equality("=", "=", (left, right) => sameCell(left, right), sameDouble),
  equality(
    "<>",
    "≠",
    (left, right) => !sameCell(left, right),
    (left, right) => !sameDouble(left, right),
  ),
  order(
    "<",
    "<",
    (left, right) => left.lessThan(right),
    (left, right) => left < right,
  ),
  order(
    "<=",
    "≤",
    (left, right) => left.lessThanOrEqualTo(right),
    (left, right) => left <= right,
  ),
  order(
    ">",
    ">",
    (left, right) => left.greaterThan(right),
    (left, right) => left > right,
  ),
  order(
    ">=",
    "≥",
    (left, right) => left.greaterThanOrEqualTo(right),
    (left, right) => left >= right,
  ),
  {
    symbol: "&",
    precedence: 2,
    working: "&",
    typeOf: typeOfJoin,
    evaluate: joinCells,
    inDoubles: joinDoubles,
  },
  {
    symbol: "+",
    precedence: 3,
    working: "+",
    typeOf: typeOfSum,
    evaluate: onNumbers((left, right) => left.plus(right)),
    ...bare((left, right) => left + right),
  },
  {
    symbol: "-",
    precedence: 3,
    working: "−",
    typeOf: typeOfSum,
    evaluate: onNumbers((left, right) => left.minus(right)),
    ...bare((left, right) => left - right),
  },
  {
    symbol: "*",
    precedence: 4,
    working: "×",
    typeOf: (application) => typeOfProduct(application, 1),
    evaluate: onNumbers((left, right) => left.times(right)),
    ...bare((left, right) => left * right),
  },
  {
    symbol: "/",
    precedence: 4,
    working: "÷",
    typeOf: (application) => typeOfProduct(application, -1),
    evaluate: onNumbers((left, right) => (right.isZero() ? errorCell("division_by_zero") : left.div(right))),
    inDoubles: onTwoDoubles((left, right) => (right === 0 ? FAULTS.division_by_zero : left / right)),
  },
  {
    symbol: "^",
    precedence: 5,
    working: "^",
    typeOf: typeOfPower,
    evaluate: evaluatePower,
    inDoubles: powerInDoubles,
  },
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

export const minusInDoubles = onDouble((number) => -number)
export const plusInDoubles = onDouble((number) => number)
export const percentInDoubles = onDouble((number) => number / 100)
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

/** A sign that only calculates. */
function bare(
  onDoubles: (left: number, right: number) => number,
): Pick<InfixRule, "inDoubles" | "onDoubles"> {
  return { inDoubles: onTwoDoubles(onDoubles), onDoubles }
}

function equality(
  symbol: InfixOperator,
  working: string,
  holds: (left: Cell, right: Cell) => boolean,
  holdsInDoubles: (left: GraphValue, right: GraphValue) => boolean,
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
    inDoubles: onValues(holdsInDoubles),
  }
}

function order(
  symbol: InfixOperator,
  working: string,
  holds: (left: Decimal, right: Decimal) => boolean,
  holdsInDoubles: (left: number, right: number) => boolean,
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
    inDoubles: onValues((left, right) =>
      typeof left === "number" && typeof right === "number"
        ? holdsInDoubles(left, right)
        : FAULTS.text_for_number,
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

/** Wraps a rule on single values in doubles, as `onCells` does in decimals. */
function onValues(work: (first: GraphValue, second: GraphValue) => GraphValue): InDoubles {
  return ([first = FAULTS.no_value, second = FAULTS.no_value]) => {
    if (isFault(first)) return first
    if (isFault(second)) return second
    return isDoubles(first) || isDoubles(second) ? FAULTS.text_for_number : work(first, second)
  }
}
