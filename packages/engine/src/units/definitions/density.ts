import { DENSITY } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit, sp811 } from "./sources.ts"

export const poundPerCubicFoot: Unit = {
  id: "lb/ft3",
  names: ["lb/cu ft", "pcf", "lb/ft3", "lbs/cu ft", "lbs/ft3", "pounds per cubic foot"],
  dimension: DENSITY,
  si: "0.45359237/0.028316846592",
  source: sp811("1 lb in a cubic foot"),
}

const poundPerCubicYard: Unit = {
  id: "lb/yd3",
  names: ["lb/cu yd", "lb/yd3", "lbs/cu yd", "lbs/yd3", "pounds per cubic yard"],
  dimension: DENSITY,
  si: "0.45359237/0.764554857984",
  source: sp811("1 lb in a cubic yard"),
}

export const kilogramPerCubicMetre: Unit = {
  id: "kg/m3",
  names: ["kg/m³", "kg/cu m", "kilograms per cubic metre", "kilograms per cubic meter"],
  dimension: DENSITY,
  si: "1",
  source: siUnit("coherent unit of density"),
}

const gramPerCubicCentimetre: Unit = {
  id: "g/cm3",
  names: ["g/cm³", "g/cc", "g/mL", "kg/L", "t/m³", "tonnes per cubic metre", "tonnes per cubic meter"],
  dimension: DENSITY,
  si: "1000",
  source: siUnit("1000 kg/m³"),
}

export const DENSITY_UNITS = [
  poundPerCubicFoot,
  kilogramPerCubicMetre,
  poundPerCubicYard,
  gramPerCubicCentimetre,
]
