import { type Book, openBook } from "@pegbook/engine"
import { groundLevelDeck } from "../../src/ground-level-deck/template.ts"

type Row = Readonly<Record<string, string>>

export interface DeckTables {
  readonly prices?: readonly Row[]
  readonly masses?: readonly Row[]
}

/** The deck with other values typed in; throws when one is not accepted. */
export function deck(typed: Readonly<Record<string, string>> = {}, tables: DeckTables = {}): Book {
  const { book, problems } = openBook(groundLevelDeck)
  accept(problems)
  accept(book.editAll(typed).problems)
  for (const [name, rows] of Object.entries(tables)) accept(book.editTable(name, rows).problems)
  return book
}

export function accept(problems: readonly unknown[]): void {
  if (problems.length > 0) throw new Error(`not accepted: ${JSON.stringify(problems)}`)
}

export function number(book: Book, name: string): number {
  const value = book.entry(name).reading?.value
  if (typeof value !== "number") throw new Error(`${name} has no number`)
  return value
}

export function column(book: Book, name: string): readonly unknown[] {
  return (book.entry(name).readings ?? []).map((reading) => reading?.value)
}

export const INCH = 0.0254
export const FOOT = 0.3048
export const POUND = 0.45359237
export const CUBIC_FOOT = FOOT ** 3

export const inches = (book: Book, name: string): number => number(book, name) / INCH

/** Rows of `stock_to_buy` as texts: "13 at 12 ft of 2x6". */
export function bought(book: Book): readonly string[] {
  const [sizes, lengths, counts] = ["size", "length", "count"].map((name) =>
    column(book, `stock_to_buy.${name}`),
  )
  return (sizes ?? []).map((size, at) => `${counts?.[at]} at ${Number(lengths?.[at]) / FOOT} ft of ${size}`)
}
