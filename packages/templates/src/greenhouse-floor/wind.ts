import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { fastenerStrength } from "../parts/fastener-strength.ts"
import { GUARD_JOINT } from "../parts/guard-posts.ts"
import { windOn, windStep } from "../parts/wind.ts"
import { SLIDING } from "../sources-actions.ts"
import { practice } from "../sources-frame.ts"

/** Whether the greenhouse and its floor stay where they are. */
export const wind: Section = adapt(
  windOn({
    noun: "greenhouse",
    length: "house_length",
    width: "house_width",
    weight: "house_weight",
    stays: {
      value: "0.5",
      why: "Frame and glass, without pots and benches, which may be gone when the storm comes.",
    },
    platform: { value: "0.38 kPa", source: practice("eight pounds a square foot for a light timber floor") },
    friction: {
      value: "0.25",
      why: "Bearers tied to slabs on stone over sandy ground. Tie them down: timber on a slab slides sooner.",
      source: SLIDING,
    },
  }),
  { defaults: { wind_speed: "185 km/h", building_wall_height: "1.5 m", building_roof_rise: "0.8 m" } },
)

/** The bolts of guard posts, and the ties between joists and bearers, which hand the lift to what is anchored. */
export const fasteners: Section = fastenerStrength([
  {
    joint: "ties along one outer bearer, against the wind's lift",
    fastener: "nail",
    way: "pushed",
    diameter: "3.75 mm",
    holds: "37 mm",
    through: "1.2 mm",
    steel: true,
    force: windStep("tie_force"),
    count: "tie_count / skid_count * nails_per_connector / 2",
    lasts: "wind",
    remedies: [{ input: "nails_per_connector", toward: "more", step: "2" }],
  },
  GUARD_JOINT,
])
