import type { Section } from "@pegbook/engine"
import { fastenerStrength } from "../parts/fastener-strength.ts"
import { GUARD_JOINT } from "../parts/guard-posts.ts"
import { windOn, windStep } from "../parts/wind.ts"
import { COMMON_PRACTICE, USER } from "../sources.ts"
import { SLIDING } from "../sources-actions.ts"

const onShed = windOn({
  noun: "shed",
  length: "platform_length",
  width: "platform_width",
  weight: "building_weight",
  stays: { value: "1", why: "Of the weight that you entered, which is of the empty shed." },
  platform: { value: "8 psf", source: COMMON_PRACTICE },
  friction: {
    value: "0.35",
    why: "Skids on gravel, taken as for blocks. On sand it is 0.25.",
    source: SLIDING,
  },
})

/** Whether the shed and its base stay where they are. */
export const wind: Section = {
  ...onShed,
  entries: [
    {
      kind: "input",
      name: "building_weight",
      label: "Weight of the shed, empty",
      measure: "force",
      default: "900 lb",
      least: "0 lb",
      most: "40000 lb",
      why: "Without what you keep in it: you may clear it out before the storm. Ask the maker, or add up the timber.",
      sources: [USER],
    },
    ...onShed.entries,
  ],
}

/** The bolts of guard posts, and the ties between joists and skids, which hand the lift to what is anchored. */
export const fasteners: Section = fastenerStrength([
  {
    joint: "ties along one outer skid, against the wind's lift",
    fastener: "nail",
    way: "pushed",
    diameter: "0.148 in",
    holds: "1.45 in",
    through: "0.05 in",
    steel: true,
    force: windStep("tie_force"),
    count: "tie_count / skid_count * nails_per_connector / 2",
    lasts: "wind",
    remedies: [{ input: "nails_per_connector", toward: "more", step: "2" }],
  },
  GUARD_JOINT,
])
