import { MASS } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { hb44, siUnit, sp811 } from "./sources.ts"

const ounce: Unit = {
  id: "oz",
  names: ["oz", "ounce", "ounces"],
  dimension: MASS,
  si: "0.028349523125",
  source: hb44("a sixteenth of an avoirdupois pound"),
}

export const pound: Unit = {
  id: "lb",
  names: ["lb", "lbs", "lbm", "pound", "pounds"],
  dimension: MASS,
  si: "0.45359237",
  bareAfter: ounce,
  source: sp811(
    "1 lb = 0.453 592 37 kg exactly (avoirdupois); the printed factor 0.453 592 4 is rounded",
    "l-002",
  ),
}

/** Not "ton": that is 2000 lb, 2240 lb or 1000 kg, depending on who says it. */
const shortTon: Unit = {
  id: "short_ton",
  names: ["short ton", "short tons", "US ton", "US tons"],
  dimension: MASS,
  si: "907.18474",
  source: hb44("2000 lb"),
}

const gram: Unit = {
  id: "g",
  names: ["g", "gram", "grams", "gramme", "grammes"],
  dimension: MASS,
  si: "0.001",
  source: siUnit("a thousandth of a kilogram"),
}

export const kilogram: Unit = {
  id: "kg",
  names: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"],
  dimension: MASS,
  si: "1",
  source: siUnit("base unit of mass"),
}

const tonne: Unit = {
  id: "t",
  names: ["t", "tonne", "tonnes", "metric ton", "metric tons"],
  dimension: MASS,
  si: "1000",
  source: siUnit("1000 kg, accepted for use with the SI"),
}

export const MASS_UNITS = [pound, kilogram, shortTon, tonne, ounce, gram]
