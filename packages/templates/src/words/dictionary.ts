import type { Dictionary } from "@pegbook/engine"
import { typeset } from "./typeset.ts"

/** Texts by their English. `{entry}` in braces stays as it is: the workbook puts the entry's value there. */
export type Texts = Readonly<Record<string, string>>

/** What the templates say, in another language. */
export interface Vocabulary {
  readonly texts: Texts
  /** Texts that formulas and solvers put together: `{1}`, `{2}` stand for what differs. */
  readonly patterns: Texts
  /** Texts that read alike in both languages: names of places, grades, sizes. */
  readonly same: readonly string[]
}

export interface CheckedDictionary extends Dictionary {
  /** Whether there is nothing left in English where this text is shown. */
  knows(english: string): boolean
}

interface Pattern {
  readonly match: RegExp
  readonly says: string
}

const MOST_REMEMBERED = 5_000
/** Longer texts are sentences, which nobody types. */
const LONGEST_TYPED = 60
/** Numbers, sizes and units alone: they are written by the rules for numbers. */
const NUMERIC =
  /^(?:[\d\s.,/×x%'"()#$+\-–—:;²³]|(?<!\p{L})(?:ft|in|yd|m|mm|cm|lb|kg|h|min|psf|psi|kPa|MPa|kN|gal|L|[A-Z])(?!\p{L}))*$/u

/** @param number writes a number, with its units, as the language does */
export function dictionaryOf(vocabulary: Vocabulary, number: (text: string) => string): CheckedDictionary {
  const texts = new Map(Object.entries(vocabulary.texts).map(([key, says]) => [key, typeset(says)]))
  const same = new Set(vocabulary.same)
  const patterns = Object.entries(vocabulary.patterns)
    .sort(([a], [b]) => literalLength(b) - literalLength(a))
    .map(([key, says]): Pattern => ({ match: expressionOf(key), says: typeset(says) }))
  const remembered = new Map<string, string | undefined>()

  /** Undefined where nothing is known of it. */
  function find(english: string): string | undefined {
    const exact = texts.get(english)
    if (exact !== undefined) return exact
    if (same.has(english)) return english
    if (NUMERIC.test(english)) return number(english)
    if (remembered.has(english)) return remembered.get(english)
    const found = byPattern(english) ?? inParts(english) ?? bySentence(english)
    if (remembered.size >= MOST_REMEMBERED) remembered.clear()
    remembered.set(english, found)
    return found
  }

  function byPattern(english: string): string | undefined {
    for (const { match, says } of patterns) {
      const parts = match.exec(english)
      if (parts === null) continue
      // What a person named is put in as it is.
      return says.replace(/\{(\d)\}/g, (_, place: string) => {
        const part = parts[Number(place)] ?? ""
        return find(part) ?? part
      })
    }
    return undefined
  }

  /** Lists, whose parts are known one by one. */
  function inParts(english: string): string | undefined {
    for (const [joint, joined] of JOINTS) {
      const parts = english.split(joint)
      if (parts.length < 2) continue
      const found = parts.map(find)
      if (found.every((part) => part !== undefined)) return found.join(joined)
    }
    return undefined
  }

  /** Sentences that were put one behind another. */
  function bySentence(english: string): string | undefined {
    const sentences = english.split(/(?<=\.) (?=\p{Lu})/u)
    if (sentences.length < 2) return undefined
    const found = sentences.map(find)
    return found.every((sentence) => sentence !== undefined) ? found.join(" ") : undefined
  }

  let typed: ReadonlyMap<string, string> | undefined
  function englishByText(): ReadonlyMap<string, string> {
    typed ??= new Map(
      [...texts]
        .filter(([key]) => key.length <= LONGEST_TYPED)
        .reverse()
        .map(([key, says]) => [plain(says), key]),
    )
    return typed
  }

  return {
    text: (english) => find(english) ?? english,
    english: (text) => englishByText().get(plain(text)) ?? text,
    knows: (english) => {
      const found = find(english)
      return found !== undefined || english.trim() === ""
    },
  }
}

const JOINTS: readonly (readonly [joint: string, joined: string])[] = [
  ["; ", "\u00a0; "],
  [" | ", " | "],
  [", ", ", "],
]

/** Without what a keyboard has no key for. */
function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\u00a0\u202f]/g, " ")
    .replace(/’/g, "'")
}

function literalLength(key: string): number {
  return key.replace(/\{\d\}/g, "").length
}

function expressionOf(key: string): RegExp {
  const source = key
    .split(/\{\d\}/)
    .map((literal) => literal.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
    .join("(.+?)")
  return new RegExp(`^${source}$`, "su")
}
