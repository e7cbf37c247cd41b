import { Decimal } from "../quantity/decimal.ts"
import type { Ast } from "./ast.ts"
import { type Cell, errorCell, isColumn, isError, type Operand } from "./cell.ts"
import { fold } from "./fold.ts"
import { FUNCTIONS } from "./functions/index.ts"
import { evaluateMinus, evaluatePercent, evaluatePlus, infixRule } from "./operators.ts"

/**
 * Works a formula out in decimals.
 *
 * @param read the value of a name: one value or a whole column
 * @param row the row's number, from 1; 0 where there is none
 */
export function evaluateFormula(ast: Ast, read: (name: string) => Operand, row: number): Cell {
  const result = fold<Operand>(ast, (node, operands) => {
    switch (node.type) {
      case "number":
        return new Decimal(node.text)
      case "text":
        return node.text
      case "name":
        return read(node.name)
      case "group":
        return operands[0] ?? errorCell("no_value")
      case "prefix":
        return node.operator === "-" ? evaluateMinus(operands) : evaluatePlus(operands)
      case "percent":
        return evaluatePercent(operands)
      case "infix": {
        const rule = infixRule(node.operator)
        if (rule === undefined) throw new RangeError(`there is no operator ${node.operator}`)
        return rule.evaluate(operands)
      }
      case "call": {
        const rule = FUNCTIONS.get(node.function)
        if (rule === undefined) throw new RangeError(`there is no function ${node.function}`)
        const failed = rule.takesErrors ? undefined : operands.find(isError)
        return failed ?? rule.evaluate(operands, row)
      }
    }
  })
  return isColumn(result) ? errorCell("text_for_number") : result
}
