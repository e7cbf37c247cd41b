import { MONEY, MONEY_PER_AREA } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { PLAIN_WRITING, sp811 } from "./sources.ts"

/** Money is in the reader's own currency, whichever that is; amounts print without a sign. */
export const money: Unit = {
  id: "money",
  names: [],
  dimension: MONEY,
  si: "1",
  source: PLAIN_WRITING,
}

const dollar: Unit = {
  id: "$",
  names: ["$", "dollars", "dollar"],
  dimension: MONEY,
  si: "1",
  source: PLAIN_WRITING,
}

export const MONEY_UNITS = [money, dollar]

function perArea(areas: readonly string[]): string[] {
  return ["", "$", "dollars", "dollar"].flatMap((sign) => areas.map((area) => `${sign} per ${area}`.trim()))
}

export const perSquareFoot: Unit = {
  id: "money/ft2",
  names: perArea(["sq ft", "sqft", "ft2", "square foot"]),
  dimension: MONEY_PER_AREA,
  si: "1/0.09290304",
  source: sp811("a square foot is 0.092 903 04 m²"),
}

export const perSquareMetre: Unit = {
  id: "money/m2",
  names: perArea(["m²", "sq m", "square metre", "square meter"]).concat("1/m2"),
  dimension: MONEY_PER_AREA,
  si: "1",
  source: PLAIN_WRITING,
}

export const MONEY_PER_AREA_UNITS = [perSquareFoot, perSquareMetre]
