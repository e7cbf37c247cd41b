import type { TableEntry } from "@pegbook/engine"
import { DECK_SPANS, DESIGN_VALUES, INCISED_SPECIES } from "../sources-strength.ts"
import { figureTable } from "./figure-table.ts"

/** Species, whether it is incised before it is treated, and its name in the Canadian standard ("-": not there). */
const TRAITS = [
  ["Douglas Fir-Larch", "yes", "D Fir-L"],
  ["Hem-Fir", "yes", "Hem-Fir"],
  ["Spruce-Pine-Fir", "yes", "S-P-F"],
  ["Spruce-Pine-Fir (South)", "yes", "-"],
  ["Southern Pine", "no", "-"],
  ["Redwood", "no", "-"],
  ["Western Cedars", "no", "-"],
  ["Northern Species", "no", "Northern"],
  ["Western Woods", "yes", "-"],
  ["Eastern Softwoods", "yes", "-"],
] as const

export const INCISED_GROUP = "Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir"
const SOFT_GROUP = "Redwood, Western Cedars, Ponderosa Pine, Red Pine"

/** Other names, and the groups that span tables print as one row. Ponderosa and red pine are graded as Northern Species. */
const GROUPS: readonly (readonly [group: string, members: readonly string[]])[] = [
  ["S-P-F", ["Spruce-Pine-Fir"]],
  ["D Fir-L", ["Douglas Fir-Larch"]],
  ["Northern", ["Northern Species"]],
  [INCISED_GROUP, ["Douglas Fir-Larch", "Hem-Fir", "Spruce-Pine-Fir"]],
  [SOFT_GROUP, ["Redwood", "Western Cedars", "Northern Species"]],
]

/** Species that stand by themselves in the tables. */
export const SINGLE_SPECIES: readonly string[] = TRAITS.map(([name]) => name)

/** What may be entered as a species: single ones, then groups. */
export const SPECIES: readonly string[] = [...SINGLE_SPECIES, ...GROUPS.map(([group]) => group)]

/** The species of each group, one a row; rows of a group stand together. `weaker`: a further member of the first group. */
export function speciesMembers(name: string, weaker: readonly string[] = []): TableEntry {
  const all: readonly (readonly [string, readonly string[]])[] = [
    ...TRAITS.map(([species]) => [species, [species]] as const),
    ...GROUPS.map(([group, members]) =>
      group === INCISED_GROUP ? ([group, [...members, ...weaker]] as const) : ([group, members] as const),
    ),
  ]
  return figureTable({
    name,
    label: "Species in each group",
    why: "A published table prints one span for several species: the least of them, so that any may be bought.",
    sources: [DECK_SPANS],
    columns: {
      group: {
        label: "Group",
        measure: "text",
        why: "The name under which a table lists it; one species is a group of one.",
      },
      member: { label: "Species", measure: "text", why: "A species whose strength counts." },
    },
    rows: all.flatMap(([group, members]) => members.map((member) => ({ group, member }))),
  })
}

export const speciesTraits: TableEntry = figureTable({
  name: "species_traits",
  label: "How each species is treated, and its Canadian name",
  why: "Wood that preservative hardly enters is cut with small slits first. The slits cost strength, so only such species lose it.",
  sources: [INCISED_SPECIES, DESIGN_VALUES],
  columns: {
    species: { label: "Species", measure: "text", why: "The species or the group sold under one name." },
    incised: {
      label: "Incised before treating",
      measure: "yes_no",
      why: "Whether treated wood of it has rows of small slits.",
    },
    csa_name: {
      label: "Name in Canada",
      measure: "text",
      why: "The name in the Canadian standard; a dash where it has none here.",
    },
  },
  rows: TRAITS.map(([species, incised, csa_name]) => ({ species, incised, csa_name })),
})
