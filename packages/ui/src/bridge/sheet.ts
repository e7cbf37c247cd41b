import {
  type Book,
  type BookChange,
  type BookDocument,
  type Comparison,
  type Definition,
  type DrawingSource,
  drawnNames,
  type EditResult,
  type EntryView,
  type HistoryStep,
  type Moved,
  type OwnEntry,
  type Problem,
  type ScenarioView,
  type Section,
  type Solution,
  type StageProgress,
  type StageView,
  type TableView,
  type UnitSystem,
  type Unproven,
  type Working,
} from "@pegbook/engine"
import { batch, createSignal, untrack } from "solid-js"
import { spoken } from "../text/spoken.ts"
import { AT_ONCE, type Later } from "./later.ts"
import { Owed } from "./owed.ts"
import { Reader, type Touched } from "./reader.ts"
import { withoutRow } from "./walk.ts"

/** One row of an entered table: a text for each typed column. */
export type TypedRow = Readonly<Record<string, string>>

/** What the screens may read and do. Every read is tracked by Solid, and moves only when its own entry does. */
export interface Sheet {
  readonly definition: Definition
  /** The template's, and one of the user's own at the end once there is an entry of their own. */
  sections(): readonly Section[]
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
  checks(): readonly string[]
  inputs(): readonly string[]
  /** Whether a check names changes that may make it pass. */
  hasRemedies(check: string): boolean
  /** An entry's label; a column's with its table's before it. */
  label(name: string): string

  /** Follows when the page has been painted. */
  moved(): readonly Moved[]
  /** What the last change moved at one name; for a table, at its columns. */
  movedAt(name: string): readonly Moved[]
  /** As a drawing would have read the workbook before the last change; nothing where that moved nothing. */
  before(): DrawingSource | undefined
  /** The same reads for what is out of sight, or leans on most of the workbook: they follow when the page has been painted. */
  readonly later: Pick<Sheet, "entry" | "table" | "movedAt">
  /** From a change until all that follows later has followed. */
  settling(): boolean
  /** The texts in force in an entered table, one object a row; and those the template starts with. */
  typedRows(table: string): readonly TypedRow[]
  originalRows(table: string): readonly TypedRow[]

  edit(name: string, typed: string): EditResult
  /** Shows what an edit would give, and makes none: neither undone nor saved. The next edit takes its place. */
  preview(name: string, typed: string): EditResult
  endPreview(): void
  editTable(name: string, rows: readonly TypedRow[]): EditResult
  restore(name: string): EditResult
  /** Puts all that was typed in the open scenario back, in one step. */
  startAgain(): EditResult
  /** What was typed over figures, formulas and cells of tables of figures in the scenario that is open, by name. */
  typedOver(): readonly string[]
  /** Types into a copy of the open scenario under this title, and switches to it. */
  tryChange(title: string, typed: Readonly<Record<string, string>>): EditResult

  undo(): boolean
  redo(): boolean
  /** The oldest first; those undone last. */
  history(): readonly HistoryStep[]
  copyAt(step: number, title: string): ScenarioView
  seal(title: string): ScenarioView

  ownEntries(): readonly OwnEntry[]
  /** Those that take no part, and why. */
  unfitEntries(): ReadonlyMap<OwnEntry, Problem>
  addEntry(draft: OwnEntry): EditResult
  changeEntry(name: string, draft: OwnEntry): EditResult
  renameEntry(from: string, to: string): EditResult
  removeEntry(name: string, evenIfUsed: boolean): EditResult
  namesStartingWith(prefix: string): readonly string[]

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

  /** The stages of the work as they stand; they follow when the page has been painted. */
  stages(): readonly StageView[]
  /** What was ticked and noted of each stage. */
  progress(): Readonly<Record<string, StageProgress>>
  note(stage: string, change: StageProgress): void

  /** What a prover may still solve better; follows when the page has been painted. */
  unproven(): readonly Unproven[]
  /** Puts a prover's solution in place, if it is still what is asked. */
  settle(table: string, given: unknown, solution: Solution): boolean

  /** What is saved; not tracked. */
  document(): BookDocument
  /** Called after each change; returns what stops it. */
  subscribe(listener: (change: BookChange) => void): () => void
}

const EVERYTHING: Touched = () => true
const NOTHING: Touched = () => false

/** While one preview follows another, as under a finger, what is out of sight waits until they pause. */
const PAUSE = 150

/**
 * Mirrors a book into Solid. After an edit only what it touched is read again: at once what is watched through the sheet,
 * and when the page has been painted what is watched through {@link Sheet.later}.
 */
export function mirror(book: Book, around: Later = AT_ONCE): Sheet {
  const [outline, setOutline] = createSignal(outlineOf(book.sections))
  const [arranged, setArranged] = createSignal(0)
  const [settling, setSettling] = createSignal(false)
  const drawn = new Set((book.definition.drawings ?? []).flatMap((drawing) => [...drawnNames(drawing)]))
  const now = new Reader(book)
  const rest = new Reader(book)
  const owed = new Owed(book)
  let cancel = (): void => {}

  function refresh(touched: Touched, isPreview: boolean): void {
    batch(() => {
      if (untrack(outline).sections !== book.sections) setOutline(outlineOf(book.sections))
      now.refresh(touched)
      setSettling(true)
    })
    cancel()
    cancel = isPreview ? around.clock.after(PAUSE, settle) : around.whenPainted(settle)
  }

  function settle(): void {
    cancel = () => {}
    batch(() => {
      rest.refresh(owed.pay())
      setSettling(false)
    })
  }

  function changing(name: string, change: () => EditResult, isPreview = false): EditResult {
    const result = change()
    if (result.accepted) {
      const edited = withoutRow(name)
      owed.add({ name: edited, result, isPreview })
      // Another text for the same value moves nothing, and shows in its field.
      const typedIn = [edited, edited.split(".")[0]]
      refresh((one) => typedIn.includes(one) || result.mayHaveMoved(one), isPreview)
    }
    return result
  }

  function changingAll<T>(change: () => T): T {
    const result = change()
    owed.addEverything()
    batch(() => {
      setArranged((number) => number + 1)
      refresh(EVERYTHING, false)
    })
    return result
  }

  const tracked = <T>(read: () => T): T => now.tracked(read)
  /** For what no edit of a value changes. */
  const trackedWhenArranged = <T>(read: () => T): T => {
    arranged()
    return read()
  }

  const sheet: Omit<Sheet, "later"> = {
    definition: book.definition,
    has: (name) => book.has(name),
    names: () => book.names(),
    entry: now.entries.get,
    table: now.tables.get,
    sections: () => outline().sections,
    working: (name, row) => tracked(() => (book.has(name) ? book.working(name, row) : undefined)),
    leansOn: (name) => tracked(() => (book.has(name) ? book.leansOn(name) : [])),
    leanedOnBy: (name) => tracked(() => (book.has(name) ? book.leanedOnBy(name) : [])),
    search: (words) => book.search(words),
    isDrawn: (name) => drawn.has(name),
    checks: () => outline().checks,
    inputs: () => outline().inputs,
    hasRemedies: (check) => outline().withRemedies.has(check),
    label: (name) => outline().labels.get(name) ?? name,

    moved: () => rest.tracked(() => book.moved()),
    movedAt: now.movedNames.get,
    before: () => tracked(() => book.before()),
    settling,
    typedRows: (table) => tracked(() => typedRows(book, table) ?? originalRows(book.definition, table)),
    originalRows: (table) => originalRows(book.definition, table),

    edit: (name, typed) => changing(name, () => book.edit(name, typed)),
    preview: (name, typed) => changing(name, () => book.preview(name, typed), true),
    endPreview: () => void changingAll(() => book.endPreview()),
    editTable: (name, rows) => changing(name, () => book.editTable(name, rows)),
    restore: (name) => changing(name, () => book.restore(name)),
    startAgain: () => changingAll(() => book.startAgain()),
    typedOver: () =>
      tracked(() => {
        const { current, scenarios } = book.document()
        const typed = scenarios.find((scenario) => scenario.id === current)?.typed ?? {}
        const kindOf = (name: string) => (book.has(name) ? book.entry(name).kind : undefined)
        const isOver = (name: string) => (kindOf(withoutRow(name)) ?? "input") !== "input"
        const place = new Map(book.names().map((name, index) => [name, index]))
        return Object.keys(typed)
          .filter(isOver)
          .sort((a, b) => (place.get(withoutRow(a)) ?? 0) - (place.get(withoutRow(b)) ?? 0))
      }),
    tryChange: (title, typed) => changingAll(() => book.tryChange(title, typed)),

    undo: () => changingAll(() => book.undo()),
    redo: () => changingAll(() => book.redo()),
    history: () => tracked(() => book.history()),
    copyAt: (step, title) => changingAll(() => book.copyAt(step, title)),
    seal: (title) => changingAll(() => book.seal(title)),

    ownEntries: () => trackedWhenArranged(() => book.ownEntries()),
    unfitEntries: () => trackedWhenArranged(() => book.unfitEntries()),
    addEntry: (draft) => changingAll(() => book.addEntry(draft)),
    changeEntry: (name, draft) => changingAll(() => book.changeEntry(name, draft)),
    renameEntry: (from, to) => changingAll(() => book.renameEntry(from, to)),
    removeEntry: (name, evenIfUsed) => changingAll(() => book.removeEntry(name, { evenIfUsed })),
    namesStartingWith: (prefix) => book.namesStartingWith(prefix),

    unitSystem: () => trackedWhenArranged(() => book.unitSystem),
    showIn: (system) => changingAll(() => book.showIn(system)),
    scenarios: () => trackedWhenArranged(() => book.scenarios()),
    scenario: () => trackedWhenArranged(() => book.scenario),
    saveCopy: (title) => changingAll(() => book.saveCopy(title)),
    switchTo: (id) => changingAll(() => book.switchTo(id)),
    rename: (id, title) => changingAll(() => book.rename(id, title)),
    remove(id) {
      const putBack = changingAll(() => book.remove(id))
      return () => changingAll(putBack)
    },
    stages: () => rest.tracked(() => book.stages()),
    progress: () => tracked(() => book.progress()),
    note(stage, change) {
      book.note(stage, change)
      refresh(NOTHING, false)
    },
    unproven: () => rest.tracked(() => book.unproven()),
    settle: (table, given, solution) => changing(table, () => book.settle(table, given, solution)).accepted,
    compare: (left, right) => rest.tracked(() => book.compare(left, right)),

    document: () => book.document(),
    subscribe: (listener) => book.subscribe(listener),
  }
  const later = { entry: rest.entries.get, table: rest.tables.get, movedAt: rest.movedNames.get }
  return { ...sheet, later }
}

/** What is read of the sections often. */
function outlineOf(sections: readonly Section[]) {
  const labels = new Map<string, string>()
  const checks: string[] = []
  const inputs: string[] = []
  const withRemedies = new Set<string>()
  for (const entry of sections.flatMap((section) => section.entries)) {
    labels.set(entry.name, entry.label)
    if (entry.kind === "input") inputs.push(entry.name)
    if (entry.kind === "check") {
      checks.push(entry.name)
      if ((entry.remedies ?? []).length > 0) withRemedies.add(entry.name)
    }
    if (entry.kind !== "table") continue
    for (const column of entry.columns)
      labels.set(`${entry.name}.${column.name}`, `${entry.label}${spoken.colon}${column.label}`)
  }
  return { sections, labels, checks, inputs, withRemedies }
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
