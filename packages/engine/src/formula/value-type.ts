import { type Dimension, isPlain, PLAIN, sameDimension } from "../quantity/dimension.ts"

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

export const PLAIN_NUMBER: ValueType = { kind: "number", dimension: PLAIN }
export const ZERO: ValueType = { kind: "zero" }
export const TEXT: ValueType = { kind: "text" }
export const YES_NO: ValueType = { kind: "yes_no" }

export function numberType(dimension: Dimension): ValueType {
  return { kind: "number", dimension }
}

/** The dimension of a number; the literal 0 counts as plain. Absent for texts and yes/no. */
export function dimensionOf(type: ValueType): Dimension | undefined {
  switch (type.kind) {
    case "number":
      return type.dimension
    case "zero":
      return PLAIN
    default:
      return undefined
  }
}

export function isPlainNumber(type: ValueType): boolean {
  const dimension = dimensionOf(type)
  return dimension !== undefined && isPlain(dimension)
}

/** Whether it is a point on a scale, such as a temperature of 20 °C. */
export function isPoint(type: ValueType): boolean {
  return type.kind === "number" && type.dimension.point === true
}

/**
 * The type that two values share, or undefined when they are not alike. The literal 0 fits any dimension but
 * not a point: 0 on such a scale depends on which scale is meant.
 */
export function agree(a: ValueType, b: ValueType): ValueType | undefined {
  if (a.kind === "zero") return b.kind === "zero" || (b.kind === "number" && !isPoint(b)) ? b : undefined
  if (b.kind === "zero") return agree(b, a)
  if (a.kind === "number" && b.kind === "number") {
    return sameDimension(a.dimension, b.dimension) ? a : undefined
  }
  return a.kind === b.kind ? a : undefined
}
