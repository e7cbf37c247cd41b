import type { Entry, FigureEntry, Source } from "@pegbook/engine"
import {
  BEARING_LENGTH,
  FLOOR_SPANS,
  INCISING,
  LOAD_DURATION,
  SHEAR_STRESS,
  SIZE_FACTORS,
  STABILITY_BY_SHAPE,
  STATICS_HANDBOOK,
  TEMPERATURE,
  WET_SERVICE,
} from "../sources-strength.ts"
import { figureTable } from "./figure-table.ts"

const figure = (
  name: string,
  value: string,
  label: string,
  why: string,
  source: Source,
  measure: FigureEntry["measure"] = "ratio",
): FigureEntry => ({ kind: "figure", name, label, measure, value, why, sources: [source] })

const loadDurations = figureTable({
  name: "load_durations",
  label: "Load duration factors, CD",
  why: "Wood carries a short load better than a lasting one. On bending, tension, shear and compression; not on stiffness or bearing.",
  sources: [LOAD_DURATION],
  columns: {
    duration: { label: "How long in all", measure: "text", why: "Over the life of the platform, added up." },
    factor: { label: "CD", measure: "ratio", why: "On the published strengths." },
    load: { label: "Such as", measure: "text", why: "The load that usually lasts so long." },
  },
  rows: [
    { duration: "permanent", factor: "0.9", load: "the weight of the floor itself" },
    { duration: "ten years", factor: "1", load: "people" },
    { duration: "two months", factor: "1.15", load: "snow" },
    { duration: "seven days", factor: "1.25", load: "building work" },
    { duration: "ten minutes", factor: "1.6", load: "wind, earthquake" },
    { duration: "impact", factor: "2", load: "a blow" },
  ],
})

const wetFactors = figureTable({
  name: "wet_factors",
  label: "Wet service factors, CM",
  why: "Timber that stays damp, as out of doors, is weaker and springier.",
  sources: [WET_SERVICE],
  columns: {
    thickness: { label: "Thickness", measure: "text", why: "Timbers were never dry, so they lose less." },
    fb: {
      label: "Bending",
      measure: "ratio",
      why: "On Fb; for thin timber only where Fb × CF is over the threshold.",
    },
    ft: { label: "Tension", measure: "ratio", why: "What is left of Ft." },
    fv: { label: "Shear", measure: "ratio", why: "What is left of Fv." },
    fc_perp: { label: "Bearing", measure: "ratio", why: "On Fc across the grain." },
    fc: { label: "Compression", measure: "ratio", why: "On Fc along the grain." },
    e: { label: "Stiffness", measure: "ratio", why: "On E and Emin." },
  },
  rows: [
    ...["2 or 3 in", "4 in"].map((thickness) => ({
      thickness,
      fb: "0.85",
      ft: "1",
      fv: "0.97",
      fc_perp: "0.67",
      fc: "0.8",
      e: "0.9",
    })),
    { thickness: "5 in and more", fb: "1", ft: "1", fv: "1", fc_perp: "0.67", fc: "0.91", e: "1" },
  ],
})

const temperatureFactors = figureTable({
  name: "temperature_factors",
  label: "Temperature factors, Ct",
  why: "Only timber that stays hot for long loses strength; a deck in the sun cools at night and takes 1.",
  sources: [TEMPERATURE],
  columns: {
    range: { label: "Temperature of the wood", measure: "text", why: "Kept up for long." },
    stiffness: { label: "Tension and stiffness", measure: "ratio", why: "On Ft, E and Emin." },
    dry: { label: "Other strengths, dry", measure: "ratio", why: "On Fb, Fv and Fc." },
    wet: { label: "Other strengths, wet", measure: "ratio", why: "On Fb, Fv and Fc." },
  },
  rows: [
    { range: "up to 100 °F", stiffness: "1", dry: "1", wet: "1" },
    { range: "over 100 °F, to 125 °F", stiffness: "0.9", dry: "0.8", wet: "0.7" },
    { range: "over 125 °F, to 150 °F", stiffness: "0.9", dry: "0.7", wet: "0.5" },
  ],
})

/** Factors by which published strengths are adjusted: what NDS calls CD, CM, Ct, CL, Ci, Cr and Cb. */
export const adjustments: readonly Entry[] = [
  figure(
    "load_duration_factor",
    "1",
    "Load duration factor, CD",
    "People stand for about ten years in all of a platform's life. Take another row of the table where snow or wind decides.",
    LOAD_DURATION,
  ),
  loadDurations,
  figure(
    "wet_bending_threshold",
    "1150 psi",
    "Wet service counts in bending from",
    "Below this Fb × CF, wet wood bends no worse than dry wood.",
    WET_SERVICE,
    "stress",
  ),
  wetFactors,
  figure(
    "incising_strength_factor",
    "0.8",
    "Incising factor on strength, Ci",
    "The slits cut for the preservative take this much off bending, tension, shear and compression.",
    INCISING,
  ),
  figure(
    "incising_stiffness_factor",
    "0.95",
    "Incising factor on stiffness, Ci",
    "The slits cost little stiffness. Bearing loses nothing.",
    INCISING,
  ),
  figure(
    "repetitive_factor",
    "1.15",
    "Repetitive member factor, Cr",
    "Three or more joists under one floor help a weak one out. Bending only.",
    SIZE_FACTORS,
  ),
  figure(
    "repetitive_spacing_most",
    "24 in",
    "Repetitive up to a spacing of",
    "Joists further apart carry alone.",
    SIZE_FACTORS,
    "length",
  ),
  figure(
    "temperature_factor",
    "1",
    "Temperature factor, Ct",
    "Timber that cools at night loses nothing.",
    TEMPERATURE,
  ),
  temperatureFactors,
  figure(
    "stability_factor",
    "1",
    "Beam stability factor, CL",
    "A floor fastened along the top edge keeps a joist from leaning over, so nothing is taken off.",
    STABILITY_BY_SHAPE,
  ),
  figure(
    "bearing_length_factor",
    "1",
    "Bearing length factor, Cb",
    "At the end of a piece nothing is added. Only a short seat well away from the ends would carry more.",
    BEARING_LENGTH,
  ),
  figure(
    "shear_shape_factor",
    "1.5",
    "Peak of shear in a rectangle",
    "Shear is greatest in the middle of the depth: one and a half times the average.",
    SHEAR_STRESS,
  ),
  figure(
    "section_modulus_divisor",
    "6",
    "Section modulus of a rectangle: b d² over",
    "Geometry of a rectangle that bends.",
    STATICS_HANDBOOK,
  ),
  figure(
    "span_moment_share",
    "1/8",
    "Greatest moment of an even load, share of w L²",
    "In the middle of one span on two supports.",
    STATICS_HANDBOOK,
  ),
  figure(
    "span_deflection_share",
    "5/384",
    "Greatest sag of an even load, share of w L⁴ ÷ (E I)",
    "In the middle of one span on two supports.",
    STATICS_HANDBOOK,
  ),
  figure(
    "span_table_step",
    "1 in",
    "Tables print spans to the nearest",
    "Worked again, the published spans are rounded to the nearest inch, not down.",
    FLOOR_SPANS,
    "length",
  ),
]
