import type { Coordinate } from "@pegbook/engine"

/** The timbers that run the long way: skids, bearers, beams, stringers. */
export interface LinesOf {
  /** The table of lines, with `y`. */
  readonly table: string
  readonly count: string
  /** The tables of pieces, with `line`, `from`, `to`, and of their joints, with `line`, `position`, `bearing`. */
  readonly pieces: string
  readonly joints: string
  /** Where pieces are of planks side by side: the table of these, with `y` and `thickness`. Absent: of whole lines. */
  readonly planks?: string
  /** The column that says over which line of supports a joint lies. Absent: the joint's own line. */
  readonly jointStands?: string
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
  /** What posts of a guard are bolted to at the long sides: its outer faces. At the ends they stand against the platform's own. */
  readonly guard?: { readonly near: Coordinate; readonly far: Coordinate }
  /** Ramps at the ends, besides steps. */
  readonly ramps: boolean
  /** Rows of blocking: along the sheets' joints, or shared out. */
  readonly blocking?: "under joints" | "even"
}
