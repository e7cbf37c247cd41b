import {
  type CellValue,
  DetailedCellError,
  HyperFormula,
  type RawCellContent,
  type SimpleCellAddress,
} from "hyperformula"
import type { Ast } from "../formula/ast.ts"
import { namesIn } from "../formula/names.ts"
import { Decimal } from "../quantity/decimal.ts"
import type {
  ColumnNode,
  Graph,
  GraphBuilder,
  GraphChange,
  GraphError,
  GraphValue,
  NodeContent,
} from "./graph.ts"

/*
 * The only file that knows HyperFormula. Measured on 3.5.0, with `smartRounding` off:
 *
 * - Names that look like its cell addresses are refused (`joist16`), so ours never reach it: each scalar is
 *   one cell of one sheet, each table a sheet of its own with the row's number in the first column.
 * - Text is guessed at (`1/2` becomes a date), so constants that are text carry its apostrophe.
 * - INT drops the fraction instead of rounding down; LOOKUP does not exist; COUNTIF passes over errors.
 * - A range has a fixed length, and changing it means reading every formula that mentions it again: ranges leave room
 *   for growth, and the empty cells past the last row count for nothing in any function that we let through.
 * - `batch` within `batch` throws and has already resumed evaluation: there is one, here.
 * - It finds cycles along branches that are not taken, and IFERROR hides them: they are found before.
 */

const LICENCE_KEY = "gpl-v3"
const SCALARS = "Scalars"

const ERROR_FORMULAS: Readonly<Record<GraphError, string>> = {
  division_by_zero: "=1/0",
  not_a_number: "=SQRT(-1)",
  not_found: "=NA()",
  text_for_number: '="a"+1',
  no_value: "=#REF!",
}

const ERROR_NAMES: Readonly<Record<string, GraphError>> = {
  DIV_BY_ZERO: "division_by_zero",
  NUM: "not_a_number",
  NA: "not_found",
  VALUE: "text_for_number",
  // Nothing that is referred to is ever removed, so this error is free to mean a value that is missing.
  REF: "no_value",
}

interface Table {
  readonly id: string
  readonly sheet: string
  /** The scalar sheet's row that holds the number of rows. */
  readonly countRow: number
  rows: number
  /** How many rows the ranges over this table span; the cells past the last row are empty. */
  capacity: number
  readonly columns: readonly Column[]
}

interface Column {
  readonly name: string
  /** 0-based; 0 holds the row's number. */
  readonly position: number
  readonly formula?: Ast
  values: readonly GraphValue[]
}

/** Builds the fast graph: doubles, recalculating only what depends on a change. */
export const buildHyperFormulaGraph: GraphBuilder = (scalars, tables) => {
  const scalarRows = new Map(scalars.map((node, row) => [node.id, row]))
  const contents = new Map(scalars.map((node) => [node.id, node.content]))
  const tableList: readonly Table[] = tables.map((node, index) => ({
    id: node.id,
    sheet: `Table_${index}`,
    countRow: scalars.length + index,
    rows: node.rows,
    capacity: capacityFor(node.rows),
    columns: node.columns.map((column, position) => toColumn(column, position + 1)),
  }))
  const tablesById = new Map(tableList.map((table) => [table.id, table]))
  const print = printer(scalarRows, tablesById)
  const users = usersOfTables(scalars, tableList)

  const scalarCell = (content: NodeContent): RawCellContent =>
    "formula" in content ? `=${print(content.formula)}` : constant(content.value)
  const columnCell = (table: Table, column: Column, row: number): RawCellContent =>
    column.formula === undefined
      ? constant(column.values[row] ?? { error: "no_value" })
      : `=${print(column.formula, table, row)}`
  const rowCells = (table: Table, row: number): RawCellContent[] => [
    row + 1,
    ...table.columns.map((column) => columnCell(table, column, row)),
  ]
  const range = (from: number, to: number): readonly number[] =>
    Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index)

  const engine = HyperFormula.buildFromSheets(
    Object.fromEntries([
      [
        SCALARS,
        [...scalars.map((node) => [scalarCell(node.content)]), ...tableList.map((table) => [table.rows])],
      ],
      ...tableList.map(
        (table) => [table.sheet, range(0, table.rows).map((row) => rowCells(table, row))] as const,
      ),
    ]),
    // Its own list of changes to undo would keep every old cell alive; ours is a list of what was typed.
    { licenseKey: LICENCE_KEY, smartRounding: false, useWildcards: false, undoLimit: 0 },
  )
  const sheetIds = new Map(
    [SCALARS, ...tableList.map((table) => table.sheet)].map((name) => [name, engine.getSheetId(name) ?? -1]),
  )
  const sheetId = (name: string): number => sheetIds.get(name) ?? -1
  const scalarSheet = sheetId(SCALARS)
  const tablesBySheet = new Map(tableList.map((table) => [sheetId(table.sheet), table]))

  const tableOf = (id: string): Table => {
    const table = tablesById.get(id)
    if (table === undefined) throw new RangeError(`the graph has no table ${id}`)
    return table
  }
  const setScalar = (id: string): void => {
    const row = scalarRows.get(id)
    const content = contents.get(id)
    if (row === undefined || content === undefined) throw new RangeError(`the graph has no scalar ${id}`)
    engine.setCellContents({ sheet: scalarSheet, row, col: 0 }, scalarCell(content))
  }
  /** Writes one column again, all its rows. */
  const setColumn = (table: Table, column: Column): void => {
    if (table.rows === 0) return
    const cells = range(0, table.rows).map((row) => [columnCell(table, column, row)])
    engine.setCellContents({ sheet: sheetId(table.sheet), row: 0, col: column.position }, cells)
  }
  const setRowCount = (table: Table, rows: number): void => {
    const sheet = sheetId(table.sheet)
    const before = table.rows
    table.rows = rows
    engine.setCellContents({ sheet: scalarSheet, row: table.countRow, col: 0 }, rows)
    if (rows > before) {
      engine.setCellContents(
        { sheet, row: before, col: 0 },
        range(before, rows).map((row) => rowCells(table, row)),
      )
    } else if (rows < before) {
      const empty = new Array<RawCellContent>(table.columns.length + 1).fill(null)
      engine.setCellContents(
        { sheet, row: rows, col: 0 },
        new Array<RawCellContent[]>(before - rows).fill(empty),
      )
    }
    if (rows <= table.capacity) return
    // Past the room that was left: whoever mentions a whole column must be told its new range.
    table.capacity = capacityFor(rows)
    for (const id of users.scalars.get(table.id) ?? []) setScalar(id)
    for (const [user, column] of users.columns.get(table.id) ?? []) setColumn(user, column)
  }
  const nodeAt = ({ sheet, row, col }: SimpleCellAddress): string | undefined => {
    if (sheet === scalarSheet) return scalars[row]?.id
    const table = tablesBySheet.get(sheet)
    const column = table?.columns[col - 1]
    return table === undefined || column === undefined ? undefined : `${table.id}.${column.name}`
  }

  return {
    apply(change: GraphChange): ReadonlySet<string> {
      const touched = new Set<string>()
      const changes = engine.batch(() => {
        for (const [id, content] of change.scalars ?? []) {
          contents.set(id, content)
          if ("formula" in content)
            for (const table of tablesIn(content.formula)) users.scalars.get(table)?.add(id)
          setScalar(id)
        }
        for (const [id, next] of change.tables ?? []) {
          const table = tableOf(id)
          for (const column of table.columns) column.values = next.values[column.name] ?? column.values
          if (next.rows !== table.rows) {
            for (const column of table.columns) touched.add(`${id}.${column.name}`)
            setRowCount(table, next.rows)
          }
          for (const column of table.columns) {
            if (next.values[column.name] !== undefined) setColumn(table, column)
          }
        }
      })
      for (const { address } of changes.filter((one) => "address" in one)) {
        const id = nodeAt(address)
        if (id !== undefined) touched.add(id)
      }
      return touched
    },

    scalar(id: string): GraphValue {
      const row = scalarRows.get(id)
      if (row === undefined) throw new RangeError(`the graph has no scalar ${id}`)
      return toGraphValue(engine.getCellValue({ sheet: scalarSheet, row, col: 0 }))
    },

    column(tableId: string, name: string): readonly GraphValue[] {
      const table = tableOf(tableId)
      const column = table.columns.find((candidate) => candidate.name === name)
      if (column === undefined) throw new RangeError(`the graph has no column ${tableId}.${name}`)
      const sheet = sheetId(table.sheet)
      return range(0, table.rows).map((row) =>
        toGraphValue(engine.getCellValue({ sheet, row, col: column.position })),
      )
    },
  } satisfies Graph
}

/** Room for growth, so that one row more rarely moves a range. */
function capacityFor(rows: number): number {
  return 2 ** Math.ceil(Math.log2(Math.max(16, rows + 1)))
}

function toColumn(node: ColumnNode, position: number): Column {
  return "formula" in node.content
    ? { name: node.name, position, formula: node.content.formula, values: [] }
    : { name: node.name, position, values: node.content.values }
}

interface Users {
  readonly scalars: ReadonlyMap<string, Set<string>>
  readonly columns: ReadonlyMap<string, readonly (readonly [Table, Column])[]>
}

/** Which scalars and columns mention whole columns of a table. */
function usersOfTables(scalars: Parameters<GraphBuilder>[0], tables: readonly Table[]): Users {
  const ofScalars = new Map<string, Set<string>>(tables.map((table) => [table.id, new Set()]))
  const ofColumns = new Map<string, [Table, Column][]>(tables.map((table) => [table.id, []]))
  for (const { id, content } of scalars) {
    if ("formula" in content) for (const table of tablesIn(content.formula)) ofScalars.get(table)?.add(id)
  }
  for (const table of tables) {
    for (const column of table.columns) {
      if (column.formula === undefined) continue
      for (const used of tablesIn(column.formula)) ofColumns.get(used)?.push([table, column])
    }
  }
  return { scalars: ofScalars, columns: ofColumns }
}

function tablesIn(ast: Ast): ReadonlySet<string> {
  const tables = namesIn(ast).map(({ name }) => splitColumn(name)?.table)
  return new Set(tables.filter((table) => table !== undefined))
}

function splitColumn(name: string): { readonly table: string; readonly column: string } | undefined {
  const dot = name.indexOf(".")
  return dot < 0 ? undefined : { table: name.slice(0, dot), column: name.slice(dot + 1) }
}

/** How a whole column is written for HyperFormula. */
interface WholeColumn {
  readonly range: string
  /** The range of the table's row numbers, as long as `range`. */
  readonly rowNumbers: string
}

type Printer = (ast: Ast, table?: Table, row?: number) => string

function printer(scalarRows: ReadonlyMap<string, number>, tables: ReadonlyMap<string, Table>): Printer {
  const wholeColumn = (name: string): WholeColumn | undefined => {
    const parts = splitColumn(name)
    const table = parts && tables.get(parts.table)
    const column = table?.columns.find((candidate) => candidate.name === parts?.column)
    if (table === undefined || column === undefined) return undefined
    const rangeOf = (position: number): string =>
      `${table.sheet}!$${columnLetters(position)}$1:$${columnLetters(position)}$${table.capacity}`
    return {
      range: rangeOf(column.position),
      rowNumbers: rangeOf(0),
    }
  }

  const print: Printer = (ast, table, row) => {
    const inner = (child: Ast): string => print(child, table, row)
    switch (ast.type) {
      case "number":
        return new Decimal(ast.text).toFixed()
      case "text":
        return textLiteral(ast.text)
      case "name": {
        if (ast.name.startsWith("@")) {
          const column = table?.columns.find((candidate) => candidate.name === ast.name.slice(1))
          if (column === undefined || row === undefined)
            throw new RangeError(`no row to read ${ast.name} from`)
          return `$${columnLetters(column.position)}${row + 1}`
        }
        const scalar = scalarRows.get(ast.name)
        if (scalar !== undefined) return `${SCALARS}!$A$${scalar + 1}`
        const column = wholeColumn(ast.name)
        if (column === undefined) throw new RangeError(`the graph has no node ${ast.name}`)
        return column.range
      }
      case "call":
        return printCall(ast.function.toUpperCase(), ast.args, inner, wholeColumn, row)
      case "prefix":
        return `(${ast.operator}${inner(ast.operand)})`
      case "percent":
        return `(${inner(ast.operand)}/100)`
      case "infix":
        return `(${inner(ast.left)}${ast.operator}${inner(ast.right)})`
      case "group":
        return inner(ast.inner)
    }
  }
  return print
}

function printCall(
  name: string,
  args: readonly Ast[],
  inner: (ast: Ast) => string,
  wholeColumn: (name: string) => WholeColumn | undefined,
  row: number | undefined,
): string {
  const printed = args.map(inner)
  const [first = "", second = "", third = ""] = printed
  const columnOf = (arg: Ast | undefined): WholeColumn => {
    const column = arg?.type === "name" ? wholeColumn(arg.name) : undefined
    if (column === undefined) throw new RangeError(`${name} of something that is not a column`)
    return column
  }
  switch (name) {
    case "ROW":
      if (row === undefined) throw new RangeError("ROW() outside a row")
      return `$A${row + 1}`
    case "INT":
      return `FLOOR(${first},1)`
    case "INDEX": {
      // By the row's number, so that a row past the last is not found rather than empty.
      const column = columnOf(args[0])
      return `INDEX(${first},MATCH(FLOOR(${second},1),${column.rowNumbers},0),1)`
    }
    case "COUNTIF":
      // By the row's number, or the empty cells past the last row would count as unequal to anything.
      return `(COUNTIFS(${first},${second},${columnOf(args[0]).rowNumbers},">0")${faultsIn(first)})`
    case "SUMIF":
      return `(SUMIF(${printed.join(",")})${faultsIn(first)}${third === "" ? "" : faultsIn(third)})`
    case "LOOKUP":
      return `INDEX(${third},MATCH(${first},${second},1),1)`
    default:
      return `${name}(${printed.join(",")})`
  }
}

/** COUNTIF and SUMIF pass over errors; a count that leaves a faulty row out would be a wrong count. */
function faultsIn(range: string): string {
  return `+0*SUM(${range})`
}

/** Its text literals know no way to write a quotation mark, and read a backslash as one of their own. */
function textLiteral(text: string): string {
  const parts = text.split(/(["\\])/)
  const printed = parts
    .filter((part) => part !== "")
    .map((part) => (part === '"' ? "CHAR(34)" : part === "\\" ? "CHAR(92)" : `"${part}"`))
  return printed.length === 0 ? '""' : printed.length === 1 ? (printed[0] ?? "") : `(${printed.join("&")})`
}

function columnLetters(position: number): string {
  let letters = ""
  for (let rest = position + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters
  }
  return letters
}

function constant(value: GraphValue): RawCellContent {
  if (typeof value === "string") return `'${value}`
  if (typeof value === "object") return ERROR_FORMULAS[value.error]
  return value
}

function toGraphValue(value: CellValue): GraphValue {
  if (value instanceof DetailedCellError) return { error: ERROR_NAMES[value.type] ?? "text_for_number" }
  return value ?? { error: "no_value" }
}
