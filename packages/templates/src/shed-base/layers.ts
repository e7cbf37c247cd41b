import type { Section } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"

/** What lies on what, from the stone up: heights, air and the mesh lean on it. */
export const layers: Section = {
  id: "build-up",
  title: "What lies on what",
  says: "The layers from the stone up, added together.",
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
      label: "The floor's sheets",
      why: "What lies on the joists.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "sheet_thickness",
    },
    {
      kind: "formula",
      name: "rim_underside_height",
      label: "Stone to the underside of the rims",
      why: "The rims hang beside the skids; air passes below them.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "frame_build_up - rim_depth",
    },
    {
      kind: "formula",
      name: "mesh_open_height",
      label: "Opening that a mesh has to close",
      why: "From the stone to the underside of the rims.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "rim_underside_height",
    },
  ],
}
