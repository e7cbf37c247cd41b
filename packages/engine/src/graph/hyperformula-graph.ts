import { type CellValue, DetailedCellError, HyperFormula, type RawCellContent } from "hyperformula"
import type { Ast } from "../formula/ast.ts"
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
 * - INT drops the fraction instead of rounding down; LOOKUP does not exist; INDEX past the end says NUM.
 * - A range cannot be empty: a column without rows is a reference to a cell that is never filled.
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
  no_value: "=NA()",
}

const ERROR_NAMES: Readonly<Record<string, GraphError>> = {
  DIV_BY_ZERO: "division_by_zero",
  NUM: "not_a_number",
  NA: "not_found",
  VALUE: "text_for_number",
}

interface Table {
  readonly id: string
  readonly sheet: string
  rows: number
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
  const tablesById = new Map<string, Table>(
    tables.map((node, index) => [
      node.id,
      {
        id: node.id,
        sheet: `Table_${index}`,
        rows: node.rows,
        columns: node.columns.map((column, position) => toColumn(column, position + 1)),
      },
    ]),
  )
  const print = printer(scalarRows, tablesById)

  const scalarCell = (content: NodeContent): RawCellContent =>
    "formula" in content ? `=${print(content.formula)}` : constant(content.value)

  const tableCells = (table: Table): RawCellContent[][] =>
    Array.from({ length: table.rows }, (_, row) => [
      row + 1,
      ...table.columns.map((column) =>
        column.formula === undefined
          ? constant(column.values[row] ?? { error: "no_value" })
          : `=${print(column.formula, table, row)}`,
      ),
    ])

  const engine = HyperFormula.buildFromSheets(
    Object.fromEntries([
      [SCALARS, scalars.map((node) => [scalarCell(node.content)])],
      ...[...tablesById.values()].map((table) => [table.sheet, tableCells(table)] as const),
    ]),
    { licenseKey: LICENCE_KEY, smartRounding: false },
  )
  const sheetId = (name: string): number => {
    const id = engine.getSheetId(name)
    if (id === undefined) throw new Error(`the sheet ${name} is gone`)
    return id
  }
  const scalarSheet = sheetId(SCALARS)
  const usersOf = usersOfTables(scalars, [...tablesById.values()])

  const setScalar = (id: string): void => {
    const row = scalarRows.get(id)
    const content = contents.get(id)
    if (row === undefined || content === undefined) throw new RangeError(`the graph has no scalar ${id}`)
    engine.setCellContents({ sheet: scalarSheet, row, col: 0 }, [[scalarCell(content)]])
  }
  const setTable = (table: Table, rowsBefore: number): void => {
    const sheet = sheetId(table.sheet)
    if (table.rows > 0) engine.setCellContents({ sheet, row: 0, col: 0 }, tableCells(table))
    const surplus = rowsBefore - table.rows
    if (surplus > 0) {
      const empty = Array.from({ length: surplus }, () =>
        new Array<RawCellContent>(table.columns.length + 1).fill(null),
      )
      engine.setCellContents({ sheet, row: table.rows, col: 0 }, empty)
    }
  }

  return {
    apply(change: GraphChange): void {
      const dirtyScalars = new Set<string>()
      const dirtyTables = new Map<string, number>()
      for (const [id, content] of change.scalars ?? []) {
        contents.set(id, content)
        dirtyScalars.add(id)
      }
      for (const [id, next] of change.tables ?? []) {
        const table = tablesById.get(id)
        if (table === undefined) throw new RangeError(`the graph has no table ${id}`)
        dirtyTables.set(id, table.rows)
        for (const column of table.columns) column.values = next.values[column.name] ?? column.values
        if (next.rows === table.rows) continue
        table.rows = next.rows
        // A whole column is a range of fixed length: whoever mentions one must be told its new length.
        for (const user of usersOf(id).scalars) dirtyScalars.add(user)
        for (const user of usersOf(id).tables) {
          if (!dirtyTables.has(user)) dirtyTables.set(user, tablesById.get(user)?.rows ?? 0)
        }
      }
      engine.batch(() => {
        for (const id of dirtyScalars) setScalar(id)
        for (const [id, rowsBefore] of dirtyTables) {
          const table = tablesById.get(id)
          if (table !== undefined) setTable(table, rowsBefore)
        }
      })
    },

    scalar(id: string): GraphValue {
      const row = scalarRows.get(id)
      if (row === undefined) throw new RangeError(`the graph has no scalar ${id}`)
      return toGraphValue(engine.getCellValue({ sheet: scalarSheet, row, col: 0 }))
    },

    column(tableId: string, name: string): readonly GraphValue[] {
      const table = tablesById.get(tableId)
      const column = table?.columns.find((candidate) => candidate.name === name)
      if (table === undefined || column === undefined)
        throw new RangeError(`the graph has no column ${tableId}.${name}`)
      const sheet = sheetId(table.sheet)
      return Array.from({ length: table.rows }, (_, row) =>
        toGraphValue(engine.getCellValue({ sheet, row, col: column.position })),
      )
    },
  } satisfies Graph
}

function toColumn(node: ColumnNode, position: number): Column {
  return "formula" in node.content
    ? { name: node.name, position, formula: node.content.formula, values: [] }
    : { name: node.name, position, values: node.content.values }
}

/** Which scalars and tables mention whole columns of a table. */
function usersOfTables(
  scalars: Parameters<GraphBuilder>[0],
  tables: readonly Table[],
): (table: string) => { readonly scalars: ReadonlySet<string>; readonly tables: ReadonlySet<string> } {
  const users = new Map<string, { scalars: Set<string>; tables: Set<string> }>()
  const of = (table: string) => {
    let found = users.get(table)
    if (found === undefined) {
      found = { scalars: new Set(), tables: new Set() }
      users.set(table, found)
    }
    return found
  }
  for (const node of scalars) {
    if ("formula" in node.content)
      for (const table of tablesIn(node.content.formula)) of(table).scalars.add(node.id)
  }
  for (const table of tables) {
    for (const column of table.columns) {
      if (column.formula !== undefined)
        for (const used of tablesIn(column.formula)) of(used).tables.add(table.id)
    }
  }
  return of
}

function tablesIn(ast: Ast, found = new Set<string>()): ReadonlySet<string> {
  if (ast.type === "name") {
    const column = splitColumn(ast.name)
    if (column !== undefined) found.add(column.table)
  } else for (const child of children(ast)) tablesIn(child, found)
  return found
}

function children(ast: Ast): readonly Ast[] {
  switch (ast.type) {
    case "number":
    case "text":
    case "name":
      return []
    case "call":
      return ast.args
    case "prefix":
    case "percent":
      return [ast.operand]
    case "infix":
      return [ast.left, ast.right]
    case "group":
      return [ast.inner]
  }
}

function splitColumn(name: string): { readonly table: string; readonly column: string } | undefined {
  const dot = name.indexOf(".")
  return dot < 0 ? undefined : { table: name.slice(0, dot), column: name.slice(dot + 1) }
}

type Printer = (ast: Ast, table?: Table, row?: number) => string

function printer(scalarRows: ReadonlyMap<string, number>, tables: ReadonlyMap<string, Table>): Printer {
  const wholeColumn = (name: string): { readonly text: string; readonly rows: number } | undefined => {
    const parts = splitColumn(name)
    const table = parts && tables.get(parts.table)
    const column = table?.columns.find((candidate) => candidate.name === parts?.column)
    if (table === undefined || column === undefined) return undefined
    const letter = columnLetters(column.position)
    const empty = `$${columnLetters(table.columns.length + 1)}$1`
    const text =
      table.rows === 0
        ? `${table.sheet}!${empty}:${empty}`
        : `${table.sheet}!$${letter}$1:$${letter}$${table.rows}`
    return { text, rows: table.rows }
  }

  const print: Printer = (ast, table, row) => {
    const inner = (child: Ast): string => print(child, table, row)
    switch (ast.type) {
      case "number":
        return String(Number(ast.text)).toUpperCase()
      case "text":
        return `"${ast.text.replaceAll('"', '""')}"`
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
        return column.text
      }
      case "call":
        return printCall(ast.function.toUpperCase(), ast.args, inner, (name) => wholeColumn(name)?.rows, row)
      case "prefix":
        return `(${ast.operator}(${inner(ast.operand)}))`
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
  rowsOf: (column: string) => number | undefined,
  row: number | undefined,
): string {
  const printed = args.map(inner)
  const [first = "", second = "", third = ""] = printed
  switch (name) {
    case "ROW":
      if (row === undefined) throw new RangeError("ROW() outside a row")
      return `$A${row + 1}`
    case "INT":
      return `FLOOR(${first},1)`
    case "INDEX": {
      const column = args[0]
      const rows = column?.type === "name" ? (rowsOf(column.name) ?? 0) : 0
      if (rows === 0) return "NA()"
      return `IF(OR((${second})<1,(${second})>=${rows + 1}),NA(),INDEX(${first},${second},1))`
    }
    case "LOOKUP":
      return `INDEX(${third},MATCH(${first},${second},1),1)`
    default:
      return `${name}(${printed.join(",")})`
  }
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
