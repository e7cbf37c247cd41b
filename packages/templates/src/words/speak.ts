import {
  type Definition,
  type Dictionary,
  inLanguage,
  type LanguageId,
  languageInForce,
  loadLanguage,
  useLanguage,
} from "@pegbook/engine"
import { useTermsOf } from "../glossary/index.ts"
import { translateDefinition } from "./translate-definition.ts"

/** Texts as they are written in the templates. */
const AS_WRITTEN: Dictionary = { text: (english) => english, english: (text) => text }

/** Chooses the language of a page, a worker or a command; its words are fetched first. Before any workbook is opened. */
export async function speak(id: LanguageId): Promise<void> {
  const language = await loadLanguage(id)
  await useTermsOf(id)
  useLanguage(language, id === "fr" ? (await import("./fr/index.ts")).french(language.number) : AS_WRITTEN)
}

const translated = new Map<LanguageId, WeakMap<Definition, Definition>>()

/** A template in the language in force. */
export function spokenTemplate(definition: Definition): Definition {
  const { id } = languageInForce()
  if (id === "en") return definition
  const known = translated.get(id) ?? new WeakMap<Definition, Definition>()
  translated.set(id, known)
  const found = known.get(definition) ?? translateDefinition(definition, inLanguage)
  known.set(definition, found)
  return found
}
