import type { Section } from "@pegbook/engine"
import type { BoughtThing } from "../solvers/bought-things.ts"
import { haulListReads, solveHaulList } from "../solvers/haul-list.ts"
import type { TimberMember } from "../solvers/timber-problem.ts"
import { ARITHMETIC, GEOMETRY, PS_20, USER } from "../sources.ts"
import { TREATED_WEIGHT, TREATING_WATER, WOOD_DENSITY } from "../sources-deck.ts"
import { lifts } from "./lifts.ts"
import { memberMasses } from "./member-masses.ts"
import type { PlacedMaterial } from "./placed-materials.ts"

const ofRow = (size: "thickness" | "depth"): string =>
  `INDEX(dressed_sizes.${size}; MATCH(size; dressed_sizes.nominal; 0))`

/**
 * What each piece and all of it weighs: by the user's own masses, or by density and size.
 *
 * Needs: stock_to_buy, timber_pieces, what the things, members and materials name, the wood, dressed_sizes.
 */
export function massesOf(
  things: readonly BoughtThing[],
  members: readonly TimberMember[],
  materials: readonly PlacedMaterial[],
): Section {
  return {
    id: "masses",
    title: "Weights",
    says: "How heavy things are when you lift and haul them. Fresh treated timber holds as much water as wood.",
    entries: [
      {
        kind: "figure",
        name: "water_density",
        label: "Density of water",
        measure: "density",
        value: "1000 kg/m3",
        why: "Wood is weighed against it.",
        sources: [WOOD_DENSITY],
      },
      {
        kind: "formula",
        name: "wood_density_dry",
        label: "Density of the timber, dry",
        measure: "density",
        formula: "water_density * wood_gravity * (1 + moisture_dry)",
        why: "As it will be after a summer in place.",
        sources: [WOOD_DENSITY],
      },
      {
        kind: "figure",
        name: "treating_water",
        label: "Water from treating",
        measure: "density",
        value: "32 lb/ft3",
        why: "Timber is soaked under pressure. Fresh from the treater, it drips.",
        sources: [TREATING_WATER],
      },
      {
        kind: "input",
        name: "timber_fresh",
        label: "Fresh from the treater",
        measure: "yes_no",
        default: "yes",
        why: "Plan for yes: it often is. No: it was dried after treating, or it was never treated.",
        sources: [USER],
      },
      {
        kind: "formula",
        name: "wood_density_bought",
        label: "Density of the timber, as bought",
        measure: "density",
        formula:
          "IF(timber_fresh; wood_density_dry + treating_water; water_density * wood_gravity * (1 + moisture_laid))",
        why: "What you carry.",
        sources: [WOOD_DENSITY, TREATED_WEIGHT, TREATING_WATER],
      },
      {
        kind: "table",
        name: "timber_weights",
        label: "Weight of the timber",
        rows: { kind: "formula", formula: "COUNT(stock_to_buy.length)" },
        why: "One size and length a row, as it is bought.",
        sources: [GEOMETRY, WOOD_DENSITY],
        columns: [
          {
            name: "size",
            label: "Size",
            measure: "text",
            formula: "INDEX(stock_to_buy.size; ROW())",
            why: "What is bought.",
            sources: [ARITHMETIC],
          },
          {
            name: "length",
            label: "Length",
            measure: "length",
            formula: "INDEX(stock_to_buy.length; ROW())",
            why: "Of one piece.",
            sources: [ARITHMETIC],
          },
          {
            name: "count",
            label: "Pieces",
            measure: "count",
            formula: "INDEX(stock_to_buy.count; ROW())",
            why: "How many are bought.",
            sources: [ARITHMETIC],
          },
          {
            name: "volume",
            label: "Wood in one",
            measure: "volume",
            formula: `length * ${ofRow("thickness")} * ${ofRow("depth")}`,
            why: "By the real size. By the size in the name it would come out a third too heavy.",
            sources: [PS_20],
          },
          {
            name: "as_bought",
            label: "One piece, as bought",
            measure: "mass",
            formula: "volume * wood_density_bought",
            why: "What you lift.",
            sources: [WOOD_DENSITY],
          },
          {
            name: "dry",
            label: "One piece, dry",
            measure: "mass",
            formula: "volume * wood_density_dry",
            why: "What it will weigh when it has dried.",
            sources: [WOOD_DENSITY],
          },
        ],
      },
      {
        kind: "formula",
        name: "timber_mass",
        label: "All timber, as bought",
        measure: "mass",
        formula: "SUMPRODUCT(timber_weights.as_bought; timber_weights.count)",
        why: "By density and size; a weight of your own, below, goes before this.",
        sources: [WOOD_DENSITY],
      },
      ...memberMasses(members, materials),
      {
        kind: "table",
        name: "masses",
        label: "Your weights",
        rows: { kind: "input", most: 200, default: [] },
        why: "Put one piece on a scale, or ask. A row here goes before what density and size say.",
        sources: [USER],
        columns: [
          {
            name: "item",
            label: "What",
            measure: "text",
            why: "The timber's size, or the name of the thing as on the buying list.",
            sources: [USER],
          },
          {
            name: "unit",
            label: "By",
            measure: "text",
            why: "What the weight is of: each, or a foot or a metre of timber.",
            sources: [USER],
          },
          {
            name: "mass",
            label: "Weight",
            measure: "mass",
            why: "As it is lifted.",
            sources: [USER],
          },
        ],
      },
      {
        kind: "table",
        name: "haul_list",
        label: "To haul",
        rows: { kind: "solved", from: haulListReads(things), solve: solveHaulList(things) },
        why: "What you load yourself. Stone is delivered; it is counted only if you gave it a weight.",
        sources: [ARITHMETIC, USER],
        columns: [
          {
            name: "item",
            label: "What",
            measure: "text",
            why: "As on the buying list.",
            sources: [ARITHMETIC],
          },
          {
            name: "length",
            label: "Length",
            measure: "length",
            why: "Of timber, one piece. Nothing for what has no length.",
            sources: [ARITHMETIC],
          },
          {
            name: "quantity",
            label: "How much",
            measure: "ratio",
            why: "As bought.",
            sources: [ARITHMETIC],
          },
          {
            name: "unit",
            label: "Unit",
            measure: "text",
            why: "Of the quantity.",
            sources: [ARITHMETIC],
          },
          {
            name: "one",
            label: "One piece",
            measure: "mass",
            why: "Nothing for what is not counted by the piece.",
            sources: [USER, WOOD_DENSITY],
          },
          {
            name: "mass",
            label: "All of it",
            measure: "mass",
            why: "Pieces times one piece.",
            sources: [ARITHMETIC],
          },
          {
            name: "from",
            label: "By",
            measure: "text",
            why: "Your own weights, or density and size.",
            sources: [USER, WOOD_DENSITY],
          },
        ],
      },
      {
        kind: "formula",
        name: "haul_mass",
        label: "Weight to haul",
        measure: "mass",
        formula: "SUM(haul_list.mass)",
        why: "Everything on that list.",
        sources: [ARITHMETIC],
      },
      {
        kind: "formula",
        name: "heaviest_piece",
        label: "Heaviest single piece",
        measure: "mass",
        formula: "MAX(haul_list.one)",
        why: "The one that decides how many people you need.",
        sources: [ARITHMETIC],
      },
      lifts,
    ],
  }
}
