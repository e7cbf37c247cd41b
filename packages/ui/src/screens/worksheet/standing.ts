import type { EntryView, Verdict } from "@pegbook/engine"

/** What deserves a look first. */
const WORST_FIRST: readonly Verdict[] = [
  "fails",
  "outside_table",
  "near",
  "needs_entry",
  "no_verdict",
  "passes",
]

export interface Standing {
  readonly verdict: Verdict
  /** The checks with this verdict, in the order of the work. */
  readonly names: readonly string[]
}

/** How the checks stand, worst first. */
export function standings(checks: readonly EntryView[]): readonly Standing[] {
  return WORST_FIRST.map((verdict) => ({
    verdict,
    names: checks.filter((view) => view.check?.verdict === verdict).map((view) => view.name),
  })).filter((standing) => standing.names.length > 0)
}

/** The check whose ratio is the greatest: what gives first, or has given. */
export function nearestToLimit(checks: readonly EntryView[]): EntryView | undefined {
  return checks.reduce<EntryView | undefined>((most, view) => {
    const ratio = view.check?.ratio
    return ratio !== undefined && ratio > (most?.check?.ratio ?? 0) ? view : most
  }, undefined)
}
