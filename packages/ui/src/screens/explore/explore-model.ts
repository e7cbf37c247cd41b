import {
  type EntryView,
  type Exploration,
  keptAs,
  type NearValue,
  rangeAround,
  type SweepRow,
  shownAs,
} from "@pegbook/engine"
import type { Sheet } from "../../bridge/sheet.ts"
import type { SweptRange } from "../../explore/asked.ts"
import { YES_NO } from "../../parts/Field.tsx"

/** What is typed of one input whose values are to be tried. */
export interface RangeFields {
  readonly name: string
  readonly from: string
  readonly to: string
  readonly step: string
  /** Of an input with choices: those to try. */
  readonly chosen: readonly string[]
}

/** The choices of an input that has some; nothing for one that is typed. */
export function choicesOf(view: EntryView): readonly string[] | undefined {
  return view.measure === "yes_no" ? YES_NO : view.choices
}

/** Inputs of which values can be tried: one value each, a number or a choice. */
export function triableInputs(sheet: Pick<Sheet, "inputs" | "entry">): readonly string[] {
  return sheet.inputs().filter((name) => {
    const view = sheet.entry(name)
    return view.shape === "one" && (view.measure !== "text" || view.choices !== undefined)
  })
}

/** Whether an input can be stepped through: a number. */
export function isSteppable(view: EntryView): boolean {
  return choicesOf(view) === undefined && view.measure !== "text"
}

/** What is asked of the worker for what was typed. */
export function rangeOf(fields: RangeFields, view: EntryView): SweptRange {
  const { name, from, to, step, chosen } = fields
  if (choicesOf(view) !== undefined) return { name, values: chosen }
  const kept = (text: string) => keptAs(text, view.measure)
  return { name, from: kept(from), to: kept(to), step: kept(step) }
}

/** One that the template has ready, with the form filled in for it; nothing while its input has no value. */
export interface Ready {
  readonly fields: RangeFields
  readonly results: readonly string[]
}

/** The form as a ready exploration fills it in: about the value in force. */
export function readyOf(
  { input, step, each, results }: Exploration,
  sheet: Pick<Sheet, "entry" | "definition" | "document" | "unitSystem">,
): readonly Ready[] {
  // What is in force is read from what is saved, which is not tracked; the entry is.
  const { measure } = sheet.entry(input)
  sheet.unitSystem()
  const range = rangeAround(sheet.definition, sheet.document(), { input, step, each, results })
  if (range === undefined) return []
  const [from, to, by] = [range.from, range.to, range.step].map((text) => shownAs(text, measure))
  return [{ fields: { name: input, from: from ?? "", to: to ?? "", step: by ?? "", chosen: [] }, results }]
}

/** A number that leans on an input, for a start: the first in the order of what leans on what. */
export function firstResult(input: string, sheet: Pick<Sheet, "leanedOnBy" | "entry">): string | undefined {
  const seen = new Set([input])
  for (const name of seen) {
    for (const above of sheet.leanedOnBy(name)) {
      const { kind, shape, reading } = sheet.entry(above)
      if (kind === "formula" && shape === "one" && typeof reading?.value === "number") return above
      seen.add(above)
    }
  }
  return undefined
}

/** One line of a chart: the values of one result, for one value of the second input where there are two. */
export interface Series {
  readonly title: string
  readonly points: readonly {
    readonly x: string
    readonly y: number
    readonly text: string
    readonly passes: boolean
  }[]
}

/** The lines for one of the results that were read; texts and what has no value have no point. */
export function seriesOf(
  rows: readonly SweepRow[],
  result: number,
  shown: (typed: string, place: number) => string,
): readonly Series[] {
  const lines = new Map<string, Series["points"][number][]>()
  for (const { typed, values, failing } of rows) {
    const reading = values[result]
    if (typeof reading?.value !== "number") continue
    const [x = "", title = ""] = typed.map(shown)
    const line = lines.get(title) ?? []
    lines.set(title, line)
    line.push({ x, y: reading.value, text: reading.text, passes: failing.length === 0 })
  }
  return [...lines].map(([title, points]) => ({ title, points }))
}

/** Whether a result that was read is nothing in every row: a sum of prices where none is entered. */
export function isAllNothing(rows: readonly SweepRow[], result: number): boolean {
  return rows.every(({ values }) => (values[result]?.value ?? 0) === 0)
}

/** Of the values near the present one so many are listed. */
const MOST_NEAR = 8

/** The best of what was found, those first with which every check passes; the present value always, to hold them against. */
export function nearShown(
  values: readonly NearValue[],
  present: string,
): readonly { readonly value: NearValue; readonly isPresent: boolean }[] {
  const passing = values.filter(({ failing }) => failing.length === 0)
  const ordered = [...passing, ...values.filter((value) => !passing.includes(value))].map((value) => ({
    value,
    isPresent: value.reading?.text === present,
  }))
  const best = ordered.slice(0, MOST_NEAR)
  const now = ordered.find(({ isPresent }) => isPresent)
  return now === undefined || best.includes(now) ? best : [...best, now]
}
