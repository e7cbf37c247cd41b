import type { Proof, Solution, SolverGiven } from "@pegbook/engine"
import type { BoughtThing } from "./bought-things.ts"
import { type BuyingPlan, readBuying } from "./buying-plan.ts"
import {
  deliveryOf,
  leastOrder,
  type OrderLine,
  type OrderSupplier,
  priceAt,
  type Taken,
} from "./order-choice.ts"

/** All that a choice of suppliers is made from: data that JSON holds. Money in hundredths. */
export interface ChoiceProblem {
  readonly lines: readonly (OrderLine & { readonly label: string })[]
  readonly suppliers: readonly (OrderSupplier & { readonly name: string })[]
  /** Who alone is bought from, as the user says; absent: whoever is cheapest. */
  readonly only?: number
}

/** What is taken of each line, by the offers' places in it. */
export interface Choice {
  /** Absent where nothing is offered. */
  readonly taken?: readonly (readonly Taken[])[]
  /** No choice is paid less, in hundredths. */
  readonly bound: number
  /** No order was found that reaches every supplier's least. */
  readonly isBelowLeast?: true
}

/** Suppliers mixed, or one of them alone. */
export interface Way {
  readonly plan: string
  readonly only?: number
}

export const MIXED = "the least in all, suppliers mixed"
/** Prices in which nobody is named. */
export const UNNAMED = "a supplier without a name"

const CHOICE_READS = [
  "supplier_choice.plan",
  "supplier_choice.line",
  "supplier_choice.offer",
  "supplier_choice.packs",
] as const

/** The names that a choice made already is read from. */
export const choiceReads: readonly string[] = CHOICE_READS

/** Suppliers mixed first, then each alone, in their order. */
export function waysOf(names: readonly string[]): readonly Way[] {
  const alone = names.map((name, only) => ({ plan: `all from ${name === "" ? UNNAMED : name}`, only }))
  return [{ plan: MIXED }, ...alone]
}

function choiceProblem(given: SolverGiven, things: readonly BoughtThing[]): ChoiceProblem {
  const { lines, suppliers, asOrdered, only } = readBuying(given, things)
  return {
    lines: lines.map(({ label, need, offers }) => ({
      label,
      need,
      offers: offers.map(({ supplier, size, amount, breaks }) => ({
        supplier,
        size,
        breaks,
        ...(amount === undefined ? {} : { amount }),
      })),
    })),
    suppliers: asOrdered.map((one, at) => ({ ...one, name: suppliers[at]?.supplier ?? "" })),
    ...(only === undefined ? {} : { only }),
  }
}

export function choiceProof(things: readonly BoughtThing[]): Proof {
  return {
    by: "buying",
    problem: (given) => {
      const problem = choiceProblem(given, things)
      // Without a price there is nothing to choose.
      return problem.lines.some(({ offers }) => offers.length > 0) ? problem : undefined
    },
  }
}

/** What is taken of which offer, for each way of buying, one line and offer a row: plan, line, what, offer, supplier, packs. */
export function solveSupplierChoice(things: readonly BoughtThing[]): (given: SolverGiven) => Solution {
  return (given) => {
    const problem = choiceProblem(given, things)
    const ways = waysOf(problem.suppliers.map(({ name }) => name))
    return choiceSolution(
      problem,
      ways.map(({ only }) => choiceAtOnce(problem, only)),
      "every set of suppliers, each line at its cheapest mix of packs, moved towards least orders and free delivery",
    )
  }
}

/** The rows of a choice for each way, and how good the one in force is. */
export function choiceSolution(problem: ChoiceProblem, choices: readonly Choice[], method: string): Solution {
  const names = problem.suppliers.map(({ name }) => name)
  const rows = waysOf(names).flatMap(({ plan }, way) =>
    (choices[way]?.taken ?? []).flatMap((list, line) =>
      list.map(({ offer, packs }) => ({
        plan,
        line: line + 1,
        what: problem.lines[line]?.label ?? "",
        offer: offer + 1,
        supplier: names[problem.lines[line]?.offers[offer]?.supplier ?? -1] ?? "",
        packs,
      })),
    ),
  )
  const inForce = choices[problem.only === undefined ? 0 : problem.only + 1]
  const paid = inForce?.taken === undefined ? 0 : paidFor(problem, inForce.taken)
  return {
    rows,
    report: {
      method,
      unmet: [],
      ...(inForce === undefined || paid === 0
        ? {}
        : {
            objective: {
              says: "paid to the suppliers, goods by measure and each tax to the nearest cent",
              measure: "money" as const,
              value: paid,
            },
            bound: Math.min(paid, inForce.bound),
          }),
    },
  }
}

/** The offers of each line that take part, by their places in it. */
export function offersOf({ lines }: ChoiceProblem, only: number | undefined): readonly (readonly number[])[] {
  return lines.map(({ offers }) =>
    offers.flatMap(({ supplier }, place) => (only === undefined || supplier === only ? [place] : [])),
  )
}

/** The choice that is there at once. Where no order reaches every supplier's least, one that does not. */
export function choiceAtOnce(problem: ChoiceProblem, only: number | undefined): Choice {
  const places = offersOf(problem, only)
  const lines = problem.lines.map(({ need, offers }, at): OrderLine => {
    const here = (places[at] ?? []).flatMap((place) => offers[place] ?? [])
    return { need: here.length === 0 ? 0 : need, offers: here }
  })
  const strict = leastOrder(lines, problem.suppliers)
  const found =
    strict.order === undefined
      ? leastOrder(
          lines,
          problem.suppliers.map((one) => ({ ...one, least: 0 })),
        )
      : strict
  const bound = boundInCoins(problem, found.bound)
  if (found.order === undefined) return { bound }
  const taken = found.order.taken.map((list, at) =>
    list.map(({ offer, packs }) => ({ offer: places[at]?.[offer] ?? -1, packs })),
  )
  return { taken, bound, ...(strict.order === undefined ? { isBelowLeast: true as const } : {}) }
}

/** A choice made already, by the lines of the plan; nothing where this way has no row. */
export function chosenIn(
  given: SolverGiven,
  { lines }: BuyingPlan,
  plan: string,
): readonly (readonly Taken[])[] | undefined {
  const [plans, at, offers, packs] = CHOICE_READS.map((name) => given.column(name))
  const taken = lines.map((): Taken[] => [])
  let rows = 0
  plans?.forEach((one, row) => {
    const line = Number(at?.[row]) - 1
    const offer = Number(offers?.[row]) - 1
    if (one !== plan || lines[line]?.offers[offer] === undefined) return
    taken[line]?.push({ offer, packs: Number(packs?.[row]) })
    rows += 1
  })
  return rows === 0 ? undefined : taken
}

/** Prices are whole in cents, or in tenths of them and so on to this. */
const FINEST = 1000
const NOISE = 1e-6

/** So many parts of a cent that every price is a whole number of them. */
export function partsOfCent({ lines }: ChoiceProblem): number {
  const prices = lines.flatMap(({ offers }) =>
    offers.flatMap(({ breaks }) => breaks.map(({ price }) => price)),
  )
  let parts = 1
  while (
    parts < FINEST &&
    prices.some((price) => Math.abs(price * parts - Math.round(price * parts)) > NOISE)
  )
    parts *= 10
  return parts
}

/** What is paid, in hundredths: what is sold by measure and the tax of each invoice are rounded, half up. */
export function paidFor(problem: ChoiceProblem, taken: readonly (readonly Taken[])[]): number {
  const parts = partsOfCent(problem)
  const whole = problem.suppliers.map(() => 0)
  taken.forEach((list, line) => {
    for (const { offer: place, packs } of list) {
      const offer = problem.lines[line]?.offers[place]
      if (offer === undefined) continue
      const cost = Math.round(packs * (priceAt(offer, packs) ?? 0) * parts)
      whole[offer.supplier] = (whole[offer.supplier] ?? 0) + cost
    }
  })
  const used = new Set(
    taken.flatMap((list, line) =>
      list.map(({ offer }) => problem.lines[line]?.offers[offer]?.supplier ?? -1),
    ),
  )
  const paid = problem.suppliers.reduce((sum, one, at) => {
    if (!used.has(at)) return sum
    const here = whole[at] ?? 0
    const before = here + Math.round(deliveryOf(one, here / parts) * parts)
    return sum + before + Math.floor(before * one.tax + 0.5 + NOISE)
  }, 0)
  return paid / parts
}

/** What no choice is paid less than when it is rounded, where none is paid less than so much before. */
function boundInCoins(problem: ChoiceProblem, bound: number): number {
  const parts = partsOfCent(problem)
  const byMeasure = problem.lines.filter(({ offers }) =>
    offers.some(({ amount }) => amount !== undefined && !Number.isInteger(amount)),
  ).length
  const taxed = problem.suppliers.filter(({ tax }) => tax > 0).length
  // Each rounding may go down by half a part.
  return Math.max(0, Math.ceil(bound * parts - 0.5 * (byMeasure + taxed) - NOISE)) / parts
}
