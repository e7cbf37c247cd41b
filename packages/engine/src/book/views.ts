import type { EntryKind } from "../definition/entry.ts"
import type { SolverReport } from "../definition/solver.ts"
import type { Source } from "../definition/source.ts"
import type { Problem } from "../problems/problem.ts"
import type { MeasureId } from "../units/measure.ts"

/** A value as a person and a machine read it. */
export interface Reading {
  /** SI coherent units (money: the major unit); text and yes/no as they are. */
  readonly value: number | string | boolean
  /** "m", "m2", "N", "1" for a plain number, "" for text. */
  readonly unit: string
  /** For a person, in the units shown: `9' 9"`. */
  readonly text: string
}

export type Verdict = "passes" | "near" | "fails" | "outside_table" | "needs_entry" | "no_verdict"

export interface CheckView {
  readonly verdict: Verdict
  readonly ratio?: number
  readonly demand?: Reading
  readonly limit?: Reading
  readonly sense: "at_most" | "at_least"
  /** What could be changed, with the numbers in it. Empty when it passes. */
  readonly advice: readonly string[]
}

/** How a value was worked out. */
export interface Working {
  /** The formula as written. */
  readonly formula: string
  /** The same with values put in. */
  readonly withValues: string
  /** The names it leans on directly, in the order of the formula, each once. */
  readonly leansOn: readonly string[]
}

/** A value that a person typed over what the template has. */
export interface Override {
  /** From 1, for a cell of a table of figures. */
  readonly row?: number
  readonly typed: string
  /** What it would be otherwise, by the values as they are now; null where that has no value. */
  readonly original: Reading | null
}

/** What is known of one entry: an input, figure, formula or check; or a table or one of its columns. */
export interface EntryView {
  readonly name: string
  readonly label: string
  /** A table's own kind is the kind of its rows. */
  readonly kind: EntryKind
  readonly shape: "one" | "list" | "table" | "column"
  /** The section's id. */
  readonly section: string
  /** For a column: its table's name. */
  readonly table?: string
  readonly measure: MeasureId
  readonly why: string
  readonly sources: readonly Source[]
  readonly cautions: readonly string[]
  readonly state: "ok" | "needs_entry" | "problem"
  /** Absent when there is no value, for tables and for columns. */
  readonly reading?: Reading
  /** For a list or a column: one a row; a row with a problem is null. */
  readonly readings?: readonly (Reading | null)[]
  readonly formula?: string
  /** For inputs and figures, and a formula that was typed over: the text in force, as typed. */
  readonly typed?: string
  /** For inputs and figures: the text that the template starts with. */
  readonly original?: string
  /** An input, a figure, a formula, or a column or table of figures, that no longer has its original value. */
  readonly changed: boolean
  /** What was typed over a figure or a formula; for a column of figures, over each of its cells. Absent: nothing. */
  readonly overrides?: readonly Override[]
  readonly choices?: readonly string[]
  /** For an input that may stay blank: what a blank means. */
  readonly blank?: string
  /** What is accepted, in words: "from 4 ft to 100 ft". */
  readonly accepts?: string
  readonly check?: CheckView
  readonly report?: SolverReport
  /** What the report's objective came to, its bound, and how far apart they are at most, as a person reads them. */
  readonly reached?: { readonly objective: Reading; readonly bound?: Reading; readonly gap?: Reading }
  readonly problems: readonly Problem[]
  /** The user added it. */
  readonly own?: true
}

export interface TableView {
  readonly name: string
  readonly columns: readonly EntryView[]
  readonly rowCount: number
}

/** One value that an edit moved. */
export interface Moved {
  /** The entry, or `table.column`. */
  readonly name: string
  /** From 1, for a column. */
  readonly row?: number
  readonly old: Reading | null
  readonly new: Reading | null
}

/** The answer to an edit. Not accepted: nothing changed, and the problems say why. */
export interface EditResult {
  readonly accepted: boolean
  readonly problems: readonly Problem[]
  /** Worked out when it is asked for. Once a preview is overtaken by another one, what nobody asked of it is empty. */
  readonly moved: readonly Moved[]
  /** Whether what is read of an entry or a column may have moved, rather too often than too seldom; known at once. */
  readonly mayHaveMoved: (name: string) => boolean
}

export interface ScenarioView {
  readonly id: string
  readonly title: string
  /** It refuses edits. */
  readonly sealed?: boolean
}

/** A change of one input with which a check passes; it was tried. */
export interface RemedyView {
  readonly input: string
  readonly label: string
  readonly from: Reading | null
  readonly to: Reading | null
  /** What to type for it. */
  readonly typed: string
  /** Other checks that pass now and would not then. */
  readonly newlyFails: readonly string[]
}

/** One line of a comparison of two scenarios. */
export interface Difference {
  readonly name: string
  readonly left: Reading | null
  readonly right: Reading | null
  /** Right less left in the units shown, with its sign; absent for texts. */
  readonly by?: string
}

export interface Comparison {
  readonly left: ScenarioView
  readonly right: ScenarioView
  /** In the order of the work. */
  readonly inputs: readonly Difference[]
  readonly results: readonly Difference[]
  readonly checks: readonly { readonly name: string; readonly left: CheckView; readonly right: CheckView }[]
  /** Tables whose number of rows differs. */
  readonly tables: readonly { readonly name: string; readonly left: number; readonly right: number }[]
  /** How many entries are the same. */
  readonly same: number
}
