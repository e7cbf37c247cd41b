import type { Definition } from "../definition/definition.ts"
import { nearNames } from "../formula/near-names.ts"
import type { GraphBuilder } from "../graph/graph.ts"
import { buildHyperFormulaGraph } from "../graph/hyperformula-graph.ts"
import type { Problem } from "../problems/problem.ts"
import { type Scales, USUAL_SCALES } from "../quantity/scales.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import type { Book } from "./book.ts"
import { Calculation } from "./calculation.ts"
import { compareSides, type Side } from "./compare.ts"
import { type Compiled, compile } from "./compile.ts"
import { type BookDocument, DOCUMENT_FORMAT, DOCUMENT_VERSION } from "./document.ts"
import { Viewer } from "./entry-view.ts"
import { Faults } from "./faults.ts"
import { Holding } from "./holding.ts"
import { isUnder, readOver, typedOver } from "./overrides.ts"
import { readDifference, readScenario } from "./read-scenario.ts"
import { fromScenarioDocument, type Scenario, toScenarioDocument } from "./scenario.ts"
import { searchNames } from "./search.ts"
import { movedBetween, takeSnapshot } from "./snapshot.ts"
import { type ReadTyped, readRows, type TypedRow } from "./typed.ts"
import type { Comparison, EditResult, Moved, ScenarioView } from "./views.ts"

export interface OpenOptions {
  readonly document?: BookDocument
  /** Shown units; the document's or the template's where absent. */
  readonly unitSystem?: UnitSystem
  readonly scales?: Scales
  readonly graph?: GraphBuilder
}

const LONGEST_TITLE = 200

/**
 * Opens a workbook of this kind: new, or from what was saved. A saved value that can no longer be read is reported and
 * the template's own is used in its place; its text stays in the document.
 */
export function openBook(
  definition: Definition,
  options: OpenOptions = {},
): { readonly book: Book; readonly problems: readonly Problem[] } {
  const { document } = options
  const compiled = compile(definition)
  const saved = document?.scenarios.map(fromScenarioDocument) ?? []
  const first: Scenario = {
    id: "copy-1",
    title: "First plan",
    typed: new Map(),
    tables: new Map(),
    unknown: {},
  }
  const scenarios = saved.length > 0 ? saved : [first]
  const current = scenarios.find((scenario) => scenario.id === document?.current) ?? scenarios[0] ?? first
  const state: State = {
    scenarios,
    current,
    system: options.unitSystem ?? document?.unitSystem ?? definition.unitSystem,
    unknown: document === undefined ? {} : unknownMembers(document),
  }
  const holding = new Holding(options.scales ?? USUAL_SCALES)
  const { given, problems } = readScenario(compiled.outline, current)
  const build = options.graph ?? buildHyperFormulaGraph
  const calculation = new Calculation(compiled, holding, build, given)
  return { book: new OpenBook(definition, compiled, holding, build, calculation, state), problems }
}

interface State {
  scenarios: readonly Scenario[]
  current: Scenario
  system: UnitSystem
  /** Members of the saved document that this version does not know. */
  readonly unknown: Readonly<Record<string, unknown>>
}

function unknownMembers(document: BookDocument): Record<string, unknown> {
  const { format, version, template, unitSystem, current, scenarios, ...unknown } = document
  return unknown
}

class OpenBook implements Book {
  readonly definition: Definition
  readonly #compiled: Compiled
  readonly #holding: Holding
  readonly #build: GraphBuilder
  readonly #calculation: Calculation
  readonly #faults: Faults
  readonly #state: State
  readonly #listeners = new Set<() => void>()
  readonly #leanedOn: ReadonlyMap<string, readonly string[]>
  readonly #usedIds: Set<string>
  #viewer: Viewer
  #moved: readonly Moved[] = []

  constructor(
    definition: Definition,
    compiled: Compiled,
    holding: Holding,
    build: GraphBuilder,
    calculation: Calculation,
    state: State,
  ) {
    this.definition = definition
    this.#compiled = compiled
    this.#holding = holding
    this.#build = build
    this.#calculation = calculation
    this.#faults = new Faults(compiled, calculation)
    this.#state = state
    this.#usedIds = new Set(state.scenarios.map((scenario) => scenario.id))
    this.#viewer = this.#makeViewer()
    this.#leanedOn = invert(this.names(), (name) => this.leansOn(name))
  }

  get sections(): Definition["sections"] {
    return this.definition.sections
  }

  names(): readonly string[] {
    return [...this.#compiled.outline.keys()]
  }

  has(name: string): boolean {
    return this.#compiled.outline.has(name)
  }

  entry(name: string): ReturnType<Book["entry"]> {
    return this.#viewer.view(name)
  }

  table(name: string): ReturnType<Book["table"]> {
    const item = this.#compiled.outline.get(name)
    if (item?.kind !== "table") throw new RangeError(`there is no table ${name}`)
    const columns = item.entry.columns.map((column) => this.entry(`${name}.${column.name}`))
    return { name, columns, rowCount: this.#calculation.rows(name) }
  }

  search(words: string): readonly string[] {
    return searchNames(this.#compiled.outline, words)
  }

  working(name: string, row = 1): ReturnType<Book["working"]> {
    return this.#viewer.working(name, row)
  }

  leansOn(name: string): readonly string[] {
    return this.#viewer.leansOn(name)
  }

  leanedOnBy(name: string): readonly string[] {
    return this.#leanedOn.get(name) ?? []
  }

  edit(name: string, typed: string): EditResult {
    return this.editAll(Object.fromEntries([[name, typed]]))
  }

  editAll(typed: Readonly<Record<string, string>>): EditResult {
    const read = new Map<string, ReadTyped>()
    const problems: Problem[] = []
    for (const [name, text] of Object.entries(typed)) {
      const outcome = this.#readOver(name, text)
      if ("problem" in outcome) problems.push(outcome.problem)
      else read.set(name, outcome.read)
    }
    if (problems.length > 0) return { accepted: false, problems, moved: [] }
    const { current } = this.#state
    const texts = new Map(current.typed)
    for (const [name, { text }] of read) texts.set(name, text)
    return this.#change({ ...current, typed: texts })
  }

  editTable(name: string, rows: readonly TypedRow[]): EditResult {
    const at = { entry: name }
    const item = this.#compiled.outline.get(name)
    if (item === undefined)
      return refused({ code: "no_such_entry", at, name, near: nearNames(name, this.names()) })
    if (item.kind !== "table" || item.entry.rows.kind !== "input") {
      return refused({ code: "not_an_input", at, name, kind: this.entry(name).kind })
    }
    const outcome = readRows(item.entry, rows, this.#state.system)
    if ("problem" in outcome) return refused(outcome.problem)
    const { current } = this.#state
    const tables = new Map(current.tables).set(name, outcome.read.texts)
    return this.#change({ ...current, tables })
  }

  restore(name: string): EditResult {
    const items = this.#compiled.outline
    const refusal = this.#refusal(name)
    if (refusal !== undefined) return refused(refusal)
    const { current } = this.#state
    const typed = [...current.typed].filter(([typedName]) => !isUnder(typedName, name, items))
    const tables = [...current.tables].filter(([table]) => table !== name)
    return this.#change({ ...current, typed: new Map(typed), tables: new Map(tables) })
  }

  moved(): readonly Moved[] {
    return this.#moved
  }

  get unitSystem(): UnitSystem {
    return this.#state.system
  }

  showIn(system: UnitSystem): void {
    if (system === this.#state.system) return
    this.#state.system = system
    this.#moved = []
    this.#tell()
  }

  scenarios(): readonly ScenarioView[] {
    return this.#state.scenarios.map(({ id, title }) => ({ id, title }))
  }

  get scenario(): ScenarioView {
    const { id, title } = this.#state.current
    return { id, title }
  }

  saveCopy(title: string): ScenarioView {
    let number = this.#usedIds.size + 1
    while (this.#usedIds.has(`copy-${number}`)) number++
    const copy: Scenario = {
      ...this.#state.current,
      id: `copy-${number}`,
      title: cleanTitle(title, `Copy ${number}`),
    }
    this.#usedIds.add(copy.id)
    this.#state.scenarios = [...this.#state.scenarios, copy]
    this.#state.current = copy
    this.#moved = []
    this.#tell()
    return this.scenario
  }

  switchTo(id: string): void {
    const next = this.#scenario(id)
    if (next.id === this.#state.current.id) return
    this.#change(next)
  }

  rename(id: string, title: string): void {
    const before = this.#scenario(id)
    this.#replace({ ...before, title: cleanTitle(title, before.title) })
    this.#tell()
  }

  remove(id: string): () => void {
    const removed = this.#scenario(id)
    const { scenarios, current } = this.#state
    if (scenarios.length === 1) throw new RangeError("the last scenario cannot be removed")
    const place = scenarios.indexOf(removed)
    const wasCurrent = current.id === id
    const rest = scenarios.filter((scenario) => scenario.id !== id)
    this.#state.scenarios = rest
    const neighbour = rest[Math.max(0, place - 1)]
    if (wasCurrent && neighbour !== undefined) this.switchTo(neighbour.id)
    else this.#tell()
    return () => {
      if (this.#state.scenarios.some((scenario) => scenario.id === id)) return
      this.#state.scenarios = this.#state.scenarios.toSpliced(place, 0, removed)
      if (wasCurrent) this.switchTo(id)
      else this.#tell()
    }
  }

  compare(left: string, right: string): Comparison {
    const system = this.#state.system
    return compareSides(this.#side(left), this.#side(right), this.#compiled.outline, this.#holding, system)
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
    return {
      ...this.#state.unknown,
      format: DOCUMENT_FORMAT,
      version: DOCUMENT_VERSION,
      template: this.definition.id,
      unitSystem: this.#state.system,
      current: this.#state.current.id,
      scenarios: this.#state.scenarios.map(toScenarioDocument),
    }
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #readOver(name: string, typed: string): ReturnType<typeof readOver> {
    const over = typedOver(name, this.#compiled.outline)
    if (over !== undefined) {
      // A formula that cannot be read, or leans on one, is put right there: typing over it would only hide it.
      const [problem] = this.#compiled.problems.get(name) ?? []
      return problem === undefined ? readOver(over, typed, this.#state.system) : { problem }
    }
    const at = { entry: name }
    if (!this.has(name))
      return { problem: { code: "no_such_entry", at, name, near: nearNames(name, this.names()) } }
    return { problem: { code: "not_an_input", at, name, kind: this.entry(name).kind } }
  }

  /** Why nothing under a name can be put back; nothing where it can. */
  #refusal(name: string): Problem | undefined {
    const items = this.#compiled.outline
    const item = items.get(name)
    const table = item?.kind === "column" ? item.table : item?.kind === "table" ? item.entry : undefined
    if (typedOver(name, items) !== undefined || table?.rows.kind === "figures") return undefined
    if (item?.kind === "table" && item.entry.rows.kind === "input") return undefined
    const at = { entry: name }
    return item === undefined
      ? { code: "no_such_entry", at, name, near: nearNames(name, this.names()) }
      : { code: "not_an_input", at, name, kind: this.entry(name).kind }
  }

  #change(next: Scenario): EditResult {
    const given = readDifference(this.#compiled.outline, this.#state.current, next)
    const before = takeSnapshot(this.#compiled.outline, this.#calculation)
    this.#state.scenarios = this.#state.scenarios.map((scenario) =>
      scenario.id === next.id ? next : scenario,
    )
    this.#state.current = next
    this.#calculation.put(given)
    const after = takeSnapshot(this.#compiled.outline, this.#calculation)
    this.#moved = movedBetween(
      before,
      after,
      (name) => this.#measureOf(name),
      this.#holding,
      this.#state.system,
    )
    this.#tell()
    return { accepted: true, problems: [], moved: this.#moved }
  }

  #measureOf(name: string): MeasureId {
    const item = this.#compiled.outline.get(name)
    if (item === undefined || item.kind === "table") return "count"
    // A check's value is its ratio.
    return item.kind === "value" && item.entry.kind === "check" ? "ratio" : item.entry.measure
  }

  #scenario(id: string): Scenario {
    const found = this.#state.scenarios.find((scenario) => scenario.id === id)
    if (found === undefined) throw new RangeError(`there is no scenario ${id}`)
    return found
  }

  #replace(next: Scenario): void {
    this.#state.scenarios = this.#state.scenarios.map((scenario) =>
      scenario.id === next.id ? next : scenario,
    )
    if (this.#state.current.id === next.id) this.#state.current = next
  }

  /** A scenario that is not open is worked out in a graph of its own. */
  #side(id: string): Side {
    const { title, typed } = this.#scenario(id)
    const scenario = { id, title }
    if (id === this.#state.current.id) {
      return { scenario, calculation: this.#calculation, check: (name) => this.#viewer.check(name) }
    }
    const { given } = readScenario(this.#compiled.outline, this.#scenario(id))
    const calculation = new Calculation(this.#compiled, this.#holding, this.#build, given)
    const faults = new Faults(this.#compiled, calculation)
    const viewer = new Viewer(this.#compiled, calculation, faults, this.#holding, this.#state.system, typed)
    return { scenario, calculation, check: (name) => viewer.check(name) }
  }

  #makeViewer(): Viewer {
    const { system, current } = this.#state
    return new Viewer(this.#compiled, this.#calculation, this.#faults, this.#holding, system, current.typed)
  }

  #tell(): void {
    this.#viewer = this.#makeViewer()
    for (const listener of this.#listeners) listener()
  }
}

function refused(problem: Problem): EditResult {
  return { accepted: false, problems: [problem], moved: [] }
}

function cleanTitle(title: string, otherwise: string): string {
  const clean = title.trim().slice(0, LONGEST_TITLE)
  return clean === "" ? otherwise : clean
}

function invert(
  names: readonly string[],
  leansOn: (name: string) => readonly string[],
): ReadonlyMap<string, readonly string[]> {
  const inverted = new Map<string, string[]>()
  for (const name of names) {
    for (const needed of leansOn(name)) {
      const list = inverted.get(needed)
      if (list === undefined) inverted.set(needed, [name])
      else list.push(name)
    }
  }
  return inverted
}
