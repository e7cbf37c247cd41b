import type { Book } from "@pegbook/engine"
import { expect } from "vitest"

export function texts(book: Book, name: string): readonly string[] {
  return (book.entry(name).readings ?? []).map((reading) => `${reading?.value}`)
}

export function numbers(book: Book, name: string): readonly number[] {
  return (book.entry(name).readings ?? []).map((reading) => Number(reading?.value))
}

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/**
 * Fails with the lines that are not in order. Where stock is shorter than a piece the plan of the timber says so and buys
 * nothing for it; then, and only then, that size may come up short here as well.
 */
export function nothingForgotten(book: Book): void {
  const finding = texts(book, "things_by_stage.finding")
  const stockTooShort = (book.entry("cut_plan").report?.unmet ?? []).length > 0
  const sizes = new Set(texts(book, "timber_pieces.size"))
  const excused = (item: string, at: number): boolean =>
    stockTooShort && sizes.has(item) && finding[at] === "less is bought than is used"
  const items = texts(book, "things_by_stage.item")
  const wrong = items.filter((item, at) => finding[at] !== "in order" && !excused(item, at))
  expect(wrong.map((item) => `${item}: ${finding[items.indexOf(item)]}`)).toEqual([])
  const verdict = finding.every((one) => one === "in order") ? "passes" : "fails"
  expect(book.entry("nothing_forgotten_check").check?.verdict).toBe(verdict)
}

/** What the stages use, against totals that other parts of the workbook add up for themselves. */
export function addsUp(book: Book): void {
  const items = texts(book, "things_by_stage.item")
  const used = numbers(book, "things_by_stage.used")
  const of = (item: string): number => used[items.indexOf(item)] ?? 0
  expect(of("screws"), "screws").toBe(book.entry("screw_count").reading?.value)
  expect(of("frame screws"), "frame screws").toBe(book.entry("frame_screw_count").reading?.value)
  expect(sum(numbers(book, "driving.screws")), "screws driven, step by step").toBe(
    of("screws") + of("frame screws"),
  )
  const units = texts(book, "things_by_stage.unit")
  const sizes = new Set(texts(book, "timber_pieces.size"))
  const metres = (column: string): number =>
    sum(
      numbers(book, `things_by_stage.${column}`).map((value, at) =>
        sizes.has(items[at] ?? "") ? value * (units[at] === "ft" ? 0.3048 : 1) : 0,
      ),
    )
  const counts = numbers(book, "timber_pieces.count")
  const pieces = numbers(book, "timber_pieces.length").map((length, at) => length * (counts[at] ?? 0))
  expect(metres("used"), "timber used").toBeCloseTo(sum(pieces), 6)
  expect(metres("bought"), "timber bought").toBeCloseTo(
    Number(book.entry("timber_length_bought").reading?.value),
    6,
  )
}
