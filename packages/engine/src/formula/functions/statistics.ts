import { Decimal } from "../../quantity/decimal.ts"
import { multiplyDimensions, PLAIN } from "../../quantity/dimension.ts"
import type { Application } from "../application.ts"
import { type Cell, type ErrorCell, errorCell, isColumn, isError, numberCell, type Operand } from "../cell.ts"
import {
  type DoubleOperand,
  FAULTS,
  type Fault,
  type InDoubles,
  isDoubles,
  isFault,
  sound,
} from "../double.ts"
import { dimensionOf, isPoint, numberType, PLAIN_NUMBER, type ValueType } from "../value-type.ts"
import { judgeCriterion, meets, meetsInDoubles } from "./criterion.ts"
import { type FunctionRule, MANY } from "./function-rule.ts"

/** How numbers are put together, one after the other. */
interface Gathering {
  readonly start: number
  readonly put: (gathered: number, number: number) => number
}

const ADDED: Gathering = { start: 0, put: (sum, number) => sum + number }

/** Functions of many numbers: single values, whole columns, or both. */
export const STATISTICS: readonly FunctionRule[] = [
  {
    name: "SUM",
    least: 1,
    most: MANY,
    typeOf: typeOfTotal,
    takesErrors: true,
    evaluate: onAllNumbers((numbers) => total(numbers)),
    inDoubles: onAllDoubles(ADDED, (sum) => sum),
    says: "Adds all the numbers.",
    example: { formula: "SUM(parts.count)", gives: 35 },
  },
  {
    name: "MIN",
    least: 1,
    most: MANY,
    typeOf: typeOfOneOfThem,
    takesErrors: true,
    evaluate: onAllNumbers((numbers) => most(numbers, (a, b) => a.lessThan(b))),
    inDoubles: onAllDoubles({ start: Infinity, put: Math.min }, (least, count) => (count > 0 ? least : 0)),
    says: "Gives the smallest of the numbers, 0 when there are none.",
    example: { formula: "MIN(parts.size; 3)", gives: 2 },
  },
  {
    name: "MAX",
    least: 1,
    most: MANY,
    typeOf: typeOfOneOfThem,
    takesErrors: true,
    evaluate: onAllNumbers((numbers) => most(numbers, (a, b) => a.greaterThan(b))),
    inDoubles: onAllDoubles({ start: -Infinity, put: Math.max }, (most, count) => (count > 0 ? most : 0)),
    says: "Gives the greatest of the numbers, 0 when there are none.",
    example: { formula: "MAX(parts.size; 3)", gives: 8 },
  },
  {
    name: "AVERAGE",
    least: 1,
    most: MANY,
    typeOf: typeOfTotal,
    takesErrors: true,
    evaluate: onAllNumbers((numbers) =>
      numbers.length > 0 ? total(numbers).div(numbers.length) : errorCell("division_by_zero"),
    ),
    inDoubles: onAllDoubles(ADDED, (sum, count) => (count > 0 ? sum / count : FAULTS.division_by_zero)),
    says: "Gives the sum of the numbers divided by how many there are.",
    example: { formula: "AVERAGE(2; 4; 9)", gives: 5 },
  },
  {
    name: "COUNT",
    least: 1,
    most: MANY,
    typeOf: (application) => {
      numbersOnly(application)
      return PLAIN_NUMBER
    },
    takesErrors: true,
    evaluate: (operands) => new Decimal(operands.flat().filter((cell) => cell instanceof Decimal).length),
    inDoubles: (operands) => operands.flat().filter((cell) => typeof cell === "number").length,
    says: "Counts the numbers; a value that is missing is not counted.",
    example: { formula: "COUNT(parts.size)", gives: 3 },
  },
  {
    name: "COUNTIF",
    least: 2,
    most: 2,
    typeOf: (application) => {
      judgeCriterion(application, 0, 1)
      return PLAIN_NUMBER
    },
    evaluate: ([column, criterion]) => {
      const met = rowsMeeting(column, criterion)
      return "error" in met ? met : new Decimal(met.filter(Boolean).length)
    },
    inDoubles: ([column, criterion]) => {
      const met = doublesMeeting(column, criterion)
      return isFault(met) ? met : met.filter(Boolean).length
    },
    says: "Counts the rows of a column that equal a value or meet a comparison.",
    example: { formula: 'COUNTIF(parts.item; "bar")', gives: 2 },
  },
  {
    name: "SUMIF",
    least: 2,
    most: 3,
    typeOf: (application) => {
      judgeCriterion(application, 0, 1)
      if (application.args.length < 3) return application.quantity(0, application.either(0))
      application.sameTable(0, 2)
      return application.quantity(2, application.column(2))
    },
    evaluate: ([column, criterion, summed = column]) => {
      const met = rowsMeeting(column, criterion)
      if ("error" in met) return met
      const values = summed !== undefined && isColumn(summed) ? summed : []
      return values.find(isError) ?? onAllNumbers(total)([values.filter((_, row) => met[row])])
    },
    inDoubles: ([column, criterion, summed = column]) => {
      const met = doublesMeeting(column, criterion)
      if (isFault(met)) return met
      const values = isDoubles(summed) ? summed : []
      const failed = values.find(isFault)
      if (failed !== undefined) return failed
      return sound(
        values.reduce<number>(
          (sum, value, row) => (met[row] && typeof value === "number" ? sum + value : sum),
          0,
        ),
      )
    },
    says: "Adds one column over the rows in which another equals a value or meets a comparison.",
    example: { formula: 'SUMIF(parts.item; "bar"; parts.count)', gives: 15 },
  },
  {
    name: "SUMPRODUCT",
    least: 1,
    most: MANY,
    typeOf: (application) => {
      let product = PLAIN
      for (const index of application.args.keys()) {
        const type = application.quantity(index, application.column(index))
        const dimension = type && dimensionOf(type)
        if (dimension === undefined) return undefined
        product = multiplyDimensions(product, dimension)
      }
      application.sameTable(0, ...application.args.keys())
      return numberType(product)
    },
    evaluate: (operands) => {
      const columns = operands.filter(isColumn)
      const failed = columns.flat().find(isError)
      if (failed !== undefined) return failed
      const [first = []] = columns
      const products = first.map((_, row) =>
        columns.reduce((product, column) => product.times(numberOr0(column[row])), new Decimal(1)),
      )
      return numberCell(total(products))
    },
    inDoubles: (operands) => {
      const columns = operands.filter(isDoubles)
      for (const column of columns) {
        const failed = column.find(isFault)
        if (failed !== undefined) return failed
      }
      let sum = 0
      for (let row = 0; row < (columns[0]?.length ?? 0); row++) {
        let product = 1
        for (const column of columns) {
          const value = column[row]
          product *= typeof value === "number" ? value : 0
        }
        sum += product
      }
      return sound(sum)
    },
    says: "Multiplies columns row by row and adds the products.",
    example: { formula: "SUMPRODUCT(parts.size; parts.count)", gives: 140 },
  },
]

function numbersOnly(application: Application): readonly (ValueType | undefined)[] {
  return application.args.map((_, index) => {
    const type = application.either(index)
    return type === undefined || dimensionOf(type) !== undefined ? type : application.refuse(index, "numbers")
  })
}

function typeOfOneOfThem(application: Application): ValueType | undefined {
  return application.alike(numbersOnly(application))
}

/** Points on a scale have no sum. */
function typeOfTotal(application: Application): ValueType | undefined {
  const type = typeOfOneOfThem(application)
  return type !== undefined && isPoint(type)
    ? application.refuse(0, "differences, not points on a scale")
    : type
}

/** Gathers numbers from values and columns in order; what is no number within a column is passed over. */
function onAllNumbers(
  work: (numbers: readonly Decimal[]) => Decimal | ErrorCell,
): (operands: readonly Operand[]) => Cell {
  return (operands) => {
    const numbers: Decimal[] = []
    for (const operand of operands) {
      for (const cell of isColumn(operand) ? operand : [operand]) {
        if (isError(cell)) return cell
        if (cell instanceof Decimal) numbers.push(cell)
        else if (!isColumn(operand)) return errorCell("text_for_number")
      }
    }
    const result = work(numbers)
    return isError(result) ? result : numberCell(result)
  }
}

function total(numbers: readonly Decimal[]): Decimal {
  return numbers.reduce((sum, number) => sum.plus(number), new Decimal(0))
}

function most(numbers: readonly Decimal[], beats: (a: Decimal, b: Decimal) => boolean): Decimal {
  const [first = new Decimal(0), ...others] = numbers
  return others.reduce((best, number) => (beats(number, best) ? number : best), first)
}

function numberOr0(cell: Cell | undefined): Decimal {
  return cell instanceof Decimal ? cell : new Decimal(0)
}

/** For each row whether it meets a criterion. A row that has no value could meet it or not: its error wins. */
function rowsMeeting(
  column: Operand | undefined,
  criterion: Operand | undefined,
): readonly boolean[] | ErrorCell {
  if (column === undefined || !isColumn(column) || criterion === undefined || isColumn(criterion)) {
    return errorCell("text_for_number")
  }
  const failed = column.find(isError)
  if (failed !== undefined) return failed
  return column.map(meets(criterion))
}

/** The same as `onAllNumbers`. */
function onAllDoubles(
  { start, put }: Gathering,
  work: (gathered: number, count: number) => number | Fault,
): InDoubles {
  return (operands) => {
    let gathered = start
    let count = 0
    for (const operand of operands) {
      if (typeof operand === "number") {
        gathered = put(gathered, operand)
        count++
      } else if (isDoubles(operand)) {
        let within = start
        for (const value of operand) {
          if (typeof value === "number") {
            within = put(within, value)
            count++
          } else if (isFault(value)) return value
        }
        gathered = put(gathered, within)
      } else return isFault(operand) ? operand : FAULTS.text_for_number
    }
    return sound(work(gathered, count))
  }
}

function doublesMeeting(
  column: DoubleOperand | undefined,
  criterion: DoubleOperand | undefined,
): readonly boolean[] | Fault {
  if (!isDoubles(column) || criterion === undefined || isDoubles(criterion)) return FAULTS.text_for_number
  return column.find(isFault) ?? column.map(meetsInDoubles(criterion))
}
