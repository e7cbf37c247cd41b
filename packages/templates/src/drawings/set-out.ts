import type { Coordinate, Drawing, Shape } from "@pegbook/engine"
import type { Build } from "./build.ts"
import { one } from "./dimensions.ts"
import { outline, supports } from "./pieces.ts"
import { drawing, pad } from "./views.ts"

/** Rows of the table of pegs: four corners, then the pegs of each string, two by two. */
const STRINGS = [5, 7, 9, 11] as const

const peg = (row: number) => ({
  x: { of: "set_out_points.x", row },
  y: { of: "set_out_points.y", row },
})

const pegs: Shape = {
  kind: "mark",
  layer: "pegs",
  mark: "cross",
  table: "set_out_points",
  x: "x",
  y: "y",
  label: "point",
}

const strings = STRINGS.map(
  (row): Shape => ({
    kind: "line",
    layer: "strings",
    table: "set_out_points",
    row,
    through: [peg(row), peg(row + 1)],
  }),
)

const diagonals = ([1, 2] as const).map(
  (corner): Shape => ({
    kind: "line",
    layer: "diagonals",
    of: "platform_diagonal",
    ...(corner === 1 ? { label: "platform_diagonal" } : {}),
    through: [peg(corner), peg(corner + 2)],
  }),
)

/** Across the corner A, between its marks on the two sides. */
const triangle: Shape = {
  kind: "line",
  layer: "triangle",
  table: "square_triangle",
  row: 1,
  label: "across",
  through: [
    { x: [], y: "short" },
    { x: "long", y: [] },
  ],
}

function middles({ stands }: Build): Shape {
  const from = (end: Coordinate) =>
    stands === "sleepers" ? { x: "centre", y: end } : { x: end, y: "centre" }
  return {
    kind: "line",
    layer: "middles",
    table: "set_out_lines",
    through: [from([]), from(stands === "sleepers" ? "platform_width" : "platform_length")],
  }
}

/** Pegs, strings and what is measured between them, with the holes that they are for. */
export function setOut(build: Build): Drawing {
  return drawing(
    {
      id: "set-out",
      title: "Set-out",
      says: "Seen from above: the pegs by their letters, the strings between them, the holes, and what proves that the corners are square.",
      look: "plan",
    },
    [
      ...pad(build),
      ...supports(build).filter(({ layer }) => layer === "dig"),
      middles(build),
      ...strings,
      ...diagonals,
      triangle,
      outline(),
      pegs,
      one("x", { of: "set_out_points.x", row: 5 }, [], "clear", 1, { table: "set_out_points", row: 5 }),
      one("x", [], "platform_length", "platform_length", 1),
      one("y", [], "platform_width", "platform_width", 1),
    ],
  )
}
