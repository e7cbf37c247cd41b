import type { Remedy, Section } from "@pegbook/engine"
import { STRIP_TOPSOIL, USER } from "../sources.ts"
import { BEARING_IRC, BEARING_NBC, BEARING_WET } from "../sources-actions.ts"
import { figureTable } from "../strength/figure-table.ts"

/** Soil, what it bears, whether it loses half where water is near. Records a-001 to a-005 and a-010 to a-018. */
const SOILS = [
  ["US: clay, silty or sandy clay, silt", "1500 psf", "yes"],
  ["US: sand, silty or clayey sand or gravel", "2000 psf", "yes"],
  ["US: gravel, sandy gravel", "3000 psf", "yes"],
  ["US: layered rock", "4000 psf", "no"],
  ["US: crystalline bedrock", "12000 psf", "no"],
  ["Canada: dense sand or gravel", "150 kPa", "yes"],
  ["Canada: loose sand or gravel", "50 kPa", "yes"],
  ["Canada: dense silt", "100 kPa", "yes"],
  ["Canada: stiff clay", "150 kPa", "no"],
  ["Canada: firm clay", "75 kPa", "no"],
  ["Canada: soft clay", "40 kPa", "no"],
  ["Canada: till", "200 kPa", "no"],
  ["Canada: clay shale", "300 kPa", "no"],
  ["Canada: sound rock", "500 kPa", "no"],
] as const

/**
 * Whether the ground still bears the platform where water stands near under it.
 * `foot` is the narrower side of what stands on the ground, a formula. `remedies`: the cheapest first. `pressure`: the greatest
 * under the feet, a formula.
 *
 * Needs: what the formulas name, soil_bearing, design_thresholds, near_limit_share. Gives: soil_values, ground_water_depth, soil_wet_check.
 */
export function wetSoil(foot: string, remedies: readonly Remedy[], pressure = "soil_pressure_max"): Section {
  const sources = [BEARING_IRC, BEARING_NBC, BEARING_WET]
  return {
    id: "wet-soil",
    title: "Wet ground",
    says: "Sand, silt and gravel bear half as much where water stands close below.",
    entries: [
      figureTable({
        name: "soil_values",
        label: "What soils bear, in two codes",
        why: "They sort soils differently, so read off only one. Values hold for ground that nobody has dug; peat, mud, organic soil and fill have none.",
        sources,
        columns: {
          soil: { label: "Soil", measure: "text", why: "As the code names it, in fewer words." },
          bears: { label: "Bears", measure: "pressure", why: "Without a soil investigation." },
          loses_half: {
            label: "Half where water is near",
            measure: "yes_no",
            why: "Sand, silt and gravel. The first US row holds silts too, so it is halved with them, to be safe.",
          },
        },
        rows: SOILS.map(([soil, bears, loses_half]) => ({ soil, bears, loses_half })),
      }),
      {
        kind: "input",
        name: "ground_water_depth",
        label: "Water stands below the foot",
        measure: "length",
        default: null,
        blank: "far below",
        least: "0 in",
        most: "100 ft",
        why: "Dig a hole in the wettest season and see how deep the water stands in it the next day, less how deep the supports stand.",
        sources: [USER, STRIP_TOPSOIL],
        cautions: [
          "Ground that squelches, grows rushes, or lies under a gutter's outlet is wet, whatever the map says.",
        ],
      },
      {
        kind: "check",
        name: "soil_wet_check",
        label: "Does the ground bear it when it is wet?",
        why: "Where water stands within the width of the foot below it, the value that you entered counts half, as for sand, silt and gravel. Clay that was tested wet keeps its value: then enter no water.",
        sources,
        cautions: ["Your local code decides the value; on doubtful ground a geotechnical engineer does."],
        measure: "pressure",
        demand: pressure,
        limit: `soil_bearing * IF(IFERROR(ground_water_depth < ${foot}; FALSE()); INDEX(design_thresholds.soil_wet; 1); 1)`,
        sense: "at_most",
        near: "near_limit_share",
        advice: ["Drain the ground, give the supports a larger foot, or set more of them."],
        remedies,
      },
    ],
  }
}
