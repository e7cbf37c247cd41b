import type { Column } from "@pegbook/engine"
import { column } from "../columns.ts"
import {
  BEAM_STABILITY,
  BEARING_LENGTH,
  CSA_FACTORS,
  CSA_RESISTANCE,
  FLAT_FACTORS,
  INCISED_SPECIES,
  INCISING,
  LOAD_DURATION,
  SIZE_FACTORS,
  STABILITY_BY_SHAPE,
  WET_SERVICE,
} from "../sources-strength.ts"
import { factor } from "../strength/design-factors.ts"
import { ofEach } from "../strength/of-each.ts"
import { type AnyMember, threshold } from "./member.ts"
import { either, LIMIT_STATES, published, sizeClass, sizeFactor, VALUES, wetFactor } from "./member-values.ts"

/** By the width of the face that lies level; the table ends with 10 in and wider. */
const FLAT =
  'IF(width_class < MIN(flat_factors.width); NA(); IF(thickness_class = "2 or 3 in"; INDEX(flat_factors.thin; MATCH(width_class; flat_factors.width; 1)); INDEX(flat_factors.thick; MATCH(width_class; flat_factors.width; 1))))'

const LEAN_SHARE = `(1 + lean_stress / fb_before_lean) / ${threshold("lean_spread")}`
const LEANING = `${LEAN_SHARE} - SQRT((${LEAN_SHARE}) ^ 2 - lean_stress / fb_before_lean / ${threshold("lean_meeting")})`

/** Columns of published strengths, of each factor, and of the stresses that are left. */
export function strengthColumns(members: readonly AnyMember[]): readonly Column[] {
  const sharing = ofEach(
    members.map(({ shares }) =>
      shares === undefined ? "FALSE()" : `${shares} <= ${threshold("sharing_spacing")}`,
    ),
  )
  const step = (ahead: number): string =>
    `AND(INDEX(csa_size_factors.depth; csa_row + ${ahead}) = INDEX(csa_size_factors.depth; csa_row); breadth >= INDEX(csa_size_factors.least; csa_row + ${ahead}))`
  const sizeInside = 'OR(INDEX(design_values.size_inside; MAX(1; found)); thickness_class = "5 in and more")'
  return [
    published("fb", "fb", "Bending, published", "Before any factor."),
    published("fv", "fv", "Shear, published", "Before any factor."),
    published("fc_perp", "fcp", "Bearing, published", "Across the grain, before any factor."),
    published("e", "e", "Stiffness, published", "Before any factor."),
    column(
      "duration",
      "How long its load lasts in all",
      "text",
      ofEach(members.map((member) => member.duration ?? "load_duration")),
      "Over the life of the platform, added up. A gust lasts minutes.",
      LOAD_DURATION,
    ),
    column(
      "duration_factor",
      "Load duration factor, CD or KD",
      "ratio",
      either(
        "INDEX(csa_durations.factor; MATCH(duration; csa_durations.duration; 0))",
        "INDEX(load_durations.factor; MATCH(duration; load_durations.duration; 0))",
      ),
      "Wood carries a short load better than a lasting one.",
      LOAD_DURATION,
      CSA_FACTORS,
    ),
    column(
      "csa_row",
      "Row of the Canadian size factors",
      "count",
      `IF(found = 0; NA(); MATCH(${sizeClass("metric_width")}; csa_size_factors.depth; 0))`,
      "The first row of its depth.",
      CSA_FACTORS,
    ),
    column(
      "size_factor",
      "Size factor, CF or KZ",
      "ratio",
      `IF(found = 0; NA(); ${either(`INDEX(csa_size_factors.factor; csa_row + IF(${step(1)}; IF(${step(2)}; 2; 1); 0))`, `IF(${sizeInside}; 1; IF(thickness_class = "2 or 3 in"; ${sizeFactor("thin")}; ${sizeFactor("thick")}))`)})`,
      "A slim piece is stronger for its size. 1 where the size is inside the published value. On bending; by limit states on shear as well.",
      SIZE_FACTORS,
      CSA_FACTORS,
    ),
    column(
      "wet_bending_factor",
      "Wet service factor on bending",
      "ratio",
      `IF(found = 0; NA(); IF(AND(NOT(${LIMIT_STATES}); fb_published * size_factor <= ${threshold("wet_bending")}); 1; ${wetFactor("fb", "csa_wet_bending", true)}))`,
      "1 where it stays dry, and by allowable stress where Fb × CF is not over the threshold.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_shear_factor",
      "Wet service factor on shear",
      "ratio",
      wetFactor("fv", "csa_wet_shear", true),
      "1 where it stays dry.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_bearing_factor",
      "Wet service factor on bearing",
      "ratio",
      wetFactor("fc_perp", "csa_wet_bearing", false),
      "Wet wood is crushed across the grain far more easily.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "wet_stiffness_factor",
      "Wet service factor on stiffness",
      "ratio",
      wetFactor("e", "csa_wet_stiffness", true),
      "Wet wood sags more.",
      WET_SERVICE,
      CSA_FACTORS,
    ),
    column(
      "is_incised",
      "Incised",
      "yes_no",
      `AND(incised; INDEX(species_traits.incised; MATCH(species; species_traits.species; 0)); OR(NOT(${LIMIT_STATES}); thin))`,
      "Only a species that needs it; by limit states, only thin pieces.",
      INCISED_SPECIES,
      CSA_FACTORS,
    ),
    column(
      "incising_factor",
      "Incising factor on strength",
      "ratio",
      `IF(is_incised; ${either(`IF(wet_service; ${factor("csa_incised_wet")}; ${factor("csa_incised_dry")})`, factor("incising_strength_factor"))}; 1)`,
      "The slits cut for the preservative cost strength.",
      INCISING,
      CSA_FACTORS,
    ),
    column(
      "incising_stiffness_factor",
      "Incising factor on stiffness",
      "ratio",
      `IF(is_incised; ${either(`IF(wet_service; ${factor("csa_incised_wet_stiffness")}; ${factor("csa_incised_dry_stiffness")})`, factor("incising_stiffness_factor"))}; 1)`,
      "The slits cost little stiffness.",
      INCISING,
      CSA_FACTORS,
    ),
    column(
      "sharing_factor",
      "Members that share, Cr or KH",
      "ratio",
      `IF(${sharing}; ${either(factor("csa_system_factor"), factor("repetitive_factor"))}; 1)`,
      "Three or more joists under one floor help a weak one out.",
      SIZE_FACTORS,
      CSA_FACTORS,
    ),
    column(
      "flat_factor",
      "Flat use factor, Cfu",
      "ratio",
      either("1", `IF(depth < thickness; ${FLAT}; 1)`),
      "A plank laid on its wide face bears a little more. 1 for what stands on edge or is square, and by limit states.",
      FLAT_FACTORS,
    ),
    column(
      "free_length",
      "Upper edge free over",
      "length",
      ofEach(
        members.map(
          ({ held }) => held ?? `IF(depth <= ${threshold("lean_ratio")} * breadth; 0 * depth; span)`,
        ),
      ),
      "How far it is between things that keep its upper edge from leaning over: the joists on a beam; 0 under sheets and boards, which hold a piece that is not too deep for its thickness; one that is counts as free over its span.",
      STABILITY_BY_SHAPE,
    ),
    column(
      "lean_length",
      "Free length that counts",
      "length",
      `IF(free_length < ${threshold("lean_from")} * depth; ${threshold("lean_short")} * free_length; ${threshold("lean_long")} * free_length + ${threshold("lean_depths")} * depth)`,
      "By how an even load leans a beam over.",
      BEAM_STABILITY,
    ),
    column(
      "slenderness",
      "Slenderness, RB",
      "ratio",
      "SQRT(lean_length * depth / breadth ^ 2)",
      "Beyond 50 the rule does not hold.",
      BEAM_STABILITY,
    ),
    column(
      "fb_before_lean",
      "Bending stress before leaning over, Fb*",
      "stress",
      "fb_published * duration_factor * temperature_factor * wet_bending_factor * size_factor * incising_factor * sharing_factor",
      "The published value with every factor but those for leaning over and for lying flat.",
      BEAM_STABILITY,
    ),
    column(
      "lean_stress",
      "Stress at which it leans over, FbE",
      "stress",
      `IF(found = 0; NA(); IF(slenderness = 0; 0 * fb_published; ${either("0 * fb_published", `${threshold("lean_share")} * INDEX(design_values.e_min; found) * temperature_factor * wet_stiffness_factor * incising_stiffness_factor / slenderness ^ 2`)}))`,
      "0 where the edge is held all along, and by limit states: then nothing is taken off.",
      BEAM_STABILITY,
    ),
    column(
      "stability_factor",
      "Stability factor, CL or KL",
      "ratio",
      either(
        factor("csa_lateral_factor"),
        `IF(OR(depth <= ${threshold("lean_bare")} * breadth; slenderness = 0); ${factor("stability_factor")}; IF(slenderness > ${threshold("lean_most")}; NA(); ${LEANING}))`,
      ),
      "1 where sheets or boards hold its upper edge, and where it is no more than about twice as deep as thick. By limit states 1: hold pieces more than four times as deep as thick at their ends.",
      BEAM_STABILITY,
      STABILITY_BY_SHAPE,
      CSA_RESISTANCE,
    ),
    column(
      "temperature_factor",
      "Temperature factor, Ct",
      "ratio",
      either("1", factor("temperature_factor")),
      "1 for timber that cools at night.",
      WET_SERVICE,
    ),
    column(
      "resistance_factor",
      "Resistance factor, bending and shear",
      "ratio",
      either(factor("resistance_factor"), "1"),
      "1 in allowable stress design.",
      CSA_RESISTANCE,
    ),
    column(
      "bearing_resistance_factor",
      "Resistance factor, bearing",
      "ratio",
      either(factor("bearing_resistance_factor"), "1"),
      "1 in allowable stress design.",
      CSA_RESISTANCE,
    ),
    column(
      "bearing_length_factor",
      "Bearing length factor, Cb or KB",
      "ratio",
      either(factor("csa_bearing_length_factor"), factor("bearing_length_factor")),
      "At the end of a piece nothing is added.",
      BEARING_LENGTH,
      CSA_FACTORS,
    ),
    column(
      "fb_allowed",
      "Bending stress it may bear",
      "stress",
      "fb_before_lean * stability_factor * flat_factor * resistance_factor",
      "The published value, times each factor in this row.",
      ...VALUES,
    ),
    column(
      "fv_allowed",
      "Shear stress it may bear",
      "stress",
      `fv_published * duration_factor * temperature_factor * wet_shear_factor * incising_factor * resistance_factor * ${either("size_factor * sharing_factor", "1")}`,
      "By limit states, size and sharing count here too.",
      ...VALUES,
    ),
    column(
      "fc_perp_allowed",
      "Bearing stress it may bear",
      "stress",
      `fc_perp_published * temperature_factor * wet_bearing_factor * bearing_length_factor * bearing_resistance_factor * ${either("duration_factor * incising_factor", "1")}`,
      "By allowable stress, duration and incising do not count here.",
      ...VALUES,
      BEARING_LENGTH,
    ),
    column(
      "e_used",
      "Stiffness in use",
      "stress",
      "e_published * temperature_factor * wet_stiffness_factor * incising_stiffness_factor",
      "Duration does not count here.",
      ...VALUES,
    ),
  ]
}
