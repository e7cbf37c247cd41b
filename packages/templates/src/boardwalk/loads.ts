import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { supportLoadsOn } from "../parts/loads.ts"
import { BEARING_CLAY, FROST_PRACTICE, STATICS } from "../sources.ts"
import { SLEEPERS_ON_STRIPS } from "./walk.ts"

const shared = adapt(supportLoadsOn(SLEEPERS_ON_STRIPS), {
  labels: { block_face_needed: "Underside of sleeper that the soil asks for" },
  whys: {
    support_load_max: "An inner sleeper carries most: it has neighbours on both sides.",
    block_face_needed: "The busiest sleeper's load over what the soil bears.",
    live_load:
      "The load that comes and goes: people, barrows. A walk that the public crowds onto is counted heavier than a family's deck (40 lb per square foot in one house code).",
    dead_load: "Timber, spread over the area. Ten pounds a square foot is usual for timber floors.",
  },
  defaults: { live_load: "40 psf" },
  without: ["soil_bearing_check"],
})

/** What the walk carries, and whether the ground under the sleepers bears it. */
export const loads: Section = {
  ...shared,
  says: "How much the busiest sleeper carries, and whether the soil can take it.",
  entries: [
    ...shared.entries,
    {
      kind: "check",
      name: "soil_bearing_check",
      label: "Can the ground bear the busiest sleeper?",
      why: "Ground that is pressed harder than it bears gives way slowly, and the walk sags there.",
      sources: [BEARING_CLAY, FROST_PRACTICE],
      measure: "pressure",
      demand: "soil_pressure_max",
      limit: "soil_bearing",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "Give each sleeper an underside of at least {block_face_needed}: a wider or a longer one.",
        "Or lay the sleepers no more than {sleeper_spacing_for_soil} apart.",
      ],
    },
    {
      kind: "formula",
      name: "sleeper_spacing_for_soil",
      label: "Sleeper spacing that the soil allows",
      why: "How far apart inner sleepers may lie with this size of sleeper and this soil.",
      sources: [STATICS],
      measure: "length",
      formula: "soil_bearing * sleeper_seat / ((live_load + dead_load) * platform_width)",
    },
  ],
}
