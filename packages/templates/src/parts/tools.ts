import type { StageTable, TableEntry } from "@pegbook/engine"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { DRIVER, type PoweredTool, type Work } from "../stages/work.ts"

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
      {
        name: "hire_a_day",
        label: "Hire for a day",
        measure: "money",
        values: rows.map(() => "0"),
        why: "What your hirer asks, with delivery shared out. No price is made up here: it is 0 until you have asked.",
        sources: [USER],
      },
      {
        name: "hire",
        label: "Hire in all",
        measure: "money",
        formula: "IF(hired; days * hire_a_day; 0 * hire_a_day)",
        why: "Of what is hired, by whole days.",
        sources: [ARITHMETIC],
      },
    ],
  }
}

/** Tools that want no power, stage by stage. Needs work_rates. */
export function handToolsOf(works: readonly Work[]): TableEntry {
  const powered = new Set([
    "saw",
    "drill-driver",
    ...works.flatMap(({ tools }) => tools.map(({ tool }) => tool)),
  ])
  const rows = works.flatMap(({ stage }) =>
    stage.tools.filter((tool) => !powered.has(tool)).map((tool) => ({ tool, stage: stage.title })),
  )
  return {
    kind: "table",
    name: "hand_tools",
    label: "Tools without power, stage by stage",
    why: "What to look for in the shed, or to ask the neighbours for, before the stage begins.",
    sources: [practice("what the work is usually done with")],
    rows: { kind: "figures" },
    columns: [
      {
        name: "tool",
        label: "Tool",
        measure: "text",
        values: rows.map(({ tool }) => tool),
        why: "Yours to put another in its place.",
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
        name: "days",
        label: "Days",
        measure: "count",
        formula: "INDEX(work_rates.days; MATCH(stage; work_rates.stage; 0))",
        why: "For how long to borrow it.",
        sources: [ARITHMETIC],
      },
    ],
  }
}

/** What is shown of tools with a stage: those with power, and charges where screws are driven. */
export function toolTables(stage: string, tools: readonly PoweredTool[]): readonly StageTable[] {
  const here = { where: "stage", is: stage }
  return [
    ...(tools.length > 0
      ? [{ table: "power_tools", ...here, columns: ["tool", "power", "hired", "days", "hire"] }]
      : []),
    ...(tools.includes(DRIVER)
      ? [{ table: "driving", ...here, columns: ["screws", "energy", "charges", "bits", "with"] }]
      : []),
  ]
}
