/** What a cell holds. With a formula, the value is what it came to. */
export interface SheetCell {
  readonly value: number | string | boolean | null
  /** OpenFormula text with its `of:=`. */
  readonly formula?: string
  /** A heading, to be set in bold. */
  readonly strong?: true
}

export type SheetRow = readonly (SheetCell | undefined)[]

export interface SheetOfCells {
  readonly title: string
  /** Widths of the columns in centimetres; what has none is of the usual width. */
  readonly widths: readonly number[]
  readonly rows: readonly SheetRow[]
}

/** The letters of a column, from 0: A, B, … Z, AA. */
export function columnLetters(position: number): string {
  let letters = ""
  for (let rest = position + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters
  }
  return letters
}

/** A sheet's title as a reference writes it. */
export function quotedTitle(title: string): string {
  return `$'${title.replaceAll("'", "''")}'`
}
