import type { LanguageId } from "@pegbook/engine"
import { TERMS, type Term } from "./terms.ts"

export type { Term } from "./terms.ts"

/** A part of a text: plain, or a word of the trade as it stands there. */
export type Piece = string | { readonly shown: string; readonly term: Term }

interface Glossary {
  readonly terms: readonly Term[]
  readonly byForm: ReadonlyMap<string, Term>
  readonly expression: RegExp
}

let inForce = glossaryOf(TERMS, "en")

/** Explains words in this language from now on; what is not English is fetched first. */
export async function useTermsOf(language: LanguageId): Promise<void> {
  if (language === "en") inForce = glossaryOf(TERMS, language)
  else {
    const { FRENCH_TERMS } = await import("./french-terms.ts")
    inForce = glossaryOf(
      TERMS.map((term) => ({ ...term, ...FRENCH_TERMS[term.id] })),
      language,
    )
  }
}

function glossaryOf(unsorted: readonly Term[], language: LanguageId): Glossary {
  const terms = [...unsorted].sort((a, b) => nameOf(a).localeCompare(nameOf(b), language))
  const byForm = new Map(terms.flatMap((term) => term.forms.map((form) => [plain(form), term] as const)))
  // The longest first, so that "guy line" is not read as "guy".
  const forms = terms.flatMap((term) => term.forms).sort((a, b) => b.length - a.length)
  const either = forms.join("|").replace(/[’']/g, "[’']")
  return { terms, byForm, expression: new RegExp(`(?<![\\p{L}-])(?:${either})(?![\\p{L}-])`, "giu") }
}

function plain(form: string): string {
  return form.toLowerCase().replace(/'/g, "’")
}

/** As a list shows it. */
export function nameOf(term: Term): string {
  return term.forms[0] ?? term.id
}

/** All words that are explained, by the alphabet of the language in force. */
export function glossary(): readonly Term[] {
  return inForce.terms
}

/** A text with its words of the trade marked, each where it comes first. */
export function withTerms(text: string): readonly Piece[] {
  const pieces: Piece[] = []
  const marked = new Set<Term>()
  let from = 0
  for (const { 0: shown, index } of text.matchAll(inForce.expression)) {
    const term = inForce.byForm.get(plain(shown))
    if (term === undefined || marked.has(term)) continue
    marked.add(term)
    if (index > from) pieces.push(text.slice(from, index))
    pieces.push({ shown, term })
    from = index + shown.length
  }
  if (from < text.length) pieces.push(text.slice(from))
  return pieces
}
