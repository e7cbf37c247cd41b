import type { GraphValue } from "../../graph/graph.ts"
import { type Cell, errorCell, isColumn, isError, type Operand } from "../cell.ts"
import { type DoubleOperand, FAULTS, isDoubles, isFault } from "../double.ts"
import { YES_NO } from "../value-type.ts"
import { type FunctionRule, MANY } from "./function-rule.ts"

/** Functions that decide. */
export const LOGIC: readonly FunctionRule[] = [
  {
    name: "IF",
    least: 3,
    most: 3,
    typeOf: (application) => {
      application.yesNo(0)
      return application.alike([undefined, application.one(1), application.one(2)])
    },
    takesErrors: true,
    evaluate: ([condition, whenTrue, whenFalse]) => {
      if (isError(condition)) return condition
      if (typeof condition !== "boolean") return errorCell("text_for_number")
      return single(condition ? whenTrue : whenFalse)
    },
    inDoubles: ([condition, whenTrue, whenFalse]) => {
      if (isFault(condition)) return condition
      if (typeof condition !== "boolean") return FAULTS.text_for_number
      return one(condition ? whenTrue : whenFalse)
    },
    says: "Gives the second value when the condition holds, else the third.",
    example: { formula: 'IF(3 > 2; "more"; "less")', gives: "more" },
  },
  {
    name: "AND",
    least: 1,
    most: MANY,
    typeOf: allYesNo,
    evaluate: (operands) => yesNos(operands, (all) => !all.includes(false)),
    inDoubles: (operands) => yesNosInDoubles(operands, (all) => !all.includes(false)),
    says: "Says whether every condition holds.",
    example: { formula: "AND(1 < 2; 2 < 3)", gives: true },
  },
  {
    name: "OR",
    least: 1,
    most: MANY,
    typeOf: allYesNo,
    evaluate: (operands) => yesNos(operands, (all) => all.includes(true)),
    inDoubles: (operands) => yesNosInDoubles(operands, (all) => all.includes(true)),
    says: "Says whether at least one condition holds.",
    example: { formula: "OR(1 > 2; 3 > 2)", gives: true },
  },
  {
    name: "NOT",
    least: 1,
    most: 1,
    typeOf: allYesNo,
    evaluate: (operands) => yesNos(operands, (all) => all[0] === false),
    inDoubles: (operands) => yesNosInDoubles(operands, (all) => all[0] === false),
    says: "Turns yes into no and no into yes.",
    example: { formula: "NOT(1 > 2)", gives: true },
  },
  {
    name: "TRUE",
    least: 0,
    most: 0,
    typeOf: () => YES_NO,
    evaluate: () => true,
    inDoubles: () => true,
    says: "Yes.",
    example: { formula: "TRUE()", gives: true },
  },
  {
    name: "FALSE",
    least: 0,
    most: 0,
    typeOf: () => YES_NO,
    evaluate: () => false,
    inDoubles: () => false,
    says: "No.",
    example: { formula: "FALSE()", gives: false },
  },
  {
    name: "IFERROR",
    least: 2,
    most: 2,
    typeOf: (application) => application.alike([application.one(0), application.one(1)]),
    takesErrors: true,
    evaluate: ([value, alternative]) => single(isError(value) ? alternative : value),
    inDoubles: ([value, alternative]) => one(isFault(value) ? alternative : value),
    says: "Gives the first value, or the second when the first has no value.",
    example: { formula: "IFERROR(1 / 0; 7)", gives: 7 },
  },
  {
    name: "NA",
    least: 0,
    most: 0,
    typeOf: () => undefined,
    evaluate: () => errorCell("not_found"),
    inDoubles: () => FAULTS.not_found,
    says: "Says that there is no value here; everything that leans on it has none either.",
    example: { formula: "IFERROR(NA(); 0)", gives: 0 },
  },
]

function allYesNo(application: Parameters<FunctionRule["typeOf"]>[0]) {
  for (const index of application.args.keys()) application.yesNo(index)
  return YES_NO
}

function yesNos(operands: readonly Operand[], work: (all: readonly boolean[]) => boolean): Cell {
  const all: boolean[] = []
  for (const operand of operands) {
    if (typeof operand !== "boolean") return errorCell("text_for_number")
    all.push(operand)
  }
  return work(all)
}

function single(operand: Operand | undefined): Cell {
  return operand === undefined || isColumn(operand) ? errorCell("text_for_number") : operand
}

function yesNosInDoubles(
  operands: readonly DoubleOperand[],
  work: (all: readonly boolean[]) => boolean,
): GraphValue {
  for (const operand of operands) if (typeof operand !== "boolean") return FAULTS.text_for_number
  return work(operands as readonly boolean[])
}

function one(operand: DoubleOperand | undefined): GraphValue {
  return operand === undefined || isDoubles(operand) ? FAULTS.text_for_number : operand
}
