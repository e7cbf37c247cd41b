import { type MeasureId, Remembered, readValue, type SolverGiven, type StageValue } from "@pegbook/engine"

/** Something that is bought, and where the graph holds how much of it. */
export interface BoughtThing {
  /** What the user's own tables call it: "screws". */
  readonly item: string
  /** Name of the entry, or the cell of a table, that holds how much. */
  readonly quantity: StageValue
  readonly measure: "count" | "length" | "area" | "volume" | "bulk_volume"
  /** The unit that the list shows where the user names no other: "each", "ft2". */
  readonly unit: string
  /** Names of the entries that hold the packs and how many are in one, and what a pack is called: "box". */
  readonly packs?: { readonly count: string; readonly size: string; readonly unit: string }
  /**
   * Where the mass is known without the user's table: names of the entries that hold that of one and of all, or the
   * row of `member_masses` whose heaviest piece is one of them.
   */
  readonly mass?: { readonly one: string; readonly all: string } | { readonly role: string }
}

/** The columns that timber to buy is read from; a row is one size and length. */
export const TIMBER_READS = ["stock_to_buy.size", "stock_to_buy.length", "stock_to_buy.count"] as const

/** The names that a quantity is read from. */
export function namesOf(quantity: StageValue): readonly string[] {
  return typeof quantity === "string" ? [quantity] : [quantity.column, quantity.where]
}

/** A quantity in held units; nothing where the table has no such row. */
export function heldOf(given: SolverGiven, quantity: StageValue): number {
  if (typeof quantity === "string") return given.number(quantity)
  const row = given.column(quantity.where).indexOf(quantity.is)
  return Number(given.column(quantity.column)[row] ?? 0)
}

/** How things are named alike: case, spaces, the sign in a size and a plural do not matter. */
export function sameItem(one: string, other: string): boolean {
  return keyOf(one) === keyOf(other)
}

/** What two names that mean the same thing have in common. */
export function keyOf(item: string): string {
  return KEYS.of(item, keyAnew)
}

/** Every thing is looked for among all others, at each edit. */
const KEYS = new Remembered<string, string>(5_000)

function keyAnew(item: string): string {
  return item.trim().toLowerCase().replaceAll("×", "x").replaceAll(/\s+/g, " ").replace(/s$/, "")
}

/** SI units in one held unit. */
const SI_PER_HELD = { count: 1, length: 1e-9, area: 1e-18, volume: 1e-27, bulk_volume: 1e-27 } as const

/** How many of a unit a held quantity makes: nothing where the text is no unit of that measure. */
export function inUnit(held: number, unit: string, measure: BoughtThing["measure"]): number | undefined {
  const one = siOf(/^\d/.test(unit.trim()) ? unit : `1 ${unit}`, measure)
  if (one === undefined || one <= 0 || unit.trim() === "") return undefined
  // Held areas and volumes are beyond whole doubles; what is bought is not known to a millionth of a millionth.
  return Number(((held * SI_PER_HELD[measure]) / one).toPrecision(12))
}

/** A length as typed, in nanometres: nothing where it cannot be read or has no unit. */
export function typedLength(text: string): number | undefined {
  if (/^[\d\s.,/]*$/.test(text)) return undefined
  const si = siOf(text, "length")
  return si === undefined ? undefined : Math.round(si * 1e9)
}

function siOf(text: string, measure: MeasureId): number | undefined {
  const read = readValue(text, measure, "us")
  return "value" in read && typeof read.value === "object" ? read.value.si.toNumber() : undefined
}

/** Timber bought, one size and length a row; nothing of what is not bought. */
export function timberBought(given: SolverGiven): readonly {
  readonly size: string
  readonly length: number
  readonly count: number
  readonly at: number
}[] {
  const lengths = given.column("stock_to_buy.length").map(Number)
  const counts = given.column("stock_to_buy.count").map(Number)
  return given
    .column("stock_to_buy.size")
    .map((size, at) => ({ size: String(size), length: lengths[at] ?? 0, count: counts[at] ?? 0, at }))
    .filter(({ count }) => count > 0)
}
