import type { Section } from "@pegbook/engine"
import { COMMON_PRACTICE, GEOMETRY, USER } from "../sources.ts"

/**
 * Fabric over a rectangle, laid in strips along its length and turned up at its sides.
 * `length` and `width` are the names of the rectangle's sides: `platform_length`, or the length of a pad.
 *
 * Needs: those two, rounding_tolerance.
 */
export function fabricOver(length: string, width: string): Section {
  return {
    id: "fabric",
    title: "Fabric",
    says: "A sheet that keeps weeds down and keeps the stone from sinking into the soil.",
    entries: [
      {
        kind: "input",
        name: "fabric_turn_up",
        label: "Fabric turned up, each side",
        why: "Turned up at the sides, the fabric keeps soil from washing in between the stones.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "6 in",
        least: "0 in",
        most: "4 ft",
      },
      {
        kind: "formula",
        name: "fabric_area",
        label: "Fabric, as it lies",
        why: "The ground covered and the turned-up sides, before laps.",
        sources: [GEOMETRY],
        measure: "area",
        formula: `(${length} + 2 * fabric_turn_up) * (${width} + 2 * fabric_turn_up)`,
      },
      {
        kind: "input",
        name: "fabric_roll_width",
        label: "Width of a roll",
        why: "Fabric comes on rolls; a wide one saves seams.",
        sources: [USER],
        measure: "length",
        default: "6 ft",
        least: "2 ft",
        most: "20 ft",
      },
      {
        kind: "input",
        name: "fabric_lap",
        label: "Lap of two strips",
        why: "The upper strip lies this far over the lower one, like roof tiles, lower edge downhill. On soft ground lap more.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "12 in",
        least: "0 in",
        most: "18 in",
      },
      {
        kind: "formula",
        name: "fabric_strips",
        label: "Strips side by side",
        why: "Every strip after the first covers its own width less the lap.",
        sources: [GEOMETRY],
        measure: "count",
        formula: `MAX(1; ROUNDUP((${width} + 2 * fabric_turn_up - fabric_lap) / (fabric_roll_width - fabric_lap) - rounding_tolerance; 0))`,
      },
      {
        kind: "formula",
        name: "fabric_strip_length",
        label: "Length of a strip",
        why: "Cut each strip this long.",
        sources: [GEOMETRY],
        measure: "length",
        formula: `${length} + 2 * fabric_turn_up`,
      },
      {
        kind: "formula",
        name: "fabric_length",
        label: "Fabric off the roll",
        why: "All strips, end to end: what is bought by length.",
        sources: [GEOMETRY],
        measure: "length",
        formula: "fabric_strips * fabric_strip_length",
      },
      {
        kind: "formula",
        name: "fabric_share_lapped",
        label: "Lost in laps and at the edge",
        why: "The part of the bought fabric that covers nothing new. Another width of roll may waste less.",
        sources: [GEOMETRY],
        measure: "share",
        formula: "1 - fabric_area / (fabric_length * fabric_roll_width)",
      },
      {
        kind: "input",
        name: "fabric_pin_spacing",
        label: "Pins at most apart",
        why: "Pins hold the fabric until the stone lies on it.",
        sources: [USER, COMMON_PRACTICE],
        measure: "length",
        default: "4 ft",
        least: "6 in",
        most: "10 ft",
      },
      {
        kind: "formula",
        name: "fabric_pin_count",
        label: "Pins",
        why: "Along both outer edges and every seam, both ends counted.",
        sources: [GEOMETRY],
        measure: "count",
        formula:
          "(fabric_strips + 1) * (ROUNDUP(fabric_strip_length / fabric_pin_spacing - rounding_tolerance; 0) + 1)",
      },
    ],
  }
}

/** Fabric under the frame itself. */
export const fabric: Section = fabricOver("platform_length", "platform_width")

/**
 * Wire mesh round the platform, let into the ground, against animals that dig.
 *
 * Needs: platform_perimeter, rounding_tolerance, mesh_open_height (the greatest height to close, from the ground to the
 * timber that the mesh is stapled to).
 */
export const animalMesh: Section = {
  id: "animal-mesh",
  title: "Mesh against animals",
  says: "A skirt of wire mesh from the frame down into the ground: a low floor is a dry home that many animals look for.",
  entries: [
    {
      kind: "input",
      name: "mesh_bury_depth",
      label: "Mesh below the ground",
      why: "Animals dig where the mesh meets the ground; it has to go on below.",
      sources: [USER, COMMON_PRACTICE],
      cautions: ["Make sure that no animal is inside before the last piece is closed."],
      measure: "length",
      default: "12 in",
      least: "0 in",
      most: "3 ft",
    },
    {
      kind: "input",
      name: "mesh_turn_out",
      label: "Turned outwards at the bottom",
      why: "A foot of mesh lying flat, away from the platform: the animal digs down onto wire and gives up.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "12 in",
      least: "0 in",
      most: "3 ft",
    },
    {
      kind: "input",
      name: "mesh_fixing_height",
      label: "Mesh stapled to the timber",
      why: "How far the mesh reaches up the outside of the frame.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "2 in",
      least: "1 in",
      most: "12 in",
    },
    {
      kind: "formula",
      name: "mesh_height",
      label: "Width of mesh needed",
      why: "From the staples down the widest opening, into the ground and out along the bottom.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "mesh_fixing_height + mesh_open_height + mesh_bury_depth + mesh_turn_out",
    },
    {
      kind: "input",
      name: "mesh_lap",
      label: "Lap of two pieces",
      why: "Where one roll ends and the next begins, and at the last corner.",
      sources: [USER, COMMON_PRACTICE],
      measure: "length",
      default: "6 in",
      least: "0 in",
      most: "2 ft",
    },
    {
      kind: "input",
      name: "mesh_roll_length",
      label: "Length of a roll of mesh",
      why: "As sold. Openings no wider than half an inch keep rats out as well.",
      sources: [USER],
      measure: "length",
      default: "25 ft",
      least: "5 ft",
      most: "200 ft",
    },
    {
      kind: "formula",
      name: "mesh_rolls",
      label: "Rolls of mesh",
      why: "Each roll covers its length less one lap.",
      sources: [GEOMETRY],
      measure: "count",
      formula: "ROUNDUP(platform_perimeter / (mesh_roll_length - mesh_lap) - rounding_tolerance; 0)",
    },
    {
      kind: "formula",
      name: "mesh_length",
      label: "Mesh, laps counted",
      why: "All the way round, and one lap for every roll.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "platform_perimeter + mesh_rolls * mesh_lap",
    },
    {
      kind: "formula",
      name: "mesh_trench_volume",
      label: "Soil dug for the mesh",
      why: "A trench as wide as the mesh lies flat; the soil goes back on top of it.",
      sources: [GEOMETRY],
      measure: "volume",
      formula: "platform_perimeter * mesh_bury_depth * mesh_turn_out",
    },
  ],
}
