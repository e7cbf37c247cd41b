import type { Solution, SolverGiven } from "@pegbook/engine"
import { sameItem } from "./bought-things.ts"

/** The names that loads by stage are worked from. */
export const LOAD_READS = [
  "haul_list.item",
  "haul_list.length",
  "haul_list.one",
  "haul_list.mass",
  "things_by_stage.item",
  "things_by_stage.stages",
  "payload",
  "own_haulage.bed_length",
] as const

/** Noise of doubles: a load that is full to the gram is one load. */
const NOISE = 1e-9

/**
 * What is hauled for each stage of the work, by the stage that uses it first, one a row: stage, mass, loads, heaviest, longest, sticks_out. Loads are
 * by weight; `sticks_out` is what the longest piece has beyond the bed.
 */
export function solveStageLoads(given: SolverGiven): Solution {
  const items = given.column("haul_list.item").map(String)
  const numbers = (name: string) => given.column(name).map(Number)
  const [lengths, ones, masses] = [
    numbers("haul_list.length"),
    numbers("haul_list.one"),
    numbers("haul_list.mass"),
  ]
  const known = given.column("things_by_stage.item").map(String)
  const stages = given.column("things_by_stage.stages").map(String)
  const payload = given.number("payload")
  const bed = Math.min(...numbers("own_haulage.bed_length"))
  const loads = new Map<string, { mass: number; heaviest: number; longest: number }>()
  for (const [at, item] of items.entries()) {
    const stage = stages[known.findIndex((one) => sameItem(one, item))]?.split("; ")[0] ?? ""
    const { mass, heaviest, longest } = loads.get(stage) ?? { mass: 0, heaviest: 0, longest: 0 }
    loads.set(stage, {
      mass: mass + (masses[at] ?? 0),
      heaviest: Math.max(heaviest, ones[at] ?? 0),
      longest: Math.max(longest, lengths[at] ?? 0),
    })
  }
  const rows = [...loads].map(([stage, { mass, heaviest, longest }]) => ({
    stage,
    mass,
    loads: payload > 0 ? Math.max(0, Math.ceil(mass / payload - NOISE)) : 0,
    heaviest,
    longest,
    sticks_out: Math.max(0, longest - bed),
  }))
  return { rows, report: { method: "the haul list, by the step that uses each thing first", unmet: [] } }
}
