/** Lines of one look: each a run of places, x and y by turns, in pixels of its tile. */
export interface Stroke {
  readonly class: string
  readonly lines: readonly (readonly number[])[]
  readonly closed?: true
}

/** A tile that is laid again and again, in pixels. */
export interface Hatch {
  readonly width: number
  readonly height: number
  /** What lies under the strokes. */
  readonly ground?: string
  readonly strokes: readonly Stroke[]
}

/** A box in pixels, from the hatch's own corner. */
export interface Tiles {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** Fills as drawing standards have them: strokes in threes for soil, pebbles for stone, dots for concrete. */
export const HATCHES: Readonly<Record<string, Hatch>> = {
  soil: {
    width: 24,
    height: 24,
    strokes: [
      {
        class: "hatch-stroke",
        lines: [
          [0, 8, 8, 0],
          [0, 12, 12, 0],
          [0, 16, 16, 0],
          [12, 24, 24, 12],
          [16, 24, 24, 16],
          [20, 24, 24, 20],
        ],
      },
    ],
  },
  stone: {
    width: 18,
    height: 14,
    ground: "hatch-stone",
    strokes: [
      {
        class: "hatch-stroke",
        closed: true,
        lines: [
          [2, 4.5, 4, 2, 7.5, 2.5, 8, 5.5, 5, 6.5],
          [11, 3.5, 13.5, 1.5, 16.5, 3.5, 15, 6, 12, 6],
          [5.5, 11, 8.5, 8.5, 11, 10, 10.5, 12.5, 7, 13],
          [14, 10, 16.5, 9.5, 16.5, 12, 14.5, 12.5],
        ],
      },
    ],
  },
  concrete: {
    width: 16,
    height: 16,
    ground: "hatch-concrete",
    strokes: [
      {
        class: "hatch-dots",
        lines: [
          [3, 3, 3.01, 3],
          [11, 5, 11.01, 5],
          [6, 10, 6.01, 10],
          [13, 13, 13.01, 13],
          [2, 14, 2.01, 14],
        ],
      },
      {
        class: "hatch-stroke",
        closed: true,
        lines: [
          [7, 4, 9, 4, 8, 2.4],
          [10, 9.5, 12, 9.5, 11, 8],
        ],
      },
    ],
  },
  end: {
    width: 8,
    height: 8,
    ground: "hatch-end",
    strokes: [
      {
        class: "hatch-stroke",
        lines: [
          [0, 8, 8, 0],
          [-2, 2, 2, -2],
          [6, 10, 10, 6],
        ],
      },
    ],
  },
  net: {
    width: 8,
    height: 8,
    strokes: [
      {
        class: "hatch-mesh",
        lines: [
          [0, 0, 8, 8],
          [8, 0, 0, 8],
        ],
      },
    ],
  },
}

const DIGITS = 100

/** A path with the stroke in every tile that one of the boxes touches, each tile once. */
export function repeated(stroke: Stroke, { width, height }: Hatch, boxes: readonly Tiles[]): string {
  const places = new Map<string, readonly [number, number]>()
  for (const { left, right, bottom, top } of boxes)
    for (let column = Math.floor(left / width); column * width < right; column++)
      for (let row = Math.floor(bottom / height); row * height < top; row++)
        places.set(`${column} ${row}`, [column * width, row * height])
  const end = stroke.closed ? "Z" : ""
  return [...places.values()]
    .flatMap(([x, y]) => stroke.lines.map((line) => `M${moved(line, x, y).join(" ")}${end}`))
    .join("")
}

function moved(line: readonly number[], x: number, y: number): readonly number[] {
  return line.map((place, index) => Math.round((place + (index % 2 === 0 ? x : y)) * DIGITS) / DIGITS)
}
