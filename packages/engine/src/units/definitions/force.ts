import { FORCE } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { hb44, siUnit, sp811 } from "./sources.ts"

export const poundForce: Unit = {
  id: "lbf",
  names: ["lb", "lbf", "lbs", "lbsf", "pound", "pounds", "pound-force", "pounds-force"],
  dimension: FORCE,
  si: "4.4482216152605",
  source: sp811("0.453 592 37 kg at standard gravity, 9.806 65 m/s² exactly"),
}

const kip: Unit = {
  id: "kip",
  names: ["kip", "kips"],
  dimension: FORCE,
  si: "4448.2216152605",
  source: hb44("1000 lbf"),
}

const newton: Unit = {
  id: "N",
  names: ["N", "newton", "newtons"],
  dimension: FORCE,
  si: "1",
  source: siUnit("coherent unit of force"),
}

export const kilonewton: Unit = {
  id: "kN",
  names: ["kN", "kilonewton", "kilonewtons"],
  dimension: FORCE,
  si: "1000",
  source: siUnit("1000 N"),
}

export const FORCE_UNITS = [poundForce, kilonewton, kip, newton]
