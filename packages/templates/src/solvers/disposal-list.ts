import type { Solution, SolverGiven } from "@pegbook/engine"
import { type BoughtThing, inUnit, sameItem } from "./bought-things.ts"

/** What a job leaves behind besides what its lists have left over. */
export interface Leavings {
  readonly things: readonly BoughtThing[]
  /** In which soil and turf are counted. */
  readonly volumeUnit: "yd3" | "m3"
  readonly areaUnit: "ft2" | "m2"
  /** Name of the loose soil out of holes that are not part of the dig. */
  readonly holes?: string
  /** Names whose product is the area that turf is lifted from. */
  readonly turf: readonly string[]
}

const LEFT = [
  "things_by_stage.item",
  "things_by_stage.unit",
  "things_by_stage.bought",
  "things_by_stage.used",
  "things_by_stage.left",
  "stock_to_buy.size",
] as const
const PIECES = ["timber_pieces.part", "timber_pieces.size", "timber_pieces.count"] as const

/** The names that the list is worked from. */
export function disposalReads({ things, holes, turf }: Leavings): readonly string[] {
  const packs = things.flatMap(({ packs }) => (packs === undefined ? [] : [packs.count, packs.size]))
  const soil = ["dug_volume_loose", ...(holes === undefined ? [] : [holes])]
  return [...new Set([...LEFT, ...PIECES, ...soil, ...turf, ...packs])]
}

/** Where each kind goes. */
const GOES = {
  soil: "hollows away from the platform, or the tip: ask what it may be used for",
  turf: "bare patches within two days, or a heap, grass down, to rot",
  offcuts: "the tip, as treated wood: never burned, never mulched",
  back: "back to the shop, if whole and unopened; else keep for repairs",
  unopened: "back to the shop, unopened and with the receipt",
  loose: "keep for repairs: opened boxes are not taken back",
  spare: "back to the shop, if uncut and dry; else keep for repairs",
  stone: "a path or a drain: what was tipped out is not taken back",
  tins: "where the authority takes hazardous waste: never a drain or a bin",
  packs: "paper, plastic and straps apart; cut straps away from your face",
} as const

/** Named alike in every list. */
const TIN = "preservative tin"
const SPARE_BOARD = "spare board"

/** Noise of doubles: a box that is full to the screw is a whole one. */
const NOISE = 1e-9

type Row = Readonly<Record<"what" | "unit" | "goes", string> & Record<"amount", number>>

const rowOf = (what: string, amount: number, unit: string, goes: string): readonly Row[] =>
  amount > 0 ? [{ what, amount, unit, goes }] : []

/**
 * What there is to carry away when the work is done, one thing a row: what, amount, unit, goes. What there is none of is
 * left out. Off-cuts are what is bought and not in the work; of packs, whole ones may go back.
 */
export function solveDisposal(leavings: Leavings): (given: SolverGiven) => Solution {
  const { things, holes, turf, volumeUnit, areaUnit } = leavings
  return (given) => {
    const [items, units, bought, used, left] = LEFT.slice(0, 5).map((name) => given.column(name))
    const sizes = new Set(given.column("stock_to_buy.size").map(String))
    const sods = turf.reduce((area, name) => area * given.number(name), 1)
    const soil = given.number("dug_volume_loose") + (holes === undefined ? 0 : given.number(holes))
    const packs = things.flatMap((thing) => opened(given, thing, items, used))
    const rows = [
      ...rowOf("soil, loose", inUnit(soil, volumeUnit, "bulk_volume") ?? 0, volumeUnit, GOES.soil),
      ...rowOf("turf, in sods", inUnit(sods, areaUnit, "area") ?? 0, areaUnit, GOES.turf),
      ...(items ?? []).flatMap((item, at) => {
        const what = String(item)
        const unit = String(units?.[at] ?? "")
        const over = Number(left?.[at] ?? 0)
        if (sizes.has(what)) return rowOf(`off-cuts of ${what}`, over, unit, GOES.offcuts)
        if (what === TIN)
          return rowOf("empty tin of preservative", Number(bought?.[at] ?? 0), unit, GOES.tins)
        if (unit === volumeUnit) return rowOf(what, over, unit, GOES.stone)
        const pack = packs.find((one) => sameItem(one.item, what))
        if (pack === undefined) return rowOf(what, unit === "each" ? Math.floor(over) : over, unit, GOES.back)
        return [
          ...rowOf(`unopened ${pack.unit} of ${pack.item}`, pack.unopened, "each", GOES.unopened),
          ...rowOf(what, pack.loose, unit, GOES.loose),
        ]
      }),
      ...spareBoards(given),
      ...rowOf(
        "empty box",
        packs.reduce((sum, { emptied }) => sum + emptied, 0),
        "each",
        GOES.packs,
      ),
    ]
    return { rows, report: { method: "what is bought and dug, less what is in the work", unmet: [] } }
  }
}

interface Opened {
  readonly item: string
  readonly unit: string
  /** Whole packs that nobody opened, emptied ones, and what is loose in the last that was opened. */
  readonly unopened: number
  readonly emptied: number
  readonly loose: number
}

/** How the packs of a thing stand when its use is over; nothing for what is not bought in packs. */
function opened(
  given: SolverGiven,
  { item, packs }: BoughtThing,
  items: readonly unknown[] | undefined,
  used: readonly unknown[] | undefined,
): readonly Opened[] {
  if (packs === undefined) return []
  const at = (items ?? []).findIndex((one) => sameItem(String(one), item))
  const need = Number(used?.[at] ?? 0)
  const [count, size] = [given.number(packs.count), given.number(packs.size)]
  const emptied = Math.min(count, Math.ceil(need / size - NOISE))
  return [{ item, unit: packs.unit, unopened: count - emptied, emptied, loose: emptied * size - need }]
}

/** Boards bought to be left over, by their size. */
function spareBoards(given: SolverGiven): readonly Row[] {
  const [parts, sizes, counts] = [
    given.column("timber_pieces.part").map(String),
    given.column("timber_pieces.size").map(String),
    given.column("timber_pieces.count").map(Number),
  ]
  const spare = new Map<string, number>()
  for (const [at, part] of parts.entries())
    if (part === SPARE_BOARD)
      spare.set(sizes[at] ?? "", (spare.get(sizes[at] ?? "") ?? 0) + (counts[at] ?? 0))
  return [...spare].flatMap(([size, count]) => rowOf(`spare board of ${size}`, count, "each", GOES.spare))
}
