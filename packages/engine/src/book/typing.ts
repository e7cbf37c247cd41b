import { nearNames } from "../formula/near-names.ts"
import type { Problem } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import type { Compiled } from "./compile.ts"
import { kindOf, type Outline } from "./outline.ts"
import { isUnder, readOver, typedOver } from "./overrides.ts"
import type { Choices, Scenario } from "./scenario.ts"
import { readRows, type TypedRow } from "./typed.ts"

/** A scenario with something typed in it; or what is wrong with that. */
export type Typing<Typed extends Choices = Scenario> =
  | { readonly scenario: Typed }
  | { readonly problems: readonly Problem[] }

/** Types texts over inputs, figures, formulas and cells; each is kept with its unit. All or none. */
export function typeInto<Typed extends Choices>(
  scenario: Typed,
  texts: Readonly<Record<string, string>>,
  compiled: Compiled,
  system: UnitSystem,
): Typing<Typed> {
  const typed = new Map(scenario.typed)
  const problems: Problem[] = []
  for (const [name, text] of Object.entries(texts)) {
    const over = typedOver(name, compiled.outline)
    // A formula that cannot be read, or leans on one, is put right there: typing over it would only hide it.
    const [unread] = compiled.problems.get(name) ?? []
    const outcome = over === undefined || unread !== undefined ? undefined : readOver(over, text, system)
    if (outcome === undefined) problems.push(unread ?? notTypedOver(name, compiled.outline))
    else if ("problem" in outcome) problems.push(outcome.problem)
    else typed.set(name, outcome.read.text)
  }
  return problems.length > 0 ? { problems } : { scenario: { ...scenario, typed } }
}

/** Replaces the rows of an entered table; all or none. */
export function typeRows(
  scenario: Scenario,
  name: string,
  rows: readonly TypedRow[],
  items: Outline,
  system: UnitSystem,
): Typing {
  const item = items.get(name)
  if (item?.kind !== "table" || item.entry.rows.kind !== "input")
    return { problems: [notTypedOver(name, items)] }
  const outcome = readRows(item.entry, rows, system)
  if ("problem" in outcome) return { problems: [outcome.problem] }
  return { scenario: { ...scenario, tables: new Map(scenario.tables).set(name, outcome.read.texts) } }
}

/** Takes away what was typed under a name: over it, over the cells of a table or column of figures, in a table. */
export function restoreIn(scenario: Scenario, name: string, items: Outline): Typing {
  const item = items.get(name)
  const rows =
    item?.kind === "column" ? item.table.rows : item?.kind === "table" ? item.entry.rows : undefined
  const entered = item?.kind === "table" && item.entry.rows.kind === "input"
  if (typedOver(name, items) === undefined && rows?.kind !== "figures" && !entered)
    return { problems: [notTypedOver(name, items)] }
  const typed = [...scenario.typed].filter(([typedName]) => !isUnder(typedName, name, items))
  const tables = [...scenario.tables].filter(([table]) => table !== name)
  return { scenario: { ...scenario, typed: new Map(typed), tables: new Map(tables) } }
}

/** Why nothing can be typed under a name. */
export function notTypedOver(name: string, items: Outline): Problem {
  const at = { entry: name }
  const item = items.get(name)
  return item === undefined
    ? { code: "no_such_entry", at, name, near: nearNames(name, items.keys()) }
    : { code: "not_an_input", at, name, kind: kindOf(item) }
}
