import {
  type EntryView,
  inLanguage,
  languageInForce,
  type Moved,
  type Source,
  shownAs,
} from "@pegbook/engine"
import { kindWord, sourceKindWord, verdictWord } from "../../text/entry-words.ts"
import { spoken } from "../../text/spoken.ts"

/** What one row of the sheet says, as texts. */
export interface RowModel {
  readonly kind: string
  /** Empty when there is no value: then `missing` says why. */
  readonly value: string
  readonly missing: string
  /** How it was worked out, in one line; `formula` when it is to be set as one. */
  readonly how: { readonly text: string; readonly formula: boolean }
  readonly from: string
  readonly memory: boolean
  /** What was changed from the template, and what puts it back. */
  readonly changed?: { readonly says: string; readonly putBack: string }
}

/** May be typed in the row itself. A figure is overridden in its details, so that it is not done by accident. */
export function isField(view: EntryView): boolean {
  return view.kind === "input" && (view.shape === "one" || view.shape === "list")
}

/** The text in force, for a field. A list keeps its own units: rounding them to show them would change them. */
export function fieldText(view: EntryView): string {
  const { shape, reading, measure, typed = "" } = view
  return shape === "list" || reading === undefined ? shownAs(typed, measure, shape === "list") : reading.text
}

export function rowModel(view: EntryView): RowModel {
  const overridden = view.changed && (view.kind === "figure" || view.kind === "formula")
  const model = {
    kind: kindWord(view.kind),
    value: valueText(view),
    missing:
      view.state === "needs_entry"
        ? languageInForce().entries.verdicts.needs_entry
        : view.state === "problem"
          ? spoken.row.problem
          : spoken.row.noValue,
    how: howText(view),
    from: overridden ? sourceKindWord("user") : fromText(view.sources),
    memory: !overridden && view.sources.some(isFromMemory),
  }
  if (!view.changed) return model
  return {
    ...model,
    changed: { says: overridden ? spoken.row.overridden : spoken.row.changed, putBack: putBackText(view) },
  }
}

function putBackText(view: EntryView): string {
  if (view.shape === "table") return spoken.row.putBackAll
  if (view.kind === "formula")
    return spoken.row.putBack(view.overrides?.[0]?.original?.text ?? spoken.row.noValue)
  const original = shownAs(view.original ?? "", view.measure, view.shape === "list")
  return original === "" ? spoken.row.putBackBlank : spoken.row.putBack(original)
}

export function isFromMemory(source: Source): boolean {
  return source.kind === "memory" || source.origin === "memory"
}

function valueText(view: EntryView): string {
  if (view.check !== undefined) return verdictWord(view.check.verdict)
  return view.reading?.text ?? ""
}

function howText(view: EntryView): RowModel["how"] {
  const words = (text: string) => ({ text, formula: false })
  if (view.check !== undefined) return words(checkText(view))
  if (view.kind === "input") {
    const yours = view.accepts === undefined ? spoken.row.yours : spoken.row.accepts(view.accepts)
    return words(view.blank === undefined ? yours : spoken.row.orBlank(yours, view.blank))
  }
  const [over] = view.overrides ?? []
  if (view.kind === "formula" && over !== undefined)
    return words(spoken.over.how(over.original?.text ?? spoken.row.noValue))
  if (view.report !== undefined) return words(view.report.method)
  if (view.formula !== undefined) return { text: view.formula, formula: true }
  if (view.kind === "figure") return words(spoken.row.asGiven)
  return words(view.kind === "solved" ? spoken.row.searched : "")
}

/** "1,137 psf, must not be more than 2,000 psf". */
function checkText(view: EntryView): string {
  const { demand, limit, sense } = view.check ?? {}
  if (demand === undefined || limit === undefined) return ""
  return spoken.row.against(demand.text, limit.text, sense === "at_least" ? "at_least" : "at_most")
}

function fromText(sources: readonly Source[]): string {
  const [first, ...rest] = sources
  if (first === undefined) return spoken.row.noSource
  const kind = sourceKindWord(first.kind)
  // Some titles begin with their kind.
  const title = inLanguage(first.title)
  const says = title.toLowerCase().startsWith(kind.toLowerCase()) ? title : spoken.row.from(kind, title)
  return rest.length === 0 ? says : `${says} ${spoken.row.moreSources(rest.length)}`
}

/** What an entry said before the last change; nothing when it did not move. */
export function wasText(moved: readonly Moved[]): string | undefined {
  const [first] = moved
  if (first === undefined) return undefined
  if (first.row === undefined) return first.old?.text ?? spoken.row.blank
  return moved.map((one) => one.old?.text ?? spoken.row.blank).join("; ")
}
