/**
 * Marks that people type in many ways, each turned into one: quotes and primes, dashes, spaces, and the
 * one-character fractions. Superscript figures stay, because they belong to a unit.
 */
export function plainMarks(text: string): string {
  return text
    .replace(/[’‘′ʹ´`]/g, "'")
    .replace(/[”“″ʺ〃]|''/g, '"')
    .replace(/[−–—‐‑]/g, "-")
    .replace(/⁄/g, "/")
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (fraction) => ` ${fraction.normalize("NFKC").replace("⁄", "/")}`)
    .replace(/\s+/g, " ")
    .trim()
}

/** The form in which spellings are compared: "sq. ft.", "Sq-ft" and "sq ft" differ in case only. */
export function spellingKey(spelling: string): string {
  return plainMarks(spelling)
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/\^/g, "")
    .replace(/\bper\b/gi, "/")
    .replace(/[·⋅∙•*]/g, " ")
    .replace(/(?<=\p{L})[.-](?=\p{L})/gu, " ")
    .replace(/\./g, "")
    .replace(/\s*\/\s*/g, "/")
    .replace(/° /g, "°")
    .replace(/\s+/g, " ")
    .trim()
}

/**
 * Whether capitals may be ignored: "FT", "Ft" and "ft" are one, but a capital in the middle ("mPa") says
 * that the writer meant the case, and a thousandth must not be read as a million.
 */
export function caseIsCasual(key: string): boolean {
  return (key.match(/\p{L}+/gu) ?? []).every((word) => /^\p{L}\p{Ll}*$|^\p{Lu}+$/u.test(word))
}
