import {
  type CheckView,
  type EntryView,
  inWords,
  type Source,
  type UnitSystem,
  type Verdict,
} from "@pegbook/engine"

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  passes: "passes",
  near: "near the limit",
  fails: "fails",
  outside_table: "outside the table",
  needs_entry: "needs an entry",
  no_verdict: "no verdict",
}

const SOURCE_WORDS: Readonly<Record<Source["kind"], string>> = {
  standard: "a standard",
  handbook: "a handbook",
  measured: "measured",
  geometry: "geometry",
  common_practice: "common practice, no source",
  memory: "from memory",
  user: "the user's own",
}

/** A source in one line: title, edition, place, and what kind of authority it is. */
export function sourceInWords(source: Source): string {
  const parts = [source.title, source.edition, source.place].filter(
    (part) => part !== undefined && part !== "",
  )
  const memory = source.origin === "memory" && source.kind !== "memory" ? ", from memory" : ""
  const note = source.note === undefined ? "" : ` — ${source.note}`
  return `${parts.join(", ")} (${SOURCE_WORDS[source.kind]}${memory})${note}`
}

/** A verdict with its numbers: `passes: 870 psf, at most 1,500 psf (ratio 0.58)`. */
export function checkInWords(check: CheckView): string {
  const verdict = VERDICT_WORDS[check.verdict]
  if (check.demand === undefined || check.limit === undefined) return verdict
  const sense = check.sense === "at_most" ? "at most" : "at least"
  const ratio = check.ratio === undefined ? "" : ` (ratio ${check.ratio.toFixed(2)})`
  return `${verdict}: ${check.demand.text}, ${sense} ${check.limit.text}${ratio}`
}

const FEW = 3

/** What an entry's value reads as: one value, the first few of many, or why there is none. */
export function valueInWords(view: EntryView, system: UnitSystem): string {
  if (view.check !== undefined) return checkInWords(view.check)
  if (view.reading !== undefined) return view.reading.text
  if (view.readings !== undefined) {
    const texts = view.readings.map((reading) => reading?.text ?? "—")
    if (view.shape === "list") return texts.join(", ")
    if (texts.length === 0) return "no rows"
    const rest = texts.length > FEW ? ", …" : ""
    return `${texts.slice(0, FEW).join(", ")}${rest} (${texts.length} ${texts.length === 1 ? "row" : "rows"})`
  }
  if (view.state === "needs_entry") return "— needs an entry"
  const [problem] = view.problems
  return problem === undefined ? "—" : `— ${inWords(problem, system).says}`
}
