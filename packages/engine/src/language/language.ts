import type { Problem } from "../problems/problem.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import type { EntryWords } from "./entry-words.en.ts"

export type LanguageId = "en" | "fr"

/** A problem for a reader: what is wrong, where, with which value; and what is accepted and what to do. */
export interface Words {
  readonly says: string
  readonly next: string
}

/** The few words that the engine itself puts among the values. */
export interface Phrases {
  readonly yes: string
  readonly no: string
  /** The title of a workbook's first scenario, which is kept in English until somebody renames it. */
  readonly firstPlan: string
  readonly noRows: string
  /** Between the values of a list. */
  readonly listed: string
  readonly rows: (count: number) => string
  readonly values: (count: number) => string
  readonly between: (least: string, most: string) => string
  readonly orMore: (least: string) => string
  readonly orLess: (most: string) => string
  /** "a length", "an area". */
  readonly measure: (id: MeasureId) => string
}

/**
 * A language that a workbook is read and typed in. What is kept of a workbook is the same in all of them: numbers with a
 * decimal point and English units, texts in English. A language says how that is shown, and how what is typed is kept.
 */
export interface Language {
  readonly id: LanguageId
  /** For the page's `lang` and for dates, by BCP 47. */
  readonly tag: string
  /** A number as it was printed or kept, with its units, as it is written in this language. */
  readonly number: (text: string, measure?: MeasureId) => string
  /** What was typed in this language for a number, as it is kept; what cannot be read stays as it is. */
  readonly kept: (typed: string) => string
  readonly phrases: Phrases
  readonly entries: EntryWords
  readonly inWords: (problem: Problem, system: UnitSystem) => Words
}

/** The texts of templates in a language: English in and out where there is nothing else to say. */
export interface Dictionary {
  /** A text in words. What is not known comes back as it is. */
  readonly text: (english: string) => string
  /** The English of a text that was typed; what is not known comes back as it is. */
  readonly english: (text: string) => string
}
