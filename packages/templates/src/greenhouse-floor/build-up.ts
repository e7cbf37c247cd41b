import type { Section } from "@pegbook/engine"
import { GEOMETRY } from "../sources.ts"

/** What lies on what, from the underside of the bearers to the boards: the heights, the air and the mesh lean on it. */
export const buildUp: Section = {
  id: "build-up",
  title: "What lies on what",
  says: "The layers from the bearers up, added together.",
  entries: [
    {
      kind: "formula",
      name: "frame_build_up",
      label: "Bearers and joists together",
      why: "The joists lie on the bearers, so both depths count.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "skid_depth + joist_depth",
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
    {
      kind: "formula",
      name: "ground_under_high",
      label: "Highest ground or stone under the floor",
      why: "The loose stone lies on the ground, and takes some of the air.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "ground_high + cover_stone_depth",
    },
    {
      kind: "formula",
      name: "rim_underside_height",
      label: "Underside of the rims above the stone",
      why: "Air passes below the rims and between the bearers.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "underside_level + frame_build_up - rim_depth - ground_under_high",
    },
    {
      kind: "formula",
      name: "mesh_open_height",
      label: "Opening that a mesh has to close",
      why: "From the ground at the low corner to the underside of the rims.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "underside_level + frame_build_up - rim_depth - ground_low",
    },
  ],
}
