import type { ProfileShape, Shape, Where } from "@pegbook/engine"
import type { Build } from "./build.ts"

/** The four sides of a platform, as the heights round the edge count them, each with the look that shows it. */
export const SIDES = [
  { side: 1, look: "along", title: "First long side" },
  { side: 2, look: "across", title: "Far end" },
  { side: 3, look: "along_back", title: "Other long side" },
  { side: 4, look: "across_back", title: "First end" },
] as const

export type Side = (typeof SIDES)[number]

/** The ground beside one side, from corner to corner. */
export function groundBeside(side: number): ProfileShape {
  const next = (side % 4) + 1
  const place = { x: "x", y: "y", z: "ground" }
  return {
    kind: "profile",
    layer: "ground",
    through: [
      { table: "edge_stations", where: { side }, ...place },
      { table: "edge_stations", where: { side: next, along: 0 }, ...place },
    ],
  }
}

/** The ground under one line of supports, and at the two corners beside it. */
export function groundUnder(only: Where, corners: readonly [number, number]): ProfileShape {
  const place = { x: "x", y: "y", z: "ground" }
  return {
    kind: "profile",
    layer: "ground",
    through: [
      { table: "supports", where: only, ...place },
      ...corners.map((row) => ({ table: "corners", row, ...place })),
    ],
  }
}

/** Lines of equal level through the places round the edge. */
export function contours(): readonly Shape[] {
  return [
    {
      kind: "contours",
      layer: "contours",
      table: "edge_stations",
      x: "x",
      y: "y",
      level: "ground",
      where: { side: 1 },
    },
    ...[1, 2, 3, 4].map(
      (row): Shape => ({
        kind: "mark",
        layer: "contours",
        mark: "level",
        table: "corners",
        row,
        x: "x",
        y: "y",
        label: "ground",
      }),
    ),
  ]
}

/** A pad of stone under the whole platform, cut through at its edge: the soil under it, and where the ground was. */
export function padCut(build: Build, along: boolean): readonly Shape[] {
  if (build.stands !== "pad") return []
  const only = along ? { step_width: 0 } : { step_length: 0 }
  return [
    {
      kind: "profile",
      layer: "stone",
      closedAt: "underside_level",
      through: [{ table: "grid", where: only, x: "x", y: "y", z: "bottom" }],
    },
    {
      kind: "profile",
      layer: "ground",
      through: [{ table: "grid", where: only, x: "x", y: "y", z: "bottom" }],
    },
    {
      kind: "profile",
      layer: "dig",
      through: [{ table: "grid", where: only, x: "x", y: "y", z: "ground" }],
    },
  ]
}

/** How high the surface stands above the ground along one side. */
export function heightsOf(side: number): readonly Shape[] {
  const next = (side % 4) + 1
  const through = [
    { x: "x", y: "y", z: "ground" },
    { x: "x", y: "y", z: "top_level" },
  ]
  return [
    { kind: "line", layer: "heights", table: "edge_stations", where: { side }, label: "height", through },
    {
      kind: "line",
      layer: "heights",
      table: "edge_stations",
      where: { side: next, along: 0 },
      label: "height",
      through,
    },
  ]
}
