import type { Drawing, Shape } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { across, along, levels, one } from "./dimensions.ts"
import { contours, groundBeside, groundUnder, heightsOf, padCut, SIDES, type Side } from "./ground.ts"
import { guardDimensions, guardsFromAbove, guardsSeen } from "./guards.ts"
import { type LayerId, layersOf } from "./layers.ts"
import {
  access,
  accessSeen,
  blocking,
  cut,
  edge,
  edgeEnds,
  edgeSides,
  joints,
  joists,
  lines,
  outline,
  rims,
  supports,
  surface,
} from "./pieces.ts"
import { net, netBeyond, postMarks, posts, postsBeyond } from "./posts.ts"

type Words = Pick<Drawing, "id" | "title" | "says" | "look"> & Pick<Partial<Drawing>, "frame" | "empty">

/** A drawing with the layers that its shapes are on. */
export function drawing(words: Words, shapes: readonly Shape[], hidden: readonly LayerId[] = []): Drawing {
  return { ...words, layers: layersOf(new Set(shapes.map((shape) => shape.layer)), hidden), shapes }
}

/** Everything that lies in the platform, from the ground up. */
function stack(build: Build): readonly Shape[] {
  return [
    ...supports(build),
    ...lines(build.lines),
    ...blocking(build),
    ...joists(build),
    ...rims(build, 1),
    ...rims(build, 2),
    ...surface(build),
    ...edge(build),
  ]
}

export function pad(build: Build): readonly Shape[] {
  if (build.stands !== "pad") return []
  return [
    {
      kind: "box",
      layer: "stone",
      of: "pad_area",
      x: { from: "-stone_margin", size: "pad_length" },
      y: { from: "-stone_margin", size: "pad_width" },
      z: { from: ["underside_level", "-stone_bed_thickness"], to: "underside_level" },
    },
  ]
}

export function plan(build: Build): Drawing {
  return drawing(
    {
      id: "plan",
      title: "Plan",
      says: "Seen from above: the supports, the timbers on them and the joists. The surface and the ground’s levels can be laid over.",
      look: "plan",
    },
    [
      ...pad(build),
      ...stack(build),
      ...joints(build.lines),
      ...contours(),
      ...postMarks(build),
      ...guardsFromAbove(build),
      ...access(build),
      outline(),
      ...along(build),
      ...across(build),
    ],
    ["dig", "sheets", "tiles", "boards"],
  )
}

export function sectionAlong(build: Build): Drawing {
  const only = build.stands === "sleepers" ? undefined : { line: 1 }
  return drawing(
    {
      id: "section-along",
      title: "Section along",
      says: "Cut the long way through the first line: the ground as it falls, what is dug, and the stack on it.",
      look: "along",
    },
    [
      ...(build.stands === "pad" ? padCut(build, true) : [groundUnder(only ?? {}, [1, 2])]),
      ...supports(build, only),
      ...lines(build.lines, { line: 1 }),
      ...cut(joists(build)),
      ...surface(build, "along"),
      ...netBeyond(build, "along"),
      ...postsBeyond(build, "along"),
      ...guardsSeen(build, 1, true),
      outline(),
      ...along(build),
      ...levels(build),
      ...heightsOf(1).slice(1),
    ],
    ["heights"],
  )
}

export function sectionAcross(build: Build): Drawing {
  const only = build.stands === "sleepers" ? { line: 1 } : { number: 1 }
  return drawing(
    {
      id: "section-across",
      title: "Section across",
      says: "Cut the short way near the first end, seen from the far end.",
      look: "across",
    },
    [
      ...(build.stands === "pad" ? padCut(build, false) : [groundUnder(only, [1, 4])]),
      ...supports(build, only),
      ...cut(lines(build.lines)),
      ...joists(build, { row: 1 }),
      ...cut(rims(build, 1)),
      ...cut(rims(build, 2)),
      ...surface(build, "across"),
      ...cut(edgeSides(build)),
      ...netBeyond(build, "across"),
      ...postsBeyond(build, "across"),
      ...guardsSeen(build, 2, true),
      outline(),
      ...across(build),
      ...levels(build),
    ],
  )
}

/** The supports that are seen from a side. */
function seenFrom(build: Build, { side }: Side) {
  const { lines: of, perLine } = build
  if (build.stands === "sleepers") {
    if (side === 1 || side === 3) return undefined
    return { line: side === 4 ? 1 : { of: "sleepers.number", row: "sleeper_count" } }
  }
  if (side === 1) return { line: 1 }
  if (side === 3) return { line: { of: `${of.table}.line`, row: of.count } }
  return { number: side === 4 || perLine === undefined ? 1 : { of: "support_stations.number", row: perLine } }
}

/** From an end, the far one's board would hide behind the near one's, which is there only when both ends have one. */
function edgeSeen(build: Build, side: number): readonly Shape[] {
  return [...edgeSides(build), ...edgeEnds(build, side === 4 ? { edge_board_ends: 2 } : undefined)]
}

function elevation(build: Build, side: Side): Drawing {
  const long = side.side === 1 || side.side === 3
  return drawing(
    {
      id: `side-${side.side}`,
      title: side.title,
      says: `How the platform looks from the ${side.title.toLowerCase()}, with its height above the ground there.`,
      look: side.look,
    },
    [
      ...(build.stands === "pad" ? padCut(build, long) : [groundBeside(side.side)]),
      ...supports(build, seenFrom(build, side)),
      ...accessSeen(build, side.side),
      ...(long
        ? [...lines(build.lines, { line: 1 }), ...(build.joists ? rims(build, side.side === 1 ? 1 : 2) : [])]
        : [...lines(build.lines), ...joists(build, { row: 1 })]),
      ...surface(build, long ? "along" : "across"),
      ...edgeSeen(build, side.side),
      ...net(build, long),
      ...posts(build, side.side),
      ...guardsSeen(build, side.side),
      ...guardDimensions(build, side.side),
      outline(),
      ...heightsOf(side.side),
      one(
        long ? "x" : "y",
        [],
        long ? "platform_length" : "platform_width",
        long ? "platform_length" : "platform_width",
        1,
      ),
    ],
    ["dig"],
  )
}

export function elevations(build: Build): readonly Drawing[] {
  return SIDES.map((side) => elevation(build, side))
}

export function pictorial(build: Build): Drawing {
  return drawing(
    {
      id: "stack",
      title: "Stack",
      says: "The whole stack seen from above at an angle. Pull the layers apart, or leave some out, to see what lies on what.",
      look: "pictorial",
    },
    [...pad(build), ...stack(build)],
    ["dig"],
  )
}
