import type { Entry, InputEntry } from "@pegbook/engine"
import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

/** Added once, to the screws of every box. */
export const spareScrews: InputEntry = {
  kind: "input",
  name: "spare_screws",
  label: "Spare screws",
  measure: "share",
  default: "10 %",
  least: "0 %",
  most: "100 %",
  why: "Some break, some fall into the grass. Screws are what people run out of most often.",
  sources: [USER, practice("one in ten spare")],
}

interface Names {
  readonly word: string
  readonly count: string
  readonly perBox: string
  readonly inABox: string
  readonly toBuy: string
  readonly boxes: string
}

/** Whole boxes of one kind of screw. Needs: the count, spare_screws, rounding_tolerance. */
function boxesOf({ word, count, perBox, inABox, toBuy, boxes }: Names): readonly Entry[] {
  return [
    {
      kind: "input",
      name: perBox,
      label: `${word} in a box`,
      measure: "count",
      default: inABox,
      least: "1",
      most: "100000",
      why: "It is on the box. If yours are sold by weight, ask how many that is.",
      sources: [USER],
    },
    {
      kind: "formula",
      name: toBuy,
      label: `${word} with the spare`,
      measure: "count",
      formula: `MAX(0; ROUNDUP(${count} * (1 + spare_screws) - rounding_tolerance; 0))`,
      why: "Rounded up once, at the end.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: boxes,
      label: `Boxes of ${word.toLowerCase()}`,
      measure: "count",
      formula: `ROUNDUP(${toBuy} / ${perBox}; 0)`,
      why: "Whole boxes.",
      sources: [GEOMETRY],
    },
  ]
}

/** Boxes of what holds the sheets or boards. Needs: screw_count, spare_screws, rounding_tolerance. */
export const surfaceScrewBoxes: readonly Entry[] = boxesOf({
  word: "Surface screws",
  count: "screw_count",
  perBox: "screws_per_box",
  inABox: "350",
  toBuy: "screws_to_buy",
  boxes: "screw_boxes",
})

/** Boxes of what holds the frame together. Needs: frame_screw_count, spare_screws, rounding_tolerance. */
export const frameScrewBoxes: readonly Entry[] = boxesOf({
  word: "Frame screws",
  count: "frame_screw_count",
  perBox: "frame_screws_per_box",
  inABox: "100",
  toBuy: "frame_screws_to_buy",
  boxes: "frame_screw_boxes",
})
