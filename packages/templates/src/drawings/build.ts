import type { Coordinate } from "@pegbook/engine"

/** The timbers that run the long way: skids, bearers, beams, stringers. */
export interface LinesOf {
  /** The table of lines, with `y`. */
  readonly table: string
  readonly count: string
  /** The table of pieces, with `line`, `from`, `to`. Absent: each line is drawn whole. */
  readonly pieces?: string
  readonly joints?: string
  readonly thickness: string
  readonly depth: string
  readonly length: string
  readonly spacing: string
  /** The level they lie on. */
  readonly level: Coordinate
}

/** What the drawings of a template are made of. A missing part is not drawn. */
export interface Build {
  readonly lines: LinesOf
  /** One support under each line at each station; what is under the whole platform; or sleepers across it. */
  readonly stands: "supports" | "pad" | "sleepers"
  /** How many supports stand under one line, for the far end's. */
  readonly perLine?: string
  readonly joists: boolean
  readonly surface: "tiles" | "sheets" | "boards along" | "boards across"
  readonly edge?: "upright" | "kerb"
  readonly net: boolean
  /** Ramps and steps with timbers of their own, or steps of which only the places are known. */
  readonly access: "flights" | "steps"
  /** Rows of blocking: along the sheets' joints, or shared out. */
  readonly blocking?: "under joints" | "even"
}
