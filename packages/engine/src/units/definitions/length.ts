import { LENGTH } from "../dimensions.ts"
import type { Unit } from "../unit.ts"
import { hb44, siUnit, sp811 } from "./sources.ts"

export const inch: Unit = {
  id: "in",
  names: ["in", "inch", "inches", "ins", '"'],
  dimension: LENGTH,
  si: "0.0254",
  source: sp811("1 in = 2.54 cm exactly, a twelfth of a foot"),
}

export const foot: Unit = {
  id: "ft",
  names: ["ft", "foot", "feet", "'"],
  dimension: LENGTH,
  si: "0.3048",
  bareAfter: inch,
  source: sp811("1 ft = 0.3048 m exactly (international foot)", "l-001"),
}

const yard: Unit = {
  id: "yd",
  names: ["yd", "yds", "yard", "yards"],
  dimension: LENGTH,
  si: "0.9144",
  source: hb44("1 yd = 3 ft"),
}

export const millimetre: Unit = {
  id: "mm",
  names: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
  dimension: LENGTH,
  si: "0.001",
  source: siUnit("a thousandth of a metre"),
}

const centimetre: Unit = {
  id: "cm",
  names: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
  dimension: LENGTH,
  si: "0.01",
  source: siUnit("a hundredth of a metre"),
}

const metre: Unit = {
  id: "m",
  names: ["m", "metre", "metres", "meter", "meters"],
  dimension: LENGTH,
  si: "1",
  source: siUnit("base unit of length"),
}

export const LENGTH_UNITS = [inch, foot, yard, millimetre, centimetre, metre]
