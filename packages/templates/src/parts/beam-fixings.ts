import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import type { JointGroup } from "./fixings.ts"

/**
 * Ties where joists cross the lines that carry them, under boards that have crossings of their own. Needs: the count of
 * lines, joist_count.
 */
export function tiesOn({ noun, count, why }: { noun: string; count: string; why: string }): JointGroup {
  return {
    entries: [
      {
        kind: "input",
        name: "ties_per_crossing",
        label: `Ties where a joist crosses a ${noun}`,
        measure: "count",
        default: "1",
        least: "0",
        most: "2",
        why,
        sources: [USER, practice("one tie a crossing")],
      },
      {
        kind: "formula",
        name: "tie_count",
        label: "Ties",
        measure: "count",
        formula: `${count} * joist_count * ties_per_crossing`,
        why: `Every joist crosses every ${noun}.`,
        sources: [GEOMETRY],
      },
    ],
    joints: [],
    hardware: [{ piece: "tie", wanted: `ties where a joist crosses a ${noun}`, number: "tie_count" }],
  }
}

/** Ties where joists cross beams. Needs: beam_count, joist_count. */
export const beamTies: JointGroup = tiesOn({
  noun: "beam",
  count: "beam_count",
  why: "A small metal tie keeps the joist on the beam and upright.",
})

/** Planks of a beam, screwed together. Needs: beam_count, beam_plies, beam_length, beam_thickness, rounding_tolerance. */
export const beamPlankScrews: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "ply_screw_spacing",
      label: "Screws along a beam, places at most apart",
      measure: "length",
      default: "16 in",
      least: "4 in",
      most: "4 ft",
      why: "The planks of a beam carry together only if they are held together.",
      sources: [USER, practice("built-up beams screwed every 16 in")],
    },
    {
      kind: "input",
      name: "ply_screws_per_place",
      label: "Screws at a place along a beam",
      measure: "count",
      default: "2",
      least: "1",
      most: "6",
      why: "One near the top and one near the bottom.",
      sources: [USER, practice("two rows of screws")],
    },
    {
      kind: "formula",
      name: "ply_screw_places",
      label: "Places along the beams",
      measure: "count",
      formula:
        "beam_count * (beam_plies - 1) * (ROUNDUP(beam_length / ply_screw_spacing - rounding_tolerance; 0) + 1)",
      why: "Along every face where two planks meet, both ends counted.",
      sources: [GEOMETRY],
    },
  ],
  joints: [
    {
      joint: "plank of a beam to the next",
      screw: "frame screws",
      places: "ply_screw_places",
      each: "ply_screws_per_place",
      through: "beam_thickness / beam_plies",
    },
  ],
}
