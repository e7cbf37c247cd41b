import type { BoxShape, Coordinate, Extent, Shape, Term, Where } from "@pegbook/engine"
import type { Build, LinesOf } from "./build.ts"
import type { LayerId } from "./layers.ts"

const terms = (coordinate: Coordinate): readonly Term[] =>
  Array.isArray(coordinate) ? (coordinate as readonly Term[]) : [coordinate as Term]

export const plus = (...all: readonly Coordinate[]): Coordinate => all.flatMap(terms)

/** A shape on one of the layers. */
function box(layer: LayerId, rest: Omit<BoxShape, "kind" | "layer">): BoxShape {
  return { kind: "box", layer, ...rest }
}

const where = (given: Where | undefined) => (given === undefined ? {} : { where: given })

/** The level of the frame's top. */
export const FRAME_TOP: Coordinate = ["underside_level", "frame_build_up"]
export const LENGTH: Extent = { from: [], to: "platform_length" }
export const WIDTH: Extent = { from: [], to: "platform_width" }

/** The platform from the underside of its lowest timber to its surface. */
export function outline(): BoxShape {
  return box("outline", {
    of: "platform_area",
    x: LENGTH,
    y: WIDTH,
    z: { from: "underside_level", to: "top_level" },
  })
}

/** Each support: what is dug, the stone in it, and the blocks on that. */
export function supports(build: Build, only?: Where): readonly Shape[] {
  if (build.stands === "pad") return []
  const across = build.stands === "sleepers"
  const bed = {
    table: "supports",
    ...where(only),
    x: { centre: "x", size: across ? "stone_bed_width" : "stone_bed_length" },
    y: { centre: "y", size: across ? "stone_bed_length" : "stone_bed_width" },
  }
  const beds = [
    box("dig", { ...bed, z: { from: "stone_bottom", to: "ground" } }),
    box("stone", { ...bed, z: { from: "stone_bottom", to: "stone_top" } }),
  ]
  if (across) {
    return [
      ...beds,
      box("sleepers", {
        table: "sleepers",
        ...(only === undefined || only.line === undefined ? {} : { where: { number: only.line } }),
        x: { centre: "x", size: "sleeper_thickness" },
        y: { centre: { half: "platform_width" }, size: "length" },
        z: { from: "underside_level", size: "sleeper_depth" },
      }),
    ]
  }
  return [
    ...beds,
    box("blocks", {
      table: "supports",
      ...where(only),
      x: { centre: "x", size: "block_length" },
      y: { centre: "y", size: "block_course_width" },
      z: { from: "stone_top", size: "block_height" },
      repeat: { times: "courses", z: "block_height" },
    }),
  ]
}

/** The middle of a piece's line across, and how thick the line is, or that taken away. */
const middleOf = (of: LinesOf): Term => ({ of: `${of.planks ?? of.table}.y`, row: "line" })
const thickness = ({ planks, ...of }: LinesOf, sign: "" | "-" = ""): Term =>
  planks === undefined ? `${sign}${of.thickness}` : { of: `${sign}${planks}.thickness`, row: "line" }

/** The timbers that run along, piece by piece. */
export function lines(of: LinesOf, only?: Where): readonly Shape[] {
  return [
    box("lines", {
      table: of.pieces,
      ...where(only),
      x: { from: "from", to: "to" },
      y: { centre: middleOf(of), size: thickness(of) },
      z: { from: of.level, size: of.depth },
    }),
  ]
}

/** A stroke across each line where two of its pieces meet. */
export function joints(of: LinesOf): readonly Shape[] {
  const y = middleOf(of)
  return [
    {
      kind: "line",
      layer: "joints",
      table: of.joints,
      through: [
        { x: "position", y: [y, thickness(of, "-")], z: of.level },
        { x: "position", y: [y, thickness(of)], z: [...terms(of.level), of.depth] },
      ],
    },
  ]
}

const joistLevel = (build: Build): Coordinate => plus(build.lines.level, build.lines.depth)

export function joists(build: Build, only: { readonly row?: number } = {}): readonly Shape[] {
  if (!build.joists) return []
  return [
    box("joists", {
      table: "joists",
      ...only,
      x: { centre: "position", size: "joist_thickness" },
      y: { from: "rim_thickness", size: "length" },
      z: { from: joistLevel(build), size: "joist_depth" },
    }),
  ]
}

/** The two boards that close the joists' ends. `line` is 1 at the first long edge. */
export function rims(build: Build, line: 1 | 2): readonly Shape[] {
  if (!build.joists) return []
  return [
    box("rims", {
      table: "rim_pieces",
      where: { line },
      x: { from: "start", size: "length" },
      y:
        line === 1
          ? { from: [], to: "rim_thickness" }
          : { from: ["platform_width", "-rim_thickness"], to: "platform_width" },
      z: { from: plus(joistLevel(build), "joist_depth", "-rim_depth"), size: "rim_depth" },
    }),
  ]
}

export function blocking(build: Build): readonly Shape[] {
  const z: Extent = { from: joistLevel(build), size: "joist_depth" }
  switch (build.blocking) {
    case "under joints":
      return [
        box("blocking", {
          table: "sheet_rows",
          where: { blocked: true },
          // In one stroke: the joists lie over it and part it into its pieces.
          x: {
            from: { of: "joists.position", row: 1 },
            to: { of: "joists.position", row: "joist_count" },
          },
          y: { centre: ["y", { half: "-sheet_gap" }], size: "joist_thickness" },
          z,
        }),
      ]
    case "even":
      return [
        box("blocking", {
          table: "blocking",
          // From joist to joist, middle to middle: the joists lie over its ends.
          x: { from: { of: "joists.position", row: "bay" }, size: ["length", "joist_thickness"] },
          y: { centre: "rows_apart", size: "joist_thickness" },
          z,
          repeat: { times: "blocking_rows", y: "rows_apart" },
        }),
      ]
    default:
      return []
  }
}

/** Blocks that are cut through, and show their end. */
export function cut(shapes: readonly Shape[]): readonly Shape[] {
  return shapes.map((shape) => (shape.kind === "box" ? { ...shape, fill: "end" } : shape))
}

/** What is walked on: all of it, or the one row that a view along or across sees. */
export function surface(build: Build, seen?: "along" | "across"): readonly Shape[] {
  const only = seen === "along" ? { where: { row: 1 } } : {}
  const first = (lies: "along" | "across") => (seen === lies ? { where: { line: 1 } } : {})
  const sheet = box("sheets", {
    table: "sheet_pieces",
    ...only,
    x: { from: "start", size: "length" },
    y: { from: { of: "sheet_rows.y", row: "row" }, size: "width" },
    z: { from: FRAME_TOP, size: "sheet_thickness" },
  })
  switch (build.surface) {
    case "sheets":
      return [sheet]
    case "tiles":
      return [sheet, ...tiles(only)]
    case "boards along":
      return [
        box("boards", {
          table: "board_pieces",
          ...first("along"),
          x: { from: ["from", "-board_end_overhang"], size: "length" },
          y: { from: { of: "boards.from", row: "line" }, to: { of: "boards.to", row: "line" } },
          z: { from: FRAME_TOP, size: "board_thickness" },
        }),
      ]
    case "boards across":
      return [
        box("boards", {
          table: "board_pieces",
          ...first("across"),
          x: { from: { of: "boards.from", row: "line" }, to: { of: "boards.to", row: "line" } },
          y: { from: ["from", "-board_end_overhang"], size: "length" },
          z: { from: FRAME_TOP, size: "board_thickness" },
        }),
      ]
  }
}

/** Along the platform is the first row of the directions. */
const ALONG = {
  whole: { of: "tile_directions.whole", row: 1 },
  cutFirst: { of: "tile_directions.cut_first", row: 1 },
  cutLast: { of: "-tile_directions.cut", row: 1 },
} as const satisfies Record<string, Term>

function tiles(only: { readonly where?: Where }): readonly Shape[] {
  const start: readonly Term[] = [{ half: "platform_length" }, { half: "-tile_field_length" }]
  const end: readonly Term[] = [...start, "tile_field_length"]
  const row = {
    table: "tile_rows",
    ...only,
    y: { from: "y", size: "width" },
    z: { from: plus(FRAME_TOP, "sheet_thickness"), size: "tile_thickness" },
  }
  return [
    box("tiles", {
      ...row,
      x: { from: [...start, ALONG.cutFirst], size: "tile_length" },
      repeat: { times: ALONG.whole, x: "tile_length" },
    }),
    box("tiles", { ...row, x: { from: start, size: ALONG.cutFirst } }),
    box("tiles", { ...row, x: { from: [...end, ALONG.cutLast], to: end } }),
  ]
}

/** The long sides are the first row of the runs. */
const SIDE_RUN: Term = { of: "edge_runs.run", row: 1 }

/** Boards that stand along the two long sides, or lie there as a kerb. */
export function edgeSides(build: Build): readonly Shape[] {
  if (build.edge === undefined) return []
  if (build.edge === "kerb") {
    return [
      box("edge", {
        of: "edge_board_size",
        x: { from: [], size: SIDE_RUN },
        y: { from: [], size: "edge_board_depth" },
        z: { from: ["top_level", "kerb_packer_height"], size: "edge_board_thickness" },
        repeat: { times: "edge_board_sides", y: ["platform_width", "-edge_board_depth"] },
      }),
    ]
  }
  const side = (ends: number, x: Extent) =>
    box("edge", {
      of: "edge_board_size",
      where: { edge_board_ends: ends },
      x,
      y: { from: "-edge_board_thickness", to: [] },
      z: EDGE_UPRIGHT,
      repeat: { times: "edge_board_sides", y: ["platform_width", "edge_board_thickness"] },
    })
  return [
    side(0, { from: [], size: SIDE_RUN }),
    side(1, { from: [], size: SIDE_RUN }),
    side(2, { from: "-edge_board_thickness", size: SIDE_RUN }),
  ]
}

const EDGE_UPRIGHT: Extent = {
  from: ["top_level", "edge_board_rise", "-edge_board_depth"],
  size: "edge_board_depth",
}

/** Boards that stand across the ends: the far end has the first. */
export function edgeEnds(build: Build, only?: Where): readonly Shape[] {
  if (build.edge !== "upright") return []
  return [
    box("edge", {
      of: "edge_board_size",
      ...where(only),
      x: { from: "platform_length", size: "edge_board_thickness" },
      y: WIDTH,
      z: EDGE_UPRIGHT,
      repeat: { times: "edge_board_ends", x: ["-platform_length", "-edge_board_thickness"] },
    }),
  ]
}

export const edge = (build: Build): readonly Shape[] => [...edgeSides(build), ...edgeEnds(build)]

/** The middle line of a ramp, where one is wanted. */
const ramps: Shape = {
  kind: "line",
  layer: "access",
  table: "ramps",
  where: { wanted: true },
  through: [
    { x: "head", y: { half: "platform_width" }, z: "top_level" },
    { x: "foot", y: { half: "platform_width" }, z: ["top_level", "-rise"] },
  ],
}

/** Steps are drawn as solid as far as the next riser. */
const STEP = {
  table: "step_places",
  z: { from: ["top_level", "-riser_height", "-riser_height"], size: "riser_height" },
}

const stepsAtEnds = (only: Where = {}): Shape =>
  box("access", {
    ...STEP,
    where: { at_end: true, ...only },
    x: { from: "x", size: "outward_x" },
    y: WIDTH,
    repeat: { times: "treads", x: "outward_x", z: "-riser_height" },
  })

const stepsAtSides = (only: Where = {}): Shape =>
  box("access", {
    ...STEP,
    where: { at_end: false, ...only },
    x: LENGTH,
    y: { from: "y", size: "outward_y" },
    repeat: { times: "treads", y: "outward_y", z: "-riser_height" },
  })

/** Ramps and steps at each side, where they are wanted. */
export function access(build: Build): readonly Shape[] {
  return [...(build.ramps ? [ramps] : []), stepsAtEnds(), stepsAtSides()]
}

/** What is seen of ramps and steps from one side: those that stand out beside the platform, and those in front of it. */
export function accessSeen(build: Build, side: 1 | 2 | 3 | 4): readonly Shape[] {
  const long = side === 1 || side === 3
  // Each side begins at the corner of its number.
  if (long) {
    const near = stepsAtSides({ y: { of: "corners.y", row: side } })
    return [...(build.ramps ? [ramps] : []), stepsAtEnds(), near]
  }
  const near = { of: "corners.x", row: side }
  return [
    stepsAtSides(),
    ...(build.ramps
      ? [
          box("access", {
            table: "ramps",
            where: { wanted: true, head: near },
            y: WIDTH,
            z: { from: ["top_level", "-rise"], size: "rise" },
          }),
        ]
      : []),
    stepsAtEnds({ x: near }),
  ]
}
