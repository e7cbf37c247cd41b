import type { Source } from "../../definition/source.ts"

const SP811_TITLE = "NIST Special Publication 811, Guide for the Use of the International System of Units"

/** A factor in NIST SP 811, Appendix B. `record` where it was seen when it was written down. */
export function sp811(note: string, record?: string): Source {
  return {
    kind: "standard",
    title: SP811_TITLE,
    edition: "2008",
    place: "Appendix B",
    note,
    ...(record === undefined ? { origin: "memory" } : { origin: "read", record }),
  }
}

/** A definition in NIST Handbook 44, Appendix C. */
export function hb44(note: string): Source {
  return {
    kind: "standard",
    title: "NIST Handbook 44, Specifications, Tolerances, and Other Technical Requirements",
    place: "Appendix C, General Tables of Units of Measurement",
    origin: "memory",
    note,
  }
}

/** A unit of the SI, or one that is accepted beside it. */
export function siUnit(note: string): Source {
  return {
    kind: "standard",
    title: "The International System of Units (SI), BIPM brochure",
    edition: "9th edition",
    origin: "memory",
    note,
  }
}

/** A way of writing a plain number or money that needs no authority. */
export const PLAIN_WRITING: Source = {
  kind: "common_practice",
  title: "Common practice, no source",
}
