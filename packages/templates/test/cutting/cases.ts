import type { Case } from "../../src/cutting/index.ts"
import { readCase } from "../../src/cutting/index.ts"

/** A case read as the command reads it; throws where it is refused. */
export function caseOf(given: unknown): Case {
  const read = readCase(given, "given")
  if ("problem" in read) throw new Error(read.problem.says)
  return read.case
}

/** A board list from boards at one price and pieces by length. */
export function boardList(
  boards: readonly (readonly [length: number, price: number, available?: number])[],
  pieces: readonly (readonly [length: number, quantity: number])[],
  more: object = {},
): Case {
  return caseOf({
    id: "boards",
    kind: "cut",
    kerf: 0,
    endTrim: 0,
    stocks: boards.map(([length, price, available = null], index) => ({
      id: `s${index}`,
      length,
      price,
      available,
    })),
    pieces: pieces.map(([length, quantity]) => ({ length, quantity })),
    ...more,
  })
}

/** Sheets of 8 ft by 4 ft in sixteenths of an inch, on joists at 16 in. */
export function sheets(more: object = {}): Case {
  return caseOf({
    id: "sheets",
    kind: "sheet",
    unit: "1/16 in",
    platform: { acrossJoists: 3072, alongJoists: 1538 },
    joistSpacing: 256,
    sheet: { length: 1536, width: 768 },
    gap: 2,
    kerf: 2,
    minBaysForPiece: 2,
    stagger: 512,
    courses: [768, 768],
    ...more,
  })
}

export function skids(more: object = {}): Case {
  return caseOf({
    id: "skids",
    kind: "splice",
    kerf: 2,
    endTrim: 0,
    supports: [0, 600, 1200, 1800, 2400],
    bearing: [128, 128, 128, 128, 128],
    minBearing: 48,
    minBaysForPiece: 1,
    minStagger: 600,
    skids: 2,
    stocks: [
      { id: "long", length: 1810, price: 900 },
      { id: "short", length: 1210, price: 500 },
    ],
    ...more,
  })
}

export function order(more: object = {}): Case {
  return caseOf({
    id: "order",
    kind: "buy",
    suppliers: [{ id: "A" }, { id: "B" }],
    lines: [{ id: "screws", need: 100 }],
    offers: [
      { line: "screws", supplier: "A", packSize: 25, breaks: [{ fromPacks: 1, pricePerPack: 300 }] },
      { line: "screws", supplier: "B", packSize: 1, breaks: [{ fromPacks: 1, pricePerPack: 14 }] },
    ],
    ...more,
  })
}
