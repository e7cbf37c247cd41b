import type { BoxShape, Coordinate, Shape, Term } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { one } from "./dimensions.ts"
import { LENGTH, plus, WIDTH } from "./pieces.ts"

const HEAD: Coordinate = ["top_level", "net_height"]
const FOOT: Coordinate = plus(HEAD, "-net_post_length")
/** All holes are alike; of posts that stand on the frame they have no depth, and are not drawn. */
const DEPTH: Term = { of: "net_order.hole_depth", row: 1 }
const HOLE_WIDTH: Term = { of: "net_wind_factors.hole_width", row: 1 }

/** The concrete round each post's foot. */
function footings(): BoxShape {
  return {
    kind: "box",
    layer: "footings",
    table: "net_posts",
    x: { centre: "x", size: HOLE_WIDTH },
    y: { centre: "y", size: HOLE_WIDTH },
    z: { from: FOOT, size: DEPTH },
  }
}

export function postMarks(build: Build): readonly Shape[] {
  if (!build.net) return []
  return [{ kind: "mark", layer: "posts", mark: "ring", table: "net_posts", x: "x", y: "y" }]
}

/** The posts as they stand, from their feet in the ground or at the rim's underside. */
export function posts(build: Build): readonly Shape[] {
  if (!build.net) return []
  return [
    footings(),
    {
      kind: "line",
      layer: "posts",
      table: "net_posts",
      through: [
        { x: "x", y: "y", z: FOOT },
        { x: "x", y: "y", z: HEAD },
      ],
    },
    one("z", FOOT, plus(FOOT, "hole_depth"), "hole_depth", 1, { table: "net_order", row: 1 }),
  ]
}

/** The net as it hangs at the sides that one looks at squarely; its mesh is a fill. */
export function net(build: Build, long: boolean): readonly Shape[] {
  if (!build.net) return []
  const z = { from: "top_level", size: "net_height" }
  return [1, 2].map((count) => ({
    kind: "box",
    layer: "net",
    of: "net_height",
    where: { [long ? "net_sides" : "net_ends"]: count },
    ...(long ? { x: LENGTH } : { y: WIDTH }),
    z,
  }))
}
