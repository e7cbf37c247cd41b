import type { Entry, Section } from "@pegbook/engine"
import { adjustments } from "./adjustments.ts"
import { designValues } from "./design-values.ts"
import { flatFactors, sizeClasses, sizeFactors } from "./sizes.ts"
import { speciesMembers, speciesTraits } from "./species.ts"

/** The published figures that every member of a workbook leans on; once in a template. */
export const strengthFigures: Section = {
  id: "strength-figures",
  title: "Published strengths and factors",
  says: "What others have measured and agreed on. Every number can be changed, and then says so.",
  entries: [
    ...adjustments,
    designValues,
    sizeClasses,
    sizeFactors,
    flatFactors,
    speciesMembers("species_members"),
    speciesTraits,
  ] satisfies readonly Entry[],
}
