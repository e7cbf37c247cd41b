import type { z } from "./zod.ts"

/** What is wrong with something that came from outside, and in which part of it. */
export interface SchemaFault {
  /** From the outside in, "own → 0 → label"; absent where it is the whole. */
  readonly part?: string
  /** One of a few sentences, so that each has its like in other languages. */
  readonly reason: string
}

const NOT_OF_KIND: Readonly<Record<string, string>> = {
  string: "It is no text.",
  number: "It is no number.",
  int: "It is no whole number.",
  boolean: "It is neither true nor false.",
  array: "It is no list.",
  object: "It is no object.",
  record: "It is no object.",
}

/** The first thing that a schema found, in the project's own words: the library's are its own, and English. */
export function schemaFault(error: z.core.$ZodError): SchemaFault {
  const [issue] = error.issues
  if (issue === undefined) return { reason: OTHERWISE }
  const reason = reasonOf(issue)
  return issue.path.length === 0 ? { reason } : { part: issue.path.map(String).join(" → "), reason }
}

const OTHERWISE = "It is not as it is saved here."

function reasonOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return NOT_OF_KIND[issue.expected] ?? OTHERWISE
    case "too_big": {
      const most = issue.maximum.toLocaleString("en")
      if (issue.origin === "array") return `It has more than ${most} parts.`
      return issue.origin === "string" ? `It has more than ${most} characters.` : `It is more than ${most}.`
    }
    case "too_small":
      return issue.origin === "array" || issue.origin === "string"
        ? "It is empty."
        : `It is less than ${issue.minimum.toLocaleString("en")}.`
    case "invalid_value":
      return noneOf(issue.values)
    case "invalid_union":
      return "options" in issue && issue.options !== undefined ? noneOf(issue.options) : OTHERWISE
    case "invalid_key":
      return "A name in it is too long."
    default:
      return OTHERWISE
  }
}

const noneOf = (values: readonly unknown[]) => `It is none of: ${values.map(String).join(", ")}.`
