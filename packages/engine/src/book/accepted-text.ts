import type { InputEntry } from "../definition/entry.ts"
import { languageInForce } from "../language/in-force.ts"
import type { Language } from "../language/language.ts"
import type { Quantity } from "../quantity/quantity.ts"
import type { UnitSystem } from "../units/measure.ts"
import { printQuantity } from "../units/print-value.ts"
import { limits } from "./typed.ts"

interface Said {
  readonly system: UnitSystem
  readonly language: Language
  readonly text: string | undefined
}

/** An entry does not change, but is read at every edit: reading its limits and printing them cost a fifth of reading a book. */
const SAID = new WeakMap<InputEntry, Said>()

/** What an input accepts, in the units and language in force; undefined where its choices say it. */
export function acceptedText(entry: InputEntry, system: UnitSystem): string | undefined {
  const language = languageInForce()
  const known = SAID.get(entry)
  if (known?.system === system && known.language === language) return known.text
  const text = printed(entry, system, language)
  SAID.set(entry, { system, language, text })
  return text
}

function printed(entry: InputEntry, system: UnitSystem, language: Language): string | undefined {
  const { least, most } = limits(entry, system)
  const { phrases } = language
  const print = (quantity: Quantity): string =>
    language.number(printQuantity(quantity, entry.measure, system), entry.measure)
  if (least !== undefined && most !== undefined) return phrases.between(print(least), print(most))
  if (least !== undefined) return phrases.orMore(print(least))
  if (most !== undefined) return phrases.orLess(print(most))
  return entry.choices === undefined ? phrases.measure(entry.measure) : undefined
}
