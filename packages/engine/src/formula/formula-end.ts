/** What is found where a formula stops too early. */
export const FORMULA_END = "the end of the formula"
