import type { EntryView, Source } from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"

/** One thing that the numbers rest on. */
export interface Assumption {
  readonly name: string
  readonly label: string
  readonly shape: EntryView["shape"]
  /** As a person reads it; of a table, and of what is blank, undefined. */
  readonly text: string | undefined
  readonly changed: boolean
  /** Places in the list of sources, from 1. */
  readonly sources: readonly number[]
}

export interface Assumptions {
  readonly sections: readonly { readonly title: string; readonly rows: readonly Assumption[] }[]
  readonly sources: readonly Source[]
}

/** Everything given rather than worked out, in the order of the work, with each source named once. */
export function assumptionsOf(sheet: Pick<Sheet, "definition" | "entry">): Assumptions {
  const sources: Source[] = []
  const places = new Map<string, number>()
  function placeOf(source: Source): number {
    const { kind, title, edition, place, note, origin } = source
    const key = JSON.stringify([kind, title, edition, place, note, origin])
    const known = places.get(key)
    if (known !== undefined) return known
    sources.push(source)
    places.set(key, sources.length)
    return sources.length
  }
  const sections = sheet.definition.sections.map(({ title, entries }) => ({
    title,
    rows: entries
      .map(({ name }) => sheet.entry(name))
      .filter(({ kind }) => kind === "input" || kind === "figure")
      .map((view) => ({
        name: view.name,
        label: view.label,
        shape: view.shape,
        text: textOf(view),
        changed: view.changed,
        sources: [...new Set(view.sources.map(placeOf))],
      })),
  }))
  return { sections: sections.filter(({ rows }) => rows.length > 0), sources }
}

function textOf(view: EntryView): string | undefined {
  if (view.shape === "table") return undefined
  if (view.shape === "list") return (view.readings ?? []).map((one) => one?.text ?? "—").join(", ")
  return view.reading?.text ?? view.blank
}
