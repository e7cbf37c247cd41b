import type {
  Axis,
  BoxShape,
  ContourShape,
  DimensionShape,
  Drawing,
  LineShape,
  Look,
  MarkShape,
  Place,
  ProfileShape,
  Shape,
} from "../definition/drawing.ts"
import { clipArea, clipLine, holds } from "./clip.ts"
import { levelLine } from "./contours.ts"
import type { Bounds, Drawn, DrawnShape, Point } from "./drawn.ts"
import { usesOf } from "./names.ts"
import { axesOf, DIRECTIONS, project } from "./project.ts"
import { type At, type DrawingSource, fullName, Values } from "./values.ts"

export interface ResolveOptions {
  /** In a pictorial drawing: the layers pulled apart, one above the other. */
  readonly apart?: boolean
}

/** How far layers are pulled apart, as a share of the drawing's greatest size. */
const APART_SHARE = 0.16

/**
 * Puts the workbook's values in a drawing. A shape whose values are missing, or which has no size, is left out:
 * nothing is drawn that is not an entry.
 */
export function resolveDrawing(drawing: Drawing, source: DrawingSource, options: ResolveOptions = {}): Drawn {
  const resolver = new Resolver(drawing, source, options)
  const shapes = resolver.arranged(
    resolver.clipped(drawing.shapes.flatMap((shape) => resolver.shapes(shape))),
  )
  const bounds = boundsOf(shapes)
  return bounds === undefined ? { shapes: [] } : { shapes, bounds }
}

type Span = readonly [number, number]
type Spans = Partial<Record<Axis, Span>>

class Resolver {
  readonly #drawing: Drawing
  readonly #source: DrawingSource
  readonly #values: Values
  readonly #apart: boolean

  constructor(drawing: Drawing, source: DrawingSource, options: ResolveOptions) {
    this.#drawing = drawing
    this.#source = source
    this.#values = new Values(source)
    this.#apart = options.apart === true && drawing.look === "pictorial"
  }

  get #look(): Look {
    return this.#drawing.look
  }

  shapes(shape: Shape): readonly DrawnShape[] {
    switch (shape.kind) {
      case "box":
        return this.#each(shape, (at) => this.#box(shape, at))
      case "line":
        return this.#each(shape, (at) => this.#line(shape, at))
      case "mark":
        return this.#each(shape, (at) => this.#mark(shape, at))
      case "dimension":
        return this.#each(shape, (at) => this.#dimension(shape, at))
      case "profile":
        return this.#profile(shape)
      case "contours":
        return this.#contours(shape)
    }
  }

  /** Cut to the drawing's frame, if it has one. */
  clipped(shapes: readonly DrawnShape[]): readonly DrawnShape[] {
    const { frame } = this.#drawing
    if (frame === undefined) return shapes
    const spans: Spans = {}
    for (const axis of axesOf(this.#look)) {
      const extent = frame[axis]
      const span = extent === undefined ? ([-1e6, 1e6] as const) : this.#values.extent(extent, {})
      if (span === undefined) return []
      spans[axis] = span
    }
    const window = boundsOfPoints(this.#corners(spans))
    if (window === undefined) return []
    return shapes.flatMap((shape) => clipTo(window, shape))
  }

  #rows(of: {
    readonly table?: string
    readonly where?: BoxShape["where"]
    readonly row?: number
  }): readonly At[] {
    const { table, where = {}, row } = of
    if (table === undefined) return this.#values.picks(where, {}) ? [{}] : []
    const all = Array.from(
      { length: this.#source.table(table).rowCount },
      (_, index): At => ({ table, row: index + 1 }),
    )
    return all.filter((at) => (row === undefined || at.row === row) && this.#values.picks(where, at))
  }

  #each(shape: Exclude<Shape, ProfileShape>, make: (at: At) => readonly DrawnShape[]): readonly DrawnShape[] {
    return this.#rows(shape).flatMap(make)
  }

  /** A shape of no table is of the name given, or else of the first it was placed by. */
  #base(shape: Shape, at: At, otherwise?: string) {
    const reads = usesOf(shape).flatMap(
      ({ name, table }) => fullName(name, table, (one) => this.#source.has(one)) ?? [],
    )
    const label =
      "label" in shape && shape.label !== undefined ? this.#values.reading(shape.label, at) : undefined
    return {
      layer: shape.layer,
      of:
        at.table === undefined || at.row === undefined
          ? { name: otherwise ?? ("of" in shape ? shape.of : undefined) ?? reads[0] ?? "" }
          : { name: at.table, row: at.row },
      reads: [...new Set(reads)],
      ...(label === undefined ? {} : { label: label.text }),
    }
  }

  #box(shape: BoxShape, at: At): readonly DrawnShape[] {
    const spans: Spans = {}
    for (const axis of axesOf(this.#look)) {
      const extent = shape[axis]
      const span = extent === undefined ? undefined : this.#values.extent(extent, at)
      if (span === undefined || span[1] <= span[0]) return []
      spans[axis] = span
    }
    const { repeat } = shape
    // Copies that lie behind each other are one to the eye.
    const apart = repeat !== undefined && axesOf(this.#look).some((axis) => repeat[axis] !== undefined)
    const wanted = repeat === undefined ? 1 : (this.#values.number(repeat.times, at) ?? 0)
    const times = apart ? wanted : Math.min(1, wanted)
    const base = this.#base(shape, at)
    const { label, ...unlabelled } = base
    return Array.from({ length: Math.max(0, Math.round(times)) }, (_, index) => {
      const moved: Spans = {}
      for (const axis of axesOf(this.#look)) {
        const [from, to] = spans[axis] ?? [0, 0]
        const step = repeat?.[axis] === undefined ? 0 : (this.#values.number(repeat[axis], at) ?? 0)
        moved[axis] = [from + index * step, to + index * step]
      }
      return this.#faces(moved).map(
        ({ points, face }): DrawnShape => ({
          kind: "area",
          ...(index === 0 && face !== "front" && face !== "end" ? base : unlabelled),
          points,
          ...(face === undefined ? {} : { face, depth: (moved.y?.[0] ?? 0) - (moved.x?.[1] ?? 0) }),
          ...(shape.fill === undefined ? {} : { fill: shape.fill }),
        }),
      )
    }).flat()
  }

  #faces(spans: Spans): readonly { points: readonly Point[]; face?: "top" | "front" | "end" }[] {
    if (this.#look !== "pictorial") return [{ points: this.#corners(spans) }]
    const [x, y, z] = [spans.x ?? [0, 0], spans.y ?? [0, 0], spans.z ?? [0, 0]]
    const at = (px: number, py: number, pz: number) => project("pictorial", { x: px, y: py, z: pz })
    return [
      {
        face: "end",
        points: [at(x[1], y[0], z[0]), at(x[1], y[1], z[0]), at(x[1], y[1], z[1]), at(x[1], y[0], z[1])],
      },
      {
        face: "front",
        points: [at(x[0], y[0], z[0]), at(x[1], y[0], z[0]), at(x[1], y[0], z[1]), at(x[0], y[0], z[1])],
      },
      {
        face: "top",
        points: [at(x[0], y[0], z[1]), at(x[1], y[0], z[1]), at(x[1], y[1], z[1]), at(x[0], y[1], z[1])],
      },
    ]
  }

  #corners(spans: Spans): readonly Point[] {
    const [first, second] = axesOf(this.#look)
    if (first === undefined || second === undefined) return []
    const [a, b] = [spans[first] ?? [0, 0], spans[second] ?? [0, 0]]
    return [
      [a[0], b[0]],
      [a[1], b[0]],
      [a[1], b[1]],
      [a[0], b[1]],
    ].map(([one, other]) => project(this.#look, { [first]: one, [second]: other }))
  }

  #place(place: Place, at: At): Point | undefined {
    const found: Partial<Record<Axis, number>> = {}
    for (const axis of axesOf(this.#look)) {
      const coordinate = place[axis]
      const value = coordinate === undefined ? undefined : this.#values.number(coordinate, at)
      if (value === undefined) return undefined
      found[axis] = value
    }
    return project(this.#look, found)
  }

  #line(shape: LineShape, at: At): readonly DrawnShape[] {
    const points = shape.through.flatMap((place) => this.#place(place, at) ?? [])
    if (points.length < shape.through.length) return []
    return [{ kind: "line", ...this.#base(shape, at), points }]
  }

  #mark(shape: MarkShape, at: At): readonly DrawnShape[] {
    const point = this.#place(shape, at)
    if (point === undefined) return []
    const base = this.#base(shape, at, shape.label)
    return [{ kind: "mark", ...base, at: point, mark: shape.mark }]
  }

  #dimension(shape: DimensionShape, at: At): readonly DrawnShape[] {
    const direction = DIRECTIONS[this.#look][shape.along]
    const [from, to] = [this.#values.number(shape.from, at), this.#values.number(shape.to, at)]
    const label = this.#values.reading(shape.says, at)?.text
    if (direction === undefined || from === undefined || to === undefined || label === undefined) return []
    if (from === to) return []
    const axis = direction.u === 0 ? "v" : "u"
    const sign = direction[axis]
    return [
      {
        kind: "dimension",
        ...this.#base(shape, at, shape.says),
        axis,
        from: from * sign,
        to: to * sign,
        side: shape.side,
        tier: shape.tier,
        label,
        ...(shape.step === undefined ? {} : { step: shape.step }),
      },
    ]
  }

  #profile(shape: ProfileShape): readonly DrawnShape[] {
    const found = shape.through.flatMap((one) => this.#rows(one).flatMap((at) => this.#place(one, at) ?? []))
    const points = [...found].sort((a, b) => a.u - b.u)
    if (points.length < 2) return []
    const table = shape.through.find((one) => one.table !== undefined)?.table
    const base = this.#base(shape, {}, table)
    if (shape.closedAt === undefined) return [{ kind: "line", ...base, points }]
    const level = this.#values.number(shape.closedAt, {})
    const [first, last] = [points[0], points.at(-1)]
    if (level === undefined || first === undefined || last === undefined) return []
    return [{ kind: "area", ...base, points: [...points, { u: last.u, v: level }, { u: first.u, v: level }] }]
  }

  #contours(shape: ContourShape): readonly DrawnShape[] {
    const ring = this.#rows({ table: shape.table }).flatMap((at) => {
      const point = this.#place({ x: shape.x, y: shape.y }, at)
      const level = this.#values.number(shape.level, at)
      return point === undefined || level === undefined ? [] : [{ ...point, level }]
    })
    const drawn = new Set<string>()
    return this.#rows(shape).flatMap((at) => {
      const reading = this.#values.reading(shape.level, at)
      if (typeof reading?.value !== "number" || drawn.has(reading.text)) return []
      drawn.add(reading.text)
      const base = { ...this.#base(shape, at, shape.table), label: reading.text }
      return levelLine(ring, reading.value).map((points): DrawnShape => ({ kind: "line", ...base, points }))
    })
  }

  /** In a pictorial drawing: what is nearer comes later, and the layers are pulled apart if that is asked for. */
  arranged(shapes: readonly DrawnShape[]): readonly DrawnShape[] {
    if (this.#look !== "pictorial") return shapes
    const depth = (shape: DrawnShape) => (shape.kind === "area" ? (shape.depth ?? 0) : 0)
    const sorted = [...shapes].sort((a, b) => depth(b) - depth(a))
    const bounds = boundsOf(sorted)
    if (!this.#apart || bounds === undefined) return sorted
    const gap = (bounds.most.u - bounds.least.u) * APART_SHARE
    const used = [...new Set(this.#drawing.layers.map((layer) => layer.storey ?? 0))].sort((a, b) => a - b)
    const storeys = new Map(this.#drawing.layers.map(({ id, storey = 0 }) => [id, used.indexOf(storey)]))
    const lift = (layer: string, points: readonly Point[]) =>
      points.map(({ u, v }) => ({ u, v: v + gap * (storeys.get(layer) ?? 0) }))
    return sorted.map((shape) =>
      shape.kind === "area" || shape.kind === "line"
        ? { ...shape, points: lift(shape.layer, shape.points) }
        : shape,
    )
  }
}

function clipTo(window: Bounds, shape: DrawnShape): readonly DrawnShape[] {
  switch (shape.kind) {
    case "area": {
      const points = clipArea(shape.points, window)
      return points.length < 3 || isFlat(points) ? [] : [{ ...shape, points }]
    }
    case "line":
      return clipLine(shape.points, window).map((points) => ({ ...shape, points }))
    case "mark":
      return holds(window, shape.at) ? [shape] : []
    case "dimension": {
      const [least, most] = [window.least[shape.axis], window.most[shape.axis]]
      return [shape.from, shape.to].every((end) => end >= least && end <= most) ? [shape] : []
    }
  }
}

function isFlat(points: readonly Point[]): boolean {
  const bounds = boundsOfPoints(points)
  return bounds === undefined || bounds.most.u <= bounds.least.u || bounds.most.v <= bounds.least.v
}

function pointsOf(shape: DrawnShape): readonly Point[] {
  if (shape.kind === "area" || shape.kind === "line") return shape.points
  return shape.kind === "mark" ? [shape.at] : []
}

function boundsOf(shapes: readonly DrawnShape[]): Bounds | undefined {
  return boundsOfPoints(shapes.flatMap(pointsOf))
}

function boundsOfPoints(points: readonly Point[]): Bounds | undefined {
  if (points.length === 0) return undefined
  const [us, vs] = [points.map(({ u }) => u), points.map(({ v }) => v)]
  return {
    least: { u: Math.min(...us), v: Math.min(...vs) },
    most: { u: Math.max(...us), v: Math.max(...vs) },
  }
}
