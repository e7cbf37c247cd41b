import { type Book, openBook } from "@pegbook/engine"
import { describe, expect, test } from "vitest"
import { TEMPLATES } from "../../src/index.ts"
import { leastCost } from "./every-layout.ts"

/** Each length sold of 8, 10, 12 and 16 ft, in hundredths: the shorter are dear, so the shortest fit is not the cheapest. */
const CENTS = { 8: 3010, 10: 1520, 12: 1490, 16: 2230 } as const

const numbers = (book: Book, name: string): readonly number[] =>
  (book.entry(name).readings ?? []).map((reading) => Number(reading?.value))
const number = (book: Book, name: string): number => Number(book.entry(name).reading?.value)
const whole = (metres: number): number => Math.round(metres * 1e9)

interface Spliced {
  readonly template: string
  readonly noun: string
  readonly supports: string
  readonly bearings: string
  readonly length: string
  readonly lines: string
}

const SPLICED: readonly Spliced[] = [
  {
    template: "game-table-platform",
    noun: "skid",
    supports: "support_stations.x",
    bearings: "support_stations.bearing",
    length: "skid_length",
    lines: "skid_count",
  },
  {
    template: "boardwalk",
    noun: "stringer",
    supports: "sleepers.x",
    bearings: "sleepers.bearing",
    length: "stringer_length",
    lines: "stringer_count",
  },
  {
    template: "ground-level-deck",
    noun: "beam",
    supports: "support_stations.x",
    bearings: "support_stations.bearing",
    length: "beam_length",
    lines: "beam_ply_count",
  },
]

function opened(id: string): Book {
  const template = TEMPLATES.find((one) => one.id === id)
  if (template === undefined) throw new Error(`no template ${id}`)
  return openBook(template).book
}

describe("members of several pieces follow the user's prices", () => {
  test.each(SPLICED)("$noun of $template", ({ template, noun, supports, bearings, length, lines }) => {
    const book = opened(template)
    // Long enough that no line is one board.
    expect(book.edit("platform_length", "22 ft").problems).toEqual([])
    const report = () => book.entry(`${noun}_pieces`).report
    expect(report()?.objective?.measure).toBe("length")
    const before = numbers(book, `${noun}_pieces.stock`)

    const item = String(book.entry(`${noun}_size`).reading?.value)
    const rows = Object.entries(CENTS).map(([feet, cents]) => ({
      item,
      length: `${feet} ft`,
      unit: "each",
      price: (cents / 100).toFixed(2),
    }))
    expect(book.editTable("prices", rows).problems).toEqual([])

    const price = new Map(Object.entries(CENTS).map(([feet, cents]) => [whole(Number(feet) * 0.3048), cents]))
    const bought = numbers(book, `${noun}_pieces.stock`).map(whole)
    const paid = bought.reduce((sum, stock) => sum + (price.get(stock) ?? Number.NaN), 0)
    const best = leastCost({
      supports: numbers(book, supports).map(whole),
      bearings: numbers(book, bearings).map(whole),
      start: 0,
      end: whole(number(book, length)),
      stocks: [...price].map(([stock, cost]) => ({ length: stock, cost })),
      bearingMin: whole(number(book, "joint_bearing_min")),
      lines: number(book, lines),
      stagger: whole(number(book, "joint_stagger_min")),
      pieceMin: whole(number(book, "piece_length_min")),
      shortfall: 0,
    })
    expect([paid, bought.length]).toEqual([best?.cost, best?.pieces])
    expect(report()?.objective).toMatchObject({ measure: "money", value: paid })
    expect(report()?.bound).toBe(paid)
    expect(bought).not.toEqual(before.map(whole))
  })
})
