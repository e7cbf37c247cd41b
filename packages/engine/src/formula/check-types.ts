import type { Problem } from "../problems/problem.ts"
import { Application, columnProblem } from "./application.ts"
import type { Ast } from "./ast.ts"
import { fold, partsOf } from "./fold.ts"
import { FUNCTIONS } from "./functions/index.ts"
import { nearNames } from "./near-names.ts"
import { infixRule, typeOfPrefix } from "./operators.ts"
import { PLAIN_NUMBER, type Shape, TEXT, type ValueType, ZERO } from "./value-type.ts"

/**
 * Judges a formula before anything is calculated: names, dimensions, one value or a column.
 *
 * @param shapeOf what each name is; undefined: there is no such name
 * @param inRow whether it is worked once for each row of a table, so that ROW() means something
 * @param names what a misspelt name may have meant, for suggestions
 * @returns the shape of the result, one value, exactly when there are no problems
 */
export function checkTypes(
  ast: Ast,
  shapeOf: (name: string) => Shape | undefined,
  inRow: boolean,
  names: Iterable<string> = [],
): { readonly shape?: Shape; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const shape = fold<Shape | undefined>(ast, (node, shapes) => {
    switch (node.type) {
      case "number":
        return one(Number(node.text) === 0 ? ZERO : PLAIN_NUMBER)
      case "text":
        return one(TEXT)
      case "group":
        return shapes[0]
      case "name": {
        const known = shapeOf(node.name)
        if (known === undefined) {
          const { name, span } = node
          problems.push({ code: "unknown_name", at: { span }, name, near: nearOnes(name, names) })
        }
        return known
      }
      default: {
        const args = partsOf(node).map((part, index) => ({ ast: part, shape: shapes[index] }))
        const { doing, typeOf } = ruleOf(node)
        const application = new Application(doing, args, node.span, inRow)
        const type = typeOf(application)
        problems.push(...application.problems)
        return application.problems.length > 0 || type === undefined ? undefined : one(type)
      }
    }
  })
  if (shape?.column) problems.push(columnProblem(ast))
  // What never has a value, as NA(), fits whatever number is wanted.
  return problems.length > 0 ? { problems } : { shape: shape ?? one(ZERO), problems }
}

function one(type: ValueType): Shape {
  return { type, column: false }
}

type Applied = Extract<Ast, { readonly type: "call" | "infix" | "prefix" | "percent" }>

interface Rule {
  readonly doing: string
  readonly typeOf: (application: Application) => ValueType | undefined
}

function ruleOf(node: Applied): Rule {
  switch (node.type) {
    case "call":
      return { doing: node.function, typeOf: known(FUNCTIONS.get(node.function)?.typeOf, node.function) }
    case "infix":
      return { doing: node.operator, typeOf: known(infixRule(node.operator)?.typeOf, node.operator) }
    case "prefix":
      return { doing: node.operator, typeOf: typeOfPrefix }
    case "percent":
      return { doing: "%", typeOf: (application) => application.plain(0) }
  }
}

function known<T>(rule: T | undefined, name: string): T {
  if (rule === undefined) throw new RangeError(`a formula that was read has no ${name}`)
  return rule
}

/** Names like it; and for `TRUE`, which elsewhere is written without, the parentheses. */
function nearOnes(name: string, names: Iterable<string>): readonly string[] {
  const called = name.toUpperCase()
  const near = nearNames(name, names)
  return FUNCTIONS.get(called)?.least === 0 ? [`${called}()`, ...near] : near
}
