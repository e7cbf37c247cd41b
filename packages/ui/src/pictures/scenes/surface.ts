import { box, dots, line, repeat, type Scene, span, timberEnd } from "../shapes.ts"

/** Sheets laid in rows, their joints staggered; from above. */
const sheets: Scene = {
  parts: {
    row1: [40, 120, 200].map((x) => box("sheet", x, 34, 80, 40)),
    row2: [
      box("sheet", 40, 74, 40, 40),
      box("sheet", 80, 74, 80, 40),
      box("sheet", 160, 74, 80, 40),
      box("sheet", 240, 74, 40, 40),
    ],
    row3: [40, 120, 200].map((x) => box("sheet", x, 114, 80, 40)),
    joists: repeat(13, (at) => line("thin", [40 + at * 20, 34], [40 + at * 20, 154])),
  },
  extras: { one: [box("sheet", 200, 34, 80, 40)] },
  asks: {
    length: { lit: ["one"], spans: [span(200, 34, 280, 34, 0, -16)] },
    width: { lit: ["one"], spans: [span(280, 34, 280, 74, 18, 0)] },
  },
}

const LONG_EDGE = repeat(9, (at) => 62 + at * 24.5)

/** The screws of one sheet; the joists under it are dashed. */
const sheetScrews: Scene = {
  parts: {
    sheet: [box("sheet", 56, 34, 208, 112)],
    joists: repeat(5, (at) => line("dashed", [62 + at * 49, 20], [62 + at * 49, 160])),
    ends: dots(...repeat(7, (at) => [[62, 40 + at * 16.7] as const, [258, 40 + at * 16.7] as const]).flat()),
    long: dots(...LONG_EDGE.flatMap((x) => [[x, 40] as const, [x, 140] as const])),
    field: dots(
      ...[111, 160, 209].flatMap((x) => [
        [x, 40] as const,
        [x, 73.4] as const,
        [x, 106.8] as const,
        [x, 140] as const,
      ]),
    ),
  },
  extras: {
    between: dots(...[86.5, 135.5, 184.5, 233.5].flatMap((x) => [[x, 40] as const, [x, 140] as const])),
  },
  asks: {
    ends: { lit: ["ends"], spans: [span(62, 73.4, 62, 90.1, -30, 0)] },
    field: { lit: ["field"], spans: [span(209, 73.4, 209, 106.8, 24, 0)] },
    between: { lit: ["between"] },
  },
}

const TILES = repeat(8, (column) => repeat(4, (row) => ({ column, row }))).flat()
const tileAt = (column: number, row: number) => box("block", 54 + column * 26, 38 + row * 26, 26, 26)

/** Tiles on a floor, with a bare strip round them; from above. */
const tiles: Scene = {
  parts: {
    floor: [box("sheet", 40, 24, 236, 132)],
    tiles: TILES.map(({ column, row }) => tileAt(column, row)),
  },
  extras: {
    one: [tileAt(7, 0)],
    strip: [
      box("sheet", 40, 24, 236, 14),
      box("sheet", 40, 142, 236, 14),
      box("sheet", 40, 38, 14, 104),
      box("sheet", 262, 38, 14, 104),
    ],
    covered: [box("line", 54, 38, 156, 104)],
    first: TILES.filter(({ column }) => column === 0).map(({ column, row }) => tileAt(column, row)),
    chequer: TILES.filter(({ column, row }) => (column + row) % 2 === 0).map(({ column, row }) =>
      tileAt(column, row),
    ),
  },
  asks: {
    length: { lit: ["one"], spans: [span(236, 38, 262, 38, 0, -26)] },
    width: { lit: ["one"], spans: [span(262, 38, 262, 64, 30, 0)] },
    margin: { lit: ["strip"], spans: [span(262, 156, 276, 156, 0, 14)] },
    coveredLength: { lit: ["covered"], spans: [span(54, 142, 210, 142, 0, 26)] },
    coveredWidth: { lit: ["covered"], spans: [span(54, 38, 54, 142, -30, 0)] },
    start: { lit: ["first"] },
    pattern: { lit: ["chequer"] },
  },
}

const boardEnd = (at: number) => timberEnd(30 + at * 50, 72, 38, 20)

/** Boards cut through, on a joist that runs along. */
const boards: Scene = {
  parts: {
    joist: [box("wood", 20, 92, 284, 40)],
    board1: boardEnd(0),
    board2: boardEnd(1),
    board3: boardEnd(2),
    board4: boardEnd(3),
    board5: boardEnd(4),
    last: timberEnd(280, 72, 18, 20),
  },
  asks: {
    size: { lit: ["board1"], spans: [span(30, 72, 68, 72, 0, -20), span(30, 72, 30, 92, -16, 0)] },
    gap: { lit: ["board2", "board3"], spans: [span(118, 72, 130, 72, 0, -22)] },
    least: { lit: ["last"], spans: [span(280, 72, 298, 72, 0, -22)] },
  },
}

const ROW = 24
const rowAt = (row: number) => 18 + row * 29

/** Rows of boards whose joints fall on joists; from above. */
const rows: Scene = {
  parts: {
    joists: repeat(8, (at) => line("dashed", [20 + at * 40, 8], [20 + at * 40, 172])),
    row1: [box("board", 20, rowAt(0), 160, ROW), box("board", 180, rowAt(0), 120, ROW)],
    row2: [box("board", 20, rowAt(1), 200, ROW), box("board", 220, rowAt(1), 80, ROW)],
    row3: [box("board", 20, rowAt(2), 80, ROW), box("board", 100, rowAt(2), 200, ROW)],
    row4: [box("board", 20, rowAt(3), 160, ROW), box("board", 180, rowAt(3), 120, ROW)],
    row5: [box("board", 20, rowAt(4), 240, ROW), box("board", 260, rowAt(4), 40, ROW)],
  },
  extras: {
    joints: [
      line("heavy", [180, rowAt(0)], [180, rowAt(0) + ROW]),
      line("heavy", [220, rowAt(1)], [220, rowAt(1) + ROW]),
    ],
    short: [box("board", 20, rowAt(2), 80, ROW)],
  },
  asks: {
    stagger: { lit: ["joints"], spans: [span(180, rowAt(0) + ROW + 2.5, 220, rowAt(0) + ROW + 2.5)] },
    short: { lit: ["short"], spans: [span(20, rowAt(2) + ROW, 100, rowAt(2) + ROW, 0, 16)] },
  },
}

const boardX = (at: number) => 34 + at * 37

/** A corner of the floor where boards reach out over the frame; from above. */
const overhang: Scene = {
  parts: {
    frame: [box("wood", 16, 40, 250, 14), box("wood", 16, 112, 250, 14), box("wood", 252, 40, 14, 86)],
    boards: repeat(6, (at) => box("board", boardX(at), 12, 33, 134)),
    last: [box("board", boardX(6), 12, 30, 134)],
    hidden: [line("dashed", [16, 126], [266, 126], [266, 12])],
  },
  asks: {
    side: { lit: ["last"], spans: [span(266, 146, 286, 146, 0, 20)] },
    end: { lit: ["boards"], spans: [span(34, 126, 34, 146, -20, 0)] },
  },
}

/** A board on edge along the frame, and its screws. */
const edgeScrews: Scene = {
  parts: {
    board: [box("wood", 16, 56, 288, 60)],
    surface: [line("dashed", [16, 74], [304, 74])],
    screws: dots(...repeat(5, (at) => [[40 + at * 60, 88] as const, [40 + at * 60, 106] as const]).flat()),
  },
  asks: { spacing: { lit: ["screws"], spans: [span(100, 56, 160, 56, 0, -22)] } },
}

export const SURFACE = { sheets, sheetScrews, tiles, boards, rows, overhang, edgeScrews }
