import type { TableEntry } from "@pegbook/engine"
import { dressedSizes } from "../figures/dressed-sizes.ts"
import { PS_20 } from "../sources.ts"
import { FLAT_FACTORS, SIZE_FACTORS } from "../sources-strength.ts"
import { figureTable } from "./figure-table.ts"

/** Timber from here on is graded and adjusted as "timbers". */
const TIMBER_THICKNESS_IN = 4.5

const columnOf = (name: string): readonly string[] =>
  dressedSizes.columns.find((column) => column.name === name)?.values ?? []

const NOMINAL_WIDTHS = [
  { inches: 3.5, mm: 89, width: 4, metric: 89 },
  { inches: 5.5, mm: 140, width: 6, metric: 140 },
  { inches: 7.25, mm: 184, width: 8, metric: 184 },
  { inches: 9.25, mm: 235, width: 10, metric: 235 },
  { inches: 11.25, mm: 286, width: 12, metric: 286 },
] as const

const MM_PER_INCH = 25.4
const inches = (text: string): number => Number.parseFloat(text) / (text.endsWith("mm") ? MM_PER_INCH : 1)

/** Sizes that the published strengths are for: 1 1/2 in and thicker, 3 1/2 in and deeper, of the North American series. */
const SIZES = columnOf("nominal").flatMap((nominal, row) => {
  const thickness = inches(columnOf("thickness")[row] ?? "")
  const depth = inches(columnOf("depth")[row] ?? "")
  const series = columnOf("standard")[row] ?? ""
  const width = NOMINAL_WIDTHS.find(({ inches: known, mm }) => depth === known || depth === mm / MM_PER_INCH)
  if (thickness < 1.45 || width === undefined || series.startsWith("EN")) return []
  const timber = thickness > TIMBER_THICKNESS_IN
  const shape = depth > thickness + 2 ? "beams and stringers" : "posts and timbers"
  return [
    {
      nominal,
      width: String(width.width),
      metric_width: `${width.metric} mm`,
      thickness_class: timber ? "5 in and more" : thickness > 3 ? "4 in" : "2 or 3 in",
      grading: timber ? shape : `${width.width} in wide`,
    },
  ]
})

/** The sizes in the table that are as thick as one of the beginnings says: `strengthSizes("2x", "38x")`. */
export const strengthSizes = (...beginnings: readonly string[]): readonly string[] =>
  SIZES.map(({ nominal }) => nominal).filter((nominal) =>
    beginnings.some((beginning) => nominal.startsWith(beginning)),
  )

export const sizeClasses: TableEntry = figureTable({
  name: "size_classes",
  label: "Which class a size is in",
  why: "Strength is published by class of width and thickness, not by each size.",
  sources: [PS_20, SIZE_FACTORS],
  columns: {
    nominal: { label: "Sold as", measure: "text", why: "The name on the rack." },
    width: {
      label: "Width in the name, inches",
      measure: "count",
      why: "The wide side before planing; it picks the size factor.",
    },
    metric_width: {
      label: "Width, metric class",
      measure: "length",
      why: "The wide side by which the Canadian size factor goes.",
    },
    thickness_class: {
      label: "Thickness",
      measure: "text",
      why: "Thin, 4 in, or timbers, which are graded by other rules.",
    },
    grading: {
      label: "Class of published values",
      measure: "text",
      why: "The column of the strength table.",
    },
  },
  rows: SIZES,
})

/** Nominal width, bending when 2 or 3 in thick, bending when 4 in thick, tension, compression. */
const SIZE_FACTOR_ROWS = [
  ["4", "1.5", "1.5", "1.5", "1.15"],
  ["5", "1.4", "1.4", "1.4", "1.1"],
  ["6", "1.3", "1.3", "1.3", "1.1"],
  ["8", "1.2", "1.3", "1.2", "1.05"],
  ["10", "1.1", "1.2", "1.1", "1"],
  ["12", "1", "1.1", "1", "1"],
  ["14", "0.9", "1", "0.9", "0.9"],
] as const

export const sizeFactors: TableEntry = figureTable({
  name: "size_factors",
  label: "Size factors, CF",
  why: "A slim piece is stronger for its size: a knot or a flaw weakens a deep one more. Not for Southern Pine, and 1 for timbers up to 12 in deep.",
  sources: [SIZE_FACTORS],
  columns: {
    width: { label: "Width in the name, inches", measure: "count", why: "The wide side before planing." },
    thin: { label: "Bending, 2 or 3 in thick", measure: "ratio", why: "Times Fb, bending." },
    thick: { label: "Bending, 4 in thick", measure: "ratio", why: "Times Fb, bending." },
    tension: { label: "Tension", measure: "ratio", why: "Times Ft, tension." },
    compression: { label: "Compression", measure: "ratio", why: "On Fc along the grain." },
  },
  rows: SIZE_FACTOR_ROWS.map(([width, thin, thick, tension, compression]) => ({
    width,
    thin,
    thick,
    tension,
    compression,
  })),
})

export const flatFactors: TableEntry = figureTable({
  name: "flat_factors",
  label: "Flat use factors, Cfu",
  why: "A plank laid flat may be stressed a little more. Members that stand on edge take 1.",
  sources: [FLAT_FACTORS],
  columns: {
    width: { label: "Width in the name, inches", measure: "count", why: "10 stands for 10 and wider." },
    thin: { label: "2 or 3 in thick", measure: "ratio", why: "Times Fb, bending." },
    thick: { label: "4 in thick", measure: "ratio", why: "Times Fb, bending." },
  },
  rows: [
    { width: "4", thin: "1.1", thick: "1" },
    { width: "5", thin: "1.1", thick: "1.05" },
    { width: "6", thin: "1.15", thick: "1.05" },
    { width: "8", thin: "1.15", thick: "1.05" },
    { width: "10", thin: "1.2", thick: "1.1" },
  ],
})
