import type { Problem } from "../problems/problem.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { readValue } from "../units/read-value.ts"
import { type CsvRecord, type ParsedCsv, parseCsv, SEPARATORS, type Separator } from "./parse-csv.ts"
import { looksLikeFormula, withoutGuard } from "./write-csv.ts"

/** A column that a text may fill. */
export interface TextColumn {
  readonly name: string
  readonly label: string
  readonly measure: MeasureId
}

export type DecimalMark = "point" | "comma"

export interface ReadTableOptions {
  readonly columns: readonly TextColumn[]
  /** In which units a bare number is. */
  readonly system: UnitSystem
  /** Found out from the numbers where absent. */
  readonly decimalMark?: DecimalMark
}

/** A row that can be used: a text for each column, as a person would type it. */
export interface GoodRow {
  readonly line: number
  readonly row: Readonly<Record<string, string>>
}

export interface BadRow {
  readonly line: number
  /** The row as it stands in the text. */
  readonly cells: readonly string[]
  /** Each says at which column and line, with which value, and what is accepted. */
  readonly problems: readonly Problem[]
}

/** What a text holds for a table, before any of it is put in. */
export interface TableText {
  readonly separator: Separator
  readonly decimalMark: DecimalMark
  readonly good: readonly GoodRow[]
  readonly bad: readonly BadRow[]
  /** Headings that are no column of the table; what stands under them is left out. */
  readonly unknownColumns: readonly string[]
  /** Rows that say the same as an earlier one; they are not among the good ones. */
  readonly duplicates: readonly { readonly line: number; readonly first: number }[]
  /** Cells that a spreadsheet would run. They are kept as the text that they are. */
  readonly formulas: readonly { readonly line: number; readonly column: string }[]
  /** What is wrong with the text as a whole. */
  readonly problems: readonly Problem[]
}

const MOST_CHARACTERS = 20_000_000

/**
 * Reads rows for a table from CSV text: separated by commas, semicolons or tabs, with the names or labels of the columns
 * in the first line, in any order. A heading may give the unit of the bare numbers under it: `depth (cm)`.
 * Never throws: rows that cannot be used are named by their line.
 */
export function readTable(text: string, options: ReadTableOptions): TableText {
  if (text.length > MOST_CHARACTERS) {
    const problem: Problem = { code: "input_too_long", at: {}, length: text.length, most: MOST_CHARACTERS }
    return nothing(problem)
  }
  const { separator, parsed } = bestSeparator(text, options.columns)
  const [first, ...records] = parsed.records
  const problems: Problem[] = []
  if (parsed.openQuote !== undefined)
    problems.push({ code: "csv_open_quote", at: { line: parsed.openQuote } })
  if (first === undefined)
    return nothing(...problems, { code: "csv_empty", at: {}, columns: namesOf(options) })

  const headings = first.cells.map((cell) => readHeading(cell, options.columns))
  const known = headings.filter((heading) => heading.column !== undefined)
  for (const { column } of known) {
    const { length } = known.filter((heading) => heading.column === column)
    if (column !== undefined && length > 1 && !problems.some((one) => isTwice(one, column.name))) {
      problems.push({ code: "csv_column_twice", at: { line: first.line }, column: column.name })
    }
  }
  const missing = options.columns.filter(
    (column) => column.measure !== "text" && !known.some((heading) => heading.column === column),
  )
  if (known.length === 0 || missing.length > 0) {
    const names = (known.length === 0 ? options.columns : missing).map(({ name }) => name)
    problems.push({
      code: "csv_no_column",
      at: { line: first.line },
      missing: names,
      columns: namesOf(options),
    })
  }
  const decimalMark = options.decimalMark ?? findDecimalMark(headings, records)
  const unknownColumns = headings
    .filter(({ column, text: heading }) => column === undefined && heading !== "")
    .map(({ text: heading }) => heading)
  if (problems.some(({ code }) => code !== "csv_open_quote")) {
    return { ...nothing(...problems), separator, decimalMark, unknownColumns }
  }
  return {
    separator,
    decimalMark,
    unknownColumns,
    problems,
    ...readRecords(records, headings, decimalMark, options),
  }
}

function nothing(...problems: readonly Problem[]): TableText {
  const none = { good: [], bad: [], unknownColumns: [], duplicates: [], formulas: [] }
  return { separator: ",", decimalMark: "point", ...none, problems }
}

function namesOf({ columns }: ReadTableOptions): readonly string[] {
  return columns.map(({ name }) => name)
}

function isTwice(problem: Problem, column: string): boolean {
  return problem.code === "csv_column_twice" && problem.column === column
}

interface Heading {
  readonly text: string
  readonly column: TextColumn | undefined
  readonly unit: string
}

/** The separator under which the first line has most of the columns, or else most cells. */
function bestSeparator(
  text: string,
  columns: readonly TextColumn[],
): { readonly separator: Separator; readonly parsed: ParsedCsv } {
  const tries = SEPARATORS.map((separator) => {
    const cells = parseCsv(firstLines(text), separator).records[0]?.cells ?? []
    const known = cells.filter((cell) => readHeading(cell, columns).column !== undefined).length
    return { separator, known, cells: cells.length }
  })
  const best = tries.reduce((a, b) =>
    b.known > a.known || (b.known === a.known && b.cells > a.cells) ? b : a,
  )
  return { separator: best.separator, parsed: parseCsv(text, best.separator) }
}

/** Enough of a text to hold its headings. */
function firstLines(text: string): string {
  return text.slice(0, 10_000)
}

function readHeading(cell: string, columns: readonly TextColumn[]): Heading {
  const text = withoutGuard(cell.trim()).trim()
  const whole = findColumn(text, columns)
  if (whole !== undefined) return { text, column: whole, unit: "" }
  const [, name = "", unit = ""] = /^(.*?)\s*[([]([^()[\]]*)[)\]]$/.exec(text) ?? []
  return { text, column: findColumn(name, columns), unit: unit.trim() }
}

function findColumn(heading: string, columns: readonly TextColumn[]): TextColumn | undefined {
  const same = (text: string): boolean => plain(text) === plain(heading)
  return columns.find(({ name }) => same(name)) ?? columns.find(({ label }) => same(label))
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s_]+/g, " ")
    .trim()
}

/** A comma before other than three digits, or after a point between thousands, can only be a decimal mark. */
const COMMA_DECIMAL = /^[-+]?(\d*,(\d{1,2}|\d{4,})|0,\d+|\d{1,3}(\.\d{3})+,\d+)(?!\d)/

function findDecimalMark(headings: readonly Heading[], records: readonly CsvRecord[]): DecimalMark {
  const isNumber = (place: number): boolean => {
    const column = headings[place]?.column
    return column !== undefined && measure(column.measure).dimension !== undefined
  }
  const some = records.some(({ cells }) =>
    cells.some((cell, place) => isNumber(place) && COMMA_DECIMAL.test(withoutGuard(cell.trim()))),
  )
  return some ? "comma" : "point"
}

function withPoint(cell: string): string {
  const [, number = "", rest = ""] = /^([-+]?[\d.,]+)(.*)$/s.exec(cell) ?? []
  if (!number.includes(",")) return cell
  const whole = /^[-+]?\d{1,3}(\.\d{3})+,/.test(number) ? number.replaceAll(".", "") : number
  return whole.replace(",", ".") + rest
}

const BARE_NUMBER = /^[-+]?[\d.,]+(e[-+]?\d+)?$/i

function readRecords(
  records: readonly CsvRecord[],
  headings: readonly Heading[],
  decimalMark: DecimalMark,
  { columns, system }: ReadTableOptions,
): Pick<TableText, "good" | "bad" | "duplicates" | "formulas"> {
  const good: GoodRow[] = []
  const bad: BadRow[] = []
  const duplicates: { line: number; first: number }[] = []
  const formulas: { line: number; column: string }[] = []
  const seen = new Map<string, number>()
  const places = columns.map((column) => headings.findIndex((heading) => heading.column === column))

  for (const { line, cells } of records) {
    const problems: Problem[] = []
    const given = cells.findLastIndex((cell) => cell.trim() !== "") + 1
    if (given > headings.length) {
      problems.push({ code: "csv_too_many_cells", at: { line }, given, most: headings.length })
    }
    const row: Record<string, string> = {}
    for (const [index, column] of columns.entries()) {
      const place = places[index] ?? -1
      const cell = cells[place]?.trim() ?? ""
      if (looksLikeFormula(cell)) formulas.push({ line, column: column.name })
      const typed = asTyped(withoutGuard(cell), column, headings[place]?.unit ?? "", decimalMark)
      const read = readValue(typed, column.measure, system)
      if ("problem" in read) problems.push({ ...read.problem, at: { entry: column.name, line } })
      row[column.name] = typed
    }
    const key = JSON.stringify(row)
    const before = seen.get(key)
    if (problems.length > 0) bad.push({ line, cells, problems })
    else if (before !== undefined) duplicates.push({ line, first: before })
    else {
      seen.set(key, line)
      good.push({ line, row })
    }
  }
  return { good, bad, duplicates, formulas }
}

function asTyped(cell: string, column: TextColumn, unit: string, decimalMark: DecimalMark): string {
  if (measure(column.measure).dimension === undefined) return cell
  const number = decimalMark === "comma" ? withPoint(cell) : cell
  return unit !== "" && BARE_NUMBER.test(number) ? `${number} ${unit}` : number
}
