import { VOLUME } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { hb44, siUnit, sp811 } from "./sources.ts"

const cubicInch: Unit = {
  id: "in3",
  names: ["cu in", "cuin", "in3", "cubic inch", "cubic inches"],
  dimension: VOLUME,
  si: "0.000016387064",
  source: sp811("the cube of 0.0254 m"),
}

export const cubicFoot: Unit = {
  id: "ft3",
  names: ["cu ft", "cuft", "cf", "ft3", "cu feet", "cubic foot", "cubic feet"],
  dimension: VOLUME,
  si: "0.028316846592",
  source: sp811("the cube of 0.3048 m"),
}

export const cubicYard: Unit = {
  id: "yd3",
  names: ["cu yd", "cuyd", "cu yds", "cy", "yd3", "cubic yard", "cubic yards"],
  dimension: VOLUME,
  si: "0.764554857984",
  source: hb44("27 cubic feet"),
}

const gallon: Unit = {
  id: "gal",
  names: ["gal", "gals", "gallon", "gallons", "US gal", "US gallon", "US gallons"],
  dimension: VOLUME,
  si: "0.003785411784",
  source: hb44("US liquid gallon: 231 cubic inches"),
}

const cubicMillimetre: Unit = {
  id: "mm3",
  names: ["mm³", "cu mm", "cubic millimetre", "cubic millimetres", "cubic millimeter", "cubic millimeters"],
  dimension: VOLUME,
  si: "0.000000001",
  source: siUnit("the cube of a millimetre"),
}

const cubicCentimetre: Unit = {
  id: "cm3",
  names: [
    "cm³",
    "cu cm",
    "cc",
    "mL",
    "cubic centimetre",
    "cubic centimetres",
    "cubic centimeter",
    "cubic centimeters",
  ],
  dimension: VOLUME,
  si: "0.000001",
  source: siUnit("the cube of a centimetre, and a millilitre"),
}

const litre: Unit = {
  id: "L",
  names: ["L", "litre", "litres", "liter", "liters"],
  dimension: VOLUME,
  si: "0.001",
  source: siUnit("a thousandth of a cubic metre, accepted for use with the SI"),
}

export const cubicMetre: Unit = {
  id: "m3",
  names: ["m³", "cu m", "cum", "cubic metre", "cubic metres", "cubic meter", "cubic meters"],
  dimension: VOLUME,
  si: "1",
  source: siUnit("coherent unit of volume"),
}

export const VOLUME_UNITS = [
  cubicFoot,
  cubicMetre,
  cubicYard,
  cubicInch,
  gallon,
  litre,
  cubicCentimetre,
  cubicMillimetre,
]
