import { inLanguage, languageInForce } from "@pegbook/engine"
import { type CheckedDictionary, dictionaryOf } from "../words/dictionary.ts"
import { FRENCH_CUTS } from "./cut-sentences.fr.ts"
import { FRENCH_HELP, FRENCH_REFUSALS } from "./sentences.fr.ts"

let inFrench: CheckedDictionary | undefined

/** The command's own sentences. What was given to it is put in as it was given: numbers are not written anew. */
const french = (): CheckedDictionary => {
  inFrench ??= dictionaryOf(
    { texts: FRENCH_HELP, patterns: { ...FRENCH_REFUSALS, ...FRENCH_CUTS }, same: [] },
    (text) => text,
  )
  return inFrench
}

/** A text of the command or of what it calls, in the language in force. */
export function said(english: string): string {
  if (languageInForce().id !== "fr") return english
  return french().knows(english) ? french().text(english) : inLanguage(english)
}
