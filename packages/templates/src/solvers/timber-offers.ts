import { inUnit, keyOf } from "./bought-things.ts"
import type { PriceRow } from "./price-offers.ts"

/** Lengths are sold to the nearest fraction of an inch; two names of one length are never further apart. */
const HALF_MM = 500_000

/**
 * Of the prices of one size, those that hold for a length sold: a supplier's price of this very length goes before the
 * one that the same supplier has for every length.
 */
export function holdingFor(rows: readonly PriceRow[], length: number): readonly PriceRow[] {
  const exact = (row: PriceRow) => row.length !== undefined && Math.abs(row.length - length) <= HALF_MM
  const fitting = rows.filter((row) => row.length === undefined || exact(row))
  return fitting.filter(
    (row) =>
      exact(row) || !fitting.some((other) => exact(other) && keyOf(other.supplier) === keyOf(row.supplier)),
  )
}

/** How many of a price's unit some pieces of one length make, and whether they are counted by the piece. */
export function timberUnits(
  unit: string,
  count: number,
  length: number,
): { readonly amount: number; readonly whole: boolean } | undefined {
  const pieces = inUnit(count, unit, "count")
  if (pieces !== undefined) return { amount: pieces, whole: true }
  const run = inUnit(count * length, unit, "length")
  return run === undefined ? undefined : { amount: run, whole: false }
}
