import type { Entry, Remedy } from "@pegbook/engine"
import { PANEL_LIVE_LOADS, PANEL_METHOD, PANEL_RATINGS } from "../sources-strength.ts"
import { figureTable } from "../strength/figure-table.ts"
import { sheetSteps } from "./sheet-steps.ts"

/** Thinnest sheet of the ratings, in inches, joist spacing, live load in psf. */
const ROWS = [
  ["1/2", "12", "185"],
  ["1/2", "16", "100"],
  ["23/32", "12", "430"],
  ["23/32", "16", "240"],
  ["23/32", "24", "100"],
  ["7/8", "16", "430"],
  ["7/8", "24", "185"],
] as const

/**
 * Whether the sheets may span from joist to joist under the live load, by the panel makers' table and by the steps of
 * {@link sheetSteps}; the harder of the two decides.
 * Needs: sheet_thickness, joist_spacing, live_load, and what the steps need. Gives: sheet_live_loads, sheet_spans, the tables of the steps, sheet_check.
 */
export const sheetStrength: readonly Entry[] = [
  figureTable({
    name: "sheet_live_loads",
    label: "Live loads on floor sheets",
    why: "What the panel makers recommend for the span rating that is sold in each thickness. Dry, with 10 psf of dead load, and a sag of the span over 360.",
    sources: [PANEL_LIVE_LOADS, PANEL_RATINGS],
    columns: {
      thickness: { label: "Sheets from", measure: "length", why: "Nominal thickness of the span rating." },
      spacing: { label: "Joist spacing", measure: "length", why: "Strength axis across the joists." },
      load: { label: "Live load up to", measure: "pressure", why: "For this spacing." },
    },
    rows: ROWS.map(([thickness, spacing, load]) => ({
      thickness: `${thickness} in`,
      spacing: `${spacing} in`,
      load: `${load} psf`,
    })),
  }),
  {
    kind: "table",
    name: "sheet_spans",
    label: "Spacings that your sheets allow",
    why: "The rows of the table that are for sheets as thick as yours and loads as heavy as yours.",
    sources: [PANEL_LIVE_LOADS],
    rows: { kind: "formula", formula: "COUNT(sheet_live_loads.load)" },
    columns: [
      {
        name: "spacing",
        label: "Spacing allowed",
        measure: "length",
        formula:
          "IF(AND(sheet_thickness >= INDEX(sheet_live_loads.thickness; ROW()); live_load <= INDEX(sheet_live_loads.load; ROW())); INDEX(sheet_live_loads.spacing; ROW()); 0)",
        why: "0 where the sheet is too thin or the load too heavy for the row.",
        sources: [PANEL_LIVE_LOADS],
      },
    ],
  },
  ...sheetSteps,
  {
    kind: "check",
    name: "sheet_check",
    label: "Are the joists close enough for the sheets?",
    why: "A sheet that spans too far sags between the joists and cracks what lies on it. The joist spacing over what the makers' table allows, or bending, shear and sag worked out: the harder of the two.",
    sources: [PANEL_LIVE_LOADS, PANEL_RATINGS, PANEL_METHOD],
    cautions: [
      "The table was recalled, not read: hold it against the maker's paper and your local code. Look for the span rating stamped on the sheet, lay its strength axis across the joists, and use a sheet that is made for the wet.",
    ],
    measure: "share",
    demand: "MAX(joist_spacing / MAX(sheet_spans.spacing); INDEX(sheet_strength.known_worst; 1))",
    limit: "1",
    sense: "at_most",
    covered: "MAX(sheet_spans.spacing) > 0",
    advice: ["Set the joists closer together, or take thicker sheets. Worked out: {sheet_strength.says}."],
    remedies: [
      { input: "joist_spacing", toward: "less", step: "4 in" },
      { input: "sheet_thickness", toward: "more", step: "1/8 in" },
    ] satisfies readonly Remedy[],
  },
]
