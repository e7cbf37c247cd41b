import type { Column, MeasureId, Source } from "@pegbook/engine"

/** A column without a formula, with what every column says of itself. */
export function plainColumn(
  name: string,
  label: string,
  measure: MeasureId,
  why: string,
  ...sources: readonly Source[]
): Column {
  return { name, label, measure, why, sources }
}
