import type { Source } from "@pegbook/engine"

/** Citations of the frame, its surface and its fixings. What several areas share is in `sources.ts`. */

/** A fact of the trade that nobody publishes as a standard. */
export function practice(note: string): Source {
  return { kind: "common_practice", title: "Common practice, no source", note }
}

export const NOMINAL: Source = {
  kind: "standard",
  title: "American Softwood Lumber Standard, PS 20",
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
