import type { Entry } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

const TAPE = practice("tape over the tops of joists keeps water out of the screw holes")

/**
 * Self-adhesive tape along the tops of the frame. `tops`: formulas of the lengths that are taped; with none, no entries.
 *
 * Needs: what the formulas name, rounding_tolerance. Gives joist_tape_length, joist_tape_rolls.
 */
export function joistTapeOf(tops: readonly string[]): readonly Entry[] {
  if (tops.length === 0) return []
  return [
    {
      kind: "formula",
      name: "joist_tape_length",
      label: "Tape along the tops of the frame",
      measure: "length",
      formula: tops.join(" + "),
      why: "Water stands on a joist's top under the surface and runs down every screw. Tape is not asked for by the codes; the frame lasts longer with it.",
      sources: [GEOMETRY, TAPE],
    },
    {
      kind: "input",
      name: "joist_tape_spare",
      label: "Spare tape",
      measure: "share",
      default: "5 %",
      least: "0 %",
      most: "100 %",
      why: "For the laps where rolls end and what sticks to itself.",
      sources: [USER, TAPE],
    },
    {
      kind: "input",
      name: "joist_tape_roll",
      label: "Tape on a roll",
      measure: "length",
      default: "50 ft",
      least: "5 ft",
      most: "500 ft",
      why: "It is on the roll. Take it at least as wide as the joists are thick.",
      sources: [USER],
    },
    {
      kind: "formula",
      name: "joist_tape_rolls",
      label: "Rolls of tape",
      measure: "count",
      formula:
        "MAX(0; ROUNDUP(joist_tape_length * (1 + joist_tape_spare) / joist_tape_roll - rounding_tolerance; 0))",
      why: "Whole rolls, the spare added once.",
      sources: [ARITHMETIC],
    },
  ]
}
