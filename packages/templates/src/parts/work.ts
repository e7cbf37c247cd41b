import type { CheckEntry, Definition, Section, Stage, TableEntry } from "@pegbook/engine"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { solveThingsByStage, thingsByStageReads } from "../solvers/things-by-stage.ts"
import { ARITHMETIC, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { type Consumable, consumablesBought, consumablesOf } from "../stages/consumables.ts"
import type { Work } from "../stages/work.ts"
import { batteriesOf } from "./batteries.ts"
import { disposalOf } from "./disposal.ts"
import { rowChoice } from "./row-choice.ts"
import { handToolsOf, toolsOf, toolTables } from "./tools.ts"

/** A job in the order of its work. */
export interface Job {
  readonly works: readonly Work[]
  /** Everything bought besides timber and what is used up. */
  readonly things: readonly BoughtThing[]
  readonly consumables: readonly Consumable[]
  /** The unit in which lengths of timber are added up. */
  readonly lengthUnit: "ft" | "m"
  /** Name of the loose soil out of holes that are not part of the dig. */
  readonly holes?: string
  /** Names whose product is the area that turf is lifted from. */
  readonly turf: readonly string[]
}

/** The stages of a job, each with people and hours from the table of rates. */
export function stagesOf({ works }: Job): NonNullable<Definition["stages"]> {
  const [last] = works.slice(-1)
  const cell = (column: string, is: string) => ({
    column: `work_rates.${column}`,
    where: "work_rates.stage",
    is,
  })
  return works.map(
    ({ stage, tools }): Stage => ({
      ...stage,
      tables: [
        ...toolTables(stage.title, tools),
        ...(stage === last?.stage
          ? [{ table: "disposal", columns: ["what", "amount", "unit", "goes"] }]
          : []),
      ],
      people: cell("people", stage.title),
      hours: cell("hours", stage.title),
      days: cell("days", stage.title),
    }),
  )
}

/**
 * How long each stage takes, what is used up, what tools want, and whether anything was forgotten. Needs: the set-out sheet, what
 * the works, things and consumables name, timber_pieces, stock_to_buy, fixings, rounding_tolerance.
 */
export function workOf(job: Job): Section {
  return {
    id: "work",
    title: "Order of the work",
    says: "How long each stage takes, what it uses up, and whether every thing that is bought has its place in the work.",
    entries: [
      ratesOf(job.works),
      consumablesOf(job.consumables),
      toolsOf(job.works),
      handToolsOf(job.works),
      ...batteriesOf(job.works),
      thingsByStage(job),
      disposalOf(job),
      nothingForgotten,
    ],
  }
}

const YOURS = practice("no published rate was found; time your own first hour")

function ratesOf(works: readonly Work[]): TableEntry {
  const titles = works.map(({ stage }) => stage.title)
  return {
    kind: "table",
    name: "work_rates",
    label: "How long each stage takes",
    why: "No source: guesses for somebody who does it for the first time. Time yourself at the first of each and write your own.",
    sources: [YOURS],
    rows: { kind: "figures" },
    columns: [
      {
        name: "stage",
        label: "Stage",
        measure: "text",
        values: titles,
        why: "In the order of the work.",
        sources: [ARITHMETIC],
      },
      {
        name: "of",
        label: "Counted by",
        measure: "text",
        values: works.map(({ rate }) => rate.of),
        why: "What there is many of in this stage.",
        sources: [ARITHMETIC],
      },
      {
        name: "number",
        label: "How many",
        measure: "count",
        formula: rowChoice(
          "stage",
          works.map(({ stage, rate }) => ({ row: stage.title, formula: rate.number })),
        ),
        why: "By the plan as it is now.",
        sources: [ARITHMETIC],
      },
      {
        name: "each",
        label: "One takes",
        measure: "time",
        values: works.map(({ rate }) => rate.each),
        why: "With that many people at it. No source; yours to change.",
        sources: [YOURS],
      },
      {
        name: "people",
        label: "People",
        measure: "count",
        values: works.map(({ rate }) => `${rate.people}`),
        why: "Two where something long or heavy is held. Yours to change.",
        sources: [USER],
      },
      {
        name: "hours",
        label: "Takes",
        measure: "time",
        formula: "number * each",
        why: "Without breaks, weather and waiting for deliveries.",
        sources: [ARITHMETIC],
      },
      {
        name: "day",
        label: "A day's work",
        measure: "time",
        values: works.map(() => "6 h"),
        why: "Hours of real work in a day. Yours to change.",
        sources: [practice("six hours of eight")],
      },
      {
        name: "days",
        label: "Days",
        measure: "count",
        formula: "MAX(1; ROUNDUP(hours / day - rounding_tolerance; 0))",
        why: "Whole days: what a calendar and a hirer count.",
        sources: [ARITHMETIC],
      },
      {
        name: "hours_of_all",
        label: "Hours of all people",
        measure: "time",
        formula: "hours * people",
        why: "What to ask of friends.",
        sources: [ARITHMETIC],
      },
    ],
  }
}

function thingsByStage({ works, things, consumables, lengthUnit }: Job): TableEntry {
  const stages = works.map(({ stage }) => stage)
  const all = [...things, ...consumablesBought(consumables)]
  const column = (name: string, label: string, measure: "text" | "ratio" | "count", why: string) => ({
    name,
    label,
    measure,
    why,
    sources: [ARITHMETIC],
  })
  return {
    kind: "table",
    name: "things_by_stage",
    label: "What is bought, and where it is used",
    why: "Every thing bought is used in some stage, and every stage finds what it needs on a list: what one side has alone was forgotten.",
    sources: [ARITHMETIC],
    rows: {
      kind: "solved",
      from: thingsByStageReads(stages, all),
      solve: solveThingsByStage(stages, all, lengthUnit),
    },
    columns: [
      column("item", "What", "text", "Timber by its size, the rest by its name."),
      column("unit", "In", "text", "What the amounts are counted in."),
      column("bought", "Bought", "ratio", "With spare and whole packs' worth, as on the lists."),
      column("used", "Used", "ratio", "Added up over the stages."),
      column("left", "Left over", "ratio", "Spare, off-cuts and what rounding up adds."),
      column("stages", "In these stages", "text", "Where it is used."),
      column("matched", "In order", "count", "1: bought, used, and enough of it."),
      column("finding", "Finding", "text", "What is the matter, where something is."),
    ],
  }
}

const nothingForgotten: CheckEntry = {
  kind: "check",
  name: "nothing_forgotten_check",
  label: "Is nothing forgotten?",
  why: "A box of nails that nobody wrote down costs a day. This looks from both sides: things without a stage, stages without their things.",
  sources: [ARITHMETIC],
  measure: "count",
  demand: "SUM(things_by_stage.matched)",
  limit: "COUNT(things_by_stage.matched)",
  sense: "at_least",
  advice: [
    "Look at the table of what is bought and where it is used: each line that is not in order says why.",
  ],
}
