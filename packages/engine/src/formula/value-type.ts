import type { Dimension } from "../quantity/dimension.ts"

/** What a value is, known before anything is calculated. */
export type ValueType =
  | { readonly kind: "number"; readonly dimension: Dimension }
  /** The literal 0 (and an empty sum): it fits any dimension. */
  | { readonly kind: "zero" }
  | { readonly kind: "text" }
  | { readonly kind: "yes_no" }

/** A type, and whether there is one value or one for each row of a table. */
export interface Shape {
  readonly type: ValueType
  readonly column: boolean
}
