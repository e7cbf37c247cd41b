import type { Column, Section } from "@pegbook/engine"
import { column } from "../columns.ts"
import { PS_20 } from "../sources.ts"
import {
  BEARING_LENGTH,
  DECK_SPANS,
  DESIGN_VALUES,
  DESIGN_VALUES_SOUTHERN_PINE,
  INCISED_SPECIES,
  INCISING,
  SIZE_FACTORS,
  WET_SERVICE,
} from "../sources-strength.ts"
import { lookUp, type Member, namesOf, rowsWhen } from "./member.ts"

const VALUES = [DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE]

const published = (name: string, label: string, why: string): Column =>
  column(name, label, "stress", `IF(found > 0; INDEX(design_values.${name}; found); NA())`, why, ...VALUES)

/**
 * A member's allowable stresses: one row for each species of the chosen group, each factor in a column of its own.
 *
 * Gives: `<prefix>_stresses` (fb_adjusted, ft_adjusted, fv_adjusted, fc_perp_adjusted, e_adjusted), `<prefix>_published`
 * (yes while every species has a row) and the class and wet factors of its size.
 * Needs: what the member names, and {@link strengthFigures}.
 * `when`: the name of a yes or no; no leaves the table without rows, for a template with another method of design.
 */
export function allowableStress(member: Member, when?: string): Section {
  const { p, members, species, grade, wet, incised } = namesOf(member)
  const wetFactor = (of: string): string =>
    `IF(${wet}; ${lookUp("wet_factors", of, `${p}_thickness_class`, "thickness")}; 1)`
  const thin =
    member.thinFactorFrom === undefined
      ? `${p}_thickness_class = "2 or 3 in"`
      : `OR(${p}_thickness_class = "2 or 3 in"; ${member.depth} >= ${member.thinFactorFrom})`
  const byWidth = (of: string): string => lookUp("size_factors", of, `${p}_width_class`, "width")
  const key = (ofGrade: string, sizes: string): string =>
    `MATCH(member & " | " & ${ofGrade} & " | " & ${sizes}; design_values.key; 0)`
  const strength = "load_duration_factor * temperature_factor"
  return {
    id: `${p}-stresses`,
    title: `${member.label}: what the timber may bear`,
    says: "Published strength, and one factor after another for how the timber is used, for each species of the group.",
    entries: [
      {
        kind: "formula",
        name: `${p}_width_class`,
        label: `${member.label}: width in the name, inches`,
        measure: "count",
        formula: lookUp("size_classes", "width", member.size, "nominal"),
        why: "The size factor goes by it.",
        sources: [PS_20, SIZE_FACTORS],
      },
      {
        kind: "formula",
        name: `${p}_thickness_class`,
        label: `${member.label}: thickness class`,
        measure: "text",
        formula: lookUp("size_classes", "thickness_class", member.size, "nominal"),
        why: "Thin timber and timbers of 5 in and more are graded and adjusted by different rules.",
        sources: [PS_20, SIZE_FACTORS],
      },
      {
        kind: "formula",
        name: `${p}_wet_shear_factor`,
        label: `${member.label}: wet service factor on shear`,
        measure: "ratio",
        formula: wetFactor("fv"),
        why: "1 where the timber stays dry.",
        sources: [WET_SERVICE],
      },
      {
        kind: "formula",
        name: `${p}_wet_bearing_factor`,
        label: `${member.label}: wet service factor on bearing`,
        measure: "ratio",
        formula: wetFactor("fc_perp"),
        why: "Wet wood is crushed across the grain far more easily. 1 where it stays dry.",
        sources: [WET_SERVICE],
      },
      {
        kind: "formula",
        name: `${p}_wet_stiffness_factor`,
        label: `${member.label}: wet service factor on stiffness`,
        measure: "ratio",
        formula: wetFactor("e"),
        why: "Wet wood sags more. 1 where it stays dry.",
        sources: [WET_SERVICE],
      },
      {
        kind: "table",
        name: `${p}_stresses`,
        label: `${member.label}: stresses by species`,
        rows: { kind: "formula", formula: rowsWhen(when, `COUNTIF(${members}.group; ${species})`) },
        why: "Each species of the group by itself: one may be the weakest and another the springiest.",
        sources: VALUES,
        columns: [
          column(
            "member",
            "Species",
            "text",
            `INDEX(${members}.member; MATCH(${species}; ${members}.group; 0) + ROW() - 1)`,
            "One of the group.",
            DECK_SPANS,
          ),
          column(
            "sizes",
            "Class of size",
            "text",
            lookUp("size_classes", "grading", member.size, "nominal"),
            "Where the species is published by width, the row for this width.",
            ...VALUES,
          ),
          column(
            "found",
            "Row of the published table",
            "count",
            `IFERROR(${key(grade, "sizes")}; IF(${p}_thickness_class = "5 in and more"; 0; IFERROR(${key(grade, '"any width"')}; IF(OR(${grade} = "No.1"; ${grade} = "No.2"); IFERROR(${key('"No.1/No.2"', '"any width"')}; 0); 0))))`,
            "0 where the table has no row for this species, grade and size: then there is no answer.",
            ...VALUES,
          ),
          published("fb", "Bending, published", "Fb, before any factor."),
          published("ft", "Tension, published", "Ft, before any factor."),
          published("fv", "Shear, published", "Fv, before any factor."),
          published("fc_perp", "Bearing, published", "Fc across the grain."),
          published("e", "Stiffness, published", "E, before any factor."),
          column(
            "size_factor",
            "Size factor, CF",
            "ratio",
            `IF(found = 0; NA(); IF(OR(INDEX(design_values.size_inside; MAX(1; found)); ${p}_thickness_class = "5 in and more"); 1; IF(${thin}; ${byWidth("thin")}; ${byWidth("thick")})))`,
            "On bending. 1 where the size is already inside the published value.",
            SIZE_FACTORS,
          ),
          column(
            "size_tension_factor",
            "Size factor on tension",
            "ratio",
            `IF(found = 0; NA(); IF(OR(INDEX(design_values.size_inside; MAX(1; found)); ${p}_thickness_class = "5 in and more"); 1; ${byWidth("tension")}))`,
            "1 where the size is already inside the published value.",
            SIZE_FACTORS,
          ),
          column(
            "wet_bending_factor",
            "Wet service factor on bending, CM",
            "ratio",
            `IF(fb * size_factor <= wet_bending_threshold; 1; ${wetFactor("fb")})`,
            "1 where it stays dry, and where Fb × CF is not over the threshold.",
            WET_SERVICE,
          ),
          column(
            "is_incised",
            "Incised",
            "yes_no",
            `AND(${incised}; ${lookUp("species_traits", "incised", "member", "species")})`,
            "Only where the timber is incised and the species is one that needs it.",
            INCISED_SPECIES,
          ),
          column(
            "incising_factor",
            "Incising factor, Ci",
            "ratio",
            "IF(is_incised; incising_strength_factor; 1)",
            "On bending, tension and shear.",
            INCISING,
          ),
          column(
            "fb_adjusted",
            "Bending, allowed",
            "stress",
            `fb * ${strength} * wet_bending_factor * stability_factor * size_factor * incising_factor * ${member.sharing}`,
            "Fb × CD × Ct × CM × CL × CF × Ci × the factor for members that share.",
            ...VALUES,
          ),
          column(
            "ft_adjusted",
            "Tension, allowed",
            "stress",
            `ft * ${strength} * ${wetFactor("ft")} * size_tension_factor * incising_factor`,
            "Ft × CD × Ct × CM × CF × Ci.",
            ...VALUES,
          ),
          column(
            "fv_adjusted",
            "Shear, allowed",
            "stress",
            `fv * ${strength} * ${p}_wet_shear_factor * incising_factor`,
            "Fv × CD × Ct × CM × Ci.",
            ...VALUES,
          ),
          column(
            "fc_perp_adjusted",
            "Bearing, allowed",
            "stress",
            `fc_perp * temperature_factor * ${p}_wet_bearing_factor * bearing_length_factor`,
            "Fc × Ct × CM × Cb; incising and duration do not count here.",
            ...VALUES,
            BEARING_LENGTH,
          ),
          column(
            "e_adjusted",
            "Stiffness, in use",
            "stress",
            `e * temperature_factor * ${p}_wet_stiffness_factor * IF(is_incised; incising_stiffness_factor; 1)`,
            "E × Ct × CM × Ci; duration does not count here.",
            ...VALUES,
          ),
        ],
      },
      {
        kind: "formula",
        name: `${p}_published`,
        label: `${member.label}: every species has a published row`,
        measure: "yes_no",
        formula: `COUNTIF(${p}_stresses.found; 0) = 0`,
        why: "No where the table has no row for the species, grade and size: then nothing is guessed.",
        sources: VALUES,
      },
    ],
  }
}
