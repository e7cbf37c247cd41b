/** One row of a table of figures, by its name, and the formula that holds in it. */
export interface RowFormula {
  readonly row: string
  readonly formula: string
}

/**
 * A column's formula where every row has its own: IF(name = "first"; …; IF(name = "second"; …; …)), with `name` the
 * column that names the rows. The last row needs no test.
 * Throws on no rows and on a name used twice: a row that could never be reached is a slip in a template.
 */
export function rowChoice(column: string, rows: readonly RowFormula[]): string {
  const names = rows.map(({ row }) => row)
  if (names.length === 0 || new Set(names).size < names.length) {
    throw new RangeError(`Rows of a table need one name each, at least one row; given: ${names.join(", ")}`)
  }
  return rows
    .slice(0, -1)
    .reduceRight(
      (rest, { row, formula }) => `IF(${column} = "${row}"; ${formula}; ${rest})`,
      rows.at(-1)?.formula ?? "",
    )
}
