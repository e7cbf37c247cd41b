import type { Section } from "@pegbook/engine"
import { COMMON_PRACTICE, GEOMETRY, STATES_OF_SOIL, STRIP_TOPSOIL, SWELL_EARTH, USER } from "../sources.ts"

/**
 * Turf and topsoil taken off an area. `area` is the name of that area: `platform_area`, or a pad's.
 *
 * Needs: the area, spoil_loose_factor.
 */
export function turfOff(area: string): Section {
  return {
    id: "turf",
    title: "Turf and topsoil",
    says: "What grows, and what it grows in, comes off first: it rots and shrinks under a load.",
    entries: [
      {
        kind: "input",
        name: "strip_depth",
        label: "Turf and topsoil taken off",
        why: "Down to soil that is firm and has no roots. Dig a small hole and look: the dark layer is the topsoil.",
        sources: [STRIP_TOPSOIL, USER],
        measure: "length",
        default: "4 in",
        least: "0 in",
        most: "3 ft",
      },
      {
        kind: "input",
        name: "turf_thickness",
        label: "Turf alone",
        why: "Grass with its roots, cut in sods. It can be laid again elsewhere within a day or two.",
        sources: [COMMON_PRACTICE, USER],
        measure: "length",
        default: "2 in",
        least: "0 in",
        most: "6 in",
      },
      {
        kind: "formula",
        name: "turf_area",
        label: "Area of turf",
        why: "As much lawn can be patched with it, if it is kept damp and laid soon.",
        sources: [GEOMETRY],
        measure: "area",
        formula: area,
      },
      {
        kind: "formula",
        name: "turf_volume",
        label: "Turf, in the ground",
        why: "The top of what is taken off.",
        sources: [GEOMETRY, STATES_OF_SOIL],
        measure: "volume",
        formula: "turf_area * MIN(turf_thickness; strip_depth)",
      },
      {
        kind: "formula",
        name: "topsoil_volume",
        label: "Topsoil, in the ground",
        why: "Below the turf. Keep it in a heap of its own: beds and bare patches want it.",
        sources: [GEOMETRY, STATES_OF_SOIL],
        measure: "volume",
        formula: "turf_area * MAX(0; strip_depth - turf_thickness)",
      },
      {
        kind: "formula",
        name: "strip_volume",
        label: "Turf and topsoil, in the ground",
        why: "Both together, as they lie.",
        sources: [GEOMETRY, STATES_OF_SOIL],
        measure: "volume",
        formula: "turf_area * strip_depth",
      },
      {
        kind: "formula",
        name: "strip_volume_loose",
        label: "Turf and topsoil, loose",
        why: "What the heaps take.",
        sources: [STATES_OF_SOIL, SWELL_EARTH],
        measure: "bulk_volume",
        formula: "strip_volume * spoil_loose_factor",
      },
    ],
  }
}
