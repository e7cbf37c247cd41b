import { type Book, type EntryView, languageInForce, nearNames } from "@pegbook/engine"
import { BadInput, quoted } from "./bad-input.ts"
import { tableLines } from "./calc-text.ts"
import { phrases } from "./phrases.ts"
import { sourceInWords, valueInWords } from "./words.ts"

/** Why an entry has its value: its reason and sources, its working, and the tree of what it leans on. */
export function why(book: Book, name: string): string[] {
  if (!book.has(name)) throw new BadInput(unknownName(book, name))
  const view = book.entry(name)
  const says = phrases()
  const line = (head: string, text: string): string => `  ${head}${says.colon}${text}`
  return [
    `${view.label}${says.colon}${summary(book, view)}`,
    line(says.why, view.why),
    ...view.sources.map((source) => line(says.from, sourceInWords(source))),
    ...view.cautions.map((caution) => line(says.caution, caution)),
    ...working(book, view),
    ...(view.check?.advice ?? []).map((advice) => `  ${advice}`),
    "",
    ...tree(book, name),
    ...rows(book, view),
  ]
}

function unknownName(book: Book, name: string): string {
  const meant = [...new Set([...nearNames(name, book.names()), ...book.search(name)])].slice(0, 5)
  const next =
    meant.length > 0
      ? `Did you mean ${meant.join(" or ")}?`
      : "Names are in the middle of each line of: pegbook calc."
  return `${quoted(name)} is no entry of ${book.definition.id}. ${next}`
}

function summary(book: Book, view: EntryView): string {
  return view.shape === "table"
    ? languageInForce().phrases.rows(book.table(view.name).rowCount)
    : valueInWords(view, book.unitSystem)
}

function working(book: Book, view: EntryView): string[] {
  if (view.shape === "table") {
    return book.table(view.name).columns.flatMap((column) => {
      const of = book.working(column.name)
      return of === undefined ? [] : [`  ${column.name} = ${of.formula}`]
    })
  }
  const of = book.working(view.name)
  if (of === undefined) return []
  const { workedOut, withValues, withValuesInRow, colon } = phrases()
  const values = view.shape === "column" ? withValuesInRow : withValues
  return [`  ${workedOut}${colon}${of.formula}`, `  ${values}${colon}${of.withValues}`]
}

function rows(book: Book, view: EntryView): string[] {
  const table = view.shape === "table" ? view.name : view.table
  if (table === undefined) return []
  const lines = tableLines(book.table(table), Number.POSITIVE_INFINITY)
  return lines.length === 0
    ? []
    : [
        "",
        `${table}${phrases().colon}${languageInForce().phrases.rows(book.table(table).rowCount)}`,
        ...lines,
      ]
}

/**
 * One line an entry, what it leans on indented under it, down to inputs and figures. A branch is written once;
 * where it comes again, the line says so.
 */
function tree(book: Book, root: string): string[] {
  const lines: string[] = []
  const written = new Set<string>()
  const walk = (name: string, depth: number): void => {
    const view = book.entry(name)
    const given = view.kind === "input" || view.kind === "figure"
    const under = given ? [] : book.leansOn(name)
    const again = written.has(name) && under.length > 0
    written.add(name)
    const from = again ? phrases().asAbove : (origin(book, view) ?? "")
    lines.push(`${"  ".repeat(depth)}${name} = ${summary(book, view)}${from === "" ? "" : `   ${from}`}`)
    if (again) return
    for (const other of under) walk(other, depth + 1)
  }
  walk(root, 0)
  return lines
}

function origin(book: Book, view: EntryView): string | undefined {
  const of = book.working(view.name)
  if (of !== undefined) return `= ${of.formula}`
  const says = phrases()
  const kind = languageInForce().entries.kinds[view.kind]
  const changed = view.changed ? `, ${says.changed}` : ""
  if (view.kind === "solved")
    return view.report === undefined ? kind : `${kind}${says.colon}${view.report.method}`
  return `${kind}${changed}`
}
