import type { Column, Entry, MeasureId, Source, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { ARITHMETIC, STATICS } from "../sources.ts"
import {
  DEFLECTION,
  LOAD_DURATION,
  PANEL_CAPACITIES,
  PANEL_METHOD,
  PANEL_RATINGS,
  PANEL_WET,
} from "../sources-strength.ts"
import { figureTable } from "../strength/figure-table.ts"
import { PANEL_KINDS, panelCapacities, panelSpanCases } from "../strength/panels.ts"

const figure = (name: string): string => `INDEX(sheet_factors.${name}; 1)`
const byCase = (name: string): string => `INDEX(panel_span_cases.${name}; spans)`
const capacity = (name: string): string =>
  `MIN(${PANEL_KINDS.map((kind) => `INDEX(panel_capacities.${name}; MATCH("${kind} | " & rating; panel_capacities.key; 0))`).join("; ")})`

const factors: TableEntry = {
  kind: "table",
  name: "sheet_factors",
  label: "Figures of sheets on joists",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [PANEL_METHOD, PANEL_WET],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "strip",
      "Strip that is worked out",
      "length",
      "1 ft",
      "Published values are for a strip this wide.",
      PANEL_CAPACITIES,
    ),
    figureColumn(
      "inch",
      "The inch that stiffness is written over",
      "length",
      "1 in",
      "EI is this times the value in the table.",
      PANEL_CAPACITIES,
    ),
    figureColumn(
      "sag_extra",
      "Sag counts from the face plus",
      "length",
      "1/4 in",
      "A sheet bends a little over the edge of a joist too.",
      PANEL_METHOD,
    ),
    figureColumn(
      "wet_strength",
      "Damp sheets: strength times",
      "ratio",
      "0.75",
      "Sheets that stay damp lose strength.",
      PANEL_WET,
    ),
    figureColumn(
      "wet_stiffness",
      "Damp sheets: stiffness times",
      "ratio",
      "0.85",
      "And sag more.",
      PANEL_WET,
    ),
  ],
}

const ratings: TableEntry = figureTable({
  name: "sheet_ratings",
  label: "Weakest span rating sold in a thickness",
  why: "Your sheet has its rating stamped on it; until you have read it, the weakest that is sold this thick counts.",
  sources: [PANEL_RATINGS],
  columns: {
    thickness: { label: "Sheets from", measure: "length", why: "Nominal thickness." },
    rating: { label: "Span rating", measure: "text", why: "As stamped. Change it to your sheet's." },
  },
  rows: [
    { thickness: "7/16 in", rating: "24/16" },
    { thickness: "5/8 in", rating: "32/16" },
    { thickness: "23/32 in", rating: "48/24" },
    { thickness: "1 3/32 in", rating: "48 oc" },
  ],
})

const step = (
  name: string,
  label: string,
  measure: MeasureId,
  formula: string,
  why: string,
  ...sources: readonly Source[]
): Column => column(name, label, measure, formula, why, ...(sources.length > 0 ? sources : [PANEL_METHOD]))

const STEPS: readonly Column[] = [
  step(
    "covered",
    "Inside the tables",
    "yes_no",
    "sheet_thickness >= MIN(sheet_ratings.thickness)",
    "No: thinner than any sheet that is rated here. Then nothing is guessed.",
    PANEL_RATINGS,
  ),
  step(
    "rating",
    "Span rating",
    "text",
    "IF(covered; LOOKUP(sheet_thickness; sheet_ratings.thickness; sheet_ratings.rating); NA())",
    "By its thickness.",
    PANEL_RATINGS,
  ),
  step(
    "spans",
    "Spans of the shortest piece",
    "count",
    "MAX(1; MIN(3; ROUNDDOWN(MIN(sheet_pieces.run) / joist_spacing + rounding_tolerance; 0)))",
    "A piece on two joists bends more than one that runs on. More than three count as three.",
  ),
  step(
    "bending_published",
    "Bending strength, published",
    "moment",
    capacity("bending"),
    "FbS of a strip, of strand board or plywood, whichever is less.",
    PANEL_CAPACITIES,
  ),
  step(
    "shear_published",
    "Shear strength, published",
    "force",
    capacity("shear"),
    "Fs(Ib/Q) of a strip, whichever is less.",
    PANEL_CAPACITIES,
  ),
  step(
    "stiffness_published",
    "Stiffness, published",
    "moment",
    capacity("stiffness"),
    "EI of a strip over one inch, whichever is less.",
    PANEL_CAPACITIES,
  ),
  step(
    "duration_factor",
    "Load duration factor",
    "ratio",
    "INDEX(load_durations.factor; MATCH(load_duration; load_durations.duration; 0))",
    "On strength, not on stiffness. By allowable stress, whichever method the timber goes by.",
    LOAD_DURATION,
  ),
  step(
    "wet_strength_factor",
    "Damp, on strength",
    "ratio",
    `IF(wet_service; ${figure("wet_strength")}; 1)`,
    "1 where it stays dry.",
    PANEL_WET,
  ),
  step(
    "wet_stiffness_factor",
    "Damp, on stiffness",
    "ratio",
    `IF(wet_service; ${figure("wet_stiffness")}; 1)`,
    "1 where it stays dry.",
    PANEL_WET,
  ),
  step(
    "bending_allowed",
    "Bending it may bear",
    "moment",
    "bending_published * duration_factor * wet_strength_factor",
    "The published value, times each factor.",
  ),
  step(
    "shear_allowed",
    "Shear it may bear",
    "force",
    "shear_published * duration_factor * wet_strength_factor",
    "The published value, times each factor.",
  ),
  step(
    "stiffness_used",
    "Stiffness in use",
    "moment",
    "stiffness_published * wet_stiffness_factor",
    "The published value, times its factor.",
  ),
  step("clear_span", "Clear span", "length", "joist_spacing - joist_thickness", "From face to face."),
  step(
    "load",
    "Load on a strip",
    "line_load",
    `(dead_load + live_load) * ${figure("strip")}`,
    "Platform, people and things.",
    STATICS,
  ),
  step(
    "moment",
    "Moment",
    "moment",
    `load * joist_spacing ^ 2 / ${byCase("bending")}`,
    "From centre to centre of the joists.",
  ),
  step("shear", "Shear", "force", `${byCase("shear")} * load * clear_span`, "From face to face."),
  step(
    "sag",
    "Sag under people",
    "length",
    `live_load * ${figure("strip")} * (clear_span + ${figure("sag_extra")}) ^ 4 / (${byCase("sag")} * stiffness_used * ${figure("inch")})`,
    "The live load alone.",
  ),
  step(
    "bending_ratio",
    "Bending, of what it may bear",
    "share",
    "IF(covered; moment / bending_allowed; NA())",
    "Over 100 % it breaks.",
  ),
  step(
    "shear_ratio",
    "Shear, of what it may bear",
    "share",
    "IF(covered; shear / shear_allowed; NA())",
    "Over 100 % its layers roll over each other.",
  ),
  step(
    "sag_ratio",
    "Sag under people, of what is accepted",
    "share",
    "IF(covered; sag * INDEX(design_thresholds.sag_live; 1) / joist_spacing; NA())",
    "Over 100 % the floor feels soft.",
    DEFLECTION,
  ),
  step(
    "known_worst",
    "Worst, where it is known",
    "share",
    "IF(covered; MAX(bending_ratio; shear_ratio; sag_ratio); 0)",
    "The one that gives first.",
    ARITHMETIC,
  ),
  step(
    "governs",
    "What gives first",
    "text",
    'IF(NOT(covered); "nothing"; IF(bending_ratio = known_worst; "bending"; IF(shear_ratio = known_worst; "shear"; "sag")))',
    "Change this first.",
    ARITHMETIC,
  ),
  step(
    "says",
    "In words",
    "text",
    'IF(covered; "sheets: " & governs & " takes " & ROUND(known_worst / 1%; 0) & " % of what is accepted"; "sheets: thinner than any that is rated here")',
    "What gives first, and how far it is from its limit.",
    ARITHMETIC,
  ),
]

/**
 * Sheets on joists, worked out step by step under an even load: one row of `sheet_strength`, beside the members.
 * Needs: sheet_thickness, sheet_pieces, joist_spacing, joist_thickness, dead_load, live_load, wet_service, load_duration, load_durations,
 * design_thresholds, rounding_tolerance. Gives: sheet_factors, sheet_ratings, panel_capacities, panel_span_cases, sheet_strength.
 */
export const sheetSteps: readonly Entry[] = [
  factors,
  ratings,
  panelSpanCases,
  panelCapacities,
  {
    kind: "table",
    name: "sheet_strength",
    label: "Strength of the sheets, step by step",
    why: "One strip of the shortest piece from joist to joist, its stiff side across the joists. One row, a column a step.",
    sources: [PANEL_METHOD, PANEL_CAPACITIES],
    cautions: [
      "Even loads only: a wheel or the leg of a table presses in one place, and the stamped rating is for floors at home. Plywood's values are from memory: hold them against the maker's report, and your local code decides.",
    ],
    rows: { kind: "formula", formula: "1" },
    columns: STEPS,
  },
]
