import type { Problem } from "../problems/problem.ts"
import type { Outline } from "./outline.ts"
import { readOver, typedOver } from "./overrides.ts"
import { MOST_OWN, namingProblem, readDrafts } from "./own-entries.ts"
import { type OwnEntry, ownName } from "./own-entry.ts"
import { mentions, renamed } from "./own-formulas.ts"
import type { Scenario } from "./scenario.ts"
import type { State } from "./state.ts"

/** What own entries are changed within. */
export interface OwnAround {
  readonly state: State
  /** The template's own names, and those together with the user's. */
  readonly template: Outline
  readonly all: Outline
}

export type OwnOutcome = { readonly state: State } | { readonly problems: readonly Problem[] }

export function addOwn({ state, template, all }: OwnAround, drafts: readonly OwnEntry[]): OwnOutcome {
  const given = state.own.length + drafts.length
  if (given > MOST_OWN) return { problems: [{ code: "too_many_entries", at: {}, given, most: MOST_OWN }] }
  const read = readDrafts(drafts, template, all, state.system)
  return "problems" in read ? read : { state: { ...state, own: [...state.own, ...read.entries] } }
}

/** Another draft under the same name, in the same place. */
export function changeOwn({ state, template, all }: OwnAround, name: string, draft: OwnEntry): OwnOutcome {
  const place = state.own.findIndex((entry) => ownName(entry) === name)
  if (place < 0) return { problems: [{ code: "not_own", at: {}, name }] }
  if (ownName(draft) !== name) return { problems: [{ code: "name_taken", at: {}, name: ownName(draft) }] }
  const others = new Map([...all].filter(([one]) => one !== name))
  const read = readDrafts([draft], template, others, state.system)
  if ("problems" in read) return read
  return { state: { ...state, own: state.own.toSpliced(place, 1, ...read.entries) } }
}

/** The name, and with it all that leans on it: own formulas, advice, and what was typed in every scenario. */
export function renameOwn({ state, template, all }: OwnAround, from: string, to: string): OwnOutcome {
  const place = state.own.findIndex((entry) => ownName(entry) === from)
  const entry = state.own[place]
  if (entry === undefined) return { problems: [{ code: "not_own", at: {}, name: from }] }
  const bare = entry.kind === "column" ? to.replace(`${entry.table}.`, "") : to
  const next = { ...entry, name: bare }
  if (from === ownName(next)) return { state }
  const taken = new Set(state.own.map(ownName))
  const problem = namingProblem(next, template, taken)
  if (problem !== undefined) return { problems: [problem] }
  const name = ownName(next)
  const own = state.own.map((one, index) => renamed(index === place ? next : one, from, name, all))
  const scenarios = state.scenarios.map((scenario) => withTypedName(scenario, from, name))
  return { state: { ...state, own, scenarios } }
}

export function removeOwn({ state, all }: OwnAround, name: string, evenIfUsed: boolean): OwnOutcome {
  if (!state.own.some((entry) => ownName(entry) === name))
    return { problems: [{ code: "not_own", at: {}, name }] }
  const own = state.own.filter((entry) => ownName(entry) !== name)
  const by = own.filter((entry) => mentions(entry, name, all)).map(ownName)
  if (by.length > 0 && !evenIfUsed) return { problems: [{ code: "leaned_on", at: {}, name, by }] }
  return { state: { ...state, own, scenarios: state.scenarios.map((one) => withoutTyped(one, name)) } }
}

/** Scenarios without typed texts that an entry no longer takes, now that it measures something else. */
export function withoutUnreadable(state: State, name: string, items: Outline): State {
  const over = typedOver(name, items)
  const scenarios = state.scenarios.map((scenario) => {
    const text = scenario.typed.get(name)
    const reads = text === undefined || (over !== undefined && !("problem" in readOver(over, text, "us")))
    return reads ? scenario : withoutTyped(scenario, name)
  })
  return { ...state, scenarios }
}

function withTypedName(scenario: Scenario, from: string, to: string): Scenario {
  if (!scenario.typed.has(from)) return scenario
  const typed = [...scenario.typed].map(([name, text]) => [name === from ? to : name, text] as const)
  return { ...scenario, typed: new Map(typed) }
}

function withoutTyped(scenario: Scenario, name: string): Scenario {
  if (!scenario.typed.has(name)) return scenario
  return { ...scenario, typed: new Map([...scenario.typed].filter(([one]) => one !== name)) }
}
