import { type CutPhrases, ENGLISH_CUT } from "./cut-phrases.en.ts"

/** What the command itself says around a workbook. */
export interface Phrases {
  readonly colon: string
  readonly atMost: string
  readonly atLeast: string
  readonly ratio: (ratio: string) => string
  readonly moreRows: (count: number) => string
  readonly changed: string
  readonly provenBest: string
  readonly bestMayBe: (bound: string) => string
  readonly gap: (gap: string) => string
  readonly notProven: string
  readonly problems: string
  readonly cautions: string
  readonly why: string
  readonly from: string
  readonly caution: string
  readonly workedOut: string
  readonly withValues: string
  readonly withValuesInRow: string
  readonly asAbove: string
  readonly compared: {
    readonly entered: string
    readonly follows: string
    readonly checks: string
    readonly rows: string
    readonly same: (count: number) => string
  }
  readonly audited: {
    readonly heading: (title: string) => string
    readonly decimals: string
    readonly alike: (count: string) => string
    readonly differ: (count: number) => string
    readonly row: (row: number) => string
  }
  readonly cut: CutPhrases
  readonly wroteBook: (path: string, title: string) => string
  readonly wrotePdf: (path: string, title: string) => string
  readonly wroteSheets: (path: string, title: string, tables: number) => string
  readonly solverFailed: (reason: string) => string
  readonly noBetterPlan: (seconds: number) => string
}

export const ENGLISH_PHRASES: Phrases = {
  colon: ": ",
  atMost: "at most",
  atLeast: "at least",
  ratio: (ratio) => `ratio ${ratio}`,
  moreRows: (count) => `… and ${count === 1 ? "1 row" : `${count} rows`} more`,
  changed: "changed",
  provenBest: "proven best",
  bestMayBe: (bound) => `not proven best, the best may be ${bound}`,
  gap: (gap) => `gap ${gap}`,
  notProven: "Not proven",
  problems: "Problems",
  cautions: "Cautions",
  why: "Why",
  from: "From",
  caution: "Caution",
  workedOut: "Worked out",
  withValues: "With values",
  withValuesInRow: "With values in row 1",
  asAbove: "(as above)",
  compared: {
    entered: "Entered",
    follows: "Follows",
    checks: "Checks",
    rows: "Rows",
    same: (count) => `${count} entries are the same.`,
  },
  audited: {
    heading: (title) => `${title}, worked out again from the same inputs`,
    decimals: "decimals, 40 digits",
    alike: (count) => `${count} values come out alike, to a part in a thousand million`,
    differ: (count) => (count === 0 ? "none differs" : `${count === 1 ? "1 differs" : `${count} differ`}:`),
    row: (row) => `row ${row}`,
  },
  cut: ENGLISH_CUT,
  wroteBook: (path, title) =>
    `Wrote ${path}: the build book of ${title}, to be opened in a browser and printed from there at full size.`,
  wrotePdf: (path, title) => `Wrote ${path}: the build book of ${title}, to be printed at full size.`,
  wroteSheets: (path, title, tables) =>
    `Wrote ${path}: ${title}, with its formulas, one sheet for each of ${tables} tables.`,
  solverFailed: (reason) =>
    `the exact solver could not be used (${reason}); this is the plan made at once, not proven best.`,
  noBetterPlan: (seconds) =>
    `no better plan was found in ${seconds} s; this is the plan made at once, not proven best.`,
}
