import { MOMENT } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit } from "./sources.ts"

export const wattHour: Unit = {
  id: "Wh",
  names: ["Wh", "W·h", "watt hour", "watt hours"],
  dimension: MOMENT,
  si: "3600",
  source: siUnit("1 W for an hour: 3600 J"),
}

const kilowattHour: Unit = {
  id: "kWh",
  names: ["kWh", "kW·h", "kilowatt hour", "kilowatt hours"],
  dimension: MOMENT,
  si: "3600000",
  source: siUnit("1000 Wh"),
}

const joule: Unit = {
  id: "J",
  names: ["J", "joule", "joules"],
  dimension: MOMENT,
  si: "1",
  source: siUnit("coherent unit of energy"),
}

const kilojoule: Unit = {
  id: "kJ",
  names: ["kJ", "kilojoule", "kilojoules"],
  dimension: MOMENT,
  si: "1000",
  source: siUnit("1000 J"),
}

const megajoule: Unit = {
  id: "MJ",
  names: ["MJ", "megajoule", "megajoules"],
  dimension: MOMENT,
  si: "1000000",
  source: siUnit("1 000 000 J"),
}

export const ENERGY_UNITS = [wattHour, kilowattHour, joule, kilojoule, megajoule]
