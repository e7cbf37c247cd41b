import type { Ast } from "../formula/ast.ts"
import { printFormula } from "../formula/print.ts"

/** Where the cells of a workbook that is written out are: references as OpenFormula writes them, `[.$D$7]`. */
export interface CellPlaces {
  /** An entry, a part of a check, or a whole column by its full name. */
  of(id: string): string
  /** This row's value of a column of the same table, and this row's number. */
  inRow?: { readonly column: (name: string) => string; readonly number: string }
}

/**
 * A formula of the graph as OpenFormula text (ISO/IEC 26300-2), with `of:=` before it. The language of the formulas is
 * a subset of OpenFormula, so little is rewritten:
 *
 * - COUNTIF and SUMIF add a sum of nothing, so that a fault in the column is a fault of the count;
 * - CEILING and FLOOR become INT: the standard leaves them undefined where value and step differ in sign;
 * - LOOKUP becomes INDEX with MATCH, and `ROW()` the cell that holds the row's number.
 */
export function openFormula(resolved: Ast, places: CellPlaces): string {
  return `of:=${printFormula(rewritten(resolved, places))}`
}

function rewritten(ast: Ast, places: CellPlaces): Ast {
  const inner = (child: Ast): Ast => rewritten(child, places)
  switch (ast.type) {
    case "number":
    case "text":
      return ast
    case "name":
      return { ...ast, name: reference(ast.name, places) }
    case "prefix":
    case "percent":
      return { ...ast, operand: inner(ast.operand) }
    case "infix":
      return { ...ast, left: inner(ast.left), right: inner(ast.right) }
    case "group":
      return { ...ast, inner: inner(ast.inner) }
    case "call":
      return rewrittenCall(ast, ast.args.map(inner), places)
  }
}

function reference(name: string, places: CellPlaces): string {
  if (!name.startsWith("@")) return places.of(name)
  if (places.inRow === undefined) throw new RangeError(`no row to read ${name} from`)
  return places.inRow.column(name.slice(1))
}

type Call = Ast & { readonly type: "call" }

function rewrittenCall(call: Call, args: readonly Ast[], places: CellPlaces): Ast {
  const { span } = call
  const called = (name: string, ...given: readonly Ast[]): Ast => ({
    type: "call",
    function: name,
    args: given,
    span,
  })
  const number = (text: string): Ast => ({ type: "number", text, span })
  const infix = (operator: "+" | "*" | "/", left: Ast, right: Ast): Ast => ({
    type: "infix",
    operator,
    left,
    right,
    span,
  })
  const minus = (operand: Ast): Ast => ({ type: "prefix", operator: "-", operand, span })
  const faultsIn = (column: Ast): Ast => infix("*", number("0"), called("SUM", column))
  const grouped = (ast: Ast): Ast => ({ type: "group", inner: ast, span })
  const [first, second, third] = args
  const name = call.function.toUpperCase()
  if (name === "ROW") {
    if (places.inRow === undefined) throw new RangeError("ROW() outside a row")
    return { type: "name", name: places.inRow.number, span }
  }
  if (first === undefined || second === undefined) return called(name, ...args)
  switch (name) {
    case "COUNTIF":
    case "SUMIF": {
      const counted = infix("+", called(name, ...args), faultsIn(first))
      return grouped(third === undefined ? counted : infix("+", counted, faultsIn(third)))
    }
    case "FLOOR":
      return grouped(infix("*", called("INT", infix("/", first, second)), second))
    case "CEILING":
      return grouped(infix("*", minus(called("INT", infix("/", minus(first), second))), second))
    case "LOOKUP":
      return third === undefined
        ? called(name, ...args)
        : called("INDEX", third, called("MATCH", first, second, number("1")))
    default:
      return called(name, ...args)
  }
}
