import type { Entry, InputEntry, Section } from "@pegbook/engine"
import { USER } from "../sources.ts"
import { CSA_RESISTANCE, DESIGN_VALUES, LOAD_DURATION } from "../sources-strength.ts"
import { adjustments } from "../strength/adjustments.ts"
import { designValues } from "../strength/design-values.ts"
import { limitStateFigures } from "../strength/limit-states.ts"
import { loadsAndLimits } from "../strength/loads-and-limits.ts"
import { flatFactors, sizeClasses, sizeFactors } from "../strength/sizes.ts"
import { SINGLE_SPECIES, speciesTraits } from "../strength/species.ts"
import { timberKind } from "../strength/timber-kind.ts"

/** One species that the tables of both methods hold, and that the yards of both countries sell. */
const STARTS_WITH = "Hem-Fir"

const loadDurations = adjustments.find(({ name }) => name === "load_durations")
const DURATIONS: readonly string[] =
  loadDurations?.kind === "table"
    ? (loadDurations.columns.find(({ name }) => name === "duration")?.values ?? [])
    : []

const more: readonly InputEntry[] = [
  {
    kind: "input",
    name: "load_duration",
    label: "How long the load lasts in all",
    measure: "text",
    default: "ten years",
    choices: DURATIONS,
    why: "Over the whole life of the platform, added up. Ten years stands for people.",
    sources: [LOAD_DURATION],
  },
  {
    kind: "input",
    name: "design_method",
    label: "Method of design",
    measure: "text",
    default: "allowable stress",
    choices: ["allowable stress", "limit states"],
    why: "Allowable stress in the United States, limit states in Canada. The two are never mixed.",
    sources: [DESIGN_VALUES, CSA_RESISTANCE],
  },
]

/** What the timber is: species, grade, wet_service, incised, load_duration, design_method. One species, not a group. */
export const memberTimber: Section = {
  ...timberKind,
  entries: [
    ...timberKind.entries.map(
      (entry): Entry =>
        entry.kind === "input" && entry.name === "species"
          ? {
              ...entry,
              label: "Species",
              default: STARTS_WITH,
              choices: SINGLE_SPECIES,
              why: "Read it on the stamp. Where you do not know which one the yard will send, try each: the worst counts.",
              sources: [USER],
            }
          : entry,
    ),
    ...more,
  ],
}

const tables = (entries: readonly Entry[]): readonly Entry[] => entries.filter(({ kind }) => kind === "table")

/** The published tables that the members lean on. */
export const publishedStrengths: Section = {
  id: "published-strengths",
  title: "Published strengths",
  says: "What others have measured and agreed on. Every cell can be changed, and then says so.",
  entries: [
    designValues,
    sizeClasses,
    flatFactors,
    sizeFactors,
    speciesTraits,
    ...tables(adjustments).filter(({ name }) => name !== "temperature_factors"),
    ...tables(limitStateFigures),
    ...loadsAndLimits,
  ],
}
