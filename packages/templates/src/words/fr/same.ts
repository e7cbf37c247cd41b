/** What reads alike in both languages: places, grades, and names of tests and rules. */
export const same: readonly string[] = ["Ontario", "Connecticut", "OSB", "IRC", "S-P-F", "D Fir-L"]
