/** What kind of authority a number has. */
export type SourceKind =
  | "standard"
  | "handbook"
  | "measured"
  | "geometry"
  | "common_practice"
  | "memory"
  | "user"

/** Where a number, a rule or a formula comes from. */
export interface Source {
  readonly kind: SourceKind
  /** Who says so, for a reader: title and body, e.g. "NIST Special Publication 811". */
  readonly title: string
  readonly edition?: string
  /** Table, clause or page. */
  readonly place?: string
  /** `memory`: recalled, not seen when it was written down; the screen says so wherever the value is shown. */
  readonly origin?: "read" | "memory"
  /** Id of the record in the project's reference collection, where there is one. */
  readonly record?: string
  readonly note?: string
}
