import type { Definition, Section } from "../definition/definition.ts"
import type { Solution } from "../definition/solver.ts"
import type { DrawingSource } from "../drawing/values.ts"
import type { Problem } from "../problems/problem.ts"
import type { UnitSystem } from "../units/measure.ts"
import type { BookDocument, StageProgress } from "./document.ts"
import type { HistoryStep } from "./history.ts"
import type { OwnEntry } from "./own-entry.ts"
import type { Unproven } from "./settled.ts"
import type { StageView } from "./stages.ts"
import type {
  Comparison,
  EditResult,
  EntryView,
  Moved,
  RemedyView,
  ScenarioView,
  TableView,
  Working,
} from "./views.ts"

/**
 * A person changed something; or a better solution of a solved table was put in place; or an edit is shown that was not made,
 * or no longer is.
 */
export type BookChange = "changed" | "settled" | "previewed"

/**
 * An open workbook: a template's graph with a person's values in it, and its scenario copies.
 *
 * Everything a screen or a command may do is here, and nothing else. Reads are pure. A change tells the listeners once and
 * notes what it may move; a value is worked out anew when it is next read. Nothing a person types makes it throw; asking for a name that does not exist does (use {@link Book.has} first).
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

  /**
   * Sets an input from what a person typed, or types over a figure, a formula, or one cell of a table of figures
   * (`table.column.row`, rows from 1). Checks and solved tables cannot be typed over.
   */
  edit(name: string, typed: string): EditResult
  /** Sets several at once; all or none. */
  editAll(typed: Readonly<Record<string, string>>): EditResult
  /**
   * Shows what an edit would give without making it: all is recalculated, and nothing is saved or noted in the history. Every
   * change, another preview too, is made from how things stood before the first.
   */
  preview(name: string, typed: string): EditResult
  /** Shows again how things stand; nothing where no preview is shown. */
  endPreview(): EditResult
  /** Replaces the rows of an entered table, one text per typed column; all or none. */
  editTable(name: string, rows: readonly Readonly<Record<string, string>>[]): EditResult
  /**
   * Puts what was typed back to what the template has: an input, a figure, a formula, a cell, all the cells of a
   * column or table of figures, the rows of an entered table.
   */
  restore(name: string): EditResult
  /** Puts all that was typed in the open scenario back to what the template has, in one step. */
  startAgain(): EditResult
  /** What the last change moved; empty after opening. */
  moved(): readonly Moved[]
  /** The same for one name, a table with its columns; what it does not lean on is not worked out for that. */
  movedAt(name: string): readonly Moved[]
  /** As a drawing would have read the workbook before the last change; nothing where that moved nothing. */
  before(): DrawingSource | undefined

  /**
   * The smallest change of each of a check's remedies that makes it pass, found by recalculating a copy; nobody is told.
   * Empty where the check passes, and where none of its remedies helps. @throws RangeError where it is no check
   */
  remediesFor(check: string): readonly RemedyView[]
  /** Copies the current scenario under a title, types into the copy, and switches to it; all or nothing. */
  tryChange(title: string, typed: Readonly<Record<string, string>>): EditResult

  readonly unitSystem: UnitSystem
  /** Changes what is shown, not what is held. */
  showIn(system: UnitSystem): void

  scenarios(): readonly ScenarioView[]
  readonly scenario: ScenarioView
  /** Copies the current scenario under a title and switches to the copy. */
  saveCopy(title: string): ScenarioView
  /** Keeps the current scenario as it is now under a title, in a sealed copy, which refuses edits; stays where it is. */
  seal(title: string): ScenarioView
  switchTo(id: string): void
  rename(id: string, title: string): void
  /** Removes a scenario (never the last one) and returns what puts it back. */
  remove(id: string): () => void
  compare(left: string, right: string): Comparison

  /** Takes back the last step, whatever it was; false where there is none. Lasts across saving. */
  undo(): boolean
  /** Does again what was undone last; false where there is nothing. */
  redo(): boolean
  /** What was done, the oldest first, then what was undone. Of the oldest, only so many are kept. */
  history(): readonly HistoryStep[]
  /** Copies the scenario that was open right after a step, as it was, and switches to the copy. @throws RangeError */
  copyAt(step: number, title?: string): ScenarioView

  /**
   * Adds entries of the user's own, all or none. A formula's measure may be left out: it is worked out from what the
   * formula gives. They may be used in each other; they show in a section "own" at the end, columns in their table.
   */
  addEntries(drafts: readonly OwnEntry[]): EditResult
  addEntry(draft: OwnEntry): EditResult
  /** Another draft in place of an own entry of the same name. */
  changeEntry(name: string, draft: OwnEntry): EditResult
  /** Own formulas that lean on it, and what was typed over it, follow. */
  renameEntry(from: string, to: string): EditResult
  /** Refused where own formulas lean on it, unless told to go on. */
  removeEntry(name: string, options?: { readonly evenIfUsed?: boolean }): EditResult
  ownEntries(): readonly OwnEntry[]
  /**
   * Own entries of the saved workbook that do not fit into this definition, and why. They are kept and saved, and take no
   * part: no view has them.
   */
  unfitEntries(): ReadonlyMap<OwnEntry, Problem>
  /** For completing a name while a formula is typed, in the order of the work. */
  namesStartingWith(prefix: string): readonly string[]

  /** The stages of the work, with the values of the moment in their texts. */
  stages(): readonly StageView[]
  /** What was ticked and noted of each stage, by its id; of all scenarios together, for one thing is built. */
  progress(): Readonly<Record<string, StageProgress>>
  /** Changes what is kept of one stage; a step of the history as any other. */
  note(stage: string, change: StageProgress): EditResult

  /** The solved tables that a prover may still solve better, and what to ask it. */
  unproven(): readonly Unproven[]
  /**
   * Puts a prover's solution in place of the one made at once, if that is still what is asked; otherwise it is kept for
   * when it is asked again, and not accepted. Neither in the history nor saved. @throws RangeError for other tables
   */
  settle(table: string, given: unknown, solution: Solution): EditResult

  /** Problems of the whole workbook, in the order of the work. */
  problems(): readonly Problem[]
  /** What is saved. A plain object, valid under the document's schema. */
  document(): BookDocument
  /** Called after each change; returns what stops it. */
  subscribe(listener: (change: BookChange) => void): () => void
}
