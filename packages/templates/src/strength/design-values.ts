import { DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE, DESIGN_VALUES_TIMBERS } from "../sources-strength.ts"
import { type Cells, figureTable, isRead } from "./figure-table.ts"

/**
 * Published reference design values, one row a species, grade and class of size, in psi:
 * species, grade, class, Fb, Ft, Fv, Fc across the grain, Fc along it, E, Emin, specific gravity, whether the size is
 * inside the values, origin, citation. Southern Pine timbers are one published row for both classes of shape.
 */
// biome-ignore format: one published row a line
const ROWS: readonly DesignValues[] = [
  ["Douglas Fir-Larch", "Select Structural", "any width", 1500, 1000, 180, 625, 1700, 1900000, 690000, 0.5, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Douglas Fir-Larch", "No.1", "any width", 1000, 675, 180, 625, 1500, 1700000, 620000, 0.5, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Douglas Fir-Larch", "No.2", "any width", 900, 575, 180, 625, 1350, 1600000, 580000, 0.5, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Hem-Fir", "Select Structural", "any width", 1400, 925, 150, 405, 1500, 1600000, 580000, 0.43, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Hem-Fir", "No.1", "any width", 975, 625, 150, 405, 1350, 1500000, 550000, 0.43, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Hem-Fir", "No.2", "any width", 850, 525, 150, 405, 1300, 1300000, 470000, 0.43, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Spruce-Pine-Fir", "Select Structural", "any width", 1150, 700, 135, 425, 1400, 1500000, 550000, 0.42, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Spruce-Pine-Fir", "No.1/No.2", "any width", 875, 450, 135, 425, 1150, 1400000, 510000, 0.42, "no", "read", "NDS Supplement 2018, table 4A, in an open transcription"],
  ["Spruce-Pine-Fir (South)", "No.1", "any width", 875, 400, 135, 335, 1050, 1200000, 440000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Spruce-Pine-Fir (South)", "No.2", "any width", 775, 350, 135, 335, 1000, 1100000, 400000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Redwood", "No.1", "any width", 975, 575, 160, 650, 1200, 1300000, 470000, 0.44, "no", "from memory", "NDS Supplement, table 4A"],
  ["Redwood", "No.2", "any width", 925, 525, 160, 650, 950, 1200000, 440000, 0.44, "no", "from memory", "NDS Supplement, table 4A"],
  ["Redwood", "No.1 open grain", "any width", 775, 450, 160, 425, 900, 1100000, 400000, 0.37, "no", "from memory", "NDS Supplement, table 4A"],
  ["Redwood", "No.2 open grain", "any width", 725, 425, 160, 425, 700, 1000000, 370000, 0.37, "no", "from memory", "NDS Supplement, table 4A"],
  ["Western Cedars", "No.1", "any width", 725, 425, 155, 425, 1000, 1000000, 370000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Western Cedars", "No.2", "any width", 700, 425, 155, 425, 650, 1000000, 370000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Northern Species", "No.1/No.2", "any width", 625, 275, 110, 350, 850, 1100000, 400000, 0.35, "no", "from memory", "NDS Supplement, table 4A"],
  ["Western Woods", "No.2", "any width", 675, 300, 135, 335, 900, 1000000, 370000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Eastern Softwoods", "No.2", "any width", 575, 275, 140, 335, 825, 1100000, 400000, 0.36, "no", "from memory", "NDS Supplement, table 4A"],
  ["Southern Pine", "No.1", "4 in wide", 1500, 1000, 175, 565, 1650, 1600000, 580000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.1", "6 in wide", 1350, 875, 175, 565, 1550, 1600000, 580000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.1", "8 in wide", 1250, 800, 175, 565, 1500, 1600000, 580000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.1", "10 in wide", 1050, 700, 175, 565, 1450, 1600000, 580000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.1", "12 in wide", 1000, 650, 175, 565, 1400, 1600000, 580000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.2", "4 in wide", 1100, 675, 175, 565, 1450, 1400000, 510000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.2", "6 in wide", 1000, 600, 175, 565, 1400, 1400000, 510000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.2", "8 in wide", 925, 550, 175, 565, 1350, 1400000, 510000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.2", "10 in wide", 800, 475, 175, 565, 1300, 1400000, 510000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Southern Pine", "No.2", "12 in wide", 750, 450, 175, 565, 1250, 1400000, 510000, 0.55, "yes", "from memory", "NDS Supplement, table 4B, June 2013; agrees with the MPa values read"],
  ["Hem-Fir", "No.2", "beams and stringers", 675, 350, 140, 405, 500, 1100000, 400000, 0.43, "no", "read", "NDS Supplement, table 4D, quoted in a course problem (4.30)"],
  ["Hem-Fir", "No.2", "posts and timbers", 575, 375, 140, 405, 575, 1100000, 400000, 0.43, "no", "read", "NDS Supplement, table 4D, quoted in a course problem (4.30)"],
  ["Douglas Fir-Larch", "No.1", "beams and stringers", 1350, 675, 170, 625, 925, 1600000, 580000, 0.5, "no", "read", "NDS Supplement, table 4D, from a course problem (4.17)"],
  ["Douglas Fir-Larch", "No.1", "posts and timbers", 1200, 825, 170, 625, 1000, 1600000, 580000, 0.5, "no", "read", "NDS Supplement, table 4D, from a course problem (4.17)"],
  ["Southern Pine", "No.2", "beams and stringers", 850, 550, 165, 375, 525, 1200000, 440000, 0.55, "yes", "from memory", "NDS Supplement, table 4D"],
  ["Southern Pine", "No.2", "posts and timbers", 850, 550, 165, 375, 525, 1200000, 440000, 0.55, "yes", "from memory", "NDS Supplement, table 4D"],
]

type DesignValues = readonly [
  species: string,
  grade: string,
  sizes: string,
  fb: number,
  ft: number,
  fv: number,
  fcPerp: number,
  fc: number,
  e: number,
  eMin: number,
  gravity: number,
  sizeInside: "yes" | "no",
  origin: "read" | "from memory",
  citation: string,
]

/** The text by which a row is found: species, grade and class of size. */
export const designKey = (species: string, grade: string, sizes: string): string =>
  `${species} | ${grade} | ${sizes}`

/** Every grade in the table, each once. */
export const GRADES: readonly string[] = [...new Set([...ROWS.map(([, grade]) => grade), "No.2"])]

const psi = (value: number): string => `${value} psi`

const cells: readonly Cells[] = ROWS.map((row) => ({
  key: designKey(row[0], row[1], row[2]),
  species: row[0],
  grade: row[1],
  sizes: row[2],
  fb: psi(row[3]),
  ft: psi(row[4]),
  fv: psi(row[5]),
  fc_perp: psi(row[6]),
  fc: psi(row[7]),
  e: psi(row[8]),
  e_min: psi(row[9]),
  gravity: String(row[10]),
  size_inside: row[11],
  origin: row[12],
  citation: row[13],
}))

export const designValues = figureTable({
  name: "design_values",
  label: "Published strengths of graded timber",
  why: "What timber of a species and grade carries when it is dry and the load lasts ten years in all, before anything is taken off or added.",
  sources: [DESIGN_VALUES, DESIGN_VALUES_SOUTHERN_PINE, DESIGN_VALUES_TIMBERS],
  columns: {
    key: { label: "Found by", measure: "text", why: "Species, grade and class of size in one text." },
    species: { label: "Species", measure: "text", why: "The species or the group sold under one name." },
    grade: { label: "Grade", measure: "text", why: "The grade stamped on the piece." },
    sizes: { label: "Sizes", measure: "text", why: "Which sizes the row is for." },
    fb: { label: "Bending", measure: "stress", why: "Fb, at the edge of a bent piece." },
    ft: { label: "Tension", measure: "stress", why: "Ft, along the grain." },
    fv: { label: "Shear", measure: "stress", why: "Fv, along the grain near the supports." },
    fc_perp: {
      label: "Bearing",
      measure: "stress",
      why: "Fc across the grain, where a piece sits on its support.",
    },
    fc: { label: "Compression", measure: "stress", why: "Fc along the grain, as in a post." },
    e: { label: "Stiffness", measure: "stress", why: "E, which decides how far a piece sags." },
    e_min: { label: "Stiffness, low", measure: "stress", why: "Emin, for sideways buckling." },
    gravity: {
      label: "Specific gravity",
      measure: "ratio",
      why: "Dry weight against water; decides what a fastener holds.",
    },
    size_inside: {
      label: "Size already inside",
      measure: "yes_no",
      why: "Southern Pine is published by width, so no size factor is put on top.",
    },
    origin: isRead,
    citation: {
      label: "Who says so",
      measure: "text",
      why: "Where the row was read, or what it was recalled from.",
    },
  },
  rows: cells,
})
