/** How far a pivot may fall below 1 before the beam counts as free to move. */
const LOOSE = 1e-11

/**
 * Solves symmetric equations for several right sides at once, by Gaussian elimination with the largest pivot.
 * Rows and columns are first scaled to a unit diagonal, so that a short stretch next to a long one costs no
 * digits. Gives one solution a right side; or the number of an unknown that nothing holds.
 */
export function solveEquations(
  matrix: readonly (readonly number[])[],
  rightSides: readonly (readonly number[])[],
): { readonly solutions: readonly (readonly number[])[] } | { readonly loose: number } {
  const size = matrix.length
  const scale = matrix.map((row, index) => 1 / Math.sqrt(row[index] ?? 0))
  const rows = matrix.map((row, index) => [
    ...row.map((value, column) => value * (scale[index] ?? 0) * (scale[column] ?? 0)),
    ...rightSides.map((side) => (side[index] ?? 0) * (scale[index] ?? 0)),
  ])
  for (let column = 0; column < size; column++) {
    let pivot = column
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = row
    }
    const chosen = rows[pivot] ?? []
    // Written so that a value that is not a number counts as loose too.
    if (!(Math.abs(chosen[column] ?? 0) > LOOSE)) return { loose: column }
    rows[pivot] = rows[column] ?? []
    rows[column] = chosen
    for (let row = column + 1; row < size; row++) {
      const below = rows[row] ?? []
      const factor = (below[column] ?? 0) / (chosen[column] ?? 1)
      if (factor === 0) continue
      for (let at = column; at < below.length; at++) below[at] = (below[at] ?? 0) - factor * (chosen[at] ?? 0)
    }
  }
  return {
    solutions: rightSides.map((_, side) => {
      const solution = new Array<number>(size).fill(0)
      for (let row = size - 1; row >= 0; row--) {
        const values = rows[row] ?? []
        let rest = values[size + side] ?? 0
        for (let column = row + 1; column < size; column++)
          rest -= (values[column] ?? 0) * (solution[column] ?? 0)
        solution[row] = rest / (values[row] ?? 1)
      }
      return solution.map((value, index) => value * (scale[index] ?? 0))
    }),
  }
}
