import type { Source } from "@pegbook/engine"

/** Citations of what acts on the platform (loads, wind, soil, frost) and of what holds it. */

export const BEAM_STATICS: Source = {
  kind: "handbook",
  title: "Statics of continuous beams, stiffness method",
  origin: "read",
  record: "continuous_beam_coefficients",
  note: "held against the handbook's coefficients for two to five equal spans, and against a second method",
}

export const BEAM_PATTERN: Source = {
  kind: "handbook",
  title: "Live load span by span: each span loaded or not, whichever is worst",
  origin: "memory",
  record: "continuous_beam_pattern_maxima",
}

export const POINT_LOAD: Source = {
  kind: "standard",
  title: "International Residential Code, notes to table R301.5, as Washington adopted it",
  place: "300 lb on 2 in by 2 in of a stair's tread",
  origin: "read",
  record: "design_live_loads",
  note: "1.3 kN on a floor, National Building Code of Canada, is from memory",
}

const IBC_BEARING = {
  kind: "standard",
  title: "International Residential Code, table R401.4.1 (International Building Code, table 1806.2)",
  origin: "read",
} as const

const NBC_BEARING = {
  kind: "standard",
  title: "Ontario and National Building Code of Canada, table 9.4.4.1",
  origin: "read",
} as const

export const BEARING_IRC: Source = { ...IBC_BEARING, record: "a-001 to a-005" }
export const BEARING_NBC: Source = { ...NBC_BEARING, record: "a-010 to a-018" }

export const BEARING_WET: Source = {
  kind: "standard",
  title: "National Building Code of Canada, part 9",
  edition: "2023, Alberta",
  place: "table 9.4.4.1: half on sand, silt or gravel where water stands within a footing's width below",
  origin: "read",
  record: "soil_bearing",
}

export const LATERAL_BEARING: Source = { ...IBC_BEARING, place: "lateral bearing", record: "a-003 to a-005" }

export const SLIDING: Source = {
  kind: "standard",
  title: "International Building Code, table 1806.2",
  edition: "2012",
  place: "friction of a footing on the soil",
  origin: "read",
  record: "a-008",
}

export const WIND_VELOCITY: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7: velocity pressure",
  place: "0.613 × factors × speed squared, in pascals and metres per second",
  origin: "read",
  record: "i-001, i-002",
}

export const WIND_EXPOSURE: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7: exposure at 15 ft and below",
  origin: "memory",
  record: "i-010",
}

export const WIND_EXAMPLE: Source = {
  kind: "handbook",
  title: "Structural calculations in an Idaho permit file",
  edition: "2019",
  place: "115 mph, exposure B",
  origin: "read",
  record: "m-020",
}

export const WIND_OPEN_FRAMES: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7-16, table 29.4-2: open signs and single-plane frames",
  origin: "read",
  record: "i-003 to i-006",
}

export const WIND_LEAST: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7-16, as a city's permit calculation uses it",
  place: "16 psf at least, gust 0.85",
  origin: "read",
  record: "i-007",
}

export const WIND_BUILDINGS: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7: outside and inside pressure on small closed buildings",
  origin: "memory",
}

export const WIND_ALLOWABLE: Source = {
  kind: "standard",
  title: "Minimum Design Loads, ASCE 7: combinations for allowable loads",
  place: "0.6 of the dead load against wind; 0.6 of a wind from a map of ultimate speeds",
  origin: "memory",
}

export const MESH_SOLIDITY: Source = {
  kind: "geometry",
  title: "Solid share of a square mesh",
  note: "2 d/m − (d/m)², with d the twine and m the mesh, knot to knot",
  record: "i-011",
}

export const POST_MOMENT: Source = {
  kind: "geometry",
  title: "Bending of a post that stands free under an even load",
  record: "i-013",
}

export const POST_DEPTH: Source = {
  kind: "standard",
  title: "International Building Code, section 1807.3.2: posts in the ground",
  place: "no restraint at the ground: d = 0.5 A (1 + √(1 + 4.36 h/A)), A = 2.34 P ÷ (S₁ b)",
  origin: "read",
  record: "i-014",
}

export const POST_DOUBLING: Source = {
  kind: "standard",
  title: "International Building Code, section 1806.3.4: poles that may move half an inch at the ground",
  origin: "memory",
  record: "i-016",
}

export const FROST_METHODS: Source = {
  kind: "standard",
  title: "International Residential Code, section R403.1.4.1",
  place: "below the frost line, a shallow base with insulation, or rock",
  origin: "read",
  record: "a-024",
}

export const FROST_ONTARIO: Source = {
  kind: "standard",
  title: "Ontario Building Code, sentence 9.12.2.2.(7)",
  place: "one storey, 55 m², 600 mm to the underside of the joists, no roof, not attached",
  origin: "read",
  record: "a-030",
}

export const FROST_RISE: Source = {
  kind: "memory",
  title: "Rise of freezing soils, rough shares",
  origin: "memory",
  note: "to show the order of it; soils and winters differ widely",
}

export const SPECIFIC_GRAVITY: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  edition: "2018",
  place: "table 12.3.3A, specific gravity, read in a transcription",
  origin: "read",
  record: "specific_gravity",
}

export const SCREW_WITHDRAWAL: Source = {
  kind: "handbook",
  title: "Civil Engineering Formulas, page 170: wood screws, withdrawal",
  place: "2850 × specific gravity squared × diameter, per inch of thread",
  origin: "read",
  record: "d-033",
}

export const SCREW_ULTIMATE: Source = {
  kind: "handbook",
  title: "Wood Handbook, withdrawal of wood screws",
  place: "15 700 × specific gravity squared × diameter × thread",
  origin: "memory",
  record: "d-048",
}

export const SCREW_LATERAL: Source = {
  kind: "handbook",
  title: "Civil Engineering Formulas, page 170: wood screws, sideways",
  place: "a constant of the species group × diameter squared",
  origin: "read",
  record: "d-034 to d-039",
  note: "an older method; newer standards look at how the screw and the wood yield, and may give less in thin timber",
}

export const NAIL_LATERAL: Source = {
  kind: "handbook",
  title: "A structural engineers' worked example to the NDS of 2005: 16d common nail",
  place: "141 lb in Douglas fir-larch through 1 1/2 in",
  origin: "read",
  record: "d-062, m-024",
}

export const FASTENER_PENETRATION: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  place: "six diameters at least, ten for the full value",
  origin: "memory",
  record: "d-050",
}

export const YIELD_MODES: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  edition: "2018",
  place: "tables 12.3.1A and B, 12.3.3: yield modes of dowel-type fasteners, single shear",
  origin: "memory",
  note: "held against three values read elsewhere or recalled: 141 lb of a 16d nail, 105 lb of a 10d nail, 480 lb of a 1/2 in bolt",
}

export const FASTENER_STEEL: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  place: "appendix I: bending yield strength of nails, screws and bolts",
  origin: "memory",
}

export const SCREW_ROOT: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  place: "appendix L: root diameters of wood screws, 0.152 in of No. 10 (0.19 in)",
  origin: "memory",
}

export const GUARD_LOAD_IRC: Source = {
  kind: "standard",
  title: "International Residential Code, table R301.5",
  place: "guards: 200 lb at any one place along the top, in any direction",
  origin: "read",
  record: "design_live_loads",
}

export const GUARD_LOAD_EVEN: Source = {
  kind: "standard",
  title: "International Building Code, guards: 50 lb on each foot, or 200 lb at one place",
  origin: "memory",
}

export const GUARD_LOAD_CANADA: Source = {
  kind: "standard",
  title: "National Building Code of Canada, guards: 1.0 kN at one place, or 0.75 kN on each metre",
  origin: "memory",
}

export const GUARD_FASTENING: Source = {
  kind: "standard",
  title: "International Residential Code, R507.10: guards on decks",
  place: "posts fastened to the framing behind the rim, not to the rim alone",
  origin: "memory",
}

export const BOLT_STEEL: Source = {
  kind: "handbook",
  title: "Plain carbon steel bolts (A307) in tension, 22.5 ksi of the shank's area by allowable stress",
  origin: "memory",
}

export const LOAD_DURATION: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  edition: "2018",
  place: "table 2.3.2, ten minutes (wind): 1.6; ten years (people): 1.0",
  origin: "read",
  record: "nds_adjustment_factors",
}

export const FASTENER_WET: Source = {
  kind: "standard",
  title: "National Design Specification for Wood Construction",
  place: "wet service of screws and nails: 0.7",
  origin: "memory",
}
