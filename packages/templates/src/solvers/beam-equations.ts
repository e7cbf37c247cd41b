/** How far a pivot may fall below 1 before the beam counts as free to move. */
const LOOSE = 1e-11

/**
 * Solves symmetric equations for several right sides at once, by Gaussian elimination with the largest pivot.
 * Rows and columns are first scaled to a unit diagonal, so that a short stretch next to a long one costs no
 * digits. What lies right of a row's last value is never read: along a beam each unknown meets its neighbours alone.
 * Gives one solution a right side; or the number of an unknown that nothing holds.
 */
export function solveEquations(
  matrix: readonly (readonly number[])[],
  rightSides: readonly (readonly number[])[],
): { readonly solutions: readonly (readonly number[])[] } | { readonly loose: number } {
  const size = matrix.length
  const scale = matrix.map((row, index) => 1 / Math.sqrt(row[index] ?? 0))
  const rows = matrix.map((row, index) => ({
    values: row.map((value, column) => value * (scale[index] ?? 0) * (scale[column] ?? 0)),
    sides: rightSides.map((side) => (side[index] ?? 0) * (scale[index] ?? 0)),
    last: row.findLastIndex((value) => value !== 0),
  }))
  for (let column = 0; column < size; column++) {
    let pivot = column
    const at = (row: number) => Math.abs(rows[row]?.values[column] ?? 0)
    for (let row = column + 1; row < size; row++) if (at(row) > at(pivot)) pivot = row
    const chosen = rows[pivot]
    const moved = rows[column]
    // Written so that a value that is not a number counts as loose too.
    if (chosen === undefined || moved === undefined || !(at(pivot) > LOOSE)) return { loose: column }
    rows[pivot] = moved
    rows[column] = chosen
    for (let row = column + 1; row < size; row++) {
      const below = rows[row]
      const factor = (below?.values[column] ?? 0) / (chosen.values[column] ?? 1)
      if (below === undefined || factor === 0) continue
      subtract(below.values, factor, chosen.values, column, chosen.last)
      subtract(below.sides, factor, chosen.sides, 0, rightSides.length - 1)
      below.last = Math.max(below.last, chosen.last)
    }
  }
  return {
    solutions: rightSides.map((_, side) => {
      const solution = new Array<number>(size).fill(0)
      for (let row = size - 1; row >= 0; row--) {
        const { values, sides, last } = rows[row] ?? { values: [], sides: [], last: -1 }
        let rest = sides[side] ?? 0
        for (let column = row + 1; column <= last; column++)
          rest -= (values[column] ?? 0) * (solution[column] ?? 0)
        solution[row] = rest / (values[row] ?? 1)
      }
      return solution.map((value, index) => value * (scale[index] ?? 0))
    }),
  }
}

/** Takes `factor` times one row from another, over the columns `from` to `to`. */
function subtract(row: number[], factor: number, other: readonly number[], from: number, to: number): void {
  for (let at = from; at <= to; at++) row[at] = (row[at] ?? 0) - factor * (other[at] ?? 0)
}
