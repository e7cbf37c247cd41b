import type { Verdict } from "../book/views.ts"
import type { EntryKind } from "../definition/entry.ts"
import type { SourceKind } from "../definition/source.ts"

/**
 * What kinds of entries, kinds of sources and verdicts are called, wherever they are read: on a screen, by the command, in
 * a file that is written out. In small letters, as inside a line.
 */
export interface EntryWords {
  readonly kinds: Readonly<Record<EntryKind, string>>
  readonly sourceKinds: Readonly<Record<SourceKind, string>>
  readonly verdicts: Readonly<Record<Verdict, string>>
  /** After a number of checks: "1 fails", "3 fail". */
  readonly verdictCounts: Readonly<Record<Verdict, readonly [one: string, several: string]>>
}

export const ENGLISH_ENTRIES: EntryWords = {
  kinds: {
    input: "input",
    figure: "figure",
    formula: "formula",
    column: "column",
    solved: "solved",
    check: "check",
  },
  sourceKinds: {
    standard: "standard",
    handbook: "handbook",
    measured: "measured",
    geometry: "geometry",
    common_practice: "common practice",
    memory: "from memory",
    user: "your own",
  },
  verdicts: {
    passes: "passes",
    near: "near the limit",
    fails: "fails",
    outside_table: "outside the table",
    needs_entry: "needs an entry",
    no_verdict: "no verdict",
  },
  verdictCounts: {
    passes: ["passes", "pass"],
    near: ["is near the limit", "are near the limit"],
    fails: ["fails", "fail"],
    outside_table: ["is outside the table", "are outside the table"],
    needs_entry: ["needs an entry", "need an entry"],
    no_verdict: ["has no verdict", "have no verdict"],
  },
}
