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

/** A column that is worked out in each row. */
export function column(
  name: string,
  label: string,
  measure: MeasureId,
  formula: string,
  why: string,
  ...sources: readonly Source[]
): Column {
  return { name, label, measure, formula, why, sources }
}

/** A figure in a table of one row, where each can be typed over by itself. */
export function figureColumn(
  name: string,
  label: string,
  measure: MeasureId,
  value: string,
  why: string,
  ...sources: readonly Source[]
): Column {
  return { name, label, measure, values: [value], why, sources }
}
