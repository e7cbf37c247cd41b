import { EXPANSION, TEMPERATURE, TEMPERATURE_DIFFERENCE } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit, sp811 } from "./sources.ts"

export const fahrenheit: Unit = {
  id: "degF",
  names: [
    "°F",
    "F",
    "degF",
    "deg F",
    "degree F",
    "degrees F",
    "Fahrenheit",
    "deg Fahrenheit",
    "degrees Fahrenheit",
  ],
  dimension: TEMPERATURE,
  si: "5/9",
  zero: "459.67",
  source: sp811("T/K = (t/°F + 459.67) / 1.8"),
}

export const celsius: Unit = {
  id: "degC",
  names: [
    "°C",
    "C",
    "degC",
    "deg C",
    "degree C",
    "degrees C",
    "Celsius",
    "deg Celsius",
    "degrees Celsius",
    "℃",
  ],
  dimension: TEMPERATURE,
  si: "1",
  zero: "273.15",
  source: siUnit("T/K = t/°C + 273.15"),
}

const kelvin: Unit = {
  id: "K",
  names: ["K", "kelvin", "kelvins"],
  dimension: TEMPERATURE,
  si: "1",
  source: siUnit("base unit of temperature"),
}

export const TEMPERATURE_UNITS = [fahrenheit, celsius, kelvin]

export const fahrenheitDegree: Unit = {
  id: "F_deg",
  names: ["F deg", "F degs", "F degree", "F degrees", ...fahrenheit.names],
  dimension: TEMPERATURE_DIFFERENCE,
  si: "5/9",
  source: sp811("a difference of 1 °F is 1/1.8 K"),
}

export const kelvinDifference: Unit = {
  id: "C_deg",
  names: ["K", "kelvin", "kelvins", "C deg", "C degs", "C degree", "C degrees", ...celsius.names],
  dimension: TEMPERATURE_DIFFERENCE,
  si: "1",
  source: siUnit("a difference of 1 °C is 1 K"),
}

export const TEMPERATURE_DIFFERENCE_UNITS = [fahrenheitDegree, kelvinDifference]

/** Spellings of growth per degree; `parts` goes before the "per". */
function perDegree(parts: readonly string[], degrees: readonly string[]): string[] {
  return parts.flatMap((part) => degrees.map((degree) => `${part} per ${degree}`.trim()))
}

const KELVINS = ["K", "kelvin", "°C", "C", "degC", "deg C", "C deg"]
const FAHRENHEITS = ["°F", "F", "degF", "deg F", "F deg"]
const MILLIONTHS = ["millionths", "millionth", "ppm"]

export const perKelvin: Unit = {
  id: "1/K",
  names: perDegree(["", "1"], KELVINS),
  dimension: EXPANSION,
  si: "1",
  source: siUnit("coherent unit of expansion"),
}

const perFahrenheit: Unit = {
  id: "1/degF",
  names: perDegree(["", "1"], FAHRENHEITS),
  dimension: EXPANSION,
  si: "1.8",
  source: sp811("1/°F = 1.8/K"),
}

export const millionthsPerKelvin: Unit = {
  id: "1e-6/K",
  names: perDegree(MILLIONTHS, KELVINS),
  dimension: EXPANSION,
  si: "0.000001",
  source: siUnit("a millionth of the length for each kelvin"),
}

const millionthsPerFahrenheit: Unit = {
  id: "1e-6/degF",
  names: perDegree(MILLIONTHS, FAHRENHEITS),
  dimension: EXPANSION,
  si: "0.0000018",
  source: sp811("1/°F = 1.8/K"),
}

export const EXPANSION_UNITS = [millionthsPerKelvin, perKelvin, millionthsPerFahrenheit, perFahrenheit]
