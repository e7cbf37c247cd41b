import { type Book, type EntryView, languageInForce, type TableView, type Verdict } from "@pegbook/engine"
import { aligned } from "./layout.ts"
import { inOneLine, type Opened } from "./open.ts"
import { phrases } from "./phrases.ts"
import { valueInWords } from "./words.ts"

/** More rows than anybody reads in a terminal: `why <table>` shows them all. */
const ROWS_SHOWN = 40

/** Verdicts under which what could be changed is said: the others have no numbers to say it with, or no need. */
const ADVISED: ReadonlySet<Verdict> = new Set(["near", "fails", "outside_table"])

/** A workbook as lines of text: sections in the order of the work, their entries aligned, tables under their names. */
export function calcText({ book, problems, notProven = [] }: Opened): string[] {
  const lines = [`${book.definition.title} (${book.definition.id})`]
  for (const section of book.sections) {
    lines.push("", section.title)
    const rows = section.entries.map(({ name }) => {
      const view = book.entry(name)
      const value =
        view.shape === "table"
          ? languageInForce().phrases.rows(book.table(name).rowCount)
          : valueInWords(view, book.unitSystem)
      return [view.label, name, view.changed ? `${value}  (${phrases().changed})` : value]
    })
    const printed = aligned(rows)
    section.entries.forEach(({ name }, index) => {
      lines.push(printed[index] ?? "")
      const view = book.entry(name)
      lines.push(...howGood(view))
      if (view.shape === "table") lines.push(...tableLines(book.table(name), ROWS_SHOWN))
      if (view.check !== undefined && ADVISED.has(view.check.verdict)) {
        lines.push(...view.check.advice.map((advice) => `      ${advice}`))
      }
    })
  }
  if (notProven.length > 0) lines.push("", phrases().notProven, ...notProven.map((says) => `  ${says}`))
  lines.push(...problemLines(book, problems))
  if (book.definition.cautions.length > 0) {
    lines.push("", phrases().cautions, ...book.definition.cautions.map((caution) => `  ${caution}`))
  }
  return lines
}

/** What a search made least or most, what it came to, and how far from best that may be. */
function howGood({ report, reached }: EntryView): string[] {
  if (report?.objective === undefined || reached === undefined) return []
  const says = phrases()
  const came = `      ${report.objective.says}${says.colon}${reached.objective.text}`
  if (report.bound === report.objective.value) return [`${came}, ${says.provenBest}`]
  if (reached.bound === undefined) return [came]
  const gap = reached.gap === undefined ? "" : ` (${says.gap(reached.gap.text)})`
  return [`${came}; ${says.bestMayBe(reached.bound.text)}${gap}`]
}

/** A table's rows under its column names; what is beyond `most` rows is counted. */
export function tableLines(table: TableView, most: number): string[] {
  if (table.rowCount === 0) return []
  const shown = Math.min(table.rowCount, most)
  const head = table.columns.map(({ name }) => name.slice(table.name.length + 1))
  const rows = Array.from({ length: shown }, (_, row) =>
    table.columns.map(({ readings }) => readings?.[row]?.text ?? "—"),
  )
  const lines = aligned([head, ...rows], "      ")
  return shown < table.rowCount ? [...lines, `      ${phrases().moreRows(table.rowCount - shown)}`] : lines
}

function problemLines(book: Book, ofTheFile: Opened["problems"]): string[] {
  const problems = [...ofTheFile, ...book.problems()]
  if (problems.length === 0) return []
  return ["", phrases().problems, ...problems.map((problem) => `  ${inOneLine(problem, book.unitSystem)}`)]
}
