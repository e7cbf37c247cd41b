import type { Entry, Section } from "@pegbook/engine"
import { adjustments } from "./adjustments.ts"
import { allowableStress } from "./allowable-stress.ts"
import { designValues } from "./design-values.ts"
import type { Member } from "./member.ts"
import { type Demands, memberCapacity, memberChecks } from "./member-checks.ts"
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

/**
 * A joist, beam or skid that is checked for bending, shear, bearing and sag, by allowable stress.
 *
 * A template that wants it has the sections {@link timberKind} (species, grade, wet_service, incised) and
 * {@link strengthFigures}, a figure near_limit_share, the size, thickness and depth that the member names, the entry
 * named as `sharing` (for joists: `IF(joist_spacing <= repetitive_spacing_most; repetitive_factor; 1)`) and the
 * entries named as demands: a moment, a shear, a reaction on one seat, a deflection, its limit, and a seat's length.
 */
export function memberStrength(member: Member, demands: Demands): Section {
  const parts = [allowableStress(member), memberCapacity(member), memberChecks(member, demands)]
  return {
    id: `${member.prefix}-strength`,
    title: `${member.label}: strength`,
    says: "What the timber may bear, what the piece carries, and whether that is enough.",
    entries: parts.flatMap((part) => part.entries),
  }
}
