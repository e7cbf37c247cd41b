import { LINE_LOAD, MOMENT } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { siUnit, sp811 } from "./sources.ts"

export const poundFoot: Unit = {
  id: "lbf.ft",
  names: [
    "lb·ft",
    "ft·lb",
    "lbf·ft",
    "ft·lbf",
    "lbs·ft",
    "ft·lbs",
    "lbft",
    "ftlb",
    "pound-foot",
    "pound-feet",
    "foot-pound",
    "foot-pounds",
  ],
  dimension: MOMENT,
  si: "1.3558179483314004",
  source: sp811("1 lbf at 1 ft"),
}

const poundInch: Unit = {
  id: "lbf.in",
  names: [
    "lb·in",
    "in·lb",
    "lbf·in",
    "in·lbf",
    "lbs·in",
    "in·lbs",
    "pound-inch",
    "pound-inches",
    "inch-pounds",
  ],
  dimension: MOMENT,
  si: "0.1129848290276167",
  source: sp811("1 lbf at 1 in"),
}

const kipFoot: Unit = {
  id: "kip.ft",
  names: ["kip·ft", "ft·kip", "kips·ft", "ft·kips", "kip-feet"],
  dimension: MOMENT,
  si: "1355.8179483314004",
  source: sp811("1000 lbf at 1 ft"),
}

const newtonMetre: Unit = {
  id: "N.m",
  names: ["N·m", "Nm", "newton metre", "newton metres", "newton meter", "newton meters"],
  dimension: MOMENT,
  si: "1",
  source: siUnit("coherent unit of moment"),
}

export const kilonewtonMetre: Unit = {
  id: "kN.m",
  names: ["kN·m", "kNm", "kilonewton metre", "kilonewton metres", "kilonewton meter", "kilonewton meters"],
  dimension: MOMENT,
  si: "1000",
  source: siUnit("1000 N·m"),
}

export const MOMENT_UNITS = [poundFoot, kilonewtonMetre, poundInch, kipFoot, newtonMetre]

export const poundPerFoot: Unit = {
  id: "plf",
  names: ["lb/ft", "plf", "lbs/ft", "lbf/ft", "lb/lin ft", "lb/foot", "pounds per foot", "pounds/ft"],
  dimension: LINE_LOAD,
  si: "4.4482216152605/0.3048",
  source: sp811("1 lbf on a foot of length"),
}

const kipPerFoot: Unit = {
  id: "klf",
  names: ["kip/ft", "klf", "kips/ft", "kips per foot"],
  dimension: LINE_LOAD,
  si: "4448.2216152605/0.3048",
  source: sp811("1000 lbf on a foot of length"),
}

const newtonPerMetre: Unit = {
  id: "N/m",
  names: ["N/m", "newtons per metre", "newtons per meter"],
  dimension: LINE_LOAD,
  si: "1",
  source: siUnit("coherent unit of force per length"),
}

export const kilonewtonPerMetre: Unit = {
  id: "kN/m",
  names: ["kN/m", "N/mm", "kilonewtons per metre", "kilonewtons per meter"],
  dimension: LINE_LOAD,
  si: "1000",
  source: siUnit("1000 N/m"),
}

export const LINE_LOAD_UNITS = [poundPerFoot, kilonewtonPerMetre, kipPerFoot, newtonPerMetre]
