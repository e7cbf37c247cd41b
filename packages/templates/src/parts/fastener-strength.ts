import type { Entry, Section } from "@pegbook/engine"
import { COMMON_PRACTICE, GEOMETRY, USER } from "../sources.ts"
import {
  FASTENER_PENETRATION,
  FASTENER_WET,
  LOAD_DURATION,
  NAIL_LATERAL,
  SCREW_LATERAL,
  SCREW_ULTIMATE,
  SCREW_WITHDRAWAL,
  SPECIFIC_GRAVITY,
} from "../sources-actions.ts"

interface Species {
  readonly name: string
  readonly gravity: string
  readonly sideways: string
}

// Gravity: records of specific_gravity. Sideways constants by group: d-034 to d-039.
const SPECIES: readonly Species[] = [
  { name: "Douglas fir-larch", gravity: "0.5", sideways: "3960 psi" },
  { name: "Southern pine", gravity: "0.55", sideways: "3960 psi" },
  { name: "Hem-fir", gravity: "0.43", sideways: "3240 psi" },
  { name: "Spruce-pine-fir", gravity: "0.42", sideways: "2520 psi" },
  { name: "Redwood", gravity: "0.37", sideways: "2520 psi" },
  { name: "Western cedars", gravity: "0.36", sideways: "2520 psi" },
]
const NAMES = SPECIES.map(({ name }) => name)

const DECIDES =
  "Values of one handbook for plain wood screws. Where a life hangs on a joint (a guard, a high post), use fasteners with an evaluation report, and have a licensed engineer and your local code decide."

/** A joint whose fasteners carry a load. Texts are names of entries or formulas. */
export interface LoadedJoint {
  /** Begins its names: "tie" gives tie_fastener_check. */
  readonly prefix: string
  /** What a reader calls it: "ties against uplift". */
  readonly joint: string
  /** The force on all fasteners of the joint. */
  readonly force: string
  /** How many fasteners share it. */
  readonly count: string
  /** `withdrawal`: pulled along the fastener. `lateral`: pushed across it. */
  readonly direction: "withdrawal" | "lateral"
  readonly fastener: "screw" | "nail"
  readonly duration: "wind" | "people"
}

/**
 * What screws and nails hold, and the joints that lean on them. A nail is only given across its shank: in wet timber
 * that dries, a nail's hold against being pulled out is not to be counted on.
 *
 * Needs: the names that the joints are given; near_limit_share, rounding_tolerance.
 * Gives: fastener_species, species_fasteners, fastener_gravity, screw_diameter, screw_thread, screw_in_end_grain,
 * screw_withdrawal_constant, screw_withdrawal_per_length, screw_withdrawal, screw_withdrawal_ultimate,
 * screw_lateral_constant, penetration_least, penetration_full, screw_penetration_share, screw_lateral, nail_lateral_full,
 * nail_diameter, nail_length, nail_side_thickness, nail_gap, nail_penetration, nail_penetration_share, nail_lateral,
 * fastener_wet_factor, duration_wind, duration_people; for each joint `_fastener_allowed`, `_fastener_force`,
 * `_fasteners_needed` and the check `_fastener_check`.
 */
export function fastenerStrength(joints: readonly LoadedJoint[]): Section {
  return {
    id: "fastener-strength",
    title: "What the fasteners hold",
    says: "Screws pulled out or pushed sideways, by a handbook's formulas, and the joints that lean on them.",
    entries: [...SCREWS, ...NAILS, ...CONDITIONS, ...joints.flatMap(jointEntries)],
  }
}

const SCREWS: readonly Entry[] = [
  {
    kind: "input",
    name: "fastener_species",
    label: "Wood that the fasteners hold in",
    measure: "text",
    default: "Spruce-pine-fir",
    choices: NAMES,
    why: "Heavy wood holds better. Treated timber's species is on its stamp.",
    sources: [USER, SPECIFIC_GRAVITY],
  },
  {
    kind: "table",
    name: "species_fasteners",
    label: "Wood and what it holds",
    rows: { kind: "figures" },
    why: "Two published properties of each wood that fasteners depend on.",
    sources: [SPECIFIC_GRAVITY, SCREW_LATERAL],
    columns: [
      {
        name: "species",
        label: "Wood",
        measure: "text",
        values: NAMES,
        why: "As on the stamp.",
        sources: [SPECIFIC_GRAVITY],
      },
      {
        name: "gravity",
        label: "Specific gravity",
        measure: "ratio",
        values: SPECIES.map(({ gravity }) => gravity),
        why: "Weight of the dry wood against water.",
        sources: [SPECIFIC_GRAVITY],
      },
      {
        name: "sideways",
        label: "Sideways constant",
        measure: "stress",
        values: SPECIES.map(({ sideways }) => sideways),
        why: "Of the handbook's group. Redwood and cedar are put in the weakest, as today's stands are lighter than the handbook's.",
        sources: [SCREW_LATERAL],
      },
    ],
  },
  {
    kind: "formula",
    name: "fastener_gravity",
    label: "Specific gravity of your wood",
    measure: "ratio",
    formula: "INDEX(species_fasteners.gravity; MATCH(fastener_species; species_fasteners.species; 0))",
    why: "From the table.",
    sources: [SPECIFIC_GRAVITY],
  },
  {
    kind: "input",
    name: "screw_diameter",
    label: "Diameter of the screw",
    measure: "length",
    default: "0.19 in",
    least: "0.1 in",
    most: "0.5 in",
    why: "Over the thread: 0.164 in for No. 8, 0.19 in for No. 10, 0.216 in for No. 12.",
    sources: [USER, SCREW_WITHDRAWAL],
  },
  {
    kind: "input",
    name: "screw_thread",
    label: "Thread in the timber that holds",
    measure: "length",
    default: "1 1/2 in",
    least: "1/4 in",
    most: "12 in",
    why: "Only the thread in the far piece holds against being pulled out.",
    sources: [USER],
  },
  {
    kind: "input",
    name: "screw_in_end_grain",
    label: "Screwed into end grain",
    measure: "yes_no",
    default: "no",
    why: "Into the end of a piece, along its grain, as through a rim into a joist.",
    sources: [USER],
    cautions: [
      "A screw in end grain counts for nothing against being pulled out: use a bracket, or a block beside the joint.",
    ],
  },
  {
    kind: "figure",
    name: "screw_withdrawal_constant",
    label: "Constant of the pull-out formula",
    measure: "stress",
    value: "2850 psi",
    why: "Pounds for each inch of diameter and inch of thread, in wood as heavy as water.",
    sources: [SCREW_WITHDRAWAL],
  },
  {
    kind: "formula",
    name: "screw_withdrawal_per_length",
    label: "Held against pulling out, per length of thread",
    measure: "line_load",
    formula: "screw_withdrawal_constant * fastener_gravity ^ 2 * screw_diameter",
    why: "In dry wood, for loads that last years.",
    sources: [SCREW_WITHDRAWAL],
  },
  {
    kind: "formula",
    name: "screw_withdrawal",
    label: "Held against pulling out, by one screw",
    measure: "force",
    formula:
      "IF(screw_in_end_grain; 0 * screw_withdrawal_per_length * screw_thread; screw_withdrawal_per_length * screw_thread)",
    why: "Nothing in end grain.",
    sources: [SCREW_WITHDRAWAL],
    cautions: [DECIDES],
  },
  {
    kind: "figure",
    name: "screw_ultimate_constant",
    label: "Constant of the force that pulls it out",
    measure: "stress",
    value: "15700 psi",
    why: "What a test would show, on average.",
    sources: [SCREW_ULTIMATE],
  },
  {
    kind: "formula",
    name: "screw_ultimate",
    label: "Pulled out in a test at about",
    measure: "force",
    formula: "screw_ultimate_constant * fastener_gravity ^ 2 * screw_diameter * screw_thread",
    why: "Five and a half times what is allowed: wood varies, and loads last. Nothing leans on this.",
    sources: [SCREW_ULTIMATE],
  },
  {
    kind: "formula",
    name: "screw_lateral_constant",
    label: "Sideways constant of your wood",
    measure: "stress",
    formula: "INDEX(species_fasteners.sideways; MATCH(fastener_species; species_fasteners.species; 0))",
    why: "From the table.",
    sources: [SCREW_LATERAL],
  },
  {
    kind: "figure",
    name: "penetration_least",
    label: "Least penetration, in diameters",
    measure: "ratio",
    value: "6",
    why: "A fastener that goes in less counts for nothing.",
    sources: [FASTENER_PENETRATION],
  },
  {
    kind: "figure",
    name: "penetration_full",
    label: "Penetration for the full value, in diameters",
    measure: "ratio",
    value: "10",
    why: "In between, the value falls with the penetration.",
    sources: [FASTENER_PENETRATION, NAIL_LATERAL],
  },
  {
    kind: "formula",
    name: "screw_penetration_share",
    label: "Share for the screw's penetration",
    measure: "ratio",
    formula:
      "IF(screw_thread < penetration_least * screw_diameter; 0; MIN(1; screw_thread / (penetration_full * screw_diameter)))",
    why: "How much of the sideways value counts.",
    sources: [FASTENER_PENETRATION],
  },
  {
    kind: "formula",
    name: "screw_lateral",
    label: "Held sideways, by one screw",
    measure: "force",
    formula: "screw_lateral_constant * screw_diameter ^ 2 * screw_penetration_share",
    why: "In dry wood, for loads that last years.",
    sources: [SCREW_LATERAL, FASTENER_PENETRATION],
    cautions: [DECIDES, "Hard deck screws snap where soft nails bend: do not hang a joist on screws alone."],
  },
]

const NAILS: readonly Entry[] = [
  {
    kind: "figure",
    name: "nail_lateral_full",
    label: "A 16d common nail holds sideways",
    measure: "force",
    value: "141 lb",
    why: "In Douglas fir-larch through a piece 1 1/2 in thick, driven deep. Lighter woods hold less.",
    sources: [NAIL_LATERAL],
  },
  {
    kind: "figure",
    name: "nail_diameter",
    label: "Diameter of the nail",
    measure: "length",
    value: "0.162 in",
    why: "Of a 16d common nail.",
    sources: [NAIL_LATERAL],
  },
  {
    kind: "figure",
    name: "nail_length",
    label: "Length of the nail",
    measure: "length",
    value: "3 1/2 in",
    why: "Of a 16d common nail.",
    sources: [NAIL_LATERAL],
  },
  {
    kind: "input",
    name: "nail_side_thickness",
    label: "Thickness of the piece nailed on",
    measure: "length",
    default: "1 1/2 in",
    least: "1/2 in",
    most: "3 in",
    why: "The nail's value is for 1 1/2 in; a thinner piece holds less.",
    sources: [USER, NAIL_LATERAL],
  },
  {
    kind: "input",
    name: "nail_gap",
    label: "Something between the two",
    measure: "length",
    default: "0 in",
    least: "0 in",
    most: "2 in",
    why: "A sheet or a packer between the pieces takes away from the penetration.",
    sources: [USER],
  },
  {
    kind: "formula",
    name: "nail_penetration",
    label: "Nail in the far piece",
    measure: "length",
    formula: "MAX(0; nail_length - nail_side_thickness - nail_gap)",
    why: "What is left of its length.",
    sources: [GEOMETRY],
  },
  {
    kind: "formula",
    name: "nail_penetration_share",
    label: "Share for the nail's penetration",
    measure: "ratio",
    formula:
      "IF(nail_penetration < penetration_least * nail_diameter; 0; MIN(1; nail_penetration / (penetration_full * nail_diameter)))",
    why: "How much of its value counts.",
    sources: [NAIL_LATERAL],
  },
  {
    kind: "formula",
    name: "nail_lateral",
    label: "Held sideways, by one nail",
    measure: "force",
    formula: "nail_lateral_full * nail_penetration_share",
    why: "In dry wood, for loads that last years.",
    sources: [NAIL_LATERAL],
    cautions: [DECIDES],
  },
]

const CONDITIONS: readonly Entry[] = [
  {
    kind: "figure",
    name: "fastener_wet_factor",
    label: "Outdoors, wet",
    measure: "ratio",
    value: "0.7",
    why: "Wood that gets wet and dries lets go of its fasteners.",
    sources: [FASTENER_WET],
  },
  {
    kind: "figure",
    name: "duration_wind",
    label: "Against wind",
    measure: "ratio",
    value: "1.6",
    why: "Wood bears a gust better than a load that stays.",
    sources: [LOAD_DURATION],
  },
  {
    kind: "figure",
    name: "duration_people",
    label: "Under people",
    measure: "ratio",
    value: "1",
    why: "The values are for such loads.",
    sources: [LOAD_DURATION],
  },
]

function jointEntries(joint: LoadedJoint): readonly Entry[] {
  const { prefix } = joint
  const one = `${joint.fastener}_${joint.direction}`
  if (one === "nail_withdrawal")
    throw new RangeError(
      `The joint "${prefix}" pulls at nails, which are not to be counted on that way; use screws`,
    )
  const value = [
    joint.direction === "withdrawal"
      ? SCREW_WITHDRAWAL
      : joint.fastener === "nail"
        ? NAIL_LATERAL
        : SCREW_LATERAL,
  ]
  return [
    {
      kind: "formula",
      name: `${prefix}_fastener_allowed`,
      label: `One fastener may carry, ${joint.joint}`,
      measure: "force",
      formula: `${one} * fastener_wet_factor * duration_${joint.duration}`,
      why: "Its value, outdoors, for as long as this load lasts.",
      sources: [...value, FASTENER_WET, LOAD_DURATION],
    },
    {
      kind: "formula",
      name: `${prefix}_fastener_force`,
      label: `Force on one fastener, ${joint.joint}`,
      measure: "force",
      formula: `(${joint.force}) / (${joint.count})`,
      why: "Shared alike.",
      sources: [COMMON_PRACTICE],
    },
    {
      kind: "formula",
      name: `${prefix}_fasteners_needed`,
      label: `Fasteners needed, ${joint.joint}`,
      measure: "count",
      formula: `ROUNDUP((${joint.force}) / ${prefix}_fastener_allowed - rounding_tolerance; 0)`,
      why: "Force over what one may carry, counted up.",
      sources: value,
    },
    {
      kind: "check",
      name: `${prefix}_fastener_check`,
      label: `Do the fasteners hold, ${joint.joint}?`,
      measure: "force",
      demand: `${prefix}_fastener_force`,
      limit: `${prefix}_fastener_allowed`,
      sense: "at_most",
      near: "near_limit_share",
      why: "A joint is as strong as its fasteners, at best.",
      sources: [...value, FASTENER_PENETRATION],
      cautions: [DECIDES],
      advice: [
        `Use {${prefix}_fasteners_needed} fasteners, thicker or longer ones, or a metal bracket made for it.`,
      ],
    },
  ]
}
