import type { Problem } from "../problems/problem.ts"
import type { Given } from "./calculation.ts"
import { isTyped, type Outline } from "./outline.ts"
import type { Scenario } from "./scenario.ts"
import { originalText, readRows, readTyped, type Value } from "./typed.ts"

/**
 * Every input, figure and entered table of a scenario, read; what it does not have is as the template starts.
 * Saved texts carry their units, so it does not matter which system is shown.
 */
export function readScenario(
  items: Outline,
  scenario: Scenario,
): { readonly given: Given; readonly problems: readonly Problem[] } {
  const typed = new Map<string, readonly Value[]>()
  const tables = new Map<string, ReadonlyMap<string, readonly Value[]>>()
  const problems: Problem[] = []
  for (const [name, item] of items) {
    if (item.kind === "value" && isTyped(item.entry)) {
      const { entry } = item
      const original = originalText(entry)
      let outcome = readTyped(entry, scenario.typed.get(name) ?? original, "us")
      if ("problem" in outcome) {
        problems.push(outcome.problem)
        outcome = readTyped(entry, original, "us")
        if ("problem" in outcome) throw new Error(`${name}: the template's own "${original}" cannot be read`)
      }
      typed.set(name, outcome.read.values)
    }
    if (item.kind === "table" && item.entry.rows.kind === "input") {
      const original = item.entry.rows.default
      let outcome = readRows(item.entry, scenario.tables.get(name) ?? original, "us")
      if ("problem" in outcome) {
        problems.push(outcome.problem)
        outcome = readRows(item.entry, original, "us")
        if ("problem" in outcome) throw new Error(`${name}: the template's own rows cannot be read`)
      }
      tables.set(name, outcome.read.values)
    }
  }
  return { given: { typed, tables }, problems }
}
