import type { Stage, StageNeed, StageTable, StageValue } from "../definition/stage.ts"
import type { Book } from "./book.ts"
import type { Reading, Verdict } from "./views.ts"

/** Something needed for a stage: one amount, or a line for each row that was asked for. Never empty. */
export interface StageNeedView {
  readonly thing: string
  readonly amounts: readonly string[]
  /** The entry to look at for more. */
  readonly name: string
}

/** Rows of a table as texts, under their columns' titles. Never empty. */
export interface StageTableView {
  readonly name: string
  readonly label: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** A stage with the values of the moment in its texts. What it needs none of is left out. */
export interface StageView {
  readonly id: string
  readonly title: string
  readonly says: readonly string[]
  readonly hold?: string
  readonly checks: readonly { readonly name: string; readonly label: string; readonly verdict: Verdict }[]
  readonly needs: readonly StageNeedView[]
  readonly tools: readonly string[]
  readonly cautions: readonly string[]
  readonly tables: readonly StageTableView[]
  readonly waits: readonly string[]
  readonly weather?: string
  readonly safeStop?: string
  readonly people?: Reading
  readonly hours?: Reading
  readonly days?: Reading
}

/** What a book is asked for here. */
type Source = Pick<Book, "entry" | "definition">

/** The stages of the work as they stand; none where the template has none. */
export function readStages(book: Source): readonly StageView[] {
  return (book.definition.stages ?? []).map((stage) => readStage(book, stage))
}

function readStage(book: Source, stage: Stage): StageView {
  const fill = (text: string): string => fillIn(book, text)
  const { id, hold, weather, safeStop } = stage
  const people = readingOf(book, stage.people)
  const hours = readingOf(book, stage.hours)
  const days = readingOf(book, stage.days)
  return {
    id,
    title: fill(stage.title),
    says: stage.says.map(fill),
    ...(hold === undefined ? {} : { hold: fill(hold) }),
    checks: (stage.checks ?? []).map((name) => {
      const { label, check } = book.entry(name)
      return { name, label, verdict: check?.verdict ?? "no_verdict" }
    }),
    needs: stage.needs.flatMap((need) => needOf(book, need)),
    tools: stage.tools.map(fill),
    cautions: stage.cautions.map(fill),
    tables: (stage.tables ?? []).flatMap((table) => tableOf(book, table)),
    waits: (stage.waits ?? []).map(fill),
    ...(weather === undefined ? {} : { weather: fill(weather) }),
    ...(safeStop === undefined ? {} : { safeStop: fill(safeStop) }),
    ...(people === undefined ? {} : { people }),
    ...(hours === undefined ? {} : { hours }),
    ...(days === undefined ? {} : { days }),
  }
}

function fillIn(book: Source, text: string): string {
  return text.replace(/\{([a-z0-9_.]+)\}/g, (_, name: string) => readingOf(book, name)?.text ?? "—")
}

function readingOf(book: Source, value: StageValue | undefined): Reading | undefined {
  if (value === undefined) return undefined
  if (typeof value === "string") {
    const { reading, readings } = book.entry(value)
    return reading ?? readings?.[0] ?? undefined
  }
  const row = (book.entry(value.where).readings ?? []).findIndex((reading) => reading?.value === value.is)
  return book.entry(value.column).readings?.[row] ?? undefined
}

function needOf(book: Source, need: StageNeed): readonly StageNeedView[] {
  const { thing } = need
  if ("amount" in need) {
    const reading = readingOf(book, need.amount)
    if (reading === undefined || reading.value === 0) return []
    const name = typeof need.amount === "string" ? need.amount : need.amount.column
    return [{ thing, amounts: [reading.text], name }]
  }
  const readings = (column: string): readonly (Reading | null)[] =>
    book.entry(`${need.table}.${column}`).readings ?? []
  const columns = need.columns.map(readings)
  const amounts = readings(need.where).flatMap((reading, row) =>
    need.is.includes(String(reading?.value)) && columns[0]?.[row]?.value !== 0
      ? [columns.map((column) => column[row]?.text ?? "—").join(" · ")]
      : [],
  )
  return amounts.length === 0 ? [] : [{ thing, amounts, name: need.table }]
}

function tableOf(book: Source, { table, columns, where, is }: StageTable): readonly StageTableView[] {
  const views = columns.map((column) => book.entry(`${table}.${column}`))
  const marked = where === undefined ? undefined : book.entry(`${table}.${where}`).readings
  const rows = (views[0]?.readings ?? []).flatMap((first, row) =>
    first?.value !== 0 && (marked === undefined || marked[row]?.value === is)
      ? [views.map(({ readings }) => readings?.[row]?.text ?? "—")]
      : [],
  )
  if (rows.length === 0) return []
  return [{ name: table, label: book.entry(table).label, columns: views.map(({ label }) => label), rows }]
}
