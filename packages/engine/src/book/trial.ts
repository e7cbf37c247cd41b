import type { CheckEntry } from "../definition/entry.ts"
import type { GraphBuilder, GraphValue } from "../graph/graph.ts"
import type { Problem } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import { Calculation } from "./calculation.ts"
import type { Compiled } from "./compile.ts"
import { Viewer } from "./entry-view.ts"
import { Faults } from "./faults.ts"
import type { Holding } from "./holding.ts"
import type { Outline } from "./outline.ts"
import { readOver, typedOver } from "./overrides.ts"
import { readDifference, readScenario } from "./read-scenario.ts"
import type { Scenario } from "./scenario.ts"
import { Settled } from "./settled.ts"
import type { Value } from "./typed.ts"
import { notTypedOver } from "./typing.ts"
import type { Reading, Verdict } from "./views.ts"

type Choices = Pick<Scenario, "typed" | "tables">

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
  readonly #of: TrialOf
  readonly #calculation: Calculation
  readonly #faults: Faults
  #now: Choices
  #viewer: Viewer

  constructor(of: TrialOf) {
    const { compiled, holding, build, system, scenario, settled = new Settled() } = of
    this.#of = of
    this.items = compiled.outline
    this.system = system
    this.checks = [...compiled.outline.values()].flatMap((item) =>
      item.kind === "value" && item.entry.kind === "check" ? [item.entry] : [],
    )
    this.#calculation = new Calculation(
      compiled,
      holding,
      build,
      readScenario(compiled.outline, scenario).given,
      settled,
    )
    this.#faults = new Faults(compiled, this.#calculation)
    this.#now = scenario
    this.#viewer = this.#look()
  }

  /** Types these over the scenario as it was; what an earlier trial typed is gone. A problem: nothing was typed. */
  type(texts: Readonly<Record<string, string>>): Problem | undefined {
    const typed = new Map(this.#of.scenario.typed)
    for (const [name, text] of Object.entries(texts)) {
      const over = typedOver(name, this.items)
      if (over === undefined) return notTypedOver(name, this.items)
      const outcome = readOver(over, text, this.system)
      if ("problem" in outcome) return outcome.problem
      typed.set(name, outcome.read.text)
    }
    const next = { typed, tables: this.#of.scenario.tables }
    this.#calculation.put(readDifference(this.items, this.#now, next))
    this.#now = next
    this.#viewer = this.#look()
    return undefined
  }

  /** The values in force under a name that may be typed over; none where it is blank or cannot be read. */
  values(name: string): readonly Value[] {
    const over = typedOver(name, this.items)
    if (over === undefined) return []
    const text = this.#of.scenario.typed.get(name)
    const outcome = readOver(over, text ?? originalOf(over.entry), "us")
    return "problem" in outcome ? [] : outcome.read.values
  }

  reading(name: string): Reading | null {
    return this.#viewer.reading(name)
  }

  value(name: string): GraphValue {
    return this.#calculation.scalar(name)
  }

  verdict(check: string): Verdict {
    return this.#viewer.check(check).verdict
  }

  /** The checks that do not pass, of those that do not wait for an entry. */
  failing(): readonly string[] {
    return this.checks.map(({ name }) => name).filter((name) => isFailing(this.verdict(name)))
  }

  #look(): Viewer {
    const { compiled, holding, system } = this.#of
    return new Viewer(compiled, this.#calculation, this.#faults, holding, system, this.#now.typed)
  }
}

/** Near its limit a check passes still; one that waits for an entry says nothing either way. */
export function isFailing(verdict: Verdict): boolean {
  return verdict === "fails" || verdict === "outside_table" || verdict === "no_verdict"
}

function originalOf(entry: {
  readonly kind: string
  readonly value?: string
  readonly default?: string | null
}) {
  return entry.value ?? entry.default ?? ""
}
