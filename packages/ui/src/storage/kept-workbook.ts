import { type BookDocument, type Problem, readDocument } from "@pegbook/engine"

/** The record of one workbook. */
export interface KeptWorkbook {
  /** Absent: it has its template's. */
  readonly title?: string
  /** When it was last changed, as ISO 8601 in UTC; absent where that was not noted. */
  readonly changed?: string
  /** How many times it was written, so that a tab notices when another one was first; absent counts as none. */
  readonly revision?: number
  readonly document: unknown
}

/** The revision of a record, whatever it holds. */
export function revisionOf(record: unknown): number {
  const revision = (record as { readonly revision?: unknown } | null | undefined)?.revision
  return typeof revision === "number" && Number.isSafeInteger(revision) && revision > 0 ? revision : 0
}

/** A workbook in the list: one that can be opened has a document, any other a problem that says why not. */
export type Shelved = {
  readonly id: string
  readonly title?: string
  readonly changed?: string
} & ({ readonly document: BookDocument } | { readonly problem: Problem })

/** Says whether a document's template is one of ours: a problem if not. */
export type Knows = (document: BookDocument) => Problem | undefined

/** Reads a record; never throws, whatever it holds. */
export function readKept(id: string, record: unknown, knows: Knows): Shelved {
  const members: Readonly<Record<string, unknown>> =
    typeof record === "object" && record !== null ? { ...record } : {}
  const head = {
    id,
    ...(typeof members.title === "string" && members.title !== "" ? { title: members.title } : {}),
    ...(isMoment(members.changed) ? { changed: members.changed } : {}),
  }
  const { document, problems } = readDocument(members.document)
  if (document === undefined) {
    return {
      ...head,
      problem: problems[0] ?? { code: "file_unreadable", at: {}, reason: "It is not a workbook." },
    }
  }
  const problem = knows(document)
  return problem === undefined ? { ...head, document } : { ...head, problem }
}

function isMoment(value: unknown): value is string {
  return typeof value === "string" && !Number.isNaN(Date.parse(value))
}

/** A title that none of these has: "Shed base", then "Shed base 2". */
export function freshTitle(title: string, taken: readonly string[]): string {
  let fresh = title
  for (let number = 2; taken.includes(fresh); number++) fresh = `${title} ${number}`
  return fresh
}
