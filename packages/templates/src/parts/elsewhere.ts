import type { Column, MeasureId, Source, TableEntry } from "@pegbook/engine"

/** A figure of another place: what it is of, where it holds, the figure, what to mind, and who says so. */
export interface Elsewhere {
  readonly what: string
  readonly place: string
  readonly figure: string
  readonly mind: string
  readonly source: Source
}

/** Figures of other places as a table, shown so that a reader knows what to ask for. No check leans on them. */
export function elsewhere(
  name: string,
  label: string,
  measure: MeasureId,
  column: Pick<Column, "name" | "label" | "why">,
  rows: readonly Elsewhere[],
): TableEntry {
  const sources = [...new Set(rows.map(({ source }) => source))]
  return {
    kind: "table",
    name,
    label,
    why: "What other places say, so that you know what to ask for. Ask for your own place's figures.",
    sources,
    rows: { kind: "figures" },
    columns: [
      {
        name: "what",
        label: "What",
        why: "What the figure is of.",
        sources,
        measure: "text",
        values: rows.map(({ what }) => what),
      },
      {
        name: "place",
        label: "Where",
        why: "Where it holds.",
        sources,
        measure: "text",
        values: rows.map(({ place }) => place),
      },
      { ...column, sources, measure, values: rows.map(({ figure }) => figure) },
      {
        name: "mind",
        label: "Mind",
        why: "What else the place says about it.",
        sources,
        measure: "text",
        values: rows.map(({ mind }) => mind),
      },
      {
        name: "source",
        label: "Who says so",
        why: "The text that the figure is from, and its record.",
        sources,
        measure: "text",
        values: rows.map(({ source: { title, record } }) => `${title} (${record ?? "no record"})`),
      },
    ],
  }
}
