import type { BoxShape, Coordinate, Extent, Shape, Term } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { one } from "./dimensions.ts"
import { plus } from "./pieces.ts"

type SideNumber = 1 | 2 | 3 | 4

/** All posts are alike: a table of one row. */
const post = (name: string, sign: "" | "-" = ""): Term => ({ of: `${sign}guard_post.${name}`, row: 1 })

/** From the underside of what they are bolted to. */
const WHOLE: Extent = { from: ["top_level", "height", post("length", "-")], size: post("length") }
const ABOVE_SURFACE: Extent = { from: "top_level", size: "height" }

const isLong = (side: SideNumber): boolean => side === 1 || side === 3

/** Where the posts of one side stand, away from the middle of the platform. */
function outward(guard: NonNullable<Build["guard"]>, side: SideNumber): Extent {
  const face: Readonly<Record<SideNumber, Coordinate>> = {
    1: guard.near,
    2: "platform_length",
    3: guard.far,
    4: [],
  }
  return side === 1 || side === 4
    ? { from: plus(face[side], post("out", "-")), size: post("out") }
    : { from: face[side], size: post("out") }
}

function postsOf(guard: NonNullable<Build["guard"]>, side: SideNumber, z: Extent): BoxShape {
  const along: Extent = { from: [], size: post("width") }
  const out = outward(guard, side)
  return {
    kind: "box",
    layer: "guards",
    table: "guard_sides",
    where: { side },
    ...(isLong(side) ? { x: along, y: out } : { x: out, y: along }),
    z,
    repeat: { times: "posts", [isLong(side) ? "x" : "y"]: "spacing" },
  }
}

/** Posts of a guard on all sides, from above. */
export function guardsFromAbove({ guard }: Build): readonly Shape[] {
  return guard === undefined ? [] : ([1, 2, 3, 4] as const).map((side) => postsOf(guard, side, WHOLE))
}

/** As one sees them from a side: of those behind the platform what stands above it. A cut has none in front. */
export function guardsSeen({ guard }: Build, from: SideNumber, cut = false): readonly Shape[] {
  if (guard === undefined) return []
  const [behind, ...beside] = isLong(from)
    ? ([from === 1 ? 3 : 1, 2, 4] as const)
    : ([from === 2 ? 4 : 2, 1, 3] as const)
  return [
    postsOf(guard, behind, ABOVE_SURFACE),
    ...beside.map((side) => postsOf(guard, side, WHOLE)),
    ...(cut ? [] : [postsOf(guard, from, WHOLE)]),
  ]
}

/** Their height, and how far they stand from one another. */
export function guardDimensions({ guard }: Build, side: SideNumber): readonly Shape[] {
  if (guard === undefined) return []
  const of = { table: "guard_sides", where: { side, needed: true }, side: "after" } as const
  return [
    one("z", "top_level", ["top_level", "height"], "height", 1, of),
    one(isLong(side) ? "x" : "y", [], "spacing", "spacing", 1, of),
  ]
}
