import { existsSync } from "node:fs"
import { basename } from "node:path"
import {
  type Book,
  type BookDocument,
  type Definition,
  inWords,
  keptAs,
  nearNames,
  openBook,
  type Problem,
  readDocument,
  readTable,
  typedColumnsOf,
  type UnitSystem,
} from "@pegbook/engine"
import { QUICK_TEMPLATES, TEMPLATES, template } from "../index.ts"
import type { Given } from "./arguments.ts"
import { BadInput, quoted } from "./bad-input.ts"
import { readJson, readText } from "./read-file.ts"

/** A workbook with what was given on the command line in it, and what was wrong with the file it came from. */
export interface Opened {
  readonly book: Book
  readonly problems: readonly Problem[]
  /** As the file calls it; absent: it has its template's. */
  readonly title?: string
  /** Why a solved table may not be the best, where its search was not ended: sentences. */
  readonly notProven?: readonly string[]
}

/** Opens a template by its id, or a saved workbook by its path, and applies `--units`, `--table` and `--set`. */
export function open(source: string, given: Given): Opened {
  const { definition, document } = find(source, given.units ?? "us")
  const { book, problems } = openBook(definition, {
    ...(document === undefined ? {} : { document }),
    ...(given.units === undefined ? {} : { unitSystem: given.units }),
  })
  for (const path of given.tables) {
    for (const [name, rows] of path.endsWith(".csv") ? readCsv(path, book) : readTables(path)) {
      accept(book.editTable(name, rows).problems, `--table ${quoted(path)}`, book)
    }
  }
  if (Object.keys(given.set).length > 0) {
    accept(book.editAll(keptSettings(book, given.set)).problems, "--set", book)
  }
  const title = document?.title
  return { book, problems, ...(typeof title === "string" && title !== "" ? { title } : {}) }
}

/** What `--set` gives is typed by a person, in the language in force. */
function keptSettings(book: Book, set: Given["set"]): Given["set"] {
  const kept = Object.entries(set).map(([name, typed]) => {
    const of = name.replace(/^(\w+\.\w+)\.\d+$/, "$1")
    if (!book.has(of)) return [name, typed]
    const { measure, shape } = book.entry(of)
    return [name, keptAs(typed, measure, shape === "list")]
  })
  return Object.fromEntries(kept)
}

function find(
  source: string,
  system: UnitSystem,
): { readonly definition: Definition; readonly document?: BookDocument } {
  const known = [...TEMPLATES, ...QUICK_TEMPLATES].map(({ id }) => id)
  const definition = known.includes(source) ? template(source) : undefined
  if (definition !== undefined) return { definition }
  if (!existsSync(source)) {
    const meant = nearNames(source, known)
    const next = meant.length > 0 ? `Did you mean ${meant.join(" or ")}?` : "Try: pegbook list."
    throw new BadInput(
      `${quoted(source)} is neither a template (${known.join(", ")}) nor the path of a saved workbook. ${next}`,
    )
  }
  const { document, problems } = readDocument(readJson(source, "saved workbook"))
  const [problem] = problems
  if (document === undefined) {
    const words = problem === undefined ? "it holds no workbook." : inOneLine(problem, system)
    throw new BadInput(`saved workbook ${quoted(source)}: ${words}`)
  }
  const its = template(document.template)
  if (its === undefined) {
    const unknown = { code: "file_unknown_template", at: {}, template: document.template, known } as const
    throw new BadInput(`saved workbook ${quoted(source)}: ${inOneLine(unknown, system)}`)
  }
  return { definition: its, document }
}

type Row = Readonly<Record<string, string>>

/** The tables in a file: `{ "<table>": [ { "<column>": "<text with its unit>", … }, … ], … }`. */
function readTables(path: string): [name: string, rows: readonly Row[]][] {
  const what = "--table"
  const shape = '{ "table_name": [ { "column": "3 ft", … }, … ] }'
  const json = readJson(path, what)
  if (!isObject(json)) {
    throw new BadInput(`${what}: ${quoted(path)} does not hold one object. It should be like ${shape}.`)
  }
  return Object.entries(json).map(([name, rows]) => {
    if (!Array.isArray(rows)) {
      throw new BadInput(
        `${what}: ${quoted(name)} in ${quoted(path)} is not a list of rows. It should be like ${shape}.`,
      )
    }
    return [
      name,
      rows.map((row: unknown, index) =>
        readRow(row, `${what}: row ${index + 1} of ${quoted(name)} in ${quoted(path)}`),
      ),
    ]
  })
}

/** A table's CSV: its name is the file's, its columns are those of the table. */
function readCsv(path: string, book: Book): [name: string, rows: readonly Row[]][] {
  const name = basename(path, ".csv")
  const what = `--table ${quoted(path)}`
  const entered = book.sections
    .flatMap(({ entries }) => entries)
    .flatMap((entry) => (entry.kind === "table" && typedColumnsOf(entry).length > 0 ? [entry] : []))
  const table = entered.find((one) => one.name === name)
  if (table === undefined) {
    const names = entered.map((one) => `${one.name}.csv`).join(", ")
    throw new BadInput(
      `${what}: no table of this workbook is called ${quoted(name)}. Name the file ${names}.`,
    )
  }
  const options = { columns: typedColumnsOf(table), system: book.unitSystem }
  const { good, bad, problems } = readTable(readText(path, "--table"), options)
  accept([...problems, ...bad.flatMap((row) => row.problems)], what, book)
  return [[name, good.map(({ row }) => row)]]
}

function readRow(row: unknown, where: string): Row {
  if (!isObject(row)) throw new BadInput(`${where} is not an object. Write one text for each column.`)
  return Object.fromEntries(
    Object.entries(row).map(([column, cell]) => {
      if (typeof cell !== "string" && typeof cell !== "number") {
        throw new BadInput(
          `${where}: ${quoted(column)} is neither text nor a number. Write for example "3 ft".`,
        )
      }
      return [column, String(cell)]
    }),
  )
}

function isObject(json: unknown): json is Readonly<Record<string, unknown>> {
  return typeof json === "object" && json !== null && !Array.isArray(json)
}

function accept(problems: readonly Problem[], where: string, book: Book): void {
  const [problem] = problems
  if (problem === undefined) return
  throw new BadInput(`${where}: ${inOneLine(problem, book.unitSystem)}`)
}

/** A problem with its next step. */
export function inOneLine(problem: Problem, system: UnitSystem): string {
  const { says, next } = inWords(problem, system)
  return `${says} ${next}`.trim()
}
