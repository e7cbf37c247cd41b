import type { Problem } from "../problems/problem.ts"
import { type Migration, migrate } from "./migrations.ts"
import { OwnEntrySchema } from "./own-entry.ts"
import { notPlainData } from "./plain-data.ts"
import { type SchemaFault, schemaFault } from "./schema-fault.ts"
import { z } from "./zod.ts"

export const DOCUMENT_FORMAT = "pegbook-workbook"
export const DOCUMENT_VERSION = 3

const Title = z.string().check(z.maxLength(200))
const Name = z.string().check(z.maxLength(200))
const Typed = z.string().check(z.maxLength(2_000))
const Id = z.string().check(z.minLength(1), z.maxLength(100))
const Rows = z.array(z.record(Name, Typed)).check(z.maxLength(20_000))
const System = z.enum(["us", "metric"])
const Place = z.int().check(z.gte(0), z.lte(100_000))

const ScenarioSchema = z.looseObject({
  id: Id,
  title: Title,
  /** What was typed for each input, and over figures, formulas and cells of tables of figures, with its unit. */
  typed: z.record(Name, Typed),
  /** Rows of the entered tables. */
  tables: z.record(Name, Rows),
  /** Refuses edits: what was settled on. */
  sealed: z.exactOptional(z.literal(true)),
})

/** What a person ticked and noted of one stage of the work. A slip in one of these costs that one, and no other. */
const StageProgressSchema = z.looseObject({
  done: z.catch(z.optional(z.boolean()), undefined),
  note: z.catch(z.optional(z.string()), undefined),
  /** Things of this stage that are at hand, by what the stage calls them. */
  here: z.catch(z.optional(z.array(Name).check(z.maxLength(200))), undefined),
})

/** One thing that a step of the history made otherwise; `null`: it was not there, or is not any more. */
const ChangeSchema = z.discriminatedUnion("of", [
  z.looseObject({
    of: z.literal("typed"),
    scenario: Id,
    name: Name,
    from: z.nullable(Typed),
    to: z.nullable(Typed),
  }),
  /** `start`: where in the table the rows stand; with `null` on a side, all the rows, from 0. */
  z.looseObject({
    of: z.literal("rows"),
    scenario: Id,
    name: Name,
    start: Place,
    from: z.nullable(Rows),
    to: z.nullable(Rows),
  }),
  z.looseObject({ of: z.literal("title"), scenario: Id, from: Title, to: Title }),
  z.looseObject({
    of: z.literal("scenario"),
    place: Place,
    from: z.nullable(ScenarioSchema),
    to: z.nullable(ScenarioSchema),
  }),
  z.looseObject({ of: z.literal("current"), from: Id, to: Id }),
  z.looseObject({ of: z.literal("units"), from: System, to: System }),
  z.looseObject({
    of: z.literal("own"),
    place: Place,
    from: z.nullable(OwnEntrySchema),
    to: z.nullable(OwnEntrySchema),
  }),
  z.looseObject({
    of: z.literal("progress"),
    stage: Name,
    from: z.nullable(StageProgressSchema),
    to: z.nullable(StageProgressSchema),
  }),
])

const StepSchema = z.looseObject({
  /** Counts up; a step keeps its number while it is undone. */
  number: z.int().check(z.gte(1)),
  /** Milliseconds since 1970, UTC. */
  at: z.number(),
  changes: z.array(ChangeSchema).check(z.maxLength(100_000)),
})

const Steps = z.array(StepSchema).check(z.maxLength(2_000))

/**
 * A saved workbook. Values are kept as they were typed, with their units, so that a file can be read by eye
 * and no rounding is done twice. Members that this version does not know are kept and written back.
 */
export const DocumentSchema = z.looseObject({
  format: z.literal(DOCUMENT_FORMAT),
  version: z.literal(DOCUMENT_VERSION),
  template: z.string().check(z.minLength(1), z.maxLength(100)),
  unitSystem: System,
  /** Id of the scenario that was open. */
  current: z.string(),
  scenarios: z.array(ScenarioSchema).check(z.minLength(1), z.maxLength(200)),
  /** Entries that the user added. */
  own: z.array(OwnEntrySchema).check(z.maxLength(20_000)),
  /** What was done, the oldest first, and what was undone since, the next to be done again last. */
  history: z.looseObject({ past: Steps, future: Steps }),
  /** By the stage's id. A slip in it must not keep the numbers from being read. */
  progress: z.catch(z.optional(z.record(Name, z.catch(StageProgressSchema, {}))), undefined),
})

export type BookDocument = z.infer<typeof DocumentSchema>
export type StageProgress = z.infer<typeof StageProgressSchema>
export type ScenarioDocument = z.infer<typeof ScenarioSchema>
export type Change = z.infer<typeof ChangeSchema>
export type Step = z.infer<typeof StepSchema>

/** Version 2 brought the user's own entries, the history, and sealed scenarios. */
const toVersion2: Migration = (json) => ({ ...json, own: [], history: { past: [], future: [] } })

/** Version 3 brought what is ticked and noted into the history: an older program would refuse such a step as no workbook's. */
const toVersion3: Migration = (json) => ({ ...json })

/** Steps from each older version to the next, in order; the first leads from version 1 to version 2. */
const MIGRATIONS: readonly Migration[] = [toVersion2, toVersion3]

/** Reads what was saved, by this or an older version. Never throws; a problem says why it could not be read. */
export function readDocument(json: unknown): {
  readonly document?: BookDocument
  readonly problems: readonly Problem[]
} {
  try {
    const reason = notPlainData(json)
    if (reason !== undefined) return unreadable({ reason })
    return readPlain(json)
  } catch {
    // Only an object that answers with an error when it is asked for a member gets here.
    return unreadable({ reason: "Its members cannot be read." })
  }
}

function readPlain(json: unknown): ReturnType<typeof readDocument> {
  const migrated = migrate(json, DOCUMENT_FORMAT, DOCUMENT_VERSION, MIGRATIONS)
  if ("problem" in migrated) return { problems: [migrated.problem] }
  const parsed = DocumentSchema.safeParse(migrated.json)
  if (parsed.success) return { document: parsed.data, problems: [] }
  return unreadable(schemaFault(parsed.error))
}

function unreadable(fault: SchemaFault): ReturnType<typeof readDocument> {
  return { problems: [{ code: "file_unreadable", at: {}, ...fault }] }
}
