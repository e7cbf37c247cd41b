import type { UnitSystem } from "../units/measure.ts"
import type { OwnEntry } from "./own-entry.ts"
import type { Scenario } from "./scenario.ts"

/** All that a person can change in a workbook. Never altered: each change makes the next one. */
export interface State {
  /** Never empty. */
  readonly scenarios: readonly Scenario[]
  /** The id of the scenario that is open. */
  readonly current: string
  readonly system: UnitSystem
  readonly own: readonly OwnEntry[]
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
