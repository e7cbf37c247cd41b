import type { TableEntry } from "@pegbook/engine"
import {
  LUMBER_FLOOR,
  PANEL_CAPACITIES,
  PANEL_LIVE_LOADS,
  PANEL_METHOD,
  PANEL_RATINGS,
  SUBFLOOR_CANADA,
} from "../sources-strength.ts"
import { figureTable, isRead } from "./figure-table.ts"

/** Strand board as read, then plywood of three plies as recalled: rating, FbS, Fs(Ib/Q), EI; lb and in for a strip 1 ft wide. */
const CAPACITIES = [
  ["OSB", "24/0", 300, 155, 60000, "read"],
  ["OSB", "24/16", 385, 165, 78000, "read"],
  ["OSB", "32/16", 445, 180, 115000, "read"],
  ["OSB", "48/24", 1000, 220, 400000, "read"],
  ["OSB", "16 oc", 500, 170, 150000, "read"],
  ["OSB", "24 oc", 770, 215, 300000, "read"],
  ["OSB", "48 oc", 1900, 305, 1150000, "read"],
  ["plywood", "24/0", 250, 120, 66000, "from memory"],
  ["plywood", "24/16", 320, 130, 86000, "from memory"],
  ["plywood", "32/16", 370, 140, 125000, "from memory"],
  ["plywood", "48/24", 845, 165, 440000, "from memory"],
  ["plywood", "16 oc", 415, 130, 165000, "from memory"],
  ["plywood", "24 oc", 640, 165, 330000, "from memory"],
  ["plywood", "48 oc", 1600, 220, 1265000, "from memory"],
] as const

export const PANEL_KINDS: readonly string[] = ["OSB", "plywood"]

export const panelCapacities: TableEntry = figureTable({
  name: "panel_capacities",
  label: "What a strip of panel takes, strength axis across the joists",
  why: "Panels are sold by span rating; behind each rating stand a bending strength, a shear strength and a stiffness.",
  sources: [PANEL_CAPACITIES],
  columns: {
    key: { label: "Found by", measure: "text", why: "Kind and span rating in one text." },
    bending: {
      label: "Bending, strip 1 ft wide",
      measure: "moment",
      why: "FbS, pound-inches in each foot of width.",
    },
    shear: {
      label: "Rolling shear, strip 1 ft wide",
      measure: "force",
      why: "Fs(Ib/Q), pounds in each foot of width.",
    },
    stiffness: {
      label: "Stiffness, strip 1 ft wide, EI over one inch",
      measure: "moment",
      why: "EI is published in lb·in²; it is written here for each inch of the other inch.",
    },
    origin: isRead,
  },
  rows: CAPACITIES.map(([kind, rating, bending, shear, stiffness, origin]) => ({
    key: `${kind} | ${rating}`,
    bending: `${bending} lb·in`,
    shear: `${shear} lb`,
    stiffness: `${stiffness} lb·in`,
    origin,
  })),
})

/** Spans: constants of bending, shear and sag as published, then as shares of w L², w L and w L⁴ ÷ (E I). */
export const panelSpanCases: TableEntry = figureTable({
  name: "panel_span_cases",
  label: "A panel over one, two or three spans",
  why: "A sheet that runs over several joists bends less than one that lies on two.",
  sources: [PANEL_METHOD],
  columns: {
    spans: { label: "Spans", measure: "count", why: "Bays that one piece of the panel covers." },
    bending: {
      label: "Moment: w L² over",
      measure: "ratio",
      why: "96 or 120 in the published form, with inches and feet mixed.",
    },
    shear: { label: "Shear: share of w L", measure: "ratio", why: "24, 19.2 or 20 in the published form." },
    sag: {
      label: "Sag: w L⁴ over E I times",
      measure: "ratio",
      why: "921.6, 2220 or 1743 in the published form.",
    },
    origin: isRead,
  },
  rows: [
    { spans: "1", bending: "8", shear: "0.5", sag: "76.8", origin: "from memory" },
    { spans: "2", bending: "8", shear: "0.625", sag: "185", origin: "from memory" },
    { spans: "3", bending: "10", shear: "0.6", sag: "145.25", origin: "read" },
  ],
})

const RATINGS = [
  ["24/16", "7/16, 1/2", "16 in"],
  ["32/16", "15/32, 1/2, 5/8", "16 in"],
  ["48/24", "23/32, 3/4, 7/8", "24 in"],
  ["60/32", "7/8, 1", "32 in"],
  ["16 oc", "1/2, 19/32, 5/8", "16 in"],
  ["24 oc", "23/32, 3/4", "24 in"],
  ["48 oc", "1-3/32, 1-1/8", "48 in"],
] as const

/** Every rating that one of the tables knows. */
export const PANEL_SPAN_RATINGS: readonly string[] = [
  "24/0",
  ...RATINGS.map(([rating]) => rating),
  "20 oc",
  "40/20",
  "32 oc",
]

export const panelRatings: TableEntry = figureTable({
  name: "panel_ratings",
  label: "Span ratings under a floor",
  why: "The second number of a rating, or the only one, is the greatest joist spacing in inches for a floor at home.",
  sources: [PANEL_RATINGS],
  columns: {
    rating: { label: "Span rating", measure: "text", why: "Stamped on the sheet." },
    thicknesses: {
      label: "Thicknesses sold, inches",
      measure: "text",
      why: "Performance categories under this rating.",
    },
    spacing_most: {
      label: "Joists no further apart than",
      measure: "length",
      why: "Over two spans or more, strength axis across the joists.",
    },
    origin: isRead,
  },
  rows: RATINGS.map(([rating, thicknesses, spacing_most]) => ({
    rating,
    thicknesses,
    spacing_most,
    origin: "from memory",
  })),
})

/** Ratings of one row, least thickness, and live loads by spacing in inches. */
const LIVE_LOADS = [
  [["16 oc", "24/16", "32/16"], { 12: 185, 16: 100 }],
  [["20 oc", "40/20"], { 12: 270, 16: 150 }],
  [["24 oc", "48/24"], { 12: 430, 16: 240, 24: 100 }],
  [["32 oc", "60/32"], { 16: 430, 24: 185 }],
  [["48 oc"], { 24: 290, 40: 100, 48: 55 }],
] as const

export const panelLiveLoads: TableEntry = figureTable({
  name: "panel_live_loads",
  label: "Recommended live loads on panel floors",
  why: "What the panel makers recommend. It is not the calculation: near the rated span it is more careful, and at close spacing less so.",
  sources: [PANEL_LIVE_LOADS],
  columns: {
    key: { label: "Found by", measure: "text", why: "Rating, and joist spacing in inches." },
    load: {
      label: "Live load",
      measure: "pressure",
      why: "With 10 psf of dead load, sag of the span over 360, dry.",
    },
    origin: isRead,
  },
  rows: LIVE_LOADS.flatMap(([ratings, loads]) =>
    ratings.flatMap((rating) =>
      Object.entries(loads).map(([spacing, load]) => ({
        key: `${rating} | ${spacing}`,
        load: `${load} psf`,
        origin: "from memory",
      })),
    ),
  ),
})

export const subfloorCanada: TableEntry = figureTable({
  name: "subfloor_canada",
  label: "Canada: thinnest subfloor",
  why: "A prescriptive table: no calculation, just the thickness for a joist spacing.",
  sources: [SUBFLOOR_CANADA],
  columns: {
    spacing_most: { label: "Joists no further apart than", measure: "length", why: "Centre to centre." },
    plywood: { label: "Plywood, strand board O-2", measure: "length", why: "Thinnest sheet." },
    strand_board: { label: "Strand board O-1, waferboard", measure: "length", why: "Thinnest sheet." },
    particleboard: { label: "Particleboard", measure: "length", why: "Thinnest sheet." },
    lumber: { label: "Boards", measure: "length", why: "Thinnest board." },
    marks: { label: "Panel mark, alone; with underlay", measure: "text", why: "Stamped on Canadian sheets." },
  },
  rows: [
    {
      spacing_most: "400 mm",
      plywood: "15.5 mm",
      strand_board: "15.9 mm",
      particleboard: "15.9 mm",
      lumber: "17 mm",
      marks: "1F16; 2F16",
    },
    {
      spacing_most: "600 mm",
      plywood: "18.5 mm",
      strand_board: "19 mm",
      particleboard: "25.4 mm",
      lumber: "19 mm",
      marks: "1F24; 2F24",
    },
  ],
})

export const lumberFloor: TableEntry = figureTable({
  name: "lumber_floor",
  label: "Thinnest boards under a floor",
  why: "Boards instead of sheets, laid across the joists or at 45 degrees.",
  sources: [LUMBER_FLOOR],
  columns: {
    spacing_most: { label: "Joists no further apart than", measure: "length", why: "Centre to centre." },
    across: { label: "Across the joists", measure: "length", why: "Net thickness." },
    diagonal: { label: "Diagonal", measure: "length", why: "Net thickness." },
  },
  rows: [
    { spacing_most: "16 in", across: "5/8 in", diagonal: "5/8 in" },
    { spacing_most: "24 in", across: "11/16 in", diagonal: "3/4 in" },
  ],
})
