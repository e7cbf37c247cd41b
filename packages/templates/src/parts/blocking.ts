import type { Section } from "@pegbook/engine"
import { GEOMETRY, USER } from "../sources.ts"
import { practice } from "../sources-frame.ts"

/**
 * Short pieces between the joists, of joist timber.
 *
 * Needs: joists, joist_count.
 */
export const blocking: Section = {
  id: "blocking",
  title: "Blocking",
  says: "Short pieces between the joists stop them from twisting and hold up whatever ends between them.",
  entries: [
    {
      kind: "input",
      name: "blocking_rows",
      label: "Lines of blocking",
      measure: "count",
      default: "2",
      least: "0",
      most: "20",
      why: "Lines along the platform, the rims not counted. Where sheets meet between joists, a line under each long seam gives those edges something to be screwed to.",
      sources: [USER, practice("blocking under sheet edges that fall between joists")],
    },
    {
      kind: "table",
      name: "blocking",
      label: "One line of blocking, bay by bay",
      rows: { kind: "formula", formula: "joist_count - 1" },
      why: "The last bay is seldom like the others, so its piece is cut to its own length.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "bay",
          label: "Bay",
          measure: "count",
          formula: "ROW()",
          why: "The room after the joist of the same number.",
          sources: [GEOMETRY],
        },
        {
          name: "length",
          label: "Cut length",
          measure: "length",
          formula: "MAX(INDEX(joists.bay; ROW()); 0)",
          why: "The clear room between two joists. Measure the real one before you cut: timber is never quite straight.",
          sources: [GEOMETRY],
        },
        {
          name: "rows_apart",
          label: "Rows apart, shared out",
          measure: "length",
          formula: "platform_width / (blocking_rows + 1)",
          why: "Where no edge of a sheet has to be met, the rows of blocking share the width evenly.",
          sources: [GEOMETRY],
        },
      ],
    },
    {
      kind: "formula",
      name: "blocking_count",
      label: "Pieces of blocking",
      measure: "count",
      formula: "blocking_rows * (joist_count - 1)",
      why: "One in each bay of each line.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "blocking_length",
      label: "Blocking, end to end",
      measure: "length",
      formula: "blocking_rows * SUM(blocking.length)",
      why: "How much timber they come to, before saw cuts and off-cuts.",
      sources: [GEOMETRY],
    },
    {
      kind: "input",
      name: "blocking_stock",
      label: "Lengths sold, blocking",
      measure: "length",
      list: true,
      default: "8 ft",
      least: "1 ft",
      most: "40 ft",
      why: "The lengths to buy for blocking. Off-cuts of joists and rims of the same size are used first.",
      sources: [USER],
    },
  ],
}
