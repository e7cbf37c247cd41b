import type { EntryView, Moved, Source } from "@pegbook/engine"
import { en } from "../../text/en.ts"

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
  return view.shape === "list" ? (view.typed ?? "") : (view.reading?.text ?? view.typed ?? "")
}

export function rowModel(view: EntryView): RowModel {
  const overridden = view.changed && (view.kind === "figure" || view.kind === "formula")
  const model = {
    kind: en.kinds[view.kind],
    value: valueText(view),
    missing:
      view.state === "needs_entry"
        ? en.row.needsEntry
        : view.state === "problem"
          ? en.row.problem
          : en.row.noValue,
    how: howText(view),
    from: overridden ? en.sourceKinds.user : fromText(view.sources),
    memory: !overridden && view.sources.some(isFromMemory),
  }
  if (!view.changed) return model
  return {
    ...model,
    changed: { says: overridden ? en.row.overridden : en.row.changed, putBack: putBackText(view) },
  }
}

function putBackText(view: EntryView): string {
  if (view.shape === "table") return en.row.putBackAll
  if (view.kind === "formula") return en.row.putBack(view.overrides?.[0]?.original?.text ?? en.row.noValue)
  const original = view.original ?? ""
  return original === "" ? en.row.putBackBlank : en.row.putBack(original)
}

export function isFromMemory(source: Source): boolean {
  return source.kind === "memory" || source.origin === "memory"
}

function valueText(view: EntryView): string {
  if (view.check !== undefined) return en.verdicts[view.check.verdict]
  return view.reading?.text ?? ""
}

function howText(view: EntryView): RowModel["how"] {
  const words = (text: string) => ({ text, formula: false })
  if (view.check !== undefined) return words(checkText(view))
  if (view.kind === "input") {
    const yours = view.accepts === undefined ? en.row.yours : en.row.accepts(view.accepts)
    return words(view.blank === undefined ? yours : en.row.orBlank(yours, view.blank))
  }
  const [over] = view.overrides ?? []
  if (view.kind === "formula" && over !== undefined)
    return words(en.over.how(over.original?.text ?? en.row.noValue))
  if (view.report !== undefined) return words(view.report.method)
  if (view.formula !== undefined) return { text: view.formula, formula: true }
  if (view.kind === "figure") return words(en.row.asGiven)
  return words(view.kind === "solved" ? en.row.searched : "")
}

/** "1,137 psf, must not be more than 2,000 psf". */
function checkText(view: EntryView): string {
  const { demand, limit, sense } = view.check ?? {}
  if (demand === undefined || limit === undefined) return ""
  return en.row.against(demand.text, limit.text, sense === "at_least" ? "at_least" : "at_most")
}

function fromText(sources: readonly Source[]): string {
  const [first, ...rest] = sources
  if (first === undefined) return en.row.noSource
  const kind = en.sourceKinds[first.kind]
  // Some titles begin with their kind.
  const says = first.title.toLowerCase().startsWith(kind.toLowerCase())
    ? first.title
    : `${kind}: ${first.title}`
  return rest.length === 0 ? says : `${says} ${en.row.moreSources(rest.length)}`
}

/** What an entry said before the last change; nothing when it did not move. */
export function wasText(moved: readonly Moved[]): string | undefined {
  const [first] = moved
  if (first === undefined) return undefined
  if (first.row === undefined) return first.old?.text ?? en.row.blank
  return moved.map((one) => one.old?.text ?? en.row.blank).join("; ")
}
