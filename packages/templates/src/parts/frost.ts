import type { Section, TableEntry } from "@pegbook/engine"
import { ASK_FIRST, FROST_PRACTICE, GEOMETRY, USER, USER_AUTHORITY } from "../sources.ts"
import { FROST_RISE } from "../sources-actions.ts"
import { FROST_FREE_STANDING } from "../sources-frame.ts"
import { figureTable } from "../strength/figure-table.ts"

const rises = figureTable({
  name: "frost_rises",
  label: "How far supports may rise in winter",
  why: "Only to show what to expect: supports rise unevenly, the shaded side more. Keep packers at hand, and the frame loose enough to be levelled again.",
  sources: [FROST_RISE, FROST_PRACTICE],
  columns: {
    soil: {
      label: "Soil under the stone",
      measure: "text",
      why: "Silt draws water up to the frost and swells most; clean gravel hardly moves.",
    },
    share: {
      label: "Rises by",
      measure: "share",
      why: "Rough share of the depth frozen, with water to be had. A wet winter can double it.",
    },
  },
  rows: [
    { soil: "gravel or coarse sand", share: "0 %" },
    { soil: "clay", share: "3 %" },
    { soil: "silt or fine sand", share: "6 %" },
  ],
})

const frostRises: TableEntry = {
  ...rises,
  cautions: ["Doors of a shed on it may jam in winter. Fix no rigid pipe or cable across the gap."],
  columns: [
    ...rises.columns,
    {
      name: "rise",
      label: "A support may rise by about",
      measure: "length",
      formula: "share * MAX(0; frost_depth - least_dig)",
      why: "Of the soil that freezes below the shallowest bed of stone: stone drains and does not swell, the soil under it does.",
      sources: [FROST_RISE, GEOMETRY],
    },
  ],
}

/**
 * Whether frost decides how deep the platform has to stand. Two separate questions, as the codes ask them: whether it
 * hangs on a house, and how large and how high it is.
 *
 * `depth`: of what lies under the surface and on the lines of support, a formula: the height is to its underside.
 *
 * Needs: platform_area, height_above_ground, surface_build_up, least_dig, near_limit_share.
 */
export const frostUnder = (depth: string): Section => ({
  id: "frost",
  title: "Frost",
  says: "Blocks on the surface rise and sink with the frost. Your place may allow that for a low platform that stands free.",
  entries: [
    {
      kind: "input",
      name: "frost_depth",
      label: "Frost depth at your place",
      why: "How deep the ground freezes. Blocks on the surface stand above it and will move; the figure shows how far off a footing would be.",
      sources: [USER_AUTHORITY, FROST_PRACTICE],
      cautions: [
        "Surface blocks heave. Keep the platform clear of the house, on drained stone, and level it again in spring.",
      ],
      measure: "length",
      default: null,
      least: "0 in",
      most: "20 ft",
    },
    frostRises,
    {
      kind: "input",
      name: "buildings_touched",
      label: "Buildings that it is fixed to",
      why: "A platform that hangs on a house has to move with the house: it then needs footings below the frost.",
      sources: [USER, FROST_FREE_STANDING],
      measure: "count",
      default: "0",
      least: "0",
      most: "10",
    },
    {
      kind: "check",
      name: "free_standing_check",
      label: "Does it stand free?",
      why: "The lightening for frost is for platforms that no building holds up: none may be touched.",
      sources: [FROST_FREE_STANDING, FROST_PRACTICE],
      measure: "count",
      demand: "buildings_touched",
      limit: "0",
      sense: "at_most",
      advice: ["Keep a gap to the building, or have footings below the frost designed."],
    },
    {
      kind: "input",
      name: "frost_area_limit",
      label: "Largest area let off the frost depth",
      why: "Some codes let small structures stand above the frost. Ask yours for its area.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "area",
      default: null,
      least: "1 ft2",
    },
    {
      kind: "check",
      name: "frost_area_check",
      label: "Small enough to stand above the frost?",
      why: "Holds the platform against the area that your place allows.",
      sources: [USER_AUTHORITY],
      measure: "area",
      demand: "platform_area",
      limit: "frost_area_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "Make the platform smaller than {frost_area_limit}, or have footings below the frost designed.",
      ],
    },
    {
      kind: "input",
      name: "frost_height_limit",
      label: "Greatest height let off the frost depth",
      why: "Measured from the ground to the underside of the joists. Ask whether your place has such a limit.",
      sources: [USER_AUTHORITY, ASK_FIRST],
      measure: "length",
      default: null,
      least: "1 in",
    },
    {
      kind: "check",
      name: "frost_height_check",
      label: "Low enough to stand above the frost?",
      why: "The height that the frost rule asks about; not the one of the permit. Holds the joists' underside against the height that your place allows.",
      sources: [USER_AUTHORITY],
      measure: "length",
      demand: `height_above_ground - surface_build_up - ${depth}`,
      limit: "frost_height_limit",
      sense: "at_most",
      near: "near_limit_share",
      advice: [
        "The joists' underside stands higher above the lowest ground than {frost_height_limit}: lower the platform or have footings below the frost designed.",
      ],
    },
  ],
})

/** Frost under a platform of joists. */
export const frost: Section = frostUnder("joist_depth")
