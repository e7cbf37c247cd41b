/**
 * The formula of a column whose rows are different things: the first formula in row 1, the second in row 2, and so on.
 * Throws when there is none.
 */
export function ofEach(formulas: readonly string[]): string {
  const [first, ...rest] = formulas
  if (first === undefined) throw new RangeError("A column of different things needs one formula or more")
  if (new Set(formulas).size === 1) return first
  return rest.length === 0 ? first : nested(formulas, 1)
}

function nested([first = "", ...rest]: readonly string[], row: number): string {
  return rest.length === 0 ? first : `IF(ROW() = ${row}; ${first}; ${nested(rest, row + 1)})`
}
