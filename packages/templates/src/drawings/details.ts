import type { Drawing } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { one } from "./dimensions.ts"
import { groundUnder, padCut } from "./ground.ts"
import { cut, edgeSides, FRAME_TOP, joists, lines, plus, rims, supports, surface } from "./pieces.ts"
import { drawing } from "./views.ts"

const cell = (of: string, row: string | number) => ({ of, row })

/** The thicknesses of the stack, one above the other. */
function stackUp(build: Build) {
  const { lines: of } = build
  const top = plus(of.level, of.depth)
  const after = { side: "after" as const }
  return [
    one("z", of.level, top, of.depth, 1, after),
    ...(build.joists ? [one("z", top, plus(top, "joist_depth"), "joist_depth", 1, after)] : []),
    ...(build.surface === "boards along" || build.surface === "boards across"
      ? [one("z", FRAME_TOP, plus(FRAME_TOP, "board_thickness"), "board_thickness", 2, after)]
      : [one("z", FRAME_TOP, plus(FRAME_TOP, "sheet_thickness"), "sheet_thickness", 2, after)]),
    ...(build.surface === "tiles"
      ? [
          one(
            "z",
            plus(FRAME_TOP, "sheet_thickness"),
            plus(FRAME_TOP, "sheet_thickness", "tile_thickness"),
            "tile_thickness",
            3,
            after,
          ),
        ]
      : []),
  ]
}

/** The first support, from the bottom of the hole to the surface. */
function support(build: Build): readonly Drawing[] {
  if (build.stands === "pad") return []
  const sleepers = build.stands === "sleepers"
  const bed = sleepers ? "stone_bed_width" : "stone_bed_length"
  const x = cell("supports.x", 1)
  const only = sleepers ? undefined : { line: 1 }
  const row = { table: "supports", row: 1 }
  const half = { half: bed }
  return [
    drawing(
      {
        id: "detail-support",
        title: "Detail of a support",
        says: "The first support of the first line, cut the long way: the hole, the stone, and what stands on it.",
        look: "along",
        frame: { x: { centre: x, size: [bed, bed] } },
      },
      [
        groundUnder(only ?? {}, [1, 2]),
        ...supports(build, only),
        ...lines(build.lines, { line: 1 }),
        ...cut(joists(build)),
        ...surface(build, "along"),
        one("x", [x, { half: `-${bed}` }], [x, half], bed, 2),
        ...(sleepers
          ? [
              one(
                "x",
                [x, { half: "-sleeper_thickness" }],
                [x, { half: "sleeper_thickness" }],
                "sleeper_thickness",
                1,
              ),
            ]
          : [one("x", [x, { half: "-block_length" }], [x, { half: "block_length" }], "block_length", 1)]),
        one("z", "stone_bottom", "ground", "dig", 2, row),
        one("z", "stone_bottom", "stone_top", "stone", 1, row),
        ...(sleepers
          ? [one("z", "underside_level", ["underside_level", "sleeper_depth"], "sleeper_depth", 1)]
          : [one("z", "stone_top", ["stone_top", "stack_height"], "stack_height", 1, row)]),
        ...stackUp(build),
      ],
    ),
  ]
}

/** The first joint of the timbers that run along. */
function joint(build: Build): readonly Drawing[] {
  const { joints: table, jointStands = `${table}.line` } = build.lines
  const at = cell(`${table}.position`, 1)
  const line = { line: cell(`${table}.line`, 1) }
  const stand = { line: cell(jointStands, 1) }
  const sleepers = build.stands === "sleepers"
  const reach = sleepers ? "stone_bed_width" : "block_length"
  return [
    drawing(
      {
        id: "detail-joint",
        title: "Detail of a joint",
        says: "Where two pieces of one line meet: in the middle of what carries them.",
        empty: "No line has a joint at these lengths: each is one piece.",
        look: "along",
        frame: { x: { centre: at, size: [reach, reach] } },
      },
      [
        ...(build.stands === "supports" ? [groundUnder(stand, [1, 2])] : []),
        ...supports(build, sleepers ? undefined : stand),
        ...lines(build.lines, line),
        ...cut(joists(build)),
        one("x", at, [at, cell(`${table}.bearing`, 1)], "bearing", 1, { table, row: 1 }),
        one("z", build.lines.level, plus(build.lines.level, build.lines.depth), build.lines.depth, 1),
      ],
    ),
  ]
}

/** The first long edge, cut across. */
function edgeOf(build: Build): readonly Drawing[] {
  const wide = build.joists ? "joist_depth" : "stringer_depth"
  const before = { half: "joist_depth" }
  return [
    drawing(
      {
        id: "detail-edge",
        title: "Detail of the edge",
        says: "The first long edge, cut across: what closes it, and what lies on it.",
        look: "across",
        frame: {
          y: build.joists
            ? { from: [{ half: "-joist_depth" }], to: [wide, wide, before] }
            : { from: [{ half: "-stringer_depth" }], to: [wide, wide] },
          z: { from: build.lines.level, to: ["top_level", wide] },
        },
      },
      [
        ...padCut(build, false),
        ...supports(build, build.stands === "sleepers" ? { line: 1 } : { number: 1 }),
        ...cut(lines(build.lines)),
        ...joists(build, { row: 1 }),
        ...cut(rims(build, 1)),
        ...surface(build, "across"),
        ...cut(edgeSides(build)),
        ...(build.joists
          ? [
              one("y", [], "rim_thickness", "rim_thickness", 1),
              one("z", plus(FRAME_TOP, "-rim_depth"), FRAME_TOP, "rim_depth", 1),
            ]
          : []),
        ...(build.edge === "upright"
          ? [
              one("y", "-edge_board_thickness", [], "edge_board_thickness", 1),
              one("z", "top_level", ["top_level", "edge_board_rise"], "edge_board_rise", 1),
              one(
                "z",
                ["top_level", "edge_board_rise", "-edge_board_depth"],
                ["top_level", "edge_board_rise"],
                "edge_board_depth",
                2,
              ),
            ]
          : []),
        ...(build.edge === "kerb"
          ? [
              one("y", [], "edge_board_depth", "edge_board_depth", 1),
              one("z", "top_level", ["top_level", "kerb_packer_height"], "kerb_packer_height", 1),
            ]
          : []),
        ...stackUp(build),
      ],
    ),
  ]
}

export function details(build: Build): readonly Drawing[] {
  return [...support(build), ...joint(build), ...edgeOf(build)]
}
