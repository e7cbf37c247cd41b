import {
  area,
  box,
  dots,
  ground,
  line,
  repeat,
  ring,
  type Scene,
  type Shape,
  span,
  stone,
  timberEnd,
} from "../shapes.ts"

const FALL = 0.1
const lawn = (x: number) => 108 + x * FALL
const stackAt = (x: number): readonly Shape[] => [
  ...stone(x - 17, lawn(x), 34, 14),
  ...repeat(2, (at) => {
    const height = (lawn(x) - 92) / 2
    return box("block", x - 11, 92 + at * height, 22, height)
  }),
]

/** From the side: a long timber on its stacks, on a lawn that falls. */
const side: Scene = {
  parts: {
    ground: ground(lawn(0), lawn(320)),
    stack1: stackAt(64),
    stack2: stackAt(128),
    stack3: stackAt(192),
    stack4: stackAt(256),
    line: [box("wood", 46, 80, 228, 12)],
    joists: repeat(15, (at) => box("end", 46 + at * 15.9, 66, 5.4, 14)),
    floor: [box("board", 44, 60, 232, 6)],
  },
  asks: {
    supportSpacing: { lit: ["stack2", "stack3"], spans: [span(128, 142, 192, 142, 0, 20)] },
    supportFromEnd: { lit: ["stack1"], spans: [span(46, 92, 64, 92, 0, 64)] },
    height: { lit: ["floor"], spans: [span(276, 60, 276, lawn(276), 20, 0)] },
    heightOfFrame: { lit: ["joists"], spans: [span(276, 80, 276, lawn(276), 20, 0)] },
  },
}

/** The lawn as a block that is cut out of the ground, under a level plane through its high corner. */
const fall: Scene = {
  parts: {
    front: [area("soil", [30, 62], [220, 136], [220, 172], [30, 172])],
    end: [area("soil", [220, 136], [290, 118], [290, 160], [220, 172])],
    lawn: [area("turf", [30, 62], [220, 136], [290, 118], [100, 46])],
    edges: [
      line("line", [30, 62], [30, 172], [220, 172], [290, 160], [290, 118]),
      line("line", [220, 136], [220, 172]),
    ],
    level: [line("dashed", [30, 62], [220, 96], [290, 56], [100, 22], [30, 62])],
  },
  extras: {
    long: [line("heavy", [30, 62], [220, 136])],
    short: [line("heavy", [30, 62], [100, 46])],
    points: dots(
      [30, 62],
      [93, 87],
      [157, 111],
      [220, 136],
      [65, 54],
      [128, 78],
      [192, 103],
      [255, 127],
      [100, 46],
      [163, 70],
      [227, 94],
      [290, 118],
    ),
  },
  asks: {
    long: { lit: ["long"], spans: [span(220, 96, 220, 136)] },
    short: { lit: ["short"], spans: [span(100, 22, 100, 46)] },
    surface: { lit: ["lawn"] },
    points: { lit: ["points"] },
  },
}

const HUMPS = [
  [0, 92],
  [30, 84],
  [60, 98],
  [95, 100],
  [130, 84],
  [160, 78],
  [190, 96],
  [225, 118],
  [260, 110],
  [290, 118],
  [320, 128],
] as const

/** Humps and hollows about an even plane. */
const humps: Scene = {
  parts: {
    soil: [area("soil", ...HUMPS, [320, 180], [0, 180]), line("heavy", ...HUMPS)],
    plane: [line("dashed", [0, 84], [320, 124])],
  },
  asks: { off: { lit: ["plane"], spans: [span(160, 78, 160, 104)] } },
}

/** One support cut through, the timber on it seen at its end. */
const support: Scene = {
  parts: {
    ground: [...ground(82, 82)],
    bed: stone(110, 112, 100, 28),
    hole: [line("line", [110, 82], [110, 140], [210, 140], [210, 82])],
    block1: [box("block", 128, 86, 64, 26)],
    block2: [box("block", 128, 60, 64, 26)],
    joist: [box("wood", 40, 14, 240, 16)],
    line: timberEnd(145, 30, 30, 30),
  },
  extras: {
    pit: [area("turf", [110, 82], [210, 82], [210, 140], [110, 140])],
    halves: [line("heavy", [160, 60], [160, 112])],
    frost: [line("dashed", [0, 162], [320, 162])],
    water: [box("water", 0, 164, 320, 16)],
    cover: [...stone(0, 70, 128, 12), ...stone(192, 70, 128, 12)],
  },
  asks: {
    clearance: { lit: ["line"], spans: [span(175, 60, 175, 82, 60, 0)] },
    dig: { lit: ["pit"], spans: [span(210, 82, 210, 140, 40, 0)] },
    bedThickness: { lit: ["bed"], spans: [span(210, 112, 210, 140, 40, 0)] },
    frost: { lit: ["frost"], spans: [span(60, 82, 60, 162)] },
    water: { lit: ["water"], spans: [span(210, 140, 210, 164, 40, 0)] },
    cover: { lit: ["cover"], spans: [span(260, 70, 260, 82, 30, 0)] },
    courses: { lit: ["block1", "block2"] },
    besides: { lit: ["block1", "block2", "halves"] },
  },
}

const EAST = [0.87, -0.5] as const
const WEST = [-0.87, -0.5] as const

/** A box seen from one of its corners, which stands at x, y. */
function corner(
  look: "stone" | "block" | "line",
  x: number,
  y: number,
  long: number,
  wide: number,
  high: number,
) {
  const at = (l: number, w: number, h: number): readonly [number, number] => [
    x + l * EAST[0] + w * WEST[0],
    y + l * EAST[1] + w * WEST[1] - h,
  ]
  return [
    area(look, at(0, 0, 0), at(long, 0, 0), at(long, 0, high), at(0, 0, high)),
    area(look, at(0, 0, 0), at(0, wide, 0), at(0, wide, high), at(0, 0, high)),
    area(look, at(0, 0, high), at(long, 0, high), at(long, wide, high), at(0, wide, high)),
  ]
}

/** A block on its bed, from above at an angle: the timber would lie along the right-hand side. */
const stack: Scene = {
  parts: {
    bed: corner("stone", 160, 160, 110, 110, 20),
    block: corner("block", 160, 120, 70, 70, 32),
    line: [line("dashed", [92, 105], [232, 24]), line("dashed", [110, 115], [250, 34])],
  },
  asks: {
    blockLength: { lit: ["block"], spans: [span(160, 120, 220.9, 85, 12, 12)] },
    blockWidth: { lit: ["block"], spans: [span(160, 120, 99.1, 85, -12, 12)] },
    blockHeight: { lit: ["block"], spans: [span(220.9, 85, 220.9, 53, 18, 0)] },
    bedLength: { lit: ["bed"], spans: [span(160, 160, 255.7, 105, 10, 10)] },
    bedWidth: { lit: ["bed"], spans: [span(160, 160, 64.3, 105, -10, 10)] },
  },
}

/** A pad of stone in the ground, its edging and fabric, and the frame on it. */
const pad: Scene = {
  parts: {
    ground: ground(78, 78),
    turf: [box("turf", 0, 78, 42, 12), box("turf", 278, 78, 42, 12)],
    stone: stone(42, 72, 236, 46),
    edging: [...timberEnd(34, 66, 8, 66), ...timberEnd(278, 66, 8, 66)],
    fabric: [line("heavy", [44, 74], [44, 116], [276, 116], [276, 74])],
    lines: [90, 146, 202].flatMap((x) => timberEnd(x, 42, 28, 30)),
    frame: [box("wood", 80, 22, 160, 20)],
  },
  extras: { bottom: [line("heavy", [42, 118], [278, 118])] },
  asks: {
    beyond: { lit: ["stone"], spans: [span(42, 118, 80, 118, 0, 36)] },
    strip: { lit: ["bottom"], spans: [span(286, 78, 286, 118, 16, 0)] },
    turf: { lit: ["turf"], spans: [span(286, 78, 286, 90, 16, 0)] },
    bottom: { lit: ["bottom"] },
    letIn: { lit: ["edging"], spans: [span(34, 118, 34, 132, -16, 0)] },
    turnUp: { lit: ["fabric"], spans: [span(44, 74, 44, 116, -28, 0)] },
  },
}

/** Edging boards held by stakes, from above. */
const edging: Scene = {
  parts: {
    stone: stone(16, 100, 288, 64),
    board: [box("wood", 16, 88, 288, 12)],
    ...Object.fromEntries(repeat(4, (at) => [`stake${at + 1}`, timberEnd(34 + at * 78, 76, 18, 12)])),
  },
  asks: { stakes: { lit: ["stake2", "stake3"], spans: [span(121, 76, 199, 76, 0, -28)] } },
}

/** Strips of cloth off a roll, one over the next, pinned down; from above. */
const fabric: Scene = {
  parts: {
    strip1: [box("sheet", 40, 30, 220, 52)],
    strip2: [box("sheet", 40, 68, 220, 52)],
    strip3: [box("sheet", 40, 106, 220, 52)],
    pins: [75, 113].flatMap((y) => dots(...repeat(5, (at) => [54 + at * 48, y] as const))),
  },
  extras: { lap: [box("sheet", 40, 68, 220, 14)] },
  asks: {
    width: { lit: ["strip1"], spans: [span(260, 30, 260, 82, 26, 0)] },
    lap: { lit: ["lap"], spans: [span(260, 68, 260, 82, 26, 0)] },
    pins: { lit: ["pins"], spans: [span(102, 75, 150, 75, 0, -22)] },
  },
}

/** A footing of concrete in the ground, and the timber on it. */
const footing: Scene = {
  parts: {
    ground: ground(78, 78),
    footing: [box("block", 128, 56, 64, 98), ...dots([146, 80], [172, 96], [150, 120], [176, 136])],
    line: timberEnd(145, 22, 30, 34),
  },
  asks: {
    diameter: { lit: ["footing"], spans: [span(128, 154, 192, 154, 0, 14)] },
    above: { lit: ["footing"], spans: [span(192, 56, 192, 78, 40, 0)] },
  },
}

/** The ground that falls away beside the platform's edge. */
const verge: Scene = {
  parts: {
    ground: ground(112, 152),
    stack: [box("block", 60, 90, 30, 30)],
    frame: [box("wood", 0, 70, 106, 20)],
    floor: [box("board", 0, 62, 110, 8)],
  },
  extras: {
    strip: [area("turf", [110, 125.75], [230, 140.75], [230, 152], [110, 137])],
    plumb: [line("dashed", [110, 62], [110, 125])],
    level: [line("dashed", [110, 125.75], [262, 125.75])],
    limit: [line("dashed", [230, 62], [230, 140])],
  },
  asks: {
    reach: { lit: ["strip", "plumb", "limit"], spans: [span(110, 62, 230, 62, 0, -20)] },
    slope: { lit: ["strip", "level"] },
    fall: { lit: ["level"], spans: [span(262, 125.75, 262, 144.75)] },
  },
}

/** Mesh from the frame down into the stone and outwards, against animals. */
const barrier: Scene = {
  parts: {
    ground: ground(104, 104),
    stone: stone(70, 104, 250, 46),
    frame: [...timberEnd(182, 46, 18, 58), box("wood", 200, 46, 120, 58)],
    mesh: [line("dashed", [178, 66], [178, 130], [96, 130])],
  },
  asks: {
    onFrame: { lit: ["mesh"], spans: [span(178, 66, 178, 104, -24, 0)] },
    inStone: { lit: ["mesh"], spans: [span(178, 104, 178, 130, 30, 0)] },
    outwards: { lit: ["mesh"], spans: [span(96, 130, 178, 130, 0, 30)] },
  },
}

/** What comes on a roll, and where one piece laps over the next. */
const roll: Scene = {
  parts: {
    first: [box("sheet", 20, 96, 170, 34)],
    second: [box("sheet", 158, 100, 112, 34)],
    roll: [ring("sheet", 278, 104, 30), ring("line", 278, 104, 18), ring("line", 278, 104, 7)],
  },
  extras: { lap: [box("sheet", 158, 100, 32, 30)] },
  asks: {
    length: { lit: ["first"], spans: [span(20, 96, 190, 96, 0, -26)] },
    lap: { lit: ["lap"], spans: [span(158, 134, 190, 134, 0, 20)] },
  },
}

export const GROUND = {
  side,
  fall,
  humps,
  support,
  stack,
  pad,
  edging,
  fabric,
  footing,
  verge,
  barrier,
  roll,
}
