import type { Shape } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { LENGTH, WIDTH } from "./pieces.ts"

export function postMarks(build: Build): readonly Shape[] {
  if (!build.net) return []
  return [{ kind: "mark", layer: "posts", mark: "ring", table: "net_posts", x: "x", y: "y" }]
}

/** The posts, bolted to the outside of the frame, as they stand. */
export function posts(build: Build): readonly Shape[] {
  if (!build.net) return []
  const foot = ["top_level", "net_height", "-net_post_length"]
  return [
    {
      kind: "line",
      layer: "posts",
      table: "net_posts",
      through: [
        { x: "x", y: "y", z: foot },
        { x: "x", y: "y", z: ["top_level", "net_height"] },
      ],
    },
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
