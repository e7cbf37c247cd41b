import { SPEED } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit, sp811 } from "./sources.ts"

export const milePerHour: Unit = {
  id: "mph",
  names: ["mph", "mi/h", "miles/h", "miles per hour", "mile per hour"],
  dimension: SPEED,
  si: "0.44704",
  source: sp811("1 mile in an hour"),
}

export const metrePerSecond: Unit = {
  id: "m/s",
  names: ["m/s", "metres per second", "meters per second", "metre per second", "meter per second"],
  dimension: SPEED,
  si: "1",
  source: siUnit("coherent unit of speed"),
}

const kilometrePerHour: Unit = {
  id: "km/h",
  names: ["km/h", "kmh", "km/hr", "kilometres per hour", "kilometers per hour"],
  dimension: SPEED,
  si: "1/3.6",
  source: siUnit("1000 m in an hour"),
}

const footPerSecond: Unit = {
  id: "ft/s",
  names: ["ft/s", "feet per second", "foot per second"],
  dimension: SPEED,
  si: "0.3048",
  source: sp811("1 ft in a second"),
}

const knot: Unit = {
  id: "kn",
  names: ["kn", "knot", "knots"],
  dimension: SPEED,
  si: "1852/3600",
  source: sp811("1 nautical mile in an hour"),
}

export const SPEED_UNITS = [milePerHour, metrePerSecond, kilometrePerHour, footPerSecond, knot]
