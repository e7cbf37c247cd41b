/** Cautions of every small template that says what a member carries. */
export const STRENGTH_CAUTIONS: readonly string[] = [
  "Your local authority and its code decide which spans, loads and grades are accepted, and what has to be submitted. Their table outranks this calculation.",
  "Figures marked as recalled were not seen in print. Confirm them before you build on them.",
  "Where a crowd may gather, where a platform stands high, or where a member is notched, cracked or of unknown grade, have a licensed designer work it out.",
]
