import { z } from "zod"
import type { Problem } from "../problems/problem.ts"
import { type Migration, migrate } from "./migrations.ts"

// Otherwise it tries to run text as code, which a page with a strict policy forbids and reports.
z.config({ jitless: true })

export const DOCUMENT_FORMAT = "pegbook-workbook"
export const DOCUMENT_VERSION = 1

const Title = z.string().max(200)
const Name = z.string().max(200)
const Typed = z.string().max(2_000)

const ScenarioSchema = z.looseObject({
  id: z.string().min(1).max(100),
  title: Title,
  /** What was typed for each input and each overridden figure, with its unit. */
  typed: z.record(Name, Typed),
  /** Rows of the entered tables. */
  tables: z.record(Name, z.array(z.record(Name, Typed)).max(20_000)),
})

/** What a person ticked and noted of one stage of the work. */
const StageProgressSchema = z.looseObject({
  done: z.boolean().optional(),
  note: z.string().max(4_000).optional(),
  /** Things of this stage that are at hand, by what the stage calls them. */
  here: z.array(Name).max(200).optional(),
})

/**
 * A saved workbook. Values are kept as they were typed, with their units, so that a file can be read by eye
 * and no rounding is done twice. Members that this version does not know are kept and written back.
 */
export const DocumentSchema = z.looseObject({
  format: z.literal(DOCUMENT_FORMAT),
  version: z.literal(DOCUMENT_VERSION),
  template: z.string().min(1).max(100),
  unitSystem: z.enum(["us", "metric"]),
  /** Id of the scenario that was open. */
  current: z.string(),
  scenarios: z.array(ScenarioSchema).min(1).max(200),
  /** By the stage's id. A slip in it must not keep the numbers from being read. */
  progress: z.record(Name, StageProgressSchema).optional().catch(undefined),
})

export type BookDocument = z.infer<typeof DocumentSchema>
export type StageProgress = z.infer<typeof StageProgressSchema>
export type ScenarioDocument = z.infer<typeof ScenarioSchema>

/** Steps from each older version to the next, in order; the first leads from version 1 to version 2. */
const MIGRATIONS: readonly Migration[] = []

/** Reads what was saved, by this or an older version. Never throws; a problem says why it could not be read. */
export function readDocument(json: unknown): {
  readonly document?: BookDocument
  readonly problems: readonly Problem[]
} {
  const migrated = migrate(json, DOCUMENT_FORMAT, DOCUMENT_VERSION, MIGRATIONS)
  if ("problem" in migrated) return { problems: [migrated.problem] }
  const parsed = DocumentSchema.safeParse(migrated.json)
  if (parsed.success) return { document: parsed.data, problems: [] }
  const issue = parsed.error.issues[0]
  const where =
    issue === undefined || issue.path.length === 0 ? "" : `${issue.path.map(String).join(" → ")}: `
  return {
    problems: [
      { code: "file_unreadable", at: {}, reason: `${where}${issue?.message ?? "It is not a workbook"}.` },
    ],
  }
}
