import type { Column, Source } from "@pegbook/engine"
import { column } from "../columns.ts"
import { CSA_STRENGTHS, DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE } from "../sources-strength.ts"
import { factor } from "../strength/design-factors.ts"

export const VALUES: readonly Source[] = [DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE, CSA_STRENGTHS]
export const LIMIT_STATES = 'design_method = "limit states"'

/** One number by limit states, another by allowable stress. */
export const either = (limitStates: string, allowable: string): string =>
  `IF(${LIMIT_STATES}; ${limitStates}; ${allowable})`

export const sizeClass = (name: string): string =>
  `INDEX(size_classes.${name}; MATCH(size; size_classes.nominal; 0))`

export const sizeFactor = (name: string): string =>
  `INDEX(size_factors.${name}; MATCH(width_class; size_factors.width; 0))`

export const wetFactor = (name: string, csa: string, thinOnly: boolean): string =>
  `IF(found = 0; NA(); IF(wet_service; ${either(
    thinOnly ? `IF(thin; ${factor(csa)}; 1)` : factor(csa),
    `INDEX(wet_factors.${name}; MATCH(thickness_class; wet_factors.thickness; 0))`,
  )}; 1))`

export const published = (name: string, csa: string, label: string, why: string): Column =>
  column(
    `${name}_published`,
    label,
    "stress",
    `IF(found > 0; ${either(`INDEX(specified_strengths.${csa}; found)`, `INDEX(design_values.${name}; found)`)}; NA())`,
    why,
    ...VALUES,
  )

const key = (grade: string, sizes: string): string =>
  `MATCH(species & " | " & ${grade} & " | " & ${sizes}; design_values.key; 0)`
const JOINED_GRADE = 'OR(grade = "No.1"; grade = "No.2")'
/** The row of `design_values` for a row's species, grade, sizes and thickness_class; 0 where there is none. */
export const FOUND = `IFERROR(${key("grade", "sizes")}; IF(thickness_class = "5 in and more"; 0; IFERROR(${key("grade", '"any width"')}; IF(${JOINED_GRADE}; IFERROR(${key('"No.1/No.2"', '"any width"')}; 0); 0))))`
export const FOUND_CSA = `IFERROR(MATCH(INDEX(species_traits.csa_name; MATCH(species; species_traits.species; 0)) & " | " & IF(${JOINED_GRADE}; "No.1/No.2"; grade); specified_strengths.key; 0); 0)`
