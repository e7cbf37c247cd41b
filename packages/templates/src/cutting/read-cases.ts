import type { z } from "zod"
import { type Case, CaseSchema, KINDS } from "./problem.ts"

/** What was wrong with a case, in one line: which case, which field, what was given, what is accepted, what to do. */
export interface CaseProblem {
  readonly case: string
  readonly field: string
  readonly says: string
}

/** A case read from outside, or the first thing wrong with it. `label` names it where it has no id. Fields that are not known are left out. */
export function readCase(
  given: unknown,
  label: string,
): { readonly case: Case } | { readonly problem: CaseProblem } {
  const id = isRecord(given) && typeof given.id === "string" && given.id !== "" ? given.id : label
  const refuse = (field: string, value: unknown, accepted: string) => ({
    problem: problem(id, field, value, accepted),
  })
  if (!isRecord(given)) return refuse("", given, "an object with id, kind and the fields of its kind")
  const kinds = KINDS.map((kind) => `"${kind}"`).join(", ")
  if (!KINDS.some((kind) => kind === given.kind)) return refuse("kind", given.kind, `one of ${kinds}`)
  const parsed = CaseSchema.safeParse(given)
  if (!parsed.success) {
    const [issue] = parsed.error.issues
    const path = issue?.path ?? []
    return refuse(fieldOf(path), at(given, path), issue === undefined ? "a case" : acceptedBy(issue))
  }
  const wrong = inconsistency(parsed.data)
  return wrong === undefined ? { case: parsed.data } : refuse(...wrong)
}

function isRecord(given: unknown): given is Record<string, unknown> {
  return typeof given === "object" && given !== null && !Array.isArray(given)
}

function problem(id: string, field: string, value: unknown, accepted: string): CaseProblem {
  const given = value === undefined ? "is missing" : `was given ${shortened(JSON.stringify(value))}`
  const where = field === "" ? "the case" : field
  const next = field === "" ? "write it so" : `correct ${field}`
  return {
    case: id,
    field,
    says: `case ${shortened(id)}: ${where} ${given}. Accepted: ${accepted}. Next: ${next} and try again.`,
  }
}

function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}

function fieldOf(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`))
    .join("")
    .replace(/^\./, "")
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, step) => (typeof inside === "object" && inside !== null ? Reflect.get(inside, step) : undefined),
    value,
  )
}

function acceptedBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return issue.expected === "int"
        ? "a whole number"
        : `${/^[aeiou]/.test(issue.expected) ? "an" : "a"} ${issue.expected}`
    case "too_small":
      return `${unitOf(issue.origin)} no less than ${String(issue.minimum)}`
    case "too_big":
      return `${unitOf(issue.origin)} no more than ${String(issue.maximum)}`
    default:
      return "a value of the kind that the help shows"
  }
}

function unitOf(origin: string): string {
  if (origin === "array") return "a list with"
  return origin === "string" ? "a text with a length of" : "a whole number"
}

type Wrong = readonly [field: string, value: unknown, accepted: string]

/** What no single field shows: names given twice, names of nothing, lists that do not go together. */
function inconsistency(one: Case): Wrong | undefined {
  switch (one.kind) {
    case "cut":
      return twice(
        "stocks",
        one.stocks.map(({ id }) => id),
      )
    case "splice":
      return (
        twice(
          "stocks",
          one.stocks.map(({ id }) => id),
        ) ??
        notRising("supports", one.supports) ??
        (one.bearing.length === one.supports.length
          ? undefined
          : ["bearing", one.bearing.length, `one bearing for each of the ${one.supports.length} supports`])
      )
    case "sheet": {
      const covered = one.courses.reduce((sum, height) => sum + height, one.gap * (one.courses.length - 1))
      return covered === one.platform.alongJoists
        ? undefined
        : [
            "courses",
            one.courses,
            `heights that with their gaps fill ${one.platform.alongJoists}; these fill ${covered}`,
          ]
    }
    case "buy":
      return (
        twice(
          "suppliers",
          one.suppliers.map(({ id }) => id),
        ) ??
        twice(
          "lines",
          one.lines.map(({ id }) => id),
        ) ??
        one.offers
          .map(({ line, supplier, breaks }, index): Wrong | undefined => {
            const offer = `offers[${index}]`
            if (!one.lines.some(({ id }) => id === line)) return [`${offer}.line`, line, "the id of a line"]
            if (!one.suppliers.some(({ id }) => id === supplier))
              return [`${offer}.supplier`, supplier, "the id of a supplier"]
            return notRising(
              `${offer}.breaks`,
              breaks.map(({ fromPacks }) => fromPacks),
            )
          })
          .find((wrong) => wrong !== undefined)
      )
  }
}

function twice(list: string, ids: readonly string[]): Wrong | undefined {
  const again = ids.findIndex((id, index) => ids.indexOf(id) < index)
  return again < 0 ? undefined : [`${list}[${again}].id`, ids[again], "an id that no other one has"]
}

function notRising(field: string, values: readonly number[]): Wrong | undefined {
  const at = values.findIndex((value, index) => index > 0 && value <= (values[index - 1] ?? 0))
  return at < 0
    ? undefined
    : [`${field}[${at}]`, values[at], `more than the one before it, ${values[at - 1]}`]
}
