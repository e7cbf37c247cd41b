import type { Section } from "@pegbook/engine"
import { USER } from "../sources.ts"
import { INCISED_SPECIES, WET_SERVICE } from "../sources-strength.ts"
import { GRADES } from "./design-values.ts"
import { SPECIES } from "./species.ts"

/**
 * What timber it is and where it stands: the inputs that every member's strength leans on.
 * Gives: species, grade, wet_service, incised.
 */
export const timberKind: Section = {
  id: "timber-kind",
  title: "What timber it is",
  says: "The stamp on the piece says the species and the grade. Both decide what it carries.",
  entries: [
    {
      kind: "input",
      name: "species",
      label: "Species or group",
      measure: "text",
      default: "Douglas Fir-Larch, Hem-Fir, Spruce-Pine-Fir",
      choices: SPECIES,
      why: "Read it on the stamp. Where you do not know which of several the yard will send, choose the group: its least species counts.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "grade",
      label: "Grade",
      measure: "text",
      default: "No.2",
      choices: GRADES,
      why: "No.2 is what most yards keep. Some stamps join two grades, as No.1/No.2; such a species is found under either.",
      sources: [USER],
    },
    {
      kind: "input",
      name: "wet_service",
      label: "Out of doors or damp",
      measure: "yes_no",
      default: "yes",
      why: "Yes where rain or ground damp keeps the wood above 19 % moisture for long, as under most decks.",
      sources: [USER, WET_SERVICE],
    },
    {
      kind: "input",
      name: "incised",
      label: "Treated with incising",
      measure: "yes_no",
      default: "yes",
      why: "Look for rows of small slits in treated timber. The answer only counts for species that are incised at all.",
      sources: [USER, INCISED_SPECIES],
    },
  ],
}
