import type { SolverGiven } from "@pegbook/engine"
import { keyOf, typedLength } from "./bought-things.ts"

/** The columns that a person's own prices are read from. */
export const PRICE_READS = [
  "prices.item",
  "prices.length",
  "prices.unit",
  "prices.price",
  "prices.supplier",
  "prices.pack",
  "prices.from",
  "prices.date",
  "prices.lead",
] as const

export const SUPPLIER_READS = [
  "suppliers.supplier",
  "suppliers.delivery",
  "suppliers.free_from",
  "suppliers.least_order",
  "suppliers.tax_included",
] as const

/** One line of the user's prices. */
export interface PriceRow {
  readonly item: string
  /** Only of timber: the length that the price is for, in nanometres; absent: of any length. */
  readonly length?: number
  /** As typed. */
  readonly unit: string
  /** Hundredths. */
  readonly value: number
  /** Empty: the user named nobody. */
  readonly supplier: string
  /** How many of the unit the price is for; absent: sold as many as wanted. */
  readonly pack?: number
  /** Packs, or units where there are none, from which the price holds. */
  readonly from: number
  /** The day it was asked, in days since 1970. */
  readonly date?: number
  /** Days until the goods are there. */
  readonly lead: number
}

export interface SupplierRow {
  readonly supplier: string
  readonly delivery: number
  readonly freeFrom?: number
  readonly least: number
  readonly taxIncluded: boolean
}

export interface Read<T> {
  readonly rows: readonly T[]
  readonly unmet: readonly string[]
}

const DAY = 86_400_000

/** A day written as 2027-03-31, in days since 1970; nothing for any other text. */
export function dayOf(text: string): number | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text.trim()) ?? []
  if (year === undefined) return undefined
  const time = Date.UTC(Number(year), Number(month) - 1, Number(day))
  const back = new Date(time)
  return back.getUTCMonth() === Number(month) - 1 && back.getUTCDate() === Number(day)
    ? time / DAY
    : undefined
}

/** Days since 1970 as 2027-03-31. */
export function dayInWords(day: number): string {
  return new Date(day * DAY).toISOString().slice(0, 10)
}

/** A plain number above nothing, thousands with or without commas; `undefined`: no such number. */
export function plainNumber(text: string): number | undefined {
  const plain = text.replaceAll(/[\s$]/g, "").replaceAll(/,(?=\d{3}(\D|$))/g, "")
  return /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : undefined
}

/** The user's prices; a line with something in it that cannot be read is left out and named. */
export function readPrices(given: SolverGiven): Read<PriceRow> {
  const texts = (name: string) => given.column(name).map((text) => String(text).trim())
  const [lengths, units, suppliers] = [texts("prices.length"), texts("prices.unit"), texts("prices.supplier")]
  const [packs, froms, dates, leads] = [
    texts("prices.pack"),
    texts("prices.from"),
    texts("prices.date"),
    texts("prices.lead"),
  ]
  const values = given.column("prices.price").map(Number)
  const unmet: string[] = []
  const rows = texts("prices.item").flatMap((item, at): readonly PriceRow[] => {
    const fault = (column: string, text: string, instead: string): readonly PriceRow[] => {
      unmet.push(`Line ${at + 1} of the prices has the ${column} "${text}", which cannot be read. ${instead}`)
      return []
    }
    const value = values[at] ?? 0
    if (value < 0) return fault("price", `${value / 100}`, "Write what one costs, nothing or more.")
    const typed = lengths[at] ?? ""
    const length = typed === "" ? undefined : typedLength(typed)
    if (typed !== "" && length === undefined)
      return fault("length", typed, 'Write it with its unit, as "12 ft".')
    const number = (column: string, text: string): number | undefined | "wrong" => {
      if (text === "") return undefined
      const read = plainNumber(text)
      if (read !== undefined && (read > 0 || column === "days")) return read
      fault(column, text, 'Write a plain number, as "25", or leave it empty.')
      return "wrong"
    }
    const pack = number("pack", packs[at] ?? "")
    const from = number("from", froms[at] ?? "")
    const lead = number("days", leads[at] ?? "")
    const day = dates[at] ?? ""
    const date = day === "" ? undefined : dayOf(day)
    if (pack === "wrong" || from === "wrong" || lead === "wrong") return []
    if (day !== "" && date === undefined)
      return fault("day", day, 'Write it as year-month-day, "2027-03-31", or leave it empty.')
    return [
      {
        item,
        unit: units[at] ?? "",
        value,
        supplier: suppliers[at] ?? "",
        from: from ?? 0,
        lead: lead ?? 0,
        ...(length === undefined ? {} : { length }),
        ...(pack === undefined ? {} : { pack }),
        ...(date === undefined ? {} : { date }),
      },
    ]
  })
  return { rows, unmet }
}

/** The user's suppliers; one that prices name and this table does not have brings for nothing and adds tax. */
export function readSuppliers(given: SolverGiven, named: readonly PriceRow[]): Read<SupplierRow> {
  const texts = (name: string) => given.column(name).map((text) => String(text).trim())
  const [frees, leasts] = [texts("suppliers.free_from"), texts("suppliers.least_order")]
  const deliveries = given.column("suppliers.delivery").map(Number)
  const included = given.column("suppliers.tax_included").map((yes) => yes === true)
  const unmet: string[] = []
  const money = (column: string, text: string, at: number): number | undefined => {
    if (text === "") return undefined
    const read = plainNumber(text)
    if (read === undefined)
      unmet.push(
        `Line ${at + 1} of the suppliers has "${text}" under ${column}, which cannot be read and is left out. Write an amount, as "150", or leave it empty.`,
      )
    return read === undefined ? undefined : Math.round(read * 100)
  }
  const rows: SupplierRow[] = []
  for (const [at, supplier] of texts("suppliers.supplier").entries()) {
    if (rows.some((one) => keyOf(one.supplier) === keyOf(supplier))) {
      unmet.push(`${supplier} is in the suppliers twice: the first is used. Remove one.`)
      continue
    }
    const freeFrom = money("free from", frees[at] ?? "", at)
    rows.push({
      supplier,
      delivery: Math.max(0, deliveries[at] ?? 0),
      least: money("least order", leasts[at] ?? "", at) ?? 0,
      taxIncluded: included[at] ?? false,
      ...(freeFrom === undefined ? {} : { freeFrom }),
    })
  }
  const known = new Set(rows.map(({ supplier }) => keyOf(supplier)))
  for (const { supplier } of named) {
    if (known.has(keyOf(supplier))) continue
    known.add(keyOf(supplier))
    rows.push({ supplier, delivery: 0, least: 0, taxIncluded: false })
  }
  return { rows, unmet }
}
