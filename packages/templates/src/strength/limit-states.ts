import type { Column, Entry, FigureEntry, Section, Source } from "@pegbook/engine"
import { column } from "../columns.ts"
import {
  CSA_FACTORS,
  CSA_RESISTANCE,
  CSA_STRENGTHS,
  DECK_SPANS,
  INCISED_SPECIES,
  NBC_LOAD_FACTORS,
} from "../sources-strength.ts"
import { figureTable, isRead } from "./figure-table.ts"
import { lookUp, type Member, namesOf, rowsWhen } from "./member.ts"

/** Species, grade, fb, fv, fc, fcp, ft, E, E05 in MPa, origin. */
const STRENGTHS = [
  ["S-P-F", "Select Structural", 16.5, 1.5, 14.5, 5.3, 8.6, 10500, 7500, "from memory"],
  ["S-P-F", "No.1/No.2", 11.8, 1.5, 11.5, 5.3, 5.5, 9500, 6500, "read"],
  ["D Fir-L", "Select Structural", 16.5, 1.9, 19, 7, 10.6, 12500, 8500, "from memory"],
  ["D Fir-L", "No.1/No.2", 10, 1.9, 14, 7, 5.8, 11000, 7000, "from memory"],
  ["Hem-Fir", "Select Structural", 16, 1.6, 17.6, 4.6, 9.7, 12000, 8500, "from memory"],
  ["Hem-Fir", "No.1/No.2", 11, 1.6, 14.8, 4.6, 6.2, 11000, 7500, "from memory"],
  ["Northern", "Select Structural", 10.6, 1.3, 13, 3.5, 6.2, 7500, 5500, "from memory"],
  ["Northern", "No.1/No.2", 7.6, 1.3, 10.4, 3.5, 4, 7000, 5000, "from memory"],
] as const

/** Larger dimension in mm, then KZ of bending and shear when 38 to 64, 89 to 102, and 114 mm thick or more ("-": none). */
const SIZE_FACTORS = [
  [89, "1.7", "1.7", "-"],
  [140, "1.4", "1.5", "1.3"],
  [184, "1.2", "1.3", "1.3"],
  [235, "1.1", "1.2", "1.2"],
  [286, "1", "1.1", "1.1"],
] as const

const stress = (value: number): string => `${value} MPa`

const figure = (
  name: string,
  value: string,
  label: string,
  why: string,
  source: Source,
  measure: FigureEntry["measure"] = "ratio",
): FigureEntry => ({ kind: "figure", name, label, measure, value, why, sources: [source] })

/** Strengths and factors of limit states design; once in a template. */
export const limitStateFigures: readonly Entry[] = [
  figureTable({
    name: "specified_strengths",
    label: "Specified strengths of Canadian timber",
    why: "What the Canadian standard lets a grade bear before its own factors.",
    sources: [CSA_STRENGTHS],
    columns: {
      key: { label: "Found by", measure: "text", why: "Species and grade in one text." },
      fb: { label: "Bending", measure: "stress", why: "Called fb there." },
      fv: { label: "Shear", measure: "stress", why: "Called fv there." },
      fc: { label: "Compression", measure: "stress", why: "fc, along the grain." },
      fcp: { label: "Bearing", measure: "stress", why: "fcp, across the grain." },
      ft: { label: "Tension", measure: "stress", why: "Called ft there." },
      e: { label: "Stiffness", measure: "stress", why: "Called E there." },
      e_low: { label: "Stiffness, low", measure: "stress", why: "E05, for buckling." },
      origin: isRead,
    },
    rows: STRENGTHS.map(([species, grade, fb, fv, fc, fcp, ft, e, low, origin]) => ({
      key: `${species} | ${grade}`,
      fb: stress(fb),
      fv: stress(fv),
      fc: stress(fc),
      fcp: stress(fcp),
      ft: stress(ft),
      e: stress(e),
      e_low: stress(low),
      origin,
    })),
  }),
  figureTable({
    name: "csa_size_factors",
    label: "Canadian size factors, KZ",
    why: "On bending and shear, by the wide side and the thickness.",
    sources: [CSA_FACTORS],
    columns: {
      depth: { label: "Wide side", measure: "length", why: "The larger dimension of the piece." },
      least: {
        label: "Thickness from",
        measure: "length",
        why: "The class that the whole member's width falls in.",
      },
      factor: { label: "KZ", measure: "ratio", why: "On bending and shear." },
    },
    rows: SIZE_FACTORS.flatMap(([depth, thin, middle, thick]) =>
      [
        ["38 mm", thin],
        ["88 mm", middle],
        ["114 mm", thick],
      ].flatMap(([least = "", factor = "-"]) =>
        factor === "-" ? [] : [{ depth: `${depth} mm`, least, factor }],
      ),
    ),
  }),
  figure(
    "resistance_factor",
    "0.9",
    "Resistance factor, bending and shear",
    "Timber may be weaker than its grade says.",
    CSA_RESISTANCE,
  ),
  figure(
    "bearing_resistance_factor",
    "0.8",
    "Resistance factor, bearing",
    "Across the grain timber varies more.",
    CSA_RESISTANCE,
  ),
  figure(
    "csa_duration_factor",
    "1",
    "Load duration factor, KD",
    "1 for people; 1.15 under a week in all, 0.65 for what always lies there.",
    CSA_FACTORS,
  ),
  figure(
    "csa_system_factor",
    "1.1",
    "System factor, KH",
    "Three or more members not over 610 mm apart that share the load. A sheathed floor may take 1.4 in bending.",
    CSA_FACTORS,
  ),
  figure(
    "csa_lateral_factor",
    "1",
    "Lateral stability factor, KL",
    "1 where the floor holds the upper edge.",
    CSA_RESISTANCE,
  ),
  figure(
    "csa_bearing_length_factor",
    "1",
    "Bearing length factor, KB",
    "At the end of a piece nothing is added.",
    CSA_FACTORS,
  ),
  figure(
    "csa_thin_most",
    "89 mm",
    "Wet and incised: thin up to",
    "Up to this least dimension, damp and slits count.",
    CSA_FACTORS,
    "length",
  ),
  figure("csa_wet_bending", "0.84", "Wet service factor, KSb", "On bending of thin timber.", CSA_FACTORS),
  figure("csa_wet_shear", "0.96", "Wet service factor, KSv", "On shear of thin timber.", CSA_FACTORS),
  figure("csa_wet_bearing", "0.67", "Wet service factor, KScp", "On bearing, thin or thick.", CSA_FACTORS),
  figure(
    "csa_wet_stiffness",
    "0.94",
    "Wet service factor, KSE",
    "On the stiffness of thin timber.",
    CSA_FACTORS,
  ),
  figure("csa_incised_wet", "0.85", "Treatment factor, KT, incised and wet", "On strength.", CSA_FACTORS),
  figure("csa_incised_dry", "0.75", "Treatment factor, KT, incised and dry", "On strength.", CSA_FACTORS),
  figure(
    "csa_incised_wet_stiffness",
    "0.95",
    "Treatment factor on stiffness, incised and wet",
    "What is left of E.",
    CSA_FACTORS,
  ),
  figure(
    "csa_incised_dry_stiffness",
    "0.9",
    "Treatment factor on stiffness, incised and dry",
    "What is left of E.",
    CSA_FACTORS,
  ),
  figure(
    "dead_load_factor",
    "1.25",
    "Load factor on dead load",
    "The floor may be heavier than thought.",
    NBC_LOAD_FACTORS,
  ),
  figure(
    "live_load_factor",
    "1.5",
    "Load factor on live load",
    "More people may come than thought.",
    NBC_LOAD_FACTORS,
  ),
]

const specified = (name: string, from: string, label: string): Column =>
  column(
    name,
    label,
    "stress",
    `IF(found > 0; INDEX(specified_strengths.${from}; found); NA())`,
    "As published.",
    CSA_STRENGTHS,
  )

/**
 * A member's resistances by limit states: stresses with the resistance factor inside, one row for each species.
 *
 * Gives: `<prefix>_resistances` (fb_resisted, fv_resisted, fc_perp_resisted, e_used), `<prefix>_specified` (yes while
 * every species has a row). Needs: what the member names, {@link limitStateFigures} and {@link strengthFigures}.
 * `when`: as for allowable stress.
 */
export function limitStates(member: Member, when?: string): Section {
  const { p, members, species, grade, wet, incised, width } = namesOf(member)
  const thin = `MIN(${width}; ${member.depth}) <= csa_thin_most`
  const wetThin = (factor: string): string => `IF(AND(${wet}; ${thin}); ${factor}; 1)`
  const treated = (whenWet: string, whenDry: string): string =>
    `IF(is_incised; IF(${wet}; ${whenWet}; ${whenDry}); 1)`
  return {
    id: `${p}-resistances`,
    title: `${member.label}: what the timber resists, limit states`,
    says: "The Canadian way: loads are made larger and strengths smaller, each by its own factor.",
    entries: [
      {
        kind: "formula",
        name: `${p}_csa_size_factor`,
        label: `${member.label}: size factor, KZ`,
        measure: "ratio",
        formula: `INDEX(csa_size_factors.factor; MATCH(${lookUp("size_classes", "metric_width", member.size, "nominal")}; csa_size_factors.depth; 0) + COUNTIF(${p}_size_steps.reached; TRUE()) - 1)`,
        why: "By the wide side, and by the width of all plies together.",
        sources: [CSA_FACTORS],
      },
      {
        kind: "table",
        name: `${p}_size_steps`,
        label: `${member.label}: thickness classes reached`,
        rows: { kind: "formula", formula: "COUNT(csa_size_factors.factor)" },
        why: "Which rows of the size factors are for this depth and not for thicker pieces.",
        sources: [CSA_FACTORS],
        columns: [
          column(
            "reached",
            "Reached",
            "yes_no",
            `AND(INDEX(csa_size_factors.depth; ROW()) = ${lookUp("size_classes", "metric_width", member.size, "nominal")}; OR(INDEX(csa_size_factors.least; ROW()) = INDEX(csa_size_factors.least; 1); ${width} >= INDEX(csa_size_factors.least; ROW())))`,
            "Yes where the piece is as deep as the row says and at least as thick.",
            CSA_FACTORS,
          ),
        ],
      },
      {
        kind: "table",
        name: `${p}_resistances`,
        label: `${member.label}: resistances by species`,
        rows: { kind: "formula", formula: rowsWhen(when, `COUNTIF(${members}.group; ${species})`) },
        why: "Each species of the group by itself.",
        sources: [CSA_STRENGTHS],
        columns: [
          column(
            "member",
            "Species",
            "text",
            lookUp(
              "species_traits",
              "csa_name",
              `INDEX(${members}.member; MATCH(${species}; ${members}.group; 0) + ROW() - 1)`,
              "species",
            ),
            "Its Canadian name; a dash where it has none here.",
            DECK_SPANS,
            CSA_STRENGTHS,
          ),
          column(
            "found",
            "Row of the published table",
            "count",
            `IFERROR(MATCH(member & " | " & IF(OR(${grade} = "No.1"; ${grade} = "No.2"); "No.1/No.2"; ${grade}); specified_strengths.key; 0); 0)`,
            "0 where the table has no row: then there is no answer.",
            CSA_STRENGTHS,
          ),
          specified("fb", "fb", "Bending, specified"),
          specified("fv", "fv", "Shear, specified"),
          specified("fc_perp", "fcp", "Bearing, specified"),
          specified("e", "e", "Stiffness, specified"),
          column(
            "is_incised",
            "Incised",
            "yes_no",
            `AND(${incised}; ${thin}; ${lookUp("species_traits", "incised", `INDEX(${members}.member; MATCH(${species}; ${members}.group; 0) + ROW() - 1)`, "species")})`,
            "Only thin timber of a species that needs it.",
            INCISED_SPECIES,
            CSA_FACTORS,
          ),
          column(
            "treatment_factor",
            "Treatment factor, KT",
            "ratio",
            treated("csa_incised_wet", "csa_incised_dry"),
            "On strength.",
            CSA_FACTORS,
          ),
          column(
            "fb_in_use",
            "Bending strength in use, Fb",
            "stress",
            `fb * csa_duration_factor * csa_system_factor * ${wetThin("csa_wet_bending")} * treatment_factor`,
            "fb × KD × KH × KSb × KT.",
            CSA_RESISTANCE,
            CSA_FACTORS,
          ),
          column(
            "fv_in_use",
            "Shear strength in use, Fv",
            "stress",
            `fv * csa_duration_factor * csa_system_factor * ${wetThin("csa_wet_shear")} * treatment_factor`,
            "fv × KD × KH × KSv × KT.",
            CSA_RESISTANCE,
            CSA_FACTORS,
          ),
          column(
            "fc_perp_in_use",
            "Bearing strength in use, Fcp",
            "stress",
            `fc_perp * csa_duration_factor * IF(${wet}; csa_wet_bearing; 1) * treatment_factor`,
            "fcp × KD × KScp × KT.",
            CSA_RESISTANCE,
            CSA_FACTORS,
          ),
          column(
            "fb_resisted",
            "Bending stress resisted",
            "stress",
            `resistance_factor * fb_in_use * ${p}_csa_size_factor * csa_lateral_factor`,
            "φ × Fb × KZb × KL.",
            CSA_RESISTANCE,
          ),
          column(
            "fv_resisted",
            "Shear stress resisted",
            "stress",
            `resistance_factor * fv_in_use * ${p}_csa_size_factor`,
            "φ × Fv × KZv.",
            CSA_RESISTANCE,
          ),
          column(
            "fc_perp_resisted",
            "Bearing stress resisted",
            "stress",
            "bearing_resistance_factor * fc_perp_in_use * csa_bearing_length_factor",
            "φ × Fcp × KB.",
            CSA_RESISTANCE,
          ),
          column(
            "e_used",
            "Stiffness in use",
            "stress",
            `e * ${wetThin("csa_wet_stiffness")} * ${treated("csa_incised_wet_stiffness", "csa_incised_dry_stiffness")}`,
            "E × KSE × KT.",
            CSA_FACTORS,
          ),
        ],
      },
      {
        kind: "formula",
        name: `${p}_specified`,
        label: `${member.label}: every species has a specified strength`,
        measure: "yes_no",
        formula: `COUNTIF(${p}_resistances.found; 0) = 0`,
        why: "No where the Canadian table here has no row: then nothing is guessed.",
        sources: [CSA_STRENGTHS],
      },
    ],
  }
}
