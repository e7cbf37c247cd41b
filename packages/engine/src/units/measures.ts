import { ANGLE_UNITS, degree } from "./definitions/angle.ts"
import { AREA_UNITS, squareFoot, squareMetre } from "./definitions/area.ts"
import { DENSITY_UNITS, kilogramPerCubicMetre, poundPerCubicFoot } from "./definitions/density.ts"
import { ENERGY_UNITS, wattHour } from "./definitions/energy.ts"
import { FORCE_UNITS, kilonewton, poundForce } from "./definitions/force.ts"
import { inch, LENGTH_UNITS, millimetre } from "./definitions/length.ts"
import { kilogram, MASS_UNITS, pound } from "./definitions/mass.ts"
import * as moment from "./definitions/moment.ts"
import * as money from "./definitions/money.ts"
import { one, percent, piece } from "./definitions/plain.ts"
import * as pressure from "./definitions/pressure.ts"
import { metrePerSecond, milePerHour, SPEED_UNITS } from "./definitions/speed.ts"
import * as temperature from "./definitions/temperature.ts"
import { hour, TIME_UNITS } from "./definitions/time.ts"
import { cubicFoot, cubicMetre, cubicYard, VOLUME_UNITS } from "./definitions/volume.ts"
import { FEET_INCHES, HOURS_MINUTES } from "./feet-inches.ts"
import type { Measure, MeasureId } from "./measure.ts"
import { type NumberForm, numberForm, writtenIn } from "./number-form.ts"
import {
  CENTS,
  COARSE,
  FINE,
  FOUR_DIGITS,
  HUNDREDTHS_BELOW_ONE,
  TENTHS,
  THOUSANDTHS,
  WHOLE,
  WHOLE_FROM_TEN,
} from "./style.ts"

export type NumberMeasureId = Exclude<MeasureId, "text" | "yes_no">

/** Every measure that is a number. */
export const NUMBER_FORMS: Readonly<Record<NumberMeasureId, NumberForm>> = {
  length: numberForm(
    "a length",
    "m",
    LENGTH_UNITS,
    { bare: inch, style: FEET_INCHES, example: "10' 6 1/2\"" },
    writtenIn(millimetre, WHOLE_FROM_TEN, "3200 mm"),
  ),
  // What bends or moves a little: a sixteenth of an inch would swallow it.
  small_length: numberForm(
    "a length",
    "m",
    LENGTH_UNITS,
    writtenIn(inch, THOUSANDTHS, "0.034 in"),
    writtenIn(millimetre, HUNDREDTHS_BELOW_ONE, "0.9 mm"),
  ),
  area: numberForm(
    "an area",
    "m2",
    AREA_UNITS,
    writtenIn(squareFoot, FINE, "192 sq ft"),
    writtenIn(squareMetre, FINE, "17.8 m²"),
  ),
  volume: numberForm(
    "a volume",
    "m3",
    VOLUME_UNITS,
    writtenIn(cubicFoot, FINE, "24 cu ft"),
    writtenIn(cubicMetre, FINE, "0.68 m³"),
  ),
  bulk_volume: numberForm(
    "a volume",
    "m3",
    VOLUME_UNITS,
    writtenIn(cubicYard, FINE, "2.5 cu yd"),
    writtenIn(cubicMetre, FINE, "2 m³"),
  ),
  mass: numberForm(
    "a mass",
    "kg",
    MASS_UNITS,
    writtenIn(pound, COARSE, "40 lb"),
    writtenIn(kilogram, COARSE, "18 kg"),
  ),
  force: numberForm(
    "a force",
    "N",
    FORCE_UNITS,
    writtenIn(poundForce, COARSE, "1,250 lb"),
    writtenIn(kilonewton, FINE, "5.5 kN"),
  ),
  pressure: numberForm(
    "a pressure",
    "Pa",
    pressure.PRESSURE_UNITS,
    writtenIn(pressure.poundPerSquareFoot, COARSE, "40 psf"),
    writtenIn(pressure.kilopascal, FINE, "1.9 kPa"),
  ),
  stress: numberForm(
    "a stress",
    "Pa",
    pressure.PRESSURE_UNITS,
    writtenIn(pressure.poundPerSquareInch, COARSE, "850 psi"),
    writtenIn(pressure.megapascal, FINE, "5.9 MPa"),
  ),
  moment: numberForm(
    "a moment",
    "N.m",
    moment.MOMENT_UNITS,
    writtenIn(moment.poundFoot, COARSE, "500 lb·ft"),
    writtenIn(moment.kilonewtonMetre, FINE, "0.68 kN·m"),
  ),
  line_load: numberForm(
    "a load per length",
    "N/m",
    moment.LINE_LOAD_UNITS,
    writtenIn(moment.poundPerFoot, COARSE, "60 lb/ft"),
    writtenIn(moment.kilonewtonPerMetre, FINE, "0.9 kN/m"),
  ),
  density: numberForm(
    "a density",
    "kg/m3",
    DENSITY_UNITS,
    writtenIn(poundPerCubicFoot, COARSE, "100 lb/cu ft"),
    writtenIn(kilogramPerCubicMetre, COARSE, "1600 kg/m³"),
  ),
  temperature: numberForm(
    "a temperature",
    "K",
    temperature.TEMPERATURE_UNITS,
    writtenIn(temperature.fahrenheit, TENTHS, "70 °F"),
    writtenIn(temperature.celsius, TENTHS, "21 °C"),
  ),
  temperature_difference: numberForm(
    "a temperature difference",
    "K",
    temperature.TEMPERATURE_DIFFERENCE_UNITS,
    writtenIn(temperature.fahrenheitDegree, TENTHS, "40 F deg"),
    writtenIn(temperature.kelvinDifference, TENTHS, "22 K"),
  ),
  // A bare 0.000121 is per kelvin, as tables print it; a person reads 121 millionths more easily.
  expansion: numberForm("an expansion per degree", "1/K", temperature.EXPANSION_UNITS, {
    ...writtenIn(temperature.millionthsPerKelvin, FINE, "121 millionths per K"),
    bare: temperature.perKelvin,
  }),
  angle: numberForm("an angle", "rad", ANGLE_UNITS, writtenIn(degree, FINE, "30°", "°")),
  time: numberForm("a time", "s", TIME_UNITS, {
    bare: hour,
    style: HOURS_MINUTES,
    example: "2 h 15 min",
  }),
  speed: numberForm(
    "a speed",
    "m/s",
    SPEED_UNITS,
    writtenIn(milePerHour, TENTHS, "115 mph"),
    writtenIn(metrePerSecond, TENTHS, "50 m/s"),
  ),
  energy: numberForm("an energy", "J", ENERGY_UNITS, writtenIn(wattHour, COARSE, "450 Wh")),
  count: { ...numberForm("a count", "1", [one, piece], writtenIn(one, WHOLE, "12", "")), whole: true },
  share: numberForm("a share", "1", [percent], writtenIn(percent, FINE, "10 %")),
  ratio: numberForm("a plain number", "1", [one, percent], writtenIn(one, FOUR_DIGITS, "1.25", "")),
  money: numberForm(
    "an amount of money",
    "1",
    money.MONEY_UNITS,
    writtenIn(money.money, CENTS, "1,250.50", ""),
  ),
  money_per_area: numberForm(
    "an amount of money per area",
    "1/m2",
    money.MONEY_PER_AREA_UNITS,
    writtenIn(money.perSquareFoot, CENTS, "12.50 per sq ft"),
    writtenIn(money.perSquareMetre, CENTS, "135.00 per m²"),
  ),
}

function described(id: NumberMeasureId): Measure {
  const { says, si, dimension, writing } = NUMBER_FORMS[id]
  const { us, metric } = writing
  return {
    id,
    says,
    si,
    dimension,
    usual: { us: us.bare.names[0] ?? "", metric: metric.bare.names[0] ?? "" },
    example: { us: us.example, metric: metric.example },
  }
}

function unitless(id: "text" | "yes_no", says: string, example: string): Measure {
  return { id, says, si: "", usual: { us: "", metric: "" }, example: { us: example, metric: example } }
}

const NUMBER_IDS = Object.keys(NUMBER_FORMS) as NumberMeasureId[]

export const MEASURES = Object.fromEntries(
  [
    ...NUMBER_IDS.map(described),
    unitless("text", "a text", "some words"),
    unitless("yes_no", "a yes or no", "yes"),
  ].map((each) => [each.id, each]),
) as Readonly<Record<MeasureId, Measure>>

export function measure(id: MeasureId): Measure {
  return MEASURES[id]
}

/** Undefined for texts, and for yes or no. */
export function formOf(id: MeasureId): NumberForm | undefined {
  return id === "text" || id === "yes_no" ? undefined : NUMBER_FORMS[id]
}
