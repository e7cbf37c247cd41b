import { Decimal } from "../quantity/decimal.ts"
import { dimension } from "../quantity/dimension.ts"
import type { UnitSystem } from "../units/measure.ts"
import { printQuantity } from "../units/print-value.ts"
import { readValue } from "../units/read-value.ts"

const LENGTH = dimension({ length: 1 })

/** The whole number of steps nearest to a length in metres, and so many more, as a person would type it. */
export function steppedLength(metres: number, step: string, more: number, system: UnitSystem): string {
  const read = readValue(step, "length", system)
  if (!("value" in read) || typeof read.value !== "object") throw new Error(`"${step}" is not a step`)
  const { si } = read.value
  return printQuantity(
    { si: new Decimal(metres).div(si).round().plus(more).times(si), dimension: LENGTH },
    "length",
    system,
  )
}
