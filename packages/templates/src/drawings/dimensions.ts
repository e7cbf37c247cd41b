import type { Axis, Coordinate, DimensionShape } from "@pegbook/engine"
import type { Build } from "./build.ts"

/** One dimension line. Tier 1 lies next to the drawing. */
export function one(
  axis: Axis,
  from: Coordinate,
  to: Coordinate,
  says: string,
  tier: number,
  more: Partial<DimensionShape> = {},
): DimensionShape {
  return {
    kind: "dimension",
    layer: "dimensions",
    along: axis,
    from,
    to,
    side: "before",
    tier,
    says,
    ...more,
  }
}

const STEP = { us: "1 in", metric: "10 mm" }

const cell = (of: string, row: string | number) => ({ of, row })

/** Along the length: the whole, the stations of the supports, and the joists on the other side. */
export function along(build: Build): readonly DimensionShape[] {
  const stations = build.stands === "sleepers" ? "sleepers" : "support_stations"
  const spacing = build.stands === "sleepers" ? "sleeper_spacing" : "support_spacing"
  return [
    one("x", [], cell(`${stations}.x`, 1), "support_end_offset", 1),
    one("x", cell(`${stations}.x`, 1), cell(`${stations}.x`, 2), spacing, 1),
    one("x", [], "platform_length", "platform_length", 2, { step: STEP }),
    ...(build.joists
      ? [
          one("x", cell("joists.position", 2), cell("joists.position", 3), "joist_spacing", 1, {
            side: "after",
          }),
        ]
      : []),
  ]
}

/** Across the width: the whole, and the lines. */
export function across({ lines }: Build): readonly DimensionShape[] {
  return [
    one("y", cell(`${lines.table}.y`, 1), cell(`${lines.table}.y`, 2), lines.spacing, 1),
    one("y", [], "platform_width", "platform_width", 2, { step: STEP }),
  ]
}

/** Upward: the height above the ground at the first corner, and what the stack adds up to. */
export function levels(build: Build): readonly DimensionShape[] {
  return [
    one("z", cell("edge_stations.ground", 1), "top_level", "height", 1, { table: "edge_stations", row: 1 }),
    one("z", "underside_level", ["underside_level", "frame_build_up"], "frame_build_up", 1, {
      side: "after",
    }),
    one("z", ["underside_level", "frame_build_up"], "top_level", "surface_build_up", 2, { side: "after" }),
    ...(build.stands === "supports"
      ? [
          one("z", cell("supports.stone_bottom", 1), cell("supports.stone_top", 1), "stone", 2, {
            table: "supports",
            row: 1,
          }),
        ]
      : []),
  ]
}
