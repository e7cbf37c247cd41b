import { languageInForce } from "../language/in-force.ts"
import { ENGLISH_SHEETS, type SheetText } from "./sheet-text.en.ts"
import { FRENCH_SHEETS } from "./sheet-text.fr.ts"

/** The words of what is written out, in the language in force. */
export const sheetText = (): SheetText => (languageInForce().id === "fr" ? FRENCH_SHEETS : ENGLISH_SHEETS)
