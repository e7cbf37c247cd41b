import type { GraphValue } from "../../graph/graph.ts"
import { Decimal } from "../../quantity/decimal.ts"
import { type Application, writtenNumber } from "../application.ts"
import { type Cell, errorCell, isColumn, isError, type Operand, sameCell } from "../cell.ts"
import { type DoubleOperand, FAULTS, isDoubles } from "../double.ts"
import { dimensionOf, PLAIN_NUMBER, type ValueType } from "../value-type.ts"
import { findDouble } from "./find-double.ts"
import type { FunctionRule } from "./function-rule.ts"

/** Functions that find a row, or a value in a row. */
export const LOOK_UP: readonly FunctionRule[] = [
  {
    name: "INDEX",
    least: 2,
    most: 2,
    typeOf: (application) => {
      application.plain(1)
      return application.column(0)
    },
    evaluate: ([column, position]) => {
      if (!(position instanceof Decimal)) return errorCell("text_for_number")
      return cellsOf(column)[position.floor().toNumber() - 1] ?? errorCell("not_found")
    },
    inDoubles: ([column, position]) =>
      typeof position === "number"
        ? (doublesOf(column)[Math.floor(position) - 1] ?? FAULTS.not_found)
        : FAULTS.text_for_number,
    says: "Gives the value in the row of that number, counted from 1.",
    example: { formula: "INDEX(parts.item; 2)", gives: "plate" },
  },
  {
    name: "MATCH",
    least: 2,
    most: 3,
    typeOf: (application) => {
      const mode = application.args.length > 2 ? writtenNumber(application.args[2]?.ast)?.toNumber() : 1
      if (application.plain(2) !== undefined && (mode === undefined || ![-1, 0, 1].includes(mode))) {
        application.refuse(2, "0, 1 or -1, written out")
      }
      judgeSearch(application, 1, mode === 0)
      return PLAIN_NUMBER
    },
    evaluate: ([wanted, column, mode]) => {
      if (wanted === undefined || isColumn(wanted)) return errorCell("text_for_number")
      const row = find(wanted, cellsOf(column), mode instanceof Decimal ? mode.toNumber() : 1)
      return row < 0 ? errorCell("not_found") : new Decimal(row + 1)
    },
    inDoubles: ([wanted, column, mode = 1]) => {
      if (wanted === undefined || isDoubles(wanted)) return FAULTS.text_for_number
      const row = findDouble(wanted, doublesOf(column), Number(mode))
      return row < 0 ? FAULTS.not_found : row + 1
    },
    says:
      "Gives the number of the row that holds a value: with 0 the first that equals it; with 1 the last that " +
      "is not above it, in a rising column; with -1 the last that is not below it, in a falling one.",
    example: { formula: 'MATCH("plate"; parts.item; 0)', gives: 2 },
  },
  {
    name: "LOOKUP",
    least: 3,
    most: 3,
    typeOf: (application) => {
      judgeSearch(application, 1, false)
      application.sameTable(1, 2)
      return application.column(2)
    },
    evaluate: ([wanted, column, results]) => {
      if (wanted === undefined || isColumn(wanted)) return errorCell("text_for_number")
      return cellsOf(results)[find(wanted, cellsOf(column), 1)] ?? errorCell("not_found")
    },
    inDoubles: ([wanted, column, results]) => {
      if (wanted === undefined || isDoubles(wanted)) return FAULTS.text_for_number
      return doublesOf(results)[findDouble(wanted, doublesOf(column), 1)] ?? FAULTS.not_found
    },
    says: "Finds the last row of a rising column that is not above a value, and gives another column's value.",
    example: { formula: "LOOKUP(5; parts.size; parts.count)", gives: 20 },
  },
  {
    name: "ROW",
    least: 0,
    most: 0,
    typeOf: (application) => {
      if (!application.inRow) {
        application.problems.push({
          code: "unexpected",
          at: { span: application.span },
          found: "ROW()",
          expected: "a value that needs no row",
        })
      }
      return PLAIN_NUMBER
    },
    evaluate: (_, row) => new Decimal(row),
    inDoubles: (_, row) => row,
    says: "Gives the number of the row that is being worked out, counted from 1.",
    example: { formula: "ROW()", gives: 2 },
  },
]

/** The value at 0 must be like those of the column at `column`; only numbers are held to be in order. */
function judgeSearch(application: Application, column: number, exact: boolean): void {
  const wanted = application.one(0)
  const searched: ValueType | undefined = application.column(column)
  const common = application.alike([wanted, searched])
  if (!exact && common !== undefined && dimensionOf(common) === undefined) {
    application.refuse(column, "a column of numbers in order; texts are matched with MATCH and 0")
  }
}

function cellsOf(operand: Operand | undefined): readonly Cell[] {
  return operand !== undefined && isColumn(operand) ? operand : []
}

/** The row, from 0, or −1. In order: the last row up to which every row is still on the near side. */
function find(wanted: Cell, cells: readonly Cell[], mode: number): number {
  if (mode === 0) return cells.findIndex((cell) => sameCell(cell, wanted))
  if (!(wanted instanceof Decimal)) return -1
  const beyond = cells.findIndex(
    (cell) => isError(cell) || (cell instanceof Decimal && cell.comparedTo(wanted) * mode > 0),
  )
  return beyond < 0 ? cells.length - 1 : beyond - 1
}

function doublesOf(operand: DoubleOperand | undefined): readonly GraphValue[] {
  return isDoubles(operand) ? operand : []
}
