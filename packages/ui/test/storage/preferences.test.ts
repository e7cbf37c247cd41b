import { expect, test } from "vitest"
import {
  proposedLanguage,
  proposedUnits,
  readPreferences,
  USUAL_PREFERENCES,
} from "../../src/storage/preferences.ts"

test("preferences come back as they were kept", () => {
  const kept = {
    look: "dark",
    guideDismissed: true,
    unitSystem: "metric",
    language: "fr",
    current: "a",
  } as const
  expect(readPreferences(structuredClone(kept))).toEqual(kept)
})

test.each([
  [undefined],
  [null],
  ["dark"],
  [{ look: "purple", guideDismissed: "yes", unitSystem: "ells", language: "tlh", current: 3 }],
])("%j gives the usual ones", (kept) => {
  expect(readPreferences(kept)).toEqual(USUAL_PREFERENCES)
})

// Which regions measure in feet and inches: common practice, no source.
test.each([
  ["en-US", "us"],
  ["es-US", "us"],
  ["en", "us"],
  ["en-GB", "metric"],
  ["de", "metric"],
  ["not a language", "metric"],
])("to a reader of %s, %s is proposed", (language, system) => {
  expect(proposedUnits([language, "en-US"])).toBe(system)
})

test("without a language metric is proposed", () => {
  expect(proposedUnits([])).toBe("metric")
})

test.each([
  [["fr-CA", "en-CA"], "fr"],
  [["de-AT", "fr", "en"], "fr"],
  [["en-CA", "fr-CA"], "en"],
  [["de"], "en"],
  [[], "en"],
])("a reader of %j begins in %s", (languages, language) => {
  expect(proposedLanguage(languages)).toBe(language)
})
