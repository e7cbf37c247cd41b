/** What one supplier asks for one line. Prices are for a pack; that of the highest break reached holds for all packs. */
export interface Offer {
  /** Place in the list of suppliers. */
  readonly supplier: number
  /** How many of the line's units come in a pack. */
  readonly size: number
  /** Where any amount may be had: what covers the line, and not a pack more. Absent: whole packs. */
  readonly amount?: number
  /** Ascending, the first from what may be bought at least. */
  readonly breaks: readonly { readonly from: number; readonly price: number }[]
}

export interface OrderLine {
  /** In the line's units. */
  readonly need: number
  readonly offers: readonly Offer[]
}

export interface OrderSupplier {
  readonly delivery: number
  /** Goods from which delivery is free; absent: never. */
  readonly freeFrom?: number
  /** Goods that an order comes to at least. */
  readonly least: number
  /** Share of tax that is added to goods and delivery; 0 where prices have it in them. */
  readonly tax: number
}

/** So many packs of an offer, by its place in the line. */
export interface Taken {
  readonly offer: number
  readonly packs: number
}

export interface Order {
  /** One list a line. */
  readonly taken: readonly (readonly Taken[])[]
  /** Goods of each supplier, without delivery and tax. */
  readonly goods: readonly number[]
  readonly total: number
}

export interface LeastOrder {
  /** Absent where no order covers every line and reaches every supplier's least. */
  readonly order?: Order
  /** No order costs less. */
  readonly bound: number
}

/** The price of a pack when so many are bought; nothing under the first break. */
export function priceAt({ breaks }: Offer, packs: number): number | undefined {
  return breaks.findLast(({ from }) => packs >= from)?.price
}

/** What a supplier charges for bringing goods. */
export function deliveryOf({ delivery, freeFrom }: OrderSupplier, goods: number): number {
  return freeFrom !== undefined && goods >= freeFrom ? 0 : delivery
}

/** Above so many suppliers not every set of them is tried. */
const MOST_IN_EVERY_SET = 6
/** Steps of the worth that goods have towards a supplier's threshold. */
const WORTHS = 16
/** Units times prices of one line beyond which only single offers are tried. */
const MOST_WORK = 50_000

/**
 * The least total over every mix of suppliers: each set of them in turn, each line at its cheapest mix of packs, and where a
 * least order or a free delivery is near, lines moved there in the order of what that costs, or packs bought past the
 * need. Goods get a worth towards the threshold, which also says below what no order can come (Lagrange).
 * Money is in any unit, without rounding. Every line wants one offer at least.
 */
export function leastOrder(lines: readonly OrderLine[], suppliers: readonly OrderSupplier[]): LeastOrder {
  const mixes = new Map<string, Mix | undefined>()
  const sets = setsOf(suppliers.length)
  let order: Order | undefined
  let bound = Number.POSITIVE_INFINITY
  for (const set of sets) {
    const found = leastOfSet(lines, suppliers, set, mixes)
    if (found === undefined) continue
    bound = Math.min(bound, found.bound)
    for (const one of found.orders) if (order === undefined || one.total < order.total) order = one
  }
  if (suppliers.length > MOST_IN_EVERY_SET) bound = Math.min(bound, goodsBound(lines, suppliers, mixes))
  if (order === undefined) return { bound: Number.isFinite(bound) ? bound : 0 }
  return { order, bound: Math.min(bound, order.total) }
}

function setsOf(count: number): readonly ReadonlySet<number>[] {
  const all = Array.from({ length: count }, (_, at) => at)
  if (count <= MOST_IN_EVERY_SET) {
    return Array.from({ length: 2 ** count }, (_, mask) => new Set(all.filter((at) => (mask >> at) & 1)))
  }
  const pairs = all.flatMap((one) => all.slice(one).map((other) => new Set([one, other])))
  return [...pairs, new Set(all)]
}

/** The cheapest way found to cover a line, and what no way is cheaper than. */
interface Mix {
  readonly taken: readonly Taken[]
  readonly bound: number
}

function goodsBound(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  mixes: Map<string, Mix | undefined>,
): number {
  const all = new Set(suppliers.keys())
  return lines.reduce((sum, _, at) => sum + (mixOf(lines, at, suppliers, all, mixes)?.bound ?? 0), 0)
}

function leastOfSet(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  set: ReadonlySet<number>,
  mixes: Map<string, Mix | undefined>,
): { readonly orders: readonly Order[]; readonly bound: number } | undefined {
  const at = (worth?: Worth) => lines.map((_, line) => mixOf(lines, line, suppliers, set, mixes, worth))
  const plain = at()
  if (plain.some((mix) => mix === undefined)) return undefined
  const taken = (list: readonly (Mix | undefined)[]) => list.map((mix) => mix?.taken ?? [])
  const sumOf = (list: readonly (Mix | undefined)[]) => list.reduce((sum, mix) => sum + (mix?.bound ?? 0), 0)

  const first = orderOf(lines, suppliers, taken(plain))
  const orders = improved(lines, suppliers, set, first)
  /** By supplier: the goods' bound at each worth. */
  const tried = new Map<number, { readonly worth: number; readonly sum: number }[]>()
  for (const supplier of set) {
    const { least, freeFrom } = suppliers[supplier] ?? { least: 0 }
    const wanted = Math.max(least, freeFrom ?? 0)
    if (wanted === 0 || (first.goods[supplier] ?? 0) >= wanted) continue
    for (let step = 1; step <= WORTHS; step++) {
      const worth = step / WORTHS
      const list = at({ supplier, worth })
      tried.set(supplier, [...(tried.get(supplier) ?? []), { worth, sum: sumOf(list) }])
      orders.push(...improved(lines, suppliers, set, orderOf(lines, suppliers, taken(list))))
    }
  }
  const best = orders.reduce<Order | undefined>(
    (least, one) => (least === undefined || one.total < least.total ? one : least),
    undefined,
  )
  if (best !== undefined) orders.push(moved(lines, suppliers, set, best))
  return { orders, bound: boundOfSet(suppliers, set, sumOf(plain), tried) }
}

/** Rounds of moving single lines; each round that helps not at all is the last. */
const MOST_ROUNDS = 6
/** Lines times offers beyond which no line is moved by itself. */
const MOST_MOVES = 400

/** The order after every move of one line to another offer, or of some packs past the need, that makes it cheaper. */
function moved(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  set: ReadonlySet<number>,
  start: Order,
): Order {
  const moves = lines.flatMap(({ need, offers }, line) =>
    offers.flatMap((offer, place) =>
      need > 0 && set.has(offer.supplier)
        ? countsAlone(need, offer).map((packs) => ({ line, taken: [{ offer: place, packs }] }))
        : [],
    ),
  )
  if (moves.length > MOST_MOVES) return start
  let best = start
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = best
    for (const { line, taken } of moves) {
      const next = best.taken.map((list, at) => (at === line ? taken : list))
      for (const one of improved(lines, suppliers, set, orderOf(lines, suppliers, next)))
        if (one.total < best.total) best = one
    }
    if (best === before) break
  }
  return best
}

/** The least over each way of having delivery free or paid; a threshold that has to be reached costs what its worth says. */
function boundOfSet(
  suppliers: readonly OrderSupplier[],
  set: ReadonlySet<number>,
  plain: number,
  tried: ReadonlyMap<number, readonly { readonly worth: number; readonly sum: number }[]>,
): number {
  const members = [...set]
  const free = members.filter((at) => suppliers[at]?.freeFrom !== undefined)
  let bound = Number.POSITIVE_INFINITY
  for (let mask = 0; mask < 2 ** free.length; mask++) {
    const isFree = (at: number): boolean => ((mask >> free.indexOf(at)) & 1) === 1 && free.includes(at)
    let fees = 0
    let goods = plain
    for (const at of members) {
      const one = suppliers[at]
      if (one === undefined) continue
      if (!isFree(at)) fees += one.delivery * (1 + one.tax)
      const threshold = isFree(at) ? Math.max(one.freeFrom ?? 0, one.least) : one.least
      for (const { worth, sum } of tried.get(at) ?? []) goods = Math.max(goods, sum + worth * threshold)
    }
    bound = Math.min(bound, goods + fees)
  }
  return bound
}

/** What goods of a supplier count towards its threshold, as a share of their price. */
interface Worth {
  readonly supplier: number
  readonly worth: number
}

function mixOf(
  lines: readonly OrderLine[],
  line: number,
  suppliers: readonly OrderSupplier[],
  set: ReadonlySet<number>,
  mixes: Map<string, Mix | undefined>,
  worth?: Worth,
): Mix | undefined {
  const offers = lines[line]?.offers ?? []
  const here = [...new Set(offers.map(({ supplier }) => supplier))].filter((at) => set.has(at))
  const counts = worth !== undefined && here.includes(worth.supplier)
  const key = `${line};${here.join(",")};${counts ? `${worth.supplier}:${worth.worth}` : ""}`
  if (mixes.has(key)) return mixes.get(key)
  const share = offers.map(
    ({ supplier }) =>
      1 +
      (suppliers[supplier]?.tax ?? 0) -
      (worth !== undefined && supplier === worth.supplier ? worth.worth : 0),
  )
  const mix = cheapest(
    lines[line]?.need ?? 0,
    offers.flatMap((offer, place) =>
      set.has(offer.supplier) ? [{ offer, place, share: share[place] ?? 1 }] : [],
    ),
  )
  mixes.set(key, mix)
  return mix
}

interface Shared {
  readonly offer: Offer
  readonly place: number
  /** Of the price, what it counts for: with tax, less its worth towards a threshold. */
  readonly share: number
}

interface Way {
  readonly taken: readonly Taken[]
  readonly cost: number
}

const cheaper = (one: Way | undefined, other: Way): Way =>
  one === undefined || other.cost < one.cost ? other : one

function cheapest(need: number, offers: readonly Shared[]): Mix | undefined {
  if (need <= 0) return { taken: [], bound: 0 }
  let best: Way | undefined
  for (const one of offers)
    for (const packs of countsAlone(need, one.offer))
      best = cheaper(best, { taken: [{ offer: one.place, packs }], cost: costOf(one, packs) })
  if (best === undefined) return undefined
  const mixed = mixedPacks(need, offers)
  if (mixed !== undefined) best = cheaper(best, mixed.way)
  if (mixed?.exact === true || areAlike(offers)) return { taken: best.taken, bound: best.cost }
  const perUnit = offers.map(
    ({ offer, share }) => (Math.min(...offer.breaks.map(({ price }) => price)) * share) / offer.size,
  )
  return { taken: best.taken, bound: Math.min(best.cost, need * Math.min(...perUnit)) }
}

function costOf({ offer, share }: Shared, packs: number): number {
  return packs * (priceAt(offer, packs) ?? 0) * share
}

/** Enough by itself, or so many that a better price holds. */
export function countsAlone(need: number, { size, amount, breaks }: Offer): readonly number[] {
  const enough = Math.max(amount ?? Math.ceil(need / size - 1e-9), breaks[0]?.from ?? 0)
  return [enough, ...breaks.map(({ from }) => from).filter((from) => from > enough)]
}

/** One price each, and packs alike: no mix beats the cheapest of them. */
function areAlike(offers: readonly Shared[]): boolean {
  const sizes = new Set(offers.map(({ offer }) => (offer.amount === undefined ? offer.size : 0)))
  return sizes.size === 1 && offers.every(({ offer }) => offer.breaks.length === 1)
}

/** The cheapest mix of whole packs, by dynamic programming over the units; `exact`: there are no other offers. */
function mixedPacks(
  need: number,
  offers: readonly Shared[],
): { readonly way: Way; readonly exact: boolean } | undefined {
  const whole = offers.filter(({ offer }) => offer.amount === undefined && Number.isInteger(offer.size))
  const work = whole.reduce((sum, { offer }) => sum + need * offer.breaks.length, 0)
  if (!Number.isInteger(need) || whole.length === 0 || work > MOST_WORK) return undefined
  let cost: readonly number[] = Array.from({ length: need + 1 }, (_, units) =>
    units === 0 ? 0 : Number.POSITIVE_INFINITY,
  )
  const chosen: (readonly number[])[] = []
  for (const one of whole) {
    const next = withOffer(cost, one)
    chosen.push(next.packs)
    cost = next.cost
  }
  const taken: Taken[] = []
  let units = need
  for (const [at, one] of [...whole.entries()].reverse()) {
    const packs = chosen[at]?.[units] ?? 0
    if (packs > 0) taken.push({ offer: one.place, packs })
    units = Math.max(0, units - packs * one.offer.size)
  }
  return { way: { taken, cost: cost[need] ?? 0 }, exact: whole.length === offers.length }
}

/** The least cost of so many units when this offer may be taken as well: at each break so many packs, then one by one. */
function withOffer(
  before: readonly number[],
  { offer: { size, breaks }, share }: Shared,
): { readonly cost: readonly number[]; readonly packs: readonly number[] } {
  const cost = [...before]
  const packs = before.map(() => 0)
  for (const { from, price } of breaks) {
    const first = Math.max(1, Math.ceil(from))
    const sums: number[] = [Number.POSITIVE_INFINITY]
    const counts: number[] = [0]
    for (let units = 1; units < before.length; units++) {
      const alone = (before[Math.max(0, units - first * size)] ?? 0) + first * price * share
      const less = units - size
      const more = less > 0 ? (sums[less] ?? 0) + price * share : Number.POSITIVE_INFINITY
      sums.push(Math.min(alone, more))
      counts.push(more < alone ? (counts[less] ?? 0) + 1 : first)
      if ((sums[units] ?? 0) < (cost[units] ?? 0)) {
        cost[units] = sums[units] ?? 0
        packs[units] = counts[units] ?? 0
      }
    }
  }
  return { cost, packs }
}

/** What so many packs come to at every supplier that is ordered from. */
export function orderOf(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  taken: readonly (readonly Taken[])[],
): Order {
  const goods = suppliers.map(() => 0)
  const used = new Set<number>()
  taken.forEach((list, line) => {
    for (const { offer: place, packs } of list) {
      const offer = lines[line]?.offers[place]
      if (offer === undefined) continue
      used.add(offer.supplier)
      goods[offer.supplier] = (goods[offer.supplier] ?? 0) + packs * (priceAt(offer, packs) ?? 0)
    }
  })
  const total = suppliers.reduce((sum, one, at) => {
    if (!used.has(at)) return sum
    const here = goods[at] ?? 0
    return sum + (here + deliveryOf(one, here)) * (1 + one.tax)
  }, 0)
  return { taken, goods, total }
}

/** The order itself where it may be placed, and with more packs where that reaches a threshold. */
function improved(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  set: ReadonlySet<number>,
  order: Order,
): Order[] {
  let placed: Order | undefined = order
  for (const at of set) {
    const { least } = suppliers[at] ?? { least: 0 }
    const goods = placed?.goods[at] ?? 0
    if (placed !== undefined && goods > 0 && goods < least)
      placed = filledUp(lines, suppliers, placed, at, least)
  }
  if (placed === undefined) return []
  for (const at of set) {
    const { freeFrom } = suppliers[at] ?? {}
    const goods = placed.goods[at] ?? 0
    if (freeFrom === undefined || goods === 0 || goods >= freeFrom) continue
    const filled = filledUp(lines, suppliers, placed, at, freeFrom)
    if (filled !== undefined && filled.total < placed.total) placed = filled
  }
  return [placed]
}

/** The cheapest of: more packs of one thing that is sold there, until goods reach so much. */
function filledUp(
  lines: readonly OrderLine[],
  suppliers: readonly OrderSupplier[],
  order: Order,
  supplier: number,
  wanted: number,
): Order | undefined {
  let best: Order | undefined
  for (const [line, { offers }] of lines.entries()) {
    for (const [place, offer] of offers.entries()) {
      if (offer.supplier !== supplier) continue
      const list = order.taken[line] ?? []
      const have = list.find((one) => one.offer === place)?.packs ?? 0
      const paid = have * (priceAt(offer, have) ?? 0)
      const packs = packsFor(offer, have, wanted - (order.goods[supplier] ?? 0) + paid)
      if (packs === undefined) continue
      const others = list.filter((one) => one.offer !== place)
      const taken = order.taken.map((all, at) => (at === line ? [...others, { offer: place, packs }] : all))
      const filled = orderOf(lines, suppliers, taken)
      if ((filled.goods[supplier] ?? 0) < wanted) continue
      if (best === undefined || filled.total < best.total) best = filled
    }
  }
  return best
}

/** Packs past those there are that come to so much money; the next break may make them cheaper, and so more. */
function packsFor(offer: Offer, have: number, money: number): number | undefined {
  const breaks = offer.breaks.filter(({ price }) => price > 0)
  const counts = breaks.flatMap(({ from, price }) => {
    const packs = Math.max(have + 1, Math.ceil(from), Math.ceil(money / price - 1e-9))
    return priceAt(offer, packs) === price ? [packs] : []
  })
  return counts.length === 0 ? undefined : Math.min(...counts)
}
