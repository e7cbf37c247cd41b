import { keptAs, type MeasureId, type OwnEntry, shownAs } from "@pegbook/engine"

export type OwnKind = OwnEntry["kind"]
export const OWN_KINDS: readonly OwnKind[] = ["input", "figure", "formula", "check", "column"]

/** The fields of the form, as they are typed. */
export interface Fields {
  readonly kind: OwnKind
  readonly label: string
  /** Empty: made from the label. */
  readonly name: string
  readonly why: string
  readonly table: string
  readonly measure: MeasureId
  readonly value: string
  readonly source: string
  readonly formula: string
  readonly demand: string
  readonly limit: string
  readonly sense: "at_most" | "at_least"
}

export const EMPTY: Fields = {
  kind: "formula",
  label: "",
  name: "",
  why: "",
  table: "",
  measure: "length",
  value: "",
  source: "",
  formula: "",
  demand: "",
  limit: "",
  sense: "at_most",
}

/** A name for formulas made from a label: "Height of the gate" gives `height_of_the_gate`. */
export function nameFrom(label: string): string {
  const name = label
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "_")
    .replace(/^_+|_+$/g, "")
    .slice(0, 60)
  return /^[0-9]/.test(name) ? `n_${name}`.slice(0, 60) : name
}

/** What is asked of the workbook; a measure is worked out where there is a formula. */
export function draftOf(fields: Fields): OwnEntry {
  const described = {
    name: fields.name.trim() === "" ? nameFrom(fields.label) : fields.name.trim(),
    label: fields.label.trim(),
    ...(fields.why.trim() === "" ? {} : { why: fields.why.trim() }),
    sources: [{ kind: "user" as const, title: fields.source.trim() || "Your own" }],
  }
  switch (fields.kind) {
    case "input":
      return {
        ...described,
        kind: "input",
        measure: fields.measure,
        default: fields.value.trim() === "" ? null : keptAs(fields.value.trim(), fields.measure),
      }
    case "figure": {
      const { sources: _, ...rest } = described
      const title = fields.source.trim()
      return {
        ...rest,
        ...(title === "" ? {} : { sources: [{ kind: "user" as const, title }] }),
        kind: "figure",
        measure: fields.measure,
        value: keptAs(fields.value.trim(), fields.measure),
      }
    }
    case "formula":
      return { ...described, kind: "formula", formula: fields.formula }
    case "column":
      return { ...described, kind: "column", table: fields.table, formula: fields.formula }
    case "check":
      return {
        ...described,
        kind: "check",
        demand: fields.demand,
        limit: fields.limit,
        sense: fields.sense,
      }
  }
}

/** The form's fields for an entry that is to be changed. */
export function fieldsOf(entry: OwnEntry): Fields {
  const common = {
    ...EMPTY,
    kind: entry.kind,
    label: entry.label,
    name: entry.name,
    why: entry.why ?? "",
    source: entry.sources?.[0]?.title ?? "",
    measure: entry.measure ?? EMPTY.measure,
  }
  switch (entry.kind) {
    case "input":
      return { ...common, value: shownAs(entry.default ?? "", common.measure) }
    case "figure":
      return { ...common, value: shownAs(entry.value, common.measure) }
    case "formula":
      return { ...common, formula: entry.formula }
    case "column":
      return { ...common, table: entry.table, formula: entry.formula }
    case "check":
      return { ...common, demand: entry.demand, limit: entry.limit, sense: entry.sense }
  }
}

/** The beginning of a name right before the caret, and where it starts. */
export function wordBefore(text: string, caret: number): { readonly word: string; readonly start: number } {
  const word = /[A-Za-z_][A-Za-z0-9_.]*$/.exec(text.slice(0, caret))?.[0] ?? ""
  return { word, start: caret - word.length }
}

/** A text with a name put in from one place to another, set apart from a word that would touch it. */
export function withName(
  text: string,
  from: number,
  to: number,
  name: string,
): { readonly text: string; readonly caret: number } {
  const before = text.slice(0, from)
  const after = text.slice(to)
  const gap = /[A-Za-z0-9_.]$/.test(before) ? " " : ""
  const put = `${before}${gap}${name}`
  return { text: put + (/^[A-Za-z0-9_.]/.test(after) ? " " : "") + after, caret: put.length }
}
