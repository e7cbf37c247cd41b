import type { GraphValue } from "../graph/graph.ts"
import { inLanguage, languageInForce } from "../language/in-force.ts"
import { Decimal } from "../quantity/decimal.ts"
import { type Dimension, dimension, sameDimension } from "../quantity/dimension.ts"
import type { Quantity } from "../quantity/quantity.ts"
import { type Scales, scaleOf, USUAL_SCALES } from "../quantity/scales.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { printQuantity } from "../units/print-value.ts"
import type { Reading } from "./views.ts"

const LENGTH = dimension({ length: 1 })
const MOST_REMEMBERED = 8_000

/**
 * Carries values between what people read (quantities), what the graph calculates with (base units under some scales) and
 * what solvers are given (base units under the usual scales).
 */
export class Holding {
  readonly #scales: Scales
  readonly #factors = new Map<MeasureId, Decimal>()
  /** How many held units one base unit of the graph is. */
  readonly #toHeld = new Map<MeasureId, Decimal>()
  readonly #readings = new Map<string, Reading>()

  constructor(scales: Scales) {
    this.#scales = scales
  }

  /** SI units in one base unit of this measure. */
  #factor(id: MeasureId): Decimal {
    let factor = this.#factors.get(id)
    if (factor === undefined) {
      factor = scaleOf(measure(id).dimension ?? { exponents: {} }, this.#scales)
      this.#factors.set(id, factor)
    }
    return factor
  }

  /** Into the graph. A length becomes a whole number of nanometres here, and nowhere else. */
  toGraph(value: Quantity | string | boolean, id: MeasureId): number | string | boolean {
    if (typeof value !== "object") return value
    const si = isLength(value.dimension) ? wholeNanometres(value.si) : value.si
    return si.div(this.#factor(id)).toNumber()
  }

  toQuantity(value: number, id: MeasureId): Quantity {
    return {
      si: new Decimal(value).times(this.#factor(id)),
      dimension: measure(id).dimension ?? { exponents: {} },
    }
  }

  /** For solvers: lengths as whole nanometres, whatever the graph's scales. */
  toHeld(value: number, id: MeasureId): number {
    const factor = this.#heldFactor(id)
    const held = factor.equals(1) ? value : new Decimal(value).times(factor).toNumber()
    return isLength(measure(id).dimension ?? { exponents: {} }) ? Math.round(held) : held
  }

  fromHeld(value: number, id: MeasureId): number {
    const factor = this.#heldFactor(id)
    return factor.equals(1) ? value : new Decimal(value).div(factor).toNumber()
  }

  #heldFactor(id: MeasureId): Decimal {
    let factor = this.#toHeld.get(id)
    if (factor === undefined) {
      factor = this.#factor(id).div(scaleOf(measure(id).dimension ?? { exponents: {} }, USUAL_SCALES))
      this.#toHeld.set(id, factor)
    }
    return factor
  }

  /** As a person and a machine read it; nothing where there is no value. */
  reading(value: GraphValue, id: MeasureId, system: UnitSystem): Reading | null {
    switch (typeof value) {
      case "object":
        return null
      case "string":
        return { value, unit: "", text: inLanguage(value) }
      case "boolean":
        return { value, unit: "", text: languageInForce().phrases[value ? "yes" : "no"] }
      case "number":
        return this.#numberReading(value, id, system)
    }
  }

  /** Printing is the dearest part of an edit, and most values come back: the last few thousand are remembered. */
  #numberReading(value: number, id: MeasureId, system: UnitSystem): Reading {
    const key = `${system} ${id} ${value}`
    let reading = this.#readings.get(key)
    if (reading === undefined) {
      const quantity = this.toQuantity(value, id)
      reading = {
        value: quantity.si.toNumber(),
        unit: measure(id).si,
        text: languageInForce().number(printQuantity(quantity, id, system), id),
      }
      if (this.#readings.size >= MOST_REMEMBERED) this.#readings.clear()
      this.#readings.set(key, reading)
    }
    return reading
  }
}

function isLength(of: Dimension): boolean {
  return sameDimension(of, LENGTH)
}

function wholeNanometres(si: Decimal): Decimal {
  return si.times(1e9).round().div(1e9)
}
