import type { BoardPlan, BuyPlan, CutSheets, Plan, SheetPlan, SplicePlan } from "./answer.ts"
import { ordersReached, packPrice, totalPaid } from "./buying.ts"
import type { BoardList, Buying, Case, SheetLayout, SplicedLines, Stock } from "./problem.ts"
import { sheetSupports } from "./sheet-layout.ts"

/** What a plan costs, and every rule that it breaks. */
export interface Checked {
  readonly objective: number
  readonly broken: readonly string[]
}

/** Holds a plan against the rules of its case, in whole numbers, apart from how the plan was made. */
export function checkPlan(one: Case, plan: Plan): Checked {
  if (one.kind === "cut" && plan.kind === "cut") return checkBoards(one, plan)
  if (one.kind === "splice" && plan.kind === "splice") return checkSplice(one, plan)
  if (one.kind === "sheet" && plan.kind === "sheet") return checkSheets(one, plan)
  if (one.kind === "buy" && plan.kind === "buy") return checkBuying(one, plan)
  return { objective: 0, broken: [`a plan of kind ${plan.kind} for a case of kind ${one.kind}`] }
}

class Tally {
  private readonly counts = new Map<string, number>()
  add(key: string | number, count: number): void {
    this.counts.set(String(key), (this.counts.get(String(key)) ?? 0) + count)
  }
  of(key: string | number): number {
    return this.counts.get(String(key)) ?? 0
  }
  keys(): string[] {
    return [...this.counts.keys()]
  }
}

type CutBoard = { readonly stock: string; readonly n: number; readonly pieces: readonly number[] }

/** Each board holds its pieces; gives what is cut and what is used. */
function cutBoards(
  stocks: readonly Stock[],
  { kerf, endTrim }: { readonly kerf: number; readonly endTrim: number },
  boards: readonly CutBoard[],
  broken: string[],
): { readonly cut: Tally; readonly used: Tally } {
  const cut = new Tally()
  const used = new Tally()
  for (const { stock: id, n, pieces } of boards) {
    const stock = stocks.find((other) => other.id === id)
    if (stock === undefined) broken.push(`there is no stock ${id}`)
    else if (pieces.reduce((sum, length) => sum + length + kerf, 0) > stock.length - 2 * endTrim + kerf)
      broken.push(`${pieces.join(" + ")} does not come out of ${id}`)
    if (!Number.isInteger(n) || n < 1 || pieces.length === 0)
      broken.push(`${n} boards of ${pieces.length} pieces`)
    used.add(id, n)
    for (const length of pieces) cut.add(length, n)
  }
  return { cut, used }
}

/** Boards bought for those used, within what is available; their price. */
function boughtFor(
  stocks: readonly Stock[],
  used: Tally,
  broken: string[],
): { quantity: Tally; objective: number } {
  const quantity = new Tally()
  let objective = 0
  for (const { id, price, available, cullPermille } of stocks) {
    const boards = Math.floor((used.of(id) * (1000 + cullPermille) + 999) / 1000)
    if (available !== null && boards > available)
      broken.push(`${boards} of ${id} are bought and ${available} available`)
    quantity.add(id, boards)
    objective += boards * price
  }
  return { quantity, objective }
}

function sameCut(cut: Tally, wanted: Tally, broken: string[]): void {
  for (const length of new Set([...cut.keys(), ...wanted.keys()]))
    if (cut.of(length) !== wanted.of(length))
      broken.push(`${cut.of(length)} of ${length} are cut and ${wanted.of(length)} needed`)
}

function checkBoards(one: BoardList, { boards, buy }: BoardPlan): Checked {
  const broken: string[] = []
  const { cut, used } = cutBoards(
    one.stocks,
    one,
    boards.map(({ stock, count, pieces }) => ({ stock, n: count, pieces })),
    broken,
  )
  const wanted = new Tally()
  for (const { length, quantity } of one.pieces) wanted.add(length, quantity)
  sameCut(cut, wanted, broken)
  const { quantity, objective } = boughtFor(one.stocks, used, broken)
  const listed = new Tally()
  for (const { stock, quantity: count } of buy) listed.add(stock, count)
  for (const { id } of one.stocks)
    if (listed.of(id) !== quantity.of(id))
      broken.push(`${listed.of(id)} of ${id} are listed, not ${quantity.of(id)}`)
  return { objective, broken }
}

/** Joints of neighbouring lines are apart, and on different supports. */
function staggered(joints: readonly (readonly number[])[], least: number, broken: string[]): void {
  joints.forEach((line, index) => {
    for (const a of line)
      for (const b of joints[index + 1] ?? [])
        if (a === b || Math.abs(a - b) < least) broken.push(`joints at ${a} and ${b} of neighbouring lines`)
  })
}

function rise(places: readonly number[]): boolean {
  return places.every((place, index) => index === 0 || place > (places[index - 1] ?? 0))
}

function checkSplice(one: SplicedLines, { joints, boards }: SplicePlan): Checked {
  const broken: string[] = []
  const { supports } = one
  const wanted = new Tally()
  if (joints.length !== one.skids) broken.push(`${joints.length} skids and not ${one.skids}`)
  for (const line of joints) {
    const places = [supports[0] ?? 0, ...line, supports.at(-1) ?? 0]
    if (!rise(places)) broken.push(`joints at ${line.join(", ")} do not rise from end to end`)
    for (const at of line) {
      const place = supports.indexOf(at)
      if (place < 0) broken.push(`a joint at ${at} is on no support`)
      else if ((one.bearing[place] ?? 0) < 2 * one.minBearing)
        broken.push(`a joint at ${at} bears too little`)
    }
    places.slice(1).forEach((to, index) => {
      const from = places[index] ?? 0
      wanted.add(to - from, 1)
      const bays = supports.indexOf(to) - supports.indexOf(from)
      if (line.length > 0 && bays < one.minBaysForPiece)
        broken.push(`a piece from ${from} to ${to} spans ${bays} bays`)
    })
  }
  staggered(joints, one.minStagger, broken)
  const { cut, used } = cutBoards(one.stocks, one, boards, broken)
  sameCut(cut, wanted, broken)
  return { objective: boughtFor(one.stocks, used, broken).objective, broken }
}

function checkSheets(one: SheetLayout, { joints, cuts }: SheetPlan): Checked {
  const broken: string[] = []
  const supports = sheetSupports(one)
  const far = one.platform.acrossJoists
  const { sheet, kerf, gap } = one
  const wanted = new Tally()
  if (joints.length !== one.courses.length)
    broken.push(`${joints.length} courses and not ${one.courses.length}`)
  joints.forEach((line, course) => {
    const places = [0, ...line, far]
    if (!rise(places)) broken.push(`joints at ${line.join(", ")} do not rise from edge to edge`)
    for (const at of line) if (!supports.includes(at)) broken.push(`a joint at ${at} is on no joist`)
    places.slice(1).forEach((to, index) => {
      const from = places[index] ?? 0
      const bays = supports.indexOf(to) - supports.indexOf(from)
      if (bays < one.minBaysForPiece) broken.push(`a piece from ${from} to ${to} spans ${bays} bays`)
      // In halves of the unit, so that half a gap is whole.
      const jointed = (from === 0 ? 0 : 1) + (to === far ? 0 : 1)
      const halves = 2 * (to - from) - jointed * gap
      const over = halves - 2 * sheet.length
      if (over > 2 * jointed * one.jointTolerance)
        broken.push(`a piece from ${from} to ${to} is longer than a sheet`)
      wanted.add(`${one.courses[course]} ${Math.min(halves, 2 * sheet.length) / 2}`, 1)
    })
  })
  staggered(joints, one.stagger, broken)

  const cut = new Tally()
  const ripped: { height: number; cap: number; count: number }[] = []
  let objective = 0
  for (const entry of cuts) {
    if (!Number.isInteger(entry.n) || entry.n < 1) broken.push(`cuts made ${entry.n} times`)
    if ("strip" in entry) {
      if (entry.cut.reduce((sum, length) => sum + length + kerf, 0) > entry.cap + kerf)
        broken.push(`${entry.cut.join(" + ")} does not come out of a strip of ${entry.cap}`)
      for (const length of entry.cut) cut.add(`${entry.strip} ${length}`, entry.n)
      continue
    }
    objective += entry.n
    checkSheet(one, entry, broken)
    for (const length of entry.full) cut.add(`${sheet.width} ${length}`, entry.n)
    for (const [height, count] of entry.rip ?? [])
      ripped.push({ height, cap: entry.block ?? 0, count: count * entry.n })
  }
  for (const entry of cuts) {
    if (!("strip" in entry)) continue
    const there =
      ripped.find(
        ({ height, cap, count }) => height === entry.strip && cap === entry.cap && count >= entry.n,
      ) ?? ripped.find(({ height, cap }) => height === entry.strip && cap === entry.cap)
    if (there === undefined) broken.push(`no block gives a strip ${entry.strip} high and ${entry.cap} long`)
    else there.count -= entry.n
  }
  const given = new Tally()
  for (const { height, cap, count } of ripped) given.add(`${height} ${cap}`, count)
  for (const key of given.keys()) if (given.of(key) < 0) broken.push(`too few strips ${key}`)
  sameCut(cut, wanted, broken)
  return { objective, broken }
}

function checkSheet(
  { sheet, kerf }: SheetLayout,
  { full, block, rip = [] }: CutSheets,
  broken: string[],
): void {
  const along = [...full, ...(block === undefined ? [] : [block])]
  if (along.reduce((sum, length) => sum + length + kerf, 0) > sheet.length + kerf)
    broken.push(`${along.join(" + ")} does not come out of one sheet`)
  if (rip.reduce((sum, [height, count]) => sum + (height + kerf) * count, 0) > sheet.width + kerf)
    broken.push(
      `${rip.map(([height, count]) => `${count} strips of ${height}`).join(" and ")} are wider than a sheet`,
    )
  if (rip.length > 0 && block === undefined) broken.push("strips of no block")
}

function checkBuying(one: Buying, { packs }: BuyPlan): Checked {
  const broken: string[] = []
  const counts = one.offers.map(() => 0)
  for (const { line, supplier, packSize, packs: count, offer: place } of packs) {
    if (!Number.isInteger(count) || count < 1) broken.push(`${count} packs of ${line}`)
    // Of offers that are alike and not told apart, the first that is not taken yet.
    const at = one.offers.findIndex(
      (offer, index) =>
        offer.line === line &&
        offer.supplier === supplier &&
        offer.packSize === packSize &&
        counts[index] === 0 &&
        index === (place ?? index),
    )
    if (at < 0) broken.push(`${supplier} does not offer ${line} in packs of ${packSize}`)
    else counts[at] = count
  }
  one.offers.forEach((offer, index) => {
    const count = counts[index] ?? 0
    if (count > (offer.availablePacks ?? count))
      broken.push(`${count} packs of ${offer.line}, ${offer.availablePacks} available`)
    if (count > 0 && packPrice(offer, count) === undefined)
      broken.push(`${count} packs of ${offer.line} have no price`)
  })
  for (const { id, need } of one.lines) {
    const here = one.offers
      .map((offer, index) => ({ offer, count: counts[index] ?? 0 }))
      .filter(({ offer }) => offer.line === id)
    const units = here.reduce((sum, { offer, count }) => sum + count * offer.packSize, 0)
    if (units < need) broken.push(`${units} of ${id} are bought and ${need} needed`)
    const from = new Set(here.filter(({ count }) => count > 0).map(({ offer }) => offer.supplier))
    if (one.oneSupplierForEachLine && from.size > 1) broken.push(`${id} comes from ${from.size} suppliers`)
  }
  if (!ordersReached(one, counts)) broken.push("an order does not reach its supplier's minimum")
  return { objective: totalPaid(one, counts) ?? 0, broken }
}
