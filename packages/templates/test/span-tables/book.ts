import { type Book, type Definition, openBook } from "@pegbook/engine"
import { expect } from "vitest"

const METRES_PER_INCH = 0.0254

/** A small template's workbook, changed cell by cell: opening one for each cell would take minutes. */
export interface Asked {
  readonly book: Book
  set(typed: Readonly<Record<string, string>>): void
  number(name: string): number
  inches(name: string): number
  column(name: string): readonly number[]
}

export function asked(definition: Definition, typed: Readonly<Record<string, string>> = {}): Asked {
  const { book, problems } = openBook(definition)
  expect(problems).toEqual([])
  const set: Asked["set"] = (more) => expect(book.editAll(more).problems).toEqual([])
  const number: Asked["number"] = (name) => {
    const value = book.entry(name).reading?.value
    if (typeof value !== "number")
      throw new Error(`${name} has no number: ${JSON.stringify(book.problems())}`)
    return value
  }
  set(typed)
  return {
    book,
    set,
    number,
    inches: (name) => number(name) / METRES_PER_INCH,
    column: (name) =>
      (book.entry(name).readings ?? []).map((reading) =>
        typeof reading?.value === "number" ? reading.value : Number.NaN,
      ),
  }
}

export interface Cell {
  readonly says: string
  readonly published: number
  readonly worked: number
}

/** A cell that is known not to come out, and why. */
export type Explained = Readonly<Record<string, string>>

const NEAR = 1 + 1e-9
const UNSAFE = 2

/**
 * Holds a table against the calculation and prints how many cells came out. At least 95 % must be within one step of
 * the table, none longer by more than two, and each cell that differs by more than one step must be explained by name.
 */
export function holdTable(
  table: string,
  assumes: string,
  cells: readonly Cell[],
  explained: Explained = {},
): void {
  const off = cells.filter(({ published, worked }) => Math.abs(worked - published) > NEAR)
  const equal = cells.filter(({ published, worked }) => Math.abs(worked - published) < 1e-6).length
  const within = cells.length - off.length
  console.info(
    `${table}: ${cells.length} cells tried, ${equal} equal, ${within - equal} more within one step, ${off.length} off. ${assumes}`,
  )
  const words = off.map(
    ({ says, published, worked }) => `${says}: printed ${published}, worked out ${worked}`,
  )
  for (const word of words) console.info(`  ${word}`)
  expect(within / cells.length, words.join("\n")).toBeGreaterThanOrEqual(0.95)
  expect(off.map(({ says }) => says).filter((says) => explained[says] === undefined)).toEqual([])
  expect(Object.keys(explained).filter((says) => !off.some((cell) => cell.says === says))).toEqual([])
  expect(cells.filter(({ published, worked }) => worked - published > UNSAFE * NEAR)).toEqual([])
}
