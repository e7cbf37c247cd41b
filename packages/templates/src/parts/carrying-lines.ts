import type { Column, Entry } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY } from "../sources.ts"

/** Lines of timber side by side that carry the platform, spread evenly over its width. */
export interface CarryingLines {
  /** In the reader's words, one of them: "beam"; the entries' names begin with it. Several: "beams", also the table. */
  readonly noun: string
  readonly nouns: string
  /** The label of their number, and of the table. */
  readonly counted: string
  readonly each: string
  /** Formula: from the first line's centre to the last one's. */
  readonly spread: string
  /** Formula: the first line's centre, from the frame's first long edge. */
  readonly first: string
  /** Where the spacing is marked: "the end strings". */
  readonly markedOn: string
}

/**
 * How many lines, how far apart, and where each lies: `<noun>_count`, `<noun>_spacing` and the table `<nouns>`.
 * Two lines at least: on one the platform would tip.
 *
 * Needs: <noun>_spacing_max, what the formulas name, platform_width, rounding_tolerance.
 */
export function carryingLines(lines: CarryingLines): readonly Entry[] {
  const { noun, nouns, counted, each, spread, markedOn } = lines
  return [
    {
      kind: "formula",
      name: `${noun}_count`,
      label: counted,
      why: "The spaces that the width needs, counted up, and one more: a fence has one post more than it has gaps. Two at least, or all would tip.",
      sources: [GEOMETRY],
      measure: "count",
      formula: `MAX(1; ROUNDUP((${spread}) / ${noun}_spacing_max - rounding_tolerance; 0)) + 1`,
    },
    {
      kind: "formula",
      name: `${noun}_spacing`,
      label: `Spacing of the ${nouns}, centre to centre`,
      why: `The spaces shared out evenly. Mark this on ${markedOn}.`,
      sources: [GEOMETRY],
      measure: "length",
      formula: `(${spread}) / (${noun}_count - 1)`,
    },
    {
      kind: "table",
      name: nouns,
      label: each,
      why: "Where each line lies, and how much of the width rests on it.",
      sources: [GEOMETRY],
      rows: { kind: "formula", formula: `${noun}_count` },
      columns: columnsOf(lines),
    },
  ]
}

/** One row a line: line, y, carries_from, carries_to, carries. */
function columnsOf({ noun, first }: CarryingLines): readonly Column[] {
  const [count, spacing] = [`${noun}_count`, `${noun}_spacing`]
  return [
    {
      name: "line",
      label: "Line",
      why: "Counted across the width from the first side.",
      sources: [ARITHMETIC],
      measure: "count",
      formula: "ROW()",
    },
    {
      name: "y",
      label: "Centre, across the width",
      why: `From the frame's first long edge to the middle of the ${noun}.`,
      sources: [GEOMETRY],
      measure: "length",
      formula: `${first} + (line - 1) * ${spacing}`,
    },
    {
      name: "carries_from",
      label: "Carries from",
      why: "Half way to the line before it, or the edge of the frame.",
      sources: [GEOMETRY],
      measure: "length",
      formula: `IF(line = 1; 0; y - ${spacing} / 2)`,
    },
    {
      name: "carries_to",
      label: "Carries to",
      why: "Half way to the next line, or the edge of the frame.",
      sources: [GEOMETRY],
      measure: "length",
      formula: `IF(line = ${count}; platform_width; y + ${spacing} / 2)`,
    },
    {
      name: "carries",
      label: "Width carried",
      why: "How much of the platform's width rests on this line.",
      sources: [GEOMETRY],
      measure: "length",
      formula: "carries_to - carries_from",
    },
  ]
}
