import type { SolverGiven } from "@pegbook/engine"
import {
  type BoughtThing,
  heldOf,
  inUnit,
  keyOf,
  namesOf,
  sameItem,
  TIMBER_READS,
  timberBought,
} from "./bought-things.ts"
import { lengthInWords } from "./length-in-words.ts"
import type { Offer, OrderLine, OrderSupplier } from "./order-choice.ts"
import { OWN_READS, type OwnThing, readOwnThings } from "./own-things.ts"
import {
  dayOf,
  PRICE_READS,
  type PriceRow,
  readPrices,
  readSuppliers,
  SUPPLIER_READS,
  type SupplierRow,
} from "./price-offers.ts"
import { holdingFor, timberUnits } from "./timber-offers.ts"

/** The names that what is bought where is worked from. */
export function buyingReads(things: readonly BoughtThing[]): readonly string[] {
  const names = things.flatMap(({ quantity, packs }) => [
    ...namesOf(quantity),
    ...(packs === undefined ? [] : [packs.count, packs.size]),
  ])
  return [
    ...new Set([
      ...TIMBER_READS,
      ...names,
      ...OWN_READS,
      ...PRICE_READS,
      ...SUPPLIER_READS,
      ...RULE_READS,
      "tax_rate",
    ]),
  ]
}

const RULE_READS = [
  "buying_rules.buy_from",
  "buying_rules.today",
  "buying_rules.price_age",
  "buying_rules.start",
] as const

/** A supplier's offer, with what the list says of it. */
export interface PricedOffer extends Offer {
  /** How the line is counted where this offer is taken. */
  readonly unit: string
  /** So many of `unit` in one of the line's own units. */
  readonly unitsEach: number
  /** What the price is for: "each", "box", "pack of 25". */
  readonly priceUnit: string
  readonly isPack: boolean
  readonly lead: number
  /** The oldest of its prices, in days since 1970. */
  readonly date?: number
  /** Timber priced by one line for all lengths. */
  readonly everyLength: boolean
}

/** One thing to buy, and who sells it. */
export interface PricedLine extends OrderLine {
  readonly item: string
  readonly label: string
  readonly isTimber: boolean
  /** The user added it: all of it is used, by no step that the workbook knows. */
  readonly isOwn?: true
  readonly length: number
  readonly unit: string
  /** Sold in packs as the design counts them: so many, of so many, by a name. */
  readonly packs?: { readonly count: number; readonly size: number; readonly unit: string }
  readonly offers: readonly PricedOffer[]
}

export interface BuyingPlan {
  readonly lines: readonly PricedLine[]
  readonly suppliers: readonly SupplierRow[]
  readonly asOrdered: readonly OrderSupplier[]
  /** Who alone is bought from, as the user says; absent: whoever is cheapest. */
  readonly only?: number
  readonly rules: Rules
  readonly unmet: readonly string[]
}

export interface Rules {
  /** Days since 1970. */
  readonly today?: number
  readonly start?: number
  readonly priceAge: number
}

/** Days after which a price is asked for again, where the user says nothing else. */
const USUAL_AGE = 60

/** Everything to buy with the offers for it, from the design and the user's tables. */
export function readBuying(given: SolverGiven, things: readonly BoughtThing[]): BuyingPlan {
  const prices = readPrices(given)
  const counted = [...timberBought(given).map(({ size }) => size), ...things.map(({ item }) => item)]
  const own = readOwnThings(given, new Set(counted.map(keyOf)))
  const priceRows = [...own.rows.flatMap(({ price }) => price ?? []), ...prices.rows]
  const suppliers = readSuppliers(given, priceRows)
  const unmet = [...prices.unmet, ...suppliers.unmet, ...own.unmet]
  const byItem = new Map<string, PriceRow[]>()
  for (const row of priceRows) byItem.set(keyOf(row.item), [...(byItem.get(keyOf(row.item)) ?? []), row])
  const of = (item: string): readonly PriceRow[] => byItem.get(keyOf(item)) ?? []
  const place = (name: string) => suppliers.rows.findIndex(({ supplier }) => keyOf(supplier) === keyOf(name))
  const lines = [
    ...timberLines(given, of, place, unmet),
    ...things.flatMap((thing) => thingLine(given, thing, of, place, unmet)),
    ...own.rows.map((thing) => ownLine(thing, of, place, unmet)),
  ]
  const tax = given.number("tax_rate")
  const rule = (name: (typeof RULE_READS)[number]): string => String(given.column(name)[0] ?? "").trim()
  const wanted = rule("buying_rules.buy_from")
  const only = wanted === "" ? -1 : place(wanted)
  if (wanted !== "" && only < 0)
    unmet.push(
      `Nobody called "${wanted}" is in your prices or suppliers: it is bought wherever it is cheapest. Write the name as it stands there.`,
    )
  return {
    lines,
    suppliers: suppliers.rows,
    asOrdered: suppliers.rows.map(({ delivery, freeFrom, least, taxIncluded }) => ({
      delivery,
      least,
      tax: taxIncluded ? 0 : tax,
      ...(freeFrom === undefined ? {} : { freeFrom }),
    })),
    ...(only < 0 ? {} : { only }),
    rules: rulesOf(rule, unmet),
    unmet,
  }
}

function rulesOf(rule: (name: (typeof RULE_READS)[number]) => string, unmet: string[]): Rules {
  const day = (name: "buying_rules.today" | "buying_rules.start") => {
    const text = rule(name)
    const read = dayOf(text)
    if (text !== "" && read === undefined)
      unmet.push(`The day "${text}" cannot be read. Write it as year-month-day, "2027-03-31".`)
    return read
  }
  const [today, start] = [day("buying_rules.today"), day("buying_rules.start")]
  const age = Number(rule("buying_rules.price_age") || USUAL_AGE)
  if (!(age >= 0))
    unmet.push(
      `"${rule("buying_rules.price_age")}" is no number of days: ${USUAL_AGE} are taken. Write a plain number.`,
    )
  return {
    priceAge: age >= 0 ? age : USUAL_AGE,
    ...(today === undefined ? {} : { today }),
    ...(start === undefined ? {} : { start }),
  }
}

function timberLines(
  given: SolverGiven,
  of: (item: string) => readonly PriceRow[],
  place: (supplier: string) => number,
  unmet: string[],
): readonly PricedLine[] {
  return timberBought(given).map(({ size, length, count }) => {
    const label = `${size}, ${lengthInWords(length)}`
    const found = holdingFor(of(size), length)
    const line = { item: size, label, isTimber: true, length, unit: "each", need: count }
    const basis = (row: PriceRow): Basis | undefined => {
      const units = timberUnits(row.unit, count, length)
      return units === undefined ? undefined : { ...units, counted: "each" }
    }
    return { ...line, offers: offersOf(line, found, basis, place, unmet) }
  })
}

function thingLine(
  given: SolverGiven,
  thing: BoughtThing,
  of: (item: string) => readonly PriceRow[],
  place: (supplier: string) => number,
  unmet: string[],
): readonly PricedLine[] {
  const { item, unit, measure } = thing
  const held = heldOf(given, thing.quantity)
  if (held <= 0) return []
  const packs =
    thing.packs === undefined
      ? undefined
      : {
          count: given.number(thing.packs.count),
          size: given.number(thing.packs.size),
          unit: thing.packs.unit,
        }
  const need = inUnit(held, unit, measure) ?? held
  const line = { item, label: item, isTimber: false, length: 0, unit, need }
  const basis = (row: PriceRow): Basis | undefined => {
    if (packs !== undefined && isPack(row.unit, packs.unit))
      return { amount: packs.count, counted: unit, whole: false, box: packs.size }
    const amount = inUnit(held, row.unit, measure)
    if (amount === undefined) return undefined
    return { amount, counted: row.unit, whole: measure === "count" }
  }
  return [
    {
      ...line,
      ...(packs === undefined ? {} : { packs }),
      offers: offersOf(line, of(item), basis, place, unmet),
    },
  ]
}

/** A thing of the user's own is counted by the word that they counted it by, and by no other. */
function ownLine(
  { item, need, unit }: OwnThing,
  of: (item: string) => readonly PriceRow[],
  place: (supplier: string) => number,
  unmet: string[],
): PricedLine {
  const line = { item, label: item, isTimber: false, isOwn: true, length: 0, unit, need } as const
  const whole = inUnit(1, unit, "count") !== undefined
  const basis = (row: PriceRow): Basis | undefined =>
    sameItem(row.unit, unit) ? { amount: need, counted: unit, whole } : undefined
  return { ...line, offers: offersOf(line, of(item), basis, place, unmet) }
}

function isPack(unit: string, pack: string): boolean {
  return [pack, `${pack}es`, "pack", "packet", "carton"].some((name) => sameItem(name, unit))
}

/** How the unit of a price counts a line. */
interface Basis {
  /** So many of the price's unit cover it. */
  readonly amount: number
  /** The unit that the list then shows. */
  readonly counted: string
  /** By the piece: only whole ones. */
  readonly whole: boolean
  /** Pieces in a box, where it is priced by the box that the design counts. */
  readonly box?: number
}

function offersOf(
  line: { readonly label: string; readonly unit: string; readonly need: number; readonly isTimber: boolean },
  rows: readonly PriceRow[],
  basisOf: (row: PriceRow) => Basis | undefined,
  place: (supplier: string) => number,
  unmet: string[],
): readonly PricedOffer[] {
  const offers = new Map<string, { basis: Basis; rows: PriceRow[] }>()
  for (const row of rows) {
    const basis = basisOf(row)
    if (basis === undefined || basis.amount <= 0) {
      unmet.push(
        `The price of ${line.label} is by "${row.unit}", which this list does not count it by. Give it by ${line.unit}.`,
      )
      continue
    }
    const key = [keyOf(row.supplier), keyOf(row.unit), row.pack ?? ""].join("\n")
    const known = offers.get(key) ?? { basis, rows: [] }
    offers.set(key, known)
    if (known.rows.some(({ from }) => from === row.from)) {
      const where = row.supplier === "" ? "" : ` at ${row.supplier}`
      unmet.push(`There are two prices for ${line.label}${where}: the first is used. Remove one.`)
      continue
    }
    known.rows.push(row)
  }
  return [...offers.values()].flatMap(({ basis, rows: [first, ...more] }) =>
    first === undefined ? [] : [offerOf(line, basis, first, more, place(first.supplier))],
  )
}

function offerOf(
  line: { readonly need: number; readonly isTimber: boolean },
  { amount, counted, whole, box }: Basis,
  first: PriceRow,
  more: readonly PriceRow[],
  supplier: number,
): PricedOffer {
  const rows = [first, ...more]
  const isPack = first.pack !== undefined
  const perUnit = line.need / amount
  const dates = rows.flatMap(({ date }) => (date === undefined ? [] : [date]))
  return {
    supplier,
    size: (first.pack ?? 1) * (box ?? perUnit),
    ...(isPack || whole || box !== undefined ? {} : { amount }),
    breaks: rows.map(({ from, value }) => ({ from, price: value })).sort((a, b) => a.from - b.from),
    unit: counted,
    unitsEach: box !== undefined || line.isTimber ? 1 : amount / line.need,
    priceUnit: isPack ? packInWords(first.pack ?? 1, first.unit) : first.unit,
    isPack: isPack || box !== undefined,
    lead: Math.max(...rows.map(({ lead }) => lead)),
    ...(dates.length === 0 ? {} : { date: Math.min(...dates) }),
    everyLength: line.isTimber && first.length === undefined,
  }
}

function packInWords(pack: number, unit: string): string {
  return inUnit(1, unit, "count") === undefined ? `pack of ${pack} ${unit}` : `pack of ${pack}`
}
