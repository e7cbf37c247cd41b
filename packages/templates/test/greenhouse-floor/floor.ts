import { type Book, openBook } from "@pegbook/engine"
import { greenhouseFloor } from "../../src/greenhouse-floor/template.ts"

/** The greenhouse's floor with some inputs changed, read in SI units. */
export interface Floor {
  readonly book: Book
  number(name: string): number
  millimetres(name: string): number
  column(name: string): readonly number[]
  columnMillimetres(name: string): readonly number[]
  texts(name: string): readonly string[]
  verdict(name: string): string | undefined
}

/** The sizes that the hand counts are of. */
const EUROPEAN = { skid_size: "100x100", joist_size: "47x150", rim_size: "47x150" }

/** In European sizes unless others are given. Throws when an input is not accepted: a test that sets what cannot be set is wrong. */
export function floor(typed: Readonly<Record<string, string>> = {}): Floor {
  const { book } = openBook(greenhouseFloor)
  const { accepted, problems } = book.editAll({ ...EUROPEAN, ...typed })
  if (!accepted) throw new Error(JSON.stringify(problems))
  const number = (name: string): number => {
    const value = book.entry(name).reading?.value
    if (typeof value !== "number") throw new Error(`${name} has no number`)
    return value
  }
  const column = (name: string): readonly number[] =>
    (book.entry(name).readings ?? []).map((reading) => Number(reading?.value))
  const rounded = (metres: number): number => Math.round(metres * 1e9) / 1e6
  return {
    book,
    number,
    millimetres: (name) => rounded(number(name)),
    column,
    columnMillimetres: (name) => column(name).map(rounded),
    texts: (name) => (book.entry(name).readings ?? []).map((reading) => String(reading?.value)),
    verdict: (name) => book.entry(name).check?.verdict,
  }
}
