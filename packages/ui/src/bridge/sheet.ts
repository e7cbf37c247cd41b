import {
  type Book,
  type BookChange,
  type BookDocument,
  type Comparison,
  type Definition,
  drawnNames,
  type EditResult,
  type Entry,
  type EntryView,
  type Moved,
  type ScenarioView,
  type Solution,
  type StageProgress,
  type StageView,
  type TableView,
  type UnitSystem,
  type Unproven,
  type Working,
} from "@pegbook/engine"
import { type Accessor, batch, createSignal, type Setter, untrack } from "solid-js"
import { touchedBy } from "./touched.ts"

/** One row of an entered table: a text for each typed column. */
export type TypedRow = Readonly<Record<string, string>>

/** What the screens may read and do. Every read is tracked by Solid, and moves only when its own entry does. */
export interface Sheet {
  readonly definition: Definition
  has(name: string): boolean
  names(): readonly string[]
  entry(name: string): EntryView
  table(name: string): TableView
  working(name: string, row?: number): Working | undefined
  leansOn(name: string): readonly string[]
  leanedOnBy(name: string): readonly string[]
  search(words: string): readonly string[]
  /** Whether a drawing has shapes of this table or entry. */
  isDrawn(name: string): boolean
  /** The names of the checks and of the inputs, in the order of the work. */
  readonly checks: readonly string[]
  readonly inputs: readonly string[]
  /** An entry's label; a column's with its table's before it. */
  label(name: string): string

  moved(): readonly Moved[]
  /** What the last change moved at one name; for a table, at its columns. */
  movedAt(name: string): readonly Moved[]
  /** The texts in force in an entered table, one object a row; and those the template starts with. */
  typedRows(table: string): readonly TypedRow[]
  originalRows(table: string): readonly TypedRow[]

  edit(name: string, typed: string): EditResult
  editTable(name: string, rows: readonly TypedRow[]): EditResult
  restore(name: string): EditResult

  unitSystem(): UnitSystem
  showIn(system: UnitSystem): void
  scenarios(): readonly ScenarioView[]
  scenario(): ScenarioView
  saveCopy(title: string): ScenarioView
  switchTo(id: string): void
  rename(id: string, title: string): void
  /** Returns what puts it back. */
  remove(id: string): () => void
  compare(left: string, right: string): Comparison

  /** The stages of the work as they stand. */
  stages(): readonly StageView[]
  /** What was ticked and noted of each stage. */
  progress(): Readonly<Record<string, StageProgress>>
  note(stage: string, change: StageProgress): void

  /** What a prover may still solve better. */
  unproven(): readonly Unproven[]
  /** Puts a prover's solution in place, if it is still what is asked. */
  settle(table: string, given: unknown, solution: Solution): boolean

  /** What is saved; not tracked. */
  document(): BookDocument
  /** Called after each change; returns what stops it. */
  subscribe(listener: (change: BookChange) => void): () => void
}

const NOTHING_MOVED: readonly Moved[] = []

/** One signal a name, made when it is first read. */
function signals<T>(read: (name: string) => T) {
  const known = new Map<string, { readonly get: Accessor<T>; readonly set: Setter<T> }>()
  return {
    get(name: string): T {
      let signal = known.get(name)
      if (signal === undefined) {
        const [get, set] = createSignal(read(name))
        signal = { get, set }
        known.set(name, signal)
      }
      return signal.get()
    },
    refresh(touched: (name: string, now: T) => boolean): void {
      for (const [name, signal] of known) {
        if (untrack(() => touched(name, signal.get()))) signal.set(() => read(name))
      }
    },
  }
}

/** Mirrors a book into Solid. After an edit only what it touched is read again. */
export function mirror(book: Book): Sheet {
  const [version, setVersion] = createSignal(0)
  const [noted, setNoted] = createSignal(0)
  const entries = signals((name) => book.entry(name))
  const tables = signals((name) => book.table(name))
  const namesOf = (kind: Entry["kind"]) =>
    book.sections.flatMap((section) =>
      section.entries.filter((one) => one.kind === kind).map((one) => one.name),
    )
  const checks = namesOf("check")
  const labels = labelsOf(book.definition)
  const drawn = new Set((book.definition.drawings ?? []).flatMap((drawing) => [...drawnNames(drawing)]))
  let movedByName = byName(book.moved())
  const movedNames = signals((name) => movedByName.get(name) ?? NOTHING_MOVED)

  function refresh(touched: (name: string, view?: EntryView) => boolean): void {
    const before = movedByName
    movedByName = byName(book.moved())
    batch(() => {
      entries.refresh(touched)
      tables.refresh((name) => touched(name))
      movedNames.refresh((name) => before.has(name) || movedByName.has(name))
      setVersion((number) => number + 1)
    })
  }

  function changing(name: string, change: () => EditResult): EditResult {
    const result = change()
    if (result.accepted) {
      const touched = touchedBy(book, name, result.moved)
      // A check's advice has values of any entry in it; what is wrong may be wrong for another reason now.
      refresh(
        (one, view) =>
          touched.has(one) || view?.kind === "check" || (view !== undefined && view.state !== "ok"),
      )
    }
    return result
  }

  function changingAll<T>(change: () => T): T {
    const result = change()
    refresh(() => true)
    return result
  }

  const tracked = <T>(read: () => T): T => {
    version()
    return read()
  }

  return {
    definition: book.definition,
    has: (name) => book.has(name),
    names: () => book.names(),
    entry: entries.get,
    table: tables.get,
    working: (name, row) => tracked(() => book.working(name, row)),
    leansOn: (name) => book.leansOn(name),
    leanedOnBy: (name) => book.leanedOnBy(name),
    search: (words) => book.search(words),
    isDrawn: (name) => drawn.has(name),
    checks,
    inputs: namesOf("input"),
    label: (name) => labels.get(name) ?? name,

    moved: () => tracked(() => book.moved()),
    movedAt: movedNames.get,
    typedRows: (table) => tracked(() => typedRows(book, table) ?? originalRows(book.definition, table)),
    originalRows: (table) => originalRows(book.definition, table),

    edit: (name, typed) => changing(name, () => book.edit(name, typed)),
    editTable: (name, rows) => changing(name, () => book.editTable(name, rows)),
    restore: (name) => changing(name, () => book.restore(name)),

    unitSystem: () => tracked(() => book.unitSystem),
    showIn: (system) => changingAll(() => book.showIn(system)),
    scenarios: () => tracked(() => book.scenarios()),
    scenario: () => tracked(() => book.scenario),
    saveCopy: (title) => changingAll(() => book.saveCopy(title)),
    switchTo: (id) => changingAll(() => book.switchTo(id)),
    rename: (id, title) => changingAll(() => book.rename(id, title)),
    remove(id) {
      const putBack = changingAll(() => book.remove(id))
      return () => changingAll(putBack)
    },
    stages: () => tracked(() => book.stages()),
    progress: () => {
      noted()
      return book.progress()
    },
    note(stage, change) {
      book.note(stage, change)
      setNoted((number) => number + 1)
    },
    unproven: () => tracked(() => book.unproven()),
    settle: (table, given, solution) => changing(table, () => book.settle(table, given, solution)).accepted,
    compare: (left, right) => tracked(() => book.compare(left, right)),

    document: () => book.document(),
    subscribe: (listener) => book.subscribe(listener),
  }
}

function labelsOf(definition: Definition): ReadonlyMap<string, string> {
  const labels = new Map<string, string>()
  for (const entry of definition.sections.flatMap((section) => section.entries)) {
    labels.set(entry.name, entry.label)
    if (entry.kind !== "table") continue
    for (const column of entry.columns)
      labels.set(`${entry.name}.${column.name}`, `${entry.label}: ${column.label}`)
  }
  return labels
}

function byName(moved: readonly Moved[]): ReadonlyMap<string, readonly Moved[]> {
  const lists = new Map<string, Moved[]>()
  const add = (name: string, one: Moved): void => {
    const list = lists.get(name)
    if (list === undefined) lists.set(name, [one])
    else list.push(one)
  }
  for (const one of moved) {
    add(one.name, one)
    const dot = one.name.indexOf(".")
    if (dot > 0) add(one.name.slice(0, dot), one)
  }
  return lists
}

function typedRows(book: Book, table: string): readonly TypedRow[] | undefined {
  const current = book.scenario.id
  return book.document().scenarios.find((scenario) => scenario.id === current)?.tables[table]
}

function originalRows(definition: Definition, table: string): readonly TypedRow[] {
  const entries = definition.sections.flatMap((section) => section.entries)
  const entry = entries.find((one) => one.name === table)
  return entry?.kind === "table" && entry.rows.kind === "input" ? entry.rows.default : []
}
