import type { GraphValue } from "../../graph/graph.ts"
import { sameDouble, textKey } from "../double.ts"

/** The first row that holds each value of a column; texts by their keys. */
type FirstRows = ReadonlyMap<GraphValue, number>

/** Columns shorter than this are faster looked through than looked up in. */
const SHORT = 8

/** A column's array is never altered, so that what was found out about it stays true. */
const KNOWN = new WeakMap<readonly GraphValue[], FirstRows | "in turn">()

/** The row, from 0, or −1. In order: the last row up to which every row is still on the near side. */
export function findDouble(wanted: GraphValue, values: readonly GraphValue[], mode: number): number {
  if (mode === 0) return findEqual(wanted, values)
  if (typeof wanted !== "number") return -1
  const beyond = values.findIndex(
    (value) => typeof value === "object" || (typeof value === "number" && (value - wanted) * mode > 0),
  )
  return beyond < 0 ? values.length - 1 : beyond - 1
}

function findEqual(wanted: GraphValue, values: readonly GraphValue[]): number {
  const key = typeof wanted === "string" ? textKey(wanted) : wanted
  const rows = key === undefined || values.length < SHORT ? "in turn" : rowsOf(values)
  if (rows === "in turn") return values.findIndex((value) => sameDouble(value, wanted))
  return rows.get(key as GraphValue) ?? -1
}

function rowsOf(values: readonly GraphValue[]): FirstRows | "in turn" {
  let known = KNOWN.get(values)
  if (known === undefined) {
    known = firstRows(values)
    KNOWN.set(values, known)
  }
  return known
}

/** Nothing where a text can only be compared by a collator: then every row has to be looked at. */
function firstRows(values: readonly GraphValue[]): FirstRows | "in turn" {
  const rows = new Map<GraphValue, number>()
  for (const [row, value] of values.entries()) {
    const key = typeof value === "string" ? textKey(value) : value
    if (key === undefined) return "in turn"
    if (!rows.has(key)) rows.set(key, row)
  }
  return rows
}
