import type { Source } from "@pegbook/engine"

/**
 * Every source that the templates lean on, written once. A source with `origin: "memory"` was recalled, not
 * seen; the screen says so wherever its value is shown.
 */

export const GEOMETRY: Source = { kind: "geometry", title: "Geometry" }

/** The 3-4-5 method, with its multiples of 6, 8 and 10 and of 9, 12 and 15 m. */
export const THREE_FOUR_FIVE: Source = {
  kind: "handbook",
  title: "FAO training manual on topographic surveying",
  edition: "1985, R7021E",
  place: "section 4.1",
  origin: "read",
}

/** The user's own choice, measurement or authority. */
export const USER: Source = { kind: "user", title: "Yours to choose or to measure" }

export const USER_AUTHORITY: Source = {
  kind: "user",
  title: "Your local authority's word",
  note: "Ask before you build; the figures of other places only show what to ask for.",
}

export const COMMON_PRACTICE: Source = { kind: "common_practice", title: "Common practice, no source" }

export const ARITHMETIC: Source = {
  kind: "geometry",
  title: "Arithmetic",
  note: "Follows from the entries it names; nothing is taken from anywhere else.",
}

export const STATICS: Source = {
  kind: "handbook",
  title: "Tributary area, elementary statics",
  note: "A support carries half way to each neighbour, and to the end of the frame where it has none.",
}

/** Sizes of dressed softwood. */
export const PS_20: Source = {
  kind: "standard",
  title: "American Softwood Lumber Standard, PS 20",
  place: "dressed sizes, dry; 5 in and thicker as sold green",
  origin: "read",
  note: "Read in a tabulation of the standard.",
}

export const CSA_O141: Source = {
  kind: "standard",
  title: "Canadian Standard Lumber, CSA O141",
  place: "metric dressed sizes",
  origin: "memory",
}

export const EN_1313_1: Source = {
  kind: "standard",
  title: "Sawn softwood sizes, EN 1313-1",
  place: "target sizes of sawn timber",
  origin: "memory",
}

const CODE_BEARING = {
  kind: "standard",
  title: "International Residential Code, table R401.4.1 (International Building Code, table 1806.2)",
  origin: "read",
} as const

export const BEARING_GRAVEL: Source = { ...CODE_BEARING, place: "sandy gravel and gravel", record: "a-003" }
export const BEARING_SAND: Source = {
  ...CODE_BEARING,
  place: "sand, silty or clayey sand and gravel",
  record: "a-004",
}
export const BEARING_CLAY: Source = {
  ...CODE_BEARING,
  place: "clay, sandy clay, silty clay, clayey silt, silt",
  record: "a-005",
}

export const STRIP_TOPSOIL: Source = {
  kind: "standard",
  title: "International Residential Code, chapter 4",
  place: "bearing values apply to undisturbed native soil",
  origin: "memory",
  record: "a-009",
}

export const FROST_PRACTICE: Source = {
  kind: "common_practice",
  title: "Common practice for blocks on the surface",
  origin: "memory",
  record: "a-036",
}

export const DECK_EXEMPTION_CITY: Source = {
  kind: "standard",
  title: "International Residential Code, section R105.2, as one Californian city words it",
  place: "deck exemption, four conditions together",
  origin: "read",
  record: "b-001",
}

export const DECK_EXEMPTION_COUNTY: Source = {
  kind: "standard",
  title: "A county's permit page in Washington State",
  place: "height to the lowest ground within 6 ft",
  origin: "read",
  record: "b-002",
}

export const SHED_EXEMPTION_IBC: Source = {
  kind: "standard",
  title: "International Building Code, section 105.2",
  edition: "2018",
  place: "one-storey detached accessory structures",
  origin: "read",
  record: "b-004",
}

export const GUARD_IRC: Source = {
  kind: "standard",
  title: "International Residential Code, section R312.1",
  edition: "2018",
  place: "guards, measured within 36 in of the edge",
  origin: "read",
  record: "b-006",
}

export const STAIR_IRC: Source = {
  kind: "standard",
  title: "International Residential Code, section R311.7",
  edition: "2018",
  place: "risers",
  origin: "read",
  record: "b-009",
}

export const SHED_EXEMPTION_ONTARIO: Source = {
  kind: "standard",
  title: "Ontario Regulation 867/21",
  place: "sheds for storage only",
  origin: "read",
  record: "b-012",
}

export const BUILDING_THRESHOLD_ONTARIO: Source = {
  kind: "standard",
  title: "Ontario regulatory registry, posting on the 10 m² threshold",
  origin: "read",
  record: "b-013",
}

export const DECK_HEIGHT_ONTARIO: Source = {
  kind: "standard",
  title: "An Ontario city's deck page",
  place: "decks over 600 mm",
  origin: "read",
  record: "b-015",
}

export const GUARD_ONTARIO: Source = {
  kind: "standard",
  title: "Ontario Building Code, guards",
  place: "part 3 article",
  origin: "read",
  record: "b-020",
}

export const ASK_FIRST: Source = {
  kind: "standard",
  title: "Local law",
  place: "every trigger is local; zoning distances apply to exempt work too",
  origin: "memory",
  record: "b-023",
}

export const SWELL_EARTH: Source = {
  kind: "handbook",
  title: "Swell factors of soils",
  place: "earth and loam, 25 %",
  origin: "read",
  record: "c-006",
}

export const SWELL_FIELD_MANUAL: Source = {
  kind: "handbook",
  title: "Earthmoving Operations, FM 5-434",
  place: "table 1-1, loam or common earth",
  origin: "memory",
  record: "c-014",
}

export const STATES_OF_SOIL: Source = {
  kind: "handbook",
  title: "Training manual on earthwork, volume changes",
  place: "cuts are measured in place, fills tamped, hauling loose",
  origin: "read",
  record: "c-018",
}

export const TAMPING_PRACTICE: Source = {
  kind: "common_practice",
  title: "Common practice with a plate compactor",
  place: "layers of 3 to 4 in, 3 to 4 passes",
  origin: "memory",
  record: "c-023",
}

export const PLANE_FIT: Source = {
  kind: "handbook",
  title: "Plane of least squares, normal equations",
  origin: "memory",
  record: "c-031",
}

export const STONE_DENSITY: Source = {
  kind: "handbook",
  title: "Working densities of aggregates",
  place: "dense graded crusher run, tamped",
  origin: "memory",
  record: "c-036",
}

export const STONE_LOOSE: Source = {
  kind: "handbook",
  title: "Road base rule of thumb",
  place: "1.25 loose for 1 tamped",
  origin: "read",
  record: "c-040",
}

export const LIVE_LOAD_PUBLIC: Source = {
  kind: "standard",
  title: "Uniform live loads that carry the figures of ASCE 7",
  place: "gymnasiums and assembly areas, 100 psf",
  origin: "read",
  record: "design_live_loads",
}

export const LIVE_LOAD_DECK: Source = {
  kind: "standard",
  title: "International Residential Code, table R301.5",
  place: "decks of one dwelling, 40 psf",
  origin: "read",
  record: "design_live_loads",
}

export const OVERHANG_QUARTER: Source = {
  kind: "standard",
  title: "Prescriptive Residential Wood Deck Construction Guide, DCA 6",
  place: "table 2, overhang no more than a quarter of the span",
  origin: "read",
  record: "deck_joist_spans",
}

export const CONCRETE_DENSITY: Source = {
  kind: "handbook",
  title: "Densities of concrete",
  place: "plain concrete",
  origin: "read",
  record: "g-006",
}

export const STRESS_SPREAD: Source = {
  kind: "handbook",
  title: "Spread of a load through a layer, two down for one out",
  origin: "memory",
}

export const TABLE_LAWS: Source = {
  kind: "standard",
  title: "Laws of Table Tennis, International Table Tennis Federation",
  place: "the table",
  origin: "read",
  record: "j-001",
}

export const TABLE_SPACE: Source = {
  kind: "handbook",
  title: "Playing areas by level",
  place: "recreation and coaching",
  origin: "read",
  record: "j-007",
}

/** For whoever cuts or drills concrete. */
export const SILICA_DUST: Source = {
  kind: "standard",
  title: "Silica exposure table, construction safety orders of California, section 1532.3",
  origin: "read",
  record: "e-016",
}

export const TREATED_TIMBER: Source = {
  kind: "handbook",
  title: "Handling treated timber",
  origin: "read",
  record: "e-021",
}

export const GROUND_CONTACT: Source = {
  kind: "standard",
  title: "Acceptance criteria for preservative-treated wood, AC236",
  place: "less than 6 in above the ground counts as ground contact",
  origin: "read",
  record: "e-004",
}

export const LOCATE_SERVICES: Source = {
  kind: "common_practice",
  title: "Notice to the buried-services centre",
  place: "two to three working days, or what your centre says",
  origin: "memory",
  record: "e-026",
}

export const GRID_METHOD: Source = {
  kind: "handbook",
  title: "Course page: earthwork by the grid (borrow-pit) method",
  place: "a corner of one cell counts once, of two twice, of four four times, over four",
  origin: "read",
  record: "c-025",
}

export const BALANCE_LEVEL: Source = {
  kind: "handbook",
  title: "Agricultural course, lesson 18: land levelling by the plane method",
  place: "a plane through the middle of the plot at its mean level balances cut and fill",
  origin: "read",
  record: "c-030",
}

export const TRIANGLES: Source = {
  kind: "geometry",
  title: "Linear interpolation over the triangles of Delaunay",
  note: "Of all ways to join the points by triangles, the one with the fewest thin ones.",
}

export const STONE_TEXTBOOK: Source = {
  kind: "handbook",
  title: "Construction-methods textbook, table 2-5",
  place: "sand and gravel: 3,650 lb tamped for 2,860 lb loose in a cubic yard",
  origin: "read",
  record: "c-002",
}

export const SURFACE_DRAINAGE: Source = {
  kind: "standard",
  title: "International Residential Code, section R401.3",
  edition: "2015",
  place: "fall of 6 in within 10 ft; hard surfaces 2 percent",
  origin: "read",
  record: "a-022",
}

export const FOOTING_COVER: Source = {
  kind: "standard",
  title: "International Residential Code, section R403.1",
  edition: "2006, a state's edition",
  place: "footings at least 12 in below undisturbed ground",
  origin: "read",
  record: "a-023",
}

export const FROST_METHODS: Source = {
  kind: "standard",
  title: "International Residential Code, section R403.1.4.1, as amended in Connecticut",
  place: "methods of frost protection and their exceptions",
  origin: "read",
  record: "a-024",
}

export const BAG_YIELD: Source = {
  kind: "handbook",
  title: "Yields of bagged concrete: 90, 60 or 45 bags of 40, 60 or 80 lb to the cubic yard",
  origin: "read",
  record: "g-001",
  note: "One article prints 0.60 cu ft for a bag of 40 lb; 0.30 is right.",
}

export const LOCATE_CITY: Source = {
  kind: "standard",
  title: "City of Sarnia, duty to have utilities located",
  place: "five business days, free of charge",
  origin: "read",
  record: "e-023",
}

export const LOCATE_WORKS: Source = {
  kind: "standard",
  title: "City of Guelph, duty to have utilities located",
  place: "decks, fences, pools, driveways, trees, gardens, light posts",
  origin: "read",
  record: "e-025",
}
