import type { CheckEntry } from "../definition/entry.ts"
import type { Calculation } from "./calculation.ts"
import type { Faults } from "./faults.ts"
import type { CheckView, Reading, Verdict } from "./views.ts"

/** Two doubles that differ by less than this share count as equal, so that an exact fit passes. */
const SAME = 1e-9

/** Reads a check: its verdict, and what could be changed when it does not pass. */
export function viewCheck(
  check: CheckEntry,
  calculation: Calculation,
  faults: Faults,
  reading: (id: string) => Reading | null,
): CheckView {
  const verdict = verdictOf(check, calculation, faults)
  const ratio = calculation.scalar(check.name)
  const demand = reading(`${check.name}.demand`)
  const limit = reading(`${check.name}.limit`)
  return {
    verdict,
    sense: check.sense,
    ...(typeof ratio === "number" ? { ratio } : {}),
    ...(demand === null ? {} : { demand }),
    ...(limit === null ? {} : { limit }),
    advice:
      verdict !== "fails" && verdict !== "near" ? [] : check.advice.map((text) => fillIn(text, reading)),
  }
}

function verdictOf(check: CheckEntry, calculation: Calculation, faults: Faults): Verdict {
  const node = (part: string): string => `${check.name}.${part}`
  if (check.covered !== undefined && calculation.scalar(node("covered")) === false) return "outside_table"
  const demand = calculation.scalar(node("demand"))
  const limit = calculation.scalar(node("limit"))
  if (typeof demand !== "number" || typeof limit !== "number") {
    const parts = [node("demand"), node("limit")]
    return parts.some((part) => faults.blankInputs(part).length > 0) ? "needs_entry" : "no_verdict"
  }
  const [lower, upper] = check.sense === "at_most" ? [demand, limit] : [limit, demand]
  if (lower > upper && lower - upper > SAME * Math.abs(upper)) return "fails"
  const near = check.near === undefined ? undefined : calculation.scalar(node("near"))
  const ratio = calculation.scalar(check.name)
  if (typeof near === "number" && typeof ratio === "number" && ratio >= near) return "near"
  return "passes"
}

/** Puts entries' values where their names stand in braces. */
function fillIn(text: string, reading: (id: string) => Reading | null): string {
  return text.replace(/\{([a-z0-9_.]+)\}/g, (_, name: string) => reading(name)?.text ?? "—")
}
