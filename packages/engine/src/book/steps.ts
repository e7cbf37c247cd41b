import type { FigureEntry, InputEntry } from "../definition/entry.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Quantity } from "../quantity/quantity.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { formOf, measure } from "../units/measures.ts"
import { printQuantity } from "../units/print-value.ts"
import { readValue } from "../units/read-value.ts"
import { fromSi } from "../units/unit.ts"
import { limits } from "./typed.ts"

/** More steps than any search takes; it bounds those of an input without limits. */
const MOST_STEPS = 1_000_000

/** Values at whole steps from a value, one way. */
export interface Steps {
  /** How many steps the limits leave room for. */
  readonly most: number
  /** What to type for the value `count` steps away; it reads back to exactly that value. */
  text(count: number): string
}

/** The size of a step such as "1/2 in"; without a unit, in the usual one. Nothing where it is not more than zero. */
export function stepSize(step: string, of: MeasureId, system: UnitSystem): Decimal | undefined {
  const id = measure(of).dimension?.point ? "temperature_difference" : of
  const outcome = readValue(step, id, system)
  if ("problem" in outcome || typeof outcome.value !== "object") return undefined
  return outcome.value.si.gt(0) ? outcome.value.si : undefined
}

/** Steps from a value within the entry's limits; a value that is not below zero stays so. */
export function stepsFrom(
  entry: InputEntry | FigureEntry,
  from: Quantity,
  size: Decimal,
  toward: "more" | "less",
  system: UnitSystem,
): Steps {
  const { least, most } = entry.kind === "input" ? limits(entry, system) : {}
  const floor = least?.si ?? (from.si.gte(0) ? new Decimal(0) : undefined)
  const end = toward === "more" ? most?.si : floor
  const room = end === undefined ? MOST_STEPS : end.minus(from.si).abs().div(size).floor().toNumber()
  const beyond = end !== undefined && (toward === "more" ? end.lt(from.si) : end.gt(from.si))
  return {
    most: beyond ? 0 : Math.min(room, MOST_STEPS),
    text(count) {
      const si = toward === "more" ? from.si.plus(size.times(count)) : from.si.minus(size.times(count))
      return textOf({ si, dimension: from.dimension }, entry.measure, system)
    },
  }
}

/** As a person would type it, where that is exact; otherwise in decimals. */
export function textOf(quantity: Quantity, of: MeasureId, system: UnitSystem): string {
  const printed = printQuantity(quantity, of, system)
  const read = readValue(printed, of, system)
  if (!("problem" in read) && typeof read.value === "object" && read.value.si.equals(quantity.si))
    return printed
  const unit = formOf(of)?.writing[system].bare
  if (unit === undefined) return printed
  return `${fromSi(quantity.si, unit).toDecimalPlaces(12).toFixed()} ${unit.names[0] ?? ""}`.trim()
}
