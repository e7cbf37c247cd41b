import type { Coordinate, Drawing, Extent, Shape, Term, Where } from "../definition/drawing.ts"
import { bare, fullName } from "./values.ts"

/** A name that a shape uses, and the table whose columns it may mean. */
export interface Use {
  readonly name: string
  readonly table: string | undefined
}

function ofTerm(term: Term, table: string | undefined): readonly Use[] {
  if (typeof term === "string") return [{ name: bare(term), table }]
  if ("half" in term) return [{ name: bare(term.half), table }]
  const cell = { name: bare(term.of), table: undefined }
  return typeof term.row === "number" ? [cell] : [cell, { name: bare(term.row), table }]
}

function ofCoordinate(coordinate: Coordinate | undefined, table: string | undefined): readonly Use[] {
  if (coordinate === undefined) return []
  return Array.isArray(coordinate)
    ? (coordinate as readonly Term[]).flatMap((term) => ofTerm(term, table))
    : ofTerm(coordinate as Term, table)
}

function ofExtent(extent: Extent | undefined, table: string | undefined): readonly Use[] {
  if (extent === undefined) return []
  return Object.values(extent as Readonly<Record<string, Coordinate>>).flatMap((one) =>
    ofCoordinate(one, table),
  )
}

function ofWhere(where: Where | undefined, table: string | undefined): readonly Use[] {
  return Object.entries(where ?? {}).flatMap(([name, wanted]) => [
    { name, table },
    ...(typeof wanted === "object" ? ofTerm(wanted, table) : []),
  ])
}

/** The names that place a shape and that are written on it. */
export function usesOf(shape: Shape): readonly Use[] {
  if (shape.kind === "profile") {
    return [
      ...shape.through.flatMap((one) => [
        ...[one.x, one.y, one.z].flatMap((place) => ofCoordinate(place, one.table)),
        ...ofWhere(one.where, one.table),
      ]),
      ...ofCoordinate(shape.closedAt, undefined),
    ]
  }
  const { table } = shape
  const common = [shape.of, shape.label].flatMap((name) => (name === undefined ? [] : [{ name, table }]))
  switch (shape.kind) {
    case "box":
      return [
        ...common,
        ...[shape.x, shape.y, shape.z].flatMap((extent) => ofExtent(extent, table)),
        ...(shape.repeat === undefined
          ? []
          : [
              ...ofTerm(shape.repeat.times, table),
              ...[shape.repeat.x, shape.repeat.y, shape.repeat.z].flatMap((step) =>
                ofCoordinate(step, table),
              ),
            ]),
      ]
    case "line":
      return [
        ...common,
        ...shape.through.flatMap((place) =>
          [place.x, place.y, place.z].flatMap((one) => ofCoordinate(one, table)),
        ),
      ]
    case "mark":
      return [...common, ...[shape.x, shape.y, shape.z].flatMap((one) => ofCoordinate(one, table))]
    case "contours":
      return [...common, ...[shape.x, shape.y, shape.level].map((name) => ({ name, table }))]
    case "dimension":
      return [
        ...common,
        ...ofCoordinate(shape.from, table),
        ...ofCoordinate(shape.to, table),
        { name: shape.says, table },
      ]
  }
}

/** Throws on a drawing whose layers or names are not there: those are the template author's mistakes. */
export function checkDrawing(owner: string, drawing: Drawing, has: (name: string) => boolean): void {
  const fail = (says: string) => {
    throw new Error(`${owner}: drawing "${drawing.id}" ${says}`)
  }
  const layers = new Set(drawing.layers.map((layer) => layer.id))
  const uses = [
    ...(["x", "y", "z"] as const).flatMap((axis) => ofExtent(drawing.frame?.[axis], undefined)),
    ...drawing.shapes.flatMap((shape) => [
      ...usesOf(shape),
      ...(shape.kind === "profile" ? [] : ofWhere(shape.where, shape.table)),
    ]),
  ]
  for (const shape of drawing.shapes) {
    if (!layers.has(shape.layer)) fail(`has a shape on the layer "${shape.layer}", which it does not have`)
    const tables = shape.kind === "profile" ? shape.through.map((one) => one.table) : [shape.table]
    for (const table of tables) if (table !== undefined && !has(table)) fail(`names no table: "${table}"`)
  }
  for (const { name, table } of uses) {
    if (fullName(name, table, has) === undefined) fail(`names nothing in the workbook: "${name}"`)
  }
}

/** The tables and entries that a drawing has shapes of. */
export function drawnNames(drawing: Drawing): ReadonlySet<string> {
  return new Set(
    drawing.shapes.flatMap((shape) => {
      if (shape.kind === "profile") return shape.through.flatMap(({ table }) => table ?? [])
      if (shape.kind === "dimension") return shape.table === undefined ? [shape.says] : []
      return shape.table ?? shape.of ?? []
    }),
  )
}
