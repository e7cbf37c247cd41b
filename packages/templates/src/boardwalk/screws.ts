import type { Section } from "@pegbook/engine"
import { boardScrewsOn } from "../parts/board-screws.ts"
import { cleatScrews } from "../parts/cleats.ts"
import { kerbScrews } from "../parts/edge-trim.ts"
import { fixingsOf, type JointGroup } from "../parts/fixings.ts"
import { GEOMETRY, USER } from "../sources.ts"
import { JOIST_TO_SILL, practice } from "../sources-frame.ts"
import { BOARDS_ON_STRINGERS } from "./walk.ts"

const boards = boardScrewsOn(BOARDS_ON_STRINGERS)

/** The boards of the walk itself, of its ramps and of its steps: the same screws at every crossing. */
const boardCrossings: JointGroup = {
  ...boards,
  joints: [
    ...boards.joints,
    {
      joint: "board on a ramp stringer",
      screw: "surface screws",
      places: "SUM(ramps.crossings)",
      each: "screws_per_crossing",
      through: "board_thickness",
    },
    {
      joint: "tread board on a carriage",
      screw: "surface screws",
      places: "SUM(flights.crossings)",
      each: "screws_per_crossing",
      through: "board_thickness",
    },
  ],
}

/** Stringers on the sleepers, and what leans on the walk's ends. */
const stringerSeats: JointGroup = {
  entries: [
    {
      kind: "input",
      name: "screws_per_seat",
      label: "Frame screws where a stringer lies on a sleeper",
      measure: "count",
      default: "2",
      least: "0",
      most: "8",
      why: "Driven at a slant, one from either face, they keep the stringer upright on its mark. The code's table asks for three nails where nothing else holds it.",
      sources: [USER, JOIST_TO_SILL],
    },
    {
      kind: "formula",
      name: "seat_count",
      label: "Places where a stringer lies on a sleeper",
      measure: "count",
      formula: "stringer_count * sleeper_count + stringer_joint_count",
      why: "Every line lies on every sleeper. Where two pieces meet, both ends are screwed down, which is one place more.",
      sources: [GEOMETRY],
    },
    {
      kind: "input",
      name: "screws_per_ramp_head",
      label: "Frame screws at the head of a ramp stringer or carriage",
      measure: "count",
      default: "4",
      least: "0",
      most: "12",
      why: "They hold the head in its place. The weight should lie on a cleat or a metal hanger below, not on screws alone.",
      sources: [USER, practice("four screws, and a seat below")],
    },
  ],
  joints: [
    {
      joint: "stringer on a sleeper, at a slant",
      screw: "frame screws",
      places: "seat_count",
      each: "screws_per_seat",
      through: "stringer_thickness",
    },
    {
      joint: "head of a ramp stringer or carriage",
      screw: "frame screws",
      places: "SUM(ramps.stringers) + SUM(flights.carriages)",
      each: "screws_per_ramp_head",
      through: "stringer_thickness",
    },
  ],
}

/** The walk's screws, counted where they are driven. */
export const screws: Section = fixingsOf([boardCrossings, stringerSeats, cleatScrews, kerbScrews])
