import type { Solution } from "@pegbook/engine"
import { countsAlone, type Offer, type OrderLine, priceAt, type Taken } from "../solvers/order-choice.ts"
import {
  type Choice,
  type ChoiceProblem,
  choiceAtOnce,
  choiceSolution,
  offersOf,
  paidFor,
  partsOfCent,
  waysOf,
} from "../solvers/supplier-choice.ts"
import { solveBuying } from "./buying.ts"
import { checkPlan } from "./checker.ts"
import type { Buying } from "./problem.ts"
import type { Clock, Solver } from "./program.ts"

/**
 * What is paid least for a workbook's list, suppliers mixed and each alone, and the proof of it or how far from it the
 * choice may be. The choice made at once stays where it is as good. Rejects when the solver breaks down, and where a
 * plan does not hold against the checker.
 */
export async function proveBuying(problem: ChoiceProblem, solver: Solver, clock: Clock): Promise<Solution> {
  const ways = waysOf(problem.suppliers.map(({ name }) => name))
  const choices = ways.map(({ only }) => choiceAtOnce(problem, only))
  const inForce = problem.only === undefined ? 0 : problem.only + 1
  // What is bought by first: the time may be up before the last.
  for (const at of new Set([inForce, ...ways.keys()])) {
    const atOnce = choices[at]
    if (atOnce?.taken?.some((list) => list.length > 0))
      choices[at] = await proveWay(problem, ways[at]?.only, atOnce, solver, clock)
  }
  const method = `packs, breaks and orders in one whole-number program (${solver.name}), checked in whole numbers`
  return choiceSolution(problem, choices, method)
}

async function proveWay(
  problem: ChoiceProblem,
  only: number | undefined,
  atOnce: Choice,
  solver: Solver,
  clock: Clock,
): Promise<Choice> {
  const { one, offers } = buyingOf(problem, only)
  const strict = await solveBuying(one, solver, clock)
  const isOutOfReach = strict.status === "impossible"
  const held = isOutOfReach
    ? { ...one, suppliers: one.suppliers.map((supplier) => ({ ...supplier, minimumOrder: 0 })) }
    : one
  const answer = isOutOfReach ? await solveBuying(held, solver, clock) : strict
  const bound = Math.max(atOnce.bound, (answer.bound ?? 0) / partsOfCent(problem))
  if (answer.plan?.kind !== "buy") return { ...atOnce, bound }
  const { broken } = checkPlan(held, answer.plan)
  if (broken[0] !== undefined) throw new Error(`a choice of suppliers breaks a rule: ${broken[0]}`)
  const taken = problem.lines.map((): Taken[] => [])
  for (const { line, supplier, packSize, packs } of answer.plan.packs) {
    const list = taken[Number(line)]
    const found = offers.get(keyOf({ line, supplier, packSize }))?.taken(packs)
    if (list === undefined || found === undefined) continue
    const same = list.findIndex(({ offer }) => offer === found.offer)
    if (same < 0) list.push(found)
    else list[same] = { offer: found.offer, packs: found.packs + (list[same]?.packs ?? 0) }
  }
  const isBetter =
    atOnce.taken === undefined ||
    (atOnce.isBelowLeast === true && !isOutOfReach) ||
    paidFor(problem, taken) < paidFor(problem, atOnce.taken)
  return covers(problem.lines, one, taken) && isBetter ? { taken, bound } : { ...atOnce, bound }
}

type WholeOffer = Buying["offers"][number]

/** An offer of the whole-number problem, and what so many packs of it are in the workbook. */
interface Counted {
  readonly offer: WholeOffer
  readonly taken: (packs: number) => Taken
}

/**
 * The same problem in whole numbers, each line in units of its own. What is sold by measure may be had as needed, or in
 * whole units. Where no small unit measures a line's packs they count as slightly more than they hold, so that no choice
 * is left out.
 */
function buyingOf(
  problem: ChoiceProblem,
  only: number | undefined,
): { readonly one: Buying; readonly offers: ReadonlyMap<string, Counted> } {
  const parts = partsOfCent(problem)
  const places = offersOf(problem, only)
  const offers = new Map<string, Counted>()
  const lines = problem.lines.flatMap((line, at) => {
    const here = (places[at] ?? []).flatMap((place) => {
      const offer = line.offers[place]
      return offer === undefined ? [] : [{ place, offer }]
    })
    if (here.length === 0 || line.need <= 0) return []
    const { need, size } = unitsOf(
      line.need,
      here.map(({ offer }) => offer.size),
    )
    for (const { place, offer } of here) {
      const [id, supplier] = [String(at), String(offer.supplier)]
      const byMeasure = offer.amount === undefined ? [] : countsAlone(line.need, offer)
      for (const [nth, packs] of byMeasure.filter((count) => !Number.isInteger(count)).entries())
        add(offers, {
          offer: {
            line: id,
            supplier,
            packSize: need + nth,
            breaks: [
              { fromPacks: 1, pricePerPack: Math.round(packs * (priceAt(offer, packs) ?? 0) * parts) },
            ],
            availablePacks: 1,
          },
          taken: () => ({ offer: place, packs }),
        })
      add(offers, {
        offer: {
          line: id,
          supplier,
          packSize: size(offer.size),
          breaks: breaksOf(offer, parts),
          availablePacks: null,
        },
        taken: (packs) => ({ offer: place, packs }),
      })
    }
    return [{ id: String(at), need }]
  })
  const one: Buying = {
    id: "suppliers",
    kind: "buy",
    money: "cents",
    oneSupplierForEachLine: false,
    suppliers: problem.suppliers.map(({ delivery, freeFrom, least, tax }, at) => ({
      id: String(at),
      deliveryFee: Math.round(delivery * parts),
      freeDeliveryFrom: freeFrom === undefined ? null : Math.ceil(freeFrom * parts - NOISE),
      taxBasisPoints: Math.round(tax * 1e10) / 1e6,
      deliveryTaxed: true,
      minimumOrder: Math.ceil(least * parts - NOISE),
    })),
    lines,
    offers: [...offers.values()].map(({ offer }) => offer),
  }
  return { one, offers }
}

const NOISE = 1e-6
/** A line is measured in a part of its unit that is no smaller than this. */
const MOST_PARTS = 1000
/** Where none measures it, in so many parts of the need. */
const FINE_PARTS = 1_000_000

function unitsOf(
  need: number,
  sizes: readonly number[],
): { readonly need: number; readonly size: (size: number) => number } {
  const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < NOISE
  for (let parts = 1; parts <= MOST_PARTS; parts++) {
    if ([need, ...sizes].every((value) => isWhole(value * parts) && Math.round(value * parts) > 0))
      return { need: Math.round(need * parts), size: (size) => Math.round(size * parts) }
  }
  return {
    need: FINE_PARTS,
    size: (size) => Math.max(1, Math.ceil((size / need) * FINE_PARTS - NOISE)),
  }
}

/** Ascending, from one pack at least; of two from the same count the later holds. */
function breaksOf({ breaks }: Offer, parts: number): WholeOffer["breaks"] {
  const prices = new Map<number, number>()
  for (const { from, price } of breaks)
    prices.set(Math.max(1, Math.ceil(from - NOISE)), Math.round(price * parts))
  return [...prices].map(([fromPacks, pricePerPack]) => ({ fromPacks, pricePerPack }))
}

function keyOf({ line, supplier, packSize }: Pick<WholeOffer, "line" | "supplier" | "packSize">): string {
  return `${line};${supplier};${packSize}`
}

/** Adds an offer. Of two that are alike but for the price, the cheaper counts at each number of packs. */
function add(offers: Map<string, Counted>, added: Counted): void {
  const key = keyOf(added.offer)
  const known = offers.get(key)
  if (known === undefined) {
    offers.set(key, added)
    return
  }
  const priceOf = ({ offer }: Counted, packs: number): number =>
    offer.breaks.findLast(({ fromPacks }) => packs >= fromPacks)?.pricePerPack ?? Number.POSITIVE_INFINITY
  const froms = new Set([...known.offer.breaks, ...added.offer.breaks].map(({ fromPacks }) => fromPacks))
  offers.set(key, {
    offer: {
      ...added.offer,
      breaks: [...froms]
        .sort((a, b) => a - b)
        .map((from) => ({
          fromPacks: from,
          pricePerPack: Math.min(priceOf(known, from), priceOf(added, from)),
        })),
    },
    taken: (packs) =>
      priceOf(added, packs) < priceOf(known, packs) ? added.taken(packs) : known.taken(packs),
  })
}

/** Whether so much of each line is really there: packs may have counted as slightly more than they hold. */
function covers(lines: readonly OrderLine[], one: Buying, taken: readonly (readonly Taken[])[]): boolean {
  return one.lines.every(({ id }) => {
    const line = lines[Number(id)]
    if (line === undefined) return false
    const units = (taken[Number(id)] ?? []).reduce(
      (sum, { offer, packs }) => sum + packs * (line.offers[offer]?.size ?? 0),
      0,
    )
    return units >= line.need * (1 - 1e-9)
  })
}
