import type { Source } from "../definition/source.ts"
import { Decimal } from "../quantity/decimal.ts"
import type { Dimension } from "../quantity/dimension.ts"

/** A unit of measurement, as data. */
export interface Unit {
  readonly id: string
  /** Everything that people type for it, the usual spelling first. Case and marks: see `spelling.ts`. */
  readonly names: readonly string[]
  readonly dimension: Dimension
  /** How many SI coherent units it is: a decimal, or a quotient of two where no decimal is exact ("5/9"). */
  readonly si: string
  /** For points of a scale: how far the scale's 0 lies above the natural zero, in this unit. */
  readonly zero?: string
  /** The unit that a bare number after this one is in: "5 ft 10" is 5 ft 10 in. */
  readonly bareAfter?: Unit
  readonly source: Source
}

interface Factor {
  readonly times: Decimal
  readonly over: Decimal
}

const FACTORS = new WeakMap<Unit, Factor>()

function factorOf(unit: Unit): Factor {
  let factor = FACTORS.get(unit)
  if (factor === undefined) {
    const [times = "1", over = "1"] = unit.si.split("/")
    factor = { times: new Decimal(times), over: new Decimal(over) }
    FACTORS.set(unit, factor)
  }
  return factor
}

/** From a number of this unit to SI, to 40 digits. */
export function toSi(amount: Decimal, unit: Unit): Decimal {
  const { times, over } = factorOf(unit)
  return amount
    .plus(unit.zero ?? 0)
    .times(times)
    .div(over)
}

/** From SI to a number of this unit, to 40 digits. */
export function fromSi(si: Decimal, unit: Unit): Decimal {
  const { times, over } = factorOf(unit)
  return si
    .times(over)
    .div(times)
    .minus(unit.zero ?? 0)
}
