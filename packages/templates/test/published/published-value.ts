/** How good a source is: A its publisher, B a reproduction of it, C a secondary page, M recalled. */
export type Grade = "A" | "B" | "C" | "M"

/** A published value, and the entry that has to give it. */
export interface PublishedValue {
  /** Id in the project's reference collection. */
  readonly record: string
  readonly source: string
  readonly grade: Grade
  /** Entry or `table.column`. */
  readonly entry: string
  /** As published, with its unit; a number: a quotient in SI units, or a plain number. */
  readonly value: string | number
  /** The value of a column in the row in which another column says this. */
  readonly row?: readonly [column: string, is: string]
  /** The entry is divided by this one first; of a column, by this column in the same row. */
  readonly over?: string
  /** Absent: the first template that has the entry. */
  readonly template?: string
  readonly typed?: Readonly<Record<string, string>>
  readonly levels?: readonly (readonly [x: string, y: string, level: string])[]
  /** Share by which it may differ, where the publication rounds. */
  readonly within?: number
  /** What the publication got wrong, or why the two differ. */
  readonly note?: string
}

/** What a value may need beyond its record: everything of it that has no fixed place. */
type More = Omit<PublishedValue, "record" | "source" | "grade" | "entry" | "value">

/** One published value, a line each. */
export function published(
  record: string,
  source: string,
  grade: Grade,
  entry: string,
  value: string | number,
  more: More = {},
): PublishedValue {
  return { record, source, grade, entry, value, ...more }
}
