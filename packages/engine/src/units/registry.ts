import { sameDimension } from "../quantity/dimension.ts"
import { ANGLE_UNITS } from "./definitions/angle.ts"
import { AREA_UNITS } from "./definitions/area.ts"
import { DENSITY_UNITS } from "./definitions/density.ts"
import { ENERGY_UNITS } from "./definitions/energy.ts"
import { FORCE_UNITS } from "./definitions/force.ts"
import { LENGTH_UNITS } from "./definitions/length.ts"
import { MASS_UNITS } from "./definitions/mass.ts"
import { LINE_LOAD_UNITS, MOMENT_UNITS } from "./definitions/moment.ts"
import { MONEY_PER_AREA_UNITS, MONEY_UNITS } from "./definitions/money.ts"
import { PLAIN_UNITS } from "./definitions/plain.ts"
import { PRESSURE_UNITS } from "./definitions/pressure.ts"
import { SPEED_UNITS } from "./definitions/speed.ts"
import {
  EXPANSION_UNITS,
  TEMPERATURE_DIFFERENCE_UNITS,
  TEMPERATURE_UNITS,
} from "./definitions/temperature.ts"
import { TIME_UNITS } from "./definitions/time.ts"
import { VOLUME_UNITS } from "./definitions/volume.ts"
import type { Unit } from "./unit.ts"
import { UnitIndex } from "./unit-index.ts"

/** Every unit that is known. */
export const ALL_UNITS: readonly Unit[] = [
  ANGLE_UNITS,
  AREA_UNITS,
  DENSITY_UNITS,
  ENERGY_UNITS,
  EXPANSION_UNITS,
  FORCE_UNITS,
  LENGTH_UNITS,
  LINE_LOAD_UNITS,
  MASS_UNITS,
  MOMENT_UNITS,
  MONEY_PER_AREA_UNITS,
  MONEY_UNITS,
  PLAIN_UNITS,
  PRESSURE_UNITS,
  SPEED_UNITS,
  TEMPERATURE_DIFFERENCE_UNITS,
  TEMPERATURE_UNITS,
  TIME_UNITS,
  VOLUME_UNITS,
].flat()

/** One index a dimension: building it refuses a spelling that two of its units claim. */
const INDEXES: readonly UnitIndex[] = ALL_UNITS.filter(
  (unit, at) => ALL_UNITS.findIndex((other) => sameDimension(other.dimension, unit.dimension)) === at,
).map(({ dimension }) => new UnitIndex(ALL_UNITS.filter((unit) => sameDimension(unit.dimension, dimension))))

/** Whether any unit, of whatever dimension, is spelled so. */
export function isUnit(spelling: string): boolean {
  return INDEXES.some((index) => index.find(spelling) !== undefined)
}
