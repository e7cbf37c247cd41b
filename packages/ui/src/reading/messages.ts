import type { ReadTableOptions, TableText } from "@pegbook/engine"

/** A text that rows of a table are to be read from. */
export interface Asked {
  readonly text: string
  readonly options: ReadTableOptions
}

/** What it holds. */
export type Answered = TableText
