import type { Section } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"

/** What lies on what, from the underside of the beams to the boards: the heights lean on it. */
export const deckBuildUp: Section = {
  id: "build-up",
  title: "What lies on what",
  says: "The layers from the beams up, added together.",
  entries: [
    {
      kind: "formula",
      name: "frame_build_up",
      label: "Beams and joists together",
      why: "The joists lie on the beams, so both depths count.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "beam_depth + joist_depth",
    },
    {
      kind: "formula",
      name: "surface_build_up",
      label: "Boards",
      why: "What lies on the joists.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "board_thickness",
    },
  ],
}
