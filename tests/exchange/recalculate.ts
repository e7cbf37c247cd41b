import { AVERAGE, COUNT, IF, INDEX, MATCH, MAX, MIN, ROUNDUP, SUMIF } from "@formulajs/formulajs"
import FormulaParser, { type LibraryArgument } from "fast-formula-parser"
import type { FileCell, FileSheets } from "./spreadsheet-file.ts"

/** What a cell came to when everything was worked out again; `undefined` for an error. */
export type Outcome =
  | { readonly kind: "value"; readonly value: number | string | boolean | undefined }
  | { readonly kind: "not_supported"; readonly reason: string }

interface Address {
  readonly sheet: string
  readonly cell: string
}

const REFERENCE = /\[(?:\$'([^']*)')?\.(\$?[A-Z]+\$?\d+)(?::\.(\$?[A-Z]+\$?\d+))?\]/g

/** What the library that reads formulas has not, or gets wrong: it rounds up whole numbers, and loses a reference's sheet. */
const FROM_THE_OTHER = { AVERAGE, COUNT, IF, INDEX, MATCH, MAX, MIN, ROUNDUP, SUMIF }

/** Which of its values are ranges. */
const RANGES: Readonly<Record<string, readonly number[]>> = {
  INDEX: [0],
  MATCH: [1],
  SUMIF: [0, 2],
}

const ERRORS: Readonly<Record<string, "NA" | "VALUE" | "NUM" | "DIV0">> = {
  "#N/A": "NA",
  "#NUM!": "NUM",
  "#DIV/0!": "DIV0",
}

function fromTheOther(name: string, other: unknown): (...args: readonly LibraryArgument[]) => unknown {
  const { FormulaError } = FormulaParser
  const called = other as (...args: readonly unknown[]) => unknown
  return (...args) => {
    // A range of one cell comes as its value.
    const values = args.map(({ value, isCellRef }, place) =>
      isCellRef && (RANGES[name] ?? []).includes(place) ? [[value]] : value,
    )
    const fault = values.flat(2).find((value) => value instanceof FormulaError)
    if (fault !== undefined && (name === "MAX" || name === "MIN" || name === "AVERAGE")) return fault
    const given = name === "MATCH" ? values.map(asMatchWants) : values
    if (values[0] instanceof FormulaError) return values[0]
    const result = called(...given)
    return result instanceof Error ? FormulaError[ERRORS[result.message] ?? "VALUE"] : result
  }
}

/** MATCH takes a flat list here, and reads `|` in a text as "or", which no standard asks for. */
function asMatchWants(value: unknown): unknown {
  if (Array.isArray(value)) return value.flat().map(asMatchWants)
  return typeof value === "string" ? value.replaceAll("|", "/") : value
}

/**
 * Works every formula of a file out again with libraries that know nothing of Pegbook, from the constants up: one reads
 * formulas and has most functions, the other has the rest. A formula that they cannot work out keeps the value of the file, so that what leans on it can still be judged.
 */
export function recalculate(sheets: FileSheets): ReadonlyMap<string, Outcome> {
  const outcomes = new Map<string, Outcome>()
  const cellAt = ({ sheet, cell }: Address): FileCell | undefined => sheets.get(sheet)?.get(cell)
  const key = ({ sheet, cell }: Address): string => `${sheet}.${cell}`
  const { FormulaError } = FormulaParser
  const valueAt = (at: Address): unknown => {
    const cell = cellAt(at)
    if (cell === undefined) return null
    const outcome = outcomes.get(key(at))
    const value = outcome?.kind === "value" ? outcome.value : cell.value
    return value === undefined ? FormulaError.NA : value
  }
  const parser = new FormulaParser({
    functions: Object.fromEntries(
      Object.entries(FROM_THE_OTHER).map(([name, called]) => [name, fromTheOther(name, called)]),
    ),
    onCell: ({ sheet, row, col }) => valueAt({ sheet, cell: `${letters(col)}${row}` }),
    onRange: ({ sheet, from, to }) =>
      Array.from({ length: to.row - from.row + 1 }, (_, row) =>
        Array.from({ length: to.col - from.col + 1 }, (_, col) =>
          valueAt({ sheet, cell: `${letters(from.col + col)}${from.row + row}` }),
        ),
      ),
  })
  // With these it hands functions a reference that has lost its sheet.
  parser.funsNeedContextAndNoDataRetrieve = []
  parser.funsNeedContext = []
  const evaluate = (formula: string, sheet: string): Outcome => {
    let result: unknown
    try {
      result = parser.parse(inOtherDialect(formula), { sheet, row: 1, col: 1 })
    } catch (thrown) {
      if (!(thrown instanceof FormulaError)) return { kind: "not_supported", reason: String(thrown) }
      result = thrown
    }
    if (!(result instanceof FormulaError))
      return { kind: "value", value: result as number | string | boolean }
    const unknown = result.name === "#NAME?" || result.name === "#ERROR!"
    return unknown ? { kind: "not_supported", reason: formula } : { kind: "value", value: undefined }
  }

  const begun = new Set<string>()
  const visit = (start: Address): void => {
    const stack: { readonly at: Address; readonly ready: boolean }[] = [{ at: start, ready: false }]
    for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
      const { at, ready } = next
      const formula = cellAt(at)?.formula
      if (formula === undefined || outcomes.has(key(at))) continue
      if (ready) {
        outcomes.set(key(at), evaluate(formula, at.sheet))
        continue
      }
      if (begun.has(key(at))) throw new Error(`a ring of references at ${key(at)}`)
      begun.add(key(at))
      stack.push({ at, ready: true })
      for (const used of addressesIn(formula, at.sheet)) {
        if (!begun.has(key(used))) stack.push({ at: used, ready: false })
        else if (cellAt(used)?.formula !== undefined && !outcomes.has(key(used))) {
          stack.push({ at: used, ready: false })
          begun.delete(key(used))
        }
      }
    }
  }
  for (const [sheet, cells] of sheets) for (const cell of cells.keys()) visit({ sheet, cell })
  return outcomes
}

/** OpenFormula's references and separators as the library reads them. */
function inOtherDialect(formula: string): string {
  const parts = formula.split(/("(?:[^"]|"")*")/)
  return parts
    .map((part, index) =>
      index % 2 === 1
        ? part
        : part
            .replace(REFERENCE, (_, sheet?: string, from?: string, to?: string) =>
              [sheet === undefined ? "" : `'${sheet}'!`, from, to === undefined ? "" : `:${to}`].join(""),
            )
            .replaceAll(";", ","),
    )
    .join("")
}

function addressesIn(formula: string, sheet: string): Address[] {
  return [...formula.matchAll(REFERENCE)].flatMap(([, where = sheet, from = "", to = from]) => {
    const [, column = "", first = ""] = /\$?([A-Z]+)\$?(\d+)/.exec(from) ?? []
    const last = Number(/(\d+)$/.exec(to)?.[1])
    return Array.from({ length: last - Number(first) + 1 }, (_, row) => ({
      sheet: where,
      cell: `${column}${Number(first) + row}`,
    }))
  })
}

function letters(place: number): string {
  return (
    (place > 26 ? letters(Math.floor((place - 1) / 26)) : "") + String.fromCharCode(65 + ((place - 1) % 26))
  )
}
