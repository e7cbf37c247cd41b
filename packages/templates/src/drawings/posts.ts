import type { BoxShape, Coordinate, Extent, Shape, Term, Where } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { one } from "./dimensions.ts"
import { LENGTH, plus, WIDTH } from "./pieces.ts"

const HEAD: Coordinate = ["top_level", "net_height"]
/** All holes are as deep; of posts that stand on the frame they have no depth, and are not drawn. */
const DEPTH: Term = { of: "net_order.hole_depth", row: 1 }
const HOLE_WIDTH: Term = { of: "net_wind_factors.hole_width", row: 1 }

/** The concrete round each post's foot, up to its own ground. */
function footings(where: Where): BoxShape {
  return {
    kind: "box",
    layer: "footings",
    table: "net_posts",
    where,
    x: { centre: "x", size: HOLE_WIDTH },
    y: { centre: "y", size: HOLE_WIDTH },
    z: { from: "foot", size: DEPTH },
  }
}

function upright(where: Where, from: Coordinate): Shape {
  return {
    kind: "line",
    layer: "posts",
    table: "net_posts",
    where,
    through: [
      { x: "x", y: "y", z: from },
      { x: "x", y: "y", z: HEAD },
    ],
  }
}

export function postMarks(build: Build): readonly Shape[] {
  if (!build.net) return []
  return [{ kind: "mark", layer: "posts", mark: "ring", table: "net_posts", x: "x", y: "y" }]
}

/**
 * The posts as they stand, each from its own foot in the ground or at the rim's underside; and how deep the first one is. That
 * stands at the far corner across from the datum: on the right as one looks from the first long side or the far end.
 */
export function posts(build: Build, seenFrom: 1 | 2 | 3 | 4): readonly Shape[] {
  if (!build.net) return []
  const foot: Coordinate = { of: "net_posts.foot", row: 1 }
  const side = seenFrom <= 2 ? "after" : "before"
  return [
    footings({}),
    upright({}, "foot"),
    one("z", foot, plus(foot, "hole_depth"), "hole_depth", 1, { table: "net_order", row: 1, side }),
  ]
}

/** The posts beyond a cut: those beside the platform whole, and of those behind it what stands above the surface. */
export function postsBeyond(build: Build, cut: "along" | "across"): readonly Shape[] {
  if (!build.net) return []
  const [behind, beside] = BEYOND[cut]
  return [
    ...beside.flatMap((where) => [footings(where), upright(where, "foot")]),
    upright(behind, "top_level"),
  ]
}

/** From the first long side one looks at the other, whose line the third corner has; from the far end, at the first end. */
const FAR_SIDE: Where = { y: { of: "corners.y", row: 3 } }
const FIRST_END: Where = { x: { of: "corners.x", row: 1 } }
const BEYOND: Readonly<Record<"along" | "across", readonly [behind: Where, beside: readonly Where[]]>> = {
  along: [{ ...FAR_SIDE, side: "long side" }, [{ side: "end" }, { ...FAR_SIDE, side: "corner" }]],
  across: [{ ...FIRST_END, side: "end" }, [{ ...FIRST_END, side: "corner" }]],
}

const BOTH = [1, 2]

/** The net as it hangs at the sides that one looks at squarely; its mesh is a fill. */
export function net(build: Build, long: boolean, counts: readonly number[] = BOTH): readonly Shape[] {
  if (!build.net) return []
  const z: Extent = { from: "top_level", size: "net_height" }
  return counts.map((count) => ({
    kind: "box",
    layer: "net",
    of: "net_height",
    where: { [long ? "net_sides" : "net_ends"]: count },
    ...(long ? { x: LENGTH } : { y: WIDTH }),
    z,
  }))
}

/** The net that hangs beyond a cut. The first end gets one only when both ends do; the other long side is the first to have one. */
export function netBeyond(build: Build, cut: "along" | "across"): readonly Shape[] {
  return net(build, cut === "along", cut === "along" ? BOTH : [2])
}
