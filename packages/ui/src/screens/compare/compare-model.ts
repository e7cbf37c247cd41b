import type { CheckView, ScenarioView } from "@pegbook/engine"
import type { Stand } from "../../explore/asked.ts"
import { spoken } from "../../text/spoken.ts"

/** Two different scenarios to put side by side: the one open, and the one saved next to it; in the order they were made. */
export function firstPair(scenarios: readonly ScenarioView[], current: string): readonly string[] {
  const other = scenarios.find((one) => one.id !== current)?.id ?? current
  const pair = new Set([other, current])
  return scenarios.map((one) => one.id).filter((id) => pair.has(id))
}

/** What differs at one name: a cell for each scenario, in their order. */
export interface Line {
  readonly name: string
  readonly cells: readonly { readonly text: string; readonly by?: string | undefined }[]
}

/** What one name is in every scenario, wherever it differs from the first; in the order of the names given. */
export function linesOf(
  part: "inputs" | "results",
  stands: readonly Stand[],
  names: readonly string[],
): readonly Line[] {
  const found = stands.map(({ against }) => new Map((against?.[part] ?? []).map((one) => [one.name, one])))
  return names
    .filter((name) => found.some((side) => side.has(name)))
    .map((name) => {
      const first = found.find((side) => side.has(name))?.get(name)?.left ?? null
      return {
        name,
        cells: found.map((side) => {
          const one = side.get(name)
          return { text: (one === undefined ? first : one.right)?.text ?? spoken.row.blank, by: one?.by }
        }),
      }
    })
}

/** The checks that do not stand in every scenario as they do in the first. */
export function checkLines(
  stands: readonly Stand[],
  names: readonly string[],
): readonly { readonly name: string; readonly checks: readonly (CheckView | undefined)[] }[] {
  const differing = new Set(stands.flatMap(({ against }) => (against?.checks ?? []).map((one) => one.name)))
  return names
    .filter((name) => differing.has(name))
    .map((name) => ({ name, checks: stands.map((stand) => stand.checks[name]) }))
}

/** How a table's columns are called, and which of them say what a row is rather than how much of it. */
export interface TableColumns {
  readonly labels: readonly string[]
  readonly texts: readonly boolean[]
}

/** A row of a table that is not the same in all scenarios: for each, what differs; empty where it has no such row. */
export interface RowLine {
  readonly what: string
  readonly cells: readonly string[]
}

/**
 * The rows of one table that differ. Rows are the same row where their texts are the same (an item on a list), and where
 * a table has no texts, where they have the same number.
 */
export function rowLines(
  tables: readonly (readonly (readonly string[])[])[],
  { labels, texts }: TableColumns,
): readonly RowLine[] {
  const sides = tables.map((rows) => byKey(rows, texts))
  const keys = [...new Set(sides.flatMap((side) => [...side.keys()]))]
  return keys.flatMap((key) => {
    const rows = sides.map((side) => side.get(key))
    const columns = labels
      .map((_, column) => column)
      .filter((column) => new Set(rows.map((row) => row?.[column])).size > 1)
    if (columns.length === 0) return []
    const says = (row: readonly string[] | undefined): string => {
      if (row === undefined) return ""
      const said = columns.filter((column) => !texts[column] && row[column] !== "")
      return said.map((column) => `${labels[column]} ${row[column]}`).join(", ") || spoken.compare.there
    }
    return [{ what: key, cells: rows.map(says) }]
  })
}

function byKey(
  rows: readonly (readonly string[])[],
  texts: readonly boolean[],
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>()
  for (const [index, row] of rows.entries()) {
    const said = row.filter((text, column) => texts[column] && text !== "").join(", ")
    let key = said === "" ? spoken.compare.row(index + 1) : said
    for (let again = 2; found.has(key); again++) key = `${said} (${again})`
    found.set(key, row)
  }
  return found
}

/** "4' 2", at most 5' 0"": what a check's verdict rests on. */
export function checkWords(check: CheckView): string {
  const { demand, limit, sense } = check
  return demand === undefined || limit === undefined ? "" : spoken.row.against(demand.text, limit.text, sense)
}
