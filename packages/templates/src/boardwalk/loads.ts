import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { supportLoadsOn } from "../parts/loads.ts"
import { STATICS } from "../sources.ts"
import { SLEEPERS_ON_STRIPS } from "./walk.ts"

const shared = adapt(supportLoadsOn(SLEEPERS_ON_STRIPS), {
  labels: {
    block_face_needed: "Underside of sleeper that the soil asks for",
    soil_bearing_check: "Can the ground bear the busiest sleeper?",
  },
  whys: {
    support_load_max: "An inner sleeper carries most: it has neighbours on both sides.",
    block_face_needed: "The busiest sleeper's load over what the soil bears.",
    soil_bearing_check:
      "Ground that is pressed harder than it bears gives way slowly, and the walk sags there.",
    live_load:
      "The load that comes and goes: people, barrows. A walk that the public crowds onto is counted heavier than a family's deck (40 lb per square foot in one house code).",
    dead_load: "Timber, spread over the area. Ten pounds a square foot is usual for timber floors.",
  },
  defaults: { live_load: "40 psf" },
  advice: {
    soil_bearing_check: [
      "Give each sleeper an underside of at least {block_face_needed}: a wider or a longer one.",
      "Or lay the sleepers no more than {sleeper_spacing_for_soil} apart.",
    ],
  },
})

/** What the walk carries, and whether the ground under the sleepers bears it. */
export const loads: Section = {
  ...shared,
  says: "How much the busiest sleeper carries, and whether the soil can take it.",
  entries: [
    ...shared.entries,
    {
      kind: "formula",
      name: "sleeper_spacing_for_soil",
      label: "Sleeper spacing that the soil allows",
      why: "How far apart inner sleepers may lie with this size of sleeper and this soil. Where nothing is carried, the whole length.",
      sources: [STATICS],
      measure: "length",
      formula:
        "IF(live_load + dead_load = 0; platform_length; soil_bearing * sleeper_seat / ((live_load + dead_load) * platform_width))",
    },
  ],
}
