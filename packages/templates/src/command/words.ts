import {
  type CheckView,
  type EntryView,
  inWords,
  languageInForce,
  type Source,
  sourceInOneLine,
  type UnitSystem,
} from "@pegbook/engine"
import { phrases } from "./phrases.ts"

/** A source in one line, and what is to be said of it. */
export function sourceInWords(source: Source): string {
  const note = source.note === undefined ? "" : ` — ${source.note}`
  return `${sourceInOneLine(source)}${note}`
}

/** A verdict with its numbers: `passes: 870 psf, at most 1,500 psf (ratio 0.58)`. */
export function checkInWords(check: CheckView): string {
  const says = phrases()
  const verdict = languageInForce().entries.verdicts[check.verdict]
  if (check.demand === undefined || check.limit === undefined) return verdict
  const sense = check.sense === "at_most" ? says.atMost : says.atLeast
  const ratio =
    check.ratio === undefined
      ? ""
      : ` (${says.ratio(languageInForce().number(check.ratio.toFixed(2), "ratio"))})`
  return `${verdict}${says.colon}${check.demand.text}, ${sense} ${check.limit.text}${ratio}`
}

const FEW = 3

/** What an entry's value reads as: one value, the first few of many, or why there is none. */
export function valueInWords(view: EntryView, system: UnitSystem): string {
  if (view.check !== undefined) return checkInWords(view.check)
  if (view.reading !== undefined) return view.reading.text
  if (view.readings !== undefined) {
    const texts = view.readings.map((reading) => reading?.text ?? "—")
    if (view.shape === "list") return texts.join(languageInForce().phrases.listed)
    if (texts.length === 0) return languageInForce().phrases.noRows
    const rest = texts.length > FEW ? ", …" : ""
    return `${texts.slice(0, FEW).join(", ")}${rest} (${languageInForce().phrases.rows(texts.length)})`
  }
  if (view.state === "needs_entry") return `— ${languageInForce().entries.verdicts.needs_entry}`
  const [problem] = view.problems
  return problem === undefined ? "—" : `— ${inWords(problem, system).says}`
}
