import type { TableEntry } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY } from "../sources.ts"

const END_1 = "IFERROR(end_measured_1; platform_width)"
const END_2 = "IFERROR(end_measured_2; platform_width)"

/** How far the measured frame is from square, as a whole. Needs: the four measured lengths, the platform's size. */
export const squareError: TableEntry = {
  kind: "table",
  name: "set_out_error",
  label: "Out of square",
  why: "What the tape says, in one line. The far side is found from the other five lengths: where the tape says something else there, one of them was misread.",
  sources: [GEOMETRY],
  rows: { kind: "formula", formula: "1" },
  columns: [
    {
      name: "diagonals_differ",
      label: "Diagonals differ by",
      measure: "length",
      formula: "ABS(diagonal_measured_1 - diagonal_measured_2)",
      why: "Nothing, when the frame is square and its sides are true.",
      sources: [GEOMETRY],
    },
    {
      name: "ends_differ",
      label: "Short sides differ by",
      measure: "length",
      formula: `ABS(${END_1} - ${END_2})`,
      why: "Nothing, when the long sides run side by side.",
      sources: [GEOMETRY],
    },
    {
      name: "far_side",
      label: "D to C should now measure",
      measure: "length",
      formula:
        "SQRT((INDEX(set_out_corrections.x; 1) - INDEX(set_out_corrections.x; 2)) ^ 2 + (INDEX(set_out_corrections.y; 1) - INDEX(set_out_corrections.y; 2)) ^ 2)",
      why: "Measure it: it tells a slip of the tape from a slip of the frame.",
      sources: [GEOMETRY],
    },
    {
      name: "far_side_off",
      label: "Long sides differ by",
      measure: "length",
      formula: "ABS(far_side - platform_length)",
      why: "Nothing, when the second long side is as long as the first.",
      sources: [GEOMETRY],
    },
  ],
}

const isC = 'corner = "C"'

/**
 * Where the far corners are, from their distances to A and B, and how far to push them. A to B is taken to be true: it is the
 * datum line, and is measured first.
 */
export const squareCorrections: TableEntry = {
  kind: "table",
  name: "set_out_corrections",
  label: "Push the far corners",
  why: "A and B stay. Each far corner is found from its distances to A and to B, as where two arcs of the tape meet, and held against its place on the plan.",
  sources: [GEOMETRY],
  rows: { kind: "figures" },
  columns: [
    {
      name: "corner",
      label: "Corner",
      measure: "text",
      values: ["C", "D"],
      why: "C lies across from A, D across from B.",
      sources: [ARITHMETIC],
    },
    {
      name: "from_a",
      label: "From A",
      measure: "length",
      formula: `IF(${isC}; diagonal_measured_1; ${END_1})`,
      why: "As measured.",
      sources: [GEOMETRY],
    },
    {
      name: "from_b",
      label: "From B",
      measure: "length",
      formula: `IF(${isC}; ${END_2}; diagonal_measured_2)`,
      why: "As measured.",
      sources: [GEOMETRY],
    },
    {
      name: "x",
      label: "Is along the length at",
      measure: "length",
      formula: "(from_a ^ 2 - from_b ^ 2 + platform_length ^ 2) / (2 * platform_length)",
      why: "The cosine rule in the triangle of A, B and the corner.",
      sources: [GEOMETRY],
    },
    {
      name: "y",
      label: "Is across the width at",
      measure: "length",
      formula: "SQRT(MAX(0; from_a ^ 2 - x ^ 2))",
      why: "Pythagoras in the same triangle.",
      sources: [GEOMETRY],
    },
    {
      name: "push_length",
      label: "Push along the length",
      measure: "length",
      formula: `ABS(x - IF(${isC}; platform_length; 0))`,
      why: "How far; the next column says which way.",
      sources: [GEOMETRY],
    },
    {
      name: "way_length",
      label: "Which way",
      measure: "text",
      formula: `IF(push_length = 0; "stays"; IF(x > IF(${isC}; platform_length; 0); "the way from B to A"; "the way from A to B"))`,
      why: "Along the long sides.",
      sources: [GEOMETRY],
    },
    {
      name: "push_width",
      label: "Push across the width",
      measure: "length",
      formula: "ABS(y - platform_width)",
      why: "How far; the next column says which way.",
      sources: [GEOMETRY],
    },
    {
      name: "way_width",
      label: "Which way",
      measure: "text",
      formula:
        'IF(push_width = 0; "stays"; IF(y > platform_width; "in, towards A and B"; "out, away from A and B"))',
      why: "Along the short sides.",
      sources: [GEOMETRY],
    },
  ],
}
