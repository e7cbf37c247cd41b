import type { CheckView, Comparison, ScenarioView } from "@pegbook/engine"
import { en } from "../../text/en.ts"

/** Two different scenarios to put side by side: the one open, and the one saved next to it. */
export function firstPair(
  scenarios: readonly ScenarioView[],
  current: string,
): { readonly left: string; readonly right: string } {
  const other = scenarios.find((one) => one.id !== current)?.id ?? current
  const order = scenarios.map((one) => one.id)
  return order.indexOf(other) < order.indexOf(current)
    ? { left: other, right: current }
    : { left: current, right: other }
}

export function isSame(comparison: Comparison): boolean {
  const { inputs, results, checks, tables } = comparison
  return inputs.length + results.length + checks.length + tables.length === 0
}

/** "4' 2", at most 5' 0"": what a check's verdict rests on. */
export function checkWords(check: CheckView): string {
  const { demand, limit, sense } = check
  return demand === undefined || limit === undefined ? "" : en.row.against(demand.text, limit.text, sense)
}
