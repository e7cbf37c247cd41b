import type { Solution, SolverGiven } from "@pegbook/engine"
import { type BoughtThing, sameItem } from "./bought-things.ts"
import { type BuyingPlan, buyingReads, type PricedLine, readBuying } from "./buying-plan.ts"
import { orderOf, priceAt } from "./order-choice.ts"
import { dayInWords } from "./price-offers.ts"
import { shopGroupOf } from "./shop-groups.ts"
import { choiceReads, chosenIn, waysOf } from "./supplier-choice.ts"

const STAGE_READS = ["things_by_stage.item", "things_by_stage.stages", "things_by_stage.used"] as const

/** The names that a buying list of these things is worked from. */
export function buyListReads(things: readonly BoughtThing[]): readonly string[] {
  return [...buyingReads(things), ...choiceReads, ...STAGE_READS]
}

const TIMES = 12
/** Sums of packs and parts of units: far below what anybody buys, far above what doubles blur. */
const plain = (number: number): number => Number(number.toPrecision(TIMES))

/**
 * Everything to buy, one thing a row, and two rows where two offers are mixed: item, length, group, stage, stages, quantity, unit, supplier, take,
 * take_unit, packs, pack_size, gets, left, bought, price_unit, price, lead, order_by, assumed, finding. The length is that of timber, nothing for other
 * things. A thing without a price is listed all the same, with a price of nothing, and named in the report; what stops a
 * price from being used is `unmet`.
 */
export function solveBuyList(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const plan = readBuying(given, things)
    const { only } = plan
    const way = waysOf(plan.suppliers.map(({ supplier }) => supplier))[only === undefined ? 0 : only + 1]
    const chosen = chosenIn(given, plan, way?.plan ?? "")
    const stages = stagesOf(given)
    const without: string[] = []
    const rows = plan.lines.flatMap((line, at) => {
      const taken = chosen?.[at] ?? []
      const { stage, all, used } = stages(line.item)
      const place = {
        item: line.item,
        length: line.length,
        group: line.isTimber ? "timber" : (shopGroupOf(line.item) ?? ""),
        stage,
        stages: all,
      }
      const usedHere = line.isTimber || line.isOwn ? line.need : used
      if (taken.length === 0) {
        without.push(line.label)
        return [{ ...place, ...unpriced(line, usedHere, only === undefined ? undefined : plan) }]
      }
      let rest = line.need
      return taken.map(({ offer, packs }, part) => {
        const one = line.offers[offer]
        if (one === undefined) throw new RangeError(`${line.item}: no offer ${offer}`)
        const gets = plain(packs * one.size)
        const share = part === taken.length - 1 ? rest : Math.min(rest, gets)
        rest -= share
        const quantity = plain(share * one.unitsEach)
        const inPacks = one.isPack ? packs : line.packs === undefined || one.isPack ? 0 : line.packs.count
        const age = ageOf(one.date, plan)
        return {
          ...place,
          quantity,
          unit: one.unit,
          supplier: plan.suppliers[one.supplier]?.supplier ?? "",
          take: plain(one.isPack ? packs : gets * one.unitsEach),
          take_unit: one.isPack ? one.priceUnit : one.unit,
          packs: inPacks,
          pack_size: one.isPack ? plain(one.size * one.unitsEach) : wholeUnit(line),
          gets: plain(gets * one.unitsEach),
          // Spare is left over too: what no stage uses.
          left: leftOver(line, gets, share, usedHere, taken.length === 1) * one.unitsEach,
          bought: plain(packs),
          price_unit: one.priceUnit,
          price: priceAt(one, packs) ?? 0,
          lead: one.lead,
          order_by: plan.rules.start === undefined ? "" : dayInWords(plan.rules.start - Math.ceil(one.lead)),
          assumed: assumedOf(one, gets > share + 1e-9, line),
          finding: age,
        }
      })
    })
    const goods = chosen === undefined ? undefined : orderOf(plan.lines, plan.asOrdered, chosen).goods
    return {
      rows,
      report: { method: methodOf(without), unmet: [...plan.unmet, ...belowLeast(plan, goods)] },
    }
  }
}

/** What has no price, as the design counts it. */
function unpriced(line: PricedLine, used: number, only: BuyingPlan | undefined) {
  const { need, unit, packs } = line
  const seller = only?.suppliers[only.only ?? 0]?.supplier
  const gets = packs === undefined ? need : packs.count * packs.size
  return {
    quantity: need,
    unit,
    supplier: "",
    take: packs === undefined ? need : packs.count,
    take_unit: packs === undefined ? unit : packs.unit,
    packs: packs?.count ?? 0,
    pack_size: packs?.size ?? wholeUnit(line),
    gets,
    left: plain(Math.max(0, gets - used)),
    bought: 0,
    price_unit: NO_PRICE,
    price: 0,
    lead: 0,
    order_by: "",
    assumed: "",
    finding: seller === undefined || line.offers.length === 0 ? NO_PRICE : `not from ${seller}`,
  }
}

const NO_PRICE = "no price"

/** One, of what is counted by the piece; nothing of what is measured off. */
function wholeUnit({ unit }: PricedLine): number {
  return unit === "each" ? 1 : 0
}

function leftOver(line: PricedLine, gets: number, share: number, used: number, alone: boolean): number {
  return plain(Math.max(0, gets - (alone && !line.isTimber ? Math.min(used, gets) : share)))
}

function assumedOf(offer: PricedLine["offers"][number], more: boolean, { isTimber }: PricedLine): string {
  const says = [
    ...(offer.amount === undefined ? [] : ["sold by measure, as much as is wanted"]),
    ...(offer.isPack ? ["whole packs only"] : []),
    ...(more ? ["more than is needed, because it costs less or packs are whole"] : []),
    ...(isTimber && offer.everyLength ? ["one price for every length"] : []),
    ...(offer.date === undefined ? ["the price has no day"] : []),
  ]
  return says.join("; ")
}

function ageOf(date: number | undefined, { rules }: BuyingPlan): string {
  if (date === undefined || rules.today === undefined) return "in order"
  const age = rules.today - date
  return age > rules.priceAge ? `price is ${age} days old: ask again` : "in order"
}

function belowLeast({ suppliers }: BuyingPlan, goods: readonly number[] | undefined): readonly string[] {
  return suppliers.flatMap(({ supplier, least }, at) => {
    const here = goods?.[at] ?? 0
    return here > 0 && here < least
      ? [
          `${supplier} takes orders from ${(least / 100).toFixed(2)}, and no order reaches that; this one comes to ${(here / 100).toFixed(2)}. Ask, or enter another supplier's prices.`,
        ]
      : []
  })
}

function stagesOf(given: SolverGiven) {
  const [items, stages, used] = STAGE_READS.map((name) => given.column(name))
  return (item: string) => {
    const row = items?.findIndex((one) => sameItem(String(one), item)) ?? -1
    const all = String(stages?.[row] ?? "")
    return { stage: all.split("; ")[0] ?? "", all, used: Number(used?.[row] ?? 0) }
  }
}

function methodOf(without: readonly string[]): string {
  const method = "the choice of suppliers, by your prices"
  return without.length === 0 ? method : `${method}; no price for ${without.join("; ")}`
}
