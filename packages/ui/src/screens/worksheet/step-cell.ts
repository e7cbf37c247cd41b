/** Columns and rows that each key steps over. */
const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

/**
 * Arrows go from value to value of a table. Only one value is a stop of the Tab key, so that a table of two hundred
 * is passed in one press.
 */
export function stepCell(event: KeyboardEvent): void {
  const step = STEPS[event.key]
  const cell = (event.target as HTMLElement).closest("td")
  const row = cell?.closest("tr")
  if (step === undefined || cell === null || row === null || row === undefined) return
  const [across, down] = step
  const rows = row.parentElement?.children ?? []
  const next = rows[[...rows].indexOf(row) + down]?.children[cell.cellIndex + across]
  const button = next?.querySelector<HTMLElement>("button.cell")
  if (button === null || button === undefined) return
  event.preventDefault()
  const was = cell.querySelector<HTMLElement>("button.cell")
  if (was !== null) was.tabIndex = -1
  button.tabIndex = 0
  button.focus()
}
