import type { GraphValue } from "../graph/graph.ts"
import { inLanguage, languageInForce } from "../language/in-force.ts"
import type { Language } from "../language/language.ts"
import { Decimal } from "../quantity/decimal.ts"
import { type Dimension, dimension, PLAIN, sameDimension } from "../quantity/dimension.ts"
import type { Quantity } from "../quantity/quantity.ts"
import { type Scales, scaleOf, USUAL_SCALES } from "../quantity/scales.ts"
import { Remembered } from "../remembered.ts"
import type { MeasureId, UnitSystem } from "../units/measure.ts"
import { measure } from "../units/measures.ts"
import { printQuantity } from "../units/print-value.ts"
import type { Reading } from "./views.ts"

const LENGTH = dimension({ length: 1 })
/** Of one measure in one system of units: more than a workbook shows at once, so that an edit forgets nothing that stays. */
const MOST_REMEMBERED = 2_000

/** The readings of numbers under some scales, by system and measure and then by number. */
type Readings = Map<string, Remembered<number, Reading>>

/** Printing is the dearest part of an edit, most values come back, and workbooks that are open together have many alike. */
const READINGS = new WeakMap<Language, WeakMap<Scales, Readings>>()

function readingsOf(language: Language, scales: Scales): Readings {
  const ofLanguage = READINGS.get(language) ?? new WeakMap<Scales, Readings>()
  READINGS.set(language, ofLanguage)
  const readings = ofLanguage.get(scales) ?? new Map()
  ofLanguage.set(scales, readings)
  return readings
}

/** How a measure is held for solvers. */
interface HeldForm {
  /** How many held units one base unit of the graph is; nothing where they are the same. */
  readonly factor: Decimal | undefined
  readonly isLength: boolean
}

/**
 * Carries values between what people read (quantities), what the graph calculates with (base units under some scales) and
 * what solvers are given (base units under the usual scales).
 */
export class Holding {
  readonly #scales: Scales
  readonly #factors = new Map<MeasureId, Decimal>()
  /** Of a quantity that was put in before; its measure has its dimension. */
  readonly #graphed = new WeakMap<Quantity, number>()
  readonly #held = new Map<MeasureId, HeldForm>()
  #language: Language | undefined
  #readings: Readings = new Map()

  constructor(scales: Scales) {
    this.#scales = scales
  }

  /** SI units in one base unit of this measure. */
  #factor(id: MeasureId): Decimal {
    let factor = this.#factors.get(id)
    if (factor === undefined) {
      factor = scaleOf(measure(id).dimension ?? PLAIN, this.#scales)
      this.#factors.set(id, factor)
    }
    return factor
  }

  /** Into the graph. A length becomes a whole number of nanometres here, and nowhere else. */
  toGraph(value: Quantity | string | boolean, id: MeasureId): number | string | boolean {
    if (typeof value !== "object") return value
    let held = this.#graphed.get(value)
    if (held === undefined) {
      const si = isLength(value.dimension) ? wholeNanometres(value.si) : value.si
      held = si.div(this.#factor(id)).toNumber()
      this.#graphed.set(value, held)
    }
    return held
  }

  toQuantity(value: number, id: MeasureId): Quantity {
    return {
      si: new Decimal(value).times(this.#factor(id)),
      dimension: measure(id).dimension ?? PLAIN,
    }
  }

  /** For solvers: lengths as whole nanometres, whatever the graph's scales. */
  toHeld(value: number, id: MeasureId): number {
    const { factor, isLength } = this.#heldForm(id)
    const held = factor === undefined ? value : new Decimal(value).times(factor).toNumber()
    return isLength ? Math.round(held) : held
  }

  fromHeld(value: number, id: MeasureId): number {
    const { factor } = this.#heldForm(id)
    return factor === undefined ? value : new Decimal(value).div(factor).toNumber()
  }

  #heldForm(id: MeasureId): HeldForm {
    let form = this.#held.get(id)
    if (form === undefined) {
      const { dimension: of = PLAIN } = measure(id)
      const factor = this.#factor(id).div(scaleOf(of, USUAL_SCALES))
      form = { factor: factor.equals(1) ? undefined : factor, isLength: isLength(of) }
      this.#held.set(id, form)
    }
    return form
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

  #numberReading(value: number, id: MeasureId, system: UnitSystem): Reading {
    const language = languageInForce()
    if (language !== this.#language) {
      this.#language = language
      this.#readings = readingsOf(language, this.#scales)
    }
    const key = `${system} ${id}`
    let known = this.#readings.get(key)
    if (known === undefined) {
      known = new Remembered(MOST_REMEMBERED)
      this.#readings.set(key, known)
    }
    return known.of(value, () => {
      const quantity = this.toQuantity(value, id)
      let text: string | undefined
      return {
        value: quantity.si.toNumber(),
        unit: measure(id).si,
        // Printed when it is first read: of a table with hundreds of rows few are.
        get text() {
          text ??= language.number(printQuantity(quantity, id, system), id)
          return text
        },
      }
    })
  }
}

function isLength(of: Dimension): boolean {
  return sameDimension(of, LENGTH)
}

function wholeNanometres(si: Decimal): Decimal {
  return si.times(1e9).round().div(1e9)
}
