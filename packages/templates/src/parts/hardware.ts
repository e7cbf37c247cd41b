import type { Entry } from "@pegbook/engine"
import { ARITHMETIC, GEOMETRY, USER } from "../sources.ts"
import { CONNECTOR_ZINC, practice, SEVERE_PLACES } from "../sources-frame.ts"
import { ofCoating } from "./fastener-corrosion.ts"
import { rowChoice } from "./row-choice.ts"

/** A metal piece that joins timber. */
export interface Hardware {
  /** One of them, in the reader's words: "tie". */
  readonly piece: string
  /** Where it goes, as a row of the table: "crossing ties". Once in a template. */
  readonly wanted: string
  /** How many: a formula. */
  readonly number: string
}

const CONNECTOR_COATINGS = [
  { coating: "zinc G60 or G90", rank: "2", family: "zinc" },
  { coating: "zinc G185", rank: "3", family: "zinc" },
  { coating: "hot-dip zinc after making", rank: "3", family: "zinc" },
  { coating: "stainless 304", rank: "4", family: "stainless" },
  { coating: "stainless 316", rank: "5", family: "stainless" },
]

/**
 * Ties and hangers by count, their nails, and whether their metal suits the timber and the screws. Nothing where there are
 * none. Needs: the numbers, corrosion_demands, fastener_reason, screw_coating, screw_coatings.
 */
export function hardwareOf(pieces: readonly Hardware[]): readonly Entry[] {
  if (pieces.length === 0) return []
  return [
    {
      kind: "table",
      name: "connector_coatings",
      label: "How well metal connectors are protected",
      rows: { kind: "figures" },
      why: "The same order of ranks as for the screws. The number after the G is how much zinc the sheet carries.",
      sources: [CONNECTOR_ZINC, practice("ranks of protection")],
      columns: [
        {
          name: "coating",
          label: "Connector",
          measure: "text",
          values: CONNECTOR_COATINGS.map(({ coating }) => coating),
          why: "It is stamped on the piece or printed on its label.",
          sources: [CONNECTOR_ZINC],
        },
        {
          name: "rank",
          label: "Rank",
          measure: "count",
          values: CONNECTOR_COATINGS.map(({ rank }) => rank),
          why: "The code takes zinc G185 as the least on treated wood outdoors, where the makers say nothing else.",
          sources: [CONNECTOR_ZINC],
        },
        {
          name: "family",
          label: "Metal",
          measure: "text",
          values: CONNECTOR_COATINGS.map(({ family }) => family),
          why: "Two metals that touch in wet wood make a small battery, and one of them is eaten.",
          sources: [SEVERE_PLACES],
        },
      ],
    },
    {
      kind: "input",
      name: "connector_coating",
      label: "Metal connectors",
      measure: "text",
      default: "zinc G185",
      choices: CONNECTOR_COATINGS.map(({ coating }) => coating),
      why: "Ties and hangers are thin: where the zinc is gone, the steel is soon gone as well.",
      sources: [USER, CONNECTOR_ZINC],
    },
    {
      kind: "input",
      name: "nails_per_connector",
      label: "Nails in one connector",
      measure: "count",
      default: "8",
      least: "1",
      most: "60",
      why: "Every hole that its maker says, filled with the nail or screw that he names. Read it off the piece that you buy.",
      sources: [USER, practice("a small tie takes about eight")],
      cautions: [
        "Use the nails or screws that the maker of the connector names, in every hole that he says.",
      ],
    },
    {
      kind: "table",
      name: "hardware",
      label: "Ties and hangers",
      rows: { kind: "figures" },
      why: "One a place, so they are counted where they go.",
      sources: [GEOMETRY],
      columns: [
        {
          name: "wanted",
          label: "What for",
          measure: "text",
          values: pieces.map(({ wanted }) => wanted),
          why: "Where they go.",
          sources: [GEOMETRY],
        },
        {
          name: "piece",
          label: "Piece",
          measure: "text",
          values: pieces.map(({ piece }) => piece),
          why: "What to ask for.",
          sources: [USER],
        },
        {
          name: "number",
          label: "Pieces",
          measure: "count",
          formula: rowChoice(
            "wanted",
            pieces.map(({ wanted, number }) => ({ row: wanted, formula: number })),
          ),
          why: "One at each place.",
          sources: [GEOMETRY],
        },
        {
          name: "nails",
          label: "Nails",
          measure: "count",
          formula: "number * nails_per_connector",
          why: "Of the connectors' own metal.",
          sources: [ARITHMETIC, SEVERE_PLACES],
        },
        {
          name: "coating",
          label: "Metal or coating",
          measure: "text",
          formula: "connector_coating",
          why: "Connectors and their nails alike.",
          sources: [SEVERE_PLACES],
        },
      ],
    },
    {
      kind: "formula",
      name: "connector_nail_count",
      label: "Nails for connectors",
      measure: "count",
      formula: "SUM(hardware.nails)",
      why: "Over all connectors, before any spare.",
      sources: [ARITHMETIC],
    },
    {
      kind: "formula",
      name: "connector_needed",
      label: "Least connector for this timber and place",
      measure: "text",
      formula:
        "INDEX(connector_coatings.coating; MATCH(MAX(MIN(connector_coatings.rank); MAX(corrosion_demands.needs)); connector_coatings.rank; 0))",
      why: "The first in the table that reaches the rank.",
      sources: [CONNECTOR_ZINC],
    },
    {
      kind: "check",
      name: "connector_corrosion_check",
      label: "Connectors that the timber does not eat",
      measure: "count",
      demand: "MAX(corrosion_demands.needs)",
      limit: ofCoating("connector_coatings.rank", "connector_coating"),
      sense: "at_most",
      why: "A tie that has rusted through holds nothing, and nobody sees it under the surface.",
      sources: [CONNECTOR_ZINC, SEVERE_PLACES],
      advice: ["Take {connector_needed} or better. {fastener_reason}"],
    },
    {
      kind: "check",
      name: "metals_match_check",
      label: "Screws and connectors of one metal",
      measure: "count",
      demand: `IF(${ofCoating("connector_coatings.family", "connector_coating")} = ${ofCoating("screw_coatings.family", "screw_coating")}; 1; 2)`,
      limit: "1",
      sense: "at_most",
      why: "Stainless screws through a zinc tie eat the tie's zinc.",
      sources: [SEVERE_PLACES],
      advice: [
        "The screws are {screw_coating} and the connectors {connector_coating}: take both of one metal.",
      ],
    },
  ]
}
