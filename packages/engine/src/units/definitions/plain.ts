import { PLAIN } from "../../quantity/dimension.ts"
import type { Unit } from "../unit.ts"
import { PLAIN_WRITING, siUnit } from "./sources.ts"

/** What a bare plain number is in. It has no spelling. */
export const one: Unit = {
  id: "1",
  names: [],
  dimension: PLAIN,
  si: "1",
  source: siUnit("a plain number"),
}

export const piece: Unit = {
  id: "piece",
  names: ["pieces", "piece", "pcs", "pc", "each", "ea"],
  dimension: PLAIN,
  si: "1",
  source: PLAIN_WRITING,
}

export const percent: Unit = {
  id: "%",
  names: ["%", "percent", "per cent", "pct"],
  dimension: PLAIN,
  si: "0.01",
  source: siUnit("a hundredth"),
}

export const PLAIN_UNITS = [one, piece, percent]
