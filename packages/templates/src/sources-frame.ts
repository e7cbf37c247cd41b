import type { Source } from "@pegbook/engine"

/** Citations of the frame, its surface and its fixings. What several areas share is in `sources.ts`. */

/** A fact of the trade that nobody publishes as a standard. */
export function practice(note: string): Source {
  return { kind: "common_practice", title: "Common practice, no source", note }
}

export const NOMINAL: Source = {
  kind: "handbook",
  title: "Tabulation of the American Softwood Lumber Standard, PS 20",
  place: "nominal sizes",
  origin: "read",
  record: "f-034",
  note: "the size in the name, before drying and planing",
}

export const BOARD_FOOT: Source = {
  kind: "handbook",
  title: "US Navy engineering aid text: the board foot",
  place: "page 6-3",
  origin: "read",
  record: "f-032",
}

export const BOARD_FOOT_SOFTWOOD: Source = {
  kind: "handbook",
  title: "Board foot, softwood: length in feet × nominal width × nominal thickness in inches ÷ 12",
  origin: "read",
  record: "f-031",
}

export const PANEL_GAP: Source = {
  kind: "handbook",
  title: "Builder tips of a panel makers' association: panel spacing",
  place: "gap at all edge and end joints",
  origin: "read",
  record: "f-045",
  note: "a recommendation, unless the maker of the sheets says otherwise",
}

export const PANEL_LAYOUT: Source = {
  kind: "handbook",
  title: "Installation notes of a panel testing agency: floor sheathing",
  place: "strength axis across the joists, two spans or more, ends on joists and staggered",
  origin: "read",
  record: "f-046",
}

export const PANEL_FASTENING: Source = {
  kind: "standard",
  title: "International Residential Code, fastening schedule",
  edition: "older item numbers, as kept in a Minnesota permit file",
  place: "Table R602.3(1), structural panels 19/32 in to 1 in: 6 in at edges, 12 in between",
  origin: "read",
  record: "d-013",
  note: "the table is written for nails; the same spacings are kept here for screws",
}

export const JOIST_TO_SILL: Source = {
  kind: "standard",
  title: "International Building Code, fastening schedule",
  place: "Table 2304.9.1, item 1: joist to sill or girder, three 8d nails driven at a slant",
  origin: "read",
  record: "d-010",
  note: "written for nails",
}

export const SCREW_BITE: Source = {
  kind: "common_practice",
  title: "How-to article on screws for a deck",
  place: "1 1/2 in into the timber below, 3/4 in to 1 in from an edge",
  origin: "read",
  record: "d-051",
}

export const SCREWS_BY_AREA: Source = {
  kind: "common_practice",
  title: "How-to article on screws for a deck",
  place: "350 screws for 100 sq ft of 6 in boards on joists at 16 in",
  origin: "read",
  record: "d-052",
  note: "counting the article's own 10 ft × 10 ft deck gives 396: the rule leaves out the end joist",
}

export const TREATED_FASTENERS: Source = {
  kind: "standard",
  title: "International Building Code",
  edition: "2018",
  place: "2304.10.5.1, fasteners in preservative-treated wood",
  origin: "read",
  record: "d-016",
}

export const BORATE_EXCEPTION: Source = {
  kind: "standard",
  title: "International Building Code",
  edition: "2012",
  place: "2304.9.5: plain steel in borate-treated wood, only indoors and dry",
  origin: "read",
  record: "d-018",
}

/** How hard a treatment is on metal, by the record of that treatment. */
export function corrosionRank(record: string): Source {
  return {
    kind: "handbook",
    title: "Southern pine producers' association: fasteners and connectors",
    origin: "read",
    record,
    note: "the order of the treatments was read; the advice for each restates the building code",
  }
}

export const SEVERE_PLACES: Source = {
  kind: "handbook",
  title: "Southern pine producers' association: fasteners and connectors",
  place: "pools, salt water, below ground, trapped water; do not mix metals",
  origin: "read",
  record: "d-029",
}

export const CORROSION_TEST: Source = {
  kind: "measured",
  title: "USDA Forest Products Laboratory, fastener corrosion at 100 percent relative humidity",
  edition: "2009",
  origin: "read",
  record: "d-030",
  note: "found electroplated zinc lasting longer than hot-dip in ACQ; codes ask for hot-dip all the same, and are followed here",
}

export const POLYPROPYLENE: Source = {
  kind: "handbook",
  title: "Table of thermal expansion of plastics, polypropylene",
  origin: "read",
  record: "h-002",
}

export const POLYPROPYLENE_HIGH: Source = {
  kind: "handbook",
  title: "Pipe table of thermal growth, polypropylene",
  origin: "read",
  record: "h-003",
  note: "lists of this plastic span 80 to 150 millionths per kelvin (from memory, h-010): look at both ends",
}

export const SNAP_TILES: Source = {
  kind: "memory",
  title: "Usual advice for floors of interlocking plastic tiles",
  place: "6 mm to 13 mm free at every edge; lie loose, never fixed at two opposite edges",
  origin: "memory",
  record: "h-012",
}

export const THERMAL_GROWTH: Source = {
  kind: "geometry",
  title: "Thermal expansion: growth = expansion × length × rise of temperature",
  record: "h-001",
}

export const BALL_NET: Source = {
  kind: "memory",
  title: "Sports-netting practice for a 40 mm ball",
  place: "mesh 30 mm at most, border rope, ties each 200 mm to 300 mm, 1.5 m to 2.5 m high",
  origin: "memory",
  record: "i-019",
}

export const BALL: Source = {
  kind: "memory",
  title: "Table tennis equipment rules: ball of 40 mm",
  origin: "memory",
  record: "j-009",
}

export const HANGING: Source = {
  kind: "handbook",
  title: "FAO catalogue of small-scale fishing gear, hanging ratios",
  place: "hung height ÷ stretched height = √(1 − ratio²)",
  origin: "read",
  record: "i-017",
}

export const SCREW_LENGTH: Source = {
  kind: "memory",
  title: "Trade habit for the length of a screw",
  place:
    "the piece on top and 1 1/4 in to 1 1/2 in into the timber below: 2 1/2 in for 5/4 boards, 3 in for 2x boards",
  origin: "memory",
  record: "d-063",
}

export const CONNECTOR_ZINC: Source = {
  kind: "standard",
  title: "International Building Code",
  edition: "2018",
  place:
    "2304.10.5.1, connectors on treated wood outdoors: as their maker or the treater says, otherwise zinc G185 at least",
  origin: "read",
  record: "d-017",
}

export const FEDERAL_ADVICE: Source = {
  kind: "handbook",
  title: "US Forest Service: corrosion of fasteners in treated wood",
  place: "hot-dip fasteners to A153 with connectors of G185; no bare aluminium",
  origin: "read",
  record: "d-023",
}

export const STAINLESS_RETENTION: Source = {
  kind: "common_practice",
  title: "Trade article on hardware for treated wood",
  place: "retentions above which stainless is advised",
  origin: "read",
  record: "d-031",
  note: "a secondary article",
}

export const STAINLESS_GRADES: Source = {
  kind: "memory",
  title: "Common practice for grades of stainless steel",
  place: "304 or 305 inland; 316 near salt water, de-icing salt or pool chemicals",
  origin: "memory",
  record: "d-032",
}

export const RETENTIONS: Source = {
  kind: "memory",
  title: "AWPA retentions by use class",
  place: "UC3B, UC4A and UC4B",
  origin: "memory",
  record: "e-006",
  note: "0.40 for ACQ and 0.21 for CA-B were also read in a trade article",
}

const USE_CATEGORY = {
  kind: "standard",
  title: "AWPA use categories, as a treaters' page defines them",
  origin: "read",
} as const

export const UC4A: Source = { ...USE_CATEGORY, place: "UC4A, ground contact, general", record: "e-001" }

export const UC4B: Source = { ...USE_CATEGORY, place: "UC4B, ground contact, heavy duty", record: "e-002" }

export const TREATERS_DISAGREE: Source = {
  kind: "common_practice",
  title: "Trade article on the change of the treating standard",
  place: "stringers that reach the ground need ground contact; treaters disagreed about joists",
  origin: "read",
  record: "e-003",
  note: "a secondary article; the evaluation criteria are followed here",
}

export const UC3: Source = {
  kind: "memory",
  title: "AWPA use categories above the ground",
  place: "UC3A coated and quick to drain, UC3B uncoated or slow to drain",
  origin: "memory",
  record: "e-005",
}

export const NEAR_GROUND_CANADA: Source = {
  kind: "standard",
  title: "Canadian Wood Council on the National Building Code",
  place: "treated wood within 150 mm of finished ground; a field-cut preservative on the cuts",
  origin: "read",
  record: "e-013",
}

export const FIELD_CUTS: Source = {
  kind: "standard",
  title: "AWPA M4, as a treaters' institute prints it",
  place: "every cut, hole or injury that may pass the treated zone",
  origin: "read",
  record: "e-008",
}

export const FIELD_PRESERVATIVE: Source = {
  kind: "standard",
  title: "AWPA M4",
  edition: "2008",
  place: "copper naphthenate with 2 % copper, 1 % where that is not to be had",
  origin: "read",
  record: "e-007",
}

export const BRUSH_COVERAGE: Source = {
  kind: "handbook",
  title: "Permit sheet of a wood preservative",
  place: "brush-on coverage a coat: 225 to 250 sq ft a gallon smooth, 100 rough; two coats, a day between",
  origin: "read",
  record: "e-010",
}

export const BRUSH_COVERAGE_TYPICAL: Source = {
  kind: "handbook",
  title: "Questions and answers of a preservative's maker",
  place: "200 sq ft a gallon",
  origin: "read",
  record: "e-012",
  note: "a secondary page; it prints the same figure as 18.6 m3: square metres a gallon are meant, 4.9 m2 a litre",
}

export const GUARD_SLOPE_SOUTH_CAROLINA: Source = {
  kind: "standard",
  title: "South Carolina's residential code, R312",
  place: "also where the ground within 36 in falls more than 3 in 12",
  origin: "read",
  record: "b-008",
}

export const FROST_ONTARIO: Source = {
  kind: "standard",
  title: "Ontario Building Code 9.12.2.2.(7)",
  place: "one storey, 55 m² at most, 600 mm at most from the ground to the underside of the joists",
  origin: "read",
  record: "a-030",
}

export const FROST_FREE_STANDING: Source = {
  kind: "standard",
  title: "International Residential Code R403.1.4.1, as amended in Connecticut",
  place: "a deck not supported by a dwelling need not reach the frost line",
  origin: "read",
  record: "a-025",
}

export const FROST_MINNESOTA: Source = {
  kind: "memory",
  title: "Minnesota Rules 1303.1600, frost depths",
  place: "zone 1 60 in, zone 2 42 in",
  origin: "memory",
  record: "a-034",
}

export const POLYETHYLENE: Source = {
  kind: "handbook",
  title: "Table of thermal expansion of plastics, polyethylene",
  place: "130 to 170 millionths per kelvin",
  origin: "read",
  record: "h-004",
}

export const POLYPROPYLENE_FILLED: Source = {
  kind: "handbook",
  title: "Table of thermal expansion of plastics, polypropylene with glass",
  origin: "read",
  record: "h-005",
}

export const POLYPROPYLENE_RANGE: Source = {
  kind: "memory",
  title: "Span of the lists for plastics",
  place: "polypropylene 80 to 150, polyethylene 120 to 200 millionths per kelvin",
  origin: "memory",
  record: "h-010",
}
