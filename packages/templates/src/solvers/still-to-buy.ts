import type { Solution, SolverGiven } from "@pegbook/engine"
import { keyOf, typedLength } from "./bought-things.ts"

/** The names that what is bought already is held against. */
export const STILL_READS = [
  "buy_list.item",
  "buy_list.length",
  "buy_list.stage",
  "buy_list.stages",
  "buy_list.quantity",
  "buy_list.unit",
  "buy_list.pack_size",
  "buy_list.cost",
  "purchases.item",
  "purchases.length",
  "purchases.unit",
  "purchases.bought",
  "purchases.paid",
  "purchases.used",
] as const

/** Lengths are sold to the nearest fraction of an inch; two names of one length are never further apart. */
const HALF_MM = 500_000
const NOISE = 1e-9

interface Purchase {
  readonly item: string
  readonly length: number
  readonly unit: string
  readonly bought: number
  readonly paid: number
  readonly used: number
}

/**
 * The list against what was bought and used, one thing a row: item, length, unit, stage, stages, need, got, short, used, at_hand, returns, planned, paid, finding.
 * `returns`: unopened packs' worth beyond the need. What was bought and is on the list no more is a row as well.
 */
export function solveStillToBuy(given: SolverGiven): Solution {
  const unmet: string[] = []
  const purchases = readPurchases(given, unmet)
  const numbers = (name: string) => given.column(name).map(Number)
  const texts = (name: string) => given.column(name).map(String)
  const [lengths, quantities, packSizes, costs] = [
    numbers("buy_list.length"),
    numbers("buy_list.quantity"),
    numbers("buy_list.pack_size"),
    numbers("buy_list.cost"),
  ]
  const [units, stages, all] = [texts("buy_list.unit"), texts("buy_list.stage"), texts("buy_list.stages")]
  const wanted = new Map<string, ReturnType<typeof wantedRow>>()
  for (const [at, item] of texts("buy_list.item").entries()) {
    const length = lengths[at] ?? 0
    const key = `${keyOf(item)};${length}`
    const known = wanted.get(key)
    const need = (known?.need ?? 0) + (quantities[at] ?? 0)
    const planned = (known?.planned ?? 0) + (costs[at] ?? 0)
    const pack = Math.max(known?.pack ?? 0, packSizes[at] ?? 0)
    wanted.set(
      key,
      wantedRow(item, length, units[at] ?? "", stages[at] ?? "", all[at] ?? "", need, planned, pack),
    )
  }
  const taken = new Set<Purchase>()
  const rows = [...wanted.values()].map((want) => {
    const mine = purchases.filter(
      ({ item, length }) => keyOf(item) === keyOf(want.item) && Math.abs(length - want.length) <= HALF_MM,
    )
    for (const one of mine) {
      taken.add(one)
      if (keyOf(one.unit) !== keyOf(want.unit) && one.unit !== "")
        unmet.push(
          `${one.item} was noted in ${one.unit} and is listed in ${want.unit}: enter again how much you have.`,
        )
    }
    const counted = mine.filter(({ unit }) => unit === "" || keyOf(unit) === keyOf(want.unit))
    return rowOf(want, counted)
  })
  const astray = purchases
    .filter((one) => !taken.has(one) && one.bought > 0)
    .map((one) => rowOf(wantedRow(one.item, one.length, one.unit, "", "", 0, 0, 1), [one]))
  return {
    rows: [...rows, ...astray],
    report: { method: "what you noted as bought, held against the list", unmet: [...new Set(unmet)] },
  }
}

function wantedRow(
  item: string,
  length: number,
  unit: string,
  stage: string,
  stages: string,
  need: number,
  planned: number,
  pack: number,
) {
  return { item, length, unit, stage, stages, need, planned, pack }
}

function rowOf(want: ReturnType<typeof wantedRow>, purchases: readonly Purchase[]) {
  const sum = (of: (one: Purchase) => number): number => purchases.reduce((all, one) => all + of(one), 0)
  const [got, used] = [sum(({ bought }) => bought), sum((one) => one.used)]
  const short = Math.max(0, want.need - got)
  const at_hand = Math.max(0, got - used)
  const beyond = Math.min(got - want.need, at_hand)
  const returns = want.pack > 0 && beyond > 0 ? Math.floor(beyond / want.pack + NOISE) * want.pack : 0
  const { pack: _, planned, ...row } = want
  return {
    ...row,
    got,
    short,
    used,
    at_hand,
    returns,
    planned: short > 0 && want.need > 0 ? planned * Math.min(1, got / want.need) : planned,
    paid: sum(({ paid }) => paid),
    finding: findingOf(want.need, got, short, returns),
  }
}

function findingOf(need: number, got: number, short: number, returns: number): string {
  if (need === 0) return "on the list no more"
  if (returns > 0) return "more than is needed"
  if (short === 0) return "bought"
  return got > 0 ? "not enough" : "to buy"
}

function readPurchases(given: SolverGiven, unmet: string[]): readonly Purchase[] {
  const texts = (name: string) => given.column(name).map((text) => String(text).trim())
  const [lengths, units, paid, used] = [
    texts("purchases.length"),
    texts("purchases.unit"),
    texts("purchases.paid"),
    texts("purchases.used"),
  ]
  const bought = given.column("purchases.bought").map(Number)
  const amount = (column: string, text: string, at: number): number => {
    if (text === "") return 0
    const read = Number(text.replaceAll(/[\s$]/g, "").replaceAll(/,(?=\d{3}(\D|$))/g, ""))
    if (read >= 0) return read
    unmet.push(
      `Line ${at + 1} of what was bought has "${text}" under ${column}, which is no amount. Write a plain number, or leave it empty.`,
    )
    return 0
  }
  return texts("purchases.item").map((item, at) => {
    const typed = lengths[at] ?? ""
    const length = typed === "" ? 0 : typedLength(typed)
    if (length === undefined)
      unmet.push(
        `Line ${at + 1} of what was bought has the length "${typed}", which cannot be read. Write it with its unit, as "12 ft".`,
      )
    return {
      item,
      length: length ?? -1,
      unit: units[at] ?? "",
      bought: Math.max(0, bought[at] ?? 0),
      paid: Math.round(amount("paid", paid[at] ?? "", at) * 100),
      used: amount("used", used[at] ?? "", at),
    }
  })
}
