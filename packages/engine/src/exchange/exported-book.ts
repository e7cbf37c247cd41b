import type { EntryView, TableView } from "../book/views.ts"
import type { Definition } from "../definition/definition.ts"
import type { Source } from "../definition/source.ts"
import { languageInForce } from "../language/in-force.ts"

/** As much of an open workbook as is needed to write it out. A `Book` is one; a screen's mirror of a book can be. */
export interface ExportedBook {
  readonly definition: Definition
  entry(name: string): EntryView
  table(name: string): TableView
}

/** The views of all entries, tables included, in the order of the work. */
export function entriesOf(book: ExportedBook): readonly EntryView[] {
  return book.definition.sections.flatMap(({ entries }) => entries.map(({ name }) => book.entry(name)))
}

/** Every source of an entry in one line of text. */
export function sourcesInOneLine(sources: readonly Source[]): string {
  return sources.map(sourceInOneLine).join("; ")
}

/** A source in one line: title, edition, place, and what kind of authority it is, unless its title begins with that. */
export function sourceInOneLine({ kind, title, edition, place, origin }: Source): string {
  const says = [title, edition, place].filter((part) => part !== undefined && part !== "").join(", ")
  const { sourceKinds } = languageInForce().entries
  const kindOf = title.toLowerCase().startsWith(sourceKinds[kind]) ? [] : [sourceKinds[kind]]
  const memory = origin === "memory" && kind !== "memory" ? [sourceKinds.memory] : []
  const authority = [...kindOf, ...memory]
  return authority.length === 0 ? says : `${says} (${authority.join(", ")})`
}

/** A column's name without its table's. */
export function columnName(fullName: string): string {
  return fullName.slice(fullName.indexOf(".") + 1)
}
