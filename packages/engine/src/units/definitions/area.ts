import { AREA } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { hb44, siUnit, sp811 } from "./sources.ts"

const squareInch: Unit = {
  id: "in2",
  names: ["sq in", "sqin", "in2", "square inch", "square inches"],
  dimension: AREA,
  si: "0.00064516",
  source: sp811("the square of 0.0254 m"),
}

export const squareFoot: Unit = {
  id: "ft2",
  names: ["sq ft", "sqft", "sf", "ft2", "sq feet", "sq foot", "square foot", "square feet"],
  dimension: AREA,
  si: "0.09290304",
  source: sp811("the square of 0.3048 m"),
}

const squareYard: Unit = {
  id: "yd2",
  names: ["sq yd", "sqyd", "sq yds", "yd2", "square yard", "square yards"],
  dimension: AREA,
  si: "0.83612736",
  source: hb44("9 square feet"),
}

const acre: Unit = {
  id: "acre",
  names: ["acre", "acres", "ac"],
  dimension: AREA,
  si: "4046.8564224",
  source: hb44("43 560 square feet of the international foot"),
}

const squareMillimetre: Unit = {
  id: "mm2",
  names: [
    "mm²",
    "sq mm",
    "square millimetre",
    "square millimetres",
    "square millimeter",
    "square millimeters",
  ],
  dimension: AREA,
  si: "0.000001",
  source: siUnit("the square of a millimetre"),
}

const squareCentimetre: Unit = {
  id: "cm2",
  names: [
    "cm²",
    "sq cm",
    "square centimetre",
    "square centimetres",
    "square centimeter",
    "square centimeters",
  ],
  dimension: AREA,
  si: "0.0001",
  source: siUnit("the square of a centimetre"),
}

export const squareMetre: Unit = {
  id: "m2",
  names: ["m²", "sq m", "sqm", "square metre", "square metres", "square meter", "square meters"],
  dimension: AREA,
  si: "1",
  source: siUnit("coherent unit of area"),
}

const hectare: Unit = {
  id: "ha",
  names: ["ha", "hectare", "hectares"],
  dimension: AREA,
  si: "10000",
  source: siUnit("a square of 100 m, accepted for use with the SI"),
}

export const AREA_UNITS = [
  squareFoot,
  squareMetre,
  squareInch,
  squareYard,
  acre,
  squareMillimetre,
  squareCentimetre,
  hectare,
]
