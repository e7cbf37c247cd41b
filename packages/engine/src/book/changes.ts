import type { Change } from "./document.ts"
import { ownName } from "./own-entry.ts"
import { fromScenarioDocument, type Scenario, toScenarioDocument } from "./scenario.ts"
import type { State } from "./state.ts"
import type { TypedRow } from "./typed.ts"

/** What makes one state into another: applied in order, it leads there, and in reverse order, back. */
export function changesBetween(before: State, after: State): readonly Change[] {
  const changes: Change[] = []
  const old = new Map(before.scenarios.map((scenario) => [scenario.id, scenario]))
  const kept = new Set(after.scenarios.map((scenario) => scenario.id))
  for (const [place, scenario] of [...before.scenarios.entries()].reverse())
    if (!kept.has(scenario.id))
      changes.push({ of: "scenario", place, from: toScenarioDocument(scenario), to: null })
  for (const scenario of after.scenarios) {
    const was = old.get(scenario.id)
    if (was !== undefined && was !== scenario) changes.push(...withinScenario(was, scenario))
  }
  for (const [place, scenario] of after.scenarios.entries())
    if (!old.has(scenario.id))
      changes.push({ of: "scenario", place, from: null, to: toScenarioDocument(scenario) })
  if (before.own !== after.own) changes.push(...betweenOwn(before.own, after.own))
  if (before.progress !== after.progress) changes.push(...betweenProgress(before.progress, after.progress))
  if (before.current !== after.current)
    changes.push({ of: "current", from: before.current, to: after.current })
  if (before.system !== after.system) changes.push({ of: "units", from: before.system, to: after.system })
  return changes
}

function* withinScenario(before: Scenario, after: Scenario): Generator<Change> {
  const scenario = after.id
  if (before.title !== after.title) yield { of: "title", scenario, from: before.title, to: after.title }
  for (const name of new Set([...before.typed.keys(), ...after.typed.keys()])) {
    const from = before.typed.get(name) ?? null
    const to = after.typed.get(name) ?? null
    if (from !== to) yield { of: "typed", scenario, name, from, to }
  }
  for (const name of new Set([...before.tables.keys(), ...after.tables.keys()])) {
    const from = before.tables.get(name) ?? null
    const to = after.tables.get(name) ?? null
    if (from !== to) yield* betweenRows(scenario, name, from, to)
  }
}

/** Only the rows from the first to the last that differ, so that a long table is not kept twice for one cell. */
function* betweenRows(
  scenario: string,
  name: string,
  from: readonly TypedRow[] | null,
  to: readonly TypedRow[] | null,
): Generator<Change> {
  const copy = (rows: readonly TypedRow[]): Record<string, string>[] => rows.map((row) => ({ ...row }))
  if (from === null || to === null) {
    yield { of: "rows", scenario, name, start: 0, from: from && copy(from), to: to && copy(to) }
    return
  }
  const shorter = Math.min(from.length, to.length)
  let start = 0
  while (start < shorter && sameRow(from[start], to[start])) start++
  let end = 0
  while (end < shorter - start && sameRow(from.at(-1 - end), to.at(-1 - end))) end++
  if (start === from.length && start === to.length) return
  const part = (rows: readonly TypedRow[]) => copy(rows.slice(start, rows.length - end))
  yield { of: "rows", scenario, name, start, from: part(from), to: part(to) }
}

function sameRow(a: TypedRow | undefined, b: TypedRow | undefined): boolean {
  if (a === undefined || b === undefined) return false
  const keys = Object.keys(a)
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key])
}

function* betweenOwn(before: State["own"], after: State["own"]): Generator<Change> {
  const old = new Map(before.map((entry) => [ownName(entry), entry]))
  const kept = new Set(after.map(ownName))
  for (const [place, entry] of [...before.entries()].reverse())
    if (!kept.has(ownName(entry))) yield { of: "own", place, from: entry, to: null }
  for (const [place, entry] of after.entries()) {
    const from = old.get(ownName(entry)) ?? null
    if (from !== entry) yield { of: "own", place, from, to: entry }
  }
}

function* betweenProgress(before: State["progress"], after: State["progress"]): Generator<Change> {
  for (const stage of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const [from, to] = [before[stage] ?? null, after[stage] ?? null]
    if (JSON.stringify(from) !== JSON.stringify(to)) yield { of: "progress", stage, from, to }
  }
}

/** Applies changes, forwards or backwards. What has lost its place, as in a file changed by hand, is passed over. */
export function applyChanges(state: State, changes: readonly Change[], way: "forwards" | "backwards"): State {
  const draft = new Draft(state)
  const ordered = way === "forwards" ? changes : [...changes].reverse()
  for (const change of ordered) draft.put(change, way === "forwards" ? "to" : "from")
  return draft.state()
}

interface OpenScenario extends Scenario {
  readonly typed: Map<string, string>
  readonly tables: Map<string, readonly TypedRow[]>
}

class Draft {
  readonly #before: State
  readonly #scenarios: Scenario[]
  /** Copies of scenarios that may be altered until they are handed on. */
  readonly #open = new Map<string, OpenScenario>()
  #own: State["own"][number][] | undefined
  #current: string
  #system: State["system"]
  #progress: State["progress"]

  constructor(before: State) {
    this.#before = before
    this.#scenarios = [...before.scenarios]
    this.#current = before.current
    this.#system = before.system
    this.#progress = before.progress
  }

  put(change: Change, side: "from" | "to"): void {
    switch (change.of) {
      case "typed": {
        const text = change[side]
        const typed = this.#scenario(change.scenario)?.typed
        if (text === null) typed?.delete(change.name)
        else typed?.set(change.name, text)
        break
      }
      case "rows":
        this.#putRows(change, side)
        break
      case "title": {
        const open = this.#scenario(change.scenario)
        if (open !== undefined) this.#replace({ ...open, title: change[side] })
        break
      }
      case "scenario": {
        const { from, to, place } = change
        const taken = side === "to" ? from : to
        const put = side === "to" ? to : from
        if (taken !== null) this.#take(taken.id)
        if (put !== null && !this.#scenarios.some((one) => one.id === put.id))
          this.#scenarios.splice(place, 0, fromScenarioDocument(put))
        break
      }
      case "current":
        this.#current = change[side]
        break
      case "units":
        this.#system = change[side]
        break
      case "own":
        this.#putOwn(change, side)
        break
      case "progress": {
        const { [change.stage]: _, ...others } = this.#progress
        const put = change[side]
        this.#progress = put === null ? others : { ...this.#progress, [change.stage]: put }
        break
      }
    }
  }

  /** Whatever the changes were, there is a scenario, and one that is there is open. */
  state(): State {
    const scenarios = this.#scenarios.length > 0 ? this.#scenarios : this.#before.scenarios
    const isThere = (id: string): boolean => scenarios.some((scenario) => scenario.id === id)
    const current = [this.#current, this.#before.current].find(isThere) ?? scenarios[0]?.id ?? ""
    const own = this.#own ?? this.#before.own
    return { scenarios, current, system: this.#system, own, progress: this.#progress }
  }

  #scenario(id: string): OpenScenario | undefined {
    const known = this.#open.get(id)
    if (known !== undefined) return known
    const found = this.#scenarios.find((scenario) => scenario.id === id)
    return found === undefined
      ? undefined
      : this.#replace({ ...found, typed: new Map(found.typed), tables: new Map(found.tables) })
  }

  #replace(open: OpenScenario): OpenScenario {
    const place = this.#scenarios.findIndex((scenario) => scenario.id === open.id)
    this.#scenarios[place] = open
    this.#open.set(open.id, open)
    return open
  }

  #take(id: string): void {
    const place = this.#scenarios.findIndex((scenario) => scenario.id === id)
    if (place >= 0) this.#scenarios.splice(place, 1)
    this.#open.delete(id)
  }

  #putRows(change: Change & { readonly of: "rows" }, side: "from" | "to"): void {
    const tables = this.#scenario(change.scenario)?.tables
    if (tables === undefined) return
    const put = change[side]
    const taken = side === "to" ? change.from : change.to
    if (put === null) tables.delete(change.name)
    else if (taken === null) tables.set(change.name, put)
    else {
      const rows = tables.get(change.name) ?? []
      tables.set(change.name, rows.toSpliced(change.start, taken.length, ...put))
    }
  }

  #putOwn(change: Change & { readonly of: "own" }, side: "from" | "to"): void {
    this.#own ??= [...this.#before.own]
    const own = this.#own
    const put = change[side]
    const taken = side === "to" ? change.from : change.to
    let place = change.place
    if (taken !== null) {
      const name = ownName(taken)
      const here = own[place]
      if (here === undefined || ownName(here) !== name)
        place = own.findIndex((entry) => ownName(entry) === name)
      if (place < 0) return
      if (put === null) own.splice(place, 1)
      else own[place] = put
    } else if (put !== null) own.splice(place, 0, put)
  }
}
