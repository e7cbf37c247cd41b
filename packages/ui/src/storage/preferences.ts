export type Look = "device" | "light" | "dark"

/** What a person prefers, whatever workbook is open. */
export interface Preferences {
  readonly look: Look
  readonly guideDismissed: boolean
}

export const USUAL_PREFERENCES: Preferences = { look: "device", guideDismissed: false }

/** Reads what was kept, member by member; what is missing or strange is as usual. */
export function readPreferences(kept: unknown): Preferences {
  if (typeof kept !== "object" || kept === null) return USUAL_PREFERENCES
  const { look, guideDismissed } = kept as Readonly<Record<string, unknown>>
  return {
    look: look === "light" || look === "dark" ? look : USUAL_PREFERENCES.look,
    guideDismissed: typeof guideDismissed === "boolean" ? guideDismissed : USUAL_PREFERENCES.guideDismissed,
  }
}
