import type { Section, Source, TableEntry } from "@pegbook/engine"
import {
  BEARING_CLAY,
  BEARING_GRAVEL,
  BEARING_SAND,
  COMMON_PRACTICE,
  FROST_PRACTICE,
  LIVE_LOAD_DECK,
  LIVE_LOAD_PUBLIC,
  STATICS,
  STRESS_SPREAD,
  STRIP_TOPSOIL,
  USER,
} from "../sources.ts"
import { SKIDS, type SupportedLines } from "./supported-lines.ts"

const SOILS: readonly (readonly [soil: string, bears: string, source: Source])[] = [
  ["sandy gravel and gravel", "3000 psf", BEARING_GRAVEL],
  ["sand, silty or clayey sand", "2000 psf", BEARING_SAND],
  ["clay, sandy or silty clay, silt", "1500 psf", BEARING_CLAY],
]

const SOIL_SOURCES: readonly Source[] = SOILS.map(([, , source]) => source)

/** What firm soils bear, to compare with one's own. */
const soilClasses: TableEntry = {
  kind: "table",
  name: "soil_classes",
  label: "What soils bear",
  why: "To compare with your soil; the figures are for undisturbed ground below the topsoil.",
  sources: SOIL_SOURCES,
  rows: { kind: "figures" },
  columns: [
    {
      name: "soil",
      label: "Soil",
      why: "Dig a small hole and look.",
      sources: SOIL_SOURCES,
      measure: "text",
      values: SOILS.map(([soil]) => soil),
    },
    {
      name: "bears",
      label: "Bears",
      why: "What it may be loaded with.",
      sources: SOIL_SOURCES,
      measure: "pressure",
      values: SOILS.map(([, bears]) => bears),
    },
    {
      name: "source",
      label: "Who says so",
      why: "The text that the figure is from, and its record.",
      sources: SOIL_SOURCES,
      measure: "text",
      values: SOILS.map(([, , { title, record }]) => `${title} (${record ?? "no record"})`),
    },
  ],
}

/** What the platform carries, and whether the ground under the blocks bears it. */
export function supportLoadsOn(lines: SupportedLines): Section {
  const { nouns, stack, block, remedies } = lines
  return {
    id: "loads",
    title: "Loads and the ground under them",
    says: `How much the busiest ${stack} carries, and whether the soil can take it.`,
    entries: [
      {
        kind: "input",
        name: "live_load",
        label: "People and things on the platform",
        why: "The load that comes and goes. A place where a crowd may stand or jump is counted heavier than a family's deck (40 lb per square foot in one house code).",
        sources: [LIVE_LOAD_PUBLIC, LIVE_LOAD_DECK, USER],
        cautions: [
          "Where the public uses the platform, your authority decides the load, and may ask for a licensed designer.",
        ],
        measure: "pressure",
        default: "100 psf",
        least: "0 psf",
        most: "1000 psf",
      },
      {
        kind: "input",
        name: "dead_load",
        label: "The platform's own weight",
        why: "Timber and surface, spread over the area. Ten pounds a square foot is usual for timber floors.",
        sources: [COMMON_PRACTICE, USER],
        measure: "pressure",
        default: "10 psf",
        least: "0 psf",
        most: "200 psf",
      },
      {
        kind: "formula",
        name: "platform_load",
        label: "Load of the whole platform",
        why: `Everything together. The loads of the ${stack}s add up to exactly this.`,
        sources: [STATICS],
        measure: "force",
        formula: "(live_load + dead_load) * platform_area",
      },
      {
        kind: "formula",
        name: "support_load_max",
        label: `Load on the busiest ${stack}`,
        why: `An inner ${stack} carries most: it has neighbours on every side.`,
        sources: [STATICS],
        measure: "force",
        formula: "MAX(supports.load)",
      },
      {
        kind: "formula",
        name: "soil_pressure_max",
        label: `Greatest pressure under a ${block}`,
        why: `The busiest ${stack}'s load over the face of its ${block}.`,
        sources: [STATICS],
        measure: "pressure",
        formula: "MAX(supports.pressure)",
      },
      soilClasses,
      {
        kind: "input",
        name: "soil_bearing",
        label: "Your soil bears",
        why: "What the ground may be loaded with. The figure to start from is for clay and silt, the weakest firm soils in the table.",
        sources: [BEARING_CLAY, STRIP_TOPSOIL, USER],
        cautions: [
          "Peat, mud, organic soil and made-up ground have no such figure: ask a geotechnical engineer. Wet clay bears much less than dry.",
          "Blocks on the surface move with frost. Keep the platform free of any building, and level it again in spring.",
        ],
        measure: "pressure",
        default: "1500 psf",
        least: "50 psf",
        most: "12000 psf",
      },
      {
        kind: "check",
        name: "soil_bearing_check",
        label: `Can the ground bear the busiest ${stack}?`,
        why: "Ground that is pressed harder than it bears gives way slowly, and one corner sinks.",
        sources: [BEARING_CLAY, FROST_PRACTICE],
        measure: "pressure",
        demand: "soil_pressure_max",
        limit: "soil_bearing",
        sense: "at_most",
        near: "near_limit_share",
        advice: [
          `Give the busiest ${stack} a foot of at least {block_face_needed}: a bigger slab, or two ${block}s side by side.`,
          `Or stand the supports closer together, or set the ${nouns} closer.`,
        ],
        remedies,
      },
      {
        kind: "formula",
        name: "block_face_needed",
        label: `Face of ${block} that the soil asks for`,
        why: `The busiest ${stack}'s load over what the soil bears.`,
        sources: [STATICS],
        measure: "area",
        formula: "support_load_max / soil_bearing",
      },
      {
        kind: "figure",
        name: "stone_spread",
        label: "Stone spreads a load by",
        why: "On each side, for each inch of depth: one out for two down.",
        sources: [STRESS_SPREAD],
        measure: "ratio",
        value: "0.5",
      },
      {
        kind: "check",
        name: "soil_stone_check",
        label: "Can the ground bear it under the stone?",
        why: "A second opinion, after the bed has spread the load: it holds only if the stone is well tamped and cannot creep out sideways.",
        sources: [STRESS_SPREAD],
        measure: "pressure",
        demand: "MAX(supports.spread_pressure)",
        limit: "soil_bearing",
        sense: "at_most",
        near: "near_limit_share",
        advice: ["Make the bed of stone larger or thicker, or set more supports."],
        remedies,
      },
    ],
  }
}

/** Loads of stacks under skids. */
export const supportLoads: Section = supportLoadsOn(SKIDS)
