import type { CheckEntry, Column, MeasureId, Remedy, Section, Source, TableEntry } from "@pegbook/engine"
import { column, figureColumn } from "../columns.ts"
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
  YIELD_MODES,
} from "../sources-actions.ts"
import { figureTable } from "../strength/figure-table.ts"
import { ofEach } from "../strength/of-each.ts"
import { bendingYields, yieldColumns, yieldFactors } from "../strength/yield-modes.ts"

// Gravity: records of specific_gravity. Sideways constants by group: d-034 to d-039.
const SPECIES = [
  ["Douglas Fir-Larch", "0.5", "3960 psi"],
  ["Southern Pine", "0.55", "3960 psi"],
  ["Hem-Fir", "0.43", "3240 psi"],
  ["Spruce-Pine-Fir", "0.42", "2520 psi"],
  ["Redwood", "0.37", "2520 psi"],
  ["Western Cedars", "0.36", "2520 psi"],
] as const

const DECIDES =
  "Values of one handbook for plain wood screws and nails. Where a life hangs on a joint (a guard, a high post), use fasteners with an evaluation report, and have a licensed engineer and your local code decide."

/** A joint whose fasteners carry a load. Formulas, and figures as typed with their units. */
export interface LoadedJoint {
  /** What a reader calls it: "ties against uplift". */
  readonly joint: string
  /** The force on all fasteners of the joint, and how many share it: formulas. */
  readonly force: string
  readonly count: string
  /** `pulled`: along the fastener. `pushed`: across it. */
  readonly way: "pulled" | "pushed"
  readonly fastener: "screw" | "nail" | "bolt"
  readonly diameter: string
  /** How much of it is in the timber that holds: of a screw, thread. */
  readonly holds: string
  /** How thick the piece is that it goes through first, and whether that is a metal connector. */
  readonly through: string
  readonly steel?: boolean
  /** Whether the force is across the grain of the piece that holds, and of the other. Without: along. */
  readonly across?: { readonly holds: boolean; readonly through: boolean }
  /** A formula: `INDEX(fastener_factors.wind; 1)` or of people. */
  readonly lasts: "wind" | "people"
  readonly endGrain?: boolean
  readonly remedies?: readonly Remedy[]
}

const factor = (name: string): string => `INDEX(fastener_factors.${name}; 1)`

const factors: TableEntry = {
  kind: "table",
  name: "fastener_factors",
  label: "Figures of screws and nails",
  why: "In one row; each can be changed by itself, and then says so.",
  sources: [SCREW_WITHDRAWAL, NAIL_LATERAL, FASTENER_PENETRATION],
  rows: { kind: "figures" },
  columns: [
    figureColumn(
      "withdrawal",
      "Constant of the pull-out formula",
      "stress",
      "2850 psi",
      "Pounds for each inch of diameter and inch of thread, in wood as heavy as water.",
      SCREW_WITHDRAWAL,
    ),
    figureColumn(
      "ultimate",
      "Constant of the force that pulls it out",
      "stress",
      "15700 psi",
      "What a test would show, on average. Nothing leans on it.",
      SCREW_ULTIMATE,
    ),
    figureColumn(
      "nail_lateral",
      "A 16d common nail holds sideways",
      "force",
      "141 lb",
      "In Douglas fir-larch through a piece 1 1/2 in thick, driven deep. Lighter woods hold less.",
      NAIL_LATERAL,
    ),
    figureColumn(
      "nail_diameter",
      "Diameter of that nail",
      "length",
      "0.162 in",
      "Of a 16d common nail.",
      NAIL_LATERAL,
    ),
    figureColumn(
      "nail_gravity",
      "Wood that its value is for, specific gravity",
      "ratio",
      "0.5",
      "Douglas fir-larch.",
      NAIL_LATERAL,
      SPECIFIC_GRAVITY,
    ),
    figureColumn(
      "penetration_least",
      "Least penetration, in diameters",
      "ratio",
      "6",
      "A fastener that goes in less counts for nothing.",
      FASTENER_PENETRATION,
    ),
    figureColumn(
      "penetration_full",
      "Penetration for the full value, in diameters",
      "ratio",
      "10",
      "In between, the value falls with the penetration.",
      FASTENER_PENETRATION,
      NAIL_LATERAL,
    ),
    figureColumn(
      "wet",
      "Outdoors, wet",
      "ratio",
      "0.7",
      "Wood that gets wet and dries lets go of its fasteners.",
      FASTENER_WET,
    ),
    figureColumn(
      "wind",
      "Against wind",
      "ratio",
      "1.6",
      "Wood bears a gust better than a load that stays.",
      LOAD_DURATION,
    ),
    figureColumn("people", "Under people", "ratio", "1", "The values are for such loads.", LOAD_DURATION),
  ],
}

const species: TableEntry = figureTable({
  name: "species_fasteners",
  label: "Wood and what it holds",
  why: "Two published properties of each wood that fasteners depend on. A species that is not here counts as the last, the weakest.",
  sources: [SPECIFIC_GRAVITY, SCREW_LATERAL],
  columns: {
    species: { label: "Wood", measure: "text", why: "As on the stamp." },
    gravity: { label: "Specific gravity", measure: "ratio", why: "Weight of the dry wood against water." },
    sideways: {
      label: "Sideways constant",
      measure: "stress",
      why: "Of the handbook's group. Redwood and cedar are put in the weakest, as today's stands are lighter than the handbook's.",
    },
  },
  rows: SPECIES.map(([name, gravity, sideways]) => ({ species: name, gravity, sideways })),
})

function columnsOf(joints: readonly LoadedJoint[]): readonly Column[] {
  const figures = (
    name: string,
    label: string,
    measure: MeasureId,
    pick: (joint: LoadedJoint) => string,
    why: string,
    ...sources: readonly Source[]
  ): Column => ({ name, label, measure, values: joints.map(pick), why, sources })
  const ofWood = (name: string): string =>
    `INDEX(species_fasteners.${name}; IFERROR(MATCH(species; species_fasteners.species; 0); COUNT(species_fasteners.gravity)))`
  return [
    figures("joint", "Joint", "text", ({ joint }) => joint, "One kind of joint a row.", USER),
    figures("fastener", "Fastener", "text", ({ fastener }) => fastener, "Screw, nail or bolt.", USER),
    figures(
      "way",
      "Loaded",
      "text",
      ({ way }) => way,
      "Pulled along it, or pushed across it. A nail is never counted on against being pulled: timber that dries lets go of it.",
      USER,
    ),
    figures(
      "diameter",
      "Diameter",
      "length",
      ({ diameter }) => diameter,
      "Of a screw over the thread: 0.164 in for No. 8, 0.19 in for No. 10, 0.216 in for No. 12.",
      USER,
      SCREW_WITHDRAWAL,
    ),
    figures(
      "holds",
      "In the timber that holds",
      "length",
      ({ holds }) => holds,
      "Of a screw the thread; of a nail its length less the piece nailed on and any gap.",
      USER,
    ),
    figures(
      "through",
      "Through a piece of",
      "length",
      ({ through }) => through,
      "The piece that is fastened on.",
      USER,
    ),
    figures(
      "through_steel",
      "Of steel",
      "yes_no",
      ({ steel }) => (steel ? "yes" : "no"),
      "A metal connector bears the fastener better than wood of the same thickness.",
      USER,
    ),
    figures(
      "holds_across",
      "Across the grain of what holds",
      "yes_no",
      ({ across }) => (across?.holds ? "yes" : "no"),
      "Which way the joint pushes. It counts for thick fasteners.",
      GEOMETRY,
    ),
    figures(
      "through_across",
      "Across the grain of the other",
      "yes_no",
      ({ across }) => (across?.through ? "yes" : "no"),
      "Which way the joint pushes. It counts for thick fasteners.",
      GEOMETRY,
    ),
    figures(
      "end_grain",
      "Into end grain",
      "yes_no",
      ({ endGrain }) => (endGrain ? "yes" : "no"),
      "Along the grain of the piece that holds. A screw there counts for nothing against being pulled out: use a bracket, or a block beside the joint.",
      SCREW_WITHDRAWAL,
    ),
    column(
      "gravity",
      "Specific gravity of the wood",
      "ratio",
      ofWood("gravity"),
      "Heavy wood holds better.",
      SPECIFIC_GRAVITY,
    ),
    column(
      "penetration_share",
      "Share for the penetration",
      "ratio",
      `IF(holds < ${factor("penetration_least")} * diameter; 0; MIN(1; holds / (${factor("penetration_full")} * diameter)))`,
      "How much of the sideways value counts.",
      FASTENER_PENETRATION,
    ),
    column(
      "pulled",
      "Pulled out, one may carry",
      "force",
      `IF(OR(end_grain; fastener <> "screw"); 0; 1) * ${factor("withdrawal")} * gravity ^ 2 * diameter * holds`,
      "Of a screw: in dry wood, for loads that last years.",
      SCREW_WITHDRAWAL,
    ),
    column(
      "by_handbook",
      "Pushed sideways, by the older formula",
      "force",
      `IF(fastener = "nail"; ${factor("nail_lateral")} * MIN(1; (diameter / ${factor("nail_diameter")}) ^ 2) * MIN(1; gravity / ${factor("nail_gravity")}); ${ofWood("sideways")} * diameter ^ 2)`,
      "Of a screw or nail driven deep. Of a nail by its thickness and the weight of the wood, from the one that is published, and never more.",
      SCREW_LATERAL,
      NAIL_LATERAL,
    ),
    column(
      "by_yield",
      "Pushed sideways, by how it yields",
      "force",
      "INDEX(joint_yields.least; ROW())",
      "From the table of how each joint yields.",
      YIELD_MODES,
    ),
    column(
      "pushed",
      "Pushed sideways, one may carry",
      "force",
      'IF(fastener = "bolt"; by_yield; penetration_share * MIN(by_handbook; by_yield))',
      "The lesser of the two; of a bolt, which goes right through, the yield modes alone. In dry wood, for loads that last years. Hard deck screws snap where soft nails bend: do not hang a joist on screws alone.",
      YIELD_MODES,
      SCREW_LATERAL,
      NAIL_LATERAL,
    ),
    column(
      "ultimate",
      "Pulled out in a test at about",
      "force",
      `${factor("ultimate")} * gravity ^ 2 * diameter * holds`,
      "Five and a half times what is allowed: wood varies, and loads last. Nothing leans on this.",
      SCREW_ULTIMATE,
    ),
    column(
      "allowed",
      "One may carry here",
      "force",
      `IF(way = "pulled"; pulled; pushed) * ${factor("wet")} * ${ofEach(joints.map(({ lasts }) => factor(lasts)))}`,
      "Its value, outdoors, for as long as this load lasts.",
      FASTENER_WET,
      LOAD_DURATION,
    ),
    column(
      "count",
      "How many share the load",
      "count",
      ofEach(joints.map(({ count }) => count)),
      "Shared alike.",
      GEOMETRY,
    ),
    column(
      "force",
      "Force on all of them",
      "force",
      ofEach(joints.map(({ force }) => force)),
      "What the joint has to carry.",
      COMMON_PRACTICE,
    ),
    column(
      "needed",
      "Fasteners needed",
      "count",
      "IF(allowed > 0; MAX(0; ROUNDUP(force / allowed - rounding_tolerance; 0)); NA())",
      "Force over what one may carry, counted up.",
      COMMON_PRACTICE,
    ),
    column(
      "ratio",
      "Of what they may carry",
      "share",
      "IF(force = 0; 0; IF(allowed > 0; IF(count > 0; force / (count * allowed); 1 + needed); NA()))",
      "Over 100 % the joint lets go. Where none are there and some are needed, far over.",
      COMMON_PRACTICE,
    ),
    column(
      "says",
      "In words",
      "text",
      'joint & ": " & needed & " are needed, " & count & " are there"',
      "For the joint that is nearest to its limit.",
      COMMON_PRACTICE,
    ),
  ]
}

const atRow = (name: string): string => `INDEX(loaded_joints.${name}; ROW())`

const yields: TableEntry = {
  kind: "table",
  name: "joint_yields",
  label: "How each joint yields",
  why: "Pushed sideways, a joint gives way by crushed wood or a bent fastener, in one of six manners. Each is worked out, and the easiest counts.",
  sources: [YIELD_MODES],
  cautions: [DECIDES],
  rows: { kind: "formula", formula: "COUNT(loaded_joints.diameter)" },
  columns: [
    column("joint", "Joint", "text", atRow("joint"), "As in the joints that carry a load.", GEOMETRY),
    ...yieldColumns({
      fastener: atRow("fastener"),
      diameter: atRow("diameter"),
      holds: atRow("holds"),
      through: atRow("through"),
      gravity: atRow("gravity"),
      holdsAcross: atRow("holds_across"),
      throughAcross: atRow("through_across"),
      throughSteel: atRow("through_steel"),
    }),
  ],
}

const WORST = "INDEX(loaded_joints.says; MATCH(MAX(loaded_joints.ratio); loaded_joints.ratio; 0))"

/**
 * What screws, nails and bolts hold, and the joints that lean on them: a row of `loaded_joints` each, without a check.
 * Throws where a joint would pull at nails or bolts: of nails, in wet timber that dries, that hold is not to be counted on.
 *
 * Needs: the names that the joints are given; species, rounding_tolerance.
 * Gives: fastener_factors, species_fasteners, yield_factors, bending_yields, loaded_joints, joint_yields.
 */
export function fastenerTables(joints: readonly LoadedJoint[]): Section {
  for (const { joint, fastener, way } of joints) {
    if (fastener !== "screw" && way === "pulled")
      throw new RangeError(
        `The joint "${joint}" pulls at ${fastener}s, which do not hold by the wood round them; use screws, or work out the washers of bolts`,
      )
  }
  return {
    id: "fastener-strength",
    title: "What the fasteners hold",
    says: "Screws pulled out, screws and nails pushed sideways, by a handbook's formulas and by how a joint yields, in the joints that lean on them.",
    entries: [
      factors,
      species,
      yieldFactors,
      bendingYields,
      {
        kind: "table",
        name: "loaded_joints",
        label: "Joints that carry a load",
        why: "One row a kind of joint, a column a step.",
        sources: [SCREW_WITHDRAWAL, SCREW_LATERAL, NAIL_LATERAL],
        cautions: [DECIDES],
        rows: { kind: "figures" },
        columns: columnsOf(joints),
      },
      yields,
    ],
  }
}

/**
 * {@link fastenerTables}, and whether the worst of the joints holds.
 * Needs: near_limit_share as well. Gives: loaded_joint_first (one row), loaded_joint_check as well.
 */
export function fastenerStrength(joints: readonly LoadedJoint[]): Section {
  const check: CheckEntry = {
    kind: "check",
    name: "loaded_joint_check",
    label: "Do the fasteners hold?",
    measure: "share",
    demand: "MAX(loaded_joints.ratio)",
    limit: "1",
    sense: "at_most",
    near: "near_limit_share",
    why: "A joint is as strong as its fasteners, at best.",
    sources: [SCREW_WITHDRAWAL, SCREW_LATERAL, NAIL_LATERAL, FASTENER_PENETRATION],
    cautions: [DECIDES],
    advice: [
      "{loaded_joint_first.says}. Use more of them, thicker or longer ones, or a metal bracket made for it.",
    ],
    remedies: joints.flatMap(({ remedies = [] }) => remedies),
  }
  const tables = fastenerTables(joints)
  return {
    ...tables,
    entries: [
      ...tables.entries,
      {
        kind: "table",
        name: "loaded_joint_first",
        label: "The joint that lets go first",
        why: "The one that is nearest to its limit, or furthest over it. One row.",
        sources: [COMMON_PRACTICE],
        rows: { kind: "formula", formula: "1" },
        columns: [column("says", "In words", "text", WORST, "Change this one first.", COMMON_PRACTICE)],
      },
      check,
    ],
  }
}
