import { Decimal } from "../quantity/decimal.ts"
import { BASE_DIMENSIONS, type BaseDimension } from "../quantity/dimension.ts"
import { scaleOf, USUAL_SCALES } from "../quantity/scales.ts"
import type { MeasureId } from "../units/measure.ts"
import { measure } from "../units/measures.ts"

/** The base units of {@link USUAL_SCALES}, as a reader writes them. */
const BASE_UNITS: Readonly<Record<BaseDimension, string>> = {
  mass: "kg",
  length: "nm",
  time: "s",
  temperature: "K",
  money: "hundredth",
}

/** The unit in which formulas calculate: "nm", "kg/(nm.s2)"; "1" for a plain number, "" for texts. */
export function heldUnit(id: MeasureId): string {
  const { dimension } = measure(id)
  if (dimension === undefined) return ""
  const written = (sign: 1 | -1): string[] =>
    BASE_DIMENSIONS.flatMap((base) => {
      const power = sign * (dimension.exponents[base] ?? 0)
      return power <= 0 ? [] : [power === 1 ? BASE_UNITS[base] : `${BASE_UNITS[base]}${power}`]
    })
  const [above, below] = [written(1).join("."), written(-1)]
  if (below.length === 0) return above === "" ? "1" : above
  return `${above === "" ? "1" : above}/${below.length === 1 ? below[0] : `(${below.join(".")})`}`
}

/** How many SI units one held unit is, as text. */
export function siPerHeld(id: MeasureId): string {
  return scaleOf(measure(id).dimension ?? { exponents: {} }, USUAL_SCALES).toExponential()
}

/** A value in SI units as the formulas hold it. Exact for whole nanometres: the shortest text of a double is what it was made from. */
export function toHeldValue(si: number, id: MeasureId): number {
  const scale = scaleOf(measure(id).dimension ?? { exponents: {} }, USUAL_SCALES)
  return new Decimal(si).div(scale).toNumber()
}
