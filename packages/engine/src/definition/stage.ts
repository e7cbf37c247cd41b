/** One value of a table: in `column`, in the first row whose `where` column reads `is`. Names are `table.column`. */
export interface Cell {
  readonly column: string
  readonly where: string
  readonly is: string
}

/** An entry's name, or one cell of a table. */
export type StageValue = string | Cell

/** Something that has to be at hand for a stage, and how much of it. */
export type StageNeed = {
  /** What it is called wherever things are listed. */
  readonly thing: string
} & (
  | { readonly amount: StageValue }
  /** The rows of a table whose `where` column reads one of `is`; `columns` are shown of each, in this order. Rows that
   * have none in the first of them are left out. */
  | {
      readonly table: string
      readonly where: string
      readonly is: readonly string[]
      readonly columns: readonly string[]
    }
)

/**
 * Rows of a table that belong to a stage: all of them, or those whose `where` column reads `is`. Columns by bare names. Rows
 * that have none in the first of them are left out.
 */
export interface StageTable {
  readonly table: string
  readonly columns: readonly string[]
  readonly where?: string
  readonly is?: string
}

/**
 * A stage of the work, in words. In every text `{name}` stands for the entry's value as it is now; of a column, the first
 * row's.
 */
export interface Stage {
  /** Lower case, words joined by `-`. What a person ticks and notes is kept under it: it never changes. */
  readonly id: string
  readonly title: string
  /** What to do, a sentence or two each. */
  readonly says: readonly string[]
  /** What has to be true before the next stage begins. */
  readonly hold?: string
  /** Names of the checks that the hold looks at. */
  readonly checks?: readonly string[]
  readonly needs: readonly StageNeed[]
  readonly tools: readonly string[]
  readonly cautions: readonly string[]
  /** Shown with it. */
  readonly tables?: readonly StageTable[]
  /** What takes time by itself, with nobody at work. */
  readonly waits?: readonly string[]
  readonly weather?: string
  /** Where the work may rest for days, and how to leave it. */
  readonly safeStop?: string
  readonly people?: StageValue
  readonly hours?: StageValue
  /** Whole days, for a calendar. */
  readonly days?: StageValue
}
