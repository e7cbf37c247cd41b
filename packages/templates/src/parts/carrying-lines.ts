import type { Column } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY } from "../sources.ts"

/** Names of lines of timber side by side that carry the platform: beams. */
export interface CarryingLines {
  /** In the reader's words, one of them: "beam". */
  readonly noun: string
  readonly count: string
  readonly spacing: string
  /** Formula of the first line's centre, from the frame's first long edge. */
  readonly first: string
}

/** The columns of a table of such lines, one row a line: line, y, carries_from, carries_to, carries. */
export function carryingColumns({ noun, count, spacing, first }: CarryingLines): readonly Column[] {
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
