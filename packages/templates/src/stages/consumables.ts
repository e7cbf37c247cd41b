import type { TableEntry } from "@pegbook/engine"
import { rowChoice } from "../parts/row-choice.ts"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { ARITHMETIC } from "../sources.ts"
import { practice } from "../sources-frame.ts"

/** Something that wears out or is used up on the way, and that lists forget. */
export interface Consumable {
  readonly item: string
  /** Formula, a plain number: how much it is used. */
  readonly used: string
  /** How much of that one of them serves. */
  readonly serves: string
}

/** What every job on the ground uses up. */
export const SITE_CONSUMABLES: readonly Consumable[] = [
  { item: "peg", used: "COUNT(set_out_points.x)", serves: "1" },
  { item: "roll of string", used: "1", serves: "1" },
  { item: "can of marking paint", used: "1", serves: "1" },
  { item: "pair of gloves", used: "MAX(work_rates.people)", serves: "1" },
  { item: "pair of goggles", used: "MAX(work_rates.people)", serves: "1" },
  { item: "set of ear defenders", used: "MAX(work_rates.people)", serves: "1" },
  { item: "dust mask", used: "end_cut_count", serves: "40" },
  { item: "driver bit", used: "screw_count + frame_screw_count", serves: "250" },
  { item: "drill bit", used: "frame_screw_count", serves: "250" },
  { item: "saw blade", used: "end_cut_count", serves: "300" },
  { item: "tin brush", used: "preservative_tins", serves: "2" },
]

export const FABRIC_PINS: Consumable = { item: "fabric pin", used: "fabric_pin_count", serves: "1" }
export const EDGING_STAKES: Consumable = {
  item: "edging stake",
  used: "SUM(edging_stakes.count)",
  serves: "1",
}
export const CONNECTOR_NAILS: Consumable = {
  item: "box of 100 connector nails",
  used: "connector_nail_count",
  serves: "100",
}
export const EDGE_SEALER: Consumable = { item: "tin of edge sealer", used: "sheet_count", serves: "12" }
export const STAPLES: Consumable = { item: "box of staples", used: "mesh_rolls", serves: "2" }

/** What is used up, and how many to buy. Needs: what `used` names, rounding_tolerance. */
export function consumablesOf(list: readonly Consumable[]): TableEntry {
  return {
    kind: "table",
    name: "consumables",
    label: "Used up and worn out",
    why: "The small things that stop a day's work when they are missing. How far one of them goes is nobody's published figure: change it to your own.",
    sources: [practice("how far each goes is a guess to start from")],
    rows: { kind: "figures" },
    columns: [
      {
        name: "item",
        label: "What",
        measure: "text",
        values: list.map(({ item }) => item),
        why: "As on the lists of things to buy.",
        sources: [ARITHMETIC],
      },
      {
        name: "used",
        label: "Used by",
        measure: "ratio",
        formula: rowChoice(
          "item",
          list.map(({ item, used }) => ({ row: item, formula: used })),
        ),
        why: "Screws driven, ends cut, people at work: whatever wears it.",
        sources: [ARITHMETIC],
      },
      {
        name: "serves",
        label: "One of them serves",
        measure: "ratio",
        values: list.map(({ serves }) => serves),
        why: "How much of that use one lasts for. No source; yours to change.",
        sources: [practice("no published figure was found")],
      },
      {
        name: "to_buy",
        label: "To buy",
        measure: "count",
        formula: "MAX(0; ROUNDUP(used / serves - rounding_tolerance; 0))",
        why: "Whole ones.",
        sources: [ARITHMETIC],
      },
    ],
  }
}

/** The same, as lines of the lists of what is bought. */
export function consumablesBought(list: readonly Consumable[]): readonly BoughtThing[] {
  return list.map(({ item }) => ({
    item,
    quantity: { column: "consumables.to_buy", where: "consumables.item", is: item },
    measure: "count",
    unit: "each",
  }))
}
