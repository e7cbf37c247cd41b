import type { Entry, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
import { USER, USER_AUTHORITY } from "../sources.ts"
import { WIND_ALLOWABLE, WIND_EXAMPLE, WIND_EXPOSURE, WIND_LEAST, WIND_VELOCITY } from "../sources-actions.ts"
import { figureTable } from "../strength/figure-table.ts"

export const WIND_DECIDES =
  "A rough check for your own eyes. Your local code gives the wind speed and how to use it; a licensed engineer decides where something could blow onto people."

/** The formula of a figure of `wind_factors`. */
export const windFactor = (name: string): string => `INDEX(wind_factors.${name}; 1)`

/** The pressure of the wind at the platform, a formula. */
export const VELOCITY_PRESSURE = "INDEX(wind.velocity_pressure; 1)"

const factors: TableEntry = {
  kind: "table",
  name: "wind_factors",
  label: "Factors of the wind",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [WIND_VELOCITY, WIND_LEAST, WIND_ALLOWABLE],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "pressure_known",
      "Pressure, if your authority gives one",
      "pressure",
      "0 psf",
      "Some codes print a pressure for each town in place of a speed. 0: worked out from the speed.",
      USER_AUTHORITY,
    ),
    figureColumn(
      "topography",
      "Hill factor",
      "ratio",
      "1",
      "Wind speeds up over the brow of a hill. 1 on flat ground; on a ridge or near the top of a steep slope ask an engineer.",
      USER,
      WIND_VELOCITY,
    ),
    figureColumn(
      "directionality",
      "Directions factor",
      "ratio",
      "0.85",
      "The strongest wind seldom comes from the worst direction.",
      WIND_VELOCITY,
    ),
    figureColumn(
      "gust",
      "Gust factor",
      "ratio",
      "0.85",
      "A gust does not strike the whole of a stiff body at once.",
      WIND_LEAST,
    ),
    figureColumn(
      "air_half_density",
      "Half of the air's density",
      "density",
      "0.613 kg/m3",
      "What turns a speed squared into a pressure.",
      WIND_VELOCITY,
    ),
    figureColumn(
      "pressure_least",
      "Never taken below",
      "pressure",
      "16 psf",
      "Design rules put a floor under the pressure on anything that stands in the wind.",
      WIND_LEAST,
    ),
    figureColumn(
      "load_factor",
      "Share of this wind that is counted",
      "ratio",
      "1",
      "Speeds on newer maps belong to a wind that is almost never seen, and a design by allowable loads may then count 0.6 of it. 1 is on the safe side.",
      WIND_ALLOWABLE,
      USER_AUTHORITY,
    ),
    figureColumn(
      "weight_share",
      "Share of the weight that is counted on",
      "ratio",
      "0.6",
      "Weight holds things down, and may be less than you think. Only this share of it is set against the wind.",
      WIND_ALLOWABLE,
    ),
  ],
}

/**
 * How hard the wind pushes at the height of a platform.
 *
 * Needs: nothing. Gives: wind_speed, wind_exposure, wind_factors and exposure_factors (figures), wind (one row).
 */
export const windPressure: readonly Entry[] = [
  {
    kind: "input",
    name: "wind_speed",
    label: "Wind speed of your place",
    measure: "speed",
    default: "115 mph",
    least: "20 mph",
    most: "250 mph",
    why: "The gust for which buildings near you are designed: ask your authority, or look at its map. The speed to start from is one town's.",
    sources: [USER_AUTHORITY, WIND_EXAMPLE],
    cautions: [WIND_DECIDES, "On a coast, a ridge or an island the wind is stronger than inland."],
  },
  {
    kind: "input",
    name: "wind_exposure",
    label: "What the wind blows over before it reaches you",
    measure: "text",
    default: "B",
    choices: ["B", "C", "D"],
    why: "B: houses or woods all round. C: open fields with a few trees. D: open water or flat shore. If in doubt take the later letter.",
    sources: [USER, WIND_EXPOSURE],
  },
  figureTable({
    name: "exposure_factors",
    label: "Exposure near the ground",
    why: "Houses and woods slow the wind near the ground; water does not.",
    sources: [WIND_EXPOSURE, WIND_EXAMPLE],
    columns: {
      exposure: { label: "Exposure", measure: "text", why: "As in the choice above." },
      factor: {
        label: "Factor",
        measure: "ratio",
        why: "At 15 ft and lower. For B the higher of the two published values, the one for parts of a building.",
      },
    },
    rows: [
      { exposure: "B", factor: "0.7" },
      { exposure: "C", factor: "0.85" },
      { exposure: "D", factor: "1.03" },
    ],
  }),
  factors,
  {
    kind: "table",
    name: "wind",
    label: "Pressure of the wind",
    why: "From the wind speed of your place, step by step, in one row.",
    sources: [WIND_VELOCITY],
    rows: { kind: "formula", formula: "1" },
    columns: [
      column(
        "exposure_factor",
        "Exposure factor of your place",
        "ratio",
        "INDEX(exposure_factors.factor; MATCH(wind_exposure; exposure_factors.exposure; 0))",
        "From the table.",
        WIND_EXPOSURE,
      ),
      column(
        "from_speed",
        "From its speed",
        "pressure",
        `${windFactor("air_half_density")} * exposure_factor * ${windFactor("topography")} * ${windFactor("directionality")} * wind_speed ^ 2`,
        "Twice the speed, four times the pressure.",
        WIND_VELOCITY,
      ),
      column(
        "velocity_pressure",
        "Used here",
        "pressure",
        `IF(${windFactor("pressure_known")} > 0; ${windFactor("pressure_known")}; from_speed)`,
        "Yours if you entered one.",
        WIND_VELOCITY,
        USER_AUTHORITY,
      ),
    ],
  },
]
