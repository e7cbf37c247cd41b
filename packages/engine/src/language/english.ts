import { inWords } from "../problems/in-words.en.ts"
import { measure } from "../units/measures.ts"
import { ENGLISH_ENTRIES } from "./entry-words.en.ts"
import type { Dictionary, Language } from "./language.ts"

/** What everything is written and kept in. */
export const ENGLISH: Language = {
  id: "en",
  tag: "en",
  number: (text) => text,
  kept: (typed) => typed,
  phrases: {
    yes: "yes",
    no: "no",
    firstPlan: "First plan",
    noRows: "no rows",
    listed: ", ",
    rows: (count) => (count === 1 ? "1 row" : `${count} rows`),
    values: (count) => `${count} values`,
    between: (least, most) => `${least} to ${most}`,
    orMore: (least) => `${least} or more`,
    orLess: (most) => `${most} or less`,
    measure: (id) => measure(id).says,
  },
  entries: ENGLISH_ENTRIES,
  inWords,
}

export const ENGLISH_TEXTS: Dictionary = { text: (english) => english, english: (text) => text }
