import type { MeasureId } from "../units/measure.ts"
import type { Proof, Solution, SolverGiven } from "./solver.ts"
import type { Source } from "./source.ts"

/** The six kinds of number that a screen may show. */
export type EntryKind = "input" | "figure" | "formula" | "column" | "solved" | "check"

/** What every entry carries, so that a reader can ask of any number why it is there and where it is from. */
export interface Described {
  /** The entry's public name: lower case, words joined by `_`. Saved files and formulas lean on it. */
  readonly name: string
  /** The reader's words. May differ by template; the name may not. */
  readonly label: string
  /** One or two sentences for a person who has never built. */
  readonly why: string
  readonly sources: readonly Source[]
  readonly cautions?: readonly string[]
}

/** A value that is the user's to choose. */
export interface InputEntry extends Described {
  readonly kind: "input"
  readonly measure: MeasureId
  /** As a person would type it, with its unit; `null`: left blank until the user enters it. */
  readonly default: string | null
  /**
   * What a blank means, for an input that may stay blank: "all of the platform". Formulas give it its meaning with
   * IFERROR. Without this, a blank input is waited for.
   */
  readonly blank?: string
  /** Smallest and greatest value accepted, both inclusive, with their units. */
  readonly least?: string
  readonly most?: string
  /** The texts accepted, for an input of measure `text`. */
  readonly choices?: readonly string[]
  /** Several values, typed with commas or semicolons between them: "8 ft, 12 ft". Formulas see a column. */
  readonly list?: true
}

/** A published or trade figure. May be overridden, and then says so. */
export interface FigureEntry extends Described {
  readonly kind: "figure"
  readonly measure: MeasureId
  readonly value: string
}

/** OpenFormula text over other entries' names. */
export interface FormulaEntry extends Described {
  readonly kind: "formula"
  readonly measure: MeasureId
  readonly formula: string
}

/**
 * A change of one input that may bring a failing check to pass. Nothing is promised here: each is tried by
 * recalculating, and only what passes is offered.
 */
export interface Remedy {
  readonly input: string
  /** Which way to go. For an input with choices: later or earlier ones in its list. */
  readonly toward: "more" | "less"
  /** The step to go by, with its unit: "1/2 in", "1". An input with choices goes from choice to choice. */
  readonly step?: string
}

/**
 * A demand held against a limit. `demand`, `limit` and `near` are formulas; most often they are the name of
 * another entry. Readable in formulas as `<name>.demand`, `<name>.limit`, and `<name>` for the ratio.
 */
export interface CheckEntry extends Described {
  readonly kind: "check"
  /** Of demand and limit. */
  readonly measure: MeasureId
  readonly demand: string
  readonly limit: string
  /** `at_most`: passes while demand ≤ limit, ratio = demand ÷ limit. `at_least`: demand ≥ limit, ratio = limit ÷ demand. */
  readonly sense: "at_most" | "at_least"
  /** The ratio from which a pass is called near: a formula giving a plain number; most often a figure's name. */
  readonly near?: string
  /** A formula giving yes or no; no: the verdict is "outside the table". */
  readonly covered?: string
  /**
   * What could be changed, and by how much, when it does not pass. `{name}` in the text is replaced by the
   * entry's value: every number a person reads is an entry.
   */
  readonly advice: readonly string[]
  /** Changes to try when it does not pass, the cheapest to make first. */
  readonly remedies?: readonly Remedy[]
}

/** One column of a table. Its full name is `<table>.<name>`. */
export interface Column extends Described {
  readonly measure: MeasureId
  /**
   * For a table whose rows are counted by a formula, or entered: worked once for each row. A bare name is
   * first looked for among the columns of the same table (this row's value), then among the entries; `ROW()` is the
   * row's number, from 1. For a column of a solved table that the solver itself fills, absent.
   */
  readonly formula?: string
  /** For a table of figures: the values, one a row, typed with their units. */
  readonly values?: readonly string[]
}

/** How many rows a table has, and where they come from. */
export type Rows =
  /** The number of rows is itself a formula. */
  | { readonly kind: "formula"; readonly formula: string }
  /** Published rows. */
  | { readonly kind: "figures" }
  /** Entered by the user; columns without a formula are typed. `default` has one text per typed column. */
  | {
      readonly kind: "input"
      readonly most: number
      readonly default: readonly Readonly<Record<string, string>>[]
    }
  /** Found by a solver: a pure function of the entries named in `from`. */
  | {
      readonly kind: "solved"
      readonly from: readonly string[]
      readonly solve: (given: SolverGiven) => Solution
      /** Absent: what `solve` gives at once is all there is. */
      readonly proof?: Proof
    }

/** Rows of a thing that there are many of: posts, pieces, crossings. */
export interface TableEntry extends Described {
  readonly kind: "table"
  readonly rows: Rows
  readonly columns: readonly Column[]
}

export type Entry = InputEntry | FigureEntry | FormulaEntry | CheckEntry | TableEntry
