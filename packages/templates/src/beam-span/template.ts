import type { Definition } from "@pegbook/engine"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import { OFFERS } from "../offers.ts"
import { allowableStress } from "../strength/allowable-stress.ts"
import { STRENGTH_CAUTIONS } from "../strength/cautions.ts"
import { loadsAndLimits } from "../strength/loads-and-limits.ts"
import type { Member } from "../strength/member.ts"
import { memberCapacity, memberChecks } from "../strength/member-checks.ts"
import { strengthFigures } from "../strength/member-strength.ts"
import { nearLimit } from "../strength/near-limit.ts"
import { speciesMembers } from "../strength/species.ts"
import { timberKind } from "../strength/timber-kind.ts"
import { beamInputs } from "./inputs.ts"
import { beamSpans } from "./spans.ts"

const beam: Member = {
  prefix: "beam",
  label: "Beam",
  size: "beam_size",
  thickness: "beam_ply_counted",
  depth: "beam_depth",
  plies: "beam_plies",
  sharing: "beam_ply_factor",
  thinFactorFrom: "beam_thin_factor_depth",
  members: "beam_species_members",
}

/** How far a deck beam may span between posts, by open calculation that gives what beam tables print. */
export const beamSpan: Definition = {
  ...OFFERS["beam-span"],
  unitSystem: "us",
  sections: [
    timberKind,
    beamInputs,
    beamSpans,
    memberChecks(beam, {
      moment: "beam_moment",
      shear: "beam_reaction",
      reaction: "beam_reaction",
      deflection: "beam_deflection",
      deflectionLimit: "beam_deflection_allowed",
      seat: "beam_seat",
    }),
    memberCapacity(beam),
    allowableStress(beam),
    {
      ...strengthFigures,
      // The beam table's first group comes out only with the weaker southern spruces in it.
      entries: [
        ...strengthFigures.entries.filter(({ name }) => name !== "species_members"),
        speciesMembers("beam_species_members", ["Spruce-Pine-Fir (South)"]),
        ...loadsAndLimits,
        nearLimit,
        dressedSizes,
      ],
    },
  ],
  cautions: STRENGTH_CAUTIONS,
}
