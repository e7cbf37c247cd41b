import type { UnitSystem } from "../units/measure.ts"
import type { BookDocument, StageProgress } from "./document.ts"
import type { OwnEntry } from "./own-entry.ts"
import { FIRST_TITLE, fromScenarioDocument, type Scenario } from "./scenario.ts"

/** All that a person can change in a workbook. Never altered: each change makes the next one. */
export interface State {
  /** Never empty. */
  readonly scenarios: readonly Scenario[]
  /** The id of the scenario that is open. */
  readonly current: string
  readonly system: UnitSystem
  readonly own: readonly OwnEntry[]
  /** What was ticked and noted of each stage, by its id; of all scenarios together, for one thing is built. */
  readonly progress: Readonly<Record<string, StageProgress>>
}

/** A workbook in which nothing was done yet. */
export function newState(system: UnitSystem): State {
  const first: Scenario = {
    id: "copy-1",
    title: FIRST_TITLE,
    typed: new Map(),
    tables: new Map(),
    sealed: false,
    unknown: {},
  }
  return { scenarios: [first], current: first.id, system, own: [], progress: {} }
}

/** As it was saved; where the scenario that was open is not there, the first one is. */
export function savedState({ scenarios, current, unitSystem, own, progress = {} }: BookDocument): State {
  const open = scenarios.find((scenario) => scenario.id === current) ?? scenarios[0]
  const read = scenarios.map(fromScenarioDocument)
  return { scenarios: read, current: open?.id ?? current, system: unitSystem, own, progress }
}

/** @throws RangeError where no scenario has this id */
export function scenarioOf(state: State, id: string): Scenario {
  const found = state.scenarios.find((scenario) => scenario.id === id)
  if (found === undefined) throw new RangeError(`there is no scenario ${id}`)
  return found
}

/** The state with a scenario in place of the one with its id. */
export function withScenario(state: State, next: Scenario): State {
  const scenarios = state.scenarios.map((scenario) => (scenario.id === next.id ? next : scenario))
  return { ...state, scenarios }
}

/** The state with one scenario more, which is open then. */
export function withCopy(state: State, copy: Scenario): State {
  return { ...state, scenarios: [...state.scenarios, copy], current: copy.id }
}
