import type { Source } from "@pegbook/engine"

/** Citations of what timber and panels carry. */

const NDS = { kind: "standard", title: "National Design Specification for Wood Construction" } as const
const NDS_SUPPLEMENT = { kind: "standard", title: "NDS Supplement, design values for wood" } as const
const O86 = { kind: "standard", title: "Engineering design in wood, CSA O86" } as const

export const DESIGN_VALUES: Source = {
  ...NDS_SUPPLEMENT,
  edition: "2018",
  place: "table 4A, visually graded dimension lumber; dry, ten years of load",
  origin: "read",
  record: "nds_reference_design_values",
  note: "Read in an open transcription. Each row says whether it was seen or recalled.",
}

export const DESIGN_VALUES_SOUTHERN_PINE: Source = {
  ...NDS_SUPPLEMENT,
  edition: "June 2013",
  place: "table 4B, Southern Pine",
  origin: "memory",
  record: "nds_reference_design_values",
  note: "In psi from memory; agrees, rounded, with values in MPa that were read.",
}

export const DESIGN_VALUES_TIMBERS: Source = {
  ...NDS_SUPPLEMENT,
  place: "table 4D, timbers 5 in and thicker",
  origin: "read",
  record: "nds_reference_design_values",
  note: "Read where university problems quote it; Southern Pine from memory.",
}

export const SIZE_FACTORS: Source = {
  kind: "handbook",
  title: "Grading rules of a lumber manufacturers' association, section 8",
  place: "adjustment tables A and B: size, repetitive member",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const FLAT_FACTORS: Source = {
  ...NDS_SUPPLEMENT,
  place: "table 4A, flat use",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const LOAD_DURATION: Source = {
  ...NDS,
  edition: "2018",
  place: "table 2.3.2, load duration",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const WET_SERVICE: Source = {
  ...NDS_SUPPLEMENT,
  edition: "2018",
  place: "tables 4A and 4D, wet service",
  origin: "read",
  record: "nds_adjustment_factors",
  note: "On bending only where Fb × CF is more than 1150 psi.",
}

export const TEMPERATURE: Source = {
  ...NDS,
  edition: "2018",
  place: "table 2.3.3, temperature",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const INCISING: Source = {
  ...NDS,
  place: "table 4.3.8, incising",
  origin: "memory",
  record: "nds_adjustment_factors",
  note: "0.80 and 0.95 reproduce all twelve published deck spans of the incised species group.",
}

export const INCISED_SPECIES: Source = {
  kind: "standard",
  title: "Prescriptive Residential Wood Deck Construction Guide, DCA 6",
  place: "table 2, footnote: incising only in the first species group",
  origin: "read",
  record: "deck_joist_spans",
  note: "For species that the table does not hold, yes is assumed: it is the safer answer.",
}

export const BEAM_STABILITY: Source = {
  ...NDS,
  edition: "2018",
  place: "3.3.3, beam stability",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const COLUMN_STABILITY: Source = {
  ...NDS,
  edition: "2018",
  place: "3.7.1, column stability",
  origin: "memory",
  note: "Held against a published worked example, which was read (record worked_examples, WE8).",
}

export const STABILITY_BY_SHAPE: Source = {
  ...NDS,
  place: "4.4.1, held edges",
  origin: "memory",
  record: "nds_adjustment_factors",
}

export const BEARING_LENGTH: Source = {
  ...NDS,
  place: "3.10.4, bearing area",
  origin: "memory",
  record: "nds_adjustment_factors",
}

export const SHEAR_STRESS: Source = {
  ...NDS,
  place: "3.4, shear of a rectangle: 1.5 V ÷ (b d)",
  origin: "memory",
  record: "nds_adjustment_factors",
}

export const STATICS_HANDBOOK: Source = {
  kind: "handbook",
  title: "Standard statics of one span",
  origin: "memory",
  record: "beam_formulas_single_span",
  note: "Worked out again numerically.",
}

export const DECK_SPANS: Source = {
  kind: "standard",
  title: "Prescriptive Residential Wood Deck Construction Guide, DCA 6",
  place: "table 2, joist spans and overhangs",
  origin: "read",
  record: "deck_joist_spans",
}

export const OVERHANG_ALLOWANCE: Source = {
  ...DECK_SPANS,
  note: "Not printed: 3 in, twice half a two-ply beam, is what reproduces all 36 printed overhangs.",
}

export const CANTILEVERS: Source = {
  kind: "standard",
  title: "International Residential Code, table R507.6, cantilevers",
  edition: "2021",
  origin: "memory",
  record: "deck_joist_cantilevers",
}

export const BEAM_SPANS: Source = {
  kind: "standard",
  title: "International Residential Code, table R507.5 (DCA 6-15, table 3A), deck beams",
  edition: "2018",
  origin: "memory",
  record: "deck_beam_spans",
}

/** What was found by working the remembered beam table backwards. */
export const BEAM_SPANS_FITTED: Source = {
  ...BEAM_SPANS,
  note: "Not printed: found by working the table's cells backwards.",
}

export const FLOOR_SPANS: Source = {
  kind: "standard",
  title: "International Residential Code, table R502.3.1, floor joists",
  edition: "2012, read; 2015 to 2021, from memory",
  origin: "read",
  record: "floor_joist_spans_us",
}

export const CSA_STRENGTHS: Source = {
  ...O86,
  place: "joist and plank strengths",
  origin: "memory",
  record: "csa_o86_specified_strengths",
  note: "S-P-F No.1/No.2 was read in public calculation sheets; the rest is from memory.",
}

export const CSA_RESISTANCE: Source = {
  ...O86,
  edition: "2009",
  place: "5.5.4, 5.5.5 and 5.5.7, as used in public calculation sheets",
  origin: "read",
  record: "csa_o86_factors",
}

export const CSA_FACTORS: Source = {
  ...O86,
  place: "system, service, treatment and size factors",
  origin: "memory",
  record: "csa_o86_factors",
}

export const NBC_LOAD_FACTORS: Source = {
  kind: "standard",
  title: "National Building Code of Canada, load factors 1.25 D and 1.5 L",
  origin: "read",
  record: "worked_examples",
  note: "As used in public calculation sheets.",
}

export const NBC_SPANS: Source = {
  kind: "standard",
  title: "National Building Code of Canada, span table 9.23.4.2.-A, floor joists",
  origin: "memory",
  record: "floor_joist_spans_canada",
}

export const NBC_SPACING_RULE: Source = {
  ...NBC_SPANS,
  note: "The code's own formula was not found. In the cells at 300 mm and 400 mm the span goes by a power of the spacing; the same power is kept up to 600 mm.",
}

export const LIVE_LOADS: Source = {
  kind: "standard",
  title: "Uniform live loads of several codes",
  origin: "read",
  record: "design_live_loads",
  note: "Each row says whose it is, and whether it was seen or recalled.",
}

export const DEFLECTION: Source = {
  kind: "standard",
  title: "Deflection limits of several codes",
  origin: "read",
  record: "deflection_limits",
  note: "Each row says whose it is, and whether it was seen or recalled.",
}

export const PANEL_CAPACITIES: Source = {
  kind: "handbook",
  title: "Panel design specification D510C, 2012, and design capacities of a testing agency, 2008",
  origin: "read",
  record: "panel_design_capacities",
  note: "Strand board was read in an open transcription; plywood is from memory.",
}

export const PANEL_METHOD: Source = {
  kind: "handbook",
  title: "Uniform load on panels, method of the panel makers' specification",
  origin: "read",
  record: "panel_load_formulas",
  note: "Three spans were read in a worked example; one and two spans are from memory.",
}

export const PANEL_WET: Source = {
  kind: "handbook",
  title: "Panel design specification, adjustments for moisture",
  origin: "memory",
  note: "For panels at 16 % of moisture and more: 0.75 on strength, 0.85 on stiffness.",
}

export const PANEL_SPAN_RULE: Source = {
  ...PANEL_METHOD,
  origin: "memory",
  note: "Three spans up to 32 in, two beyond: what a sheet of 8 ft reaches.",
}

export const PANEL_RATINGS: Source = {
  kind: "standard",
  title: "International Residential Code, table R503.2.1.1(1)",
  origin: "memory",
  record: "panel_span_ratings",
}

export const PANEL_LIVE_LOADS: Source = {
  kind: "handbook",
  title: "Construction guide of a panel makers' association, recommended uniform floor live loads",
  origin: "memory",
  record: "panel_floor_live_loads",
}

export const DECKING_SPACING: Source = {
  kind: "standard",
  title: "International Residential Code, table R507.7, decking",
  edition: "2018 numbering",
  origin: "read",
  record: "decking_max_joist_spacing",
}

export const SUBFLOOR_CANADA: Source = {
  kind: "standard",
  title: "National Building Code, Alberta edition 2023, table 9.23.15.5.-A",
  origin: "read",
  record: "subfloor_thickness_canada",
}

export const LUMBER_FLOOR: Source = {
  kind: "standard",
  title: "International Residential Code, table R503.1, as adopted in Michigan 2015",
  origin: "read",
  record: "lumber_floor_sheathing",
}
