import type { Section } from "@pegbook/engine"
import { USER } from "../sources.ts"
import { FLOOR_SPANS, STATICS_HANDBOOK } from "../sources-strength.ts"

/** What a span asks of the joist. */
export const checkedSpan: Section = {
  id: "checked-span",
  title: "The span that is checked",
  says: "Yours, or the longest one allowed: what it asks of the joist.",
  entries: [
    {
      kind: "formula",
      name: "joist_span_checked",
      label: "Span checked",
      measure: "length",
      formula: "IFERROR(joist_span; joist_span_max)",
      why: "From support to support.",
      sources: [USER],
    },
    {
      kind: "formula",
      name: "joist_moment",
      label: "Moment in the joist",
      measure: "moment",
      formula: "span_moment_share * joist_line_load * joist_span_checked ^ 2",
      why: "Greatest in the middle of the span.",
      sources: [STATICS_HANDBOOK],
    },
    {
      kind: "formula",
      name: "joist_reaction",
      label: "Load on one seat",
      measure: "force",
      formula: "joist_line_load * joist_span_checked / 2",
      why: "Half of what lies on the joist.",
      sources: [STATICS_HANDBOOK],
    },
    {
      kind: "formula",
      name: "joist_deflection",
      label: "Sag under live load",
      measure: "small_length",
      formula:
        "span_deflection_share * joist_line_load_live * joist_span_checked ^ 4 / (joist_e_adjusted * joist_section_modulus * joist_depth / 2)",
      why: "In the middle of the span.",
      sources: [STATICS_HANDBOOK],
    },
    {
      kind: "formula",
      name: "joist_deflection_allowed",
      label: "Sag allowed",
      measure: "small_length",
      formula: "joist_span_checked / deflection_limit",
      why: "The span over the limit you chose.",
      sources: [FLOOR_SPANS],
    },
    {
      kind: "check",
      name: "joist_span_check",
      label: "Span against the longest allowed",
      why: "With the end of deck tables and, by limit states, vibration.",
      sources: [FLOOR_SPANS],
      measure: "length",
      demand: "joist_span_checked",
      limit: "joist_span_max",
      sense: "at_most",
      near: "near_limit_share",
      covered: "joist_covered",
      advice: [
        "{joist_span_governed_by} allows {joist_span_max}: shorten the span, or choose a deeper size or a closer spacing.",
      ],
    },
  ],
}
