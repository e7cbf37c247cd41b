import type { Section } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"

/** What lies on what, from the underside of the sleepers to the surface: the heights lean on it. */
export const buildUp: Section = {
  id: "build-up",
  title: "What lies on what",
  says: "The layers from the sleepers up, added together.",
  entries: [
    {
      kind: "formula",
      name: "frame_build_up",
      label: "Sleepers and stringers together",
      why: "The stringers lie on the sleepers, so both depths count.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "sleeper_depth + stringer_depth",
    },
    {
      kind: "formula",
      name: "surface_build_up",
      label: "Boards",
      why: "What lies on the stringers.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "board_thickness",
    },
    {
      kind: "formula",
      name: "rim_underside_height",
      label: "Underside of the stringers above the ground",
      why: "The stringers run through the air between the sleepers: this is what the wind can blow through.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "underside_clearance + sleeper_depth",
    },
  ],
}
