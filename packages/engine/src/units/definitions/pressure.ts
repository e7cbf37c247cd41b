import { PRESSURE } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit, sp811 } from "./sources.ts"

export const poundPerSquareFoot: Unit = {
  id: "psf",
  names: [
    "psf",
    "lb/sq ft",
    "lb/ft2",
    "lbs/sq ft",
    "lbs/ft2",
    "lbf/sq ft",
    "lbf/ft2",
    "pounds per square foot",
  ],
  dimension: PRESSURE,
  si: "4.4482216152605/0.09290304",
  source: sp811("1 lbf on a square foot"),
}

export const poundPerSquareInch: Unit = {
  id: "psi",
  names: [
    "psi",
    "lb/sq in",
    "lb/in2",
    "lbs/sq in",
    "lbs/in2",
    "lbf/sq in",
    "lbf/in2",
    "pounds per square inch",
  ],
  dimension: PRESSURE,
  si: "4.4482216152605/0.00064516",
  source: sp811("1 lbf on a square inch"),
}

const kipPerSquareInch: Unit = {
  id: "ksi",
  names: ["ksi", "kip/sq in", "kip/in2", "kips/sq in", "kips/in2"],
  dimension: PRESSURE,
  si: "4448.2216152605/0.00064516",
  source: sp811("1000 psi"),
}

const kipPerSquareFoot: Unit = {
  id: "ksf",
  names: ["ksf", "kip/sq ft", "kip/ft2", "kips/sq ft", "kips/ft2"],
  dimension: PRESSURE,
  si: "4448.2216152605/0.09290304",
  source: sp811("1000 psf"),
}

const pascal: Unit = {
  id: "Pa",
  names: ["Pa", "pascal", "pascals", "N/m2", "N/sq m"],
  dimension: PRESSURE,
  si: "1",
  source: siUnit("1 N on a square metre"),
}

export const kilopascal: Unit = {
  id: "kPa",
  names: ["kPa", "kilopascal", "kilopascals", "kN/m2", "kN/sq m"],
  dimension: PRESSURE,
  si: "1000",
  source: siUnit("1000 Pa"),
}

export const megapascal: Unit = {
  id: "MPa",
  names: ["MPa", "megapascal", "megapascals", "N/mm2", "N/sq mm", "MN/m2"],
  dimension: PRESSURE,
  si: "1000000",
  source: siUnit("1 000 000 Pa"),
}

const gigapascal: Unit = {
  id: "GPa",
  names: ["GPa", "gigapascal", "gigapascals", "kN/mm2", "kN/sq mm"],
  dimension: PRESSURE,
  si: "1000000000",
  source: siUnit("1 000 000 000 Pa"),
}

export const PRESSURE_UNITS = [
  poundPerSquareFoot,
  kilopascal,
  poundPerSquareInch,
  megapascal,
  kipPerSquareFoot,
  kipPerSquareInch,
  pascal,
  gigapascal,
]
