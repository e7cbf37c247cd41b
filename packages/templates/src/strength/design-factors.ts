import type { Column, FigureEntry, TableEntry } from "@pegbook/engine"
import { ARITHMETIC, COMMON_PRACTICE } from "../sources.ts"
import { BEARING_WET, POINT_LOAD } from "../sources-actions.ts"
import {
  BEAM_STABILITY,
  CSA_FACTORS,
  DEFLECTION,
  LOAD_DURATION,
  SIZE_FACTORS,
  STABILITY_BY_SHAPE,
  STATICS_HANDBOOK,
  WET_SERVICE,
} from "../sources-strength.ts"
import { adjustments } from "./adjustments.ts"
import { figureTable } from "./figure-table.ts"
import { limitStateFigures } from "./limit-states.ts"

/** The plain numbers of both methods, as the small templates have them one by one. */
const FIGURES: readonly FigureEntry[] = [...adjustments, ...limitStateFigures].flatMap((entry) =>
  entry.kind === "figure" && entry.measure === "ratio" ? [entry] : [],
)

/** The published factors of both methods of design, one a row. */
export const designFactors: TableEntry = {
  ...figureTable({
    name: "design_factors",
    label: "Factors of design",
    why: "What is taken off or added to a published strength, and to a load. Each row says why, and whose it is.",
    sources: [...new Set(FIGURES.flatMap(({ sources }) => sources))],
    columns: {
      factor: { label: "Factor", measure: "text", why: "As the standards call it." },
      value: { label: "Value", measure: "ratio", why: "1 changes nothing." },
      reason: { label: "Why", measure: "text", why: "What it stands for." },
      source: {
        label: "Who says so",
        measure: "text",
        why: "The text that the figure is from, and its place.",
      },
      origin: { label: "Seen or recalled", measure: "text", why: "Confirm what was recalled." },
    },
    rows: FIGURES.map(({ label, value, why, sources: [source] }) => ({
      factor: label,
      value,
      reason: why,
      source: `${source?.title ?? ""}, ${source?.place ?? ""}`,
      origin: source?.origin === "memory" ? "from memory" : "read",
    })),
  }),
}

/** The formula of a factor by its name among the small templates' figures. Throws when there is no such factor. */
export function factor(name: string): string {
  const figure = FIGURES.find((known) => known.name === name)
  if (figure === undefined) throw new RangeError(`No factor of design is called ${name}`)
  return `INDEX(design_factors.value; MATCH("${figure.label}"; design_factors.factor; 0))`
}

/** The published rule for a beam whose upper edge is free between what holds it. */
// biome-ignore format: one figure a line
const LEANING: readonly Column[] = ([
  ["lean_from", "Leaning over: long from a free length over depth of", "7", "From here another rule for the length counts."],
  ["lean_short", "Leaning over: short, free length times", "2.06", "An even load on one span."],
  ["lean_long", "Leaning over: long, free length times", "1.63", "An even load; 1.37 for a load in the middle alone."],
  ["lean_depths", "Leaning over: long, and depths", "3", "Added when long."],
  ["lean_share", "Leaning over: stiffness over slenderness squared, times", "1.2", "FbE = 1.20 E′min ÷ RB²."],
  ["lean_spread", "Leaning over: spread of the rule", "1.9", "From the published rule for CL."],
  ["lean_meeting", "Leaning over: where breaking and leaning meet", "0.95", "From the published rule for CL."],
  ["lean_most", "Leaning over: slenderness at most", "50", "Beyond this the rule does not hold."],
] as const).map(([name, label, value, why]) => ({
  name,
  label,
  measure: "ratio",
  values: [value],
  why,
  sources: [BEAM_STABILITY],
}))

/** What the factors hang on, in one row: each column is a figure of its own. */
export const designThresholds: TableEntry = {
  kind: "table",
  name: "design_thresholds",
  label: "Thresholds and limits of design",
  why: "From where a factor counts, and how far a floor may sag.",
  sources: [WET_SERVICE, SIZE_FACTORS, CSA_FACTORS, DEFLECTION],
  rows: { kind: "figures" },
  columns: [
    {
      name: "wet_bending",
      label: "Wet service counts in bending from",
      measure: "stress",
      values: ["1150 psi"],
      why: "Below this Fb × CF, wet wood bends no worse than dry wood.",
      sources: [WET_SERVICE],
    },
    {
      name: "sharing_spacing",
      label: "Members share up to a spacing of",
      measure: "length",
      values: ["24 in"],
      why: "Joists further apart carry alone.",
      sources: [SIZE_FACTORS, CSA_FACTORS],
    },
    {
      name: "thin",
      label: "Wet and incised: thin up to",
      measure: "length",
      values: ["89 mm"],
      why: "In limit states, damp and slits count up to this least dimension.",
      sources: [CSA_FACTORS],
    },
    {
      name: "sag_live",
      label: "Sag under people: span over",
      measure: "ratio",
      values: ["360"],
      why: "A larger number is stiffer.",
      sources: [DEFLECTION],
    },
    {
      name: "sag_total",
      label: "Sag in all: span over",
      measure: "ratio",
      values: ["240"],
      why: "With the platform's own weight. The usual companion of the limit under people.",
      sources: [{ ...COMMON_PRACTICE, origin: "memory" }],
    },
    {
      name: "point_load",
      label: "One load anywhere",
      measure: "force",
      values: ["300 lb"],
      why: "A heavy person, a wheel or the leg of a table. The code asks it of a stair's tread; Canada's asks 1.3 kN of a floor, which is a little less. Put in more where you roll a barrow of stone, a mower or a heavy table.",
      sources: [POINT_LOAD],
    },
    ...LEANING,
    {
      name: "lean_bare",
      label: "Stands by itself up to a depth over thickness of",
      measure: "ratio",
      values: ["2.5"],
      why: "The rule is 2 to 1 in the sizes of the name: two 2x8 side by side, which are 2.4 to 1 as planed.",
      sources: [STABILITY_BY_SHAPE],
    },
    {
      name: "lean_ratio",
      label: "Held by sheets or boards up to a depth over thickness of",
      measure: "ratio",
      values: ["6.5"],
      why: "The rule is 5 to 1 in the sizes of the name: a 2x10, which is 6.2 to 1 as planed. Deeper ones need bridging as well.",
      sources: [STABILITY_BY_SHAPE],
    },
    {
      name: "soil_wet",
      label: "Wet sand, silt and gravel bear",
      measure: "share",
      values: ["50 %"],
      why: "Of what they bear dry.",
      sources: [BEARING_WET],
    },
    {
      name: "point_sag",
      label: "Sag of one load in the middle, share of P L³ ÷ (E I)",
      measure: "ratio",
      values: ["1/48"],
      why: "Of one span on two supports.",
      sources: [STATICS_HANDBOOK],
    },
    {
      name: "stiffness",
      label: "Stiffness that sags are first worked for",
      measure: "stress",
      values: ["1 GPa"],
      why: "Only a step of the calculation: the sag of your timber is this sag, times this stiffness over its own.",
      sources: [ARITHMETIC],
    },
  ],
}

/** How long the load lasts in all, by the Canadian rule. */
export const csaDurations: TableEntry = figureTable({
  name: "csa_durations",
  label: "Load duration factors, KD",
  why: "The Canadian rule has three classes; each duration of the other table is in one of them.",
  sources: [CSA_FACTORS, LOAD_DURATION],
  columns: {
    duration: { label: "How long in all", measure: "text", why: "Over the life of the platform, added up." },
    factor: { label: "KD", measure: "ratio", why: "On the specified strengths." },
  },
  rows: [
    { duration: "permanent", factor: "0.65" },
    { duration: "ten years", factor: "1" },
    { duration: "two months", factor: "1" },
    { duration: "seven days", factor: "1.15" },
    { duration: "ten minutes", factor: "1.15" },
    { duration: "impact", factor: "1.15" },
  ],
})
