import type { CheckEntry, Column, Entry, InputEntry, Section, TableEntry } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE, GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"
import { squareCorrections, squareError } from "./square-error.ts"

/** Lines of timber whose strings are stretched, and what stands under them. */
export interface SetOut {
  /** In the reader's words: "skid", "skids". */
  readonly noun: string
  readonly nouns: string
  /** The column that holds their centres: "skids.y"; and the way that it is measured. */
  readonly centres: string
  readonly measured: "across the width" | "along the length"
  readonly count: string
  readonly thickness: string
  /** With a row for each support, in the table `supports`: whether its stack has courses. */
  readonly supports?: { readonly noun: string; readonly courses: boolean }
}

interface Point {
  readonly point: string
  readonly marks: string
  /** 0 or 1: how many lengths and widths it lies from the datum corner; then how many times beyond the frame. */
  readonly at: readonly [length: 0 | 1, width: 0 | 1]
  readonly past: readonly [length: -1 | 0 | 1, width: -1 | 0 | 1]
}

const POINTS: readonly Point[] = [
  { point: "A", marks: "the datum corner", at: [0, 0], past: [0, 0] },
  { point: "B", marks: "the far end of the first long side", at: [1, 0], past: [0, 0] },
  { point: "C", marks: "the corner across from A", at: [1, 1], past: [0, 0] },
  { point: "D", marks: "the near end of the second long side", at: [0, 1], past: [0, 0] },
  { point: "AB, behind A", marks: "string of the first long side", at: [0, 0], past: [-1, 0] },
  { point: "AB, beyond B", marks: "string of the first long side", at: [1, 0], past: [1, 0] },
  { point: "DC, behind D", marks: "string of the second long side", at: [0, 1], past: [-1, 0] },
  { point: "DC, beyond C", marks: "string of the second long side", at: [1, 1], past: [1, 0] },
  { point: "AD, behind A", marks: "string of the first short side", at: [0, 0], past: [0, -1] },
  { point: "AD, beyond D", marks: "string of the first short side", at: [0, 1], past: [0, 1] },
  { point: "BC, behind B", marks: "string of the second short side", at: [1, 0], past: [0, -1] },
  { point: "BC, beyond C", marks: "string of the second short side", at: [1, 1], past: [0, 1] },
]

const figures = (pick: (point: Point) => string | number): readonly string[] =>
  POINTS.map((point) => `${pick(point)}`)

const points: TableEntry = {
  kind: "table",
  name: "set_out_points",
  label: "Pegs",
  why: "Everything is measured from one corner, A, so that one slip does not add to the next. String pegs stand beyond the corners, out of the way of the spade.",
  sources: [GEOMETRY, practice("string pegs stand clear of the digging")],
  cautions: ["Have buried cables and pipes marked before the first peg is driven: a peg can pierce them."],
  rows: { kind: "figures" },
  columns: [
    text(
      "point",
      "Peg",
      figures(({ point }) => point),
      "Corners are lettered round the frame from the datum, A.",
    ),
    text(
      "marks",
      "Marks",
      figures(({ marks }) => marks),
      "What the peg is for.",
    ),
    step(
      "lengths",
      "Lengths from A",
      figures(({ at }) => at[0]),
      "1: at the far end of the length.",
    ),
    step(
      "widths",
      "Widths from A",
      figures(({ at }) => at[1]),
      "1: at the far side of the width.",
    ),
    step(
      "past_length",
      "Beyond, along the length",
      figures(({ past }) => past[0]),
      "−1: behind the corner; 1: beyond it.",
    ),
    step(
      "past_width",
      "Beyond, across the width",
      figures(({ past }) => past[1]),
      "−1: behind the corner; 1: beyond it.",
    ),
    {
      name: "clear",
      label: "How far beyond the corner",
      measure: "length",
      values: figures(({ past }) => (past[0] === 0 && past[1] === 0 ? "0 ft" : "3 ft")),
      why: "Far enough that nobody digs the peg out. Yours to change where a tree or a wall stands in the way.",
      sources: [practice("about a long step beyond the corner")],
    },
    {
      name: "x",
      label: "Along the length, from A",
      measure: "length",
      formula: "lengths * platform_length + past_length * clear",
      why: "Below nothing: on the other side of A.",
      sources: [GEOMETRY],
    },
    {
      name: "y",
      label: "Across the width, from A",
      measure: "length",
      formula: "widths * platform_width + past_width * clear",
      why: "Below nothing: on the other side of A.",
      sources: [GEOMETRY],
    },
    {
      name: "from_datum",
      label: "Straight from A",
      measure: "length",
      formula: "SQRT(x ^ 2 + y ^ 2)",
      why: "One pull of the tape from A that checks the two offsets.",
      sources: [GEOMETRY],
    },
  ],
}

function text(name: string, label: string, values: readonly string[], why: string): Column {
  return { name, label, measure: "text", values, why, sources: [ARITHMETIC] }
}

function step(name: string, label: string, values: readonly string[], why: string): Column {
  return { name, label, measure: "ratio", values, why, sources: [GEOMETRY] }
}

function linesOf({ noun, nouns, centres, measured, count, thickness }: SetOut): TableEntry {
  const offset = (name: string, label: string, formula: string, why: string): Column => ({
    name,
    label,
    measure: "length",
    formula,
    why,
    sources: [GEOMETRY],
  })
  return {
    kind: "table",
    name: "set_out_lines",
    label: `Lines of the ${nouns}`,
    why: `Where each ${noun} lies, ${measured} from the datum line through A. Mark all from A; never one from the next.`,
    sources: [GEOMETRY],
    rows: { kind: "formula", formula: count },
    columns: [
      {
        name: "line",
        label: "Line",
        measure: "count",
        formula: "ROW()",
        why: "Counted from A.",
        sources: [ARITHMETIC],
      },
      offset(
        "near_face",
        "Near face",
        `centre - ${thickness} / 2`,
        "A string along the face shows more than one over the middle.",
      ),
      offset("centre", "Centre", `INDEX(${centres}; line)`, `The middle of the ${noun}.`),
      offset("far_face", "Far face", `centre + ${thickness} / 2`, `The other face of the ${noun}.`),
    ],
  }
}

const MEASURES: readonly { readonly from: string; readonly formula: string }[] = [
  { from: "A to B, first long side", formula: "platform_length" },
  { from: "D to C, second long side", formula: "platform_length" },
  { from: "A to D, first short side", formula: "platform_width" },
  { from: "B to C, second short side", formula: "platform_width" },
  { from: "A to C, first diagonal", formula: "platform_diagonal" },
  { from: "B to D, second diagonal", formula: "platform_diagonal" },
  { from: "from A along the width, 3 parts", formula: "INDEX(square_triangle.short; 1)" },
  { from: "from A along the length, 4 parts", formula: "INDEX(square_triangle.long; 1)" },
  { from: "between those two marks, 5 parts", formula: "INDEX(square_triangle.across; 1)" },
]

const measures: TableEntry = {
  kind: "table",
  name: "set_out_measures",
  label: "Distances to check",
  why: "Equal diagonals alone do not prove it: a frame with one long side too short has them as well. Measure both pairs of sides too.",
  sources: [GEOMETRY],
  rows: { kind: "figures" },
  columns: [
    text(
      "from",
      "From and to",
      MEASURES.map(({ from }) => from),
      "Hook the tape on the nail in the peg, not on the peg.",
    ),
    {
      name: "distance",
      label: "Distance",
      measure: "length",
      formula: MEASURES.slice(0, -1).reduceRight(
        (rest, { from, formula }) => `IF(from = "${from}"; ${formula}; ${rest})`,
        MEASURES.at(-1)?.formula ?? "",
      ),
      why: "Pull the tape tight and level, not along the slope of the ground.",
      sources: [GEOMETRY],
    },
  ],
}

function heightsOf({ noun, courses }: { readonly noun: string; readonly courses: boolean }): TableEntry {
  const of = (name: string, label: string, formula: string, why: string): Column => ({
    name,
    label,
    measure: "length",
    formula,
    why,
    sources: [GEOMETRY],
  })
  const row = (column: string): string => `INDEX(supports.${column}; ROW())`
  return {
    kind: "table",
    name: "set_out_heights",
    label: `Each ${noun}: where, how deep, how high`,
    why: "A level string at the underside of the lowest timber is the datum of heights: everything is measured down from it.",
    sources: [GEOMETRY],
    rows: { kind: "formula", formula: "support_count" },
    columns: [
      {
        name: "line",
        label: "Line",
        measure: "count",
        formula: row("line"),
        why: "Counted from A.",
        sources: [ARITHMETIC],
      },
      of("x", "Along the length, from A", row("x"), "To the middle."),
      of("y", "Across the width, from A", row("y"), "To the middle."),
      of("dig", "Dig from the ground", row("dig"), "Measured again at the peg before you dig."),
      of(
        "string_to_hole",
        "String down to the bottom of the hole",
        `underside_level - ${row("stone_bottom")}`,
        "Turf and loose soil are out.",
      ),
      of(
        "string_to_stone",
        "String down to the top of the stone",
        `underside_level - ${row("stone_top")}`,
        "Tamped, and level both ways.",
      ),
      ...(courses
        ? [
            {
              name: "courses",
              label: "Blocks",
              measure: "count" as const,
              formula: row("courses"),
              why: "One on another; the top comes to the string.",
              sources: [GEOMETRY],
            },
          ]
        : []),
    ],
  }
}

function measured(name: string, label: string, why: string, blank?: string): InputEntry {
  return {
    kind: "input",
    name,
    label,
    measure: "length",
    default: null,
    ...(blank === undefined ? {} : { blank }),
    least: "1 ft",
    most: "500 ft",
    why,
    sources: [USER],
  }
}

const measuredOnSite: readonly InputEntry[] = [
  measured("diagonal_measured_1", "Diagonal A to C, as measured", "Leave it blank until it is measured."),
  measured("diagonal_measured_2", "Diagonal B to D, as measured", "Leave it blank until it is measured."),
  measured(
    "end_measured_1",
    "Short side A to D, as measured",
    "The end of the frame at the datum corner.",
    "as planned",
  ),
  measured(
    "end_measured_2",
    "Short side B to C, as measured",
    "The other end. The two ends have to be alike.",
    "as planned",
  ),
]

const tolerances: TableEntry = {
  kind: "table",
  name: "set_out_tolerances",
  label: "How near is near enough",
  why: "Later work hides less than this, and magnifies more.",
  sources: [COMMON_PRACTICE],
  rows: { kind: "figures" },
  columns: [
    text("what", "What", ["the two diagonals", "a corner"], "What is held against the plan."),
    {
      name: "allowed",
      label: "May differ by",
      measure: "length",
      values: ["1/4 in", "1/4 in"],
      why: "Yours to make stricter.",
      sources: [practice("a quarter of an inch over a small frame")],
    },
  ],
}

const checks: readonly CheckEntry[] = [
  {
    kind: "check",
    name: "square_check",
    label: "Is the frame square?",
    why: "Boards and sheets show it at once when it is not, and by then everything is screwed down.",
    sources: [GEOMETRY, COMMON_PRACTICE],
    measure: "length",
    demand: "ABS(diagonal_measured_1 - diagonal_measured_2)",
    limit: "INDEX(set_out_tolerances.allowed; 1)",
    sense: "at_most",
    advice: [
      "Leave A and B where they are and push C and D along the long way, as the table of corrections says; then measure both diagonals again.",
    ],
  },
  {
    kind: "check",
    name: "corners_check",
    label: "Are the far corners where they belong?",
    why: "Diagonals may be equal in a frame with unlike ends or with one side short. This looks at the corners themselves.",
    sources: [GEOMETRY, COMMON_PRACTICE],
    measure: "length",
    demand: "MAX(MAX(set_out_corrections.push_length); MAX(set_out_corrections.push_width))",
    limit: "INDEX(set_out_tolerances.allowed; 2)",
    sense: "at_most",
    advice: [
      "Push each far corner as the table of corrections says; then measure sides and diagonals again.",
    ],
  },
]

/**
 * The set-out sheet: pegs, lines, distances to check and heights, all from one datum corner; then what was measured on site and
 * how far each far corner has to be pushed.
 *
 * Needs: the platform's size, square_triangle, the lines' centres, and for supports the table `supports`, support_count
 * and underside_level.
 */
export function setOutOf(given: SetOut): Section {
  const supports: readonly Entry[] = given.supports === undefined ? [] : [heightsOf(given.supports)]
  return {
    id: "set-out",
    title: "Setting out",
    says: "Where every peg and string goes, from one corner, and what to do when a measurement does not agree.",
    entries: [
      points,
      linesOf(given),
      ...supports,
      measures,
      ...measuredOnSite,
      tolerances,
      squareError,
      squareCorrections,
      ...checks,
    ],
  }
}
