import type { LanguageId, UnitSystem } from "@pegbook/engine"

export type Look = "device" | "light" | "dark"

/** What a person prefers, whatever workbook is open. */
export interface Preferences {
  readonly look: Look
  readonly guideDismissed: boolean
  /** In which new workbooks start; absent until it was chosen. */
  readonly unitSystem?: UnitSystem
  /** Absent until it was chosen. */
  readonly language?: LanguageId
  /** The id of the workbook that was open last. */
  readonly current?: string
}

export const USUAL_PREFERENCES: Preferences = { look: "device", guideDismissed: false }

/** Reads what was kept, member by member; what is missing or strange is as usual. */
export function readPreferences(kept: unknown): Preferences {
  if (typeof kept !== "object" || kept === null) return USUAL_PREFERENCES
  const { look, guideDismissed, unitSystem, language, current } = kept as Readonly<Record<string, unknown>>
  return {
    look: look === "light" || look === "dark" ? look : USUAL_PREFERENCES.look,
    guideDismissed: typeof guideDismissed === "boolean" ? guideDismissed : USUAL_PREFERENCES.guideDismissed,
    ...(unitSystem === "us" || unitSystem === "metric" ? { unitSystem } : {}),
    ...(language === "en" || language === "fr" ? { language } : {}),
    ...(typeof current === "string" ? { current } : {}),
  }
}

/** The language to begin in for who reads these, most wanted first, as the browser names them. */
export function proposedLanguage(languages: readonly string[]): LanguageId {
  const known = languages.map((one) => one.toLowerCase().split("-")[0])
  return known.find((one) => one === "en" || one === "fr") ?? "en"
}

/** The regions that build in feet and inches, by their codes in ISO 3166 (common practice, no source). */
const FEET_AND_INCHES: readonly string[] = ["US", "LR", "MM"]

/** The units to propose to who reads these languages, most wanted first, as the browser names them. */
export function proposedUnits(languages: readonly string[]): UnitSystem {
  const [first = ""] = languages
  try {
    const { region } = new Intl.Locale(first).maximize()
    return region !== undefined && FEET_AND_INCHES.includes(region) ? "us" : "metric"
  } catch {
    return "metric"
  }
}
