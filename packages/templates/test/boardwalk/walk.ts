import { type Book, openBook } from "@pegbook/engine"
import { boardwalk } from "../../src/boardwalk/template.ts"

const INCH = 0.0254
const POUND_FORCE = 4.4482216152605
const PSF = 47.88025898033584
const CUBIC_FOOT = 0.028316846592

/** The boardwalk with some inputs changed, read in inches, pounds and their kin. */
export interface Walk {
  readonly book: Book
  number(name: string): number
  inches(name: string): number
  pounds(name: string): number
  psf(name: string): number
  cubicFeet(name: string): number
  column(name: string): readonly number[]
  columnInches(name: string): readonly number[]
  texts(name: string): readonly string[]
  verdict(name: string): string | undefined
}

/** Throws when an input is not accepted: a test that sets what cannot be set is wrong. */
export function walk(typed: Readonly<Record<string, string>> = {}): Walk {
  const { book } = openBook(boardwalk)
  const { accepted, problems } = book.editAll(typed)
  if (!accepted) throw new Error(JSON.stringify(problems))
  const number = (name: string): number => {
    const value = book.entry(name).reading?.value
    if (typeof value !== "number") throw new Error(`${name} has no number`)
    return value
  }
  const column = (name: string): readonly number[] =>
    (book.entry(name).readings ?? []).map((reading) => Number(reading?.value))
  // To a millionth of an inch: places that were divided are not whole numbers of nanometres.
  const rounded = (value: number): number => Math.round(value * 1e6) / 1e6
  return {
    book,
    number,
    inches: (name) => number(name) / INCH,
    pounds: (name) => number(name) / POUND_FORCE,
    psf: (name) => number(name) / PSF,
    cubicFeet: (name) => number(name) / CUBIC_FOOT,
    column,
    columnInches: (name) => column(name).map((value) => rounded(value / INCH)),
    texts: (name) => (book.entry(name).readings ?? []).map((reading) => String(reading?.value)),
    verdict: (name) => book.entry(name).check?.verdict,
  }
}
