import type { GraphValue } from "../graph/graph.ts"
import { languageInForce } from "../language/in-force.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { printQuantity } from "../units/print-value.ts"
import type { Calculation } from "./calculation.ts"
import type { Holding } from "./holding.ts"
import { type Item, isList, type Outline } from "./outline.ts"
import { sameValue } from "./snapshot.ts"
import type { CheckView, Comparison, Difference, Reading, ScenarioView } from "./views.ts"

/** One side of a comparison. */
export interface Side {
  readonly scenario: ScenarioView
  readonly calculation: Calculation
  readonly check: (name: string) => CheckView
}

/** Two scenarios side by side, only what differs, in the order of the work. */
export function compareSides(
  left: Side,
  right: Side,
  items: Outline,
  holding: Holding,
  system: UnitSystem,
): Comparison {
  const inputs: Difference[] = []
  const results: Difference[] = []
  const checks: { name: string; left: CheckView; right: CheckView }[] = []
  const tables: { name: string; left: number; right: number }[] = []
  let same = 0
  for (const [name, item] of items) {
    if (item.kind === "column") continue
    if (item.kind === "table") {
      const counts = { name, left: left.calculation.rows(name), right: right.calculation.rows(name) }
      if (counts.left === counts.right) same++
      else tables.push(counts)
      continue
    }
    if (item.entry.kind === "check") {
      const views = { name, left: left.check(name), right: right.check(name) }
      const differs =
        views.left.verdict !== views.right.verdict || views.left.demand?.text !== views.right.demand?.text
      if (differs || views.left.limit?.text !== views.right.limit?.text) checks.push(views)
      else same++
      continue
    }
    const difference = differenceOf(name, item, left.calculation, right.calculation, holding, system)
    if (difference === undefined) same++
    else if (item.entry.kind === "input" || item.entry.kind === "figure") inputs.push(difference)
    else results.push(difference)
  }
  return { left: left.scenario, right: right.scenario, inputs, results, checks, tables, same }
}

function differenceOf(
  name: string,
  item: Item & { readonly kind: "value" },
  left: Calculation,
  right: Calculation,
  holding: Holding,
  system: UnitSystem,
): Difference | undefined {
  const { measure: id } = item.entry
  if (isList(item.entry)) {
    const [a, b] = [left, right].map((side) => listReading(side.column(name), item, holding, system))
    return a?.text === b?.text ? undefined : { name, left: a ?? null, right: b ?? null }
  }
  const [a, b] = [left.scalar(name), right.scalar(name)]
  if (sameValue(a, b)) return undefined
  const difference = { name, left: holding.reading(a, id, system), right: holding.reading(b, id, system) }
  if (typeof a !== "number" || typeof b !== "number") return difference
  // Two points on a temperature scale differ by a difference of temperature, which is printed otherwise.
  const ofDifference = measure(id).dimension?.point ? "temperature_difference" : id
  const by = holding.toQuantity(new Decimal(b).minus(a).toNumber(), ofDifference)
  const printed = printQuantity(by, ofDifference, system, { signed: true })
  return { ...difference, by: languageInForce().number(printed, ofDifference) }
}

/** A list reads as its values with commas between them. */
export function listReading(
  values: readonly GraphValue[],
  item: Item & { readonly kind: "value" },
  holding: Holding,
  system: UnitSystem,
): Reading | null {
  const readings = values.map((value) => holding.reading(value, item.entry.measure, system))
  if (readings.length === 0) return null
  const text = readings.map((reading) => reading?.text ?? "—").join(languageInForce().phrases.listed)
  return { value: text, unit: "", text }
}
