import { box, dots, line, repeat, type Scene, span } from "../shapes.ts"

// Seen from above. The high end is on the left; the high corner, A of setting out, is below
// on the left, as in the plan, and B the next along the length.

/** The frame: rims along both sides, joists across, and the lines that carry them. */
const frame: Scene = {
  parts: {
    line1: [box("end", 50, 46, 220, 10)],
    line2: [box("end", 50, 79, 220, 10)],
    line3: [box("end", 50, 112, 220, 10)],
    ...Object.fromEntries(repeat(10, (at) => [`joist${at + 1}`, [box("wood", 50 + at * 24, 39, 4, 90)]])),
    rims: [box("wood", 50, 34, 220, 5), box("wood", 50, 129, 220, 5)],
  },
  extras: {
    floor: [box("board", 50, 34, 220, 100)],
    outline: [box("line", 50, 34, 220, 100)],
    blocking: [66, 97].flatMap((y) => repeat(9, (at) => box("wood", 54 + at * 24, y, 20, 5))),
    end1: [line("heavy", [50, 34], [50, 134])],
    end2: [line("heavy", [270, 34], [270, 134])],
  },
  asks: {
    length: { lit: ["rims"], spans: [span(50, 134, 270, 134, 0, 22)] },
    width: { lit: ["joist1", "joist10"], spans: [span(50, 34, 50, 134, -22, 0)] },
    area: { lit: ["floor"] },
    lineSpacing: { lit: ["line1", "line2"], spans: [span(270, 51, 270, 84, 22, 0)] },
    lineInset: { lit: ["line1"], spans: [span(270, 34, 270, 46, 22, 0)] },
    lineToEdge: { lit: ["line1"], spans: [span(270, 34, 270, 51, 22, 0)] },
    joistSpacing: { lit: ["joist4", "joist5"], spans: [span(124, 34, 148, 34, 0, -16)] },
    blocking: { lit: ["blocking"] },
    diagonal1: { lit: ["outline"], spans: [span(50, 134, 270, 34)] },
    diagonal2: { lit: ["outline"], spans: [span(270, 134, 50, 34)] },
    end1: { lit: ["end1"], spans: [span(50, 34, 50, 134, -22, 0)] },
    end2: { lit: ["end2"], spans: [span(270, 34, 270, 134, 22, 0)] },
  },
}

const stepsAt = (x: number, y: number, across: boolean) =>
  across
    ? [box("board", x, y, 44, 9), box("board", x, y + 11, 44, 9)]
    : [box("board", x, y, 9, 44), box("board", x + 11, y, 9, 44)]

/** What may stand at each side of a platform. */
const around: Scene = {
  parts: {
    floor: [
      box("board", 60, 45, 200, 90),
      ...repeat(13, (at) => line("thin", [74 + at * 14, 45], [74 + at * 14, 135])),
    ],
  },
  extras: {
    stepsHigh: stepsAt(38, 68, false),
    stepsLow: stepsAt(262, 68, false),
    stepsFirst: stepsAt(138, 137, true),
    stepsOther: stepsAt(138, 23, true),
    ends: [box("wood", 52, 45, 7, 90), box("wood", 261, 45, 7, 90)],
    sides: [box("wood", 52, 37, 216, 7), box("wood", 52, 136, 216, 7)],
    high: [box("board", 60, 45, 28, 90)],
    rail: [box("line", 64, 49, 192, 82), ...dots([64, 49], [256, 49], [64, 131], [256, 131])],
  },
  asks: {
    stepsHigh: { lit: ["stepsHigh"] },
    stepsLow: { lit: ["stepsLow"] },
    stepsFirst: { lit: ["stepsFirst"] },
    stepsOther: { lit: ["stepsOther"] },
    ends: { lit: ["ends"] },
    sides: { lit: ["sides"] },
    highEnd: { lit: ["high", "stepsHigh"] },
    rail: { lit: ["rail"] },
  },
}

/** A fence that is the boundary, and the platform away from it. */
const place: Scene = {
  parts: {
    floor: [
      box("board", 40, 45, 160, 90),
      ...repeat(10, (at) => line("thin", [54.5 + at * 14.5, 45], [54.5 + at * 14.5, 135])),
    ],
    fence: [line("heavy", [285, 8], [285, 172]), ...repeat(6, (at) => box("end", 281, 14 + at * 29, 8, 8))],
  },
  asks: { distance: { lit: ["fence"], spans: [span(200, 90, 285, 90)] } },
}

/** A building on the platform. */
const building: Scene = {
  parts: {
    floor: [
      box("board", 30, 22, 260, 120),
      ...repeat(18, (at) => line("thin", [43.5 + at * 13.5, 22], [43.5 + at * 13.5, 142])),
    ],
    house: [box("block", 62, 40, 196, 84), line("thin", [62, 82], [258, 82])],
  },
  asks: {
    length: { lit: ["house"], spans: [span(62, 124, 258, 124, 0, 36)] },
    width: { lit: ["house"], spans: [span(258, 40, 258, 124, 46, 0)] },
  },
}

/** A game table in the middle of the floor. */
const room: Scene = {
  parts: {
    floor: [box("board", 24, 16, 272, 148)],
    table: [box("block", 108, 60, 104, 60), line("thin", [108, 90], [212, 90])],
    net: [line("heavy", [160, 54], [160, 126])],
  },
  asks: {
    behind: { lit: ["table"], spans: [span(212, 90, 296, 90)] },
    beside: { lit: ["table"], spans: [span(136, 120, 136, 164)] },
  },
}

export const PLANS = { frame, around, place, building, room }
