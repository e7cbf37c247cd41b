import type { CheckEntry, MeasureId, Section, Source, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { COMMON_PRACTICE, GEOMETRY, STATICS, USER } from "../sources.ts"
import { SLIDING, WIND_ALLOWABLE, WIND_BUILDINGS, WIND_LEAST } from "../sources-actions.ts"
import { VELOCITY_PRESSURE, WIND_DECIDES, windFactor, windPressure } from "./wind-pressure.ts"

/** What stands on the platform, by formulas over the template's names. */
export interface WindBuilding {
  /** What a reader calls it: "shed". */
  readonly noun: string
  readonly length: string
  readonly width: string
  readonly weight: string
  /** Share of it that is always there. */
  readonly stays: { readonly value: string; readonly why: string }
  /** What the platform itself weighs, per area, at least: a figure as typed, with its source. */
  readonly platform: { readonly value: string; readonly source: Source }
  /** Friction where it presses on the ground. */
  readonly friction: { readonly value: string; readonly why: string; readonly source: Source }
}

const buildingFactors = (building: WindBuilding): TableEntry => ({
  kind: "table",
  name: "wind_building_factors",
  label: "Factors of the wind on a small building",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [WIND_BUILDINGS, SLIDING],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "roof_suction",
      "Suction on the roof",
      "ratio",
      "0.9",
      "Wind that passes over a roof sucks at it, the flat ones too.",
      WIND_BUILDINGS,
    ),
    figureColumn(
      "inside_pressure",
      "Pressure from inside",
      "ratio",
      "0.18",
      "Wind that gets in pushes the roof up from below: 0.18 with doors shut, 0.55 with one side open. A greenhouse whose panes break is open.",
      WIND_BUILDINGS,
      USER,
    ),
    figureColumn(
      "wall_push",
      "Push on the wall that faces the wind",
      "ratio",
      "0.8",
      "The air is stopped there.",
      WIND_BUILDINGS,
    ),
    figureColumn(
      "wall_pull",
      "Pull on the wall behind",
      "ratio",
      "0.5",
      "The air is thinner in the lee.",
      WIND_BUILDINGS,
    ),
    figureColumn(
      "weight_stays",
      "Share of its weight that is always there",
      "ratio",
      building.stays.value,
      building.stays.why,
      USER,
    ),
    figureColumn(
      "platform_load",
      "Weight of the platform that is counted on, per area",
      "pressure",
      building.platform.value,
      "Less than the load that it is designed for: here weight helps, so the light end counts.",
      building.platform.source,
    ),
    figureColumn(
      "friction",
      "Friction on the ground",
      "ratio",
      building.friction.value,
      building.friction.why,
      building.friction.source,
    ),
  ],
})

/** The formula of a step of `wind_on_building`. */
export const windStep = (name: string): string => `INDEX(wind_on_building.${name}; 1)`
const of = windStep
const building = (name: string): string => `INDEX(wind_building_factors.${name}; 1)`

const buildingSteps = ({ length, width, weight }: WindBuilding): TableEntry => ({
  kind: "table",
  name: "wind_on_building",
  label: "Wind on what stands on the platform",
  why: "Every step, in the order of the calculation, in one row.",
  sources: [WIND_BUILDINGS, STATICS],
  cautions: [
    "Fasten the building to the platform through its sole plates, at every corner and along every side: the platform's weight only helps if the two are one.",
  ],
  rows: { kind: "formula", formula: "1" },
  columns: [
    column(
      "side_pressure",
      "Sideways pressure in all",
      "pressure",
      `${windFactor("load_factor")} * MAX(${windFactor("pressure_least")}; ${VELOCITY_PRESSURE} * ${windFactor("gust")} * (${building("wall_push")} + ${building("wall_pull")}))`,
      "Push in front and pull behind, added up.",
      WIND_BUILDINGS,
      WIND_LEAST,
    ),
    column(
      "side_area",
      "Side that the wind meets",
      "area",
      `MAX(${length}; ${width}) * (building_wall_height + building_roof_rise / 2)`,
      "The broad side, with half of the roof's rise.",
      GEOMETRY,
    ),
    column(
      "side_force",
      "Sideways force",
      "force",
      "side_pressure * side_area",
      "Tries to push the building off, and to tip it.",
      STATICS,
    ),
    column(
      "uplift_pressure",
      "Lift on the roof, per area",
      "pressure",
      `${windFactor("load_factor")} * ${VELOCITY_PRESSURE} * (${windFactor("gust")} * ${building("roof_suction")} + ${building("inside_pressure")})`,
      "Suction from above and pressure from inside.",
      WIND_BUILDINGS,
    ),
    column(
      "uplift",
      "Lift on the roof",
      "force",
      `uplift_pressure * ${length} * ${width}`,
      "Tries to lift the building.",
      STATICS,
    ),
    column(
      "platform_weight",
      "Weight of the platform",
      "force",
      `${building("platform_load")} * platform_area`,
      "Without what stands on it.",
      STATICS,
    ),
    column(
      "weight",
      "Weight of building and platform",
      "force",
      `${building("weight_stays")} * ${weight} + platform_weight`,
      "Empty: you may clear it out before the storm.",
      STATICS,
    ),
    column(
      "weight_counted",
      "Weight that is counted on",
      "force",
      `${windFactor("weight_share")} * weight`,
      "The stated share of it.",
      WIND_ALLOWABLE,
    ),
    column(
      "base_width",
      "Width of the base against tipping",
      "length",
      "MIN(platform_length; platform_width - 2 * skid_overhang)",
      "It tips over its outer line of support, or over its end.",
      GEOMETRY,
    ),
    column(
      "overturning",
      "Tipping moment",
      "moment",
      "side_force * (height_above_ground + (building_wall_height + building_roof_rise / 2) / 2) + uplift * base_width / 2",
      "The sideways force at half of the side's height, and the lift, about the edge in the lee.",
      STATICS,
    ),
    column(
      "righting",
      "Moment of the weight against it",
      "moment",
      "weight_counted * base_width / 2",
      "The counted weight, at half of the base.",
      STATICS,
    ),
    column(
      "tie_force_side",
      "To be held down along one long side",
      "force",
      "MAX(0; overturning - righting) / base_width",
      "What the weight does not hold, the anchors along the side towards the wind must. Wind comes from either side, so both are anchored alike.",
      STATICS,
    ),
    column(
      "tie_force",
      "To be held by the ties along one side",
      "force",
      `tie_force_side + IF(tie_force_side > 0; ${windFactor("weight_share")} * platform_weight / 2; 0)`,
      "As much as the anchors hold, as though all of the platform's weight hung below the ties.",
      STATICS,
    ),
    column(
      "friction_hold",
      "Held by friction",
      "force",
      `${building("friction")} * MAX(0; weight_counted - uplift)`,
      "Only what still presses on the ground rubs on it.",
      SLIDING,
    ),
    column(
      "slide_left",
      "Sideways force that friction does not hold",
      "force",
      "MAX(0; side_force - friction_hold)",
      "The anchors must hold this too.",
      STATICS,
    ),
    column(
      "anchors_needed",
      "Anchors needed",
      "count",
      "2 * MAX(IF(tie_force_side = 0; 0; MAX(2; ROUNDUP(tie_force_side / anchor_capacity - rounding_tolerance; 0))); IF(slide_left = 0; 0; ROUNDUP(slide_left / 2 / anchor_side_capacity - rounding_tolerance; 0)))",
      "As many along each of the two long sides, one near each corner at least.",
      STATICS,
      COMMON_PRACTICE,
    ),
    column(
      "anchors_set",
      "Anchors counted on",
      "count",
      "IFERROR(anchor_count; anchors_needed)",
      "Yours if you entered a number.",
      USER,
    ),
    column(
      "anchor_spacing",
      "Anchors along a long side, apart",
      "length",
      "IF(anchors_set < 4; MAX(platform_length; platform_width); MAX(platform_length; platform_width) / (ROUNDDOWN(anchors_set / 2; 0) - 1))",
      "Spread evenly from corner to corner.",
      GEOMETRY,
    ),
  ],
})

const check = (
  name: string,
  label: string,
  measure: MeasureId,
  demand: string,
  limit: string,
  why: string,
  advice: readonly string[],
): CheckEntry => ({
  kind: "check",
  name,
  label,
  measure,
  demand,
  limit,
  sense: "at_most",
  near: "near_limit_share",
  why,
  sources: [WIND_BUILDINGS, WIND_ALLOWABLE, SLIDING],
  cautions: [WIND_DECIDES],
  advice,
  remedies: [{ input: "anchor_count", toward: "more", step: "2" }],
})

/**
 * Whether a light building on the platform stays where it is in the wind, and what must hold it.
 *
 * Needs: the names of the building's formulas; platform_length, platform_width, skid_overhang, height_above_ground,
 * rounding_tolerance, near_limit_share.
 * Gives: the names of {@link windPressure}; building_wall_height, building_roof_rise, anchor_capacity,
 * anchor_side_capacity, anchor_count, wind_building_factors, wind_on_building (one row, a column a step), and the
 * checks wind_uplift_check, wind_overturn_check, wind_slide_check.
 */
export function windOn(stands: WindBuilding): Section {
  return {
    id: "wind",
    title: "Wind",
    says: `A light ${stands.noun} on a loose base can lift, tip or slide. Weight against wind, and what must be anchored.`,
    entries: [
      ...windPressure,
      {
        kind: "input",
        name: "building_wall_height",
        label: `Height of the ${stands.noun}'s walls`,
        measure: "length",
        default: "6 ft 6 in",
        least: "1 ft",
        most: "15 ft",
        why: "From the platform to the eaves.",
        sources: [USER],
      },
      {
        kind: "input",
        name: "building_roof_rise",
        label: "Rise of its roof",
        measure: "length",
        default: "2 ft",
        least: "0 ft",
        most: "12 ft",
        why: "From the eaves to the ridge. The wind meets half of it, as a gable is pointed.",
        sources: [USER],
      },
      buildingFactors(stands),
      buildingSteps(stands),
      {
        kind: "input",
        name: "anchor_capacity",
        label: "One anchor holds, upwards",
        measure: "force",
        default: null,
        least: "20 lb",
        most: "20000 lb",
        why: "What the maker allows in your soil, or half of what one held when you pulled at it. There is no figure that fits all soils.",
        sources: [USER],
        cautions: [
          "Wet or frozen ground, and loose fill, can halve what an anchor holds. Mark buried cables and pipes before you drive one.",
        ],
      },
      {
        kind: "input",
        name: "anchor_side_capacity",
        label: "One anchor holds, sideways",
        measure: "force",
        default: null,
        least: "1 lb",
        most: "20000 lb",
        why: "A rod that stands up in soft ground holds little sideways; a slanting strap holds both ways.",
        sources: [USER],
      },
      {
        kind: "input",
        name: "anchor_count",
        label: "Anchors that you will set",
        measure: "count",
        default: null,
        blank: "as many as are needed",
        least: "0",
        most: "200",
        why: "Enter another number to see whether it holds.",
        sources: [USER],
      },
      check(
        "wind_uplift_check",
        "Does the wind lift it?",
        "force",
        of("uplift"),
        `${of("weight_counted")} + ${of("anchors_set")} * anchor_capacity`,
        "Lift against the counted weight and the anchors.",
        [
          "Set {wind_on_building.anchors_needed} anchors, or choose stronger ones: {wind_on_building.tie_force_side} along each long side.",
        ],
      ),
      check(
        "wind_overturn_check",
        "Does the wind tip it over?",
        "moment",
        of("overturning"),
        `${of("righting")} + ${of("anchors_set")} / 2 * anchor_capacity * ${of("base_width")}`,
        "Tipping moment against the counted weight and the anchors towards the wind.",
        [
          "Hold down {wind_on_building.tie_force_side} along each long side: {wind_on_building.anchors_needed} anchors in all.",
        ],
      ),
      check(
        "wind_slide_check",
        "Does the wind push it off?",
        "force",
        of("side_force"),
        `${of("friction_hold")} + ${of("anchors_set")} * anchor_side_capacity`,
        "Sideways force against friction and the anchors.",
        [
          "Hold {wind_on_building.slide_left} more sideways: slanting straps to anchors, or a frame let into the ground.",
        ],
      ),
    ],
  }
}
