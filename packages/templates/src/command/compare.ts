import { type Book, type Difference, languageInForce, type ScenarioView } from "@pegbook/engine"
import { BadInput, quoted } from "./bad-input.ts"
import { aligned } from "./layout.ts"
import { phrases } from "./phrases.ts"

/** Two scenarios of a workbook side by side: the first two, or the two named by title or id. */
export function compare(book: Book, names: readonly string[]): string[] {
  const all = book.scenarios()
  const [left, right] = names.length === 0 ? all : names.map((name) => scenario(all, name))
  if (left === undefined || right === undefined) {
    throw new BadInput(
      `compare needs two scenarios, and this workbook's are: ${titles(all)}. Save a copy in the browser first, or name two.`,
    )
  }
  const { inputs, results, checks, tables, same } = book.compare(left.id, right.id)
  const { compared } = phrases()
  const { verdicts } = languageInForce().entries
  const lines = [`${left.title}  ↔  ${right.title}`]
  const part = (title: string, rows: string[][]) => {
    if (rows.length > 0) lines.push("", title, ...aligned(rows))
  }
  part(
    compared.entered,
    inputs.map((difference) => line(book, difference)),
  )
  part(
    compared.follows,
    results.map((difference) => line(book, difference)),
  )
  part(
    compared.checks,
    checks.map((check) => [
      book.entry(check.name).label,
      check.name,
      verdicts[check.left.verdict],
      "→",
      verdicts[check.right.verdict],
    ]),
  )
  part(
    compared.rows,
    tables.map((table) => [
      book.entry(table.name).label,
      table.name,
      String(table.left),
      "→",
      String(table.right),
    ]),
  )
  return [...lines, "", compared.same(same)]
}

function scenario(all: readonly ScenarioView[], name: string): ScenarioView {
  const found = all.find(({ id }) => id === name) ?? all.find(({ title }) => title === name)
  if (found !== undefined) return found
  throw new BadInput(`${quoted(name)} is no scenario of this workbook. Its scenarios are: ${titles(all)}.`)
}

function titles(all: readonly ScenarioView[]): string {
  return all.map(({ title }) => quoted(title)).join(", ")
}

function line(book: Book, { name, left, right, by }: Difference): string[] {
  return [
    book.entry(name).label,
    name,
    left?.text ?? "—",
    "→",
    right?.text ?? "—",
    by === undefined ? "" : `(${by})`,
  ]
}
