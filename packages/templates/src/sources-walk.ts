import type { Source } from "@pegbook/engine"

/** Citations of the boardwalk and of the greenhouse's floor. What several areas share is in `sources.ts`. */

/** Slope, rise and edges of ramps. */
export const RAMP_ADA: Source = {
  kind: "standard",
  title: "ADA Standards for Accessible Design",
  edition: "2010",
  place: "section 405, ramps: 1 in 12 at most, 30 in of rise for one run, 36 in clear between the edges",
  origin: "memory",
  note: "written for places open to the public; a private garden may be steeper, but is pushed up by the same arms",
}

/** The level place at the foot of a ramp. */
export const LANDING_ADA: Source = {
  kind: "standard",
  title: "ADA Standards for Accessible Design",
  edition: "2010",
  place: "section 405.7, landings 60 in long",
  origin: "memory",
}

/** Kerbs along walks and ramps. */
export const EDGE_ADA: Source = {
  kind: "standard",
  title: "ADA Standards for Accessible Design",
  edition: "2010",
  place: "section 405.9, edge protection: a kerb that a 4 in ball does not pass",
  origin: "memory",
}

/** Depth of a tread. */
export const TREAD_IRC: Source = {
  kind: "standard",
  title: "International Residential Code, section R311.7.5",
  place: "treads of 10 in at least",
  origin: "memory",
}

/** The rule that a comfortable stair keeps to. */
export const STEP_RULE: Source = {
  kind: "common_practice",
  title: "Rule of the comfortable step",
  place: "two risers and a tread come to 24 in to 25 in",
  origin: "memory",
}

/** Handrails of ramps. */
export const RAMP_RAIL_ADA: Source = {
  kind: "standard",
  title: "ADA Standards for Accessible Design",
  edition: "2010",
  place: "section 405.8, handrails where a ramp rises more than 6 in",
  origin: "memory",
}

/** Decking boards in millimetres. */
export const METRIC_DECKING: Source = {
  kind: "common_practice",
  title: "Metric decking boards as northern European yards sell them, planed",
  origin: "memory",
  note: "sizes differ by a millimetre or two from yard to yard: measure one",
}
