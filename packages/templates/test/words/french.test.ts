import { type InputEntry, loadLanguage } from "@pegbook/engine"
import { beforeAll, describe, expect, test } from "vitest"
import { QUICK_TEMPLATES, TEMPLATES } from "../../src/index.ts"
import type { CheckedDictionary } from "../../src/words/dictionary.ts"
import { french } from "../../src/words/fr/index.ts"
import { textsOf } from "./texts-of.ts"

const ALL = [...TEMPLATES, ...QUICK_TEMPLATES]
let dictionary: CheckedDictionary
beforeAll(async () => {
  dictionary = french((await loadLanguage("fr")).number)
})

/** Each missing text once, as a line that can be put into a file of `src/words/fr/` and be finished there. */
test("every text of every template has its French", { timeout: 300_000 }, () => {
  const told = new Set<string>()
  const missing: string[] = []
  for (const definition of ALL) {
    for (const [part, texts] of textsOf(definition)) {
      const unknown = texts.filter((text) => !dictionary.knows(text) && !told.has(text))
      for (const text of unknown) told.add(text)
      if (unknown.length > 0) missing.push(`// ${definition.id}: ${part}`)
      missing.push(...unknown.map((text) => `${JSON.stringify(text)}: "",`))
    }
  }
  expect(missing.join("\n")).toBe("")
})

describe.each(ALL.map((definition) => [definition.id, definition] as const))("%s", (_, definition) => {
  test("what stands in braces stands in the French as well", () => {
    const namesIn = (text: string) => [...text.matchAll(/\{[a-z0-9_.]+\}/g)].map(([name]) => name).sort()
    for (const text of [...textsOf(definition).values()].flat())
      expect(namesIn(dictionary.text(text)), text).toEqual(namesIn(text))
  })

  test("no two choices of an input read alike", () => {
    const inputs = definition.sections
      .flatMap((section) => section.entries)
      .filter((entry): entry is InputEntry => entry.kind === "input")
    for (const { name, choices = [] } of inputs) {
      const shown = choices.map((choice) => dictionary.text(choice))
      expect(new Set(shown).size, name).toBe(choices.length)
    }
  })
})

test("no French text has a plain space where French sets one that does not break", () => {
  for (const definition of ALL)
    for (const text of [...textsOf(definition).values()].flat())
      expect(dictionary.text(text)).not.toMatch(/ [:;?!»%]|« /)
})
