import type { Dimension } from "../quantity/dimension.ts"

/** Which units are shown; both are always accepted. `us`: feet, inches and pounds. */
export type UnitSystem = "us" | "metric"

/**
 * What a value measures, and so how it is typed and read. Two measures may share a dimension and differ in
 * their usual units: stone is bought by the cubic yard, a beam's volume is not.
 */
export type MeasureId =
  | "length"
  | "small_length"
  | "area"
  | "volume"
  | "bulk_volume"
  | "mass"
  | "force"
  | "pressure"
  | "stress"
  | "moment"
  | "line_load"
  | "density"
  | "temperature"
  | "temperature_difference"
  | "expansion"
  | "angle"
  | "time"
  | "speed"
  | "energy"
  | "count"
  | "share"
  | "ratio"
  | "money"
  | "money_per_area"
  | "text"
  | "yes_no"

export interface Measure {
  readonly id: MeasureId
  /** "a length", "an area": used in messages. */
  readonly says: string
  /** Absent for `text` and `yes_no`. */
  readonly dimension?: Dimension
  /** The unit a bare number is taken in, and the unit shown. */
  readonly usual: Readonly<Record<UnitSystem, string>>
  /** The SI coherent unit, for machines: "m", "m2", "N.m", "1" for a plain number. */
  readonly si: string
  /** Something a person could type, for messages. */
  readonly example: Readonly<Record<UnitSystem, string>>
}
