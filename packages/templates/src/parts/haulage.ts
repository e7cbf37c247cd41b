import type { Section, TableEntry } from "@pegbook/engine"
import { plainColumn } from "../columns.ts"
import { LOAD_READS, solveStageLoads } from "../solvers/stage-loads.ts"
import { ARITHMETIC, GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

const stageLoads: TableEntry = {
  kind: "table",
  name: "stage_loads",
  label: "Loads by step of the work",
  rows: { kind: "solved", from: LOAD_READS, solve: solveStageLoads },
  why: "Fetched step by step, it wants more runs and less room to keep it dry. Only what has a weight is in it.",
  sources: [ARITHMETIC, USER],
  columns: [
    plainColumn("stage", "Step of the work", "text", "The one that uses it first.", ARITHMETIC),
    plainColumn("mass", "Weight", "mass", "Of all that is first used there.", ARITHMETIC),
    plainColumn("loads", "Loads", "count", "By weight alone, if only this is fetched.", ARITHMETIC),
    plainColumn(
      "heaviest",
      "Heaviest piece",
      "mass",
      "Nothing where nothing is counted by the piece.",
      ARITHMETIC,
    ),
    plainColumn("longest", "Longest piece", "length", "Of timber.", GEOMETRY),
    plainColumn("sticks_out", "Sticks out behind", "length", "Beyond the bed of your vehicle.", GEOMETRY),
  ],
}

/** One row: what the vehicle and the way are like, and what follows. `barrows`: formula, loads carried on the site by barrow. */
function ownHaulage(barrows: string): TableEntry {
  const figure = (name: string, label: string, measure: "length" | "money", value: string, why: string) => ({
    name,
    label,
    measure,
    values: [value],
    why,
    sources: [USER],
  })
  return {
    kind: "table",
    name: "own_haulage",
    label: "Fetched yourself or brought",
    rows: { kind: "figures" },
    why: "One line. Change its bed, way and cost of a run to your own.",
    sources: [USER, practice("figures to start from")],
    cautions: [
      "Mark what sticks out behind a vehicle; your traffic law says how far it may, and how it is marked.",
    ],
    columns: [
      figure(
        "bed_length",
        "Length of the bed",
        "length",
        "8 ft",
        "Of the vehicle or trailer, with its tail closed.",
      ),
      figure(
        "carry_distance",
        "Way from the kerb",
        "length",
        "100 ft",
        "From where it is unloaded to where it is built.",
      ),
      figure("run_cost", "One run costs", "money", "0", "Fuel, hire of a trailer, both ways."),
      {
        name: "spare",
        label: "To spare on the last run",
        measure: "mass",
        formula: "haul_trips * payload - haul_mass",
        why: "A few pounds to spare is a near thing: wet timber differs from board to board.",
        sources: [ARITHMETIC],
      },
      {
        name: "sticks_out",
        label: "Longest piece sticks out",
        measure: "length",
        formula: "MAX(0 * bed_length; longest_piece - bed_length)",
        why: "Behind the bed.",
        sources: [GEOMETRY],
      },
      {
        name: "cost",
        label: "All runs cost",
        measure: "money",
        formula: "haul_trips * run_cost",
        why: "To be held against the next.",
        sources: [ARITHMETIC],
      },
      {
        name: "delivery",
        label: "Having it brought costs",
        measure: "money",
        formula: "SUM(supplier_orders.delivery)",
        why: "By the plan in force, without tax. Nothing while your suppliers' table has no charge.",
        sources: [USER],
      },
      {
        name: "barrows",
        label: "Barrow loads on the site",
        measure: "count",
        formula: barrows,
        why: "Stone to its place, and soil away from it.",
        sources: [ARITHMETIC],
      },
      {
        name: "barrow_way",
        label: "Way behind the barrow",
        measure: "length",
        formula: "2 * barrows * carry_distance",
        why: "There and back with every load. Move the heap nearer if it frightens you.",
        sources: [GEOMETRY],
      },
    ],
  }
}

/**
 * Runs with a vehicle, loads by stage, ways with a barrow. Needs: haul_mass, haul_list, things_by_stage, supplier_orders, stock_to_buy, what
 * `barrows` names, rounding_tolerance.
 */
export function haulageOf(barrows: string): Section {
  return {
    id: "haulage",
    title: "Haulage",
    says: "How often you drive, and how far you carry.",
    entries: [
      {
        kind: "input",
        name: "payload",
        label: "Your vehicle may carry",
        measure: "mass",
        default: "1000 lb",
        least: "50 lb",
        most: "40000 lb",
        why: "It is on the plate in the door frame; people and trailer count against it.",
        sources: [USER],
        cautions: [
          "An overloaded vehicle brakes late and steers badly. Tie the load down, and mark what sticks out behind.",
        ],
      },
      {
        kind: "formula",
        name: "haul_trips",
        label: "Runs",
        measure: "count",
        formula: "MAX(0; ROUNDUP(haul_mass / payload - rounding_tolerance; 0))",
        why: "By weight alone. Long or bulky things may need one more.",
        sources: [ARITHMETIC],
      },
      {
        kind: "formula",
        name: "longest_piece",
        label: "Longest single piece",
        measure: "length",
        formula: "MAX(stock_to_buy.length)",
        why: "Does it go into or onto your vehicle, and round the corner of the house?",
        sources: [GEOMETRY],
      },
      ownHaulage(barrows),
      stageLoads,
    ],
  }
}

/** Where stone comes and soil goes by barrow. */
export const haulage: Section = haulageOf("stone_barrows + spoil_barrows")
