import type { Source, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { DRIVER, type Work } from "../stages/work.ts"
import { rowChoice } from "./row-choice.ts"

const COLD: Source = {
  kind: "handbook",
  title: "Comparison of battery types by a maker of power tools, cold-capacity row",
  origin: "read",
  record: "k-003",
}
const COLD_NICKEL: Source = {
  kind: "handbook",
  title: "Comparison of battery types by a maker of power tools, cold-capacity row",
  note: "NiCd at -18 °C, NiMH at -15 °C",
  origin: "read",
  record: "k-001",
}
const FREEZING: Source = {
  kind: "memory",
  title: "Data sheets of common lithium cells",
  note: "80 to 90 per cent at freezing; the lower is taken",
  origin: "memory",
  record: "k-006",
}
const WARM: Source = {
  kind: "common_practice",
  title: "Common practice, no source",
  note: "the size printed on a battery is for a warm day",
}
const SCREWS: Source = {
  kind: "memory",
  title: "Screws by the energy of a battery",
  note: "3.3 screws of 2 1/2 in to a watt-hour, worked from a mean torque; reports of 2 to 4; no measured figure was found",
  origin: "memory",
  record: "k-009",
}

interface ColdRow {
  readonly kind: string
  readonly temperature: string
  readonly capacity: string
}

/** From warm to cold within each kind: the row above is the next warmer one. */
const PUBLISHED: readonly ColdRow[] = [
  { kind: "Li-ion", temperature: "20 °C", capacity: "100 %" },
  { kind: "Li-ion", temperature: "0 °C", capacity: "80 %" },
  { kind: "Li-ion", temperature: "-20 °C", capacity: "50 %" },
  { kind: "NiCd", temperature: "20 °C", capacity: "100 %" },
  { kind: "NiCd", temperature: "-18 °C", capacity: "40 %" },
  { kind: "NiMH", temperature: "20 °C", capacity: "100 %" },
  { kind: "NiMH", temperature: "-15 °C", capacity: "0 %" },
]

/** Of the row above, where it is of the same kind; else of this row. */
const ofWarmer = (name: string): string =>
  `IF(INDEX(battery_charges.kind; MAX(1; ROW() - 1)) = kind; INDEX(battery_charges.${name}; MAX(1; ROW() - 1)); ${name})`

const DAY = "INDEX(driving_day.temperature; 1)"

/** Published cold capacity of batteries. Needs driving_day, screw_count, frame_screw_count, rounding_tolerance. */
const capacities: TableEntry = {
  kind: "table",
  name: "battery_charges",
  label: "Charges of a battery for all screws",
  why: "Cold takes much of a battery away, and of some kinds all of it. Keep the spare one warm indoors.",
  sources: [COLD, COLD_NICKEL, FREEZING, WARM, SCREWS],
  cautions: ["Never charge a lithium battery that is below freezing: let it warm up indoors first."],
  rows: { kind: "figures" },
  columns: [
    {
      name: "kind",
      label: "Kind of battery",
      measure: "text",
      values: PUBLISHED.map(({ kind }) => kind),
      why: "Printed on it: lithium, nickel-cadmium or nickel-metal hydride cells.",
      sources: [COLD, COLD_NICKEL],
    },
    {
      name: "temperature",
      label: "On a day of",
      measure: "temperature",
      values: PUBLISHED.map(({ temperature }) => temperature),
      why: "Of the battery, which is that of the air after an hour outdoors.",
      sources: [COLD, COLD_NICKEL],
    },
    {
      name: "capacity",
      label: "Gives",
      measure: "share",
      values: PUBLISHED.map(({ capacity }) => capacity),
      why: "Of what is printed on it.",
      sources: [WARM, FREEZING, COLD, COLD_NICKEL],
    },
    {
      name: "battery",
      label: "Battery",
      measure: "energy",
      values: PUBLISHED.map(() => "36 Wh"),
      why: "Volts times ampere-hours, printed on it: 18 V and 2 Ah here. Yours to change.",
      sources: [USER],
    },
    {
      name: "per_screw",
      label: "One screw takes",
      measure: "energy",
      values: PUBLISHED.map(() => "0.3 Wh"),
      why: "With the driver's own losses. Soft wood and drilled holes take less.",
      sources: [SCREWS],
    },
    column(
      "screws",
      "Screws to a charge",
      "count",
      "ROUNDDOWN(battery * capacity / per_screw; 0)",
      "As many as that energy drives.",
      ARITHMETIC,
    ),
    column(
      "charges",
      "Charges for all screws",
      "count",
      "IF(screws < 1; 0; MAX(0; ROUNDUP((screw_count + frame_screw_count) / MAX(1; screws) - rounding_tolerance; 0)))",
      "Over the whole job. 0 where a charge drives none.",
      ARITHMETIC,
    ),
    column(
      "warmer",
      "Next warmer row",
      "temperature",
      ofWarmer("temperature"),
      "Of the same kind; in its warmest row, that row itself.",
      ARITHMETIC,
    ),
    column(
      "on_the_day",
      "Gives on your day",
      "share",
      `IF(AND(kind = INDEX(driving_day.kind; 1); ${DAY} >= temperature); ` +
        `IF(warmer = temperature; capacity; ` +
        `IF(${DAY} >= warmer; 0 * capacity; ` +
        `capacity + (${ofWarmer("capacity")} - capacity) * ((${DAY} - temperature) / (warmer - temperature)))); 0 * capacity)`,
      "Where your day lies between this row and the next warmer one, along a straight line between them. Colder than the coldest published row nothing is counted on.",
      practice("a straight line between two published values"),
    ),
    column(
      "energy_on_the_day",
      "Energy on your day",
      "energy",
      "battery * on_the_day",
      "What that is of your battery.",
      ARITHMETIC,
    ),
    column(
      "screws_on_the_day",
      "Screws on your day",
      "count",
      "ROUNDDOWN(energy_on_the_day / per_screw + rounding_tolerance; 0)",
      "As many as a charge drives then.",
      ARITHMETIC,
    ),
  ],
}

/** One row: the day on which screws are driven. Needs battery_charges. */
const day: TableEntry = {
  kind: "table",
  name: "driving_day",
  label: "The day you drive screws on",
  why: "One line. Put in the coldest day you mean to work on and what your battery is.",
  sources: [USER],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "temperature",
      "Temperature of the day",
      "temperature",
      "10 °C",
      "Of the air where the battery lies. Yours to change.",
      USER,
    ),
    figureColumn(
      "kind",
      "Your battery",
      "text",
      "Li-ion",
      "Write Li-ion, NiCd or NiMH, as in the table of batteries. Of any other nothing is counted on.",
      USER,
    ),
    figureColumn(
      "gives_up",
      "Not worth carrying below",
      "share",
      "25 %",
      "Of what is printed on it: you would walk indoors more than you drive. Yours to change.",
      practice("no published limit was found"),
    ),
    column(
      "capacity",
      "Gives on your day",
      "share",
      "SUM(battery_charges.on_the_day)",
      "By the published cold capacity of its kind; nothing where the day is colder than any that was published.",
      ARITHMETIC,
    ),
    column(
      "screws",
      "Screws to a charge",
      "count",
      "SUM(battery_charges.screws_on_the_day)",
      "As many as that energy drives.",
      ARITHMETIC,
    ),
    column(
      "with",
      "Drive with",
      "text",
      'IF(OR(capacity < gives_up; screws < 1); "a tool with a cord"; "a battery")',
      "A battery that gives up in the cold calls for a tool with a cord, on a socket with a switch that trips on a fault to earth.",
      ARITHMETIC,
    ),
  ],
}

/** Formula of the screws that a stage drives. */
function screwsIn({ stage }: Work): string {
  const joints = stage.needs.flatMap((need) => ("is" in need && need.table === "fixings" ? need.is : []))
  return joints.length === 0
    ? "0"
    : joints.map((joint) => `SUMIF(fixings.joint; "${joint}"; fixings.number)`).join(" + ")
}

/** Screws, energy, charges and bits, for each stage in which screws are driven. Needs fixings, consumables. */
function drivingOf(works: readonly Work[]): TableEntry {
  const driving = works.filter(({ tools }) => tools.includes(DRIVER))
  const cord = 'INDEX(driving_day.with; 1) = "a tool with a cord"'
  return {
    kind: "table",
    name: "driving",
    label: "Screws to drive, step by step",
    why: "So that enough is charged the evening before, at the cold of the day. Holes for bolts and what the lists do not hold are not in it.",
    sources: [ARITHMETIC],
    rows: { kind: "figures" },
    columns: [
      {
        name: "stage",
        label: "For",
        measure: "text",
        values: driving.map(({ stage }) => stage.title),
        why: "The stage of the work.",
        sources: [ARITHMETIC],
      },
      column(
        "screws",
        "Screws to drive",
        "count",
        rowChoice(
          "stage",
          driving.map((work) => ({ row: work.stage.title, formula: screwsIn(work) })),
        ),
        "By the table of fixings, without spare.",
        ARITHMETIC,
      ),
      column(
        "energy",
        "Energy",
        "energy",
        "screws * INDEX(battery_charges.per_screw; 1)",
        "Taken from the battery, the driver's own losses in it.",
        SCREWS,
      ),
      column(
        "charges",
        "Charges of the battery",
        "count",
        `IF(${cord}; 0; MAX(0; ROUNDUP(screws / MAX(1; INDEX(driving_day.screws; 1)) - rounding_tolerance; 0)))`,
        "Whole ones, at the temperature of your day. 0 with a cord.",
        ARITHMETIC,
      ),
      column(
        "bits",
        "Bits worn",
        "count",
        'MAX(0; ROUNDUP(screws / INDEX(consumables.serves; MATCH("driver bit"; consumables.item; 0)) - rounding_tolerance; 0))',
        "Lay as many ready. One serves longer than one stage: the list of what wears out has what to buy in all.",
        ARITHMETIC,
      ),
      column(
        "with",
        "Drive with",
        "text",
        "INDEX(driving_day.with; 1)",
        "By the cold of the day.",
        ARITHMETIC,
      ),
    ],
  }
}

/** Batteries and screws. Needs fixings, consumables, screw_count, frame_screw_count, rounding_tolerance. */
export function batteriesOf(works: readonly Work[]): readonly TableEntry[] {
  return [day, capacities, drivingOf(works)]
}
