// What the scenes are made of. Places and sizes are in the units of a picture, `FRAME` wide and high.

export const FRAME = { width: 320, height: 180 } as const

export type Point = readonly [x: number, y: number]

/** What a shape stands for; each has a fill and a stroke of its own in both themes. */
export type Look =
  | "soil"
  | "turf"
  | "stone"
  | "block"
  | "wood"
  | "end"
  | "board"
  | "sheet"
  | "water"
  | "line"
  | "heavy"
  | "thin"
  | "dashed"
  | "dot"

/** A polygon, an open line, or a ring (one point and a radius). */
export interface Shape {
  readonly look: Look
  readonly points: readonly Point[]
  readonly closed: boolean
  readonly radius?: number
}

/** A measured length from `a` to `b`, drawn `out` of them so that it stands clear of the thing. */
export interface Span {
  readonly a: Point
  readonly b: Point
  readonly out: Point
}

/** One thing that can be asked for in a scene. */
export interface Ask {
  /** Names of the scene's parts. */
  readonly lit?: readonly string[]
  readonly spans?: readonly Span[]
}

/** A schematic view that many entries share: not to scale. */
export interface Scene {
  /** Drawn in this order. */
  readonly parts: Readonly<Record<string, readonly Shape[]>>
  /** Parts that are there only while they are lit. */
  readonly extras?: Readonly<Record<string, readonly Shape[]>>
  readonly asks: Readonly<Record<string, Ask>>
}

export const box = (look: Look, x: number, y: number, width: number, height: number): Shape => ({
  look,
  points: [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ],
  closed: true,
})

export const area = (look: Look, ...points: readonly Point[]): Shape => ({ look, points, closed: true })

export const line = (look: Look, ...points: readonly Point[]): Shape => ({ look, points, closed: false })

export const ring = (look: Look, x: number, y: number, radius: number): Shape => ({
  look,
  points: [[x, y]],
  closed: true,
  radius,
})

/** Screws seen from above, or pins. */
export const dots = (...points: readonly Point[]): readonly Shape[] =>
  points.map(([x, y]) => ring("dot", x, y, 2.2))

/** A timber cut through: crossed, as drawings of the trade have it. */
export const timberEnd = (x: number, y: number, width: number, height: number): readonly Shape[] => [
  box("end", x, y, width, height),
  line("thin", [x, y], [x + width, y + height]),
  line("thin", [x, y + height], [x + width, y]),
]

/** Broken stone, with some of the stones. */
export const stone = (x: number, y: number, width: number, height: number): readonly Shape[] => [
  box("stone", x, y, width, height),
  ...repeat(Math.floor((width - 6) / 11), (place) =>
    ring("dot", x + 7 + place * 11, y + height * (place % 2 === 0 ? 0.35 : 0.68), 1.2),
  ),
]

/** Earth from edge to edge, cut through: its surface goes straight from `left` to `right`. */
export const ground = (left: number, right: number): readonly Shape[] => [
  area("soil", [0, left], [FRAME.width, right], [FRAME.width, FRAME.height], [0, FRAME.height]),
  line("heavy", [0, left], [FRAME.width, right]),
]

export const repeat = <T>(count: number, make: (place: number) => T): readonly T[] =>
  Array.from({ length: count }, (_, place) => make(place))

export const span = (ax: number, ay: number, bx: number, by: number, outX = 0, outY = 0): Span => ({
  a: [ax, ay],
  b: [bx, by],
  out: [outX, outY],
})
