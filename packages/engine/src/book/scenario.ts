import { languageInForce } from "../language/in-force.ts"
import type { ScenarioDocument } from "./document.ts"
import type { TypedRow } from "./typed.ts"
import type { ScenarioView } from "./views.ts"

/** Kept in English in every workbook. */
export const FIRST_TITLE = "First plan"

/** One set of choices: what was typed, by name. A copy of it is another answer to "what if". */
export interface Scenario {
  readonly id: string
  readonly title: string
  readonly typed: ReadonlyMap<string, string>
  readonly tables: ReadonlyMap<string, readonly TypedRow[]>
  /** It refuses edits. */
  readonly sealed: boolean
  /** Members of a saved scenario that this version does not know, kept to be written back. */
  readonly unknown: Readonly<Record<string, unknown>>
}

/** Of a scenario, what its numbers follow from. */
export type Choices = Pick<Scenario, "typed" | "tables">

/** Own properties only, made with `fromEntries`: a key such as `__proto__` stays a key. */
export function fromScenarioDocument(saved: ScenarioDocument): Scenario {
  const { id, title, typed, tables, sealed, ...unknown } = saved
  return {
    id,
    title,
    typed: new Map(Object.entries(typed)),
    tables: new Map(Object.entries(tables)),
    sealed: sealed ?? false,
    unknown,
  }
}

export function toScenarioDocument(scenario: Scenario): ScenarioDocument {
  return {
    ...scenario.unknown,
    id: scenario.id,
    title: scenario.title,
    typed: Object.fromEntries(scenario.typed),
    tables: Object.fromEntries(
      [...scenario.tables].map(([name, rows]) => [name, rows.map((row) => ({ ...row }))]),
    ),
    ...(scenario.sealed ? { sealed: true } : {}),
  }
}

export function viewScenario({ id, title, sealed }: Scenario): ScenarioView {
  const shown = title === FIRST_TITLE ? languageInForce().phrases.firstPlan : title
  return { id, title: shown, ...(sealed ? { sealed } : {}) }
}
