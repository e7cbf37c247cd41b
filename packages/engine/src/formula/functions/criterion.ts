import type { GraphValue } from "../../graph/graph.ts"
import { Decimal } from "../../quantity/decimal.ts"
import { type Application, writtenText } from "../application.ts"
import { type Cell, sameCell } from "../cell.ts"
import { sameDouble } from "../double.ts"
import { infixRule } from "../operators.ts"
import { agree, isPlainNumber, isPoint } from "../value-type.ts"

const COMPARISON = /^(<=|>=|<>|=|<|>)?\s*(.*?)\s*$/s
const WRITTEN_NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i

/** Judges the criterion at `index` against the column at `column`. */
export function judgeCriterion(application: Application, column: number, index: number): void {
  const wanted = application.column(column)
  const given = application.one(index)
  if (wanted === undefined || given === undefined) return
  if (given.kind !== "text" || wanted.kind === "text") {
    if (agree(wanted, given) === undefined) {
      application.mismatch(wanted, given, application.args[index]?.ast.span)
    }
    return
  }
  const written = writtenText(application.args[index]?.ast)
  const number = written === undefined ? undefined : readCriterion(written).number
  if (number === undefined || wanted.kind === "yes_no") {
    application.refuse(index, 'a value like those in the column, or a text such as ">0"')
  } else if (isPoint(wanted) || !(number.isZero() || isPlainNumber(wanted))) {
    application.refuse(index, 'a value like those in the column: a number in quotes has no unit, except ">0"')
  }
}

/** Says which values meet a criterion: a value to equal, or a text that begins with a comparison. */
export function meets(criterion: Cell): (cell: Cell) => boolean {
  if (typeof criterion !== "string") return (cell) => sameCell(cell, criterion)
  const { comparison, text, number } = readCriterion(criterion)
  const holds = infixRule(comparison)?.evaluate
  return (cell) => {
    const other: Cell = typeof cell === "string" || number === undefined ? text : number
    return holds?.([cell, other]) === true
  }
}

/** The same in doubles. */
export function meetsInDoubles(criterion: GraphValue): (value: GraphValue) => boolean {
  if (typeof criterion !== "string") return (value) => sameDouble(value, criterion)
  const { comparison, text, number } = readCriterion(criterion)
  const holds = infixRule(comparison)?.inDoubles
  const written = number?.toNumber()
  return (value) => {
    const other: GraphValue = typeof value === "string" || written === undefined ? text : written
    return holds?.([value, other], 0) === true
  }
}

function readCriterion(text: string): {
  readonly comparison: string
  readonly text: string
  readonly number: Decimal | undefined
} {
  const [, comparison = "=", rest = ""] = COMPARISON.exec(text) ?? []
  return { comparison, text: rest, number: WRITTEN_NUMBER.test(rest) ? new Decimal(rest) : undefined }
}
