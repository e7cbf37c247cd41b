import type { Solution, SolverGiven } from "@pegbook/engine"
import type { BoughtThing } from "./bought-things.ts"
import { type BuyingPlan, orderFrom, readBuying } from "./buying-plan.ts"
import { deliveryOf } from "./order-choice.ts"

/**
 * Ways to buy it all, one a row: plan, from, orders, missing, goods, delivery, tax, total, saving, chosen, finding. First the least total over
 * suppliers mixed, then each supplier alone, then the best of those that have everything: one trip. The saving is what the
 * first is cheaper by; nothing where things are missing, for the totals are then of different things.
 */
export function solveSupplierPlans(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const plan = readBuying(given, things)
    if (plan.suppliers.length === 0) return { rows: [], report: { method: METHOD, unmet: [] } }
    const mixed = wayOf(plan, MIXED, "", () => true)
    const alone = plan.suppliers.map(({ supplier }, at) =>
      wayOf(plan, `all from ${supplier === "" ? UNNAMED : supplier}`, supplier, (one) => one === at),
    )
    const whole = alone.filter(({ missing }) => missing === mixed.missing && missing < plan.lines.length)
    const trip = whole.reduce<Way | undefined>(
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
      saving: way.missing > mixed.missing ? 0 : way.total - mixed.total,
      chosen:
        (at === 0 && plan.only === undefined) ||
        (at > 0 && at <= alone.length && way.from === inForce && plan.only === at - 1)
          ? 1
          : 0,
    }))
    return {
      rows: rows.map(({ bound: _, ...row }) => row),
      report: {
        method: METHOD,
        objective: { says: MIXED, measure: "money", value: mixed.total },
        bound: mixed.bound,
        unmet: [],
      },
    }
  }
}

const METHOD =
  "every set of suppliers, each line at its cheapest mix of packs, moved towards least orders and free delivery"
const MIXED = "the least in all, suppliers mixed"
/** Prices in which nobody is named. */
export const UNNAMED = "a supplier without a name"

interface Way {
  readonly plan: string
  readonly from: string
  readonly orders: number
  readonly missing: number
  readonly goods: number
  readonly delivery: number
  readonly tax: number
  readonly total: number
  readonly finding: string
  readonly bound: number
}

function wayOf(plan: BuyingPlan, name: string, from: string, sells: (supplier: number) => boolean): Way {
  const { order, bound, offers } = orderFrom(plan, sells)
  const lacking = plan.lines.filter((_, at) => (offers[at] ?? []).length === 0).map(({ label }) => label)
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
    from,
    orders: each.length,
    missing: lacking.length,
    goods: sum(({ here }) => here),
    delivery: sum(({ delivery }) => delivery),
    tax: sum(({ tax }) => tax),
    total: order?.total ?? 0,
    finding: lacksInWords(lacking),
    bound,
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
