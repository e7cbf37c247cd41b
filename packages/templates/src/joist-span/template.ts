import type { Definition } from "@pegbook/engine"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import { OFFERS } from "../offers.ts"
import { allowableStress } from "../strength/allowable-stress.ts"
import { STRENGTH_CAUTIONS } from "../strength/cautions.ts"
import { limitStateFigures, limitStates } from "../strength/limit-states.ts"
import { loadsAndLimits } from "../strength/loads-and-limits.ts"
import type { Member } from "../strength/member.ts"
import { memberCapacity, memberChecks } from "../strength/member-checks.ts"
import { strengthFigures } from "../strength/member-strength.ts"
import { nearLimit } from "../strength/near-limit.ts"
import { timberKind } from "../strength/timber-kind.ts"
import { checkedSpan } from "./checked-span.ts"
import { joistInputs } from "./inputs.ts"
import { joistSpans } from "./spans.ts"
import { vibration } from "./vibration.ts"

const joist: Member = {
  prefix: "joist",
  label: "Joist",
  size: "joist_size",
  thickness: "joist_thickness",
  depth: "joist_depth",
  sharing: "joist_repetitive_factor",
}

/** How far a joist may span, by open calculation that gives what span tables print. */
export const joistSpan: Definition = {
  ...OFFERS["joist-span"],
  unitSystem: "us",
  sections: [
    timberKind,
    joistInputs,
    joistSpans,
    checkedSpan,
    memberChecks(
      joist,
      {
        moment: "joist_moment",
        shear: "joist_reaction",
        reaction: "joist_reaction",
        deflection: "joist_deflection",
        deflectionLimit: "joist_deflection_allowed",
        seat: "joist_seat",
      },
      { covered: "joist_strength_known", bearingCheck: "bearing_check" },
    ),
    memberCapacity(joist, {
      fb: "joist_spans.fb",
      fv: "joist_spans.fv",
      fcPerp: "joist_spans.fc_perp",
      e: "joist_spans.e",
    }),
    allowableStress(joist, "by_allowable_stress"),
    limitStates(joist, "limit_states"),
    vibration,
    {
      ...strengthFigures,
      entries: [...strengthFigures.entries, ...limitStateFigures, ...loadsAndLimits, nearLimit, dressedSizes],
    },
  ],
  cautions: STRENGTH_CAUTIONS,
}
