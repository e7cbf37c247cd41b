import type { Section } from "@pegbook/engine"
import { FLOOR_SPANS, NBC_SPACING_RULE, NBC_SPANS } from "../sources-strength.ts"
import { figureTable } from "../strength/figure-table.ts"

/**
 * Depth and restraint, then the published spans at 300 mm and 400 mm where vibration decides; a dash where the span by
 * sag is the shorter and was printed instead.
 */
const ROWS = [
  ["89", "strapping", "-", "-"],
  ["89", "bridging", "-", "-"],
  ["89", "bridging and strapping", "-", "-"],
  ["140", "strapping", "2.92 m", "2.71 m"],
  ["140", "bridging", "-", "-"],
  ["140", "bridging and strapping", "-", "-"],
  ["184", "strapping", "3.54 m", "3.36 m"],
  ["184", "bridging", "3.81 m", "3.58 m"],
  ["184", "bridging and strapping", "3.99 m", "3.72 m"],
  ["235", "strapping", "4.17 m", "3.96 m"],
  ["235", "bridging", "4.44 m", "4.17 m"],
  ["235", "bridging and strapping", "4.6 m", "4.29 m"],
  ["286", "strapping", "4.75 m", "4.52 m"],
  ["286", "bridging", "5.01 m", "4.71 m"],
  ["286", "bridging and strapping", "5.17 m", "4.82 m"],
] as const

/** Longer than any joist: stands where vibration does not decide. */
const NEVER = "60 m"

/** Canada's floor table stops many spans because a floor would tremble under a step, before it is weak or sags. */
export const vibration: Section = {
  id: "vibration",
  title: "Vibration, limit states only",
  says: "Most spans of Canada's floor table are shorter than strength and sag alone would give.",
  entries: [
    figureTable({
      name: "vibration_spans",
      label: "Spans at which a floor trembles, S-P-F No.1/No.2 under 1.9 kPa",
      why: "Published spans that are shorter than sag explains. 60 m stands where sag decides.",
      sources: [NBC_SPANS],
      columns: {
        key: { label: "Found by", measure: "text", why: "Depth in millimetres and what ties the joists." },
        at_close: { label: "At the closer spacing", measure: "length", why: "Joists at 300 mm." },
        at_wide: { label: "At the wider spacing", measure: "length", why: "Joists at 400 mm." },
      },
      rows: ROWS.map(([depth, restraint, close, wide]) => ({
        key: `${depth} | ${restraint}`,
        at_close: close === "-" ? NEVER : close,
        at_wide: wide === "-" ? NEVER : wide,
      })),
    }),
    {
      kind: "figure",
      name: "vibration_not_judged",
      label: "Where vibration is not judged",
      measure: "length",
      value: NEVER,
      why: "By allowable stress no span table judges it: a length that no joist reaches.",
      sources: [FLOOR_SPANS],
    },
    {
      kind: "figure",
      name: "vibration_spacing_close",
      label: "Closer spacing of the published spans",
      measure: "length",
      value: "300 mm",
      why: "The first column of the table.",
      sources: [NBC_SPANS],
    },
    {
      kind: "figure",
      name: "vibration_spacing_wide",
      label: "Wider spacing of the published spans",
      measure: "length",
      value: "400 mm",
      why: "The second column of the table.",
      sources: [NBC_SPANS],
    },
    {
      kind: "figure",
      name: "vibration_spacing_most",
      label: "Canada's floor table ends at a spacing of",
      measure: "length",
      value: "24 in",
      why: "600 mm, or the 24 in that are sold for it.",
      sources: [NBC_SPACING_RULE],
    },
    {
      kind: "figure",
      name: "vibration_live_load_most",
      label: "Canada's floor table is for a live load of",
      measure: "pressure",
      value: "1.9 kPa",
      why: "Homes. A sports or assembly floor needs a design of its own.",
      sources: [NBC_SPANS],
    },
    {
      kind: "figure",
      name: "one_millimetre",
      label: "One millimetre",
      measure: "length",
      value: "1 mm",
      why: "Turns a metric depth into the number in a size's name.",
      sources: [NBC_SPANS],
    },
    {
      kind: "formula",
      name: "joist_vibration_row",
      label: "Row of the published spans",
      measure: "count",
      formula:
        'IFERROR(MATCH(ROUND(INDEX(size_classes.metric_width; MATCH(joist_size; size_classes.nominal; 0)) / one_millimetre; 0) & " | " & joist_restraint; vibration_spans.key; 0); 0)',
      why: "0 where the table has none.",
      sources: [NBC_SPANS],
    },
    {
      kind: "formula",
      name: "joist_vibration_covered",
      label: "Canada's floor table covers it",
      measure: "yes_no",
      formula:
        'AND(joist_vibration_row > 0; OR(grade = "No.1/No.2"; grade = "No.1"; grade = "No.2"); COUNTIF(joist_resistances.member; "S-P-F") = COUNT(joist_resistances.found); joist_spacing >= vibration_spacing_close * (1 - spacing_slack); joist_spacing <= vibration_spacing_most; live_load <= vibration_live_load_most * (1 + spacing_slack))',
      why: "The rule behind these spans was not found, so they are used only where they were published: S-P-F No.1/No.2, homes.",
      sources: [NBC_SPANS],
    },
    {
      kind: "figure",
      name: "spacing_slack",
      label: "Inches for millimetres: slack",
      measure: "share",
      value: "6 %",
      why: "12 in joists stand in the column of 300 mm, and 40 psf for 1.9 kPa.",
      sources: [NBC_SPANS],
    },
    {
      kind: "formula",
      name: "joist_span_vibration",
      label: "Span by vibration",
      measure: "length",
      formula:
        "IF(NOT(limit_states); vibration_not_judged; IF(joist_vibration_covered; INDEX(vibration_spans.at_wide; MAX(1; joist_vibration_row)) * (INDEX(vibration_spans.at_close; MAX(1; joist_vibration_row)) / INDEX(vibration_spans.at_wide; MAX(1; joist_vibration_row))) ^ (LN(vibration_spacing_wide / joist_spacing) / LN(vibration_spacing_wide / vibration_spacing_close)); NA()))",
      why: "The published spans at the two spacings; by the same power of the spacing between and beyond them.",
      sources: [NBC_SPANS, NBC_SPACING_RULE],
      cautions: [
        "From a spacing of 400 mm on, the span is carried on from the cells at 300 mm and 400 mm: the printed cell was not seen.",
      ],
    },
  ],
}
