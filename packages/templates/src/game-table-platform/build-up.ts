import type { Section } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"

/** What lies on what, from the underside of the skids to the surface: the heights lean on it. */
export const buildUp: Section = {
  id: "build-up",
  title: "What lies on what",
  says: "The layers from the skids up, added together.",
  entries: [
    {
      kind: "formula",
      name: "frame_build_up",
      label: "Skids and joists together",
      why: "The joists lie on the skids, so both depths count.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "skid_depth + joist_depth",
    },
    {
      kind: "formula",
      name: "surface_build_up",
      label: "Sheets and tiles together",
      why: "What lies on the joists.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "sheet_thickness + tile_thickness",
    },
  ],
}
