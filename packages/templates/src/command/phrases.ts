import { languageInForce } from "@pegbook/engine"
import { ENGLISH_PHRASES, type Phrases } from "./phrases.en.ts"
import { FRENCH_PHRASES } from "./phrases.fr.ts"

/** What the command says, in the language in force. */
export const phrases = (): Phrases => (languageInForce().id === "fr" ? FRENCH_PHRASES : ENGLISH_PHRASES)
