import type { UnitSystem } from "../units/measure.ts"

/** On the page: u to the right and v upward, in metres. */
export interface Point {
  readonly u: number
  readonly v: number
}

export interface Bounds {
  readonly least: Point
  readonly most: Point
}

/** What every drawn shape can be asked. */
interface DrawnBase {
  readonly layer: string
  /** The entry, or the table and its row from 1, that it is. */
  readonly of: { readonly name: string; readonly row?: number }
  /** The names it was drawn from; columns stand for this row. */
  readonly reads: readonly string[]
  /** What is written beside it, as a person reads it. */
  readonly label?: string
}

export interface DrawnArea extends DrawnBase {
  readonly kind: "area"
  readonly points: readonly Point[]
  readonly fill?: string
  /** Of a block seen at an angle: which of its faces. */
  readonly face?: "top" | "front" | "end"
  /** Of a face: greater is farther away. */
  readonly depth?: number
}

export interface DrawnLine extends DrawnBase {
  readonly kind: "line"
  readonly points: readonly Point[]
}

export interface DrawnMark extends DrawnBase {
  readonly kind: "mark"
  readonly at: Point
  readonly mark: "cross" | "ring" | "level"
}

export interface DrawnDimension extends DrawnBase {
  readonly kind: "dimension"
  /** Whether it runs along u or along v. */
  readonly axis: "u" | "v"
  readonly from: number
  readonly to: number
  readonly side: "before" | "after"
  readonly tier: number
  readonly label: string
  readonly step?: Readonly<Record<UnitSystem, string>>
}

export type DrawnShape = DrawnArea | DrawnLine | DrawnMark | DrawnDimension

/** A drawing with the workbook's values in it. */
export interface Drawn {
  readonly shapes: readonly DrawnShape[]
  /** Of everything but the dimension lines; absent when there is nothing. */
  readonly bounds?: Bounds
}
