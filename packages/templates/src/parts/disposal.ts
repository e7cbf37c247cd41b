import type { TableEntry } from "@pegbook/engine"
import { disposalReads, type Leavings, solveDisposal } from "../solvers/disposal-list.ts"
import { ARITHMETIC } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import type { Job } from "./work.ts"

/** What is carried away at the end. Needs things_by_stage, stock_to_buy, timber_pieces, dug_volume_loose, what `holes` and `turf` name, and the packs of things. */
export function disposalOf({ things, lengthUnit, holes, turf }: Job): TableEntry {
  const leavings: Leavings = {
    things,
    volumeUnit: lengthUnit === "ft" ? "yd3" : "m3",
    areaUnit: lengthUnit === "ft" ? "ft2" : "m2",
    ...(holes === undefined ? {} : { holes }),
    turf,
  }
  return {
    kind: "table",
    name: "disposal",
    label: "To carry away or take back",
    why: "Soil swells when it is dug, and treated wood is waste of its own kind: know how much, and where to, before the heap is there.",
    sources: [ARITHMETIC, practice("what goes where; your authority has the last word")],
    cautions: ["Smoke and ash of treated wood are poisonous: off-cuts are never burned, in no stove either."],
    rows: { kind: "solved", from: disposalReads(leavings), solve: solveDisposal(leavings) },
    columns: [
      {
        name: "what",
        label: "What",
        measure: "text",
        why: "Soil, turf, off-cuts by their size, and what is left over of the rest.",
        sources: [ARITHMETIC],
      },
      {
        name: "amount",
        label: "How much",
        measure: "ratio",
        why: "Bought or dug, less what is in the work. Spare that is used up on the way makes it less.",
        sources: [ARITHMETIC],
      },
      { name: "unit", label: "In", measure: "text", why: "What it is counted in.", sources: [ARITHMETIC] },
      {
        name: "goes",
        label: "Where to",
        measure: "text",
        why: "As is usual; ask your authority before the first load.",
        sources: [practice("what goes where")],
      },
    ],
  }
}
