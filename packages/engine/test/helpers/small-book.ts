import type {
  CheckEntry,
  Definition,
  Entry,
  MeasureId,
  OpenOptions,
  Source,
  TableEntry,
} from "../../src/index.ts"
import { type Book, openBook } from "../../src/index.ts"

const SOURCES: readonly Source[] = [{ kind: "user", title: "made up for a test" }]
const described = (name: string) => ({ name, label: name, why: "a test needs it", sources: SOURCES })

/** An input: `input("width", "length", "4 m")`. */
export function input(
  name: string,
  measure: MeasureId,
  value: string | null,
  more: Partial<Extract<Entry, { kind: "input" }>> = {},
): Entry {
  return { ...described(name), kind: "input", measure, default: value, ...more }
}

export function figure(name: string, measure: MeasureId, value: string): Entry {
  return { ...described(name), kind: "figure", measure, value }
}

export function formula(name: string, measure: MeasureId, text: string): Entry {
  return { ...described(name), kind: "formula", measure, formula: text }
}

export function check(
  name: string,
  measure: MeasureId,
  demand: string,
  limit: string,
  more: Partial<CheckEntry> = {},
): Entry {
  return { ...described(name), kind: "check", measure, demand, limit, sense: "at_most", advice: [], ...more }
}

type ColumnText = readonly [
  name: string,
  measure: MeasureId,
  formula?: string | undefined,
  values?: readonly string[],
]

export function table(name: string, rows: TableEntry["rows"], columns: readonly ColumnText[]): Entry {
  return {
    ...described(name),
    kind: "table",
    rows,
    columns: columns.map(([column, measure, text, values]) => ({
      ...described(column),
      measure,
      ...(text === undefined ? {} : { formula: text }),
      ...(values === undefined ? {} : { values }),
    })),
  }
}

export function define(...entries: readonly Entry[]): Definition {
  return {
    id: "small",
    title: "A small workbook",
    says: "for tests",
    unitSystem: "metric",
    sections: [{ id: "all", title: "All", says: "", entries }],
    cautions: [],
  }
}

/** Opens a workbook of these entries. */
export function bookOf(entries: readonly Entry[], options: OpenOptions = {}): Book {
  return openBook(define(...entries), options).book
}

/** What a person reads, in the units shown. */
export function reads(book: Book, name: string): string | undefined {
  return book.entry(name).reading?.text
}

/** The SI value of an entry; of a column, one a row. */
export function value(book: Book, name: string): unknown {
  const view = book.entry(name)
  if (view.shape === "column" || view.shape === "list")
    return view.readings?.map((reading) => reading?.value ?? null)
  return view.reading?.value
}
