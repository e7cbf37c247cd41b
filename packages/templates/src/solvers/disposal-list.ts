import type { Solution, SolverGiven } from "@pegbook/engine"
import { type BoughtThing, inUnit } from "./bought-things.ts"

/** What a job leaves behind besides what its lists have left over. */
export interface Leavings {
  readonly things: readonly BoughtThing[]
  /** In which soil and turf are counted. */
  readonly volumeUnit: "yd3" | "m3"
  readonly areaUnit: "ft2" | "m2"
  /** Name of the loose soil out of holes that are not part of the dig. */
  readonly holes?: string
  /** Name of the area that turf is lifted from, where the whole of it is. */
  readonly turf?: string
}

const LEFT = [
  "things_by_stage.item",
  "things_by_stage.unit",
  "things_by_stage.bought",
  "things_by_stage.left",
  "stock_to_buy.size",
] as const

const packsOf = ({ things }: Leavings): readonly string[] =>
  things.flatMap(({ packs }) => (packs === undefined ? [] : [packs.count]))

/** The names that the list is worked from. */
export function disposalReads(leavings: Leavings): readonly string[] {
  const { holes, turf } = leavings
  const named = [holes, turf].filter((name) => name !== undefined)
  return [...LEFT, "dug_volume_loose", ...named, ...packsOf(leavings)]
}

/** Where each kind goes. */
const GOES = {
  soil: "hollows away from the platform, or the tip: ask what it may be used for",
  turf: "bare patches within two days, or a heap, grass down, to rot",
  offcuts: "the tip, as treated wood: never burned, never mulched",
  back: "back to the shop, if whole and unopened; else keep for repairs",
  stone: "a path or a drain: what was tipped out is not taken back",
  tins: "where the authority takes hazardous waste: never a drain or a bin",
  packs: "paper, plastic and straps apart; cut straps away from your face",
} as const

/** Named alike in every list. */
const TIN = "preservative tin"

/**
 * What there is to carry away when the work is done, one thing a row: what, amount, unit, goes. What there is none of is
 * left out. Off-cuts are what is bought and not in the work.
 */
export function solveDisposal(leavings: Leavings): (given: SolverGiven) => Solution {
  const { holes, turf, volumeUnit, areaUnit } = leavings
  return (given) => {
    const [items, units, bought, left] = LEFT.slice(0, 4).map((name) => given.column(name))
    const sizes = new Set(given.column("stock_to_buy.size").map(String))
    const rowOf = (what: string, amount: number, unit: string, goes: string) =>
      amount > 0 ? [{ what, amount, unit, goes }] : []
    const soil = given.number("dug_volume_loose") + (holes === undefined ? 0 : given.number(holes))
    const packs = packsOf(leavings).reduce((sum, name) => sum + given.number(name), 0)
    const rows = [
      ...rowOf("soil, loose", inUnit(soil, volumeUnit, "bulk_volume") ?? 0, volumeUnit, GOES.soil),
      ...(turf === undefined
        ? []
        : rowOf("turf, in sods", inUnit(given.number(turf), areaUnit, "area") ?? 0, areaUnit, GOES.turf)),
      ...(items ?? []).flatMap((item, at) => {
        const what = String(item)
        const unit = String(units?.[at] ?? "")
        const over = Number(left?.[at] ?? 0)
        if (sizes.has(what)) return rowOf(`off-cuts of ${what}`, over, unit, GOES.offcuts)
        if (what === TIN)
          return rowOf("empty tin of preservative", Number(bought?.[at] ?? 0), unit, GOES.tins)
        if (unit === volumeUnit) return rowOf(what, over, unit, GOES.stone)
        return rowOf(what, unit === "each" ? Math.floor(over) : over, unit, GOES.back)
      }),
      ...rowOf("empty box", packs, "each", GOES.packs),
    ]
    return { rows, report: { method: "what is bought and dug, less what is in the work", unmet: [] } }
  }
}
