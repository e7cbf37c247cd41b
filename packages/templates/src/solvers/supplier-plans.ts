import type { Solution, SolverGiven } from "@pegbook/engine"
import type { BoughtThing } from "./bought-things.ts"
import { type BuyingPlan, buyingReads, readBuying } from "./buying-plan.ts"
import { deliveryOf, orderOf, type Taken } from "./order-choice.ts"
import { choiceReads, chosenIn, type Way, waysOf } from "./supplier-choice.ts"

/** The names that the ways to buy these things are added up from. */
export function planReads(things: readonly BoughtThing[]): readonly string[] {
  return [...buyingReads(things), ...choiceReads]
}

/**
 * Ways to buy it all, one a row: plan, from, orders, missing, goods, delivery, tax, total, saving, chosen, finding. First the least total over
 * suppliers mixed, then each supplier alone, then the best of those that have everything: one trip. The saving is what the
 * first is cheaper by; nothing where things are missing, for the totals are then of different things.
 */
export function solveSupplierPlans(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const plan = readBuying(given, things)
    if (plan.suppliers.length === 0) return { rows: [], report: { method: METHOD, unmet: [] } }
    const [mixed, ...alone] = waysOf(plan.suppliers.map(({ supplier }) => supplier)).map((way) =>
      wayOf(plan, way, chosenIn(given, plan, way.plan)),
    )
    if (mixed === undefined) throw new RangeError("there is no way to buy")
    const whole = alone.filter(({ missing }) => missing === mixed.missing && missing < plan.lines.length)
    const trip = whole.reduce<Sums | undefined>(
      (best, one) => (best === undefined || one.total < best.total ? one : best),
      undefined,
    )
    const ways = [
      mixed,
      ...alone,
      ...(trip === undefined ? [] : [{ ...trip, plan: "one trip only", finding: trip.plan }]),
    ]
    const inForce = plan.only === undefined ? "" : plan.suppliers[plan.only]?.supplier
    const rows = ways.map((way, at) => ({
      ...way,
      saving: way.missing > mixed.missing ? 0 : Math.max(0, way.total - mixed.total),
      chosen:
        (at === 0 && plan.only === undefined) ||
        (at > 0 && at <= alone.length && way.from === inForce && plan.only === at - 1)
          ? 1
          : 0,
    }))
    return {
      rows,
      report: { method: METHOD, unmet: [] },
    }
  }
}

const METHOD = "the choice of suppliers, added up for each way to buy"

interface Sums {
  readonly plan: string
  readonly from: string
  readonly orders: number
  readonly missing: number
  readonly goods: number
  readonly delivery: number
  readonly tax: number
  readonly total: number
  readonly finding: string
}

function wayOf(
  plan: BuyingPlan,
  { plan: name, only }: Way,
  taken: readonly (readonly Taken[])[] | undefined,
): Sums {
  const order = taken === undefined ? undefined : orderOf(plan.lines, plan.asOrdered, taken)
  const lacking = plan.lines
    .filter(({ offers }) => !offers.some(({ supplier }) => only === undefined || supplier === only))
    .map(({ label }) => label)
  const goods = order?.goods ?? []
  const each = plan.asOrdered.flatMap((supplier, at) => {
    const here = goods[at] ?? 0
    if (here === 0) return []
    const delivery = deliveryOf(supplier, here)
    return [{ here, delivery, tax: (here + delivery) * supplier.tax }]
  })
  const sum = (of: (one: (typeof each)[number]) => number): number =>
    each.reduce((total, one) => total + of(one), 0)
  return {
    plan: name,
    from: only === undefined ? "" : (plan.suppliers[only]?.supplier ?? ""),
    orders: each.length,
    missing: lacking.length,
    goods: sum(({ here }) => here),
    delivery: sum(({ delivery }) => delivery),
    tax: sum(({ tax }) => tax),
    total: order?.total ?? 0,
    finding: lacksInWords(lacking),
  }
}

/** So many things are named; the column beside says how many there are. */
const MOST_NAMED = 3

function lacksInWords(lacking: readonly string[]): string {
  if (lacking.length === 0) return "has everything"
  const named = lacking.slice(0, MOST_NAMED).join("; ")
  const more = lacking.length - MOST_NAMED
  return more > 0 ? `lacks ${named}; and ${more} more` : `lacks ${named}`
}
