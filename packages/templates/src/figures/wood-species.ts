import type { TableEntry } from "@pegbook/engine"
import { SHRINKAGE_RECALLED, SPECIFIC_GRAVITY, shrinkageOf } from "../sources-deck.ts"

/** Species, specific gravity at 12 % moisture, shrinkage along the rings from green to oven-dry, and whose figure. */
const SPECIES = [
  ["loblolly pine", "0.51", "7.4 %", "both from memory"],
  ["Douglas-fir, coast", "0.48", "7.6 %", "shrinkage read, gravity from memory"],
  ["white spruce", "0.40", "7.8 %", "both from memory"],
  ["western redcedar", "0.32", "5.0 %", "shrinkage read, gravity from memory"],
  ["northern white-cedar", "0.31", "4.9 %", "shrinkage read, gravity from memory"],
] as const

const SHRINKAGES = [shrinkageOf("f-015"), shrinkageOf("f-016"), shrinkageOf("f-017"), SHRINKAGE_RECALLED]

export const SPECIES_NAMES: readonly string[] = SPECIES.map(([species]) => species)

/** How heavy some softwoods are, and how much they shrink. */
export const woodSpecies: TableEntry = {
  kind: "table",
  name: "wood_species_figures",
  label: "Softwoods: weight and shrinkage",
  why: "Species differ by half as much again, in weight and in how far a gap opens.",
  sources: [SPECIFIC_GRAVITY, ...SHRINKAGES],
  rows: { kind: "figures" },
  columns: [
    {
      name: "species",
      label: "Species",
      measure: "text",
      values: SPECIES_NAMES,
      why: "What the yard sells under one name is often a group: southern pine is mostly loblolly, spruce-pine-fir mostly spruce.",
      sources: [SPECIFIC_GRAVITY],
    },
    {
      name: "gravity",
      label: "Specific gravity",
      measure: "ratio",
      values: SPECIES.map(([, gravity]) => gravity),
      why: "Of the wood alone, by its volume at 12 % moisture: how heavy it is against water.",
      sources: [SPECIFIC_GRAVITY],
    },
    {
      name: "shrinkage",
      label: "Shrinkage of the width",
      measure: "share",
      values: SPECIES.map(([, , shrinkage]) => shrinkage),
      why: "How much narrower a flat-sawn board gets from soaking wet to bone dry.",
      sources: SHRINKAGES,
    },
    {
      name: "origin",
      label: "Who says so",
      measure: "text",
      values: SPECIES.map(([, , , origin]) => origin),
      why: "Which of the row's figures was read and which recalled.",
      sources: [SPECIFIC_GRAVITY, ...SHRINKAGES],
    },
  ],
}
