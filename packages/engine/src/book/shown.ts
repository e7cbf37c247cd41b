import type { DrawingSource } from "../drawing/values.ts"
import type { UnitSystem } from "../units/measure.ts"
import { asBefore } from "./as-before.ts"
import { nodesOf } from "./compile.ts"
import { accepted } from "./edit-result.ts"
import type { Viewer } from "./entry-view.ts"
import type { Holding } from "./holding.ts"
import { MovedSince } from "./moved-since.ts"
import { readDifference } from "./read-scenario.ts"
import type { Scenario } from "./scenario.ts"
import { movedBetween, type Snapshot } from "./snapshot.ts"
import type { EditResult, Moved } from "./views.ts"
import type { Work } from "./work.ts"

/** An edit that is shown and was not made. */
interface Preview {
  /** All values without it, and all values before the change that came before it. */
  readonly values: Snapshot
  readonly before: Snapshot | undefined
  /** What this preview and those before it may have moved. */
  readonly touched: ReadonlySet<string>
}

/** What is to be shown next. */
interface Next {
  readonly scenario: Scenario
  readonly system: UnitSystem
  /** Where other entries are calculated than before. */
  readonly work?: Work
}

/** The scenario that is calculated, as a reader sees it, and what the last change moved. */
export class Shown {
  readonly #holding: Holding
  #work: Work
  #scenario: Scenario
  #system: UnitSystem
  #viewer: Viewer
  #preview: Preview | undefined
  /** As it was before the last change, where that moved anything. */
  #before: Snapshot | undefined
  #moved: MovedSince | undefined
  /** All that may still be asked what they moved. */
  #askable: MovedSince[] = []

  constructor(holding: Holding, work: Work, scenario: Scenario, system: UnitSystem) {
    this.#holding = holding
    this.#work = work
    this.#scenario = scenario
    this.#system = system
    this.#viewer = work.viewer(system, scenario)
  }

  get work(): Work {
    return this.#work
  }

  get viewer(): Viewer {
    return this.#viewer
  }

  get isPreview(): boolean {
    return this.#preview !== undefined
  }

  /** Shows what would come of a scenario, in place of the preview that is shown, if one is. */
  preview(scenario: Scenario): EditResult {
    const {
      values,
      before,
      touched: earlier,
    } = this.#preview ?? {
      values: this.#work.snapshot(),
      before: this.#before,
      touched: [],
    }
    this.#end(this.isPreview ? undefined : values)
    const touched = new Set([...earlier, ...this.#put(scenario)])
    this.#preview = { values, before, touched }
    return this.#follow(values, touched)
  }

  /** Shows again how things stand. */
  endPreview(scenario: Scenario): EditResult {
    if (this.#preview === undefined) return accepted(this.#moved, () => false)
    const { before, touched } = this.#preview
    this.#end(undefined)
    const put = this.#put(scenario)
    this.#preview = undefined
    return this.#follow(before, new Set([...touched, ...put]))
  }

  /** Shows what a change has come to; only what differs is calculated. */
  show({ scenario, system, work }: Next): EditResult {
    const previewed = this.#preview
    const given =
      work === undefined ? readDifference(this.#work.compiled.outline, this.#scenario, scenario) : undefined
    const differs = given === undefined || given.typed.size + given.tables.size > 0
    const before = previewed?.values ?? (differs ? this.#work.snapshot() : undefined)
    if (differs) this.#end(previewed === undefined ? before : undefined)
    this.#preview = undefined
    this.#system = system
    this.#scenario = scenario
    if (work !== undefined) this.#work = work
    const put = given === undefined ? this.#work.names() : differs ? this.#work.calculation.put(given) : []
    return this.#follow(before, new Set([...(previewed?.touched ?? []), ...put]))
  }

  /** Takes up what has been settled since for a table. */
  takeUp(table: string): EditResult {
    const old = this.#work.snapshot()
    this.#end(old)
    const touched = this.#work.calculation.takeUp(table)
    // What moved since the last change is what the reader wants to know, not since a step that they did not take.
    this.#follow(this.#before, touched)
    return accepted(this.#since(old), this.#isAmong(touched))
  }

  moved(): readonly Moved[] {
    return this.#moved?.all() ?? []
  }

  movedAt(name: string): readonly Moved[] {
    const item = this.#work.compiled.outline.get(name)
    if (item === undefined) return []
    const names = item.kind === "table" ? item.columns : [name]
    return this.#moved?.at(names, (one) => this.#work.value(one)) ?? []
  }

  before(): DrawingSource | undefined {
    if (this.#before === undefined) return undefined
    const [work, system] = [this.#work, this.#system]
    return asBefore(this.#before, work.compiled.outline, (value, name) =>
      this.#holding.reading(value, work.measureOf(name), system),
    )
  }

  #put(scenario: Scenario): ReadonlySet<string> {
    const given = readDifference(this.#work.compiled.outline, this.#scenario, scenario)
    this.#scenario = scenario
    return this.#work.calculation.put(given)
  }

  /** The values are other ones now. */
  #follow(before: Snapshot | undefined, nodes: ReadonlySet<string>): EditResult {
    this.#before = before
    this.#moved = before === undefined ? undefined : this.#since(before)
    this.#viewer = this.#work.viewer(this.#system, this.#scenario)
    return accepted(this.#moved, this.#isAmong(nodes))
  }

  /** Whether one of the nodes behind a name is among these. */
  #isAmong(nodes: ReadonlySet<string>): (name: string) => boolean {
    const { outline } = this.#work.compiled
    return (name) => nodesOf(name, outline).some((node) => nodes.has(node))
  }

  #since(before: Snapshot): MovedSince {
    const [work, system] = [this.#work, this.#system]
    const moved = new MovedSince(
      before,
      () => work.snapshot(),
      (was, is) => movedBetween(was, is, (name) => work.measureOf(name), this.#holding, system),
    )
    this.#askable.push(moved)
    return moved
  }

  /** Before other values come: these are those after the last change. */
  #end(values: Snapshot | undefined): void {
    for (const moved of this.#askable) moved.end(values)
    this.#askable = []
  }
}
