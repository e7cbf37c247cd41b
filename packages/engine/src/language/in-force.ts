import type { MeasureId } from "../units/measure.ts"
import { splitList } from "../units/read-value.ts"
import { ENGLISH, ENGLISH_TEXTS } from "./english.ts"
import type { Dictionary, Language } from "./language.ts"

/** In a column of texts, a number with perhaps a unit, such as a price that may also be left blank. */
const NUMBER_IN_TEXT = /^[\d\u00a0\u202f ]+(?:[.,]\d+)?(?:\s?[\p{L}$%²³/]{1,6})?$/u

let language: Language = ENGLISH
let dictionary: Dictionary = ENGLISH_TEXTS

/**
 * Chooses the language of a page, a worker or a command: once, before the first workbook is opened, because an open
 * workbook remembers what it has printed.
 */
export function useLanguage(chosen: Language, texts: Dictionary): void {
  language = chosen
  dictionary = texts
}

export function languageInForce(): Language {
  return language
}

/** A text of a template, or a value in words, in the language in force. */
export function inLanguage(english: string): string {
  return dictionary.text(english)
}

/** What is kept of a value, as it is shown in a field. A list keeps its own units. */
export function shownAs(kept: string, measure: MeasureId, list = false): string {
  if (list) {
    const shown = splitList(kept).map((part) => shownAs(part, measure))
    return shown.join(language.phrases.listed)
  }
  if (kept === "") return ""
  if (measure === "text") return NUMBER_IN_TEXT.test(kept) ? language.number(kept) : dictionary.text(kept)
  if (measure === "yes_no") return yesNo(kept, "shown")
  return language.number(kept, measure)
}

/** What was typed into a field, as it is kept. */
export function keptAs(typed: string, measure: MeasureId, list = false): string {
  if (measure === "text" && !list) {
    const text = typed.trim()
    return NUMBER_IN_TEXT.test(text) ? language.kept(text) : dictionary.english(text)
  }
  if (measure === "yes_no") return yesNo(typed.trim(), "kept")
  if (!list) return language.kept(typed)
  return listParts(typed)
    .map((part) => keptAs(part, measure))
    .join("; ")
}

/** A comma between two digits belongs to the number wherever commas mark decimals. */
function listParts(typed: string): readonly string[] {
  return language.id === "en"
    ? splitList(typed)
    : typed.split(/;|,(?!\d)|(?<!\d),/).map((part) => part.trim())
}

function yesNo(text: string, way: "shown" | "kept"): string {
  const { yes, no } = language.phrases
  const [from, to] = way === "shown" ? [ENGLISH.phrases, language.phrases] : [{ yes, no }, ENGLISH.phrases]
  const word = text.toLowerCase()
  return word === from.yes ? to.yes : word === from.no ? to.no : text
}
