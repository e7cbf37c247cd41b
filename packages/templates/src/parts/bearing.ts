import type { Section } from "@pegbook/engine"
import { STATICS, STRESS_SPREAD, STRIP_TOPSOIL, USER } from "../sources.ts"
import { BEARING_IRC, BEARING_NBC, BEARING_NONE, BEARING_WET, SOIL_TESTS } from "../sources-actions.ts"

interface Soil {
  readonly name: string
  readonly bears: string
  /** Loses half where water stands close below: sand, silt and gravel. */
  readonly wet: "yes" | "no"
  readonly book: string
}

const AMERICAN = "US residential code"
const CANADIAN = "Canadian building code"
const NOWHERE = "none"

// Records a-001 to a-005 and a-010 to a-018.
const SOILS: readonly Soil[] = [
  { name: "US: clay, silty or sandy clay, silt", bears: "1500 psf", wet: "yes", book: AMERICAN },
  { name: "US: sand, silty or clayey sand or gravel", bears: "2000 psf", wet: "yes", book: AMERICAN },
  { name: "US: gravel, sandy gravel", bears: "3000 psf", wet: "yes", book: AMERICAN },
  { name: "US: layered rock", bears: "4000 psf", wet: "no", book: AMERICAN },
  { name: "US: crystalline bedrock", bears: "12000 psf", wet: "no", book: AMERICAN },
  { name: "Canada: dense sand or gravel", bears: "150 kPa", wet: "yes", book: CANADIAN },
  { name: "Canada: loose sand or gravel", bears: "50 kPa", wet: "yes", book: CANADIAN },
  { name: "Canada: dense silt", bears: "100 kPa", wet: "yes", book: CANADIAN },
  { name: "Canada: stiff clay", bears: "150 kPa", wet: "no", book: CANADIAN },
  { name: "Canada: firm clay", bears: "75 kPa", wet: "no", book: CANADIAN },
  { name: "Canada: soft clay", bears: "40 kPa", wet: "no", book: CANADIAN },
  { name: "Canada: till", bears: "200 kPa", wet: "no", book: CANADIAN },
  { name: "Canada: clay shale", bears: "300 kPa", wet: "no", book: CANADIAN },
  { name: "Canada: sound rock", bears: "500 kPa", wet: "no", book: CANADIAN },
  { name: "Peat, mud, organic soil or fill", bears: "0 psf", wet: "no", book: NOWHERE },
]

const NAMES = SOILS.map(({ name }) => name)

/**
 * What the ground bears by the published tables, wet or dry, held against the pressure under the busiest block.
 * `load` is a formula: what the busiest support carries; most often support_load_max, or skid_reaction_max where
 * the beam solver has run.
 *
 * Needs: `load`, block_face, block_length, block_course_width, stone_bed_length, stone_bed_width, stone_bed_thickness,
 * stone_spread, soil_bearing, near_limit_share.
 * Gives: soil_kind, soil_values, soil_published, soil_source, soil_loses_half, water_depth, wet_reach, soil_is_wet,
 * soil_wet_share, soil_allowed, bearing_load, bearing_pressure_block, bearing_pressure_stone, bearing_face_needed, and the
 * checks soil_entered_check, soil_block_check, soil_stone_check.
 */
export function bearingOf(load: string): Section {
  return {
    id: "bearing",
    title: "What the ground bears",
    says: "Published values for kinds of soil, wet and dry, against the pressure under your blocks.",
    entries: [
      {
        kind: "input",
        name: "soil_kind",
        label: "Your soil, below the topsoil",
        measure: "text",
        default: NAMES[0] ?? "",
        choices: NAMES,
        why: "Push a sharpened 2 x 2 in stake in by hand: under 8 in deep, sand, gravel or silt is dense, else loose. Press a thumb into clay: stiff is hard to mark, firm gives to a good push, soft gives easily.",
        sources: [USER, SOIL_TESTS, STRIP_TOPSOIL],
        cautions: [
          "Values hold for ground that nobody has dug. In peat, mud, organic soil or fill there is none: ask a geotechnical engineer.",
        ],
      },
      {
        kind: "table",
        name: "soil_values",
        label: "What soils bear",
        rows: { kind: "figures" },
        why: "Two codes, side by side: they sort soils differently, so read off only one.",
        sources: [BEARING_IRC, BEARING_NBC],
        columns: [
          {
            name: "soil",
            label: "Soil",
            measure: "text",
            values: NAMES,
            why: "As the code names it, in fewer words.",
            sources: [BEARING_IRC, BEARING_NBC],
          },
          {
            name: "bears",
            label: "Bears",
            measure: "pressure",
            values: SOILS.map(({ bears }) => bears),
            why: "May be put on it without a soil investigation.",
            sources: [BEARING_IRC, BEARING_NBC, BEARING_NONE],
          },
          {
            name: "loses_half",
            label: "Half where water is near",
            measure: "yes_no",
            values: SOILS.map(({ wet }) => wet),
            why: "Sand, silt and gravel. The first US row holds silts too, so it is halved with them, to be safe.",
            sources: [BEARING_WET],
          },
          {
            name: "book",
            label: "Whose value",
            measure: "text",
            values: SOILS.map(({ book }) => book),
            why: "Your place may have another.",
            sources: [BEARING_IRC, BEARING_NBC],
          },
        ],
      },
      {
        kind: "formula",
        name: "soil_published",
        label: "Published value of your soil",
        measure: "pressure",
        formula: "INDEX(soil_values.bears; MATCH(soil_kind; soil_values.soil; 0))",
        why: "From the table.",
        sources: [BEARING_IRC, BEARING_NBC],
      },
      {
        kind: "formula",
        name: "soil_source",
        label: "Whose value",
        measure: "text",
        formula: "INDEX(soil_values.book; MATCH(soil_kind; soil_values.soil; 0))",
        why: "If it is not your place's code, ask for its value.",
        sources: [BEARING_IRC, BEARING_NBC],
      },
      {
        kind: "input",
        name: "water_depth",
        label: "Water stands below the foot of the block",
        measure: "length",
        default: null,
        blank: "far below",
        least: "0 in",
        most: "100 ft",
        why: "Dig a hole in the wettest season and see how deep the water stands in it the next day, less how deep the blocks stand.",
        sources: [USER],
        cautions: [
          "Ground that squelches, grows rushes, or lies under a gutter's outlet is wet, whatever the map says.",
        ],
      },
      {
        kind: "formula",
        name: "wet_reach",
        label: "Water counts when nearer than",
        measure: "length",
        formula: "MIN(block_length; block_course_width)",
        why: "One width of the block.",
        sources: [BEARING_WET],
      },
      {
        kind: "formula",
        name: "soil_is_wet",
        label: "Is the soil wet?",
        measure: "yes_no",
        formula: "IFERROR(water_depth < wet_reach; FALSE())",
        why: "Water within a block's width below its foot.",
        sources: [BEARING_WET],
      },
      {
        kind: "figure",
        name: "soil_wet_share",
        label: "Wet sand, silt and gravel bear",
        measure: "share",
        value: "50 %",
        why: "Of what they bear dry.",
        sources: [BEARING_WET],
      },
      {
        kind: "formula",
        name: "soil_allowed",
        label: "Your soil may be pressed with",
        measure: "pressure",
        formula:
          "soil_published * IF(AND(soil_is_wet; INDEX(soil_values.loses_half; MATCH(soil_kind; soil_values.soil; 0))); soil_wet_share; 1)",
        why: "The published value, halved where it must be.",
        sources: [BEARING_IRC, BEARING_NBC, BEARING_WET],
      },
      {
        kind: "check",
        name: "soil_entered_check",
        label: "Is the value that you entered a published one?",
        measure: "pressure",
        demand: "soil_bearing",
        limit: "soil_allowed",
        sense: "at_most",
        covered: "soil_published > 0",
        why: "A higher value than the table's wants a soil investigation behind it.",
        sources: [BEARING_IRC, BEARING_NBC, BEARING_WET],
        advice: ["Enter {soil_allowed} or less, or have the soil looked at."],
      },
      {
        kind: "formula",
        name: "bearing_load",
        label: "Load of the busiest support",
        measure: "force",
        formula: load,
        why: "What comes down on one block.",
        sources: [STATICS],
      },
      {
        kind: "formula",
        name: "bearing_pressure_block",
        label: "Pressure under the block",
        measure: "pressure",
        formula: "bearing_load / block_face",
        why: "Load over the face of the block. The check goes by this.",
        sources: [STATICS],
      },
      {
        kind: "formula",
        name: "bearing_pressure_stone",
        label: "Pressure under the stone",
        measure: "pressure",
        formula:
          "bearing_load / (MIN(stone_bed_length; block_length + 2 * stone_spread * stone_bed_thickness) * MIN(stone_bed_width; block_course_width + 2 * stone_spread * stone_bed_thickness))",
        why: "Tamped stone spreads the load before it reaches the soil, but never farther than the bed.",
        sources: [STRESS_SPREAD],
      },
      {
        kind: "formula",
        name: "bearing_face_needed",
        label: "Foot that the soil asks for",
        measure: "area",
        formula: "bearing_load / MIN(soil_bearing; soil_allowed)",
        why: "Load over what the soil may bear.",
        sources: [STATICS],
      },
      {
        kind: "check",
        name: "soil_block_check",
        label: "Does the soil bear the busiest block?",
        measure: "pressure",
        demand: "bearing_pressure_block",
        limit: "MIN(soil_bearing; soil_allowed)",
        sense: "at_most",
        near: "near_limit_share",
        covered: "soil_published > 0",
        why: "By the block's own face, without the help of the stone, wet or dry as you entered.",
        sources: [BEARING_IRC, BEARING_NBC, BEARING_WET],
        cautions: ["Your local code decides the value; on doubtful ground a geotechnical engineer does."],
        advice: [
          "Give the busiest support a foot of {bearing_face_needed}, set more supports, or drain the ground.",
        ],
      },
      {
        kind: "check",
        name: "soil_stone_check",
        label: "Does the soil bear it under the stone?",
        measure: "pressure",
        demand: "bearing_pressure_stone",
        limit: "MIN(soil_bearing; soil_allowed)",
        sense: "at_most",
        near: "near_limit_share",
        covered: "soil_published > 0",
        why: "A second opinion: it holds only if the stone is well tamped and cannot creep out sideways.",
        sources: [STRESS_SPREAD, BEARING_WET],
        advice: [
          "Make the bed of stone larger or thicker, or give the support a foot of {bearing_face_needed}.",
        ],
      },
    ],
  }
}
