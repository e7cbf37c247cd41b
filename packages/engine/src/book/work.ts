import type { GraphBuilder } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { Calculation } from "./calculation.ts"
import type { Compiled } from "./compile.ts"
import { Viewer } from "./entry-view.ts"
import { Faults } from "./faults.ts"
import type { Holding } from "./holding.ts"
import { invert } from "./reach.ts"
import { readScenario } from "./read-scenario.ts"
import type { Choices } from "./scenario.ts"
import type { Settled } from "./settled.ts"
import { nextSnapshot, type Snapshot, type SnapshotValue, takeSnapshot, valueNow } from "./snapshot.ts"

/** One definition's graph with one scenario in it, and what a reader sees of it. */
export class Work {
  readonly compiled: Compiled
  readonly calculation: Calculation
  /** What was saved and could not be read. */
  readonly unread: readonly Problem[]
  readonly #faults: Faults
  readonly #holding: Holding
  #snapshot: Snapshot | undefined
  #leanedOn: ReadonlyMap<string, readonly string[]> | undefined

  constructor(
    compiled: Compiled,
    holding: Holding,
    build: GraphBuilder,
    scenario: Choices,
    settled: Settled,
  ) {
    this.compiled = compiled
    this.#holding = holding
    const { given, problems } = readScenario(compiled.outline, scenario)
    this.unread = problems
    this.calculation = new Calculation(compiled, holding, build, given, settled)
    this.#faults = new Faults(compiled, this.calculation)
  }

  viewer(system: UnitSystem, scenario: Choices): Viewer {
    return new Viewer(this.compiled, this.calculation, this.#faults, this.#holding, system, scenario.typed)
  }

  /** All values as they are. */
  snapshot(): Snapshot {
    const { outline } = this.compiled
    // All that waits at once: a graph that works out everything after each change has the fewest changes so.
    this.calculation.settle()
    const named = this.calculation.takeNamed()
    if (this.#snapshot === undefined) this.#snapshot = takeSnapshot(outline, this.calculation)
    else if (named.size > 0) this.#snapshot = nextSnapshot(this.#snapshot, named, outline, this.calculation)
    return this.#snapshot
  }

  /** One entry's values as they are. @throws RangeError where it has none, as a table */
  value(name: string): SnapshotValue {
    const value = valueNow(name, this.compiled.outline, this.calculation)
    if (value === undefined) throw new RangeError(`${name} has no value of its own`)
    return value
  }

  names(): readonly string[] {
    return [...this.compiled.outline.keys()]
  }

  measureOf(name: string): MeasureId {
    const item = this.compiled.outline.get(name)
    if (item === undefined || item.kind === "table") return "count"
    // A check's value is its ratio.
    return item.kind === "value" && item.entry.kind === "check" ? "ratio" : item.entry.measure
  }

  leanedOnBy(name: string, viewer: Viewer): readonly string[] {
    this.#leanedOn ??= invert(new Map(this.names().map((one) => [one, viewer.leansOn(one)])))
    return this.#leanedOn.get(name) ?? []
  }
}
