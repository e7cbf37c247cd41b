import type { ProblemCode } from "../../src/problems/problem.ts"
import { Decimal } from "../../src/quantity/decimal.ts"
import type { Quantity } from "../../src/quantity/quantity.ts"
import type { MeasureId, UnitSystem } from "../../src/units/measure.ts"
import { formOf } from "../../src/units/measures.ts"
import { readValue } from "../../src/units/read-value.ts"

/** What a text reads as, in SI; fails where it is refused. */
export function si(text: string, measure: MeasureId, system: UnitSystem = "us"): Decimal {
  const read = readValue(text, measure, system)
  if ("problem" in read) throw new Error(`"${text}" was refused: ${read.problem.code}`)
  if (typeof read.value !== "object") throw new Error(`"${text}" is no number`)
  return read.value.si
}

/** The problem's code, or what was read. */
export function refusal(text: string, measure: MeasureId, system: UnitSystem = "us"): ProblemCode | string {
  const read = readValue(text, measure, system)
  if ("problem" in read) return read.problem.code
  return `read as ${typeof read.value === "object" ? read.value.si : read.value}`
}

export function quantity(number: Decimal | string, measure: MeasureId): Quantity {
  const form = formOf(measure)
  if (form === undefined) throw new RangeError(`${measure} is no number`)
  return { si: new Decimal(number), dimension: form.dimension }
}
