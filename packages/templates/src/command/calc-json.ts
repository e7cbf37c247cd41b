import {
  type Book,
  type CheckView,
  type EntryKind,
  type EntryView,
  inWords,
  measure,
  type Problem,
  type ProblemCode,
  type Reading,
  type SolverReport,
  type Source,
  type UnitSystem,
} from "@pegbook/engine"
import type { Opened } from "./open.ts"

/** A number, text or yes/no of the workbook. `value` is null where there is none, a list for a list. */
export interface QuantityJson {
  readonly label: string
  readonly value: Reading["value"] | readonly Reading["value"][] | null
  readonly unit: string
  readonly text: string
  readonly kind: EntryKind
  readonly formula?: string
  /** An input or a figure that no longer has the template's value. */
  readonly changed?: true
  readonly why: string
  readonly sources: readonly Source[]
  readonly cautions?: readonly string[]
}

export interface CheckJson extends CheckView {
  readonly label: string
  readonly why: string
  readonly sources: readonly Source[]
}

export interface ProblemJson {
  readonly code: ProblemCode
  readonly entry?: string
  /** From 1. */
  readonly row?: number
  readonly says: string
  readonly next: string
}

/** What a search for a plan came to. `bound`: no plan is better; equal to the objective, the plan is proven best. */
export interface SearchJson {
  readonly method: string
  readonly objective?: Reading & { readonly says: string }
  readonly bound?: Reading
  /** Objective less bound, as a share of the objective. */
  readonly gap?: number
  readonly proven: boolean
  readonly unmet: readonly string[]
  readonly advice: readonly string[]
}

/** What `calc --json` prints. Values are in SI coherent units; money is in the currency's major unit. */
export interface CalcJson {
  readonly template: string
  readonly quantities: Readonly<Record<string, QuantityJson>>
  /** Rows by table; a row's value that is missing is null. */
  readonly tables: Readonly<Record<string, readonly Readonly<Record<string, Reading | null>>[]>>
  readonly checks: Readonly<Record<string, CheckJson>>
  /** By solved table. */
  readonly searches: Readonly<Record<string, SearchJson>>
  /** Why a search is not proven, where it was not ended: sentences. */
  readonly notProven: readonly string[]
  readonly problems: readonly ProblemJson[]
}

export function calcJson({ book, problems, notProven = [] }: Opened): CalcJson {
  const quantities: Record<string, QuantityJson> = {}
  const tables: Record<string, Readonly<Record<string, Reading | null>>[]> = {}
  const checks: Record<string, CheckJson> = {}
  const searches: Record<string, SearchJson> = {}
  for (const { name } of book.sections.flatMap((section) => section.entries)) {
    const view = book.entry(name)
    if (view.report !== undefined) searches[name] = search(view, view.report)
    if (view.shape === "table") tables[name] = tableRows(book, name)
    else if (view.check !== undefined) {
      checks[name] = { label: view.label, ...view.check, why: view.why, sources: view.sources }
    } else quantities[name] = quantity(view)
  }
  return {
    template: book.definition.id,
    quantities,
    tables,
    checks,
    searches,
    notProven,
    problems: [...problems, ...book.problems()].map((problem) => problemJson(problem, book.unitSystem)),
  }
}

function quantity(view: EntryView): QuantityJson {
  const list = view.readings?.filter((reading) => reading !== null)
  return {
    label: view.label,
    value: list?.map(({ value }) => value) ?? view.reading?.value ?? null,
    unit: measure(view.measure).si,
    text: view.reading?.text ?? "",
    kind: view.kind,
    ...(view.formula === undefined ? {} : { formula: view.formula }),
    ...(view.changed ? { changed: true } : {}),
    why: view.why,
    sources: view.sources,
    ...(view.cautions.length === 0 ? {} : { cautions: view.cautions }),
  }
}

function search({ reached }: EntryView, report: SolverReport): SearchJson {
  const { method, objective, bound, unmet, advice = [] } = report
  const isProven = objective !== undefined && bound === objective.value
  return {
    method,
    ...(objective === undefined || reached === undefined
      ? {}
      : { objective: { ...reached.objective, says: objective.says } }),
    ...(reached?.bound === undefined ? {} : { bound: reached.bound }),
    ...(objective === undefined || bound === undefined
      ? {}
      : { gap: isProven ? 0 : (objective.value - bound) / objective.value }),
    proven: isProven,
    unmet,
    advice,
  }
}

function tableRows(book: Book, name: string): Readonly<Record<string, Reading | null>>[] {
  const { columns, rowCount } = book.table(name)
  return Array.from({ length: rowCount }, (_, index) =>
    Object.fromEntries(
      columns.map((column) => [column.name.slice(name.length + 1), column.readings?.[index] ?? null]),
    ),
  )
}

function problemJson(problem: Problem, system: UnitSystem): ProblemJson {
  const { entry, row } = problem.at
  return {
    code: problem.code,
    ...(entry === undefined ? {} : { entry }),
    ...(row === undefined ? {} : { row }),
    ...inWords(problem, system),
  }
}
