import type { Definition, Section } from "../definition/definition.ts"
import type { Problem } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import type { BookDocument, StageProgress } from "./document.ts"
import type { StageView } from "./stages.ts"
import type { Comparison, EditResult, EntryView, Moved, ScenarioView, TableView, Working } from "./views.ts"

/**
 * An open workbook: a template's graph with a person's values in it, and its scenario copies.
 *
 * Everything a screen or a command may do is here, and nothing else. Reads are cheap and pure; each change
 * recalculates before it returns and tells the listeners once. Nothing a person types makes it throw;
 * asking for a name that does not exist does (use {@link Book.has} first).
 */
export interface Book {
  readonly definition: Definition
  readonly sections: readonly Section[]

  /** The names of all entries and columns in the order of the work (columns after their table). */
  names(): readonly string[]
  has(name: string): boolean
  entry(name: string): EntryView
  table(name: string): TableView
  /** Names like the one given: exact first, then those that contain the words in name or label. */
  search(words: string): readonly string[]

  /** How a formula's, column's (in one row, from 1; default 1) or check's value was worked out. */
  working(name: string, row?: number): Working | undefined
  /** What a name leans on directly, and what leans on it directly; tables stand for their rows. */
  leansOn(name: string): readonly string[]
  leanedOnBy(name: string): readonly string[]

  /** Sets an input, or overrides a figure, from what a person typed. */
  edit(name: string, typed: string): EditResult
  /** Sets several at once; all or none. */
  editAll(typed: Readonly<Record<string, string>>): EditResult
  /** Replaces the rows of an entered table, one text per typed column; all or none. */
  editTable(name: string, rows: readonly Readonly<Record<string, string>>[]): EditResult
  /** Puts an input or a figure back to what the template starts with. */
  restore(name: string): EditResult
  /** What the last change moved; empty after opening. */
  moved(): readonly Moved[]

  readonly unitSystem: UnitSystem
  /** Changes what is shown, not what is held. */
  showIn(system: UnitSystem): void

  scenarios(): readonly ScenarioView[]
  readonly scenario: ScenarioView
  /** Copies the current scenario under a title and switches to the copy. */
  saveCopy(title: string): ScenarioView
  switchTo(id: string): void
  rename(id: string, title: string): void
  /** Removes a scenario (never the last one) and returns what puts it back. */
  remove(id: string): () => void
  compare(left: string, right: string): Comparison

  /** The stages of the work, with the values of the moment in their texts. */
  stages(): readonly StageView[]
  /** What was ticked and noted of each stage, by its id; of all scenarios together, for one thing is built. */
  progress(): Readonly<Record<string, StageProgress>>
  /** Changes what is kept of one stage. */
  note(stage: string, change: StageProgress): void

  /** Problems of the whole workbook, in the order of the work. */
  problems(): readonly Problem[]
  /** What is saved. A plain object, valid under the document's schema. */
  document(): BookDocument
  /** Called after each change; returns what stops it. */
  subscribe(listener: () => void): () => void
}
