import type { Reading } from "@pegbook/engine"

/** The columns of the cutting plan, as they are read. */
export interface CutColumns {
  readonly board: readonly (Reading | null)[]
  readonly size: readonly (Reading | null)[]
  readonly stock: readonly (Reading | null)[]
  readonly own: readonly (Reading | null)[]
  readonly part: readonly (Reading | null)[]
  readonly mark: readonly (Reading | null)[]
  readonly length: readonly (Reading | null)[]
  readonly left: readonly (Reading | null)[]
}

export interface DrawnPiece {
  readonly part: string
  readonly mark: string
  readonly length: string
  /** Of the drawing's width, as is `width`: from 0 to 1. */
  readonly from: number
  readonly width: number
}

export interface DrawnBoard {
  readonly number: string
  readonly length: string
  readonly own: boolean
  readonly pieces: readonly DrawnPiece[]
  /** Nothing where nothing is left. */
  readonly left?: string
  /** How long it is beside the longest board of all, from 0 to 1. */
  readonly share: number
}

export interface BoardGroup {
  readonly size: string
  /** Boards of one length, longest first; your own last. */
  readonly lengths: readonly {
    readonly length: string
    readonly own: boolean
    readonly boards: readonly DrawnBoard[]
  }[]
}

/** Boards of the plan as they are drawn: by size, in the order of the plan, and by length. */
export function boardGroups(columns: CutColumns, kerf: number): readonly BoardGroup[] {
  const rows = columns.board.map((board, row) => ({
    board: board?.text ?? "",
    size: text(columns.size[row]),
    stock: columns.stock[row],
    own: metres(columns.own[row]) > 0,
    part: text(columns.part[row]),
    mark: text(columns.mark[row]),
    length: columns.length[row],
    left: columns.left[row],
  }))
  const longest = Math.max(0, ...rows.map(({ stock }) => metres(stock)))
  const groups = new Map<
    string,
    Map<string, { stock: number; length: string; own: boolean; boards: DrawnBoard[] }>
  >()
  for (const cut of grouped(rows)) {
    const [first] = cut
    const last = cut.at(-1)
    if (first === undefined) continue
    const stock = metres(first.stock)
    let at = 0
    const pieces = cut.map(({ part, mark, length }) => {
      const from = at
      at += metres(length) + kerf
      return { part, mark, length: text(length), from: from / stock, width: metres(length) / stock }
    })
    const board: DrawnBoard = {
      number: first.board,
      length: text(first.stock),
      own: first.own,
      pieces,
      share: longest === 0 ? 1 : stock / longest,
      ...(metres(last?.left) > 0 ? { left: text(last?.left) } : {}),
    }
    const lengths = groups.get(first.size) ?? new Map()
    groups.set(first.size, lengths)
    const key = `${board.length} ${board.own}`
    const alike = lengths.get(key) ?? { stock, length: board.length, own: board.own, boards: [] }
    lengths.set(key, alike)
    alike.boards.push(board)
  }
  return [...groups].map(([size, lengths]) => ({
    size,
    lengths: [...lengths.values()].sort((a, b) => Number(a.own) - Number(b.own) || b.stock - a.stock),
  }))
}

/** What is left over of a size, longest first, those alike together. */
export function offcutsOf(
  columns: Pick<CutColumns, "size" | "left">,
): readonly { readonly size: string; readonly length: string; readonly count: number }[] {
  const found = new Map<string, { size: string; length: string; metres: number; count: number }>()
  columns.left.forEach((left, row) => {
    if (metres(left) <= 0) return
    const size = text(columns.size[row])
    const length = text(left)
    const key = `${size} ${length}`
    const alike = found.get(key) ?? { size, length, metres: metres(left), count: 0 }
    alike.count += 1
    found.set(key, alike)
  })
  return [...found.values()].sort((a, b) => b.metres - a.metres)
}

function grouped<Row extends { readonly board: string }>(rows: readonly Row[]): readonly (readonly Row[])[] {
  const boards = new Map<string, Row[]>()
  for (const row of rows) {
    const board = boards.get(row.board)
    if (board === undefined) boards.set(row.board, [row])
    else board.push(row)
  }
  return [...boards.values()]
}

function text(reading: Reading | null | undefined): string {
  return reading?.text ?? ""
}

/** For the drawing only. */
function metres(reading: Reading | null | undefined): number {
  return typeof reading?.value === "number" ? reading.value : 0
}
