import { expect, test } from "vitest"
import { readPreferences, USUAL_PREFERENCES } from "../../src/storage/preferences.ts"

test("preferences come back as they were kept", () => {
  const kept = { look: "dark", guideDismissed: true } as const
  expect(readPreferences(structuredClone(kept))).toEqual(kept)
})

test.each([[undefined], [null], ["dark"], [{ look: "purple", guideDismissed: "yes" }]])(
  "%j gives the usual ones",
  (kept) => {
    expect(readPreferences(kept)).toEqual(USUAL_PREFERENCES)
  },
)
