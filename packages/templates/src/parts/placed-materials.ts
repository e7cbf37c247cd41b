import type { Source } from "@pegbook/engine"
import { CONCRETE_DENSITY, STONE_DENSITY } from "../sources.ts"

/** What is built in besides timber, by the formulas that say how much. */
export interface PlacedMaterial {
  /** In the reader's words, one of them, as on the buying list: "sheet". */
  readonly role: string
  /** How many are laid; "0" for what is not counted by the piece, and then for one of it too. */
  readonly pieces: string
  /** The longest side of one. */
  readonly longest: string
  /** Volume of one whole piece, and of all that is laid. */
  readonly one: string
  readonly all: string
  /** Formulas where the template has the density already; otherwise figures of a table that this part makes. */
  readonly density:
    | { readonly formula: string }
    | { readonly dry: string; readonly asBought: string; readonly why: string }
  readonly sources: readonly Source[]
}

const recalled = (note: string): Source => ({
  kind: "memory",
  title: "From memory, no source",
  origin: "memory",
  note,
})

export const SHEETS: PlacedMaterial = {
  role: "sheet",
  pieces: "sheet_piece_count",
  longest: "sheet_length",
  one: "sheet_length * sheet_width * sheet_thickness",
  all: "sheet_area * sheet_thickness",
  density: {
    dry: "36 lb/ft3",
    asBought: "48 lb/ft3",
    why: "Plywood of softwood. Fresh from the treater it is a third heavier; on the label, or on a scale, is better.",
  },
  sources: [
    recalled("softwood plywood of 3/4 in weighs about 2 1/4 lb a square foot dry, 3 lb fresh treated"),
  ],
}

export const TILES: PlacedMaterial = {
  role: "tile",
  pieces: "tile_count",
  longest: "MAX(tile_length; tile_width)",
  one: "tile_length * tile_width * tile_thickness",
  all: "tile_field_length * tile_field_width * tile_thickness",
  density: {
    dry: "15 lb/ft3",
    asBought: "15 lb/ft3",
    why: "Of a tile with ribs and holes, its air counted in: solid plastic is four times as heavy.",
  },
  sources: [recalled("a snap tile of a foot square and 5/8 in weighs about 3/4 lb")],
}

const concrete = { pieces: "block_count", one: "block_length * block_width * block_height" }

/** Blocks or pads whose density the template has. */
export function blocksCalled(role: string): PlacedMaterial {
  return {
    role,
    ...concrete,
    longest: "MAX(block_length; block_width; block_height)",
    all: `block_count * ${concrete.one}`,
    density: { formula: "block_density" },
    sources: [CONCRETE_DENSITY],
  }
}

/** Slabs under the joints only, in a template without a density of its own for them. */
export const JOINT_SLABS: PlacedMaterial = {
  ...blocksCalled("slab"),
  density: { dry: "150 lb/ft3", asBought: "150 lb/ft3", why: "Solid concrete." },
}

export const STONE: PlacedMaterial = {
  role: "stone",
  pieces: "0",
  longest: "0",
  one: "0",
  all: "stone_in_place",
  density: { formula: "stone_density" },
  sources: [STONE_DENSITY],
}
