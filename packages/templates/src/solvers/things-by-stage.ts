import type { Solution, SolverGiven, Stage, StageNeed } from "@pegbook/engine"
import {
  type BoughtThing,
  heldOf,
  inUnit,
  namesOf,
  sameItem,
  TIMBER_READS,
  timberBought,
} from "./bought-things.ts"

const PIECES = [
  "timber_pieces.part",
  "timber_pieces.size",
  "timber_pieces.length",
  "timber_pieces.count",
] as const
const FIXINGS = ["fixings.joint", "fixings.number"] as const

/** The names that the balance of what is bought and what the stages use is worked from. */
export function thingsByStageReads(
  stages: readonly Pick<Stage, "needs">[],
  things: readonly BoughtThing[],
): readonly string[] {
  const amounts = stages
    .flatMap(({ needs }) => needs)
    .flatMap((need) => ("amount" in need ? namesOf(need.amount) : []))
  return [
    ...new Set([
      ...TIMBER_READS,
      ...PIECES,
      ...FIXINGS,
      ...amounts,
      ...things.flatMap(({ quantity }) => namesOf(quantity)),
    ]),
  ]
}

/** What the rows say of themselves. */
const FINDING = {
  fine: "in order",
  unused: "no stage uses it",
  unlisted: "on no list of things to buy",
  short: "less is bought than is used",
} as const

/** Sawn lengths add up in whole nanometres; a millionth is far below what anybody buys. */
const SAME = 1e-6

interface Use {
  readonly stage: string
  readonly need: StageNeed
}

/**
 * What is bought held against what the stages of the work use, one thing a row, and timber by its size: item, unit, bought,
 * used, left, stages, matched (1 or 0), finding. What one side has alone is a row as well, and not matched.
 */
export function solveThingsByStage(
  stages: readonly Pick<Stage, "title" | "needs">[],
  things: readonly BoughtThing[],
  lengthUnit: "ft" | "m",
): (given: SolverGiven) => Solution {
  const uses: readonly Use[] = stages.flatMap(({ title, needs }) =>
    needs.map((need) => ({ stage: title, need })),
  )
  return (given) => {
    const rows = [
      ...timberRows(given, uses, lengthUnit),
      ...things.flatMap((thing) => {
        const ofThing = uses.filter(({ need }) => sameItem(need.thing, thing.item))
        const to = (held: number): number => inUnit(held, thing.unit, thing.measure) ?? held
        const bought = to(heldOf(given, thing.quantity))
        const used = ofThing.reduce((sum, { need }) => sum + to(usedBy(given, need)), 0)
        return row(thing.item, thing.unit, bought, used, titles(ofThing))
      }),
      ...uses.flatMap(({ stage, need }) => {
        const listed = isTimber(need) || things.some(({ item }) => sameItem(need.thing, item))
        const used = listed ? 0 : usedBy(given, need)
        return used > 0 ? row(need.thing, "each", 0, used, stage, FINDING.unlisted) : []
      }),
    ]
    return {
      rows,
      report: {
        method: "each thing bought is looked for among the stages, and the other way round",
        unmet: rows
          .filter(({ matched }) => matched === 0)
          .map(({ item, finding }) => `${item}: ${finding}. Look at the list and at the steps of the work.`),
      },
    }
  }
}

function isTimber(need: StageNeed): boolean {
  return "table" in need && need.table === "timber_pieces"
}

function titles(uses: readonly Use[]): string {
  return [...new Set(uses.map(({ stage }) => stage))].join("; ")
}

/** A stage's use of one thing, in held units. */
function usedBy(given: SolverGiven, need: StageNeed): number {
  if ("amount" in need) return heldOf(given, need.amount)
  const numbers = given.column("fixings.number").map(Number)
  return given
    .column("fixings.joint")
    .reduce<number>((sum, joint, at) => sum + (need.is.includes(String(joint)) ? (numbers[at] ?? 0) : 0), 0)
}

function row(
  item: string,
  unit: string,
  bought: number,
  used: number,
  stages: string,
  fault?: string,
): readonly ReturnType<typeof rowOf>[] {
  return bought > 0 || used > 0 ? [rowOf(item, unit, bought, used, stages, fault)] : []
}

function rowOf(item: string, unit: string, bought: number, used: number, stages: string, fault?: string) {
  const short = used > bought * (1 + SAME) ? FINDING.short : undefined
  const finding = fault ?? (stages === "" ? FINDING.unused : (short ?? FINDING.fine))
  const left = Number((bought - used).toPrecision(12))
  return { item, unit, bought, used, left, stages, matched: finding === FINDING.fine ? 1 : 0, finding }
}

function timberRows(given: SolverGiven, uses: readonly Use[], unit: "ft" | "m") {
  const bought = new Map<string, number>()
  for (const { size, length, count } of timberBought(given))
    bought.set(size, (bought.get(size) ?? 0) + length * count)

  const [sizes, lengths, counts] = [
    given.column("timber_pieces.size").map(String),
    given.column("timber_pieces.length").map(Number),
    given.column("timber_pieces.count").map(Number),
  ]
  const used = new Map<string, number>()
  const usesOf = new Map<string, Use[]>()
  const astray: ReturnType<typeof rowOf>[] = []
  for (const [at, part] of given.column("timber_pieces.part").map(String).entries()) {
    const size = sizes[at] ?? ""
    const run = (lengths[at] ?? 0) * (counts[at] ?? 0)
    const ofPart = uses.filter(({ need }) => isTimber(need) && "is" in need && need.is.includes(part))
    if (ofPart.length === 0) {
      const held = inUnit(run, unit, "length") ?? run
      astray.push(rowOf(`${part}, ${size}`, unit, held, held, "", FINDING.unused))
    }
    used.set(size, (used.get(size) ?? 0) + run)
    usesOf.set(size, [...(usesOf.get(size) ?? []), ...ofPart])
  }
  const inThat = (held: number): number => inUnit(held, unit, "length") ?? held
  const names = [...new Set([...bought.keys(), ...used.keys()])]
  return [
    ...names.flatMap((size) =>
      row(
        size,
        unit,
        inThat(bought.get(size) ?? 0),
        inThat(used.get(size) ?? 0),
        titles(usesOf.get(size) ?? []),
      ),
    ),
    ...astray,
  ]
}
