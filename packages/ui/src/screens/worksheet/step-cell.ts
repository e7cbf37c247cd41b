/** Columns and rows that each key steps over. */
const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

/**
 * Keys of a grid, as the ARIA Authoring Practices have them: arrows go from cell to cell, Home and End to the ends of
 * the row, with Ctrl to those of the table. Only one cell is a stop of the Tab key, so that a table of two hundred is
 * passed in one press.
 */
export function stepCell(event: KeyboardEvent & { readonly currentTarget: HTMLTableElement }): void {
  const cell = (event.target as HTMLElement).closest<HTMLTableCellElement>("td, th")
  const row = cell?.closest("tr")
  if (cell === null || row === null || row === undefined) return
  const table = event.currentTarget
  const ends = event.ctrlKey ? table : row
  const step = STEPS[event.key]
  const next =
    step !== undefined
      ? table.rows[row.rowIndex + step[1]]?.cells[cell.cellIndex + step[0]]?.querySelector("button")
      : event.key === "Home"
        ? ends.querySelector("button")
        : event.key === "End"
          ? [...ends.querySelectorAll("button")].at(-1)
          : undefined
  if (next === null || next === undefined) return
  event.preventDefault()
  next.focus()
}

/** The cell that has the keyboard, or had it last, is the stop of the Tab key. */
export function stopAtCell(event: FocusEvent & { readonly currentTarget: HTMLTableElement }): void {
  const cell = (event.target as HTMLElement).closest("button")
  if (cell === null) return
  for (const was of event.currentTarget.querySelectorAll<HTMLElement>('button[tabindex="0"]'))
    was.tabIndex = -1
  cell.tabIndex = 0
}
