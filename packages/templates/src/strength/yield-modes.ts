import type { Column, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { FASTENER_STEEL, SCREW_ROOT, SPECIFIC_GRAVITY, YIELD_MODES } from "../sources-actions.ts"
import { figureTable } from "./figure-table.ts"

const of = (name: string): string => `INDEX(yield_factors.${name}; 1)`

/**
 * Figures of the yield-mode equations, in one row.
 * Source: National Design Specification for Wood Construction, 12.3.1 to 12.3.3, from memory.
 */
export const yieldFactors: TableEntry = {
  kind: "table",
  name: "yield_factors",
  label: "Figures of how a joint yields",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [YIELD_MODES],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "thick_from",
      "A fastener is thick from",
      "length",
      "0.25 in",
      "Round a thick one the direction of the grain counts.",
      YIELD_MODES,
    ),
    figureColumn(
      "thin_bearing",
      "Bearing under thin ones",
      "stress",
      "16600 psi",
      "Times the wood's specific gravity to the power beside it.",
      YIELD_MODES,
    ),
    figureColumn("thin_power", "Power of the gravity, thin", "ratio", "1.84", "As published.", YIELD_MODES),
    figureColumn(
      "along_bearing",
      "Bearing along the grain, thick",
      "stress",
      "11200 psi",
      "Times the wood's specific gravity.",
      YIELD_MODES,
    ),
    figureColumn(
      "across_bearing",
      "Bearing across the grain, thick",
      "stress",
      "6100 psi",
      "Of a bolt as thick as the length beside it; a thicker one splits the wood sooner.",
      YIELD_MODES,
    ),
    figureColumn(
      "across_power",
      "Power of the gravity, across",
      "ratio",
      "1.45",
      "As published.",
      YIELD_MODES,
    ),
    figureColumn(
      "across_diameter",
      "Thickness that it is for",
      "length",
      "1 in",
      "The bearing falls with the root of the thickness over this.",
      YIELD_MODES,
    ),
    figureColumn(
      "steel_bearing",
      "Bearing of thin steel",
      "stress",
      "61850 psi",
      "Of the sheet that ties and hangers are bent from.",
      FASTENER_STEEL,
    ),
    figureColumn(
      "crush_share",
      "Reduction where wood is crushed",
      "ratio",
      "4",
      "Modes Im and Is, thick fasteners. Larger for the same safety, as wood differs from board to board.",
      YIELD_MODES,
    ),
    figureColumn(
      "turn_share",
      "Reduction where it turns",
      "ratio",
      "3.6",
      "Of mode II, as published.",
      YIELD_MODES,
    ),
    figureColumn("bend_share", "Reduction where it bends", "ratio", "3.2", "Modes III and IV.", YIELD_MODES),
    figureColumn(
      "across_share",
      "Reduction across the grain, times",
      "ratio",
      "1.25",
      "Where either piece is loaded across its grain.",
      YIELD_MODES,
    ),
    figureColumn(
      "thin_share",
      "Reduction of thin ones, at least",
      "ratio",
      "2.2",
      "All modes of nails and screws.",
      YIELD_MODES,
    ),
    figureColumn(
      "thin_share_length",
      "It grows by one with each",
      "length",
      "0.1 in",
      "Of thickness: thicker nails and screws lose more.",
      YIELD_MODES,
    ),
    figureColumn("thin_share_from", "And begins at", "ratio", "0.5", "Added to it.", YIELD_MODES),
    figureColumn(
      "screw_root",
      "A screw's core over its thread",
      "ratio",
      "0.79",
      "Between the threads it is this much as thick, and there it bends. The least of the usual sizes.",
      SCREW_ROOT,
    ),
  ],
}

/** Steel of fasteners: how hard it is bent before it stays bent. Source: NDS, appendix I, from memory. */
export const bendingYields: TableEntry = figureTable({
  name: "bending_yields",
  label: "Steel of nails and screws, by thickness",
  why: "Thin wire is drawn harder, so it bends less easily for its thickness. Bolts are the last row.",
  sources: [FASTENER_STEEL],
  columns: {
    diameter: { label: "Thicker than", measure: "length", why: "Of the core." },
    bends: { label: "Bends at", measure: "stress", why: "Fyb of the standard." },
  },
  rows: [
    { diameter: "0 in", bends: "100 ksi" },
    { diameter: "0.142 in", bends: "90 ksi" },
    { diameter: "0.177 in", bends: "80 ksi" },
    { diameter: "0.236 in", bends: "70 ksi" },
    { diameter: "0.273 in", bends: "60 ksi" },
    { diameter: "0.344 in", bends: "45 ksi" },
  ],
})

/** A joint for {@link yieldColumns}: formulas for its row. */
export interface YieldingJoint {
  /** "screw", "nail" or "bolt". */
  readonly fastener: string
  /** Over the thread. */
  readonly diameter: string
  /** How much of it is in the piece that holds, and in the piece that is fastened on. */
  readonly holds: string
  readonly through: string
  readonly gravity: string
  /** Whether the piece that holds, and the other, are pushed across their grain. */
  readonly holdsAcross: string
  readonly throughAcross: string
  /** Whether the other piece is a metal connector. */
  readonly throughSteel: string
}

const bearing = (across: string): string =>
  `IF(core < ${of("thick_from")}; ${of("thin_bearing")} * gravity ^ ${of("thin_power")}; IF(${across}; ${of("across_bearing")} * gravity ^ ${of("across_power")} / SQRT(core / ${of("across_diameter")}); ${of("along_bearing")} * gravity))`

/** Reduction term of the thick: the mode's own, times that across the grain. */
const reduction = (thick: string): string =>
  `IF(core < ${of("thick_from")}; thin_reduction; across_reduction * ${of(thick)})`

/**
 * Columns of one joint a row, in single shear: bearing strengths, coefficients, the six yield modes of a dowel, the least
 * of them and its name. Lengths and strengths carry their units; `least` is a force, for dry wood and loads of ten years.
 * Source: National Design Specification for Wood Construction, table 12.3.1A (from memory); held against a published 105 lb of a
 * 10d nail and 141 lb of a 16d nail.
 */
export function yieldColumns(joint: YieldingJoint): readonly Column[] {
  const share = (name: string, label: string, formula: string, why: string): Column =>
    column(name, label, "ratio", formula, why, YIELD_MODES)
  const mode = (name: string, label: string, formula: string, why: string): Column =>
    column(name, label, "force", formula, why, YIELD_MODES)
  return [
    column("through", "Through the other piece", "length", joint.through, "As thick as it is.", YIELD_MODES),
    column("holds", "In the piece that holds", "length", joint.holds, "As in the joints.", YIELD_MODES),
    column(
      "gravity",
      "Specific gravity of the wood",
      "ratio",
      joint.gravity,
      "Of both pieces.",
      SPECIFIC_GRAVITY,
    ),
    column(
      "core",
      "Thickness that bends",
      "length",
      `${joint.diameter} * IF(${joint.fastener} = "screw"; ${of("screw_root")}; 1)`,
      "Of a screw between its threads; of a bolt its shank: buy it long enough that no thread lies in the joint.",
      SCREW_ROOT,
    ),
    column(
      "bends",
      "Its steel bends at",
      "stress",
      `IF(${joint.fastener} = "bolt"; INDEX(bending_yields.bends; COUNT(bending_yields.bends)); LOOKUP(core; bending_yields.diameter; bending_yields.bends))`,
      "Fyb of the standard.",
      FASTENER_STEEL,
    ),
    column(
      "held_bearing",
      "Wood that holds bears",
      "stress",
      bearing(joint.holdsAcross),
      "Fem: under the fastener, in the piece that holds.",
      YIELD_MODES,
    ),
    column(
      "through_bearing",
      "The other piece bears",
      "stress",
      `IF(${joint.throughSteel}; ${of("steel_bearing")}; ${bearing(joint.throughAcross)})`,
      "Fes: under the fastener, in the other piece.",
      YIELD_MODES,
    ),
    share(
      "strengths",
      "One strength over the other",
      "held_bearing / through_bearing",
      "Re: 1 where both are loaded alike.",
    ),
    share("lengths", "One length over the other", "holds / through", "Rt of the standard."),
    share(
      "thin_reduction",
      "Reduction, thin",
      `MAX(${of("thin_share")}; core / ${of("thin_share_length")} + ${of("thin_share_from")})`,
      "KD: what a test shows, over what is allowed.",
    ),
    share(
      "across_reduction",
      "Reduction for the grain",
      `IF(OR(${joint.holdsAcross}; ${joint.throughAcross}); ${of("across_share")}; 1)`,
      "Of thick fasteners only.",
    ),
    share(
      "turn",
      "Coefficient of turning",
      "(SQRT(strengths + 2 * strengths ^ 2 * (1 + lengths + lengths ^ 2) + lengths ^ 2 * strengths ^ 3) - strengths * (1 + lengths)) / (1 + strengths)",
      "k1 of the standard.",
    ),
    share(
      "bend_held",
      "Coefficient of bending in the piece that holds",
      "SQRT(2 * (1 + strengths) + 2 * bends * (1 + 2 * strengths) * core ^ 2 / (3 * held_bearing * holds ^ 2)) - 1",
      "k2 of the standard.",
    ),
    share(
      "bend_through",
      "Coefficient of bending in the other",
      "SQRT(2 * (1 + strengths) / strengths + 2 * bends * (2 + strengths) * core ^ 2 / (3 * held_bearing * through ^ 2)) - 1",
      "k3 of the standard.",
    ),
    mode(
      "im",
      "Im: wood that holds is crushed",
      `core * holds * held_bearing / ${reduction("crush_share")}`,
      "The fastener stays straight.",
    ),
    mode(
      "is",
      "Is: the other piece is crushed",
      `core * through * through_bearing / ${reduction("crush_share")}`,
      "The fastener stays straight.",
    ),
    mode(
      "ii",
      "II: it turns in both",
      `turn * core * through * through_bearing / ${reduction("turn_share")}`,
      "Straight, but aslant.",
    ),
    mode(
      "iiim",
      "IIIm: it bends in the other piece",
      `bend_held * core * holds * held_bearing / ((1 + 2 * strengths) * ${reduction("bend_share")})`,
      "And crushes the piece that holds.",
    ),
    mode(
      "iiis",
      "IIIs: it bends in the piece that holds",
      `bend_through * core * through * held_bearing / ((2 + strengths) * ${reduction("bend_share")})`,
      "And crushes the other.",
    ),
    mode(
      "iv",
      "IV: it bends in both",
      `core ^ 2 / ${reduction("bend_share")} * SQRT(2 * held_bearing * bends / (3 * (1 + strengths)))`,
      "At the seam between the two.",
    ),
    mode(
      "least",
      "Least of the six",
      "MIN(im; is; ii; iiim; iiis; iv)",
      "The joint gives way in the easiest manner.",
    ),
    column(
      "governs",
      "In this manner",
      "text",
      'IF(least = im; "Im"; IF(least = is; "Is"; IF(least = ii; "II"; IF(least = iiim; "IIIm"; IF(least = iiis; "IIIs"; "IV")))))',
      "Thicker pieces help against I, II and III; only a thicker fastener or heavier wood helps against IV.",
      YIELD_MODES,
    ),
  ]
}
