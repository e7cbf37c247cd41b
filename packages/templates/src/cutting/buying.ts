import {
  type Answer,
  type BuyPlan,
  type Change,
  impossible,
  type Obstacle,
  planned,
  unknown,
} from "./answer.ts"
import { offered } from "./board-list.ts"
import type { Buying } from "./problem.ts"
import { type Clock, Program, type Solver, type Term, wholeBound } from "./program.ts"

type Offer = Buying["offers"][number]
type Supplier = Buying["suppliers"][number]
type Found = { readonly plan: { kind: "buy" } & BuyPlan; readonly objective: number }

/** The price of one pack when so many are bought: that of the highest break reached. `undefined` under the first break. */
export function packPrice({ breaks }: Offer, packs: number): number | undefined {
  return breaks.findLast(({ fromPacks }) => packs >= fromPacks)?.pricePerPack
}

/** What an invoice of one supplier comes to: goods, delivery, and tax to the nearest cent, half up. Exact. */
export function invoice(supplier: Supplier, goods: number): number {
  const { freeDeliveryFrom, deliveryFee, deliveryTaxed, taxBasisPoints } = supplier
  const delivery = freeDeliveryFrom !== null && goods >= freeDeliveryFrom ? 0 : deliveryFee
  const taxed = BigInt(goods + (deliveryTaxed ? delivery : 0))
  // A rate may have parts of a basis point: 8.875 %.
  const rate = BigInt(Math.round(taxBasisPoints * 1e6))
  return goods + delivery + Number((taxed * rate + 5_000_000_000n) / 10_000_000_000n)
}

/** Total paid for so many packs of each offer; `undefined` where an offer is bought under its first break. */
export function totalPaid(one: Buying, packs: readonly number[]): number | undefined {
  const goods = new Map<string, number>()
  for (const [index, offer] of one.offers.entries()) {
    const count = packs[index] ?? 0
    if (count === 0) continue
    const price = packPrice(offer, count)
    if (price === undefined) return undefined
    goods.set(offer.supplier, (goods.get(offer.supplier) ?? 0) + price * count)
  }
  return one.suppliers.reduce((sum, supplier) => {
    const bought = goods.get(supplier.id)
    return bought === undefined ? sum : sum + invoice(supplier, bought)
  }, 0)
}

function found(one: Buying, packs: readonly number[]): Found {
  const kinds = one.offers.map(({ line, supplier, packSize }) => JSON.stringify([line, supplier, packSize]))
  const listed = one.offers.flatMap(({ line, supplier, packSize }, index) => {
    const count = packs[index] ?? 0
    if (count === 0) return []
    const isAlone = kinds.indexOf(kinds[index] ?? "") === kinds.lastIndexOf(kinds[index] ?? "")
    return [{ line, supplier, packSize, packs: count, ...(isAlone ? {} : { offer: index }) }]
  })
  return { plan: { kind: "buy", packs: listed }, objective: totalPaid(one, packs) ?? 0 }
}

/** Offers that a minimum order or a free delivery may make worth buying past what is needed, and how far. */
function mostPacks(one: Buying, offer: Offer): number {
  const { breaks, packSize, availablePacks } = offer
  const need = one.lines.find(({ id }) => id === offer.line)?.need ?? 0
  const supplier = one.suppliers.find(({ id }) => id === offer.supplier)
  const order = Math.max(supplier?.minimumOrder ?? 0, supplier?.freeDeliveryFrom ?? 0)
  const cheapest = Math.min(...breaks.map(({ pricePerPack }) => pricePerPack).filter((price) => price > 0))
  const filling = Number.isFinite(cheapest) ? Math.ceil(order / cheapest) : 0
  const enough = Math.ceil(need / packSize) + (breaks.at(-1)?.fromPacks ?? 0) + filling
  return Math.min(enough, availablePacks ?? enough)
}

interface Model {
  readonly program: Program
  /** For each offer, the variables that count its packs, one for each break. */
  readonly packs: readonly (readonly number[])[]
}

/** `short`: each line may fall short by some units at this cost for one; `loose`: orders under the minimum, likewise. */
interface Loose {
  readonly short: ReadonlyMap<string, number>
  readonly under: ReadonlyMap<string, number>
}

function modelOf(one: Buying, loose?: (program: Program) => Loose): Model {
  const program = new Program()
  const slack = loose?.(program)
  const used = new Map(one.suppliers.map(({ id }) => [id, program.variable(0, 1)]))
  const goods = new Map<string, Term[]>(one.suppliers.map(({ id }) => [id, []]))
  const most = one.offers.map((offer) => mostPacks(one, offer))
  const taken: (readonly Term[])[] = []
  const packs = one.offers.map((offer, index) => {
    const orders = used.get(offer.supplier) ?? 0
    const limit = most[index] ?? 0
    const chosen: Term[] = []
    const supplier = one.suppliers.find(({ id }) => id === offer.supplier)
    const share = supplier === undefined ? 0 : wholeTaxShare(one, supplier)
    const counts = offer.breaks.map(({ fromPacks, pricePerPack }, at) => {
      const last = Math.min((offer.breaks[at + 1]?.fromPacks ?? Number.POSITIVE_INFINITY) - 1, limit)
      const count = program.variable(pricePerPack + Math.round(pricePerPack * share), Math.max(last, 0))
      if (last < fromPacks) {
        program.atMost(0, [[count, 1]])
        return count
      }
      const takes = program.variable(0, 1)
      program.atLeast(0, [
        [count, 1],
        [takes, -fromPacks],
      ])
      program.atMost(0, [
        [count, 1],
        [takes, -last],
      ])
      chosen.push([takes, 1])
      goods.get(offer.supplier)?.push([count, pricePerPack])
      return count
    })
    program.atMost(0, [...chosen, [orders, -1]])
    taken.push(chosen)
    return counts
  })
  for (const { id, need } of one.lines) {
    const terms = one.offers.flatMap((offer, index): Term[] =>
      offer.line === id ? (packs[index] ?? []).map((count) => [count, offer.packSize]) : [],
    )
    const short = slack?.short.get(id)
    program.atLeast(need, short === undefined ? terms : [...terms, [short, 1]])
    if (need > 0 && short === undefined) addShares(one, program, { id, need }, packs, taken, used)
    if (one.oneSupplierForEachLine) oneSupplier(one, program, id, packs, most)
  }
  for (const supplier of one.suppliers) {
    const order = goods.get(supplier.id) ?? []
    const under = slack?.under.get(supplier.id)
    const share = wholeTaxShare(one, supplier)
    addInvoice(
      program,
      supplier,
      order,
      share,
      used.get(supplier.id) ?? 0,
      ceilingOf(one, supplier, most),
      under,
    )
  }
  return { program, packs }
}

/** The tax on a price, as a share, where it is whole cents on every price of the supplier: it then goes into the prices. Else 0. */
function wholeTaxShare({ offers }: Buying, supplier: Supplier): number {
  const { id, taxBasisPoints, deliveryFee, deliveryTaxed } = supplier
  const whole = (price: number): boolean => (price * taxBasisPoints) % 10_000 === 0
  const prices = offers.filter((offer) => offer.supplier === id).flatMap(({ breaks }) => breaks)
  const all =
    prices.every(({ pricePerPack }) => whole(pricePerPack)) && (!deliveryTaxed || whole(deliveryFee))
  return all ? taxBasisPoints / 10_000 : 0
}

/**
 * What share of a line's need each offer covers: no more than its packs, and only where it is ordered. This forbids no
 * order; it keeps the relaxed program from paying for a small part of a delivery.
 */
function addShares(
  { offers, suppliers }: Buying,
  program: Program,
  { id, need }: Buying["lines"][number],
  packs: readonly (readonly number[])[],
  taken: readonly (readonly Term[])[],
  used: ReadonlyMap<string, number>,
): void {
  const shares = new Map<string, Term[]>(suppliers.map((supplier) => [supplier.id, []]))
  offers.forEach((offer, index) => {
    if (offer.line !== id) return
    const share = program.variable(0, 1, false)
    shares.get(offer.supplier)?.push([share, 1])
    const units = (packs[index] ?? []).map((count): Term => [count, -offer.packSize])
    program.atMost(0, [[share, need], ...units])
    program.atMost(0, [[share, 1], ...(taken[index] ?? []).map(([takes]): Term => [takes, -1])])
  })
  for (const [supplier, here] of shares)
    if (here.length > 0) program.atMost(0, [...here, [used.get(supplier) ?? 0, -1]])
  program.row(1, 1, [...shares.values()].flat())
}

/** The most that goods of a supplier may come to in the program. */
function ceilingOf(one: Buying, { id }: Supplier, most: readonly number[]): number {
  return one.offers.reduce((sum, { supplier, breaks }, index) => {
    const dearest = Math.max(...breaks.map(({ pricePerPack }) => pricePerPack))
    return supplier === id ? sum + dearest * (most[index] ?? 0) : sum
  }, 0)
}

function oneSupplier(
  one: Buying,
  program: Program,
  line: string,
  packs: readonly (readonly number[])[],
  most: readonly number[],
): void {
  const chosen = one.suppliers.map(({ id }): Term => {
    const from = program.variable(0, 1)
    one.offers.forEach((offer, index) => {
      if (offer.line !== line || offer.supplier !== id) return
      program.atMost(0, [
        ...(packs[index] ?? []).map((count): Term => [count, 1]),
        [from, -(most[index] ?? 0)],
      ])
    })
    return [from, 1]
  })
  program.atMost(1, chosen)
}

/** Goods, delivery unless free, tax, and the least order, all of them only where something is ordered. */
function addInvoice(
  program: Program,
  supplier: Supplier,
  goods: readonly Term[],
  wholeShare: number,
  orders: number,
  ceiling: number,
  under: number | undefined,
): void {
  const { minimumOrder, freeDeliveryFrom, deliveryFee, deliveryTaxed, taxBasisPoints } = supplier
  const order = program.variable(0, ceiling, false)
  program.row(0, 0, [[order, -1], ...goods])
  program.atMost(0, [
    [order, 1],
    [orders, -ceiling],
  ])
  if (minimumOrder > 0)
    program.atLeast(0, [
      [order, 1],
      [orders, -minimumOrder],
      ...(under === undefined ? [] : [[under, 1] as const]),
    ])
  const delivery = program.variable(
    deliveryFee + (deliveryTaxed ? Math.round(deliveryFee * wholeShare) : 0),
    1,
  )
  const pays: Term[] = [
    [delivery, 1],
    [orders, -1],
  ]
  if (freeDeliveryFrom !== null) {
    const free = program.variable(0, 1)
    program.atMost(0, [
      [free, freeDeliveryFrom],
      [order, -1],
    ])
    program.atMost(0, [
      [free, 1],
      [orders, -1],
    ])
    pays.push([free, 1])
  }
  program.atLeast(0, pays)
  if (taxBasisPoints === 0 || wholeShare > 0) return
  // Half up: the least whole number that is not under tax less 0.4999 cents. Of a finer rate, not under half a cent less.
  const tax = program.variable(1)
  const share = taxBasisPoints / 10_000
  const taxed: Term[] = [
    [tax, 1],
    [order, -share],
  ]
  if (deliveryTaxed) taxed.push([delivery, -share * deliveryFee])
  program.atLeast(Number.isInteger(taxBasisPoints) ? -0.4999 : -0.5, taxed)
}

function packsOf(model: Model, values: readonly number[]): number[] {
  return model.packs.map((counts) => counts.reduce((sum, count) => sum + Math.round(values[count] ?? 0), 0))
}

/** Every line where it is cheapest by itself, and then the minimum orders of the suppliers met with more of the same. */
export function buyingAtOnce(one: Buying): Answer {
  const method = "the cheapest offer for each line, over every set of suppliers"
  const short = neverEnough(one)
  if (short !== undefined) return impossible(one, short, "needs compared with what is offered")
  const plans = supplierSets(one)
    .map((suppliers) => cheapestOffers(one, suppliers))
    .filter((packs) => packs !== undefined)
    .map((packs) => found(one, packs))
  const best = plans.reduce<Found | undefined>(
    (least, plan) => (least === undefined || plan.objective < least.objective ? plan : least),
    undefined,
  )
  const bound = goodsBound(one)
  if (best !== undefined) return planned(one, best, bound, method)
  return unknown(one, bound, method, ["No order was found at once; an exact search may find one."])
}

const MOST_SETS = 256

function supplierSets({ suppliers }: Buying): ReadonlySet<string>[] {
  const ids = suppliers.map(({ id }) => id)
  if (2 ** ids.length > MOST_SETS) return [new Set(ids), ...ids.map((id) => new Set([id]))]
  return Array.from(
    { length: 2 ** ids.length },
    (_, mask) => new Set(ids.filter((_, bit) => (mask >> bit) & 1)),
  )
}

function cheapestOffers(one: Buying, suppliers: ReadonlySet<string>): number[] | undefined {
  const packs = one.offers.map(() => 0)
  for (const { id, need } of one.lines) {
    if (need === 0) continue
    const options = one.offers.flatMap((offer, index) => {
      const count = Math.max(Math.ceil(need / offer.packSize), offer.breaks[0]?.fromPacks ?? 1)
      const counts = [count, ...offer.breaks.map(({ fromPacks }) => fromPacks).filter((from) => from > count)]
      const usable = offer.line === id && suppliers.has(offer.supplier)
      return usable
        ? counts
            .filter((packs) => packs <= (offer.availablePacks ?? packs))
            .map((packs) => ({ index, packs, cost: (packPrice(offer, packs) ?? 0) * packs }))
        : []
    })
    const best = options.reduce<(typeof options)[number] | undefined>(
      (least, option) => (least === undefined || option.cost < least.cost ? option : least),
      undefined,
    )
    if (best === undefined) return undefined
    packs[best.index] = best.packs
  }
  return ordersReached(one, packs) ? packs : undefined
}

/** Whether the goods of every supplier that is ordered from reach its minimum. */
export function ordersReached(one: Buying, packs: readonly number[]): boolean {
  return one.suppliers.every(({ id, minimumOrder }) => {
    const here = one.offers.map((offer, index) => ({
      offer,
      count: offer.supplier === id ? (packs[index] ?? 0) : 0,
    }))
    const goods = here.reduce((sum, { offer, count }) => sum + count * (packPrice(offer, count) ?? 0), 0)
    return here.every(({ count }) => count === 0) || goods >= minimumOrder
  })
}

/** No plan pays less: each line at its lowest price for one, delivery and rounding left out. */
function goodsBound(one: Buying): number {
  const total = one.lines.reduce((sum, { id, need }) => {
    const prices = one.offers
      .filter(({ line }) => line === id)
      .map(({ breaks, packSize, supplier }) => {
        const tax = one.suppliers.find((other) => other.id === supplier)?.taxBasisPoints ?? 0
        return (Math.min(...breaks.map(({ pricePerPack }) => pricePerPack)) / packSize) * (1 + tax / 10_000)
      })
    return prices.length === 0 ? sum : sum + need * Math.min(...prices)
  }, 0)
  // Each invoice may round its tax down by up to half a cent.
  return Math.max(0, wholeBound(total - 0.5 * one.suppliers.length))
}

/** The least total over every mix of offers. Rejects when the solver breaks down. */
export async function solveBuying(one: Buying, solver: Solver, clock: Clock): Promise<Answer> {
  const atOnce = buyingAtOnce(one)
  if (atOnce.status === "impossible") return atOnce
  const method = `packs, breaks and orders in one whole-number program (${solver.name})`
  const model = modelOf(one)
  const solved = await solver.solve(model.program, clock.left())
  if (solved.status === "infeasible") return impossible(one, await outOfReach(one, solver, clock), method)
  const bound = Math.max(atOnce.bound ?? 0, wholeBound(solved.bound ?? 0))
  const plans: Found[] = []
  if (solved.values !== undefined) plans.push(found(one, packsOf(model, solved.values)))
  if (atOnce.plan?.kind === "buy" && atOnce.objective !== null)
    plans.push({ plan: atOnce.plan, objective: atOnce.objective })
  const best = plans.reduce<Found | undefined>(
    (least, plan) => (least === undefined || plan.objective < least.objective ? plan : least),
    undefined,
  )
  if (best !== undefined) return planned(one, best, bound, method)
  return unknown(one, bound, method, ["No order was found in the time given. Give it longer."])
}

/** A line whose offers together hold less than is needed. */
function neverEnough(one: Buying): Obstacle | undefined {
  for (const [index, { id, need }] of one.lines.entries()) {
    const offers = one.offers.map((offer, place) => ({ ...offer, place })).filter(({ line }) => line === id)
    const units = ({ availablePacks, packSize, breaks }: Offer): number => {
      if (availablePacks === null) return Number.POSITIVE_INFINITY
      return availablePacks < (breaks[0]?.fromPacks ?? 1) ? 0 : availablePacks * packSize
    }
    const most = offers.reduce((sum, offer) => sum + units(offer), 0)
    if (most >= need) continue
    const changes: Change[] = offers
      .map((offer): Change => {
        const rest = need - (most - units(offer))
        const to = Math.max(Math.ceil(rest / offer.packSize), offer.breaks[0]?.fromPacks ?? 1)
        return {
          field: `offers[${offer.place}].availablePacks`,
          from: offer.availablePacks,
          to,
          says: `${to} packs of ${offer.packSize} at ${offer.supplier} instead of ${offer.availablePacks}`,
        }
      })
      .sort((a, b) => Number(a.to) - Number(a.from) - (Number(b.to) - Number(b.from)))
    changes.push({
      field: `lines[${index}].need`,
      from: need,
      to: most,
      says: `${most} of ${id} instead of ${need}`,
    })
    return {
      limit: offers.length === 0 ? "offers" : "availablePacks",
      says: `${need} of ${id} are needed and ${offers.length === 0 ? "nobody offers it" : `only ${most} can be had`}. ${offered(changes)}`,
      changes,
    }
  }
  return undefined
}

/** Enough is offered of every line by itself, but not within the limits together. */
async function outOfReach(one: Buying, solver: Solver, clock: Clock): Promise<Obstacle> {
  const changes: Change[] = []
  const possible = async (other: Buying): Promise<boolean> => {
    const { program } = modelOf(other)
    return (
      (
        await solver.solve(
          program.minimising(() => 0),
          clock.left(),
        )
      ).status === "optimal"
    )
  }
  if (one.oneSupplierForEachLine && (await possible({ ...one, oneSupplierForEachLine: false })))
    changes.push({
      field: "oneSupplierForEachLine",
      from: true,
      to: false,
      says: "lines that may be bought from more than one supplier",
    })
  for (const [index, { id, minimumOrder }] of one.suppliers.entries()) {
    if (minimumOrder === 0) continue
    let under = 0
    const { program } = modelOf(one, (loose) => {
      under = loose.variable(0)
      return { short: new Map(), under: new Map([[id, under]]) }
    })
    const solved = await solver.solve(
      program.minimising((variable) => (variable === under ? 1 : 0)),
      clock.left(),
    )
    if (solved.status !== "optimal") continue
    const to = minimumOrder - Math.round(solved.values[under] ?? 0)
    changes.push({
      field: `suppliers[${index}].minimumOrder`,
      from: minimumOrder,
      to,
      says: `a minimum order of ${to} at ${id} instead of ${minimumOrder}`,
    })
  }
  for (const [index, { id, need }] of one.lines.entries()) {
    let short = 0
    const { program } = modelOf(one, (loose) => {
      short = loose.variable(0)
      return { short: new Map([[id, short]]), under: new Map() }
    })
    const solved = await solver.solve(
      program.minimising((variable) => (variable === short ? 1 : 0)),
      clock.left(),
    )
    if (solved.status !== "optimal") continue
    const to = need - Math.round(solved.values[short] ?? 0)
    changes.push({ field: `lines[${index}].need`, from: need, to, says: `${to} of ${id} instead of ${need}` })
  }
  const stops = [
    ...(one.oneSupplierForEachLine ? ["one supplier for each line"] : []),
    ...(one.suppliers.some(({ minimumOrder }) => minimumOrder > 0) ? ["the minimum orders"] : []),
    "what is available",
  ]
  return {
    limit: changes[0]?.field ?? "offers",
    says: `No order keeps to ${stops.join(", ")} together. ${offered(changes)}`,
    changes,
  }
}
