import type { GraphValue } from "../graph/graph.ts"
import type { Ast } from "./ast.ts"
import {
  type DoubleOperand,
  FAULTS,
  faultAmong,
  type InDoubles,
  isDoubles,
  isFault,
  sound,
} from "./double.ts"
import { partsOf } from "./fold.ts"
import { FUNCTIONS } from "./functions/index.ts"
import { namesIn } from "./names.ts"
import { infixRule, minusInDoubles, percentInDoubles, plusInDoubles } from "./operators.ts"

/** A formula made ready to be worked out in doubles, again and again, in whatever graph it stands. */
export interface Plan {
  /** The names that it leans on, each once; `@` before a column of which it reads its own row. */
  readonly names: readonly string[]
  /**
   * Works it out.
   *
   * @param values of the names, in their order
   * @param rows how many rows; nothing for a formula that stands in no table
   * @returns one value, or one a row
   */
  readonly work: (values: readonly DoubleOperand[], rows?: number) => DoubleOperand
}

/** One working of a formula, over all its rows. */
interface Run {
  readonly values: readonly DoubleOperand[]
  /** No two runs have the same. */
  readonly number: number
  /** From 0; −1 where there is none. */
  row: number
}

type Step = (run: Run) => DoubleOperand

/** A tree is never altered, and workbooks of one template share theirs. */
const PLANS = new WeakMap<Ast, Plan>()
let runs = 0

/** Whatever walks a formula may recurse: a reader refuses one that is too deep. */
export function planOf(ast: Ast): Plan {
  let plan = PLANS.get(ast)
  if (plan === undefined) {
    plan = makePlan(ast)
    PLANS.set(ast, plan)
  }
  return plan
}

function makePlan(ast: Ast): Plan {
  const names = [...new Set(namesIn(ast).map(({ name }) => name))]
  const step = stepOf(ast, new Map(names.map((name, place) => [name, place])))
  const one = (run: Run): GraphValue => {
    const value = step(run)
    return isDoubles(value) ? FAULTS.text_for_number : value
  }
  return {
    names,
    work: (values, rows) => {
      const run: Run = { values, number: ++runs, row: -1 }
      if (rows === undefined) return one(run)
      const column = new Array<GraphValue>(rows)
      for (run.row = 0; run.row < rows; run.row++) column[run.row] = one(run)
      return column
    },
  }
}

function stepOf(ast: Ast, places: ReadonlyMap<string, number>): Step {
  const step = bareStep(ast, places)
  return ast.type === "call" && ast.args.length > 0 && !leansOnRow(ast) ? onceARun(step) : step
}

/** A function of whole columns and scalars alone gives the same in every row. */
function onceARun(step: Step): Step {
  let known = 0
  let value: DoubleOperand = FAULTS.no_value
  return (run) => {
    if (run.row < 0) return step(run)
    if (known !== run.number) {
      value = step(run)
      known = run.number
    }
    return value
  }
}

function leansOnRow(ast: Ast): boolean {
  if (ast.type === "name") return ast.name.startsWith("@")
  return (ast.type === "call" && ast.function === "ROW") || partsOf(ast).some(leansOnRow)
}

function bareStep(ast: Ast, places: ReadonlyMap<string, number>): Step {
  switch (ast.type) {
    case "number": {
      const value = sound(Number(ast.text))
      return () => value
    }
    case "text": {
      const { text } = ast
      return () => text
    }
    case "name": {
      const place = places.get(ast.name) ?? -1
      if (!ast.name.startsWith("@")) return ({ values }) => values[place] ?? FAULTS.no_value
      return ({ values, row }) => {
        const value = values[place] ?? FAULTS.no_value
        return isDoubles(value) ? (value[row] ?? FAULTS.no_value) : value
      }
    }
    case "group":
      return stepOf(ast.inner, places)
    case "prefix":
      return applied(ast.operator === "-" ? minusInDoubles : plusInDoubles, [stepOf(ast.operand, places)])
    case "percent":
      return applied(percentInDoubles, [stepOf(ast.operand, places)])
    case "infix":
      return infixStep(ast.operator, stepOf(ast.left, places), stepOf(ast.right, places))
    case "call":
      return callStep(
        ast.function,
        ast.args.map((arg) => stepOf(arg, places)),
      )
  }
}

/** The usual calculations without a list of operands. */
function infixStep(operator: string, left: Step, right: Step): Step {
  const rule = infixRule(operator)
  if (rule === undefined) throw new RangeError(`there is no operator ${operator}`)
  const { onDoubles } = rule
  if (onDoubles === undefined) return applied(rule.inDoubles, [left, right])
  return (run) => {
    const a = left(run)
    const b = right(run)
    return typeof a === "number" && typeof b === "number" ? sound(onDoubles(a, b)) : faultAmong([a, b])
  }
}

/** IF and IFERROR work out only what they give. */
function callStep(name: string, args: readonly Step[]): Step {
  const rule = FUNCTIONS.get(name)
  if (rule === undefined) throw new RangeError(`there is no function ${name}`)
  const [first, second, third] = args
  if (name === "IF" && first !== undefined && second !== undefined && third !== undefined) {
    return (run) => {
      const condition = first(run)
      if (condition === true) return second(run)
      if (condition === false) return third(run)
      return isFault(condition) ? condition : FAULTS.text_for_number
    }
  }
  if (name === "IFERROR" && first !== undefined && second !== undefined) {
    return (run) => {
      const value = first(run)
      return isFault(value) ? second(run) : value
    }
  }
  return rule.takesErrors ? applied(rule.inDoubles, args) : applied(passing(rule.inDoubles), args)
}

/** The first operand that is an error is the result. */
function passing(work: InDoubles): InDoubles {
  return (operands, row) => {
    for (const operand of operands) if (isFault(operand)) return operand
    return work(operands, row)
  }
}

function applied(work: InDoubles, args: readonly Step[]): Step {
  return (run) => {
    const operands = new Array<DoubleOperand>(args.length)
    for (let place = 0; place < args.length; place++) operands[place] = args[place]?.(run) ?? FAULTS.no_value
    return work(operands, run.row + 1)
  }
}
