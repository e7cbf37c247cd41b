import type { LanguageId } from "@pegbook/engine"
import { en } from "./en.ts"

/** The shape of the English words, in any language: the compiler finds what another one lacks. */
type Said<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : T extends readonly unknown[]
      ? { readonly [Place in keyof T]: Said<T[Place]> }
      : { readonly [Name in keyof T]: Said<T[Name]> }

/** Every word of the interface. */
export type InterfaceWords = Said<typeof en>

/** The words of the interface in the language in force. Read it when it is shown, not when a file is loaded. */
export let spoken: InterfaceWords = en

/** Once, before anything is shown; what is not English is fetched first. */
export async function chooseWords(language: LanguageId): Promise<void> {
  spoken = language === "fr" ? (await import("./fr.ts")).fr : en
}
