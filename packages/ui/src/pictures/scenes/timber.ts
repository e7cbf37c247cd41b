import { area, box, dots, line, repeat, ring, type Scene, type Shape, span, timberEnd } from "../shapes.ts"

/** The floor's edge cut through: skid, rim and joist, sheet, tiles, and the board along the edge. */
const edge: Scene = {
  parts: {
    joist: [box("wood", 92, 92, 194, 40)],
    skid: timberEnd(180, 132, 32, 32),
    rim: timberEnd(76, 92, 16, 40),
    sheet: [box("sheet", 76, 80, 210, 12)],
    tiles: repeat(7, (at) => box("block", 80 + at * 29, 70, 29, 10)),
    edgeBoard: timberEnd(62, 46, 14, 76),
  },
  asks: {
    skid: { lit: ["skid"], spans: [span(180, 164, 212, 164, 0, 10), span(212, 132, 212, 164, 20, 0)] },
    rim: { lit: ["rim"], spans: [span(76, 132, 92, 132, 0, 18), span(76, 92, 76, 132, -34, 0)] },
    sheet: { lit: ["sheet"], spans: [span(286, 80, 286, 92, 20, 0)] },
    tile: { lit: ["tiles"], spans: [span(283, 70, 283, 80, 23, 0)] },
    edgeBoard: { lit: ["edgeBoard"], spans: [span(62, 46, 76, 46, 0, -16), span(62, 46, 62, 122, -22, 0)] },
    edgeRise: { lit: ["edgeBoard"], spans: [span(62, 46, 62, 70, -22, 0)] },
  },
}

/** Joists cut through, over a timber that carries them. */
const crossing: Scene = {
  parts: {
    skid: [box("wood", 10, 104, 300, 36)],
    blocks: [box("block", 60, 140, 60, 30), box("block", 206, 140, 60, 30)],
    joist1: timberEnd(44, 60, 16, 44),
    joist2: timberEnd(117, 60, 16, 44),
    joist3: timberEnd(190, 60, 16, 44),
    joist4: timberEnd(263, 60, 16, 44),
    sheet: [box("sheet", 10, 48, 300, 12)],
  },
  extras: {
    ties: [44, 117, 190, 263].map((x) => box("block", x + 16, 84, 5, 36)),
    screws: [44, 117, 190, 263].flatMap((x) => [
      line("heavy", [x - 4, 84], [x + 8, 120]),
      line("heavy", [x + 20, 84], [x + 8, 120]),
    ]),
    tape: [44, 117, 190, 263].map((x) => box("sheet", x - 1, 57, 18, 5)),
  },
  asks: {
    joist: { lit: ["joist2"], spans: [span(117, 60, 133, 60, 0, -30), span(133, 60, 133, 104, 18, 0)] },
    ties: { lit: ["ties"] },
    screws: { lit: ["screws"] },
    tape: { lit: ["tape"] },
  },
}

/** Two pieces of a rim that meet, and the block behind them; from above. */
const rim: Scene = {
  parts: {
    joists: [box("wood", 54, 66, 14, 108), box("wood", 252, 66, 14, 108)],
    rims: [box("wood", 10, 48, 150, 18), box("wood", 160, 48, 150, 18)],
    block: [box("end", 104, 66, 112, 18)],
    blocking: [box("wood", 68, 142, 184, 14)],
  },
  extras: {
    blockScrews: dots([114, 57], [138, 57], [182, 57], [206, 57]),
    endScrews: [52, 61, 70]
      .flatMap((x) => [line("heavy", [x, 44], [x, 92])])
      .concat([250, 259, 268].map((x) => line("heavy", [x, 44], [x, 92]))),
    blockingScrews: [144, 153].flatMap((y) => [
      line("heavy", [50, y], [90, y]),
      line("heavy", [230, y], [270, y]),
    ]),
  },
  asks: {
    blockLength: { lit: ["block"], spans: [span(104, 84, 216, 84, 0, 26)] },
    blockScrews: { lit: ["blockScrews"] },
    endScrews: { lit: ["endScrews"] },
    blockingScrews: { lit: ["blockingScrews"] },
  },
}

/** Two neighbouring lines of pieces on their supports; from above. */
const lines: Scene = {
  parts: {
    supports: [34, 120, 206, 292].flatMap((x) => [
      box("block", x - 17, 46, 34, 34),
      box("block", x - 17, 112, 34, 34),
    ]),
    piece1: [box("wood", 20, 54, 100, 18)],
    piece2: [box("wood", 120, 54, 180, 18)],
    piece3: [box("wood", 20, 120, 186, 18)],
    piece4: [box("wood", 206, 120, 80, 18)],
    end: [line("dashed", [304, 36], [304, 156])],
  },
  extras: { joints: [line("heavy", [120, 50], [120, 76]), line("heavy", [206, 116], [206, 142])] },
  asks: {
    rest: { lit: ["piece1"], spans: [span(103, 54, 120, 54, 0, -24)] },
    stagger: { lit: ["joints"], spans: [span(120, 96, 206, 96)] },
    piece: { lit: ["piece1"], spans: [span(20, 54, 120, 54, 0, -24)] },
    short: { lit: ["piece4"], spans: [span(286, 138, 304, 138, 0, 26)] },
  },
}

/** Pieces that meet on a sleeper, with a cleat on either side; from above. */
const cleats: Scene = {
  parts: {
    sleeper: [box("end", 138, 20, 44, 140)],
    pieces: [box("wood", 8, 80, 152, 18), box("wood", 160, 80, 304 - 152, 18)],
    cleats: [box("board", 96, 62, 128, 18), box("board", 96, 98, 128, 18)],
  },
  extras: {
    screws: [71, 107].flatMap((y) => dots([106, y], [140, y], [180, y], [214, y])),
    seat: [line("heavy", [150, 74], [150, 104]), line("heavy", [170, 74], [170, 104])],
  },
  asks: {
    length: { lit: ["cleats"], spans: [span(96, 116, 224, 116, 0, 28)] },
    count: { lit: ["cleats"] },
    screws: { lit: ["screws"] },
    seat: { lit: ["seat"] },
  },
}

const grain = (x: number, y: number, length: number, height: number): readonly Shape[] => [
  box("wood", x, y, length, height),
  line("thin", [x + length * 0.08, y + height * 0.4], [x + length * 0.5, y + height * 0.4]),
  line("thin", [x + length * 0.4, y + height * 0.7], [x + length * 0.93, y + height * 0.7]),
]

/** Timber on a rack, of the lengths that are sold. */
const rack: Scene = {
  parts: {
    short: grain(40, 34, 110, 20),
    middle: grain(40, 84, 165, 20),
    long: grain(40, 134, 230, 20),
    rack: [line("heavy", [34, 20], [34, 170])],
  },
  asks: {
    lengths: {
      lit: ["short", "middle", "long"],
      spans: [span(40, 34, 150, 34, 0, -12), span(40, 84, 205, 84, 0, -12), span(40, 134, 270, 134, 0, -12)],
    },
  },
}

const TEETH = repeat(15, (at) => [152 + (at % 2 === 0 ? 0 : 14), 34 + at * 6] as const)

/** A board that is sawn through, and its rough end. */
const cut: Scene = {
  parts: {
    left: grain(12, 66, 140, 50),
    right: grain(166, 66, 136, 50),
    saw: [line("line", ...TEETH)],
  },
  extras: {
    slot: [box("line", 152, 66, 14, 50)],
    end: [
      box("end", 270, 66, 32, 50),
      line("thin", [302, 78], [282, 80]),
      line("thin", [302, 98], [280, 101]),
    ],
  },
  asks: {
    kerf: { lit: ["slot"], spans: [span(152, 116, 166, 116, 0, 26)] },
    trim: { lit: ["end"], spans: [span(270, 116, 302, 116, 0, 26)] },
  },
}

/** A beam of planks side by side: its end, and its side with the screws. */
const beam: Scene = {
  parts: {
    plank1: timberEnd(24, 56, 20, 64),
    plank2: timberEnd(44, 56, 20, 64),
    side: [box("wood", 104, 56, 206, 64)],
    screws: dots(...[124, 174, 224, 274].flatMap((x) => [[x, 72] as const, [x, 104] as const])),
  },
  extras: { pair: dots([174, 72], [174, 104]) },
  asks: {
    plank: { lit: ["plank1"], spans: [span(24, 56, 44, 56, 0, -20), span(64, 56, 64, 120, 20, 0)] },
    plies: { lit: ["plank1", "plank2"] },
    screwSpacing: { lit: ["screws"], spans: [span(124, 56, 174, 56, 0, -20)] },
    screwsPerPlace: { lit: ["pair"] },
  },
}

/** A boardwalk cut through, from edge to edge. */
const walk: Scene = {
  parts: {
    stone: [box("stone", 56, 132, 208, 20)],
    sleeper: [box("wood", 66, 106, 188, 26)],
    stringer1: timberEnd(70, 66, 14, 40),
    stringer2: timberEnd(153, 66, 14, 40),
    stringer3: timberEnd(236, 66, 14, 40),
    board: [box("board", 50, 54, 220, 12)],
  },
  asks: {
    stringer: { lit: ["stringer2"], spans: [span(153, 54, 167, 54, 0, -18), span(167, 66, 167, 106, 20, 0)] },
    spacing: { lit: ["stringer1", "stringer2"], spans: [span(77, 54, 160, 54, 0, -24)] },
    inset: { lit: ["stringer1"], spans: [span(50, 54, 70, 54, 0, -24)] },
    sleeper: { lit: ["sleeper"], spans: [span(66, 132, 254, 132, 0, 34)] },
  },
}

const SLEEPERS = [50, 147, 244]

/** A boardwalk from the side: sleepers at their ends, and a kerb on its packers. */
const walkSide: Scene = {
  parts: {
    stone: SLEEPERS.map((x) => box("stone", x - 12, 144, 50, 16)),
    sleeper1: timberEnd(50, 118, 26, 26),
    sleeper2: timberEnd(147, 118, 26, 26),
    sleeper3: timberEnd(244, 118, 26, 26),
    stringer: [box("wood", 8, 82, 304, 36)],
    boards: repeat(19, (at) => box("board", 9 + at * 16, 72, 14, 10)),
    packers: [28, 138, 248].map((x) => box("end", x, 54, 44, 18)),
    kerb: [box("wood", 8, 34, 304, 20)],
  },
  asks: {
    spacing: { lit: ["sleeper1", "sleeper2"], spans: [span(63, 144, 160, 144, 0, 26)] },
    sleeper: { lit: ["sleeper2"], spans: [span(147, 144, 173, 144, 0, 24), span(173, 118, 173, 144, 20, 0)] },
    packerHeight: { lit: ["packers"], spans: [span(182, 54, 182, 72, 22, 0)] },
    packerLength: { lit: ["packers"], spans: [span(138, 54, 182, 54, 0, -36)] },
  },
}

/** A flight of steps, and what is under the treads. */
const steps: Scene = {
  parts: {
    soil: [box("soil", 0, 156, 320, 24), line("heavy", [0, 156], [320, 156])],
    carriage: [
      area(
        "wood",
        [110, 70],
        [110, 104],
        [176, 156],
        [236, 156],
        [236, 136],
        [176, 136],
        [176, 102],
        [116, 102],
        [116, 70],
      ),
    ],
    frame: [box("wood", 0, 76, 110, 30)],
    floor: [box("board", 0, 66, 116, 10)],
    tread1: [box("board", 114, 96, 31, 8), box("board", 148, 96, 32, 8)],
    tread2: [box("board", 176, 126, 31, 8), box("board", 210, 126, 32, 8)],
  },
  extras: { head: [line("heavy", [96, 84], [126, 84]), line("heavy", [96, 96], [126, 96])] },
  asks: {
    riser: { lit: ["tread2"], spans: [span(242, 126, 242, 156, 24, 0)] },
    tread: { lit: ["tread2"], spans: [span(180, 126, 242, 126, 0, -14)] },
    boards: { lit: ["tread1", "tread2"] },
    carriage: { lit: ["carriage"] },
    head: { lit: ["head"] },
  },
}

/** A ramp from the ground to the floor. */
const ramp: Scene = {
  parts: {
    soil: [box("soil", 0, 140, 320, 40), line("heavy", [0, 140], [320, 140])],
    floor: [box("board", 0, 66, 78, 10), box("wood", 0, 76, 76, 30), box("block", 30, 106, 26, 34)],
    ramp: [area("wood", [78, 66], [262, 140], [240, 140], [78, 76])],
  },
  extras: { level: [line("dashed", [78, 66], [262, 66])] },
  asks: {
    slope: {
      lit: ["ramp", "level"],
      spans: [span(78, 140, 262, 140, 0, 20), span(262, 66, 262, 140, 24, 0)],
    },
  },
}

/** Posts of a guard along the edge of a floor. */
const guard: Scene = {
  parts: {
    soil: [box("soil", 0, 160, 320, 20), line("heavy", [0, 160], [320, 160])],
    rails: [box("wood", 30, 36, 250, 8), box("wood", 30, 92, 250, 6)],
    frame: [box("wood", 30, 118, 250, 18)],
    floor: [box("board", 26, 110, 258, 8)],
    post1: [box("end", 40, 30, 12, 100)],
    post2: [box("end", 146, 30, 12, 100)],
    post3: [box("end", 252, 30, 12, 100)],
  },
  extras: { bolts: dots([152, 121], [152, 130]) },
  asks: {
    drop: { lit: ["floor"], spans: [span(284, 110, 284, 160, 20, 0)] },
    spacing: { lit: ["post1", "post2"], spans: [span(46, 30, 152, 30, 0, -16)] },
    posts: { lit: ["post1", "post2", "post3"] },
    bolts: { lit: ["bolts"] },
  },
}

/** A shed or a greenhouse from its gable, with its door. */
const gable: Scene = {
  parts: {
    soil: [box("soil", 0, 158, 320, 22), line("heavy", [0, 158], [320, 158])],
    blocks: [box("block", 84, 142, 24, 16), box("block", 212, 142, 24, 16)],
    floor: [box("board", 60, 130, 200, 12)],
    walls: [box("sheet", 76, 74, 168, 56)],
    roof: [area("wood", [64, 78], [160, 28], [256, 78], [244, 78], [160, 36], [76, 78])],
    gable: [line("thin", [76, 74], [244, 74])],
    door: [box("block", 136, 84, 48, 46)],
  },
  extras: {
    ramp: [box("board", 130, 142, 60, 16)],
    anchors: [line("heavy", [68, 136], [68, 172]), line("heavy", [252, 136], [252, 172])],
  },
  asks: {
    wall: { lit: ["walls"], spans: [span(244, 74, 244, 130, 30, 0)] },
    roof: { lit: ["roof"], spans: [span(160, 28, 160, 74, 114, 0)] },
    rampWidth: { lit: ["ramp"], spans: [span(130, 158, 190, 158, 0, 12)] },
    anchors: { lit: ["anchors"] },
  },
}

/** The sill of a door, cut through. */
const sill: Scene = {
  parts: {
    frame: [...timberEnd(120, 110, 20, 56), box("wood", 140, 110, 180, 56)],
    floor: [box("sheet", 120, 94, 200, 16)],
    sill: timberEnd(124, 64, 46, 30),
    door: [box("block", 138, 0, 16, 62)],
  },
  asks: { height: { lit: ["sill"], spans: [span(170, 64, 170, 94, 50, 0)] } },
}

/** A net on posts at the edge of a floor, tied down by lines to pegs. */
const net: Scene = {
  parts: {
    soil: [box("soil", 0, 158, 320, 22), line("heavy", [0, 158], [320, 158])],
    floor: [box("board", 40, 134, 204, 8), box("wood", 44, 142, 196, 16)],
    mesh: [
      ...repeat(12, (at) => line("thin", [48 + at * 16.9, 34], [48 + at * 16.9, 134])),
      ...repeat(6, (at) => line("thin", [42, 48 + at * 16], [242, 48 + at * 16])),
    ],
    rope: [line("heavy", [42, 34], [242, 34])],
    post1: [box("end", 38, 30, 8, 128)],
    post2: [box("end", 138, 30, 8, 128)],
    post3: [box("end", 238, 30, 8, 128)],
    guy: [line("line", [244, 36], [298, 158]), line("heavy", [294, 152], [302, 166])],
  },
  extras: {
    knots: [ring("dot", 245, 38, 5), ring("dot", 288, 136, 5)],
    ties: dots(...repeat(8, (at) => [54 + at * 25.1, 34] as const)),
  },
  asks: {
    height: { lit: ["mesh"], spans: [span(38, 34, 38, 134, -20, 0)] },
    spacing: { lit: ["post1", "post2"], spans: [span(42, 30, 142, 30, 0, -16)] },
    posts: { lit: ["post1", "post2", "post3"] },
    guys: { lit: ["guy"] },
    reach: { lit: ["guy"], spans: [span(242, 158, 298, 158, 0, 14)] },
    knots: { lit: ["guy", "knots"] },
    ties: { lit: ["ties"], spans: [span(79.1, 34, 104.2, 34, 0, -18)] },
  },
}

const KNOTS = repeat(7, (x) => repeat(5, (y) => [40 + x * 40, 10 + y * 40] as const)).flat()

/** The netting close up, and its hanging on a rope. */
const netting: Scene = {
  parts: {
    twine: [
      ...repeat(5, (at) => line("line", [40, 10 + at * 40], [280, 10 + at * 40])),
      ...repeat(7, (at) => line("line", [40 + at * 40, 10], [40 + at * 40, 170])),
    ],
    knots: KNOTS.map(([x, y]) => ring("dot", x, y, 3.5)),
  },
  extras: {
    bar: [line("heavy", [120, 90], [160, 90])],
    string: [box("block", 120, 82, 40, 16)],
    meshes: [
      box("line", 120, 50, 40, 40),
      box("line", 160, 50, 40, 40),
      box("line", 120, 90, 40, 40),
      box("line", 160, 90, 40, 40),
    ],
  },
  asks: {
    bar: { lit: ["bar"], spans: [span(120, 90, 160, 90, 0, 20)] },
    twine: { lit: ["string"], spans: [span(160, 82, 160, 98, 18, 0)] },
    meshes: { lit: ["meshes"] },
  },
}

export const TIMBER = {
  edge,
  crossing,
  rim,
  lines,
  cleats,
  rack,
  cut,
  beam,
  walk,
  walkSide,
  steps,
  ramp,
  guard,
  gable,
  sill,
  net,
  netting,
}
