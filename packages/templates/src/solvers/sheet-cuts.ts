import { planBoards } from "./boards.ts"

/** A piece of sheet: `length` along the sheet's long side, `width` across it. It may not be turned. */
export interface SheetPiece {
  readonly length: number
  readonly width: number
}

export interface Sheet {
  readonly length: number
  readonly width: number
}

export interface SheetCutsPlan {
  /** Per sheet, the pieces cut from it, as their indices in what was asked. */
  readonly sheets: readonly (readonly number[])[]
  /** No plan uses fewer sheets. */
  readonly bound: number
  /** Indices of pieces larger than a sheet. */
  readonly misfits: readonly number[]
}

/** A crosscut off a sheet: one piece, or several of one width that are ripped apart, side by side. */
interface Crosscut {
  readonly length: number
  readonly pieces: readonly number[]
}

/**
 * Cuts rectangles out of sheets, using few sheets: narrow pieces of like width are put side by side into one crosscut,
 * and crosscuts are packed along the sheets by best-fit decreasing. The off-cut of one row serves another.
 *
 * The bound is the larger of two: area for area, and the pieces too wide to lie side by side, laid end to end.
 * Any one unit of length, `kerf` the width of a saw cut. Never throws; pieces larger than a sheet are `misfits`.
 */
export function planSheetCuts(pieces: readonly SheetPiece[], sheet: Sheet, kerf: number): SheetCutsPlan {
  const fits = ({ length, width }: SheetPiece): boolean => length <= sheet.length && width <= sheet.width
  const misfits = pieces.flatMap((piece, index) => (fits(piece) ? [] : [index]))
  const fitting = pieces.map((piece, index) => ({ ...piece, index })).filter(fits)

  const crosscuts = fitting.length === 0 ? [] : crosscutsOf(fitting, sheet, kerf)
  const waiting = new Map<number, Crosscut[]>()
  for (const crosscut of crosscuts) {
    const alike = waiting.get(crosscut.length)
    if (alike === undefined) waiting.set(crosscut.length, [crosscut])
    else alike.push(crosscut)
  }
  const rule = { kerf, endTrim: 0 }
  const alongSheets = (lengths: readonly number[]) =>
    planBoards(
      lengths.map((length) => ({ part: "sheet", size: "sheet", length, count: 1, stock: [sheet.length] })),
      rule,
    )
  const plan = alongSheets(crosscuts.map(({ length }) => length))
  const sheets = plan.boards.map((board) =>
    board.pieces.flatMap(({ length }) => waiting.get(length)?.shift()?.pieces ?? []),
  )

  const area = fitting.reduce(
    (sum, { length, width }) => sum + (length / sheet.length) * (width / sheet.width),
    0,
  )
  const wide = fitting.filter(({ width }) => 2 * width + kerf > sheet.width)
  const endToEnd = alongSheets(wide.map(({ length }) => length)).bound / sheet.length
  // A hair off, so that an area that fills its sheets exactly is not lifted by a whole sheet.
  const bound = Math.max(Math.ceil(area * (1 - 1e-9)), Math.round(endToEnd))
  return { sheets, bound: Math.min(bound, sheets.length), misfits }
}

function crosscutsOf(
  pieces: readonly (SheetPiece & { readonly index: number })[],
  sheet: Sheet,
  kerf: number,
): readonly Crosscut[] {
  return [...new Set(pieces.map(({ width }) => width))].flatMap((width) => {
    const sideBySide = Math.floor((sheet.width + kerf) / (width + kerf))
    const longestFirst = pieces.filter((piece) => piece.width === width).sort((a, b) => b.length - a.length)
    const groups = Array.from({ length: Math.ceil(longestFirst.length / sideBySide) }, (_, group) =>
      longestFirst.slice(group * sideBySide, (group + 1) * sideBySide),
    )
    return groups.map((group) => ({
      length: group[0]?.length ?? 0,
      pieces: group.map(({ index }) => index),
    }))
  })
}
