import type {
  BookDocument,
  CheckView,
  Comparison,
  LanguageId,
  MeasureId,
  NearValue,
  OwnEntry,
  RemedyView,
  Share,
  SweepRow,
} from "@pegbook/engine"
import type { TableRow } from "../screens/set-out/set-out-model.ts"

/** A question that takes many recalculations, and is worked out beside the page. */
export type Question =
  | { readonly kind: "remedies"; readonly check: string }
  | {
      readonly kind: "sweep"
      readonly inputs: readonly SweptRange[]
      /** Names of entries to read. */
      readonly results: readonly string[]
    }
  | {
      readonly kind: "seek"
      readonly input: string
      readonly toward: "largest" | "smallest"
      /** The ends of the search; empty: the input's own limits. */
      readonly least: string
      readonly most: string
      readonly step: string
    }
  /** The values of an input near its present one, those with the least of `score` first. */
  | {
      readonly kind: "near"
      readonly input: string
      readonly step: string
      readonly reach: string
      readonly score: string
    }
  /** What an own entry would come to; in place of one that there is, where it is to be changed. */
  | { readonly kind: "draft"; readonly draft: OwnEntry; readonly replacing?: string }
  /** What is to be bought or may go back now, had all been bought that a scenario lists. */
  | { readonly kind: "since"; readonly scenario: string }
  /** Each of the others is held against the first. */
  | { readonly kind: "compare"; readonly scenarios: readonly string[] }

/** An input, and the values to try: a range, or texts. */
export type SweptRange =
  | { readonly name: string; readonly from: string; readonly to: string; readonly step: string }
  | { readonly name: string; readonly values: readonly string[] }

/** A question about one workbook. */
export interface Asked {
  /** The template's id. */
  readonly template: string
  readonly document: BookDocument
  readonly question: Question
  /** The part of a sweep that this worker is to do; all of it where absent. */
  readonly share?: Share
}

/** One scenario, as it stands. */
export interface Stand {
  readonly id: string
  readonly title: string
  /** Against the first scenario that was asked for; absent for that one itself. */
  readonly against?: Comparison
  /** The rows of each table, as texts, in the order of its columns. */
  readonly tables: Readonly<Record<string, readonly (readonly string[])[]>>
  readonly checks: Readonly<Record<string, CheckView>>
  /** Entries that hold a number: as shown, and for drawing a bar of it. */
  readonly numbers: Readonly<Record<string, { readonly text: string; readonly value: number }>>
}

/** The list as it is, held against another scenario's as if all of that had been bought. Rows of `still_to_buy`, as they are kept. */
export interface SinceBought {
  readonly toBuy: readonly TableRow[]
  readonly toReturn: readonly TableRow[]
  /** Bought and on the list no more. */
  readonly gone: readonly TableRow[]
  /** Counted in another unit since: neither more nor less can be told. */
  readonly recounted: readonly TableRow[]
}

/** One part of an answer; the last of each kind of question says so by `done`. */
export type Answer =
  | { readonly kind: "remedies"; readonly remedies: readonly RemedyView[] }
  | { readonly kind: "sweep"; readonly row: SweepRow; readonly index: number; readonly of: number }
  | {
      readonly kind: "seek"
      readonly typed?: string
      readonly text?: string
      readonly binds: readonly string[]
      readonly tried: number
    }
  | { readonly kind: "since"; readonly since: SinceBought }
  | { readonly kind: "near"; readonly values: readonly NearValue[] }
  | { readonly kind: "compare"; readonly stand: Stand; readonly of: number }
  | { readonly kind: "draft"; readonly measure: MeasureId; readonly text: string }
  /** What was asked cannot be worked out; in words. */
  | { readonly kind: "refused"; readonly says: string; readonly next: string }
  | { readonly kind: "done" }

/** A question on its way to the worker, and the language in which its answer is to be read. */
export interface AskedIn extends Asked {
  readonly language: LanguageId
}
