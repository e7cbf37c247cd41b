import type { Dimension } from "../quantity/dimension.ts"
import type { UnitSystem } from "./measure.ts"
import type { Step, Style } from "./style.ts"
import type { Unit } from "./unit.ts"
import { UnitIndex } from "./unit-index.ts"

/** How a number is typed and printed while one system is shown. */
export interface Writing {
  /** The unit that a bare number is in. */
  readonly bare: Unit
  readonly style: Style
  /** Something a person could type. */
  readonly example: string
}

/** A measure that is a number. */
export interface NumberForm {
  readonly says: string
  readonly si: string
  readonly dimension: Dimension
  /** The units accepted, whichever system is shown, the most usual first. */
  readonly units: readonly Unit[]
  readonly index: UnitIndex
  readonly writing: Readonly<Record<UnitSystem, Writing>>
  /** Only whole numbers are accepted. */
  readonly whole?: true
}

/** Typed and printed in the same unit. `suffix`: behind the number, with the space that it wants. */
export function writtenIn(
  unit: Unit,
  steps: readonly Step[],
  example: string,
  suffix = ` ${unit.names[0]}`,
): Writing {
  return { bare: unit, style: { kind: "number", unit, suffix, steps }, example }
}

/** `metric` is left out where both systems write alike. */
export function numberForm(
  says: string,
  si: string,
  units: readonly Unit[],
  us: Writing,
  metric: Writing = us,
): NumberForm {
  return {
    says,
    si,
    dimension: us.bare.dimension,
    units,
    index: new UnitIndex(units),
    writing: { us, metric },
  }
}
