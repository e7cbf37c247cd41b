import type { Definition } from "../definition/definition.ts"
import type { CheckEntry } from "../definition/entry.ts"
import { buildDoubleGraph } from "../graph/double-graph.ts"
import type { GraphBuilder, GraphValue } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import { USUAL_SCALES } from "../quantity/scales.ts"
import type { UnitSystem } from "../units/measure.ts"
import { type Compiled, compile } from "./compile.ts"
import type { BookDocument } from "./document.ts"
import type { Viewer } from "./entry-view.ts"
import { Holding } from "./holding.ts"
import { type Outline, outline } from "./outline.ts"
import { readOver, typedOver } from "./overrides.ts"
import { withOwn } from "./own-entries.ts"
import { readDifference } from "./read-scenario.ts"
import type { Choices } from "./scenario.ts"
import { Settled } from "./settled.ts"
import { savedState, scenarioOf } from "./state.ts"
import { originalText, type Value } from "./typed.ts"
import { typeInto } from "./typing.ts"
import type { Reading, Verdict } from "./views.ts"
import { Work } from "./work.ts"

/** What a trial is made from. */
export interface TrialOf {
  readonly compiled: Compiled
  readonly holding: Holding
  readonly build: GraphBuilder
  readonly system: UnitSystem
  readonly scenario: Choices
  /** Better solutions known already; none where absent. */
  readonly settled?: Settled
}

/** A scenario recalculated apart from the workbook with other values typed, to see what would come of them. */
export class Trial {
  readonly items: Outline
  readonly system: UnitSystem
  readonly checks: readonly CheckEntry[]
  readonly #scenario: Choices
  readonly #work: Work
  #now: Choices
  #viewer: Viewer

  constructor(of: TrialOf) {
    const { compiled, holding, build, system, scenario, settled = new Settled() } = of
    this.#scenario = scenario
    this.items = compiled.outline
    this.system = system
    this.checks = [...compiled.outline.values()].flatMap((item) =>
      item.kind === "value" && item.entry.kind === "check" ? [item.entry] : [],
    )
    this.#work = new Work(compiled, holding, build, scenario, settled)
    this.#now = scenario
    this.#viewer = this.#work.viewer(system, scenario)
  }

  /** Types these over the scenario as it was; what an earlier trial typed is gone. A problem: nothing was typed. */
  type(texts: Readonly<Record<string, string>>): Problem | undefined {
    const typing = typeInto(this.#scenario, texts, this.#work.compiled, this.system)
    if ("problems" in typing) return typing.problems[0]
    this.#work.calculation.put(readDifference(this.items, this.#now, typing.scenario))
    this.#now = typing.scenario
    this.#viewer = this.#work.viewer(this.system, this.#now)
    return undefined
  }

  /** The values in force under a name that may be typed over; none where it is blank or cannot be read. */
  values(name: string): readonly Value[] {
    return valuesInForce(this.#scenario, this.items, name)
  }

  reading(name: string): Reading | null {
    return this.#viewer.reading(name)
  }

  value(name: string): GraphValue {
    return this.#work.calculation.scalar(name)
  }

  verdict(check: string): Verdict {
    return this.#viewer.check(check).verdict
  }

  /** The checks that do not pass, of those that do not wait for an entry. */
  failing(): readonly string[] {
    return this.checks.map(({ name }) => name).filter((name) => isFailing(this.verdict(name)))
  }
}

/** The values in force under a name that may be typed over; none where it is blank or cannot be read. */
export function valuesInForce(scenario: Choices, items: Outline, name: string): readonly Value[] {
  const over = typedOver(name, items)
  if (over === undefined) return []
  const outcome = readOver(over, scenario.typed.get(name) ?? originalText(over.entry), "us")
  return "problem" in outcome ? [] : outcome.read.values
}

/** A template with the own entries of a saved workbook in it. */
export function definitionOf(definition: Definition, document: BookDocument): Definition {
  return withOwn(definition, outline(definition), document.own).definition
}

/** The scenario of a saved workbook that was open, ready to be tried with other values, its own entries included. */
export function openTrial(
  definition: Definition,
  document: BookDocument,
  build: GraphBuilder = buildDoubleGraph,
): Trial {
  const state = savedState(document)
  return new Trial({
    compiled: compile(definitionOf(definition, document)),
    holding: new Holding(USUAL_SCALES),
    build,
    system: state.system,
    scenario: scenarioOf(state, state.current),
  })
}

/** Near its limit a check passes still; one that waits for an entry says nothing either way. */
export function isFailing(verdict: Verdict): boolean {
  return verdict === "fails" || verdict === "outside_table" || verdict === "no_verdict"
}
