import { namesIn } from "../formula/names.ts"
import { parseFormula } from "../formula/parse.ts"
import type { Outline } from "./outline.ts"
import type { OwnEntry } from "./own-entry.ts"

/** The formulas of an entry; a check's demand and limit first. */
export function formulasOf(entry: OwnEntry): readonly string[] {
  switch (entry.kind) {
    case "input":
    case "figure":
      return []
    case "formula":
    case "column":
      return [entry.formula]
    case "check":
      return [entry.demand, entry.limit, entry.near, entry.covered].filter((text) => text !== undefined)
  }
}

/** Whether an entry's formulas mention a name. */
export function mentions(entry: OwnEntry, name: string, items: Outline): boolean {
  const table = entry.kind === "column" ? entry.table : undefined
  return formulasOf(entry).some((text) => {
    const { ast } = parseFormula(text)
    return (
      ast !== undefined && namesIn(ast).some((use) => newName(use.name, name, "", table, items) !== use.name)
    )
  })
}

/** An entry with a name in its formulas and advice changed, and nothing else of how they were written. */
export function renamed(entry: OwnEntry, from: string, to: string, items: Outline): OwnEntry {
  const table = entry.kind === "column" ? entry.table : undefined
  const rewrite = (text: string): string =>
    rewriteNames(text, (used) => newName(used, from, to, table, items))
  switch (entry.kind) {
    case "input":
    case "figure":
      return entry
    case "formula":
    case "column": {
      const formula = rewrite(entry.formula)
      return formula === entry.formula ? entry : { ...entry, formula }
    }
    case "check": {
      const next = {
        ...entry,
        demand: rewrite(entry.demand),
        limit: rewrite(entry.limit),
        ...(entry.near === undefined ? {} : { near: rewrite(entry.near) }),
        ...(entry.covered === undefined ? {} : { covered: rewrite(entry.covered) }),
        ...(entry.advice === undefined
          ? {}
          : { advice: entry.advice.map((text) => text.replaceAll(`{${from}}`, `{${to}}`)) }),
      }
      return JSON.stringify(next) === JSON.stringify(entry) ? entry : next
    }
  }
}

/** What a name written in a formula of `table` becomes. A table's own column comes before an entry of that name. */
function newName(used: string, from: string, to: string, table: string | undefined, items: Outline): string {
  const own = table === undefined ? undefined : `${table}.${used}`
  if (own !== undefined && items.get(own)?.kind === "column")
    return own === from ? to.slice(to.indexOf(".") + 1) : used
  if (used === from) return to
  return used.startsWith(`${from}.`) ? `${to}${used.slice(from.length)}` : used
}

function rewriteNames(text: string, rename: (name: string) => string): string {
  const { ast } = parseFormula(text)
  if (ast === undefined) return text
  let written = text
  for (const { name, span } of [...namesIn(ast)].sort((a, b) => b.span.start - a.span.start))
    written = written.slice(0, span.start) + rename(name) + written.slice(span.end)
  return written
}
