import { fixingsAndTreatment } from "./fixings-and-treatment.ts"
import { groundAndLimits } from "./ground-and-limits.ts"
import type { PublishedValue } from "./published-value.ts"
import { timberAndSurface } from "./timber-and-surface.ts"
import { windAndFasteners } from "./wind-and-fasteners.ts"
import { workedExamples } from "./worked-examples.ts"

/** Every published value that a template uses or reproduces. Add a row to one of the five lists when a template uses another. */
export const PUBLISHED: readonly PublishedValue[] = [
  ...groundAndLimits,
  ...fixingsAndTreatment,
  ...timberAndSurface,
  ...windAndFasteners,
  ...workedExamples,
]

/** Records that are a rule in words, or a formula: there is no value to compare. Other tests hold them. */
export const IN_WORDS: Readonly<Record<string, string>> = {
  "a-001 to a-005": "bearing values of one code; test/strength/supports compares each",
  "a-010 to a-018": "bearing values of another code; test/strength/supports compares each",
  "a-009": "strip topsoil; bearing values are for undisturbed soil",
  "a-024": "ways to protect a footing from frost",
  "a-036": "blocks on the surface heave",
  "b-023": "every trigger is local law",
  "c-018": "in which state soil is measured",
  "c-025": "volume over a grid",
  "c-030": "a plane that balances cut and fill",
  "c-031": "plane of least squares",
  beam_formulas_single_span: "formulas; test/beam and test/strength hold them",
  continuous_beam_coefficients: "formulas; test/beam holds them",
  continuous_beam_pattern_maxima: "formulas; test/beam holds them",
  csa_o86_factors:
    "a table of factors, some read and some recalled; test/strength/published-tables compares them",
  csa_o86_specified_strengths: "a table of strengths; test/strength/published-tables compares them",
  "d-010": "nails of a joist on a sill, where screws are used here",
  deflection_limits: "a table of limits; test/strength/published-tables compares them",
  nds_adjustment_factors: "a table of factors; test/strength/published-tables compares them",
  nds_reference_design_values: "a table of strengths; test/strength/published-tables compares them",
  panel_design_capacities: "a table of strengths; test/strength/boards-and-sheets works with them",
  panel_load_formulas: "formulas; test/strength/boards-and-sheets works them by hand",
  panel_floor_live_loads: "a table of loads; test/strength/published-tables compares them",
  panel_span_ratings: "a table of ratings; test/span-tables holds it",
  soil_bearing: "half where water is near; test/strength/supports holds it",
  worked_examples: "test/strength reproduces them",
  "d-018": "plain steel with borate only indoors and dry",
  "d-023": "government advice, the same as the code's",
  "d-024": "rank of ACQ",
  "d-025": "rank of copper azole",
  "d-026": "rank of CCA",
  "d-027": "rank of MCA",
  "d-028": "rank of borate",
  "d-029": "do not mix metals; severe places",
  "d-030": "a laboratory's finding, shown and not followed",
  "e-001": "meaning of UC4A",
  "e-002": "meaning of UC4B",
  "e-003": "treaters disagree about joists",
  "e-005": "meaning of UC3A and UC3B",
  "e-008": "which cuts are treated",
  "e-016": "silica from sawing concrete",
  "e-021": "handling treated timber",
  "e-023": "notice before digging, one town's",
  "e-025": "work that needs a locate",
  "f-024": "density of wood",
  "f-031": "board foot, softwood",
  "f-041": "fresh and dry weight of one treated joist",
  "h-001": "thermal growth",
  "h-010": "span of the lists for plastics",
  "i-013": "bending of a post; test/wind holds it",
  "i-016": "poles that may lean a little; a figure that the user sets",
  "i-017": "hanging ratios; their pairs are i-018",
}
