import { afterEach, expect, test } from "vitest"
import { FRENCH_TERMS } from "../../src/glossary/french-terms.ts"
import { TERMS } from "../../src/glossary/terms.ts"
import { glossary, nameOf, speak, TEMPLATES, templates, withTerms } from "../../src/index.ts"

afterEach(() => speak("en"))

/** Every text of every template, as one. */
function allTexts(): string {
  return JSON.stringify(templates(), (_, value: unknown) => (typeof value === "function" ? undefined : value))
}

test.each(["en", "fr"] as const)("every term stands in a text of a template, in %s", async (language) => {
  await speak(language)
  const texts = allTexts()
  const found = new Set(withTerms(texts).map((piece) => (typeof piece === "string" ? "" : piece.term.id)))
  expect(TERMS.map(({ id }) => id).filter((id) => !found.has(id))).toEqual([])
  expect(glossary()).toHaveLength(TERMS.length)
})

test("every term is explained in French as well, and nothing else is", () => {
  expect(Object.keys(FRENCH_TERMS).sort()).toEqual(TERMS.map(({ id }) => id).sort())
})

test("no form belongs to two terms", async () => {
  for (const language of ["en", "fr"] as const) {
    await speak(language)
    const forms = glossary().flatMap((term) => term.forms.map((form) => form.toLowerCase()))
    expect(forms.filter((form, place) => forms.indexOf(form) !== place)).toEqual([])
  }
})

test("whole words are marked, once each, and the text is otherwise as it was", () => {
  const text = "Joists on skids: a joist is no joistlike thing, and a guy line is one term. Off-cuts too."
  const pieces = withTerms(text)
  expect(pieces.map((piece) => (typeof piece === "string" ? piece : piece.shown)).join("")).toBe(text)
  expect(pieces.flatMap((piece) => (typeof piece === "string" ? [] : [nameOf(piece.term)]))).toEqual([
    "joist",
    "skid",
    "guy",
    "off-cut",
  ])
  expect(TEMPLATES.length).toBeGreaterThan(0)
})
