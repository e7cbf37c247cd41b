import type { Source, TableEntry } from "@pegbook/engine"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import type { PoweredTool, Work } from "../stages/work.ts"

interface ToolRow extends PoweredTool {
  readonly stage: string
}

/** A tool in a stage. Needs work_rates. */
export function toolsOf(works: readonly Work[]): TableEntry {
  const rows: readonly ToolRow[] = works.flatMap(({ stage, tools }) =>
    tools.map((tool) => ({ ...tool, stage: stage.title })),
  )
  return {
    kind: "table",
    name: "power_tools",
    label: "Tools with power, stage by stage",
    why: "What has to be charged, plugged in, fuelled or fetched from the hirer before the stage begins.",
    sources: [practice("what the work is usually done with")],
    cautions: [
      "Outdoors, a switch that trips on a fault to earth stands between you and the mains; joints of cables stay off wet ground.",
    ],
    rows: { kind: "figures" },
    columns: [
      {
        name: "tool",
        label: "Tool",
        measure: "text",
        values: rows.map(({ tool }) => tool),
        why: "Borrowed, bought or hired.",
        sources: [USER],
      },
      {
        name: "stage",
        label: "For",
        measure: "text",
        values: rows.map(({ stage }) => stage),
        why: "The stage of the work.",
        sources: [ARITHMETIC],
      },
      {
        name: "power",
        label: "Power",
        measure: "text",
        values: rows.map(({ power }) => power),
        why: "What it runs on.",
        sources: [USER],
      },
      {
        name: "hired",
        label: "Usually hired",
        measure: "yes_no",
        values: rows.map(({ hired }) => (hired ? "yes" : "no")),
        why: "Too big or too seldom used to own.",
        sources: [practice("a plate tamper is hired")],
      },
      {
        name: "days",
        label: "Days",
        measure: "count",
        formula: "INDEX(work_rates.days; MATCH(stage; work_rates.stage; 0))",
        why: "Whole days that the stage takes: what a hirer charges.",
        sources: [ARITHMETIC],
      },
    ],
  }
}

const COLD: Source = {
  kind: "handbook",
  title: "Comparison of battery types by a maker of power tools, cold-capacity row",
  origin: "read",
  record: "k-003",
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

/** Charges of a battery for all screws, by the cold of the day. Needs screw_count, frame_screw_count, rounding_tolerance. */
export const batteries: TableEntry = {
  kind: "table",
  name: "battery_charges",
  label: "Charges of a battery for all screws",
  why: "Cold takes much of a battery away. Look at the row nearest to your day, and keep the spare one warm indoors.",
  sources: [COLD, FREEZING, WARM, SCREWS],
  cautions: ["Never charge a lithium battery that is below freezing: let it warm up indoors first."],
  rows: { kind: "figures" },
  columns: [
    {
      name: "temperature",
      label: "On a day of",
      measure: "temperature",
      values: ["20 °C", "0 °C", "-20 °C"],
      why: "Of the battery, which is that of the air after an hour outdoors.",
      sources: [COLD],
    },
    {
      name: "capacity",
      label: "Gives",
      measure: "share",
      values: ["100 %", "80 %", "50 %"],
      why: "Of what is printed on it: lithium cells.",
      sources: [WARM, FREEZING, COLD],
    },
    {
      name: "battery",
      label: "Battery",
      measure: "energy",
      values: ["36 Wh", "36 Wh", "36 Wh"],
      why: "Volts times ampere-hours, printed on it: 18 V and 2 Ah here. Yours to change.",
      sources: [USER],
    },
    {
      name: "per_screw",
      label: "One screw takes",
      measure: "energy",
      values: ["0.3 Wh", "0.3 Wh", "0.3 Wh"],
      why: "With the driver's own losses. Soft wood and drilled holes take less.",
      sources: [SCREWS],
    },
    {
      name: "screws",
      label: "Screws to a charge",
      measure: "count",
      formula: "ROUNDDOWN(battery * capacity / per_screw; 0)",
      why: "As many as that energy drives.",
      sources: [ARITHMETIC],
    },
    {
      name: "charges",
      label: "Charges for all screws",
      measure: "count",
      formula: "MAX(0; ROUNDUP((screw_count + frame_screw_count) / screws - rounding_tolerance; 0))",
      why: "Over the whole job.",
      sources: [ARITHMETIC],
    },
  ],
}
