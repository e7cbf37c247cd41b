import { PLAIN } from "../../quantity/dimension.ts"
import type { Unit } from "../unit.ts"
import { siUnit } from "./sources.ts"

export const degree: Unit = {
  id: "deg",
  names: ["°", "deg", "degs", "degree", "degrees"],
  dimension: PLAIN,
  // π to the 40 digits that our decimals keep; no decimal is exact.
  si: "3.141592653589793238462643383279502884197/180",
  source: siUnit("π/180 rad, accepted for use with the SI"),
}

const radian: Unit = {
  id: "rad",
  names: ["rad", "radian", "radians"],
  dimension: PLAIN,
  si: "1",
  source: siUnit("coherent unit of angle: a plain number"),
}

export const ANGLE_UNITS = [degree, radian]
