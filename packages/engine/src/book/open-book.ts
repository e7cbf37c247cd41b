import type { Definition } from "../definition/definition.ts"
import type { Solution } from "../definition/solver.ts"
import type { DrawingSource } from "../drawing/values.ts"
import { buildDoubleGraph } from "../graph/double-graph.ts"
import type { GraphBuilder } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import { type Scales, USUAL_SCALES } from "../quantity/scales.ts"
import type { UnitSystem } from "../units/measure.ts"
import type { Book, BookChange } from "./book.ts"
import { changesBetween } from "./changes.ts"
import { compareSides, type Side } from "./compare.ts"
import { type Compiled, compile, ownerOf } from "./compile.ts"
import { type BookDocument, DOCUMENT_FORMAT, DOCUMENT_VERSION, type StageProgress } from "./document.ts"
import { refused } from "./edit-result.ts"
import type { Viewer } from "./entry-view.ts"
import { History, type HistoryStep } from "./history.ts"
import { Holding } from "./holding.ts"
import { type Outline, outline } from "./outline.ts"
import { addOwn, changeOwn, type OwnOutcome, removeOwn, renameOwn, withoutUnreadable } from "./own-edits.ts"
import { type OwnHeading, withOwn } from "./own-entries.ts"
import { type OwnEntry, ownName } from "./own-entry.ts"
import { findRemedies } from "./remedies.ts"
import { type Scenario, toScenarioDocument, viewScenario } from "./scenario.ts"
import { searchNames } from "./search.ts"
import { Settled, type Unproven } from "./settled.ts"
import { Shown } from "./shown.ts"
import { readStages, type StageView } from "./stages.ts"
import { newState, type State, savedState, scenarioOf, withCopy, withScenario } from "./state.ts"
import { Trial } from "./trial.ts"
import type { TypedRow } from "./typed.ts"
import { restoreIn, type Typing, typeInto, typeRows } from "./typing.ts"
import type { Comparison, EditResult, Moved, RemedyView, ScenarioView } from "./views.ts"
import { Work } from "./work.ts"

export interface OpenOptions {
  readonly document?: BookDocument
  /** Shown units; the document's or the template's where absent. */
  readonly unitSystem?: UnitSystem
  readonly scales?: Scales
  readonly graph?: GraphBuilder
  /** The clock of the history, in milliseconds since 1970. */
  readonly now?: () => number
  /** The words over the section of the user's own entries. */
  readonly own?: OwnHeading
}

const LONGEST_TITLE = 200

/**
 * Opens a workbook of this kind: new, or from what was saved. A saved value that can no longer be read is reported and
 * the template's own is used in its place; its text stays in the document. So does an entry of the user's own that no
 * longer fits the template.
 */
export function openBook(
  definition: Definition,
  options: OpenOptions = {},
): { readonly book: Book; readonly problems: readonly Problem[] } {
  const { document } = options
  const saved = document === undefined ? undefined : savedState(document)
  const system = options.unitSystem ?? saved?.system ?? definition.unitSystem
  const state: State = saved === undefined ? newState(system) : { ...saved, system }
  const template = outline(definition)
  const merged = withOwn(definition, template, state.own, options.own)
  const compiled = compile(merged.definition)
  const fixed: Fixed = {
    definition,
    template,
    heading: options.own,
    holding: new Holding(options.scales ?? USUAL_SCALES),
    build: options.graph ?? buildDoubleGraph,
    now: options.now ?? Date.now,
    settled: new Settled(),
    unknown: document === undefined ? {} : unknownMembers(document),
  }
  const work = new Work(compiled, fixed.holding, fixed.build, scenarioOf(state, state.current), fixed.settled)
  const { sections } = merged.definition
  const book = new OpenBook(
    fixed,
    state,
    { sections, unfit: merged.unfit },
    work,
    new History(document?.history),
  )
  return { book, problems: [...merged.unfit.values(), ...work.unread] }
}

/** What stays as it is while a workbook is open. */
interface Fixed {
  readonly definition: Definition
  /** The names of the template, without the user's own. */
  readonly template: Outline
  readonly heading: OwnHeading | undefined
  readonly holding: Holding
  readonly build: GraphBuilder
  readonly now: () => number
  readonly settled: Settled
  /** Members of the saved document that this version does not know. */
  readonly unknown: Readonly<Record<string, unknown>>
}

/** What came of the definition and the user's own entries. */
interface Merged {
  readonly sections: Definition["sections"]
  /** Own entries that take no part, and why. */
  readonly unfit: ReadonlyMap<OwnEntry, Problem>
}

interface Built {
  readonly compiled: Compiled
  readonly merged: Merged
}

function unknownMembers(document: BookDocument): Record<string, unknown> {
  const { format, version, template, unitSystem, current, scenarios, own, history, progress, ...unknown } =
    document
  return unknown
}

class OpenBook implements Book {
  readonly #fixed: Fixed
  readonly #history: History
  readonly #listeners = new Set<(change: BookChange) => void>()
  readonly #usedIds: Set<string>
  #state: State
  #merged: Merged
  readonly #shown: Shown

  constructor(fixed: Fixed, state: State, merged: Merged, work: Work, history: History) {
    this.#fixed = fixed
    this.#state = state
    this.#merged = merged
    this.#history = history
    this.#shown = new Shown(fixed.holding, work, this.#current, state.system)
    this.#usedIds = new Set(state.scenarios.map((scenario) => scenario.id))
    for (const change of history.steps().flatMap((step) => step.changes)) {
      const id = change.of === "scenario" ? (change.from ?? change.to)?.id : undefined
      if (id !== undefined) this.#usedIds.add(id)
    }
  }

  get definition(): Definition {
    return this.#fixed.definition
  }

  get sections(): Definition["sections"] {
    return this.#merged.sections
  }

  names(): readonly string[] {
    return this.#work.names()
  }

  has(name: string): boolean {
    return this.#items.has(name)
  }

  entry(name: string): ReturnType<Book["entry"]> {
    const view = this.#viewer.view(name)
    return this.#fixed.template.has(name) ? view : { ...view, own: true }
  }

  table(name: string): ReturnType<Book["table"]> {
    const item = this.#items.get(name)
    if (item?.kind !== "table") throw new RangeError(`there is no table ${name}`)
    const columns = item.entry.columns.map((column) => this.entry(`${name}.${column.name}`))
    return { name, columns, rowCount: this.#work.calculation.rows(name) }
  }

  search(words: string): readonly string[] {
    return searchNames(this.#items, words)
  }

  namesStartingWith(prefix: string): readonly string[] {
    return this.names().filter((name) => name.startsWith(prefix))
  }

  working(name: string, row = 1): ReturnType<Book["working"]> {
    return this.#viewer.working(name, row)
  }

  leansOn(name: string): readonly string[] {
    return this.#viewer.leansOn(name)
  }

  leanedOnBy(name: string): readonly string[] {
    return this.#work.leanedOnBy(name, this.#viewer)
  }

  edit(name: string, typed: string): EditResult {
    return this.editAll(Object.fromEntries([[name, typed]]))
  }

  editAll(typed: Readonly<Record<string, string>>): EditResult {
    return this.#type(typeInto(this.#current, typed, this.#work.compiled, this.#state.system))
  }

  preview(name: string, typed: string): EditResult {
    const typing = typeInto(
      this.#current,
      Object.fromEntries([[name, typed]]),
      this.#work.compiled,
      this.#state.system,
    )
    if ("problems" in typing) return refused(...typing.problems)
    if (typing.scenario.sealed) return refused(sealedProblem(typing.scenario))
    return this.#told("previewed", this.#shown.preview(typing.scenario))
  }

  endPreview(): EditResult {
    const shown = this.#shown.isPreview
    const result = this.#shown.endPreview(this.#current)
    return shown ? this.#told("previewed", result) : result
  }

  editTable(name: string, rows: readonly TypedRow[]): EditResult {
    return this.#type(typeRows(this.#current, name, rows, this.#items, this.#state.system))
  }

  restore(name: string): EditResult {
    return this.#type(restoreIn(this.#current, name, this.#items))
  }

  startAgain(): EditResult {
    return this.#type({ scenario: { ...this.#current, typed: new Map(), tables: new Map() } })
  }

  moved(): readonly Moved[] {
    return this.#shown.moved()
  }

  movedAt(name: string): readonly Moved[] {
    return this.#shown.movedAt(name)
  }

  before(): DrawingSource | undefined {
    return this.#shown.before()
  }

  remediesFor(check: string): readonly RemedyView[] {
    const item = this.#items.get(check)
    if (item?.kind !== "value" || item.entry.kind !== "check") throw new RangeError(`${check} is not a check`)
    if ((item.entry.remedies ?? []).length === 0) return []
    const { holding, build, settled } = this.#fixed
    const { system } = this.#state
    const { compiled } = this.#work
    const trial = new Trial({ compiled, holding, build, system, scenario: this.#current, settled })
    return findRemedies(item.entry, trial)
  }

  tryChange(title: string, typed: Readonly<Record<string, string>>): EditResult {
    const copy = this.#copyOf(this.#current, title)
    const typing = typeInto(copy, typed, this.#work.compiled, this.#state.system)
    if ("problems" in typing) return refused(...typing.problems)
    return this.#go(withCopy(this.#state, typing.scenario))
  }

  unproven(): readonly Unproven[] {
    return this.#work.calculation.unproven()
  }

  settle(table: string, given: unknown, solution: Solution): EditResult {
    const item = this.#items.get(table)
    const rows = item?.kind === "table" ? item.entry.rows : undefined
    if (rows?.kind !== "solved" || rows.proof === undefined)
      throw new RangeError(`no prover answers for ${table}`)
    const problem = JSON.stringify(given)
    this.#fixed.settled.put(table, problem, solution)
    if (!this.#work.calculation.waitsFor(table, problem)) return refused()
    return this.#told("settled", this.#shown.takeUp(table))
  }

  get unitSystem(): UnitSystem {
    return this.#state.system
  }

  showIn(system: UnitSystem): void {
    if (system !== this.#state.system) this.#go({ ...this.#state, system })
  }

  scenarios(): readonly ScenarioView[] {
    return this.#state.scenarios.map(viewScenario)
  }

  get scenario(): ScenarioView {
    return viewScenario(this.#current)
  }

  saveCopy(title: string): ScenarioView {
    this.#go(withCopy(this.#state, this.#copyOf(this.#current, title)))
    return this.scenario
  }

  seal(title: string): ScenarioView {
    const sealed = { ...this.#copyOf(this.#current, title), sealed: true }
    this.#go({ ...this.#state, scenarios: [...this.#state.scenarios, sealed] })
    return viewScenario(sealed)
  }

  switchTo(id: string): void {
    scenarioOf(this.#state, id)
    if (id !== this.#state.current) this.#go({ ...this.#state, current: id })
  }

  rename(id: string, title: string): void {
    const before = scenarioOf(this.#state, id)
    this.#go(withScenario(this.#state, { ...before, title: cleanTitle(title, before.title) }))
  }

  remove(id: string): () => void {
    const removed = scenarioOf(this.#state, id)
    const { scenarios, current } = this.#state
    if (scenarios.length === 1) throw new RangeError("the last scenario cannot be removed")
    const place = scenarios.indexOf(removed)
    const rest = scenarios.filter((scenario) => scenario.id !== id)
    const neighbour = rest[Math.max(0, place - 1)] ?? removed
    this.#go({ ...this.#state, scenarios: rest, current: current === id ? neighbour.id : current })
    return () => {
      const now = this.#state
      if (now.scenarios.some((scenario) => scenario.id === id)) return
      const back = now.scenarios.toSpliced(place, 0, removed)
      this.#go({ ...now, scenarios: back, current: current === id ? id : now.current })
    }
  }

  compare(left: string, right: string): Comparison {
    const { holding } = this.#fixed
    return compareSides(this.#side(left), this.#side(right), this.#items, holding, this.#state.system)
  }

  undo(): boolean {
    const before = this.#history.undo(this.#state)
    if (before !== undefined) this.#show(before)
    return before !== undefined
  }

  redo(): boolean {
    const after = this.#history.redo(this.#state)
    if (after !== undefined) this.#show(after)
    return after !== undefined
  }

  history(): readonly HistoryStep[] {
    return this.#history.steps()
  }

  copyAt(step: number, title = ""): ScenarioView {
    const then = this.#history.stateAfter(step, this.#state)
    const copied = scenarioOf(then, then.current)
    this.#go(withCopy(this.#state, this.#copyOf(copied, title.trim() === "" ? copied.title : title)))
    return this.scenario
  }

  addEntry(draft: OwnEntry): EditResult {
    return this.addEntries([draft])
  }

  addEntries(drafts: readonly OwnEntry[]): EditResult {
    return this.#changeOwn(addOwn(this.#around(), drafts))
  }

  changeEntry(name: string, draft: OwnEntry): EditResult {
    return this.#changeOwn(changeOwn(this.#around(), name, draft), name)
  }

  renameEntry(from: string, to: string): EditResult {
    return this.#changeOwn(renameOwn(this.#around(), from, to))
  }

  removeEntry(name: string, options: { readonly evenIfUsed?: boolean } = {}): EditResult {
    const outcome = removeOwn(this.#around(), name, options.evenIfUsed ?? false)
    return "problems" in outcome ? refused(...outcome.problems) : this.#go(outcome.state)
  }

  unfitEntries(): ReadonlyMap<OwnEntry, Problem> {
    return this.#merged.unfit
  }

  ownEntries(): readonly OwnEntry[] {
    return this.#state.own
  }

  stages(): readonly StageView[] {
    return readStages(this)
  }

  progress(): Readonly<Record<string, StageProgress>> {
    return this.#state.progress
  }

  note(stage: string, change: StageProgress): EditResult {
    const { progress } = this.#state
    return this.#go({
      ...this.#state,
      progress: { ...progress, [stage]: { ...progress[stage], ...change } },
    })
  }

  problems(): readonly Problem[] {
    const seen = new Set<string>()
    return this.names()
      .flatMap((name) => this.entry(name).problems)
      .filter((problem) => {
        if (problem.code === "leans_on_problem" || problem.code === "needs_entry") return false
        const key = JSON.stringify(problem)
        return seen.has(key) ? false : seen.add(key)
      })
  }

  document(): BookDocument {
    const { progress } = this.#state
    return {
      ...this.#fixed.unknown,
      format: DOCUMENT_FORMAT,
      version: DOCUMENT_VERSION,
      template: this.definition.id,
      unitSystem: this.#state.system,
      current: this.#state.current,
      scenarios: this.#state.scenarios.map(toScenarioDocument),
      own: [...this.#state.own],
      history: this.#history.toDocument(),
      ...(Object.keys(progress).length === 0 ? {} : { progress }),
    }
  }

  subscribe(listener: (change: BookChange) => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  get #items(): Outline {
    return this.#work.compiled.outline
  }

  get #work(): Work {
    return this.#shown.work
  }

  get #viewer(): Viewer {
    return this.#shown.viewer
  }

  get #current(): Scenario {
    return scenarioOf(this.#state, this.#state.current)
  }

  /** Puts what was typed in place of the scenario that is open, unless that is sealed. */
  #type(typing: Typing): EditResult {
    if ("problems" in typing) return refused(...typing.problems)
    if (typing.scenario.sealed) return refused(sealedProblem(typing.scenario))
    return this.#go(withScenario(this.#state, typing.scenario))
  }

  #copyOf(scenario: Scenario, title: string): Scenario {
    let number = this.#usedIds.size + 1
    while (this.#usedIds.has(`copy-${number}`)) number++
    const id = `copy-${number}`
    return { ...scenario, id, title: cleanTitle(title, `Copy ${number}`), sealed: false }
  }

  #around() {
    return { state: this.#state, template: this.#fixed.template, all: this.#items }
  }

  /** Own entries are judged together with all the rest: a ring, or what leaned on what they were, is found here. */
  #changeOwn(outcome: OwnOutcome, changed?: string): EditResult {
    if ("problems" in outcome) return refused(...outcome.problems)
    const built = this.#build(outcome.state)
    const own = new Set(outcome.state.own.map(ownName))
    const known = new Set([...this.#work.compiled.problems.values()].flat().map((one) => JSON.stringify(one)))
    const problems = [...built.compiled.problems]
      .filter(([id]) => own.has(ownerOf(id, built.compiled.outline)))
      .flatMap(([, found]) => found)
      .filter((one) => one.code !== "leans_on_problem" && !known.has(JSON.stringify(one)))
    if (problems.length > 0) return refused(...problems)
    const next =
      changed === undefined
        ? outcome.state
        : withoutUnreadable(outcome.state, changed, built.compiled.outline)
    return this.#go(next, built)
  }

  #build(state: State): Built {
    const { definition, template, heading } = this.#fixed
    const { definition: whole, unfit } = withOwn(definition, template, state.own, heading)
    return { compiled: compile(whole), merged: { sections: whole.sections, unfit } }
  }

  /** Makes a change: noted in the history, followed, and told. */
  #go(next: State, built?: Built): EditResult {
    const changes = changesBetween(this.#state, next)
    if (changes.length > 0) this.#history.record(changes, this.#fixed.now())
    for (const { id } of next.scenarios) this.#usedIds.add(id)
    return this.#show(next, built)
  }

  /** Follows from one state to another. */
  #show(next: State, built?: Built): EditResult {
    const isOther = this.#state.own !== next.own
    this.#state = next
    const shown = { scenario: this.#current, system: next.system }
    if (!isOther) return this.#told("changed", this.#shown.show(shown))
    const { compiled, merged } = built ?? this.#build(next)
    this.#merged = merged
    const { holding, build, settled } = this.#fixed
    const work = new Work(compiled, holding, build, this.#current, settled)
    return this.#told("changed", this.#shown.show({ ...shown, work }))
  }

  #tell(change: BookChange): void {
    for (const listener of this.#listeners) listener(change)
  }

  #told(change: BookChange, result: EditResult): EditResult {
    this.#tell(change)
    return result
  }

  /** A scenario that is not open is worked out in a graph of its own. */
  #side(id: string): Side {
    const scenario = scenarioOf(this.#state, id)
    const { holding, build, settled } = this.#fixed
    const isOpen = id === this.#state.current
    const work = isOpen ? this.#work : new Work(this.#work.compiled, holding, build, scenario, settled)
    const viewer = isOpen ? this.#viewer : work.viewer(this.#state.system, scenario)
    return {
      scenario: viewScenario(scenario),
      calculation: work.calculation,
      check: (name) => viewer.check(name),
    }
  }
}

const sealedProblem = ({ title }: Scenario): Problem => ({ code: "scenario_sealed", at: {}, title })

function cleanTitle(title: string, otherwise: string): string {
  const clean = title.trim().slice(0, LONGEST_TITLE)
  return clean === "" ? otherwise : clean
}
