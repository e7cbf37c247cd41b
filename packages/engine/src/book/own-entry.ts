import type { MeasureId } from "../units/measure.ts"
import { MEASURES } from "../units/measures.ts"
import { z } from "./zod.ts"

const Text = z.string().check(z.maxLength(2_000))
const Name = z.string().check(z.minLength(1), z.maxLength(100))
const Formula = z.string().check(z.maxLength(8_000))

const SourceSchema = z.looseObject({
  kind: z.enum(["standard", "handbook", "measured", "geometry", "common_practice", "memory", "user"]),
  title: Text,
  edition: z.exactOptional(Text),
  place: z.exactOptional(Text),
  origin: z.exactOptional(z.enum(["read", "memory"])),
  record: z.exactOptional(Text),
  note: z.exactOptional(Text),
})

const described = {
  name: Name,
  label: Text,
  why: z.exactOptional(Text),
  sources: z.exactOptional(z.array(SourceSchema).check(z.maxLength(20))),
}

const Measured = z.enum(Object.keys(MEASURES) as [MeasureId, ...MeasureId[]])

/**
 * An entry of the user's own, as it is saved. `measure` may be absent only in a draft: what is saved always has it. A
 * column is named within its table; everywhere else its name is `table.name`.
 */
export const OwnEntrySchema = z.discriminatedUnion("kind", [
  z.looseObject({
    ...described,
    kind: z.literal("input"),
    measure: Measured,
    default: z.nullable(Text),
    least: z.exactOptional(Text),
    most: z.exactOptional(Text),
    choices: z.exactOptional(z.array(Text).check(z.minLength(1), z.maxLength(200))),
    list: z.exactOptional(z.literal(true)),
  }),
  z.looseObject({ ...described, kind: z.literal("figure"), measure: Measured, value: Text }),
  z.looseObject({
    ...described,
    kind: z.literal("formula"),
    measure: z.exactOptional(Measured),
    formula: Formula,
  }),
  z.looseObject({
    ...described,
    kind: z.literal("column"),
    table: Name,
    measure: z.exactOptional(Measured),
    formula: Formula,
  }),
  z.looseObject({
    ...described,
    kind: z.literal("check"),
    measure: z.exactOptional(Measured),
    demand: Formula,
    limit: Formula,
    sense: z.enum(["at_most", "at_least"]),
    near: z.exactOptional(Formula),
    covered: z.exactOptional(Formula),
    advice: z.exactOptional(z.array(Text).check(z.maxLength(20))),
  }),
])

/** What a user adds: an input, a figure with its source, a formula, a column of an existing table, or a check. */
export type OwnEntry = z.infer<typeof OwnEntrySchema>

/** The name by which formulas, edits and views know it. */
export function ownName(entry: OwnEntry): string {
  return entry.kind === "column" ? `${entry.table}.${entry.name}` : entry.name
}
