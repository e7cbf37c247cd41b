import type { Section } from "@pegbook/engine"
import { FROST_PRACTICE, GEOMETRY, USER, USER_AUTHORITY } from "../sources.ts"
import { FROST_DETACHED, FROST_METHODS, FROST_ONTARIO, FROST_RISE } from "../sources-actions.ts"

/**
 * What to expect of a base that stands on the surface where the ground freezes. Never for something that is attached
 * to a building: that must stand below the frost, and the check says so.
 *
 * Needs: least_dig, stone_bed_thickness, near_limit_share.
 * Gives: attached_to_building, frost_depth, frost_soil, frost_shares, base_depth, frost_depth_needed, frost_below_stone,
 * frost_heave_share, frost_rise, frost_check, elsewhere_frost_area_ontario, elsewhere_frost_height_ontario,
 * elsewhere_frost_area_connecticut.
 */
export const frost: Section = {
  id: "frost",
  title: "Frost",
  says: "Ground that freezes lifts what stands on it. A loose base may ride on it; one that is fixed to a house may not.",
  entries: [
    {
      kind: "input",
      name: "attached_to_building",
      label: "Fixed to a building",
      measure: "yes_no",
      default: "no",
      why: "Also yes if it carries a roof that joins the house, or the only way out of a door.",
      sources: [USER],
      cautions: [
        "A base on the surface must stand free: leave a gap all round, and fix nothing to the house.",
      ],
    },
    {
      kind: "input",
      name: "frost_depth",
      label: "Depth to which your ground freezes",
      measure: "length",
      default: null,
      least: "0 in",
      most: "12 ft",
      why: "Ask your authority. It runs from nothing to more than 6 ft.",
      sources: [USER_AUTHORITY],
    },
    {
      kind: "input",
      name: "frost_soil",
      label: "Soil under the stone",
      measure: "text",
      default: "silt or fine sand",
      choices: ["gravel or coarse sand", "clay", "silt or fine sand"],
      why: "Silt draws water up to the frost and swells most; clean gravel hardly moves.",
      sources: [USER, FROST_PRACTICE],
    },
    {
      kind: "table",
      name: "frost_shares",
      label: "How much soils rise when they freeze",
      rows: { kind: "figures" },
      why: "Rough shares of the depth frozen, with water to be had. A wet winter can double them.",
      sources: [FROST_RISE],
      columns: [
        {
          name: "soil",
          label: "Soil",
          measure: "text",
          values: ["gravel or coarse sand", "clay", "silt or fine sand"],
          why: "As in the choice above.",
          sources: [FROST_PRACTICE],
        },
        {
          name: "share",
          label: "Rises by",
          measure: "share",
          values: ["0 %", "3 %", "6 %"],
          why: "Of the depth that freezes under the stone.",
          sources: [FROST_RISE],
        },
      ],
    },
    {
      kind: "formula",
      name: "base_depth",
      label: "Your base stands below the ground by",
      measure: "length",
      formula: "least_dig",
      why: "The shallowest hole decides.",
      sources: [GEOMETRY],
    },
    {
      kind: "formula",
      name: "frost_depth_needed",
      label: "Depth that it must reach",
      measure: "length",
      formula: "IF(attached_to_building; frost_depth; 0)",
      why: "Something fixed to a building must stand below the frost, as the building does. Something free may rise and sink.",
      sources: [FROST_METHODS, FROST_DETACHED],
    },
    {
      kind: "check",
      name: "frost_check",
      label: "May it stand on the surface?",
      measure: "length",
      demand: "base_depth",
      limit: "frost_depth_needed",
      sense: "at_least",
      why: "Free: it may, if your authority agrees, and you level it again in spring. Fixed to a building: only below the frost.",
      sources: [FROST_METHODS, FROST_DETACHED, FROST_ONTARIO],
      cautions: [
        "Codes let only some free-standing platforms off the frost depth, by size, height and use. Your local code decides; what is attached needs footings that a licensed designer or your authority accepts.",
      ],
      advice: [
        "Stand it free of the building; or give it footings that reach {frost_depth_needed}, which this workbook does not design.",
      ],
    },
    {
      kind: "formula",
      name: "frost_below_stone",
      label: "Soil that freezes under the stone",
      measure: "length",
      formula: "MAX(0; frost_depth - base_depth)",
      why: "Stone drains and does not swell; the soil below it does.",
      sources: [GEOMETRY, FROST_PRACTICE],
    },
    {
      kind: "formula",
      name: "frost_heave_share",
      label: "Rise of your soil",
      measure: "share",
      formula: "INDEX(frost_shares.share; MATCH(frost_soil; frost_shares.soil; 0))",
      why: "From the table.",
      sources: [FROST_RISE],
    },
    {
      kind: "formula",
      name: "frost_rise",
      label: "A support may rise in winter by about",
      measure: "length",
      formula: "frost_heave_share * frost_below_stone",
      why: "Only to show what to expect: supports rise unevenly, the shaded side more. Keep packers at hand, and the frame loose enough to be levelled again.",
      sources: [FROST_RISE],
      cautions: ["A door beside it or on it may jam in winter. Fix no rigid pipe or cable across the gap."],
    },
    {
      kind: "figure",
      name: "elsewhere_frost_area_ontario",
      label: "Elsewhere: area that need not reach the frost",
      measure: "area",
      value: "55 m2",
      why: "Ontario, for one storey without a roof that is not attached. Ask for your own place's figure.",
      sources: [FROST_ONTARIO],
    },
    {
      kind: "figure",
      name: "elsewhere_frost_height_ontario",
      label: "Elsewhere: height that need not reach the frost",
      measure: "length",
      value: "600 mm",
      why: "Ontario, from the ground to the underside of the joists.",
      sources: [FROST_ONTARIO],
    },
    {
      kind: "figure",
      name: "elsewhere_frost_area_connecticut",
      label: "Elsewhere: accessory building that need not",
      measure: "area",
      value: "600 ft2",
      why: "Connecticut's wording of the model house code, for light frames with eaves up to 10 ft.",
      sources: [FROST_DETACHED],
    },
  ],
}
