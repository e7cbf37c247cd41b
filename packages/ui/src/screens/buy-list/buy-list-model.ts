import { inLanguage, type StageView } from "@pegbook/engine"
import type { TypedRow } from "../../bridge/sheet.ts"
import type { TableRow } from "../set-out/set-out-model.ts"

/** The ways to put the list in order. */
export const GROUPINGS = ["group", "supplier", "stage"] as const
export type Grouping = (typeof GROUPINGS)[number]

export interface Grouped {
  readonly title: string
  readonly rows: readonly TableRow[]
}

/** The rows under the texts of one column, in this order; what is not in it comes behind, as it first comes. */
export function groupedBy(
  rows: readonly TableRow[],
  column: Grouping,
  order: readonly string[] = [],
): readonly Grouped[] {
  const groups = new Map<string, TableRow[]>()
  for (const row of rows) {
    const title = row[column] ?? ""
    const group = groups.get(title)
    if (group === undefined) groups.set(title, [row])
    else group.push(row)
  }
  const titles = [...groups.keys()]
  const sorted = [
    ...order.filter((title) => groups.has(title)),
    ...titles.filter((title) => !order.includes(title)),
  ]
  return sorted.map((title) => ({ title, rows: groups.get(title) ?? [] }))
}

/** What a line of the list and a line of the notes have in common, however thousands are marked. A thing of no length is listed with a length of nothing. */
export function lineKey(item: string, length: string): string {
  return `${item.toLowerCase()}\n${lengthTyped(length).replace(/[\s,]/g, "")}`
}

/** A length as it is typed into the notes: nothing for what has none. */
export function lengthTyped(length: string | undefined): string {
  return length === undefined || /^0( ?(in|mm|m|ft)|["'])?$/.test(length.trim()) ? "" : length
}

/** The notes with a line ticked as bought, in the amount that the list has, or with its lines taken out. */
export function withBought(notes: readonly TypedRow[], line: TableRow, bought: boolean): readonly TypedRow[] {
  const key = lineKey(line.item ?? "", line.length ?? "")
  const others = notes.filter((note) => lineKey(note.item ?? "", note.length ?? "") !== key)
  if (!bought) return others
  const before = notes.find((note) => lineKey(note.item ?? "", note.length ?? "") === key)
  return [...others, { ...boughtNote(line), paid: before?.paid ?? "", used: before?.used ?? "" }]
}

/** The note that a line of the list was bought, in the amount that the list has. */
export function boughtNote(line: TableRow): TypedRow {
  return {
    item: line.item ?? "",
    length: lengthTyped(line.length),
    unit: line.unit ?? "",
    bought: (line.gets ?? "").replaceAll(",", ""),
    paid: "",
    used: "",
  }
}

/** The notes with one text of a line's changed; the first of that line where there are several. */
export function withNote(
  notes: readonly TypedRow[],
  line: TableRow,
  column: "bought" | "paid" | "used",
  text: string,
): readonly TypedRow[] {
  const key = lineKey(line.item ?? "", line.length ?? "")
  const place = notes.findIndex((note) => lineKey(note.item ?? "", note.length ?? "") === key)
  return notes.map((note, at) => (at === place ? { ...note, [column]: text } : note))
}

/** What the next step uses that is neither bought nor enough. */
export function shortFor(rows: readonly TableRow[], stage: StageView): readonly TableRow[] {
  return rows.filter(
    (row) =>
      (row.stages ?? "").split("; ").map(inLanguage).includes(stage.title) &&
      (row.finding === "to buy" || row.finding === "not enough"),
  )
}
