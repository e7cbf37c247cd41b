import type { Section } from "@pegbook/engine"
import { adapt } from "../adapt.ts"
import { supportLoads } from "../parts/loads.ts"
import { BEARING_CLAY, COMMON_PRACTICE, FROST_PRACTICE, STATICS, STRESS_SPREAD } from "../sources.ts"
import { ON_STONE } from "./skids-on-stone.ts"

const soil = adapt(supportLoads, {
  without: [
    "support_load_max",
    "soil_pressure_max",
    "soil_bearing_check",
    "block_face_needed",
    "soil_stone_check",
  ],
  labels: {
    live_load: "People and things in the shed",
    dead_load: "The base's and the shed's own weight",
  },
  whys: {
    live_load:
      "The load that comes and goes: tools, a mower, firewood, people. Stacked firewood or bags of soil weigh more than most people think.",
    dead_load:
      "Base, walls and roof, spread over the floor. Snow on the roof comes on top: add it where you have snow.",
    platform_load: "Everything together, as it comes down on the stone.",
  },
  defaults: { live_load: "50 psf", dead_load: "20 psf" },
})

/** What the shed weighs, and whether skids lying full length on stone press too hard. */
export const padLoads: Section = {
  ...soil,
  says: "How hard the busiest skid presses, and whether the soil can take it.",
  entries: [
    ...soil.entries,
    {
      kind: "formula",
      name: "skid_line_load_max",
      label: "Load along the busiest skid",
      why: "For each length of skid: half way to the skid on either side, with everything that stands there.",
      sources: [STATICS],
      measure: "line_load",
      formula: "(live_load + dead_load) * MAX(skids.carries)",
    },
    {
      kind: "formula",
      name: "soil_pressure_max",
      label: "Greatest pressure under a skid",
      why: "The skid lies on stone all along, so its load is shared over its whole face.",
      sources: [STATICS],
      measure: "pressure",
      formula: "skid_line_load_max / skid_thickness",
    },
    {
      kind: "check",
      name: "soil_bearing_check",
      label: "Can the ground bear the busiest skid?",
      why: "Held against the pressure on the skid's own face; the stone spreads it before it reaches the soil, which is to the good.",
      sources: [BEARING_CLAY, FROST_PRACTICE],
      measure: "pressure",
      demand: "soil_pressure_max",
      limit: "soil_bearing",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "Lay the skids so near that none carries more than {skid_width_for_soil} of the floor's width, or take wider ones.",
      ],
      remedies: ON_STONE.remedies,
    },
    {
      kind: "formula",
      name: "skid_width_for_soil",
      label: "Width of floor that one skid may carry",
      why: "With this skid, this soil and these loads. Where nothing is carried, the whole width.",
      sources: [STATICS],
      measure: "length",
      formula:
        "IF(live_load + dead_load = 0; platform_width; soil_bearing * skid_thickness / (live_load + dead_load))",
    },
    {
      kind: "formula",
      name: "spread_pressure_max",
      label: "Greatest pressure under the stone",
      why: "After the least thickness of stone has spread the load. It shows how much the stone helps; no check leans on it.",
      sources: [STRESS_SPREAD],
      measure: "pressure",
      formula:
        "skid_line_load_max / MIN(MAX(skids.carries); skid_thickness + 2 * stone_spread * stone_bed_thickness)",
    },
    {
      kind: "formula",
      name: "support_load_max",
      label: "Load on the busiest footing, if it stood on footings",
      why: "To compare with; on the stone pad there are none.",
      sources: [STATICS, COMMON_PRACTICE],
      measure: "force",
      formula: "(live_load + dead_load) * MAX(support_stations.carries) * MAX(skids.carries)",
    },
  ],
}
