import {
  type Book,
  buildDecimalGraph,
  type GraphBuilder,
  languageInForce,
  openBook,
  type Reading,
} from "@pegbook/engine"
import { buildHyperFormulaGraph } from "@pegbook/engine/hyperformula"
import { aligned } from "./layout.ts"
import type { Opened } from "./open.ts"
import { phrases } from "./phrases.ts"

/** The share of a number by which doubles that were worked out in another order may differ. */
const CLOSE = 1e-9
/** What is nothing but rounding, beside numbers in metres, newtons and dollars. */
const NOTHING = 1e-15
const MOST_SHOWN = 20

interface Difference {
  readonly name: string
  readonly row: number | undefined
  readonly ours: Reading | null
  readonly other: Reading | null
}

/**
 * Works a workbook out again with the two other evaluators, which share only the reader of formulas with ours, and says
 * how many values come out alike and which do not. Solved tables are asked for anew each time, so what a search has
 * proven since is no part of it.
 */
export function audit({ book }: Pick<Opened, "book">, evaluators = others()): string[] {
  const { audited } = phrases()
  const lines: string[] = [audited.heading(book.definition.title)]
  for (const [title, graph] of evaluators) {
    const { alike, differ } = compare(book, again(book, graph))
    lines.push(
      "",
      title,
      `  ${audited.alike(new Intl.NumberFormat(languageInForce().id).format(alike))}`,
      `  ${audited.differ(differ.length)}`,
    )
    const shown = differ
      .slice(0, MOST_SHOWN)
      .map(({ name, row, ours, other }) => [
        row === undefined ? name : `${name}, ${audited.row(row)}`,
        ours?.text ?? "—",
        "≠",
        other?.text ?? "—",
      ])
    lines.push(...aligned(shown))
  }
  return lines
}

type Evaluators = readonly (readonly [title: string, graph: GraphBuilder])[]

const others = (): Evaluators => [
  ["HyperFormula", buildHyperFormulaGraph],
  [phrases().audited.decimals, buildDecimalGraph],
]

function again(book: Book, graph: GraphBuilder): Book {
  return openBook(book.definition, { document: book.document(), unitSystem: book.unitSystem, graph }).book
}

function compare(
  ours: Book,
  others: Book,
): { readonly alike: number; readonly differ: readonly Difference[] } {
  let alike = 0
  const differ: Difference[] = []
  for (const name of ours.names()) {
    const [mine, theirs] = [readingsOf(ours, name), readingsOf(others, name)]
    for (let at = 0; at < Math.max(mine.length, theirs.length); at++) {
      const [one, other] = [mine[at] ?? null, theirs[at] ?? null]
      if (same(one?.value, other?.value)) alike += 1
      else differ.push({ name, row: mine.length === 1 ? undefined : at + 1, ours: one, other })
    }
  }
  return { alike, differ }
}

function readingsOf(book: Book, name: string): readonly (Reading | null)[] {
  const { reading, readings } = book.entry(name)
  return readings ?? [reading ?? null]
}

function same(one: Reading["value"] | undefined, other: Reading["value"] | undefined): boolean {
  if (typeof one !== "number" || typeof other !== "number") return one === other
  return Math.abs(one - other) <= CLOSE * Math.max(Math.abs(one), Math.abs(other)) + NOTHING
}
