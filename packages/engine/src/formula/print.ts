import type { Ast } from "./ast.ts"
import { fold } from "./fold.ts"
import { infixRule, PERCENT_PRECEDENCE, PREFIX_PRECEDENCE, WHOLE_PRECEDENCE } from "./operators.ts"

/**
 * A formula in its normal form: one space around operators (none around ^), `; ` between arguments, functions
 * in capitals. Reading it back gives the same formula; parentheses are put where one that was made, not read,
 * needs them.
 */
export function printFormula(ast: Ast): string {
  return print(ast, {
    infix: (symbol) => symbol,
    minus: "-",
    name: (name) => ({ text: name, precedence: WHOLE_PRECEDENCE }),
  })
}

/**
 * A working: the formula with values in place of names, and −, × and ÷, for people. A name whose text is
 * undefined stays. A value that could be misread beside its neighbours is put in parentheses.
 */
export function printWithValues(ast: Ast, textOf: (name: string) => string | undefined): string {
  return print(ast, {
    infix: (symbol) => infixRule(symbol)?.working ?? symbol,
    minus: "−",
    name: (name) => {
      const value = textOf(name)
      return value === undefined
        ? { text: name, precedence: WHOLE_PRECEDENCE }
        : { text: value, precedence: precedenceOfValue(value) }
    },
  })
}

interface Printed {
  readonly text: string
  /** How tightly the text holds together. */
  readonly precedence: number
}

interface Style {
  readonly infix: (symbol: string) => string
  readonly minus: string
  readonly name: (name: string) => Printed
}

const TIGHT_PRECEDENCE = 5
/** Of a value of several words: holds beside × and ÷, but not beside ^. */
const VALUE_PRECEDENCE = 4.5
/** Looser than any operator: in parentheses wherever it is an operand. */
const NO_PRECEDENCE = 0

/** `-3"` beside an operator, or `20' 0"` raised to a power, would be read wrongly. */
function precedenceOfValue(value: string): number {
  if (/^[-−]/.test(value)) return NO_PRECEDENCE
  return /^[\d.,]+$/.test(value) ? WHOLE_PRECEDENCE : VALUE_PRECEDENCE
}

function print(ast: Ast, style: Style): string {
  return fold<Printed>(ast, (node, parts) => printNode(node, parts, style)).text
}

function printNode(node: Ast, parts: readonly Printed[], style: Style): Printed {
  const whole = (text: string): Printed => ({ text, precedence: WHOLE_PRECEDENCE })
  const part = (index: number, least: number): string => {
    const { text, precedence } = parts[index] ?? whole("")
    return precedence < least ? `(${text})` : text
  }
  switch (node.type) {
    case "number":
      return whole(node.text)
    case "text":
      return whole(`"${node.text.replaceAll('"', '""')}"`)
    case "name":
      return style.name(node.name)
    case "call":
      return whole(`${node.function}(${parts.map(({ text }) => text).join("; ")})`)
    case "group":
      return whole(`(${parts[0]?.text ?? ""})`)
    case "prefix": {
      const sign = node.operator === "-" ? style.minus : node.operator
      return { text: sign + part(0, PREFIX_PRECEDENCE), precedence: PREFIX_PRECEDENCE }
    }
    case "percent":
      return { text: `${part(0, PERCENT_PRECEDENCE)}%`, precedence: PERCENT_PRECEDENCE }
    case "infix": {
      const precedence = infixRule(node.operator)?.precedence ?? NO_PRECEDENCE
      const operator = style.infix(node.operator)
      const space = precedence === TIGHT_PRECEDENCE ? "" : " "
      const text = `${part(0, precedence)}${space}${operator}${space}${part(1, precedence + 0.5)}`
      return { text, precedence }
    }
  }
}
