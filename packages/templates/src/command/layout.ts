/** Characters a text takes on a terminal. The marks that Pegbook prints are one cell wide each. */
function width(text: string): number {
  return [...text].length
}

/** Rows as lines with the columns aligned, each line after the same indent, and no spaces at line ends. */
export function aligned(rows: readonly (readonly string[])[], indent = "  "): string[] {
  const widths: number[] = []
  for (const row of rows) {
    row.forEach((cell, index) => {
      widths[index] = Math.max(widths[index] ?? 0, width(cell))
    })
  }
  return rows.map((row) =>
    `${indent}${row.map((cell, index) => cell + " ".repeat((widths[index] ?? 0) - width(cell))).join("  ")}`.trimEnd(),
  )
}
