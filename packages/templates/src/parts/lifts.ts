import type { Source, TableEntry } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE, USER } from "../sources.ts"

const LIFTING_EQUATION: Source = {
  kind: "memory",
  title: "Revised lifting equation of the United States' institute for safety at work",
  place: "load constant",
  origin: "memory",
  note: "51 lb (23 kg) for an ideal lift, close to the body; every reach, twist and repeat takes away from it",
}
const GUIDELINE: Source = {
  kind: "memory",
  title: "British guidance on handling loads by hand, lifting filter at waist height close to the body",
  origin: "memory",
  note: "25 kg for men, 16 kg for women; from the ground and at arm's length far less",
}

const LIMITS = [
  { limit: "your own", mass: "50 lb" },
  { limit: "ideal lift, by the lifting equation", mass: "51 lb" },
  { limit: "a man at waist height, by the British guidance", mass: "25 kg" },
  { limit: "a woman at waist height, by the British guidance", mass: "16 kg" },
] as const

/** The heaviest piece against what one person lifts. Needs: heaviest_piece, rounding_tolerance. */
export const lifts: TableEntry = {
  kind: "table",
  name: "lifts",
  label: "Lifts for two",
  rows: { kind: "figures" },
  why: "The heaviest single piece against what one person should lift. The published figures are for a good grip and a straight back.",
  sources: [LIFTING_EQUATION, GUIDELINE, COMMON_PRACTICE],
  cautions: ["Lift with bent knees and a straight back, in gloves and toe-capped boots."],
  columns: [
    {
      name: "limit",
      label: "By",
      measure: "text",
      values: LIMITS.map(({ limit }) => limit),
      why: "Whose word it is.",
      sources: [LIFTING_EQUATION, GUIDELINE],
    },
    {
      name: "mass",
      label: "One person lifts",
      measure: "mass",
      values: LIMITS.map(({ mass }) => mass),
      why: "Yours to change, downwards: most people's back says so, if not on the day then on the next.",
      sources: [LIFTING_EQUATION, GUIDELINE, USER],
    },
    {
      name: "for_two",
      label: "Is there a lift for two?",
      measure: "yes_no",
      formula: "heaviest_piece > mass",
      why: "Yes: have a second person there whenever such a piece is moved.",
      sources: [ARITHMETIC],
    },
    {
      name: "people",
      label: "People at the heaviest piece",
      measure: "count",
      formula: "MAX(1; ROUNDUP(heaviest_piece / mass - rounding_tolerance; 0))",
      why: "At least. Sheets and long boards want two for their size alone.",
      sources: [ARITHMETIC],
    },
  ],
}
