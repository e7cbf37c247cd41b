import type { UnitSystem } from "../units/measure.ts"

/** The three directions that coordinates are measured in: along, across and up. */
export type Axis = "x" | "y" | "z"

/** One value out of a table. The row is a number from 1, or the name of what holds it. */
export interface CellOf {
  readonly of: string
  readonly row: string | number
}

/** Half of what a name stands for. */
export interface HalfOf {
  readonly half: string
}

/**
 * A name, a cell, or half of a name's value. A bare name is first looked for among the columns of the shape's own table (this row's value),
 * then among the entries. A "-" before a name takes its value away.
 */
export type Term = string | CellOf | HalfOf

/** A place on an axis: one term, or terms added together. None at all is the origin. */
export type Coordinate = Term | readonly Term[]

/** A stretch of an axis. */
export type Extent =
  | { readonly from: Coordinate; readonly to: Coordinate }
  | { readonly from: Coordinate; readonly size: Coordinate }
  | { readonly centre: Coordinate; readonly size: Coordinate }

/** Which rows of a table, or whether at all: all of these names must hold these values. */
export type Where = Readonly<Record<string, number | string | boolean | CellOf>>

/** What every shape says of itself. */
interface Shown {
  /** The id of its layer. */
  readonly layer: string
  /** One shape for each row of this table. */
  readonly table?: string
  readonly where?: Where
  readonly row?: number
  /** The entry that a shape of no table stands for. */
  readonly of?: string
  /** The name whose reading is written beside it. */
  readonly label?: string
}

/** A block with its faces along the axes. A flat view shows the two directions it needs, and asks for no third. */
export interface BoxShape extends Shown {
  readonly kind: "box"
  readonly x?: Extent
  readonly y?: Extent
  readonly z?: Extent
  /** So often in all, each moved on by these steps. */
  readonly repeat?: {
    readonly times: Term
    readonly x?: Coordinate
    readonly y?: Coordinate
    readonly z?: Coordinate
  }
  /** What it is drawn as, where that differs from its layer. */
  readonly fill?: string
}

export interface Place {
  readonly x?: Coordinate
  readonly y?: Coordinate
  readonly z?: Coordinate
}

/** A line through places in the order given. */
export interface LineShape extends Shown {
  readonly kind: "line"
  readonly through: readonly Place[]
}

/** A line through the rows of tables, in order along the page. */
export interface ProfileShape {
  readonly kind: "profile"
  readonly layer: string
  /** An area instead of a line: closed along this level. */
  readonly closedAt?: Coordinate
  readonly through: readonly (Place & {
    readonly table?: string
    readonly where?: Where
    readonly row?: number
  })[]
}

/** A sign at a place. */
export interface MarkShape extends Shown, Place {
  readonly kind: "mark"
  readonly mark: "cross" | "ring" | "level"
}

/** Lines of equal level between the rows of a table that go round an area: one through each row that `where` picks. */
export interface ContourShape extends Shown {
  readonly kind: "contours"
  readonly table: string
  readonly x: string
  readonly y: string
  readonly level: string
}

/** A dimension line between two places of one axis. The number written on it is an entry's. */
export interface DimensionShape extends Shown {
  readonly kind: "dimension"
  readonly along: Axis
  readonly from: Coordinate
  readonly to: Coordinate
  /** Before: under the drawing, or to its left. */
  readonly side: "before" | "after"
  /** How far out: 1 lies next to the drawing. */
  readonly tier: number
  readonly says: string
  /** An input whose value this is may be dragged at the `to` end, by this step. */
  readonly step?: Readonly<Record<UnitSystem, string>>
}

export type Shape = BoxShape | LineShape | ProfileShape | MarkShape | ContourShape | DimensionShape

/** From where one looks; `_back` from the other side, so that left and right change places. */
export type Look = "plan" | "along" | "along_back" | "across" | "across_back" | "pictorial"

/** What belongs together, and can be shown or left out. Later layers lie on earlier ones. */
export interface Layer {
  readonly id: string
  readonly title: string
  /** What it is made of, for whoever draws it. */
  readonly fill: string
  /** Pulled apart, layers of one storey stay together; those of a higher one are lifted higher. */
  readonly storey?: number
  /** Left out until asked for. */
  readonly startsHidden?: true
  /** Kept in sight for comparison after a change. */
  readonly outline?: true
}

/** A drawing of a workbook: data only. Every coordinate is a name, and so is every number written on it. */
export interface Drawing {
  readonly id: string
  readonly title: string
  /** One sentence on what it shows. */
  readonly says: string
  /** What it says instead when there is nothing to draw. */
  readonly empty?: string
  readonly look: Look
  /** Nothing outside of this is shown. */
  readonly frame?: { readonly x?: Extent; readonly y?: Extent; readonly z?: Extent }
  readonly layers: readonly Layer[]
  readonly shapes: readonly Shape[]
}
