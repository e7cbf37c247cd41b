import { ENGLISH } from "./english.ts"
import type { Language, LanguageId } from "./language.ts"

/** A language of the engine; all but English are fetched when they are asked for. */
export async function loadLanguage(id: LanguageId): Promise<Language> {
  return id === "fr" ? (await import("./french.ts")).FRENCH : ENGLISH
}
