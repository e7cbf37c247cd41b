import type { Layer } from "@pegbook/engine"

/** Every layer that a drawing may have, from the ground up: later ones lie on earlier ones. */
const LAYERS = [
  { id: "ground", title: "Ground", fill: "soil" },
  { id: "contours", title: "Ground levels", fill: "contour", startsHidden: true },
  { id: "stone", title: "Stone", fill: "stone", storey: 0 },
  { id: "dig", title: "Dig", fill: "dig" },
  { id: "blocks", title: "Blocks", fill: "concrete", storey: 1 },
  { id: "sleepers", title: "Sleepers", fill: "timber", storey: 1 },
  { id: "lines", title: "Timbers along", fill: "timber", storey: 2 },
  { id: "joints", title: "Joints", fill: "joint", storey: 2 },
  { id: "blocking", title: "Blocking", fill: "timber", storey: 3 },
  { id: "joists", title: "Joists", fill: "timber", storey: 3 },
  { id: "rims", title: "Rims", fill: "timber", storey: 3 },
  { id: "sheets", title: "Sheets", fill: "sheet", storey: 4 },
  { id: "tiles", title: "Tiles", fill: "tile", storey: 5 },
  { id: "boards", title: "Boards", fill: "board", storey: 4 },
  { id: "edge", title: "Edge boards", fill: "board", storey: 6 },
  { id: "access", title: "Ramps and steps", fill: "board", storey: 4 },
  { id: "net", title: "Net", fill: "net" },
  { id: "posts", title: "Net posts", fill: "post" },
  { id: "guards", title: "Guard posts", fill: "timber" },
  { id: "middles", title: "Middle lines", fill: "middle" },
  { id: "strings", title: "Strings", fill: "string" },
  { id: "diagonals", title: "Diagonals", fill: "diagonal" },
  { id: "triangle", title: "Triangle 3-4-5", fill: "diagonal" },
  { id: "outline", title: "Outline", fill: "outline", outline: true },
  { id: "pegs", title: "Pegs", fill: "peg" },
  { id: "heights", title: "Heights", fill: "height" },
  { id: "dimensions", title: "Dimensions", fill: "dimension" },
] as const satisfies readonly Layer[]

export type LayerId = (typeof LAYERS)[number]["id"]

/** The layers of one drawing, in their order; those of `hidden` are shown only when asked for. */
export function layersOf(ids: ReadonlySet<string>, hidden: readonly LayerId[] = []): readonly Layer[] {
  return LAYERS.filter((layer) => ids.has(layer.id)).map((layer: Layer) =>
    hidden.includes(layer.id as LayerId) ? { ...layer, startsHidden: true } : layer,
  )
}
