import type { Problem } from "../problems/problem.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Ast, Span } from "./ast.ts"
import { ungroup } from "./fold.ts"
import { agree, dimensionOf, isPlainNumber, isPoint, type Shape, type ValueType } from "./value-type.ts"

export interface Argument {
  readonly ast: Ast
  /** Absent when it has a problem of its own, or when it never has a value, as NA(): nothing is said of it. */
  readonly shape: Shape | undefined
}

/**
 * A function or operator and what it is applied to, while its types are judged. A type rule asks it for the
 * types of its arguments, counted from 0; what does not fit is noted in `problems`, and the answer is then
 * undefined.
 */
export class Application {
  readonly problems: Problem[] = []

  constructor(
    /** The function's name or the operator. */
    readonly doing: string,
    readonly args: readonly Argument[],
    readonly span: Span,
    /** Whether there is a row to work in. */
    readonly inRow: boolean,
  ) {}

  /** The type of an argument that must be one value. */
  one(index: number): ValueType | undefined {
    const argument = this.args[index]
    if (argument?.shape?.column !== true) return argument?.shape?.type
    this.problems.push(columnProblem(argument.ast))
    return undefined
  }

  /** The type of each value of an argument that must be a column. */
  column(index: number): ValueType | undefined {
    const shape = this.args[index]?.shape
    if (shape === undefined || shape.column) return shape?.type
    return this.refuse(index, "a column")
  }

  /** The type of an argument that may be one value or a column. */
  either(index: number): ValueType | undefined {
    return this.args[index]?.shape?.type
  }

  /** An argument that must be one number of any dimension, and no point on a scale. */
  quantity(index: number, type = this.one(index)): ValueType | undefined {
    if (type === undefined) return undefined
    if (isPoint(type)) return this.refuse(index, "a difference, not a point on a scale")
    return dimensionOf(type) === undefined ? this.refuse(index, "a number") : type
  }

  /** An argument that must be one plain number. */
  plain(index: number): ValueType | undefined {
    const type = this.one(index)
    return type === undefined || isPlainNumber(type) ? type : this.refuse(index, "a plain number")
  }

  /** An argument that must be one yes or no. */
  yesNo(index: number): ValueType | undefined {
    const type = this.one(index)
    return type === undefined || type.kind === "yes_no" ? type : this.refuse(index, "a yes or no")
  }

  /** The type that arguments share. Those that are undefined have been dealt with. */
  alike(types: readonly (ValueType | undefined)[]): ValueType | undefined {
    let common: ValueType | undefined
    for (const [index, type] of types.entries()) {
      if (type === undefined) continue
      const both = common === undefined ? type : agree(common, type)
      if (both === undefined) return this.mismatch(common ?? type, type, this.args[index]?.ast.span)
      common = both
    }
    return common
  }

  /** Columns that are read row by row together must come from one table. */
  sameTable(first: number, ...others: readonly number[]): void {
    const table = tableOf(this.args[first]?.ast)
    for (const index of others) {
      const argument = this.args[index]
      if (argument?.shape?.column && tableOf(argument.ast) !== table)
        this.refuse(index, "a column of the same table")
    }
  }

  refuse(index: number, accepted: string): undefined {
    const argument = this.args[index]
    if (argument?.shape === undefined) return undefined
    this.problems.push({
      code: "wrong_argument",
      at: { span: argument.ast.span },
      function: this.doing,
      position: index + 1,
      given: argument.shape.type,
      accepted,
    })
    return undefined
  }

  mismatch(left: ValueType, right: ValueType, span: Span = this.span): undefined {
    this.problems.push({ code: "dimension_mismatch", at: { span }, doing: this.doing, left, right })
    return undefined
  }
}

export function columnProblem(ast: Ast): Problem {
  const inner = ungroup(ast)
  return {
    code: "column_where_one_value",
    at: { span: ast.span },
    name: inner.type === "name" ? inner.name : "",
  }
}

/** A number that is written out, with its sign. */
export function writtenNumber(ast: Ast | undefined): Decimal | undefined {
  if (ast === undefined) return undefined
  const inner = ungroup(ast)
  if (inner.type === "number") return new Decimal(inner.text)
  if (inner.type !== "prefix") return undefined
  const operand = writtenNumber(inner.operand)
  return inner.operator === "-" ? operand?.negated() : operand
}

/** A text that is written out. */
export function writtenText(ast: Ast | undefined): string | undefined {
  const inner = ast && ungroup(ast)
  return inner?.type === "text" ? inner.text : undefined
}

function tableOf(ast: Ast | undefined): string | undefined {
  const inner = ast && ungroup(ast)
  return inner?.type === "name" ? inner.name.split(".")[0] : undefined
}
