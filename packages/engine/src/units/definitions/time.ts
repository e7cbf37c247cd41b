import { TIME } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit } from "./sources.ts"

const second: Unit = {
  id: "s",
  names: ["s", "sec", "secs", "second", "seconds"],
  dimension: TIME,
  si: "1",
  source: siUnit("base unit of time"),
}

export const minute: Unit = {
  id: "min",
  names: ["min", "mins", "minute", "minutes"],
  dimension: TIME,
  si: "60",
  source: siUnit("60 s, accepted for use with the SI"),
}

export const hour: Unit = {
  id: "h",
  names: ["h", "hr", "hrs", "hour", "hours"],
  dimension: TIME,
  si: "3600",
  bareAfter: minute,
  source: siUnit("60 min, accepted for use with the SI"),
}

const day: Unit = {
  id: "d",
  names: ["day", "days", "d"],
  dimension: TIME,
  si: "86400",
  source: siUnit("24 h, accepted for use with the SI"),
}

export const TIME_UNITS = [hour, minute, second, day]
