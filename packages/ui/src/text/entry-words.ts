import { type EntryKind, languageInForce, type SourceKind, type Verdict } from "@pegbook/engine"

/** A kind of entry stands inside a line. */
export const kindWord = (kind: EntryKind): string => languageInForce().entries.kinds[kind]

/** A verdict stands at the beginning of a line. */
export const verdictWord = (verdict: Verdict): string =>
  atBeginning(languageInForce().entries.verdicts[verdict])

/** A kind of source stands at the beginning of a line. */
export const sourceKindWord = (kind: SourceKind): string =>
  atBeginning(languageInForce().entries.sourceKinds[kind])

function atBeginning(words: string): string {
  return words.charAt(0).toLocaleUpperCase(languageInForce().tag) + words.slice(1)
}
