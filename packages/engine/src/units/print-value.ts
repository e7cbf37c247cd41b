import { Decimal } from "../quantity/decimal.ts"
import { sameDimension } from "../quantity/dimension.ts"
import type { Quantity } from "../quantity/quantity.ts"
import { printParts } from "./feet-inches.ts"
import type { MeasureId, UnitSystem } from "./measure.ts"
import { formOf } from "./measures.ts"
import { groupThousands, type Rounding, roundTo } from "./rounding.ts"
import type { NumberStyle, Step, Style } from "./style.ts"
import { fromSi } from "./unit.ts"

export interface PrintOptions {
  /** Prints "+" before what is above zero. Default: no. */
  readonly signed?: boolean
  /** Of the fraction, where inches are printed. Default: 16. */
  readonly denominator?: number
  /** Default: nearest. */
  readonly rounding?: Rounding
}

const MOST_DECIMALS = 9

/**
 * A quantity for a person, rounded to what {@link printedTo} says.
 *
 * Throws a RangeError if the quantity is not of the measure's dimension, is not finite, or the denominator is
 * not a whole number from 1 to 1000: all a programmer's mistakes.
 */
export function printQuantity(
  quantity: Quantity,
  measureId: MeasureId,
  system: UnitSystem,
  options: PrintOptions = {},
): string {
  const style = styleFor(quantity, measureId, system)
  const { rounding = "nearest" } = options
  const text =
    style.kind === "parts"
      ? printParts(quantity.si, style, checkedDenominator(options.denominator ?? style.denominator), rounding)
      : printNumber(quantity.si, style, rounding)
  return options.signed && isAboveZero(text) ? `+${text}` : text
}

function styleFor(quantity: Quantity, measureId: MeasureId, system: UnitSystem): Style {
  const form = formOf(measureId)
  if (form === undefined || !sameDimension(form.dimension, quantity.dimension)) {
    throw new RangeError(`a quantity of another dimension was to be printed as ${measureId}`)
  }
  if (!quantity.si.isFinite()) throw new RangeError(`${quantity.si} was to be printed as ${measureId}`)
  return form.writing[system].style
}

function checkedDenominator(denominator: number): number {
  if (Number.isInteger(denominator) && denominator >= 1 && denominator <= 1000) return denominator
  throw new RangeError(`a fraction was to be printed in parts of ${denominator}; accepted: 1 to 1000`)
}

/** Of what is printed: 0.001 that prints as 0 gets no sign. */
function isAboveZero(text: string): boolean {
  return !text.startsWith("-") && /^[\d,.]*[1-9]/.test(text)
}

function printNumber(si: Decimal, style: NumberStyle, rounding: Rounding): string {
  const number = fromSi(si, style.unit)
  for (const step of style.steps) {
    const rounded = roundTo(number, decimalsOf(number, step), rounding)
    if (step.below !== undefined && rounded.abs().gte(step.below)) continue
    const digits = "fixed" in step ? rounded.abs().toFixed(step.decimals) : rounded.abs().toFixed()
    return `${rounded.lt(0) ? "-" : ""}${groupThousands(digits)}${style.suffix}`
  }
  throw new RangeError(`no step of the style covers ${number}`)
}

function decimalsOf(number: Decimal, step: Step): number {
  if ("decimals" in step) return step.decimals
  if (number.isZero()) return 0
  return Math.min(MOST_DECIMALS, Math.max(0, step.significant - 1 - number.e))
}

/** How finely a measure is printed, in words: "nearest 1/16 in". */
export function printedTo(measureId: MeasureId, system: UnitSystem): string {
  const style = formOf(measureId)?.writing[system].style
  if (style === undefined) return "as typed"
  if (style.kind === "parts") {
    const step = style.denominator === 1 ? "1" : `1/${style.denominator}`
    return `nearest ${step} ${style.minor.names[0]}`
  }
  return [...style.steps]
    .reverse()
    .map((step) => stepInWords(step, style.suffix))
    .join("; ")
}

function stepInWords(step: Step, suffix: string): string {
  const how =
    "decimals" in step
      ? `nearest ${new Decimal(10).pow(-step.decimals).toFixed()}${suffix}`
      : `${step.significant} digits`
  return step.below === undefined ? how : `below ${step.below}${suffix}, ${how}`
}
